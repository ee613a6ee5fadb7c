// lap.h - one set-up round the course through the day's gusts.
// SPDX-License-Identifier: MIT

#ifndef LW_LAP_H
#define LW_LAP_H

#include "lullwise/choice.h"

// What is expected of it; its place is left open.
lw_placing lw_lap(const lw_outlook *outlook, size_t pin, lw_gusts gusts);

// Standard error of the swims round the course: of one, or of how many more than the other's. Both
// errors go together as far as neighbours were fitted together.
double lw_lap_swims_error(const lw_outlook *outlook, const lw_placing *place,
                          const lw_placing *other, lw_gusts gusts);

// One leg only: seconds without swims, and of them those flying and on the hull [s].
lw_prospect lw_lap_leg(const lw_outlook *outlook, size_t pin, size_t leg, lw_gusts gusts);

#endif
