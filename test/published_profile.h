// published_profile.h - functions that test/published/ names: outlines and flow of sections.
// SPDX-License-Identifier: MIT
//
// A section is written as a number: 12 is NACA 0012, 23012 is NACA 23012, 63412 is NACA 63-412.

#ifndef LW_TEST_PUBLISHED_PROFILE_H
#define LW_TEST_PUBLISHED_PROFILE_H

#include <math.h>
#include <stdio.h>

#include "lullwise/base.h"
#include "lullwise/profile.h"
#include "test/published_row.h"

static lw_profile_room profile_room;

static bool outline_numbered(double number, lw_outline *outline)
{
    char name[16];
    const int n = (int)number;
    if (n > 60000) {
        snprintf(name, sizeof name, "%02d-%03d", n / 1000, n % 1000);
    } else {
        snprintf(name, sizeof name, n > 9999 ? "%05d" : "%04d", n);
    }
    return lw_outline_naca(name, outline) == LW_PROFILE_OK;
}

static bool profile_numbered(double number, lw_profile_flap flap, lw_profile *profile)
{
    static lw_outline outline;
    return outline_numbered(number, &outline) &&
           lw_profile_of(&outline, flap, LW_PANELS_USUAL, profile) == LW_PROFILE_OK;
}

// Half the thickness of a symmetrical section at x [%]: both in per cent.
static double outline_half(const double *a)  // section, x
{
    static lw_outline o;
    if (!outline_numbered(a[0], &o)) return NAN;
    const double x = 0.01 * a[1];
    for (int i = o.count / 2; i < o.count - 1; i++) {
        if (x > o.x[i + 1]) continue;
        // a parabola in the square root of x, which suits a round nose
        const int j = i > o.count / 2 ? i - 1 : i;
        double y = 0.0;
        for (int k = 0; k < 3; k++) {
            double share = 1.0;
            for (int m = 0; m < 3; m++) {
                if (m == k) continue;
                share *= (sqrt(x) - sqrt(fmax(o.x[j + m], 0.0))) /
                         (sqrt(fmax(o.x[j + k], 0.0)) - sqrt(fmax(o.x[j + m], 0.0)));
            }
            y += share * o.y[j + k];
        }
        return 100.0 * y;
    }
    return NAN;
}

static bool flow_numbered(double number, lw_profile *profile, lw_profile_flow *flow)
{
    return profile_numbered(number, (lw_profile_flap){0}, profile) &&
           lw_profile_flow_of(profile, &profile_room, flow) == LW_PROFILE_OK;
}

static lw_profile_load potential_load(double number, double alpha)
{
    static lw_profile profile;
    static lw_profile_flow flow;
    if (!flow_numbered(number, &profile, &flow)) return (lw_profile_load){NAN, NAN, NAN, NAN};
    return lw_profile_load_of(&profile, &flow, alpha * LW_DEG);
}

static double potential_lift(const double *a) { return potential_load(a[0], a[1]).lift; }
static double potential_moment(const double *a) { return potential_load(a[0], a[1]).moment; }
static double potential_least(const double *a) { return potential_load(a[0], a[1]).least_pressure; }
static double potential_slope(const double *a)
{
    const double step = 0.5;
    return (potential_load(a[0], step).lift - potential_load(a[0], -step).lift) /
           (2.0 * step * LW_DEG);
}
static double potential_zero_lift(const double *a)
{
    return -potential_load(a[0], 0.0).lift / potential_slope(a) / LW_DEG;
}

// Speed above at x [%] for the two unit flows, by a straight line between nodes.
static bool speeds_at(const double *a, double *along, double *across)
{
    static lw_profile p;
    static lw_profile_flow flow;
    if (!flow_numbered(a[0], &p, &flow)) return false;
    const double x = 0.01 * a[1];
    for (int i = p.count / 2; i < p.count - 1; i++) {
        if (x > p.x[i + 1]) continue;
        const double part = (x - p.x[i]) / (p.x[i + 1] - p.x[i]);
        *along = flow.along[i] + part * (flow.along[i + 1] - flow.along[i]);
        *across = flow.across[i] + part * (flow.across[i + 1] - flow.across[i]);
        return true;
    }
    return false;
}
static double potential_speed(const double *a)  // section, x
{
    double along, across;
    return speeds_at(a, &along, &across) ? along : NAN;
}
static double potential_extra(const double *a)  // increment at a lift of 1
{
    double along, across;
    return speeds_at(a, &along, &across) ? across / potential_slope(a) : NAN;
}

// clang-format off
#define PUBLISHED_PROFILE                                      \
    {"outline_half",        "%",     2, outline_half},         \
    {"potential_lift",      "-",     2, potential_lift},       \
    {"potential_moment",    "-",     2, potential_moment},     \
    {"potential_least",     "-",     2, potential_least},      \
    {"potential_slope",     "1/rad", 1, potential_slope},      \
    {"potential_zero_lift", "deg",   1, potential_zero_lift},  \
    {"potential_speed",     "-",     2, potential_speed},      \
    {"potential_extra",     "-",     2, potential_extra}
// clang-format on

#endif
