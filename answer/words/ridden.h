// ridden.h - what is said of a ride through a day's gusts and chop.
// SPDX-License-Identifier: MIT

#ifndef LW_WORDS_RIDDEN_H
#define LW_WORDS_RIDDEN_H

#include "lullwise/flown.h"

// "Upwind, 45°. Wind 10.0, 12.5, 15.5 kn in lull, mean, puff; waves of 0.16 m ..."; and how it
// is trimmed, or that it does not fly in the mean wind.
#define LW_RIDDEN_LENGTH 500
void lw_ridden_scene(const lw_ridden *ridden, lw_unit unit, char text[LW_RIDDEN_LENGTH]);
void lw_ridden_trim(const lw_ridden *ridden, lw_unit unit, char text[LW_RIDDEN_LENGTH]);

// "Flew 96 % of 10 min 00 s, 14.2 kn on average, 8.9 kn made good to windward, swims counted."
void lw_ridden_sum(const lw_ride_tally *tally, lw_unit unit, char text[LW_RIDDEN_LENGTH]);

#endif
