// step.h - multistep integrator: one step of time for boats side by side.
// SPDX-License-Identifier: MIT
//
// Three steps, order three, one look at the forces a step. In x' = f(x), with D near the slope of
// -f where it is steep, and M the mass where f is a force:
//
//     M (11 x+ - 18 x + 9 x- - 2 x--) / (6 dt) = 3 f - 3 f- + f-- - D e
//     e = x+ - 3 x + 3 x- - x--                                              [ascher-1995]
//
// The term with D vanishes as dt^3: it steadies the step and does not bend the motion. Angles and
// places follow from the velocities at the step's end. A ride begins as if it had come at the rates
// it begins with.

#ifndef LW_STEP_H
#define LW_STEP_H

#include "motion/equations.h"

typedef struct lw_history {
    lw_state_lanes state, rates;
} lw_history;

// Boats in motion, a boat in each lane: where they are and were, and what they keep.
typedef struct lw_moving {
    lw_state_lanes now;
    lw_history history[2];  // of the last step, and of the one before
    lw_mask restarts;       // no history yet
    lw_hysteresis memory;
    lw_ride_lanes ride;
} lw_moving;

// What follows from the states and is worked out once for each: the angles' sines and cosines of
// now, of the last step, and of the one before; and the wish of now.
typedef struct lw_turns {
    lw_turned now, past, older;
    lw_wish_lanes wish;
} lw_turns;

LW_INLINE lw_turns lw_turns_of(const lw_moving *boats)
{
    return (lw_turns){lw_turned_of(&boats->now), lw_turned_of(&boats->history[0].state),
                      lw_turned_of(&boats->history[1].state),
                      lw_wished(&boats->ride.pilot, boats->now.felt_wind)};
}

// Where a number goes on the parabola through its last three.
LW_INLINE lw_lanes lw_extrapolate(lw_lanes x, lw_lanes x_past, lw_lanes x_older)
{
    return 3.0 * (x - x_past) + x_older;
}

// What the last steps of x leave to be made up: (11 x+ - 18 x + 9 x- - 2 x--) / 6 - 11/6 e.
LW_INLINE lw_lanes lw_bdf_past(lw_lanes x, lw_lanes x_past, lw_lanes x_older)
{
    return 2.5 * (x - x_past) - 1.5 * (x_past - x_older);
}

#define LW_BDF_LEAD (11.0 / 6.0)  // of x+ among the steps

// x+ where rates are a state's own and its lag damps by `decay` [1/s].
#define LW_STEP_LAG(member, decay)                                                                \
    next->member = lw_extrapolate(x->member, past->state.member, older->state.member) +           \
                   (dt * lw_extrapolate(rates->member, past->rates.member, older->rates.member) - \
                    lw_bdf_past(x->member, past->state.member, older->state.member)) /            \
                       (LW_BDF_LEAD + dt * (decay))

// All that has a rate of its own but the velocities.
LW_INLINE void lw_step_lags(const lw_motion *motion, const lw_moving *boats,
                            const lw_state_lanes *rates, lw_state_lanes *next)
{
    const lw_state_lanes *x = &boats->now;
    const lw_history *past = &boats->history[0], *older = &boats->history[1];
    const lw_ride_parameters *parameters = &motion->parameters;
    const double dt = parameters->step;
    const lw_lanes none = lw_all(0.0), hand = lw_all(1.0 / parameters->hand_lag);
    const lw_lanes sight = lw_all(1.0 / parameters->delay);
    LW_STEP_LAG(wand, lw_all(1.0 / parameters->wand_lag));
    LW_STEP_LAG(downwash, lw_downwash_pace(motion->craft, x));
    LW_STEP_LAG(body_speed, lw_all(2.0 / parameters->body_lag));
    LW_STEP_LAG(body, none);
    LW_STEP_LAG(taken, hand);
    LW_STEP_LAG(helm, hand);
    LW_STEP_LAG(rudder, none);
    LW_STEP_LAG(seen_heel, sight);
    LW_STEP_LAG(seen_roll, sight);
    LW_STEP_LAG(seen_course, sight);
    LW_STEP_LAG(seen_wind, sight);
    LW_STEP_LAG(felt_wind, lw_all(1.0 / parameters->felt_lag));
    LW_STEP_LAG(mean_wind, lw_all(1.0 / parameters->mean_lag));
    LW_STEP_LAG(trim, none);
}

