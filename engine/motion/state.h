// state.h - where boats in motion stand and how they go, a boat in each lane.
// SPDX-License-Identifier: MIT

#ifndef LW_MOTION_STATE_H
#define LW_MOTION_STATE_H

#include "boat/pose.h"
#include "lullwise/motion.h"

// Everything that is stepped in time. The order is that of lw_ride_state: a lane there, a number
// here.
typedef struct lw_state {
    lw_vector velocity;         // of the origin, along the boat's axes [m/s]
    lw_vector spin;             // about them [rad/s]
    lw_lanes roll, pitch, yaw;  // windward heel, bow up, bow from the mean wind [rad]
    lw_lanes height;            // of the origin above the mean water [m]
    lw_lanes upwind, port;      // where the origin is, towards the wind and to port of that [m]
    lw_lanes wand;              // [rad]
    lw_lanes wash;              // downwash that has come to the rudder foil [rad]
    lw_lanes body, body_speed;  // sailor's middle to port [m], [m/s]
    lw_lanes taken;             // power taken off the sail
    lw_lanes helm;              // [rad]
    lw_lanes rudder;            // incidence of the rudder foil [rad]
    lw_lanes seen_heel, seen_roll,
        seen_course;                // what the sailor has noticed [rad], [rad/s], [rad]
    lw_lanes seen_wind;             // [m/s]
    lw_lanes felt_wind, mean_wind;  // of some seconds, of the last minute [m/s]
    lw_lanes trim;                  // effort that the sailor has come to add
} lw_state;

#define LW_STATES (sizeof(lw_state) / sizeof(lw_lanes))
_Static_assert(LW_STATES == sizeof(lw_ride_state) / sizeof(double), "a number for each lane");

// Lane by lane: a where it holds, else b.
LW_INLINE void lw_state_take(lw_state *state, const lw_state *other, lw_mask where)
{
    lw_lanes *to = (lw_lanes *)state;
    const lw_lanes *from = (const lw_lanes *)other;
    for (size_t i = 0; i < LW_STATES; i++) to[i] = lw_select(where, from[i], to[i]);
}

// Sine and cosine of an angle that never passes a quarter turn, by its half.
LW_INLINE void lw_upright_sincos(lw_lanes x, lw_lanes *sine, lw_lanes *cosine)
{
    const lw_lanes half = 0.5 * lw_lanes_clamp(x, lw_all(-0.5 * LW_PI), lw_all(0.5 * LW_PI));
    const lw_lanes s = lw_sin_of(half, lw_all(0.0)), c = lw_cos_of(half, lw_all(0.0));
    *sine = 2.0 * s * c;
    *cosine = 1.0 - 2.0 * s * s;
}

// Sines and cosines of the angles of a state: worked out once for each.
typedef struct lw_turned {
    lw_lanes sin_roll, cos_roll, sin_pitch, cos_pitch, sin_yaw, cos_yaw;
} lw_turned;

LW_INLINE lw_turned lw_turned_of(const lw_state *state)
{
    lw_turned t;
    lw_upright_sincos(state->roll, &t.sin_roll, &t.cos_roll);
    lw_upright_sincos(state->pitch, &t.sin_pitch, &t.cos_pitch);
    lw_lanes_sincos(state->yaw, &t.sin_yaw, &t.cos_yaw);
    return t;
}

LW_INLINE lw_attitude lw_turned_attitude(const lw_turned *t)
{
    return lw_attitude_of(t->sin_pitch, t->cos_pitch, t->sin_roll, t->cos_roll);
}

// Along the ground's axes (towards the wind, to port of that) from level axes along the bow, and back.
LW_INLINE lw_vector lw_to_ground(const lw_turned *t, lw_vector v)
{
    return (lw_vector){v.x * t->cos_yaw - v.y * t->sin_yaw, v.x * t->sin_yaw + v.y * t->cos_yaw,
                       v.z};
}

LW_INLINE lw_vector lw_from_ground(const lw_turned *t, lw_vector v)
{
    return (lw_vector){v.x * t->cos_yaw + v.y * t->sin_yaw, v.y * t->cos_yaw - v.x * t->sin_yaw,
                       v.z};
}

// Along level axes from the boat's, and back.
LW_INLINE lw_vector lw_to_level(const lw_attitude *at, lw_vector v)
{
    return (lw_vector){v.x * at->x.x + v.y * at->y.x + v.z * at->z.x, v.y * at->y.y + v.z * at->z.y,
                       v.x * at->x.z + v.y * at->y.z + v.z * at->z.z};
}

LW_INLINE lw_vector lw_from_level(const lw_attitude *at, lw_vector v)
{
    return (lw_vector){v.x * at->x.x + v.z * at->x.z, v.x * at->y.x + v.y * at->y.y + v.z * at->y.z,
                       v.x * at->z.x + v.y * at->z.y + v.z * at->z.z};
}

// Rates of roll, pitch (bow up) and yaw from the spin about the boat's axes.
//
//     yaw' = (q sin phi + r cos phi) / cos theta,  theta' = r sin phi - q cos phi,
//     phi' = p - sin theta yaw'
LW_INLINE lw_vector lw_angle_rates(const lw_turned *t, lw_vector spin)
{
    const lw_lanes yaw = (spin.y * t->sin_roll + spin.z * t->cos_roll) / t->cos_pitch;
    return (lw_vector){spin.x - t->sin_pitch * yaw, spin.z * t->sin_roll - spin.y * t->cos_roll,
                       yaw};
}

#endif
