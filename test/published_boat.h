// published_boat.h - functions that test/published/ names: hull and sail.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_PUBLISHED_BOAT_H
#define LW_TEST_PUBLISHED_BOAT_H

#include <math.h>

#include "lullwise/base.h"
#include "lullwise/hull_shape.h"
#include "rig/sail.h"
#include "test/published_row.h"

// Wigley's hull with B / L = 0.1, T / L = 0.0625 and L = 100 m.
static const lw_hull_form wigley = {100.0, 10.0, 6.25};

static double wigley_wetted(const double *a)
{
    (void)a;
    return lw_hull_form_hydrostatics(wigley).wetted / (wigley.length * wigley.length);
}
static double wigley_block(const double *a)
{
    (void)a;
    return lw_hull_form_hydrostatics(wigley).volume / (wigley.length * wigley.beam * wigley.draft);
}
static double wigley_metacentre(const double *a)  // BM T / B^2
{
    (void)a;
    return lw_hull_form_hydrostatics(wigley).metacentre_across * wigley.draft /
           (wigley.beam * wigley.beam);
}
static double wigley_wave(const double *a)  // C_w on the wetted area, at a Froude number
{
    const double V = a[0] * sqrt(LW_GRAVITY * wigley.length);
    return lw_hull_form_wave_area(wigley, V) / lw_hull_form_hydrostatics(wigley).wetted;
}
static double wigley_wave_weight(const double *a)  // R_w / (rho g L^3)
{
    const double L = wigley.length, V = a[0] * sqrt(LW_GRAVITY * L);
    return 0.5 * V * V * lw_hull_form_wave_area(wigley, V) / (LW_GRAVITY * L * L * L);
}

static double hazen_lift(const double *a)
{
    return lw_sail_coefficients_at(LW_SAIL_HAZEN_MAIN, a[0] * LW_DEG).lift;
}
static double hazen_drag(const double *a)
{
    return lw_sail_coefficients_at(LW_SAIL_HAZEN_MAIN, a[0] * LW_DEG).drag;
}
static double high_lift_lift(const double *a)
{
    return lw_sail_coefficients_at(LW_SAIL_HIGH_LIFT, a[0] * LW_DEG).lift;
}
static double high_lift_drag(const double *a)
{
    return lw_sail_coefficients_at(LW_SAIL_HIGH_LIFT, a[0] * LW_DEG).drag;
}
static double sail_induced(const double *a) { return lw_sail_induced_drag(a[0], a[1]); }

// clang-format off
#define PUBLISHED_BOAT                                   \
    {"wigley_wetted",      "-", 0, wigley_wetted},       \
    {"wigley_block",       "-", 0, wigley_block},        \
    {"wigley_metacentre",  "-", 0, wigley_metacentre},   \
    {"wigley_wave",        "-", 1, wigley_wave},         \
    {"wigley_wave_weight", "-", 1, wigley_wave_weight},  \
    {"hazen_lift",         "-", 1, hazen_lift},          \
    {"hazen_drag",         "-", 1, hazen_drag},          \
    {"high_lift_lift",     "-", 1, high_lift_lift},      \
    {"high_lift_drag",     "-", 1, high_lift_drag},      \
    {"sail_induced",       "-", 2, sail_induced}
// clang-format on

#endif
