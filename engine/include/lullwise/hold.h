// hold.h - the wind builds: hold the pin that is in the boat, or stop and change it.
// SPDX-License-Identifier: MIT

#ifndef LW_HOLD_H
#define LW_HOLD_H

#include "lullwise/choice.h"
#include "lullwise/swims.h"

#define LW_HOLD_POINTS 9

// What a pin takes for each metre of the course, at points spread evenly over what is left of it,
// the first here and the last at the finish. Between them straight lines.
typedef struct lw_pace {
    double seconds[LW_HOLD_POINTS];  // [s/m]  swims counted at the day's cost of one
    double error[LW_HOLD_POINTS];    // [s/m]  standard error, from the rate of swims alone
    double swims[LW_HOLD_POINTS];    // [1/m]
    double flying[LW_HOLD_POINTS];   // [-]    share of the time sailed
} lw_pace;

// Pace of a pin round the outlook's course, its legs in their proportion all the way, while the
// mean wind goes evenly with the distance from `now` to `later` [m/s], lull and puff with it in
// proportion. swims: of this pin on each of the outlook's courses.
//
// Leaves out   that time and distance are not quite in proportion; the order of the legs; launching
//              again after a swim.
lw_pace lw_pace_of(const lw_outlook *outlook, size_t pin, const lw_swims swims[LW_COURSES_MOST],
                   double now, double later);

// Changing the pin against holding it, with `length` left and a stop that costs `stop`.
//
//     saved(x) = integral from x to length of (held - other) - stop,   x sailed before the stop
//
// The errors of a pin's pace are added along the way, as they come from one fit; those of the two
// pins are taken as independent, and `saved` as normal.
typedef struct lw_change {
    double held, changed;  // [s]  to the finish: held; changed here, the stop counted
    double saved, error;   // [s]  held - changed, and its standard error
    double chance;         // [-]  that changing here is faster
    bool is_ever;          // some distance left makes a stop pay
    double even_left;     // [m]  left where both take the same: stop with more left, hold with less
    double even_seconds;  // [s]  which the held pin takes for it
    double best_at;       // [m]  to sail on until the stop that saves most; 0: here
    double best_saved, best_error;  // [s]  by that stop; not above 0: none
    double best_chance;             // [-]  that it saves anything
} lw_change;

// With more left than `length` the paces of here go on. length > 0, stop >= 0.
lw_change lw_change_of(const lw_pace *held, const lw_pace *other, double length, double stop);

// Integral of a row of a pace, from a distance sailed [m] to the finish.
double lw_pace_rest(const double row[LW_HOLD_POINTS], double length, double from);

// Chance that a normal variable of mean 0 and deviation 1 is below z, to 1e-7: 26.2.17 of
// [abramowitz-stegun].
double lw_normal_below(double z);

#endif
