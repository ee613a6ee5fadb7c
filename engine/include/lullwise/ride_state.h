// ride_state.h - where a boat is and how she goes: all that is stepped in time.
// SPDX-License-Identifier: MIT

#ifndef LW_RIDE_STATE_H
#define LW_RIDE_STATE_H

#include <stddef.h>

#define LW_RIDE_STATES 26

// By name, and in a row: the six velocities come first.
// clang-format off
#define LW_RIDE_STATE_OF(number)                                                                    \
    union {                                                                                         \
        struct {                                                                                    \
            number surge, sway, heave;             /* of the origin along the boat's axes [m/s] */  \
            number roll_rate, pitch_rate, yaw_rate; /* about them; pitch: bow down [rad/s] */       \
            number heel, pitch, bow;     /* windward heel, bow up, bow from the mean wind [rad] */  \
            number height;               /* of the origin above the mean water [m] */               \
            number upwind, port;         /* where the origin is on the ground [m] */                \
            number wand;                 /* [rad] */                                                \
            number downwash;             /* that has come to the rudder foil [rad] */               \
            number body, body_speed;     /* sailor's middle to port [m], [m/s] */                   \
            number taken;                /* power taken off: 0 full, 1 flat, twisted, 2 luffing */  \
            number helm;                 /* [rad] */                                                \
            number rudder;               /* incidence of the rudder foil [rad] */                   \
            number seen_heel, seen_roll; /* what the sailor has noticed [rad], [rad/s] */           \
            number seen_course;          /* [rad] */                                                \
            number seen_wind;            /* [m/s] */                                                \
            number felt_wind, mean_wind; /* of some seconds, of the last minute [m/s] */            \
            number trim;                 /* effort that the sailor has come to add */               \
        };                                                                                          \
        number at[LW_RIDE_STATES];                                                                  \
    }
// clang-format on

typedef LW_RIDE_STATE_OF(double) lw_ride_state;
_Static_assert(sizeof(lw_ride_state) == LW_RIDE_STATES * sizeof(double), "a place for each state");

// Place of a state in the row.
#define LW_STATE_AT(member) (offsetof(lw_ride_state, member) / sizeof(double))

#endif
