// published_face.h - functions that test/published/ names: foils with air on their backs, and hulls
// that meet the water.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_PUBLISHED_FACE_H
#define LW_TEST_PUBLISHED_FACE_H

#include "foil/ventilation/cavity.h"
#include "foil/ventilation/face.h"
#include "hull/hull_force.h"
#include "lullwise/elementary.h"
#include "lullwise/hull_shape.h"
#include "test/published_row.h"

// Depth [chords] and flap chord.
static double face_slope(const double *a) { return lw_face_of(a[0], 0.0).slope; }
static double face_flap_share(const double *a) { return lw_face_of(a[0], a[1]).flap_share; }
static double face_flap_drag(const double *a) { return lw_face_of(a[0], a[1]).flap_drag; }
static double face_centre(const double *a) { return lw_face_of(a[0], 0.0).centre; }
static double face_flap_centre(const double *a) { return lw_face_of(a[0], a[1]).flap_centre; }

// Square to the plate, without induced angle: slope, angle [deg], cavitation number.
static double face_normal(const double *a) { return lw_face_lift(a[0], 0.0, a[1] * LW_DEG, a[2]); }
static double cavity_lasts(const double *a)  // [chords]: angle [deg], cavitation number
{
    const double depth = 1.0, speed = sqrt(2.0 * LW_GRAVITY * depth / a[1]);
    return lw_cavity_lasts(1.0, lw_all(a[0] * LW_DEG), lw_all(depth), lw_all(speed))[0];
}

static double wedge_drag(const double *a) { return lw_hull_form_wedge_drag(a[0] * LW_DEG); }

// Coefficient of a box that falls flat on the water and stands deep in it, on its area.
static double cross_flow(const double *a)
{
    (void)a;
    lw_hull_craft box = {.lowest = 0.0};
    for (int i = 0; i < LW_HULL_STRIPS; i++) {
        box.strip[i] = (lw_hull_strip){.width = 1.0 / LW_HULL_STRIPS, .per_t = 1e6};
    }
    const lw_hull_in_water in = {.water = lw_all(1.0), .slope = lw_all(0.0)};
    return lw_hull_slap_of(&box, 2.0, in, lw_all(-1.0), lw_all(0.0)).force[0];
}
// The same going ahead at a trim [deg]: lift on the area over 1/2 rho V^2.
static double cross_flow_trimmed(const double *a)
{
    const double s = lw_sin(a[0] * LW_DEG);
    return cross_flow(a) * s * s * lw_cos(a[0] * LW_DEG);
}

// clang-format off
#define PUBLISHED_FACE                                              \
    {"face_slope",             "1/rad",  1, face_slope},            \
    {"face_flap_share",        "-",      2, face_flap_share},       \
    {"face_flap_drag",         "-",      2, face_flap_drag},        \
    {"face_centre",            "-",      1, face_centre},           \
    {"face_flap_centre",       "-",      2, face_flap_centre},      \
    {"face_normal",            "-",      3, face_normal},           \
    {"cavity_lasts",           "chords", 2, cavity_lasts},          \
    {"wedge_drag",             "-",      1, wedge_drag},            \
    {"cross_flow",             "-",      0, cross_flow},            \
    {"cross_flow_trimmed",     "-",      1, cross_flow_trimmed}
// clang-format on

#endif
