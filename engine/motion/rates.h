// rates.h - the equations of motion: what changes how fast, from where a boat stands and goes.
// SPDX-License-Identifier: MIT

#ifndef LW_RATES_H
#define LW_RATES_H

#include "boat/force.h"
#include "motion/air.h"
#include "motion/around.h"
#include "motion/inertia_lanes.h"
#include "motion/pilot.h"
#include "motion/state.h"

// What a boat in each lane keeps through a ride.
typedef struct lw_ride_lanes {
    lw_lanes incidence, wand_length, gearing, rod,
        place;  // set-up, and the sailor's along the boat
    lw_pilot_lanes pilot;
} lw_ride_lanes;

// What has a memory but no rate: flap in its slack, air on foils and struts.
typedef struct lw_worn {
    lw_lanes flap;            // [rad]
    lw_lanes air[LW_PLACES];  // 0 wet, 1 ventilated
} lw_worn;

// The swing of a wand: it follows the water within a lag, but falls no faster than its cord pulls.
//
//     psi' = max((psi_water - psi) / tau, -fall)
LW_INLINE lw_lanes lw_wand_rate(const lw_motion *motion, lw_lanes wand, lw_lanes water)
{
    const lw_lanes rate = (1.0 / motion->rules.wand_lag) * (water - wand);
    return lw_lanes_max(rate, lw_all(-motion->rules.wand_fall));
}

// How fast the main foil's wake comes to the rudder foil [1/s]: its way takes the time x / u.
LW_INLINE lw_lanes lw_wash_pace(const lw_craft *craft, const lw_state *x)
{
    return lw_lanes_max(x->velocity.x, lw_all(LW_LEAST_WAY)) * (1.0 / -craft->rudder_x);
}

// The forces' view of a state.
LW_INLINE lw_moving lw_moving_of(const lw_motion *motion, const lw_state *x, const lw_turned *t,
                                 const lw_attitude *at, const lw_around *around,
                                 const lw_worn *worn, lw_lanes push)
{
    const lw_vector wind = lw_from_ground(t, around->wind);
    const lw_lanes zero = lw_all(0.0);
    const lw_vector swing = {zero, x->body_speed, zero}, turn = lw_cross(x->spin, swing);
    return (lw_moving){.velocity = x->velocity,
                       .spin = x->spin,
                       .wind_x = wind.x,
                       .wind_y = wind.y,
                       .main_surface = around->main_surface,
                       .rudder_surface = around->rudder_surface,
                       .wand_surface = around->wand_surface,
                       .hull_surface = around->hull_surface,
                       .hull_slope = around->hull_slope,
                       .main_water = lw_from_level(at, lw_from_ground(t, around->main_water)),
                       .rudder_water = lw_from_level(at, lw_from_ground(t, around->rudder_water)),
                       .wand = x->wand,
                       .flap = worn->flap,
                       .slack = lw_all(motion->rules.slack),
                       .wash = x->wash,
                       .taken = x->taken,
                       .body_y = x->body,
                       .body_pull = {-2.0 * turn.x, -push - 2.0 * turn.y, -2.0 * turn.z},
                       .main_air = worn->air[LW_MAIN_FOIL],
                       .rudder_air = worn->air[LW_RUDDER_FOIL],
                       .main_strut_air = worn->air[LW_MAIN_STRUT],
                       .blade_air = worn->air[LW_BLADE]};
}

LW_INLINE lw_pose lw_pose_of(const lw_motion *motion, const lw_ride_lanes *ride, const lw_state *x,
                             const lw_attitude *at)
{
    const lw_lanes zero = lw_all(0.0);
    return (lw_pose){.speed = zero,
                     .ride_height = x->height + motion->craft->main_strut.length * at->z.z,
                     .pitch = x->pitch,
                     .helm = x->helm,
                     .rudder_incidence = x->rudder,
                     .sin_heel = -at->z.y,
                     .place = ride->place,
                     .incidence = ride->incidence,
                     .wand_length = ride->wand_length,
                     .gearing = ride->gearing,
                     .rod = ride->rod};
}

// Rates of a state; of the velocities what is left of the loads to change them [N], [N m]. Where the
// boat is moves with her velocities, as lw_travel tells.
LW_INLINE void lw_rates_of(const lw_motion *motion, const lw_ride_lanes *ride, const lw_state *x,
                           const lw_turned *t, const lw_around *around, const lw_worn *worn,
                           lw_state *rates, lw_loads *loads)
{
    const lw_craft *craft = motion->craft;
    const lw_attitude at = lw_turned_attitude(t);
    const lw_pilot_view view = lw_pilot_view_of(&ride->pilot, x);
    const lw_lanes effort = lw_pilot_effort(&ride->pilot, &view, x);
    const lw_lanes push = lw_body_push(motion, effort, x);
    const lw_moving moving = lw_moving_of(motion, x, t, &at, around, worn, push);
    const lw_pose pose = lw_pose_of(motion, ride, x, &at);
    *loads = lw_moving_loads(craft, pose, &moving, &at);
    const lw_vector body = {ride->place, x->body, lw_all(craft->body_z)};
    const lw_sum left = lw_turning_load(&motion->inertia, craft, body, x->velocity, x->spin,
                                        (lw_sum){loads->force, loads->moment});
    const lw_lanes none = lw_all(0.0);
    rates->velocity = left.force, rates->spin = left.moment;
    rates->roll = rates->pitch = rates->yaw = none;
    rates->height = rates->upwind = rates->port = none;
    const lw_vector wind = around->wind;
    rates->body_speed = push;
    lw_pilot_rates(motion, &ride->pilot, &view, effort, x, lw_angle_rates(t, x->spin),
                   lw_lanes_sqrt(wind.x * wind.x + wind.y * wind.y), around->coming, rates);
    rates->wand = lw_wand_rate(motion, x->wand, loads->linkage.wand);
    rates->wash = (loads->wash - x->wash) * lw_wash_pace(craft, x);
}

// Rates of angles and place, from the velocities and the angles' sines and cosines.
LW_INLINE void lw_travel(const lw_state *x, const lw_turned *t, lw_state *rates)
{
    const lw_vector angles = lw_angle_rates(t, x->spin);
    rates->roll = angles.x, rates->pitch = angles.y, rates->yaw = angles.z;
    const lw_attitude at = lw_turned_attitude(t);
    const lw_vector v = lw_to_ground(t, lw_to_level(&at, x->velocity));
    rates->upwind = v.x, rates->port = v.y, rates->height = v.z;
}

#endif
