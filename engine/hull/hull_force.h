// hull_force.h - buoyancy, friction and wave drag of the hull from rest to lift-off.
// SPDX-License-Identifier: MIT

#ifndef LW_HULL_FORCE_H
#define LW_HULL_FORCE_H

#include "lullwise/craft.h"
#include "solve/bspline.h"
#include "solve/curve.h"
#include "solve/lanes.h"

typedef struct lw_hull_load {
    lw_lanes buoyancy;         // [N] up
    lw_lanes moment_ahead;     // [N m] buoyancy x its middle's way ahead of the main strut
    lw_lanes moment_above;     // [N m] buoyancy x its middle's height above the hull's bottom there
    lw_lanes roll_moment;      // [N m] of the waterplane against windward heel, for each sin(heel)
    lw_lanes friction, waves;  // [N]
    lw_lanes drag;             // [N] both
    lw_lanes immersed;         // [m^3]
    lw_lanes stem;             // [m] how much deeper the stem is than afloat
} lw_hull_load;

// How the hull meets the water, along its own axes.
typedef struct lw_hull_in_water {
    lw_lanes water;      // [m] above the hull's bottom at the main strut
    lw_lanes slope;      // fall of the water forward: tan(pitch) when upright
    lw_lanes speed;      // V [m/s]
    lw_lanes log_speed;  // ln V
    lw_interval at_speed;
} lw_hull_in_water;

typedef struct lw_hull_knots {
    lw_bspline_interval full, steep, fast;
} lw_hull_knots;

LW_INLINE lw_four lw_hull_read_form(const lw_hull_craft *hull, const lw_hull_knots *at, int lane)
{
    lw_four sum = {0};
    for (int i = 0; i < 4; i++) {
        const double(*row)[4] = &hull->form[at->full.first[lane] + i][at->steep.first[lane]];
        lw_four part = {0};
        for (int j = 0; j < 4; j++) part += at->steep.value[j][lane] * *(const lw_four *)row[j];
        sum += at->full.value[i][lane] * part;
    }
    return sum;
}

LW_INLINE double lw_hull_read_wave(const lw_hull_craft *hull, const lw_hull_knots *at, int lane)
{
    const int k = at->fast.first[lane];
    lw_four sum = {0};
    for (int i = 0; i < 4; i++) {
        const double(*row)[LW_HULL_SPEEDS + 2] =
            &hull->wave[at->full.first[lane] + i][at->steep.first[lane]];
        lw_four part = {0};
        for (int j = 0; j < 4; j++) part += at->steep.value[j][lane] * *(const lw_four *)&row[j][k];
        sum += at->full.value[i][lane] * part;
    }
    double wave = 0.0;
    for (int i = 0; i < 4; i++) wave += at->fast.value[i][lane] * sum[i];
    return wave;
}

// Mean beam of a strip that is T deep, over its full beam.
LW_INLINE lw_lanes lw_hull_wet(const lw_hull_strip *strip, lw_lanes T)
{
    const double b = strip->b, c = strip->c;
    const lw_lanes y = T * strip->per_t, bend = y * (b + c * y);
    return y * ((1.0 - b) + y * ((b - c) + c * y)) / (1.0 + y * (1.0 + bend));
}

// Volume under water and its first moment ahead of the strut. They come from one potential,
// whatever the strips: d volume / d slope = -d moment / d water.
LW_INLINE void lw_hull_displaced(const lw_hull_craft *hull, lw_lanes water, lw_lanes slope,
                                 lw_lanes *volume, lw_lanes *moment)
{
    lw_lanes all = lw_all(0.0), ahead = all;
    for (int i = 0; i < LW_HULL_STRIPS; i++) {
        const lw_hull_strip *strip = &hull->strip[i];
        const lw_lanes T = lw_lanes_max(water - strip->keel - strip->x * slope, lw_all(0.0));
        const lw_lanes part = strip->width * T * lw_hull_wet(strip, T);
        all += part;
        ahead += strip->x * part;
    }
    *volume = all, *moment = ahead;
}

// How much deeper the stem is than afloat, which lw_hull_bow_drag goes by.
LW_INLINE lw_lanes lw_hull_stem(const lw_hull_craft *hull, lw_hull_in_water in)
{
    const double keel = hull->strip[LW_HULL_STRIPS - 1].keel, flare = 0.05;  // [m] [judged]
    const lw_lanes deep = in.water - keel - hull->stem_x * in.slope - hull->stem_deep;
    const lw_lanes d = lw_lanes_max(deep, lw_all(0.0));
    return d * d / (d + flare);  // comes in without a corner
}

