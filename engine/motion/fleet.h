// fleet.h - rides side by side, a ride in each lane, and one step of time for all of them.
// SPDX-License-Identifier: MIT
//
// Two-step, of order two, with one look at the forces a step. In x' = f(x), with D near the slope of
// -f where it is steep, and M the mass where f is a force:
//
//     M (3 x+ - 4 x + x-) / (2 dt) = 2 f - f- - D (x+ - 2 x + x-)        [ascher-1995]
//
// The term with D vanishes as dt^2: it steadies the step and does not bend the motion. Angles and
// places follow from the velocities at the step's end.

#ifndef LW_FLEET_H
#define LW_FLEET_H

#include "motion/watch.h"

typedef struct lw_past {
    lw_state state, rates;
} lw_past;

// The lanes of a ride. All members are vectors of 8-byte lanes, so that a ride is one lane of each.
typedef struct lw_fleet {
    lw_state now;
    lw_past past;
    lw_mask fresh;  // no past: starts with a step of Euler's
    lw_worn worn;
    lw_ride_lanes ride;
    lw_world world;
    lw_watch watch;
    lw_lanes wind;                                   // where it is not gusty [m/s]
    lw_lanes flying, swimming, distance, made_good;  // counted: lw_ride_tally
} lw_fleet;

// Lane i from a plan, its pilot wanting what she wants in flight.
void lw_ride_lanes_put(lw_ride_lanes *lanes, int i, const lw_ride_plan *plan);

// x+ - 2 x + x- where rates are a state's and lag damps by `decay` [1/s].
LW_INLINE lw_lanes lw_bend(lw_lanes x, lw_lanes x_past, lw_lanes rate, lw_lanes rate_past,
                           lw_lanes decay, double dt)
{
    return (dt * (2.0 * rate - rate_past) - (x - x_past)) / (1.5 + dt * decay);
}

#define LW_STEP_LAG(member, decay)             \
    next->member =                             \
        2.0 * x->member - past->state.member + \
        lw_bend(x->member, past->state.member, rates->member, past->rates.member, (decay), dt)

// All that has a rate of its own but the velocities.
LW_INLINE void lw_step_lags(const lw_motion *motion, const lw_state *x, const lw_past *past,
                            const lw_state *rates, lw_state *next)
{
    const lw_ride_rules *rules = &motion->rules;
    const double dt = rules->step;
    const lw_lanes none = lw_all(0.0), hand = lw_all(1.0 / rules->hand_lag);
    const lw_lanes sight = lw_all(1.0 / rules->delay);
    LW_STEP_LAG(wand, lw_all(1.0 / rules->wand_lag));
    LW_STEP_LAG(wash, lw_wash_pace(motion->craft, x));
    LW_STEP_LAG(body_speed, lw_all(2.0 / rules->body_lag));
    LW_STEP_LAG(body, none);
    LW_STEP_LAG(taken, hand);
    LW_STEP_LAG(helm, hand);
    LW_STEP_LAG(rudder, none);
    LW_STEP_LAG(seen_heel, sight);
    LW_STEP_LAG(seen_roll, sight);
    LW_STEP_LAG(seen_course, sight);
    LW_STEP_LAG(seen_wind, sight);
    LW_STEP_LAG(trim, none);
}

// Velocities along and about the boat's axes: six equations in six.
LW_INLINE void lw_step_velocities(const lw_motion *motion, const lw_ride_lanes *ride,
                                  const lw_state *x, const lw_past *past, const lw_state *rates,
                                  lw_state *next)
{
    const double dt = motion->rules.step;
    lw_moves mass;
    lw_mass_of(&motion->inertia, motion->craft, ride->place, next->body, &mass);
    const lw_lanes speed = lw_lanes_max(x->velocity.x, lw_all(LW_LEAST_WAY));
    const lw_moves stiff = lw_stiff_of(&motion->inertia, &mass, speed, dt);
    // velocities come first in a state
    const lw_lanes *v = (const lw_lanes *)x, *v_past = (const lw_lanes *)&past->state;
    const lw_lanes *f = (const lw_lanes *)rates, *f_past = (const lw_lanes *)&past->rates;
    lw_lanes bend[LW_MOVES], *to = (lw_lanes *)next;
    for (int i = 0; i < LW_MOVES; i++) {
        bend[i] = dt * (2.0 * f[i] - f_past[i]);
        for (int j = 0; j < LW_MOVES; j++) {
            bend[i] -= *lw_moves_at(&mass, i, j) * (v[j] - v_past[j]);
        }
    }
    lw_moves_solve(&stiff, bend);
    for (int i = 0; i < LW_MOVES; i++) to[i] = 2.0 * v[i] - v_past[i] + bend[i];
}

