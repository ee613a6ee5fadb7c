// track_events.h - what a boat did along a track: flights, stops, turns, and all of it in sum.
// SPDX-License-Identifier: MIT

#ifndef LW_TRACK_EVENTS_H
#define LW_TRACK_EVENTS_H

#include "lullwise/track.h"

// clang-format off
//    name       key           text
#define LW_TRACK_EVENT_LIST(X)                        \
    X(TAKE_OFF,  "take_off",   "takes off")           \
    X(DROP,      "drop",       "comes down")          \
    X(STOP,      "stop",       "stops")               \
    X(SWIM,      "swim",       "stops as for a swim") \
    X(TACK,      "tack",       "tacks")               \
    X(GYBE,      "gybe",       "gybes")
// clang-format on
#define LW_AS_TRACK_EVENT(name, key, text) LW_TRACK_##name,
typedef enum lw_track_what { LW_TRACK_EVENT_LIST(LW_AS_TRACK_EVENT) LW_TRACK_EVENTS } lw_track_what;
const char *lw_track_event_key(lw_track_what what);
const char *lw_track_event_text(lw_track_what what);

typedef struct lw_track_event {
    lw_track_what what;
    size_t fix;      // where it begins; of a turn: where she is through the wind
    double time;     // [s]   of that fix
    double lasts;    // [s]   of a stop, and of a turn from one side to the other; else 0
    double slowest;  // [m/s] meanwhile
    bool is_flown;   // a turn: she flew from 3 s before it to 3 s behind it
} lw_track_event;

// Events in the caller's room; those beyond are only counted.
typedef struct lw_track_events {
    lw_track_event *list;
    size_t room, count, left_out;
} lw_track_events;

// She flies from `up` on until she is below `down`.
typedef struct lw_track_limits {
    double up, down;  // [m/s]
} lw_track_limits;
#define LW_TRACK_UP   (10.0 * LW_KN)  // without a boat  [judged]
#define LW_TRACK_DOWN (8.0 * LW_KN)   // [judged]

// Marks who flies, and adds take-offs, drops and stops. A stop is 8 s below 2 kn or more; it looks
// like a swim when she flew in the 10 s before it  [judged].
void lw_track_fly(lw_track *track, lw_track_limits limits, lw_track_events *events);

// Adds tacks and gybes: from 4 s on one side of the wind to 4 s on the other within 20 s [judged];
// a tack where both lie upwind of abeam on the whole. Needs flights marked.
void lw_track_turn(const lw_track *track, double from, lw_track_events *events);

// --- in sum

#define LW_TRACK_ANGLES 18  // of 10 degrees

typedef struct lw_track_angle {
    double seconds, flying;  // [s] sailed on it, and flown
    double mean, fast;       // [m/s] mean; what nine tenths of the time are slower than; NAN: none
} lw_track_angle;

typedef struct lw_track_sum {
    double seconds;    // [s] of all pieces
    double under_way;  // [s] of them not below 2 kn
    double flying;     // [s]
    double run;        // [m]
    double fastest;    // [m/s] of the smoothed speeds
    size_t pieces;
    size_t count[LW_TRACK_EVENTS];  // of those that found room
    size_t flown[LW_TRACK_EVENTS];  // of the turns
} lw_track_sum;

lw_track_sum lw_track_sum_of(const lw_track *track, const lw_track_events *events);

// Speed by the angle of her course from the wind, both tacks together, under way.
void lw_track_by_angle(const lw_track *track, double from, lw_track_angle angles[LW_TRACK_ANGLES]);

#endif