// Velocities along and about the boat's axes: six equations in six.
LW_INLINE void lw_step_velocities(const lw_motion *motion, const lw_moving *boats,
                                  const lw_state_lanes *rates, lw_state_lanes *next)
{
    const double dt = motion->parameters.step;
    lw_mass_matrix mass;
    lw_mass_matrix_of(&motion->inertia, motion->craft, boats->ride.place, next->body, &mass);
    const lw_lanes speed = lw_lanes_max(boats->now.surge, lw_all(LW_LEAST_WAY));
    const lw_mass_matrix stiff = lw_step_matrix_of(&motion->inertia, &mass, LW_BDF_LEAD, speed, dt);
    // velocities come first in a state
    const lw_lanes *v = boats->now.at, *f = rates->at;
    const lw_lanes *v_past = boats->history[0].state.at, *v_older = boats->history[1].state.at;
    const lw_lanes *f_past = boats->history[0].rates.at, *f_older = boats->history[1].rates.at;
    lw_lanes gone[LW_DOF], e[LW_DOF];
    for (int i = 0; i < LW_DOF; i++) gone[i] = lw_bdf_past(v[i], v_past[i], v_older[i]);
    for (int i = 0; i < LW_DOF; i++) {
        e[i] = dt * lw_extrapolate(f[i], f_past[i], f_older[i]);
        for (int j = 0; j < LW_DOF; j++) e[i] -= *lw_mass_matrix_at(&mass, i, j) * gone[j];
    }
    lw_mass_matrix_solve(&stiff, e);
    for (int i = 0; i < LW_DOF; i++) {
        next->at[i] = lw_extrapolate(v[i], v_past[i], v_older[i]) + e[i];
    }
}

// x+ from the rate at the step's end.
LW_INLINE lw_lanes lw_bdf_next(lw_lanes x, lw_lanes x_past, lw_lanes x_older, lw_lanes rate,
                               double dt)
{
    const lw_lanes on = 7.0 * (x - x_past) - 2.0 * (x_past - x_older);
    return x + (on + 6.0 * dt * rate) * (1.0 / 11.0);
}

#define LW_BDF_NEXT(member, rate)                                                 \
    next->member = lw_bdf_next(boats->now.member, boats->history[0].state.member, \
                               boats->history[1].state.member, (rate), dt)
#define LW_EXTRAPOLATE(member) \
    .member = lw_extrapolate(turns->now.member, turns->past.member, turns->older.member)

// Angles, and the place once they are known; the turns move on with them.
LW_INLINE void lw_step_positions(const lw_moving *boats, double dt, lw_turns *turns,
                                 lw_state_lanes *next)
{
    const lw_turned ahead = {LW_EXTRAPOLATE(sin_heel), LW_EXTRAPOLATE(cos_heel),
                             LW_EXTRAPOLATE(sin_pitch), LW_EXTRAPOLATE(cos_pitch)};
    const lw_vector angles = lw_angle_rates(&ahead, lw_spin_of(next));
    LW_BDF_NEXT(heel, angles.x);
    LW_BDF_NEXT(pitch, angles.y);
    LW_BDF_NEXT(bow, angles.z);
    turns->older = turns->past, turns->past = turns->now;
    turns->now = lw_turned_of(next);
    const lw_attitude at = lw_turned_attitude(&turns->now);
    const lw_vector v = lw_to_ground(&turns->now, lw_to_level(&at, lw_velocity_of(next)));
    LW_BDF_NEXT(upwind, v.x);
    LW_BDF_NEXT(port, v.y);
    LW_BDF_NEXT(height, v.z);
}

// The past of lanes that have none: they came at the rates that they have now.
LW_INLINE void lw_moving_restart(const lw_motion *motion, const lw_state_lanes *rates,
                                 lw_moving *boats, lw_turns *turns)
{
    const double dt = motion->parameters.step;
    const lw_state_lanes *now = &boats->now;
    lw_mass_matrix mass;
    lw_mass_matrix_of(&motion->inertia, motion->craft, boats->ride.place, now->body, &mass);
    lw_state_lanes pace = *rates;
    lw_kinematic_rates(now, &turns->now, &pace);
    lw_mass_matrix_solve(&mass, pace.at);  // velocities come first
    lw_state_lanes once, twice;
    for (int k = 0; k < LW_RIDE_STATES; k++) {
        const lw_lanes step = dt * pace.at[k];
        once.at[k] = now->at[k] - step, twice.at[k] = now->at[k] - 2.0 * step;
    }
    lw_state_take(&boats->history[0].state, &once, boats->restarts);
    lw_state_take(&boats->history[1].state, &twice, boats->restarts);
    lw_state_take(&boats->history[0].rates, rates, boats->restarts);
    lw_state_take(&boats->history[1].rates, rates, boats->restarts);
    *turns = lw_turns_of(boats);
    boats->restarts = (lw_mask){0};
}

// One step of time, the boats being surrounded by `around` at its start. `turns`: of their
// states, moved on with them. `loads`: at the step's start.
LW_INLINE void lw_moving_step(const lw_motion *motion, lw_moving *boats,
                              const lw_environment *around, lw_turns *turns, lw_loads *loads)
{
    lw_state_lanes rates, next;
    const lw_instant now = {&boats->ride, &boats->now,    &turns->now,
                            around,       &boats->memory, &turns->wish};
    lw_dynamic_rates(motion, &now, &rates, loads);
    boats->memory.flap = loads->inflow.main.flap;
    if (lw_any(boats->restarts)) lw_moving_restart(motion, &rates, boats, turns);
    lw_step_lags(motion, boats, &rates, &next);
    lw_step_velocities(motion, boats, &rates, &next);
    lw_step_positions(boats, motion->parameters.step, turns, &next);
    boats->history[1] = boats->history[0];
    boats->history[0] = (lw_history){boats->now, rates};
    boats->now = next;
}

#endif
