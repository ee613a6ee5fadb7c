// choice_find.h - what is asked of a choice, and of the outlook that it rests on.
// SPDX-License-Identifier: MIT

#ifndef LW_CHOICE_FIND_H
#define LW_CHOICE_FIND_H

#include "lullwise/choice.h"

// The pin that launches and stays up in the least wind, which goes into *wind [m/s]; NULL: none
// launches.
const lw_placing *lw_choice_soonest(const lw_choice *choice, double *wind);

// The pin that holds most wind; and the best place whose pin holds a puff [m/s], the widest when
// none does.
const lw_placing *lw_choice_widest(const lw_choice *choice);
const lw_placing *lw_choice_holder(const lw_choice *choice, double puff);

// In a wind [m/s] of the day: whether a pin stays up on every leg, and whether it is held. What is
// told of a pin in a wind, turns and all, goes by these.
bool lw_placing_stays_up(const lw_placing *place, double wind);
bool lw_placing_holds(const lw_placing *place, double wind);

// The apparent wind [m/s] of a pin in the day's mean wind, the strongest of the courses; 0 where
// she does not fly.
double lw_outlook_felt_wind(const lw_outlook *outlook, size_t pin);

// The day with a leg upwind, one on a reach and one downwind, in the order of the course kinds.
lw_day lw_day_of_courses(const lw_day *day);

#endif
