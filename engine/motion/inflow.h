// inflow.h - what meets the parts of a boat in motion: way, turning, waves, gusts, what lags.
// SPDX-License-Identifier: MIT

#ifndef LW_MOTION_INFLOW_H
#define LW_MOTION_INFLOW_H

#include "boat/force.h"
#include "foil/ventilation/cavity.h"
#include "motion/environment.h"
#include "motion/sailor/control.h"
#include "motion/state.h"

// What a boat in each lane keeps through a ride.
typedef struct lw_ride_lanes {
    lw_setup_lanes setup;
    lw_lanes place;  // of the sailor along the boat
    lw_pilot_lanes pilot;
} lw_ride_lanes;

// Lane i from a plan, its pilot wanting what she wants in flight.
void lw_ride_lanes_put(lw_ride_lanes *lanes, int i, const lw_ride_plan *plan);

// What has a memory but no rate: flap in its slack, air on foils and struts.
typedef struct lw_hysteresis {
    lw_lanes flap;             // [rad]
    lw_cavities main, rudder;  // foils, each with its strut
} lw_hysteresis;

// All that a boat's rates at one moment come of.
typedef struct lw_instant {
    const lw_ride_lanes *ride;
    const lw_state_lanes *state;
    const lw_turned *turned;  // of the state
    const lw_environment *around;
    const lw_hysteresis *memory;
    const lw_wish_lanes *wish;  // of the wind felt
} lw_instant;

// Slower than this, a flow along the boat counts as so fast: no force has a value without way.
#define LW_LEAST_WAY 0.3  // [m/s]

// Flow at a place of a boat in motion, against the water there.
LW_INLINE lw_vector lw_flow_at(const lw_inflow *in, lw_vector at, lw_vector water)
{
    const lw_vector turn = lw_cross(in->spin, at), v = in->through;
    return (lw_vector){lw_lanes_max(v.x + turn.x - water.x, lw_all(LW_LEAST_WAY)),
                       v.y + turn.y - water.y, v.z + turn.z - water.z};
}

LW_INLINE void lw_put_foil_flow(lw_vector u, const lw_cavity *cavity, lw_foil_flow *flow)
{
    flow->forward = u.x, flow->upward = u.z, flow->ventilated = cavity->part;
}

LW_INLINE void lw_put_strut_flow(lw_vector u, lw_lanes turn, const lw_cavity *cavity,
                                 lw_strut_flow *flow)
{
    flow->forward = u.x, flow->across = u.y, flow->turn = turn, flow->ventilated = cavity->part;
}

// Along the boat's axes from the ground's.
LW_INLINE lw_vector lw_to_boat(const lw_inflow *in, const lw_turned *t, lw_vector v)
{
    return lw_from_level(&in->at, lw_from_ground(t, v));
}

// Water at foils and struts: a strut is met at half its depth, in water as at its foil.
LW_INLINE void lw_moving_flows(const lw_instant *now, lw_inflow *in)
{
    const lw_cavities *main_air = &now->memory->main, *rudder_air = &now->memory->rudder;
    const lw_vector water = lw_to_boat(in, now->turned, now->around->main_water);
    const lw_vector water_r = lw_to_boat(in, now->turned, now->around->rudder_water);
    lw_vector main = in->main_at, rudder = in->rudder_at;
    lw_put_foil_flow(lw_flow_at(in, main, water), &main_air->foil, &in->main);
    lw_put_foil_flow(lw_flow_at(in, rudder, water_r), &rudder_air->foil, &in->rudder);
    main.z = 0.5 * in->main_strut.wet, rudder.z += 0.5 * in->rudder_strut.wet;
    lw_put_strut_flow(lw_flow_at(in, main, water), lw_all(0.0), &main_air->strut, &in->main_strut);
    lw_put_strut_flow(lw_flow_at(in, rudder, water_r), now->state->helm, &rudder_air->strut,
                      &in->rudder_strut);
}

// Flap of a wand that lags, somewhere in its slack.
LW_INLINE lw_lanes lw_moving_flap(const lw_motion *motion, const lw_instant *now)
{
    const lw_setup_lanes *setup = &now->ride->setup;
    const double slack = motion->parameters.slack;
    const lw_lanes flap =
        lw_linkage_flap(&motion->craft->linkage, now->state->wand, setup->gearing, setup->rod);
    return lw_lanes_clamp(now->memory->flap, flap - slack, flap + slack);
}

