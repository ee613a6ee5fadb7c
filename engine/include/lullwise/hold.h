// hold.h - the wind builds: hold the pin that is in the boat, or stop and change it.
// SPDX-License-Identifier: MIT

#ifndef LW_HOLD_H
#define LW_HOLD_H

#include "lullwise/choice.h"

#define LW_HOLD_POINTS 9

// What a pin takes for each metre of the course, at points spread evenly over what is left of it,
// the first here and the last at the finish. Between them straight lines.
typedef double lw_way[LW_HOLD_POINTS];

typedef struct lw_pace {
    lw_way seconds[LW_SETS];  // [s/m] by each set of blocks, swims counted at the day's cost of one
    lw_way swims[LW_SETS];    // [1/m]
    lw_way moved[LW_DRAWS];   // [s/m] what each draw changes of it
    lw_way unseen;            // [1/m] swims that did not happen yet, and still may
    double swim;              // [s]   what the day counts for one
    lw_way flying;            // [-]   share of the time under way, of all blocks
    bool is_stuck;            // somewhere less than a knot is made good
} lw_pace;

// Pace of a pin round the outlook's course, its legs in their proportion all the way, while the
// mean wind goes evenly with the distance from `now` to `later` [m/s], lull and puff with it in
// proportion.
//
// Leaves out   that time and distance are not quite in proportion; the order of the legs; tacks and
//              gybes, which all pins have alike.
lw_pace lw_pace_of(const lw_outlook *outlook, size_t pin, double now, double later);

// Changing the pin against holding it, with `length` left and a stop that costs `stop`.
//
//     saved(x) = integral from x to length of (held - other) - stop,   x sailed before the stop
//
// Both pins' paces come from the same blocks: their gusts, and their draws of boat, sailor and
// judged numbers. Errors, spreads and chances are those of chance.h.
typedef struct lw_change {
    double held, changed;  // [s]  to the finish: held; changed here, the stop counted
    double saved, error;   // [s]  held - changed, and its standard error by rides
    double spread;         // [s]  of that by what is not known of boat, sailor and judged numbers
    double chance;         // [-]  that changing here is faster
    bool is_ever;          // some distance left makes a stop pay
    double even_left;     // [m]  left where both take the same: stop with more left, hold with less
    double even_seconds;  // [s]  which the held pin takes for it
    double best_at;       // [m]  to sail on until the stop that saves most; 0: here
    double best_saved, best_error, best_spread;  // [s] by that stop; not above 0: none
    double best_chance;                          // [-]  that it saves anything
} lw_change;

// With more left than `length` the paces of here go on. length > 0, stop >= 0.
lw_change lw_change_of(const lw_pace *held, const lw_pace *other, double length, double stop);

// Integral along a way, from a distance sailed [m] to the finish.
double lw_way_rest(const lw_way way, double length, double from);

// --- every pin weighed against the one in the boat

typedef struct lw_hold {
    // asked
    size_t pin;         // in the boat
    double left;        // [m] to the finish, > 0
    double now, later;  // [m/s] mean wind here and at the finish
    double stop;        // [s] >= 0
    // answered
    size_t pin_count;
    lw_pace paces[LW_PINS_MOST];
    lw_change changes[LW_PINS_MOST];  // to each pin; that of the pin in the boat is not used
    size_t best;                      // the pin that saves most by a stop, here or later on
    bool has_best;                    // there is another pin
} lw_hold;

// outlook: of the day as it is now, all steps done, with thorough effort.
void lw_hold_work_out(lw_hold *hold, const lw_outlook *outlook);

bool lw_hold_flies(const lw_hold *hold);                 // any pin, somewhere on the way
double lw_hold_flying(const lw_hold *hold, size_t pin);  // [-] share of the time to the finish

// Swims expected to the finish, or for an hour of that time, with their standard error: of rides,
// and of what did not happen in them yet.
double lw_hold_swims(const lw_hold *hold, size_t pin, double *error);
double lw_hold_swims_an_hour(const lw_hold *hold, size_t pin, double *error);

// Give or take: error and spread together.
double lw_hold_unsure(double error, double spread);

// Mean wind [m/s] after a distance [m]; and at the finish what is a puff [m/s] now.
double lw_hold_wind(const lw_hold *hold, double after);
double lw_hold_puff(const lw_hold *hold, double puff);

// The wind goes further from the day's than rides reach.
bool lw_hold_is_beyond_rides(const lw_hold *hold);

// Once round the legs [m].
double lw_hold_course(const lw_day *day);

#endif
