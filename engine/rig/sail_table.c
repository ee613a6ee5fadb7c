// sail_table.c - published sail coefficients, read smoothly.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/base.h"
#include "rig/sail.h"

#define NODES_MOST 10

typedef struct sail_table {
    int count;
    double angle_deg[NODES_MOST];
    double lift[NODES_MOST];
    double drag[NODES_MOST];
} sail_table;

// clang-format off
static const sail_table tables[] = {
    [LW_SAIL_HAZEN_MAIN] = {
        6,
        {0.0, 27.0, 50.0, 80.0, 100.0, 180.0},
        {0.0, 1.725, 1.5, 0.95, 0.85, 0.0},
        {0.02, 0.02, 0.15, 0.8, 1.0, 0.9},
    },
    [LW_SAIL_HIGH_LIFT] = {
        10,
        {0.0, 7.0, 9.0, 12.0, 28.0, 60.0, 90.0, 120.0, 150.0, 180.0},
        {0.0, 0.948, 1.138, 1.25, 1.427, 1.269, 1.125, 0.838, 0.296, -0.112},
        {0.034, 0.017, 0.015, 0.015, 0.026, 0.113, 0.383, 0.969, 1.316, 1.345},
    },
};
// clang-format on

static double chord(const double *x, const double *y, int i)
{
    return (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
}

// Slope at a node: a weighted harmonic mean of the chords on either side, 0 at a turning point.
static double slope_at(const double *x, const double *y, int count, int i)
{
    if (i == 0) return chord(x, y, 0);
    if (i == count - 1) return chord(x, y, count - 2);
    const double before = chord(x, y, i - 1), after = chord(x, y, i);
    if (before * after <= 0.0) return 0.0;
    const double h = x[i] - x[i - 1], k = x[i + 1] - x[i];
    const double w = h + 2.0 * k, v = 2.0 * h + k;
    return (w + v) / (w / before + v / after);
}

static double value_at(const double *x, const double *y, int count, double at)
{
    const double inside = fmin(fmax(at, x[0]), x[count - 1]);
    int i = 0;
    while (i < count - 2 && inside > x[i + 1]) i++;
    const double h = x[i + 1] - x[i], t = (inside - x[i]) / h, r = 1.0 - t;
    const double m_0 = h * slope_at(x, y, count, i), m_1 = h * slope_at(x, y, count, i + 1);
    return r * r * ((1.0 + 2.0 * t) * y[i] + t * m_0) +
           t * t * ((1.0 + 2.0 * r) * y[i + 1] - r * m_1);
}

lw_sail_coefficients lw_sail_coefficients_at(lw_sail_kind kind, double angle)
{
    const sail_table *table = &tables[kind];
    const double degrees = angle / LW_DEG;
    return (lw_sail_coefficients){
        .lift = value_at(table->angle_deg, table->lift, table->count, degrees),
        .drag = value_at(table->angle_deg, table->drag, table->count, degrees)};
}

double lw_sail_induced_drag(double lift, double aspect)
{
    return lift * lift * (1.0 / (LW_PI * aspect) + 0.005);
}
