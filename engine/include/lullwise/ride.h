// ride.h - what happens on a ride, what is counted of it, and what many come to.
// SPDX-License-Identifier: MIT

#ifndef LW_RIDE_H
#define LW_RIDE_H

#include "lullwise/quantity.h"

// --- what happens on a ride, what is counted of it, and one moment of it as a row

// clang-format off
// One line makes the code, the key and the sentence of an event. LEEWARD to LOST are swims.
#define LW_RIDE_EVENT_LIST(X)                                                              \
    X(LAUNCH,        "launch",        "takes off")                                         \
    X(TOUCH,         "touch",         "hull touches the water")                            \
    X(DROP,          "drop",          "drops off the foils")                               \
    X(BREACH,        "breach",        "main foil's tip breaks the surface")                \
    X(RUDDER_BREACH, "rudder_breach", "rudder foil's tip breaks the surface")              \
    X(FOIL_AIR,      "foil_air",      "main foil ventilates")                              \
    X(RUDDER_AIR,    "rudder_air",    "rudder foil ventilates")                            \
    X(STRUT_AIR,     "strut_air",     "main strut ventilates")                             \
    X(BLADE_AIR,     "blade_air",     "rudder blade ventilates")                           \
    X(LEEWARD,       "leeward",       "swim: thrown over to leeward")                      \
    X(WINDWARD,      "windward",      "swim: falls over to windward")                      \
    X(PITCHPOLE,     "pitchpole",     "swim: bow goes under, over the front")              \
    X(THROWN,        "thrown",        "swim: thrown forward as she stops")                 \
    X(SPIN,          "spin",          "swim: spins round")                                 \
    X(LOST,          "lost",          "swim: beyond what the model can tell")              \
    X(AGAIN,         "again",         "under way again")
// clang-format on

#define LW_AS_RIDE_EVENT(name, key, text) LW_RIDE_##name,
typedef enum lw_ride_what { LW_RIDE_EVENT_LIST(LW_AS_RIDE_EVENT) LW_RIDE_EVENTS } lw_ride_what;

const char *lw_ride_event_key(lw_ride_what what);
const char *lw_ride_event_text(lw_ride_what what);
bool lw_ride_event_is_swim(lw_ride_what what);

// One moment of a ride: a row of its history.
typedef struct lw_trace {
    double time;                    // [s]
    double wind;                    // [m/s]  as read
    double shift;                   // [rad]  of its direction, from the mean: positive lifts
    double speed;                   // [m/s]  over the ground
    double made_good;               // [m/s]  to windward
    double heading;                 // [rad]  track from the mean wind
    double bow;                     // [rad]  bow from the mean wind
    double leeway;                  // [rad]
    double heel, pitch;             // [rad]  windward, bow up
    double ride_height;             // [m]    hull above the mean water
    double surface;                 // [m]    water at the main foil above its mean
    double clearance;               // [m]    hull above the water there
    double climb;                   // [m/s]  how fast the hull rises
    double tip_depth;               // [m]    of the higher main-foil tip
    double rudder_tip;              // [m]    of the higher rudder-foil tip
    double wand, flap;              // [rad]
    double turns;                   // [turns]
    double helm;                    // [rad]
    double hiking;                  // [-]    0 sitting in, 1 hiked
    double sail_power;              // [-]
    double main_lift, rudder_lift;  // [N]
    double main_air, rudder_air;    // [-]    part of each foil that is ventilated
    double strut_air, blade_air;
    double upwind, across;  // [m]   place on the ground; across: to port of upwind
} lw_trace;

extern const lw_table lw_trace_table;

typedef struct lw_ride_event {
    lw_ride_what what;
    lw_trace at;
} lw_ride_event;

// What is counted from the beginning of a ride.
typedef struct lw_ride_tally {
    double seconds;    // all
    double flying;     // [s]  hull clear of the water
    double swimming;   // [s]
    double distance;   // [m]  through the water
    double made_good;  // [m]  to windward
    double count[LW_RIDE_EVENTS];
} lw_ride_tally;

double lw_ride_tally_swims(const lw_ride_tally *tally);

// How a ride stands: each has a name, at any time.
// clang-format off
#define LW_RIDE_STAND_LIST(X) \
    X(FLYING, "flying") X(AFLOAT, "on the hull") X(SWIMMING, "swimming")
// clang-format on
#define LW_AS_RIDE_STAND(name, text) LW_STANDS_##name,
typedef enum lw_ride_stand { LW_RIDE_STAND_LIST(LW_AS_RIDE_STAND) } lw_ride_stand;
const char *lw_ride_stand_text(lw_ride_stand stand);

// --- what rides come to: shares and rates an hour, and how surely many rides know them

typedef struct lw_ride_rates {
    double flying;           // [-]    share of the time, hull clear of the water
    double swimming;         // [-]    share of the time
    double speed;            // [m/s]  through the water, swims counted
    double made_good;        // [m/s]  to windward, swims counted
    double launches;         // [1/s]
    double touches;          // [1/s]
    double drops;            // [1/s]
    double breaches;         // [1/s]  of the main foil
    double rudder_breaches;  // [1/s]  of the rudder foil
    double airs;             // [1/s]  ventilations of foils and struts
    double swims;            // [1/s]
} lw_ride_rates;
#define LW_RIDE_RATES (sizeof(lw_ride_rates) / sizeof(double))

extern const lw_table lw_ride_rates_table;

lw_ride_rates lw_ride_rates_of(const lw_ride_tally *tally);

// Many rides of one length, each with a seed of its own; owned by the caller, from {0}.
typedef struct lw_ride_sample {
    double rides, seconds;
    lw_ride_rates mean;
    lw_ride_rates square;  // sum of squares about the mean
} lw_ride_sample;

void lw_ride_sample_add(lw_ride_sample *sample, const lw_ride_tally *tally);

// Standard error of each mean, s / sqrt(n). That of a rate an hour is never below one event in all
// the time sailed: what has not happened yet may still.  [judged]
lw_ride_rates lw_ride_sample_error(const lw_ride_sample *sample);

// True when every mean is known to `part` of itself; or, where that is less, shares to a part of
// one, speeds to a part of a knot, and events to a part of one in a quarter of an hour.  [judged]
bool lw_ride_sample_is_sure(const lw_ride_sample *sample, double part);

#endif