// Forces on a hull, from strips and splines of its own lines (doc/theory.md, Hull).
//
//     R_f = 1/2 rho V^2 S (1 + k) C_F                                  [ittc-57]
//     R_w = 1/2 rho V^2 volume wave(volume, slope, ln V)               [michell-1898]
//
// Holds for    pitch within 8.5 deg, up to twice the measured volume; beyond that wetted area and
//              waves grow with the volume. Slower than Fn 0.25 the waves count as there.
// Leaves out   planing lift, spray, side force.
LW_INLINE lw_hull_load lw_hull_force(const lw_hull_craft *hull, double density, lw_hull_in_water in)
{
    const lw_lanes none = lw_all(0.0);
    if (!lw_any(in.water > hull->lowest - hull->reach * lw_lanes_abs(in.slope))) {
        return (lw_hull_load){none, none, none, none, none,
                              none, none, none, none};  // all clear of the water
    }
    lw_lanes volume, ahead;
    lw_hull_displaced(hull, in.water, in.slope, &volume, &ahead);
    const lw_lanes part = volume * (1.0 / hull->most);
    const lw_lanes root = lw_lanes_sqrt(part) * (LW_HULL_VOLUMES - 1.0);
    const lw_lanes slope = (in.slope + hull->steepest) * (0.5 / hull->steepest);
    const lw_lanes speed = (in.log_speed - hull->wave_first) * (1.0 / hull->wave_step);
    const lw_hull_knots at = {
        .full = lw_bspline_interval_of(LW_HULL_VOLUMES, root),
        .steep = lw_bspline_interval_of(LW_HULL_SLOPES, slope * (LW_HULL_SLOPES - 1.0)),
        .fast = lw_bspline_interval_of(LW_HULL_SPEEDS, speed)};

    lw_lanes wetted, across, centre, wave;
    LW_EACH_LANE (i) {
        const lw_four form = lw_hull_read_form(hull, &at, i);
        wetted[i] = form[LW_HULL_WETTED], across[i] = form[LW_HULL_ACROSS];
        centre[i] = form[LW_HULL_CENTRE];
        wave[i] = lw_hull_read_wave(hull, &at, i);
    }
    const lw_lanes q = 0.5 * density * in.speed * in.speed;
    const lw_lanes beyond = lw_lanes_max(part, lw_all(1.0));
    const lw_mask is_wet = volume > 0.0;
    const lw_lanes rough = beyond * wetted * lw_curve_read(&hull->friction, in.at_speed);
    const lw_lanes friction = lw_select(is_wet, q * rough, none);
    const lw_lanes waves = q * volume * lw_lanes_max(wave, none);
    const double weight = density * LW_GRAVITY;
    return (lw_hull_load){.buoyancy = weight * volume,
                          .moment_ahead = weight * ahead,
                          .moment_above = weight * (volume * centre),
                          .roll_moment = lw_select(is_wet, weight * beyond * across, none),
                          .friction = friction,
                          .waves = waves,
                          .drag = friction + waves,
                          .immersed = volume,
                          .stem = lw_hull_stem(hull, in)};
}

// Drag of a bow under water: a wedge (lullwise/hull_shape.h) with a cavity behind its shoulders.
//
//     D = 1/2 rho u |u| C_D B d,   less where the water closes in: by u^2 / (u^2 + 9 g d)  [judged]
//
// d: lw_hull_stem; B: the hull's beam. Leaves out the deck and what stands on it.
LW_INLINE lw_lanes lw_hull_bow_drag(const lw_hull_craft *hull, double density, lw_lanes d,
                                    lw_lanes u)
{
    const lw_lanes u_2 = u * u, open = u_2 / (u_2 + 9.0 * LW_GRAVITY * d + 1e-9);
    return (0.5 * density * hull->stem_drag) * open * d * u * lw_lanes_abs(u);
}

// Water met across: what a hull that comes down on it, or goes bow up, feels in each strip.
//
//     F = 1/2 rho C b w^2,   C = 1                                    [zarnick-1978] [hoerner-fdd]
//
// b: mean beam below the water; w: how fast the strip goes down, square to the hull's bottom. What
// comes up leaves the water behind without a pull.
// Leaves out   the first slap (a wedge's, [von-karman-1929], grows from nothing with its depth).
typedef struct lw_hull_slap {
    lw_lanes force, moment;  // [N] along the hull's mast axis, [N m] ahead of the strut
} lw_hull_slap;

LW_INLINE lw_hull_slap lw_hull_slap_of(const lw_hull_craft *hull, double density,
                                       lw_hull_in_water in, lw_lanes rise, lw_lanes bow_down)
{
    const double C = 1.0;
    lw_hull_slap slap = {lw_all(0.0), lw_all(0.0)};
    for (int i = 0; i < LW_HULL_STRIPS; i++) {
        const lw_hull_strip *strip = &hull->strip[i];
        const lw_lanes T = lw_lanes_max(in.water - strip->keel - strip->x * in.slope, lw_all(0.0));
        const lw_lanes w = lw_lanes_min(rise - strip->x * bow_down, lw_all(0.0));
        const lw_lanes part = (0.5 * density * C * strip->width) * lw_hull_wet(strip, T) * w * w;
        slap.force += part;
        slap.moment += strip->x * part;
    }
    return slap;
}

#endif
