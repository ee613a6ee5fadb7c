// stride.h - one step of time for rides side by side.
// SPDX-License-Identifier: MIT
//
// Three steps, order three, one look at the forces a step. In x' = f(x), with D near the slope of -f
// where it is steep, and M the mass where f is a force:
//
//     M (11 x+ - 18 x + 9 x- - 2 x--) / (6 dt) = 3 f - 3 f- + f-- - D e
//     e = x+ - 3 x + 3 x- - x--                                              [ascher-1995]
//
// The term with D vanishes as dt^3: it steadies the step and does not bend the motion. Angles and
// places follow from the velocities at the step's end. A ride begins as if it had come at the rates it
// begins with.

#ifndef LW_STRIDE_H
#define LW_STRIDE_H

#include "motion/fleet.h"

// Where a number goes on the parabola through its last three.
LW_INLINE lw_lanes lw_ahead(lw_lanes x, lw_lanes x_past, lw_lanes x_older)
{
    return 3.0 * (x - x_past) + x_older;
}

// What the last steps of x leave to be made up: (11 x+ - 18 x + 9 x- - 2 x--) / 6 - 11/6 e.
LW_INLINE lw_lanes lw_gone(lw_lanes x, lw_lanes x_past, lw_lanes x_older)
{
    return 2.5 * (x - x_past) - 1.5 * (x_past - x_older);
}

#define LW_LEAD (11.0 / 6.0)  // of x+ among the steps

// x+ where rates are a state's own and its lag damps by `decay` [1/s].
#define LW_STEP_LAG(member, decay)                                                          \
    next->member = lw_ahead(x->member, past->state.member, older->state.member) +           \
                   (dt * lw_ahead(rates->member, past->rates.member, older->rates.member) - \
                    lw_gone(x->member, past->state.member, older->state.member)) /          \
                       (LW_LEAD + dt * (decay))

// All that has a rate of its own but the velocities.
LW_INLINE void lw_step_lags(const lw_motion *motion, const lw_fleet *fleet,
                            const lw_state_lanes *rates, lw_state_lanes *next)
{
    const lw_state_lanes *x = &fleet->now;
    const lw_past *past = &fleet->past, *older = &fleet->older;
    const lw_ride_rules *rules = &motion->rules;
    const double dt = rules->step;
    const lw_lanes none = lw_all(0.0), hand = lw_all(1.0 / rules->hand_lag);
    const lw_lanes sight = lw_all(1.0 / rules->delay);
    LW_STEP_LAG(wand, lw_all(1.0 / rules->wand_lag));
    LW_STEP_LAG(downwash, lw_wash_pace(motion->craft, x));
    LW_STEP_LAG(body_speed, lw_all(2.0 / rules->body_lag));
    LW_STEP_LAG(body, none);
    LW_STEP_LAG(taken, hand);
    LW_STEP_LAG(helm, hand);
    LW_STEP_LAG(rudder, none);
    LW_STEP_LAG(seen_heel, sight);
    LW_STEP_LAG(seen_roll, sight);
    LW_STEP_LAG(seen_course, sight);
    LW_STEP_LAG(seen_wind, sight);
    LW_STEP_LAG(felt_wind, lw_all(1.0 / rules->felt_lag));
    LW_STEP_LAG(mean_wind, lw_all(1.0 / rules->mean_lag));
    LW_STEP_LAG(trim, none);
}

// Velocities along and about the boat's axes: six equations in six.
LW_INLINE void lw_step_velocities(const lw_motion *motion, const lw_fleet *fleet,
                                  const lw_state_lanes *rates, lw_state_lanes *next)
{
    const double dt = motion->rules.step;
    lw_moves mass;
    lw_mass_of(&motion->inertia, motion->craft, fleet->ride.place, next->body, &mass);
    const lw_lanes speed = lw_lanes_max(fleet->now.surge, lw_all(LW_LEAST_WAY));
    const lw_moves stiff = lw_stiff_of(&motion->inertia, &mass, LW_LEAD, speed, dt);
    // velocities come first in a state
    const lw_lanes *v = fleet->now.at, *f = rates->at;
    const lw_lanes *v_past = fleet->past.state.at, *v_older = fleet->older.state.at;
    const lw_lanes *f_past = fleet->past.rates.at, *f_older = fleet->older.rates.at;
    lw_lanes gone[LW_MOVES], e[LW_MOVES];
    for (int i = 0; i < LW_MOVES; i++) gone[i] = lw_gone(v[i], v_past[i], v_older[i]);
    for (int i = 0; i < LW_MOVES; i++) {
        e[i] = dt * lw_ahead(f[i], f_past[i], f_older[i]);
        for (int j = 0; j < LW_MOVES; j++) e[i] -= *lw_moves_at(&mass, i, j) * gone[j];
    }
    lw_moves_solve(&stiff, e);
    for (int i = 0; i < LW_MOVES; i++) {
        next->at[i] = lw_ahead(v[i], v_past[i], v_older[i]) + e[i];
    }
}