// Water all about the boat, its surface above the mean by what it is at each part.
LW_INLINE void lw_moving_water(const lw_motion *motion, const lw_instant *now, lw_inflow *in)
{
    const lw_craft *craft = motion->craft;
    const lw_environment *around = now->around;
    const lw_setup_lanes *setup = &now->ride->setup;
    const lw_lanes height = now->state->height + craft->main_strut.length * in->at.z.z;
    lw_inflow_stand(craft, setup, height, in);
    in->main.depth += around->main_surface;
    in->rudder.depth += around->rudder_surface;
    in->pivot -= around->wand_surface;
    in->rack_depth += around->hull_surface + craft->rack.x * around->hull_slope;
    lw_inflow_wet(craft, setup->wand_length, in);
    lw_inflow_float(height - around->hull_surface, in->at.x.z - around->hull_slope, in);
    lw_moving_flows(now, in);
    in->main.flap = lw_moving_flap(motion, now);
    in->rudder.incidence = now->state->rudder - now->state->downwash;
}

// Apparent wind at a place, where the true wind is `factor` times the wind as read; that in level
// axes along the bow.
LW_INLINE lw_apparent lw_moving_apparent(const lw_inflow *in, lw_vector wind, lw_vector place,
                                         double factor)
{
    const lw_lanes x = factor * wind.x, y = factor * wind.y;
    const lw_vector turn = lw_cross(in->spin, place), v = in->through;
    return (lw_apparent){x * in->at.x.x - v.x - turn.x,
                         y * in->at.y.y + x * in->at.y.x - v.y - turn.y};
}

LW_INLINE void lw_moving_air(const lw_craft *craft, const lw_instant *now, lw_inflow *in)
{
    const lw_lanes zero = lw_all(0.0);
    const lw_vector wind = lw_from_ground(now->turned, now->around->wind);
    const lw_vector sail = {lw_all(craft->sail.centre_x), zero, lw_all(craft->sail.centre_height)};
    const lw_vector low = {lw_all(craft->hull_x), zero, lw_all(craft->windage_z)};
    in->sail_wind = lw_moving_apparent(in, wind, sail, craft->wind_at_sail);
    in->low_wind = lw_moving_apparent(in, wind, low, craft->wind_at_body);
    in->set = lw_sail_taken(&craft->sail, now->state->taken);
}

// Weight, and of the sailor what it takes to move the body about the boat: `push`, her acceleration
// to port. Inertia of the whole is left to the equations of motion.
LW_INLINE void lw_moving_masses(const lw_craft *craft, const lw_instant *now, lw_lanes push,
                                lw_inflow *in)
{
    const lw_state_lanes *x = now->state;
    const lw_lanes zero = lw_all(0.0);
    const lw_attitude *at = &in->at;
    const lw_vector turn = lw_cross(in->spin, (lw_vector){zero, x->body_speed, zero});
    const lw_vector pull = {-2.0 * turn.x, -push - 2.0 * turn.y, -2.0 * turn.z};
    const lw_vector g = {-LW_GRAVITY * at->x.z, -LW_GRAVITY * at->y.z, -LW_GRAVITY * at->z.z};
    in->sailor = (lw_vector){now->ride->place, x->body, lw_all(craft->body_z)};
    in->boat_pull = g;
    in->sailor_pull = (lw_vector){g.x + pull.x, g.y + pull.y, g.z + pull.z};
}

LW_INLINE void lw_moving_inflow(const lw_motion *motion, const lw_instant *now, lw_lanes push,
                                lw_inflow *in)
{
    const lw_vector u = lw_velocity_of(now->state);
    in->at = lw_turned_attitude(now->turned);
    in->through = u;
    in->spin = lw_spin_of(now->state);
    lw_inflow_go(
        in, lw_lanes_max(lw_lanes_sqrt(u.x * u.x + u.y * u.y + u.z * u.z), lw_all(LW_LEAST_WAY)));
    lw_moving_water(motion, now, in);
    lw_moving_air(motion->craft, now, in);
    lw_moving_masses(motion->craft, now, push, in);
}

// All loads on a boat in motion, her sailor's body pushed to port by `push` [m/s^2].
LW_INLINE void lw_moving_loads(const lw_motion *motion, const lw_instant *now, lw_lanes push,
                               lw_loads *loads)
{
    lw_moving_inflow(motion, now, push, &loads->inflow);
    lw_load_main_foil(motion->craft, loads);
    lw_load_all(motion->craft, loads);
    for (int i = 0; i < 6; i++) loads->residual[i] = lw_all(0.0);
}

#endif
