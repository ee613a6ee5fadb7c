// polar_lift.c - the lift of a row of layers as a straight line, bent where it stalls.
// SPDX-License-Identifier: MIT

#include "foil/polar_lift.h"

#include <math.h>

#include "lullwise/base.h"

double lw_lift_bent(double k, double x)
{
    const double up = x + 1.0, down = x - 1.0;
    return 0.5 * sqrt(1.0 + k * k) * (sqrt(up * up + k * k) - sqrt(down * down + k * k));
}

double lw_lift_unbent(double k, double value)
{
    double low = -3.0, high = 3.0;
    for (int step = 0; step < 40; step++) {
        const double x = 0.5 * (low + high);
        *(lw_lift_bent(k, x) < value ? &low : &high) = x;
    }
    return 0.5 * (low + high);
}

static double lift_on(const lw_lift_curve *c, double alpha)
{
    const double most = alpha > c->zero ? c->most : c->down;
    return most * lw_lift_bent(c->k, c->slope * (alpha - c->zero) / most);
}

// The straight line through the points below two thirds of the greatest lift, unbent.
static void straighten(lw_lift_curve *c, const lw_polar_row *row)
{
    double n = 0.0, x = 0.0, y = 0.0, xx = 0.0, xy = 0.0;
    for (int i = 0; i < row->count; i++) {
        const lw_polar_point *p = &row->point[i];
        if (p->lift > 0.67 * row->most || p->lift < 0.5 * row->least) continue;
        const double most = p->lift > 0.0 ? c->most : c->down;
        const double straight = most * lw_lift_unbent(c->k, p->lift / most);
        n += 1.0, x += p->alpha, y += straight;
        xx += p->alpha * p->alpha, xy += p->alpha * straight;
    }
    const double spread = n * xx - x * x;
    c->slope = spread > 0.0 ? (n * xy - x * y) / spread : 2.0 * LW_PI;
    c->slope = fmin(fmax(c->slope, 4.0), 8.0);
    c->zero = n > 0.0 ? (x - y / c->slope) / n : 0.0;
}

lw_lift_curve lw_lift_curve_with(double k, const lw_polar_row *row)
{
    lw_lift_curve c = {.k = k, .most = fmax(row->most, 0.3), .down = fmax(-row->least, 0.3)};
    const double most = c.most, down = c.down;
    for (int turn = 0; turn < 6; turn++) {
        straighten(&c, row);
        c.share = c.slope * (row->most_alpha - c.zero) / c.most;
        c.share = fmin(fmax(c.share, 0.8), 2.5);
        c.most = most / lw_lift_bent(k, c.share);
        c.down = down / lw_lift_bent(k, c.share);
    }
    for (int i = row->middle; i < row->count; i++) {
        const double off = lift_on(&c, row->point[i].alpha) - row->point[i].lift;
        c.off += off * off;
    }
    return c;
}

lw_lift_curve lw_lift_curve_of(const lw_polar_row *row)
{
    double k = 0.05;
    lw_lift_curve best = lw_lift_curve_with(k, row);
    for (int tried = 1; tried < 16; tried++) {  // up to 0.8
        k += 0.05;
        const lw_lift_curve c = lw_lift_curve_with(k, row);
        if (c.off < best.off) best = c;
    }
    return best;
}
