// section_curve.c - smooth curves through the points of sections and from station to station.
// SPDX-License-Identifier: MIT

#include "hull/section_curve.h"

#include <assert.h>
#include <math.h>

#include "solve/within.h"

// Weights of the slope at t_1, the middle or an end of a parabola through three places: of the
// derivative at `at` of the Lagrange polynomials.
static void slope_weights(const double t[3], double at, double weight[3])
{
    for (int i = 0; i < 3; i++) {
        const int j = (i + 1) % 3, k = (i + 2) % 3;
        weight[i] = (2.0 * at - t[j] - t[k]) / ((t[i] - t[j]) * (t[i] - t[k]));
    }
}

// First of three neighbours that a slope at i is taken from, among n.
static int neighbours(int i, int n) { return i < 1 ? 0 : i > n - 2 ? n - 3 : i - 1; }

// Keeps a cubic between two points from rising or falling beyond them [fritsch-carlson].
static void limit_slopes(double rise, double *a, double *b)
{
    if (rise == 0.0) {
        *a = *b = 0.0;
        return;
    }
    const double p = fmax(*a / rise, 0.0), q = fmax(*b / rise, 0.0);
    const double over = sqrt(p * p + q * q);
    const double keep = over > 3.0 ? 3.0 / over : 1.0;
    *a = keep * p * rise, *b = keep * q * rise;
}

static void section_slopes(const lw_hull_section *section, double *slope)
{
    const int n = section->count;
    const double *z = section->height, *y = section->half;
    for (int i = 0; i < n; i++) {
        const int k = neighbours(i, n);
        double w[3];
        slope_weights(z + k, z[i], w);
        slope[i] = w[0] * y[k] + w[1] * y[k + 1] + w[2] * y[k + 2];
    }
    for (int i = 0; i < n - 1; i++) {
        limit_slopes((y[i + 1] - y[i]) / (z[i + 1] - z[i]), &slope[i], &slope[i + 1]);
    }
}

// Hermite's cubic: weights of the ends and of the slopes times the step.
static void hermite(double t, double value[2], double slope[2])
{
    const double s = 1.0 - t;
    value[0] = s * s * (1.0 + 2.0 * t), value[1] = t * t * (1.0 + 2.0 * s);
    slope[0] = s * s * t, slope[1] = -t * t * s;
}

// On the curve of a section, beyond its ends as there. `piece`: one at or below that of z.
static double section_half(const lw_hull_lines *lines, int station, double z, int *piece)
{
    const lw_hull_section *section = &lines->shape->section[station];
    int i = *piece;
    while (i < section->count - 2 && z > section->height[i + 1]) i++;
    *piece = i;
    const double step = section->height[i + 1] - section->height[i];
    const double t = lw_within((z - section->height[i]) / step, 0.0, 1.0);
    double value[2], slope[2];
    hermite(t, value, slope);
    return value[0] * section->half[i] + value[1] * section->half[i + 1] +
           step * (slope[0] * lines->slope[station][i] + slope[1] * lines->slope[station][i + 1]);
}

static double keel_of(const lw_hull_section *section) { return section->height[0]; }
static double deck_of(const lw_hull_section *section)
{
    return section->height[section->count - 1];
}

// A height along the hull, kept between those of the stations on both sides.
static double blended(const lw_hull_shape *shape, const lw_hull_blend *blend,
                      double (*height)(const lw_hull_section *))
{
    double sum = 0.0;
    for (int k = 0; k < blend->count; k++) {
        sum += blend->weight[k] * height(&shape->section[blend->first + k]);
    }
    const double aft = height(&shape->section[blend->below]);
    const double fore = height(&shape->section[blend->below + 1]);
    return lw_within(sum, fmin(aft, fore), fmax(aft, fore));
}

lw_hull_blend lw_hull_blend_at(const lw_hull_lines *lines, double x)
{
    const lw_hull_shape *shape = lines->shape;
    const int n = shape->count;
    assert(n >= 3);
    int i = 0;
    while (i < n - 2 && x > shape->section[i + 1].x) i++;
    const double step = shape->section[i + 1].x - shape->section[i].x;
    const double t = lw_within((x - shape->section[i].x) / step, 0.0, 1.0);
    double value[2], slope[2];
    hermite(t, value, slope);

    const int first = neighbours(i, n), last = neighbours(i + 1, n) + 2;
    lw_hull_blend blend = {.first = first, .count = last - first + 1, .below = i};
    for (int end = 0; end < 2; end++) {
        const int k = neighbours(i + end, n);
        const double place[3] = {shape->section[k].x, shape->section[k + 1].x,
                                 shape->section[k + 2].x};
        double w[3];
        slope_weights(place, place[i + end - k], w);
        for (int j = 0; j < 3; j++) blend.weight[k - first + j] += step * slope[end] * w[j];
        blend.weight[i + end - first] += value[end];
    }
    blend.keel = blended(shape, &blend, keel_of);
    blend.deck = blended(shape, &blend, deck_of);
    return blend;
}

void lw_hull_halves(const lw_hull_lines *lines, const lw_hull_blend *blend, const double *z,
                    int count, double *half)
{
    const double per_height = 1.0 / (blend->deck - blend->keel);
    for (int i = 0; i < count; i++) half[i] = 0.0;
    for (int k = 0; k < blend->count; k++) {
        const int station = blend->first + k;
        const double keel = keel_of(&lines->shape->section[station]);
        const double height = deck_of(&lines->shape->section[station]) - keel;
        int piece = 0;
        for (int i = 0; i < count; i++) {
            const double part = (z[i] - blend->keel) * per_height;
            half[i] +=
                blend->weight[k] * section_half(lines, station, keel + part * height, &piece);
        }
    }
    for (int i = 0; i < count; i++) half[i] = fmax(half[i], 0.0);
}

double lw_hull_place(const lw_hull_shape *shape, int i)
{
    const double first = shape->section[0].x, last = shape->section[shape->count - 1].x;
    return first + (last - first) / LW_HULL_PLACES * i;
}

void lw_hull_lines_of(lw_hull_lines *lines, const lw_hull_shape *shape)
{
    lines->shape = shape;
    for (int i = 0; i < shape->count; i++) section_slopes(&shape->section[i], lines->slope[i]);
    for (int i = 0; i <= LW_HULL_PLACES; i++) {
        const lw_hull_blend blend = lw_hull_blend_at(lines, lw_hull_place(shape, i));
        lines->keel[i] = blend.keel, lines->deck[i] = blend.deck;
    }
}
