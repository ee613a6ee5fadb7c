// published_layer.h - functions that test/published/ names: sections with their boundary layers.
// SPDX-License-Identifier: MIT
//
// Sections are numbers, as in published_profile.h. A trip of 1 leaves transition free.

#ifndef LW_TEST_PUBLISHED_LAYER_H
#define LW_TEST_PUBLISHED_LAYER_H

#include "lullwise/boundary_layer.h"
#include "test/published_profile.h"

// The layer of the section and flap asked for last.
static lw_layer *layer_numbered(double number, lw_profile_flap flap)
{
    static lw_layer layer;
    static double last = -1.0;
    static lw_profile_flap last_flap;
    if (number != last || flap.hinge != last_flap.hinge || flap.angle != last_flap.angle) {
        static lw_profile profile;
        if (!profile_numbered(number, flap, &profile)) return NULL;
        if (lw_layer_of(&profile, &profile_room, &layer) != LW_PROFILE_OK) return NULL;
        last = number;
        last_flap = flap;
    }
    return &layer;
}

static lw_layer_load layer_load(lw_layer *layer, double alpha, double reynolds, double trip)
{
    const lw_layer_load none = {.lift = NAN, .drag = NAN, .moment = NAN};
    if (layer == NULL) return none;
    lw_layer_conditions at = lw_layer_free(reynolds, alpha * LW_DEG);
    at.trip[0] = at.trip[1] = trip;
    const lw_layer_load load = lw_layer_load_of(layer, &at);
    return load.outcome == LW_LAYER_SETTLED ? load : none;
}

static const lw_profile_flap flap_up = {0.0, 0.0};

static double layer_lift(const double *a)  // section, alpha, Re, trip
{
    return layer_load(layer_numbered(a[0], flap_up), a[1], a[2], a[3]).lift;
}
static double layer_drag(const double *a)
{
    return layer_load(layer_numbered(a[0], flap_up), a[1], a[2], a[3]).drag;
}
static double layer_moment(const double *a)
{
    return layer_load(layer_numbered(a[0], flap_up), a[1], a[2], a[3]).moment;
}
static double layer_slope(const double *a)  // section, Re, trip
{
    const double up[] = {a[0], 4.0, a[1], a[2]}, down[] = {a[0], -4.0, a[1], a[2]};
    return (layer_lift(up) - layer_lift(down)) / (8.0 * LW_DEG);
}
static double layer_zero_lift(const double *a)
{
    const double level[] = {a[0], 0.0, a[1], a[2]};
    return -layer_lift(level) / layer_slope(a) / LW_DEG;
}

// Least drag over angles from -2 to 3 degrees, transition free: section, Re.
static double layer_least_drag(const double *a)
{
    double least = NAN;
    for (double alpha = -2.0; alpha < 3.1; alpha += 0.5) {
        least = fmin(least, layer_load(layer_numbered(a[0], flap_up), alpha, a[1], 1.0).drag);
    }
    return least;
}

static double layer_flap_share(const double *a)  // section, flap chord, flap angle, Re, trip
{
    const double slope[] = {a[0], a[3], a[4]};
    const double per_angle = layer_slope(slope);
    const lw_profile_flap flap = {1.0 - a[1], a[2] * LW_DEG};
    return layer_load(layer_numbered(a[0], flap), 0.0, a[3], a[4]).lift / per_angle / flap.angle;
}

static lw_layer_stall stall_numbered(const double *a)  // section, Re; transition free
{
    lw_layer *layer = layer_numbered(a[0], flap_up);
    const lw_layer_conditions from = lw_layer_free(a[1], 4.0 * LW_DEG);
    if (layer == NULL) return (lw_layer_stall){NAN, NAN, LW_STALL_LOST};
    return lw_layer_stall_of(layer, &from);
}
static double layer_greatest_lift(const double *a) { return stall_numbered(a).lift; }
static double layer_stall_angle(const double *a) { return stall_numbered(a).alpha / LW_DEG; }

// clang-format off
#define PUBLISHED_LAYER                                        \
    {"layer_lift",          "-",     4, layer_lift},           \
    {"layer_drag",          "-",     4, layer_drag},           \
    {"layer_moment",        "-",     4, layer_moment},         \
    {"layer_slope",         "1/rad", 3, layer_slope},          \
    {"layer_zero_lift",     "deg",   3, layer_zero_lift},      \
    {"layer_least_drag",    "-",     2, layer_least_drag},     \
    {"layer_flap_share",    "-",     5, layer_flap_share},     \
    {"layer_greatest_lift", "-",     2, layer_greatest_lift},  \
    {"layer_stall_angle",   "deg",   2, layer_stall_angle}
// clang-format on

#endif
