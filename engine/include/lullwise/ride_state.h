// ride_state.h - where a boat is and how she goes: all that is stepped in time.
// SPDX-License-Identifier: MIT

#ifndef LW_RIDE_STATE_H
#define LW_RIDE_STATE_H

#include <stddef.h>

#define LW_RIDE_STATES 26

// By name, and in a row: the six velocities come first, along and about the boat's axes (craft.h).
// What the sailor sees and feels is late.
// clang-format off
#define LW_RIDE_STATE_OF(number)                                                                 \
    union {                                                                                      \
        struct {                                                                                 \
            number surge, sway, heave;              /* of the origin along the axes [m/s] */     \
            number roll_rate, pitch_rate, yaw_rate; /* about them; pitch: bow down [rad/s] */    \
            number heel, pitch, bow;                /* windward, up, off the mean wind [rad] */  \
            number height;                          /* of the origin above mean water [m] */     \
            number upwind, port;                    /* where the origin is on the ground [m] */  \
            number wand;                            /* [rad] */                                  \
            number downwash;                        /* that has come to the rudder foil [rad] */ \
            number body, body_speed;                /* sailor's middle to port [m], [m/s] */     \
            number taken;                           /* power off: 0 full, 1 flat, 2 luffing */   \
            number helm;                            /* [rad] */                                  \
            number rudder;                          /* incidence of the rudder foil [rad] */     \
            number seen_heel, seen_roll;            /* by the sailor, late [rad], [rad/s] */     \
            number seen_course;                     /* [rad] */                                  \
            number seen_wind;                       /* [m/s] */                                  \
            number felt_wind, mean_wind;            /* of seconds, of the last minute [m/s] */   \
            number trim;                            /* effort that she has come to add */        \
        };                                                                                       \
        number at[LW_RIDE_STATES];                                                               \
    }
// clang-format on

typedef LW_RIDE_STATE_OF(double) lw_ride_state;
_Static_assert(sizeof(lw_ride_state) == LW_RIDE_STATES * sizeof(double), "a place for each state");

// Place of a state in the row.
#define LW_STATE_AT(member) (offsetof(lw_ride_state, member) / sizeof(double))

#endif
