// lap.h - one set-up round the course through the day's gusts, as rides have it.
// SPDX-License-Identifier: MIT

#ifndef LW_LAP_H
#define LW_LAP_H

#include "lullwise/choice.h"
#include "lullwise/sailing.h"

// A lap by one source of rides.
typedef struct lw_lap {
    double seconds;          // [s] round the course, swims counted
    double under_way;        // [s] of it: sailing
    double flown, on_hull;   // [s] of that
    double swims, swimming;  // [-], [s] that they cost
    bool is_stuck;           // on some leg less than a knot is made good
} lw_lap;

// Length of the legs once round.
double lw_lap_length(const lw_outlook *outlook);

lw_lap lw_lap_of(const lw_outlook *outlook, lw_source source, size_t pin, double wind);

// As it is expected over what is not known: of all rides as is, the time under way times what draws
// make of it, swims and the share flown more by what draws add.
lw_lap lw_lap_expected(const lw_outlook *outlook, lw_source of, size_t pin, double wind);

#define LW_SWIMS_APART \
    0.35  // of a rate of swims, from pin to pin: held of it before any ride  [judged]

// What swims that have not happened yet may still add to a difference between two pins, or to one
// pin's own swims where `other` is the same.
double lw_lap_unseen(const lw_outlook *outlook, size_t pin, size_t other, double wind);

// What is expected of a pin; its place is left open.
lw_placing lw_lap_placing(const lw_outlook *outlook, size_t pin, lw_gusts gusts, bool for_time);

#endif
