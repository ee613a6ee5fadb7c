// logged.h - a day as it was sailed and written down; and how like two days are.
// SPDX-License-Identifier: MIT

#ifndef LW_LOGGED_H
#define LW_LOGGED_H

#include "lullwise/craft.h"
#include "lullwise/day.h"
#include "lullwise/signs.h"
#include "lullwise/track_summary.h"

// Rudder lift on from the reference mark, as most used on each course; NAN: not told.
typedef struct lw_used {
    double upwind;    // [turns]
    double reach;     // [turns]
    double downwind;  // [turns]
} lw_used;

// The outing: NAN where it is not told.
typedef struct lw_outing {
    double mass;    // [kg]  the sailor with what is worn
    double afloat;  // [s]   under sail
    double swims;   // [-]   counted: a whole number
} lw_outing;

// What a track of the day tells; NAN: there is none, or it does not tell that.
typedef struct lw_sailed {
    double upwind_speed, reach_speed, downwind_speed;        // [m/s] mean while she flew
    double upwind_scatter, reach_scatter, downwind_scatter;  // [m/s] standard deviation of that
    double upwind_time, reach_time, downwind_time;           // [s]   flown on it
    double flying;                                           // [-] part of the time under way
    double take_offs;                                        // [-] counted
    double stops;  // [-] counted: those that look like swims
} lw_sailed;

typedef struct lw_logged {
    char date[LW_NAME_LENGTH];     // as in 2030-05-17
    char waters[LW_NAME_LENGTH];   // where, in words
    char pin[LW_NAME_LENGTH];      // its label
    char verdict[LW_NAME_LENGTH];  // of the set-up: one of lw_verdicts; "": not told
    char boat[LW_NAME_LENGTH];     // names: what they were measured to be is kept beside this
    char sailor[LW_NAME_LENGTH];
    lw_wind wind;
    lw_sea sea;
    lw_water water;
    lw_air air;
    lw_setup setup;
    lw_used used;
    lw_outing outing;
    lw_sailed sailed;
    lw_sign_set signs;
} lw_logged;

// What of it a person sets by key: not the names, nor the signs.
extern const lw_record lw_logged_record;

// "much-too-weak" to "much-too-strong", NULL-ended: how much lift the set-up had for the wind.
extern const char *const lw_verdicts[];

// Of a track and its summary: upwind 30 to 75 deg from the wind, a reach 85 to 115, downwind from
// there to 170, as a range's courses lie [judged]; speeds where the wind's direction is known.
lw_sailed lw_sailed_of(const lw_track *track, const lw_track_summary *summary);

// A date as in 2030-05-17 that the calendar has.
bool lw_date_is_sound(const char *text);

// --- how like days are

// What makes days alike, the wind carried to one height.
typedef struct lw_conditions {
    double lull;  // [m/s] at 3 m
    double mean;  // [m/s]
    double puff;  // [m/s]
    double chop;  // H_s [m], as given or from fetch and wind
    double mass;  // [kg] the sailor with what is worn; NAN: not asked
} lw_conditions;

extern const lw_table lw_conditions_table;

lw_conditions lw_conditions_of(const lw_wind *wind, const lw_sea *sea, double mass);

// How much of a row of the table makes one step apart, in SI: 2 kn, 10 cm, 8 kg.  [judged]
double lw_conditions_step(size_t row);

// How far apart two days are, in steps: d^2 = sum of ((a - b) / step)^2, what is NAN left out.
// Holds for    one boat. Leaves out   gusts' period, shifts, temperatures, the course.
double lw_conditions_apart(const lw_conditions *a, const lw_conditions *b);

#endif
