// jacobian.c - the right-hand side by itself: all rates of a state, and its Jacobian.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "motion/equations.h"

// Lanes of states of one plan in calm water, and all their rates.
typedef struct view {
    const lw_motion *motion;
    lw_ride_lanes ride;
    lw_lanes wind;
    lw_state_lanes state, rates;
} view;

LW_CLONES
static void look(view *v)
{
    const lw_motion *motion = v->motion;
    const lw_turned t = lw_turned_of(&v->state);
    const lw_environment around = lw_environment_calm(v->wind);
    const lw_hysteresis none = {.flap = lw_all(0.0)};
    lw_loads loads;
    const lw_wish_lanes wish = lw_wished(&v->ride.pilot, v->state.felt_wind);
    const lw_instant now = {&v->ride, &v->state, &t, &around, &none, &wish};
    lw_dynamic_rates(motion, &now, &v->rates, &loads);
    lw_kinematic_rates(&v->state, &t, &v->rates);
    lw_mass_matrix mass;
    lw_mass_matrix_of(&motion->inertia, motion->craft, v->ride.place, v->state.body, &mass);
    lw_mass_matrix_solve(&mass, v->rates.at);  // velocities come first
}

static view view_of(const lw_motion *motion, const lw_ride_plan *plan)
{
    view v;
    memset(&v, 0, sizeof v);
    v.motion = motion;
    LW_EACH_LANE (i) lw_ride_lanes_put(&v.ride, i, plan);
    v.wind = lw_all(plan->wind);
    return v;
}

void lw_motion_rates(const lw_motion *motion, const lw_ride_plan *plan, const lw_ride_state *state,
                     lw_ride_state *rates)
{
    view v = view_of(motion, plan);
    LW_EACH_LANE (i) lw_state_put(&v.state, i, state);
    look(&v);
    *rates = lw_state_lane(&v.rates, 0);
}

// Central differences, half a millionth of a unit either way; each look fills the lanes.
void lw_motion_jacobian(const lw_motion *motion, const lw_ride_plan *plan,
                        const lw_ride_state *state, lw_jacobian jacobian)
{
    const double by = 1e-5;
    double up[LW_RIDE_STATES];
    lw_ride_state x = *state;
    view v = view_of(motion, plan);
    const size_t looks = (size_t)2 * LW_RIDE_STATES;
    for (size_t look_at = 0; look_at < looks; look_at += LW_WIDTH) {
        for (size_t i = 0; i < LW_WIDTH; i++) {
            const size_t which = look_at + i, j = which / 2 % LW_RIDE_STATES;
            x.at[j] += which % 2 ? -by : by;
            lw_state_put(&v.state, (int)i, &x);
            x.at[j] = state->at[j];
        }
        look(&v);
        for (size_t i = 0; i < LW_WIDTH && look_at + i < looks; i++) {
            const size_t which = look_at + i, j = which / 2;
            for (size_t k = 0; k < LW_RIDE_STATES; k++) {
                const double rate = v.rates.at[k][i];
                if (which % 2 == 0) up[k] = rate;
                if (which % 2) jacobian[k][j] = (up[k] - rate) / (2.0 * by);
            }
        }
    }
}
