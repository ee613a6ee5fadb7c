// initial.c - the initial condition of a ride: the state of a balance.
// SPDX-License-Identifier: MIT

#include "motion/initial.h"

#include "boat/effort.h"
#include "lullwise/elementary.h"
#include "solve/curve.h"

// Way through the water along level axes, turned into the boat's.
static void put_velocity(lw_ride_state *state, double speed, double leeway)
{
    const double s = lw_sin(state->pitch), c = lw_cos(state->pitch);
    const double sh = lw_sin(state->heel), ch = lw_cos(state->heel);
    const double along = speed * lw_cos(leeway), across = speed * lw_sin(leeway);
    state->surge = along * c;
    state->sway = -along * s * sh + across * ch;
    state->heave = -along * s * ch - across * sh;
}

lw_ride_state lw_initial_state(const lw_motion *motion, const lw_ask *ask, const lw_answer *answer)
{
    const lw_craft *craft = motion->craft;
    const lw_flight *f = &answer->flight;
    lw_ride_state state = {
        .heel = f->heel, .pitch = f->pitch, .bow = f->heading - f->leeway, .wand = f->wand};
    put_velocity(&state, f->speed, f->leeway);
    state.height = f->ride_height - craft->main_strut.length * lw_cos(f->pitch) * lw_cos(f->heel);
    state.body = -lw_effort_hike(craft, lw_all(f->effort))[0];
    state.taken = lw_effort_taken(lw_all(f->effort))[0];
    state.helm = f->helm;
    state.rudder = lw_craft_rudder(craft, f->turns);
    state.seen_heel = f->heel;
    state.seen_course = state.bow;
    state.seen_wind = state.felt_wind = state.mean_wind = ask->wind;
    const double depth =
        -(state.height +
          craft->pin_arm * (ask->setup.incidence - craft->pin_middle) * lw_sin(f->pitch));
    state.downwash =
        f->main_lift_coefficient * lw_curve_at(&craft->main_foil.downwash, lw_all(depth))[0];
    return state;
}