// x+ from the rate at the step's end.
LW_INLINE lw_lanes lw_carried(lw_lanes x, lw_lanes x_past, lw_lanes rate, lw_mask fresh, double dt)
{
    return x + lw_select(fresh, dt * rate, ((x - x_past) * 0.5 + dt * rate) * (1.0 / 1.5));
}

LW_INLINE lw_lanes lw_ahead(lw_lanes x, lw_lanes x_past) { return 2.0 * x - x_past; }

// Angles, and the place once they are known. `t`, `t_past`: of x and of the past; `t_next` is found.
LW_INLINE void lw_step_places(const lw_state *x, const lw_past *past, lw_mask fresh, double dt,
                              const lw_turned *t, const lw_turned *t_past, lw_state *next,
                              lw_turned *t_next)
{
    const lw_turned ahead = {.sin_roll = lw_ahead(t->sin_roll, t_past->sin_roll),
                             .cos_roll = lw_ahead(t->cos_roll, t_past->cos_roll),
                             .sin_pitch = lw_ahead(t->sin_pitch, t_past->sin_pitch),
                             .cos_pitch = lw_ahead(t->cos_pitch, t_past->cos_pitch)};
    const lw_vector angles = lw_angle_rates(&ahead, next->spin);
    next->roll = lw_carried(x->roll, past->state.roll, angles.x, fresh, dt);
    next->pitch = lw_carried(x->pitch, past->state.pitch, angles.y, fresh, dt);
    next->yaw = lw_carried(x->yaw, past->state.yaw, angles.z, fresh, dt);
    *t_next = lw_turned_of(next);
    const lw_attitude at = lw_turned_attitude(t_next);
    const lw_vector v = lw_to_ground(t_next, lw_to_level(&at, next->velocity));
    next->upwind = lw_carried(x->upwind, past->state.upwind, v.x, fresh, dt);
    next->port = lw_carried(x->port, past->state.port, v.y, fresh, dt);
    next->height = lw_carried(x->height, past->state.height, v.z, fresh, dt);
}

// The past of lanes that have none: half the rate makes their first step one of Euler's.
LW_INLINE void lw_fleet_freshen(lw_fleet *fleet, const lw_state *rates)
{
    lw_state half;
    for (size_t i = 0; i < LW_STATES; i++) {
        ((lw_lanes *)&half)[i] = 0.5 * ((const lw_lanes *)rates)[i];
    }
    lw_state_take(&fleet->past.state, &fleet->now, fleet->fresh);
    lw_state_take(&fleet->past.rates, &half, fleet->fresh);
}

// One step of time, the boats being surrounded by `around` at its start. `t`, `t_past`: angles of now
// and of the past; moved on with them. `loads`: at the step's start.
LW_INLINE void lw_fleet_step(const lw_motion *motion, lw_fleet *fleet, const lw_around *around,
                             lw_turned *t, lw_turned *t_past, lw_loads *loads)
{
    const double dt = motion->rules.step;
    lw_state rates, next;
    lw_rates_of(motion, &fleet->ride, &fleet->now, t, around, &fleet->worn, &rates, loads);
    fleet->worn.flap = loads->linkage.flap;

    if (lw_any(fleet->fresh)) lw_fleet_freshen(fleet, &rates);
    lw_step_lags(motion, &fleet->now, &fleet->past, &rates, &next);
    lw_step_velocities(motion, &fleet->ride, &fleet->now, &fleet->past, &rates, &next);
    lw_turned t_next;
    lw_step_places(&fleet->now, &fleet->past, fleet->fresh, dt, t, t_past, &next, &t_next);
    fleet->past = (lw_past){fleet->now, rates};
    fleet->now = next;
    *t_past = *t, *t = t_next;
    fleet->fresh = (lw_mask){0};
}

#endif
