// environment.h - what surrounds boats in motion: wind, and water at foils, hull and wand.
// SPDX-License-Identifier: MIT

#ifndef LW_ENVIRONMENT_H
#define LW_ENVIRONMENT_H

#include "medium/gust_lanes.h"
#include "medium/sea_lanes.h"
#include "motion/state.h"

// Along the ground's axes: towards the mean wind, to port of that, up.
typedef struct lw_environment {
    lw_vector wind;                                       // as read; z unused [m/s]
    lw_lanes coming;                                      // wind that is seen to come [m/s]
    lw_lanes main_surface, rudder_surface, wand_surface;  // above the mean water [m]
    lw_lanes hull_surface, hull_slope;                    // of a plane under the hull
    lw_vector main_water, rudder_water;                   // velocity of the water there [m/s]
} lw_environment;

// Wind and waves of a ride, going on by themselves.
typedef struct lw_environment_state {
    lw_sea_lanes sea;
    lw_gust_lanes gust;
    lw_lanes main_surface[2], rudder_surface[2];  // of the last two looks, newest first [m]
} lw_environment_state;

// A steady wind over plain water.
LW_INLINE lw_environment lw_environment_calm(lw_lanes wind)
{
    const lw_lanes zero = lw_all(0.0);
    const lw_vector still = {zero, zero, zero};
    return (lw_environment){{-wind, zero, zero}, wind, zero, zero, zero, zero, zero, still, still};
}

// The wind where the boat is, and as it is seen to come.
LW_INLINE void lw_wind_input(const lw_motion *motion, const lw_environment_state *state,
                             lw_environment *around)
{
    const lw_lanes wind = lw_gust_lanes_wind(&state->gust, &motion->gust);
    lw_lanes s, c;
    lw_lanes_sincos(lw_gust_lanes_shift(&state->gust, &motion->gust), &s, &c);
    around->wind.x = -wind * c, around->wind.y = -wind * s;
    around->coming = lw_gust_lanes_coming(&state->gust, &motion->gust);
}

// The sea where the boat is. A foil's depth counts from the surface of the last looks, carried on.
// The surface under the hull is the plane nearest to that at both foils and the wand, read at the
// hull's ends: waves shorter than the hull are smoothed by it, as they are by the hull.
LW_INLINE void lw_wave_input(const lw_craft *craft, lw_environment_state *state,
                             const lw_state_lanes *x, const lw_turned *t, lw_environment *around)
{
    const lw_lanes zero = lw_all(0.0);
    const lw_lanes bow_x = t->cos_bow * t->cos_pitch, bow_y = t->sin_bow * t->cos_pitch;
    const double r = craft->rudder_x, w = craft->wand_x - 0.6 * craft->setup.wand_length;
    const lw_lanes rudder_z = x->height + r * t->sin_pitch + craft->rudder_z;
    const lw_lanes at_main = 2.0 * state->main_surface[0] - state->main_surface[1];
    const lw_lanes at_rudder = 2.0 * state->rudder_surface[0] - state->rudder_surface[1];
    const lw_sea_look main =
        lw_sea_lanes_look(&state->sea, x->upwind, x->port, lw_lanes_max(at_main - x->height, zero));
    const lw_sea_look rudder =
        lw_sea_lanes_look(&state->sea, x->upwind + r * bow_x, x->port + r * bow_y,
                          lw_lanes_max(at_rudder - rudder_z, zero));
    const lw_lanes wand =
        lw_sea_lanes_surface(&state->sea, x->upwind + w * bow_x, x->port + w * bow_y);
    state->main_surface[1] = state->main_surface[0], state->main_surface[0] = main.surface;
    state->rudder_surface[1] = state->rudder_surface[0];
    state->rudder_surface[0] = rudder.surface;

    around->main_surface = main.surface, around->rudder_surface = rudder.surface;
    around->wand_surface = wand;
    around->main_water = (lw_vector){main.u, main.v, main.w};
    around->rudder_water = (lw_vector){rudder.u, rudder.v, rudder.w};

    // least squares through (0, main), (r, rudder), (w, wand)
    const double mean = (r + w) / 3.0, square = r * r + w * w - 3.0 * mean * mean;
    around->hull_slope =
        ((r - mean) * rudder.surface - mean * main.surface + (w - mean) * wand) * (1.0 / square);
    around->hull_surface =
        (main.surface + rudder.surface + wand) * (1.0 / 3.0) - mean * around->hull_slope;
}

LW_INLINE lw_environment lw_environment_of(const lw_motion *motion, lw_environment_state *state,
                                           lw_lanes wind, const lw_state_lanes *x,
                                           const lw_turned *t)
{
    lw_environment around = lw_environment_calm(wind);
    if (motion->is_gusty) lw_wind_input(motion, state, &around);
    if (motion->is_choppy) lw_wave_input(motion->craft, state, x, t, &around);
    return around;
}

// Lets them go on by one step; `apparent`: how fast air passes the boat [m/s].
LW_INLINE void lw_environment_step(const lw_motion *motion, lw_environment_state *state,
                                   lw_lanes apparent)
{
    if (motion->is_choppy) lw_sea_lanes_advance(&state->sea);
    if (motion->is_gusty) lw_gust_lanes_advance(&state->gust, &motion->gust, apparent);
}

#endif
