// published_series.h - functions that test/published/ names: hulls of a systematic series.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_PUBLISHED_SERIES_H
#define LW_TEST_PUBLISHED_SERIES_H

#include <math.h>

#include "lullwise/hull_shape.h"
#include "test/published_row.h"

// Series 64, round bilge, wide transom [yeh-1965]. Its lines are not at hand; ours have its form
// coefficients: C_P 0.63, centre of buoyancy at 0.566 of the length from the bow, transom 0.41 of
// the greatest section, C_WP 0.761, bow's half angle 7 deg at L/B 9.5, B/T 3.
#define SERIES_STATIONS 41
#define SERIES_POINTS   17
#define SERIES_MODEL    3.0  // [m] about as long as its models

static double polynomial(const double *a, int count, double s)
{
    double sum = 0.0;
    for (int i = count; i > 0; i--) sum = (sum + a[i - 1]) * s;
    return sum;
}

// A station's area, and its breadth, over those of the greatest section; s from the bow.
static double series_area(double s)
{
    static const double a[] = {0.264, 12.2916, -23.4016, 11.256};
    return polynomial(a, 4, s);
}

static double series_breadth(double s)
{
    static const double b[] = {2.33, -0.528, -0.912};
    return polynomial(b, 3, s);
}

// Half-breadths 1 - (1 - z/d)^m, as full everywhere as the greatest section: C_M = C_B / C_P.
static void series_station(lw_hull_section *section, double x, double block, double beam,
                           double draft)
{
    const double s = 1.0 - x, full = block / 0.63, m = full / (1.0 - full);
    const double d = s > 0.0 ? draft * series_area(s) / series_breadth(s) : 0.02 * draft;
    const double half = 0.5 * beam * series_breadth(s);
    section->x = SERIES_MODEL * x;
    section->count = SERIES_POINTS + 1;
    for (int i = 0; i < SERIES_POINTS; i++) {
        const double z = pow(i / (SERIES_POINTS - 1.0), 2.0);
        section->height[i] = draft - d + d * z;
        section->half[i] = half * (1.0 - pow(1.0 - z, m));
    }
    section->height[SERIES_POINTS] = 2.0 * draft;
    section->half[SERIES_POINTS] = half + 1e-6;
}

// Afloat: block coefficient, and length over the cube root of volume.
static const lw_hull_cut *series_cut(double block, double slender)
{
    static lw_hull_shape shape;
    static lw_hull_cut cut;
    const double beam = SERIES_MODEL / sqrt(pow(slender, 3.0) * block / 3.0), draft = beam / 3.0;
    shape.count = SERIES_STATIONS;
    for (int i = 0; i < SERIES_STATIONS; i++)
        series_station(&shape.section[i], i / (SERIES_STATIONS - 1.0), block, beam, draft);
    lw_hull_cut_at(&cut, &shape, (lw_hull_attitude){draft, 0.0});
    return &cut;
}

static double series_slender(const double *a)  // L / volume^(1/3) of the cut: block, as asked
{
    return SERIES_MODEL / cbrt(series_cut(a[0], a[1])->floating.volume);
}
static double series_centre(const double *a)  // of buoyancy from the bow, on the length
{
    return 1.0 - series_cut(a[0], a[1])->floating.centre_x / SERIES_MODEL;
}
static double series_wave(const double *a)  // C_w on the wetted area: block, L/volume^(1/3), Fn
{
    const lw_hull_cut *cut = series_cut(a[0], a[1]);
    const double V = a[2] * sqrt(LW_GRAVITY * SERIES_MODEL);
    return lw_hull_wave_area(cut, V) / cut->floating.wetted;
}

// clang-format off
#define PUBLISHED_SERIES                        \
    {"series_slender", "-", 2, series_slender}, \
    {"series_centre",  "-", 2, series_centre},  \
    {"series_wave",    "-", 3, series_wave}
// clang-format on

#endif
