// equations.h - the equations of motion: what changes how fast, from where a boat stands and goes.
// SPDX-License-Identifier: MIT

#ifndef LW_EQUATIONS_H
#define LW_EQUATIONS_H

#include "motion/inertia_lanes.h"
#include "motion/inflow.h"

// The swing of a wand: it follows the water within a lag, but falls no faster than its cord pulls.
//
//     psi' = max((psi_water - psi) / tau, -fall)
LW_INLINE lw_lanes lw_wand_rate(const lw_motion *motion, lw_lanes wand, lw_lanes water)
{
    const lw_lanes rate = (1.0 / motion->parameters.wand_lag) * (water - wand);
    return lw_lanes_max(rate, lw_all(-motion->parameters.wand_fall));
}

// How fast the main foil's wake comes to the rudder foil [1/s]: its way takes the time x / u.
LW_INLINE lw_lanes lw_downwash_pace(const lw_craft *craft, const lw_state_lanes *x)
{
    return lw_lanes_max(x->surge, lw_all(LW_LEAST_WAY)) * (1.0 / -craft->rudder_x);
}

// What is left of the loads to change the six velocities [N], [N m].
LW_INLINE void lw_accelerating_loads(const lw_motion *motion, const lw_state_lanes *x,
                                     const lw_loads *loads, lw_state_lanes *rates)
{
    const lw_sum left = lw_turning_load(motion, loads->inflow.sailor, lw_velocity_of(x),
                                        lw_spin_of(x), (lw_sum){loads->force, loads->moment});
    rates->surge = left.force.x, rates->sway = left.force.y, rates->heave = left.force.z;
    rates->roll_rate = left.moment.x, rates->pitch_rate = left.moment.y;
    rates->yaw_rate = left.moment.z;
}

// Rates of a state; of the velocities what is left of the loads to change them. Where the boat is
// moves with her velocities, as lw_kinematic_rates tells.
LW_INLINE void lw_dynamic_rates(const lw_motion *motion, const lw_instant *now,
                                lw_state_lanes *rates, lw_loads *loads)
{
    const lw_pilot_lanes *pilot = &now->ride->pilot;
    const lw_state_lanes *x = now->state;
    const lw_vector wind = now->around->wind;
    const lw_pilot_view view = lw_pilot_view_of(pilot, now->wish, x);
    const lw_lanes push = lw_body_push(motion, view.effort, x);
    lw_moving_loads(motion, now, push, loads);
    lw_accelerating_loads(motion, x, loads, rates);
    rates->heel = rates->pitch = rates->bow = lw_all(0.0);
    rates->height = rates->upwind = rates->port = lw_all(0.0);
    rates->body_speed = push;
    const lw_sight sight = {lw_angle_rates(now->turned, lw_spin_of(x)),
                            lw_lanes_sqrt(wind.x * wind.x + wind.y * wind.y), now->around->coming};
    lw_perception_rates(&motion->parameters, &sight, x, rates);
    lw_action_rates(motion, pilot, &view, x, rates);
    rates->wand = lw_wand_rate(motion, x->wand, loads->inflow.wand);
    rates->downwash = (loads->downwash - x->downwash) * lw_downwash_pace(motion->craft, x);
}

// Rates of angles and place, from the velocities and the angles' sines and cosines.
LW_INLINE void lw_kinematic_rates(const lw_state_lanes *x, const lw_turned *t,
                                  lw_state_lanes *rates)
{
    const lw_vector angles = lw_angle_rates(t, lw_spin_of(x));
    rates->heel = angles.x, rates->pitch = angles.y, rates->bow = angles.z;
    const lw_attitude at = lw_turned_attitude(t);
    const lw_vector v = lw_to_ground(t, lw_to_level(&at, lw_velocity_of(x)));
    rates->upwind = v.x, rates->port = v.y, rates->height = v.z;
}

#endif
