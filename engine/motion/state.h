// state.h - where boats in motion stand and how they go, a boat in each lane.
// SPDX-License-Identifier: MIT

#ifndef LW_MOTION_STATE_H
#define LW_MOTION_STATE_H

#include "boat/pose.h"
#include "lullwise/motion.h"

typedef LW_RIDE_STATE_OF(lw_lanes) lw_state_lanes;

LW_INLINE lw_vector lw_velocity_of(const lw_state_lanes *x)
{
    return (lw_vector){x->surge, x->sway, x->heave};
}

LW_INLINE lw_vector lw_spin_of(const lw_state_lanes *x)
{
    return (lw_vector){x->roll_rate, x->pitch_rate, x->yaw_rate};
}

LW_INLINE void lw_state_put(lw_state_lanes *state, int lane, const lw_ride_state *from)
{
    for (int k = 0; k < LW_RIDE_STATES; k++) state->at[k][lane] = from->at[k];
}

LW_INLINE lw_ride_state lw_state_lane(const lw_state_lanes *state, int lane)
{
    lw_ride_state out;
    for (int k = 0; k < LW_RIDE_STATES; k++) out.at[k] = state->at[k][lane];
    return out;
}

// Lane by lane: the other's where it holds.
LW_INLINE void lw_state_take(lw_state_lanes *state, const lw_state_lanes *other, lw_mask where)
{
    for (int k = 0; k < LW_RIDE_STATES; k++) {
        state->at[k] = lw_select(where, other->at[k], state->at[k]);
    }
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
    lw_lanes sin_heel, cos_heel, sin_pitch, cos_pitch, sin_bow, cos_bow;
} lw_turned;

LW_INLINE lw_turned lw_turned_of(const lw_state_lanes *state)
{
    lw_turned t;
    lw_upright_sincos(state->heel, &t.sin_heel, &t.cos_heel);
    lw_upright_sincos(state->pitch, &t.sin_pitch, &t.cos_pitch);
    lw_lanes_sincos(state->bow, &t.sin_bow, &t.cos_bow);
    return t;
}

LW_INLINE lw_attitude lw_turned_attitude(const lw_turned *t)
{
    return lw_attitude_of(t->sin_pitch, t->cos_pitch, t->sin_heel, t->cos_heel);
}

// Along the ground's axes (towards the wind, to port of that) from level axes along the bow, and
// back.
LW_INLINE lw_vector lw_to_ground(const lw_turned *t, lw_vector v)
{
    return (lw_vector){v.x * t->cos_bow - v.y * t->sin_bow, v.x * t->sin_bow + v.y * t->cos_bow,
                       v.z};
}

LW_INLINE lw_vector lw_from_ground(const lw_turned *t, lw_vector v)
{
    return (lw_vector){v.x * t->cos_bow + v.y * t->sin_bow, v.y * t->cos_bow - v.x * t->sin_bow,
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
    const lw_lanes yaw = (spin.y * t->sin_heel + spin.z * t->cos_heel) / t->cos_pitch;
    return (lw_vector){spin.x - t->sin_pitch * yaw, spin.z * t->sin_heel - spin.y * t->cos_heel,
                       yaw};
}

#endif
