// published_hull.h - functions that test/published/ names: hulls given by sections.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_PUBLISHED_HULL_H
#define LW_TEST_PUBLISHED_HULL_H

#include <math.h>

#include "lullwise/hull_shape.h"
#include "test/published_row.h"

// Wigley's hull of 100 m as sections, afloat at its draft.
static const lw_hull_form shape_form = {100.0, 10.0, 6.25};

static const lw_hull_cut *shape_cut(void)
{
    static lw_hull_shape shape;
    static lw_hull_cut cut;
    lw_hull_shape_wigley(&shape, shape_form, 2.0);
    lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){shape_form.draft, 0.0});
    return &cut;
}

static double shape_block(const double *a)
{
    (void)a;
    return shape_cut()->floating.volume / (100.0 * 10.0 * 6.25);
}
static double shape_plane(const double *a)
{
    (void)a;
    return shape_cut()->floating.waterplane / (100.0 * 10.0);
}
static double shape_centre(const double *a)  // KB / T
{
    (void)a;
    return shape_cut()->floating.centre_z / 6.25;
}
static double shape_across(const double *a)  // BM T / B^2
{
    (void)a;
    const lw_hull_floating *f = &shape_cut()->floating;
    return f->across / f->volume * 6.25 / (10.0 * 10.0);
}
static double shape_along(const double *a)  // BM T / L^2
{
    (void)a;
    const lw_hull_floating *f = &shape_cut()->floating;
    return f->along / f->volume * 6.25 / (100.0 * 100.0);
}
static double shape_wetted(const double *a)  // S / L^2
{
    (void)a;
    return shape_cut()->floating.wetted / (100.0 * 100.0);
}
static double shape_wave(const double *a)  // C_w on the wetted area, at a Froude number
{
    const double V = a[0] * sqrt(LW_GRAVITY * 100.0);
    return lw_hull_wave_area(shape_cut(), V) / shape_cut()->floating.wetted;
}
static double shape_wave_weight(const double *a)  // R_w / (rho g L^3)
{
    const double L = 100.0, V = a[0] * sqrt(LW_GRAVITY * L);
    return 0.5 * V * V * lw_hull_wave_area(shape_cut(), V) / (LW_GRAVITY * L * L * L);
}

// The dinghy of a tank's report, by its dimensions alone and our lines.
static const lw_hull_floating *dinghy_afloat(void)
{
    static lw_hull_shape shape;
    static lw_hull_cut cut;
    const lw_hull_dimensions d = {3.353, 0.345, 0.157, 0.2, 0.598, 0.734, 0.25};
    lw_hull_shape_of_dimensions(&shape, d);
    lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){d.draft, 0.0});
    return &cut.floating;
}
static double dinghy_volume(const double *a)
{
    (void)a;
    return dinghy_afloat()->volume;
}
static double dinghy_wetted(const double *a)
{
    (void)a;
    return dinghy_afloat()->wetted;
}
static double dinghy_centre(const double *a)  // from the bow, on the length
{
    (void)a;
    return 1.0 - dinghy_afloat()->centre_x / 3.353;
}

// clang-format off
#define PUBLISHED_HULL                                 \
    {"shape_block",       "-",  0, shape_block},       \
    {"shape_plane",       "-",  0, shape_plane},       \
    {"shape_centre",      "-",  0, shape_centre},      \
    {"shape_across",      "-",  0, shape_across},      \
    {"shape_along",       "-",  0, shape_along},       \
    {"shape_wetted",      "-",  0, shape_wetted},      \
    {"shape_wave",        "-",  1, shape_wave},        \
    {"shape_wave_weight", "-",  1, shape_wave_weight}, \
    {"dinghy_volume",     "m3", 0, dinghy_volume},     \
    {"dinghy_wetted",     "m2", 0, dinghy_wetted},     \
    {"dinghy_centre",     "-",  0, dinghy_centre}
// clang-format on

#endif
