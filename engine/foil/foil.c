// foil.c - one foil of a prepared craft by itself.
// SPDX-License-Identifier: MIT

#include "lullwise/foil.h"

#include <math.h>

#include "foil/foil_force.h"
#include "lullwise/elementary.h"

lw_foil_forces lw_foil_at(const lw_foil_craft *foil, double density, lw_foil_place place)
{
    const double rise = 0.5 * foil->span * fabs(lw_sin(place.heel));
    const double q = 0.5 * density * place.speed * place.speed;
    const lw_foil_flow flow = {
        .forward = lw_all(place.speed),
        .upward = lw_all(0.0),
        .log_speed = lw_all(lw_log(place.speed)),
        .at_speed = lw_interval_of(LW_SPEED_FIRST, LW_SPEED_STEP, lw_all(lw_log(place.speed))),
        .incidence = lw_all(place.incidence),
        .flap = lw_all(place.flap),
        .depth = lw_all(place.depth),
        .tip_rise = lw_all(rise)};
    const lw_foil_load load = lw_foil_force(foil, density, flow);
    const lw_lanes k =
        lw_curve_read(&foil->induced, lw_interval_of(0.0, LW_DEPTH_STEP, flow.depth));
    const double wetted = lw_foil_wetted(foil, flow.depth, flow.tip_rise)[0];
    const double C_L = load.coefficient[0];
    const double induced = q * foil->area * wetted * k[0] * C_L * C_L;
    const double junction = q * foil->junction_drag;
    return (lw_foil_forces){.lift = load.lift[0],
                            .moment = load.moment[0],
                            .section = load.drag[0] - induced - junction,
                            .induced = induced,
                            .junction = junction,
                            .coefficient = C_L,
                            .load_share = load.load_share[0],
                            .wetted = wetted};
}

// The incidence in -30..45 deg from which on more than `most` is lifted, or the stall is passed.
static double incidence_of(const lw_foil_craft *foil, double density, lw_foil_place place,
                           double most)
{
    double low = -30.0 * LW_DEG, high = 45.0 * LW_DEG;
    for (int step = 0; step < 60; step++) {
        place.incidence = 0.5 * (low + high);
        const lw_foil_forces f = lw_foil_at(foil, density, place);
        *(f.lift > most || f.load_share > 1.0 ? &high : &low) = place.incidence;
    }
    return low;
}

double lw_foil_incidence(const lw_foil_craft *foil, double density, lw_foil_place place,
                         double load)
{
    return incidence_of(foil, density, place, load);
}

double lw_foil_least_speed(const lw_foil_craft *foil, double density, lw_foil_place place,
                           double load)
{
    // the stall's lift coefficient hardly changes with speed
    place.speed = 5.0;
    for (int turn = 0; turn < 12; turn++) {
        place.incidence = incidence_of(foil, density, place, INFINITY);
        const double lift = lw_foil_at(foil, density, place).lift;
        if (!(lift > 0.0)) return 0.0;
        place.speed *= sqrt(load / lift);
    }
    return place.speed;
}