// x+ from the rate at the step's end.
LW_INLINE lw_lanes lw_carried(lw_lanes x, lw_lanes x_past, lw_lanes x_older, lw_lanes rate,
                              double dt)
{
    const lw_lanes on = 7.0 * (x - x_past) - 2.0 * (x_past - x_older);
    return x + (on + 6.0 * dt * rate) * (1.0 / 11.0);
}

#define LW_CARRY(member, rate)                                             \
    next->member = lw_carried(fleet->now.member, fleet->past.state.member, \
                              fleet->older.state.member, (rate), dt)
#define LW_AHEAD(member) \
    .member = lw_ahead(turns->now.member, turns->past.member, turns->older.member)

// Angles, and the place once they are known; the turns move on with them.
LW_INLINE void lw_step_places(const lw_fleet *fleet, double dt, lw_turns *turns,
                              lw_state_lanes *next)
{
    const lw_turned ahead = {LW_AHEAD(sin_heel), LW_AHEAD(cos_heel), LW_AHEAD(sin_pitch),
                             LW_AHEAD(cos_pitch)};
    const lw_vector angles = lw_angle_rates(&ahead, lw_spin_of(next));
    LW_CARRY(heel, angles.x);
    LW_CARRY(pitch, angles.y);
    LW_CARRY(bow, angles.z);
    turns->older = turns->past, turns->past = turns->now;
    turns->now = lw_turned_of(next);
    const lw_attitude at = lw_turned_attitude(&turns->now);
    const lw_vector v = lw_to_ground(&turns->now, lw_to_level(&at, lw_velocity_of(next)));
    LW_CARRY(upwind, v.x);
    LW_CARRY(port, v.y);
    LW_CARRY(height, v.z);
}

// The past of lanes that have none: they came at the rates that they have now.
LW_INLINE void lw_fleet_freshen(const lw_motion *motion, const lw_state_lanes *rates,
                                lw_fleet *fleet, lw_turns *turns)
{
    const double dt = motion->rules.step;
    const lw_state_lanes *now = &fleet->now;
    lw_moves mass;
    lw_mass_of(&motion->inertia, motion->craft, fleet->ride.place, now->body, &mass);
    lw_state_lanes pace = *rates;
    lw_travel(now, &turns->now, &pace);
    lw_moves_solve(&mass, pace.at);  // velocities come first
    lw_state_lanes once, twice;
    for (int k = 0; k < LW_RIDE_STATES; k++) {
        const lw_lanes step = dt * pace.at[k];
        once.at[k] = now->at[k] - step, twice.at[k] = now->at[k] - 2.0 * step;
    }
    lw_state_take(&fleet->past.state, &once, fleet->fresh);
    lw_state_take(&fleet->older.state, &twice, fleet->fresh);
    lw_state_take(&fleet->past.rates, rates, fleet->fresh);
    lw_state_take(&fleet->older.rates, rates, fleet->fresh);
    *turns = lw_turns_of(fleet);
    fleet->fresh = (lw_mask){0};
}

// One step of time, the boats being surrounded by `around` at its start. `turns`: of the fleet's
// states, moved on with them. `loads`: at the step's start.
LW_INLINE void lw_fleet_step(const lw_motion *motion, lw_fleet *fleet, const lw_around *around,
                             lw_turns *turns, lw_loads *loads)
{
    lw_state_lanes rates, next;
    const lw_instant now = {&fleet->ride, &fleet->now, &turns->now, around, &fleet->memory};
    lw_rates_of(motion, &now, &rates, loads);
    fleet->memory.flap = loads->inflow.main.flap;
    if (lw_any(fleet->fresh)) lw_fleet_freshen(motion, &rates, fleet, turns);
    lw_step_lags(motion, fleet, &rates, &next);
    lw_step_velocities(motion, fleet, &rates, &next);
    lw_step_places(fleet, motion->rules.step, turns, &next);
    fleet->older = fleet->past;
    fleet->past = (lw_past){fleet->now, rates};
    fleet->now = next;
}

#endif
