// mean_line.c - thin-aerofoil theory of mean lines.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "foil/section.h"
#include "lullwise/base.h"
#include "lullwise/elementary.h"

// A mean line by its slope; `knee`: where two formulas meet, as a part of the chord.
typedef struct shape {
    double (*slope)(const struct shape *line, double x);
    double knee;
    double a, b;  // the family's own numbers
} shape;

typedef struct integrals {
    double A_0, A_1, A_2;  // int z' dt, int z' cos t dt, int z' cos 2t dt
} integrals;

// Adds the integrals from angle t_0 to t_1: midpoint rule in s, where t = t_0 + (t_1 - t_0) w(s)
// and w = s^3 (10 - 15 s + 6 s^2) crowds the points at both ends, where z' may be a logarithm.
static void integrate(const shape *line, double t_0, double t_1, integrals *sum)
{
    const int points = 400;
    for (int i = 0; i < points; i++) {
        const double s = (i + 0.5) / points, r = 1.0 - s;
        const double w = s * s * s * (10.0 + s * (6.0 * s - 15.0));
        const double t = t_0 + (t_1 - t_0) * w;
        const double dt = (t_1 - t_0) * 30.0 * s * s * r * r / points;
        const double half = lw_sin(0.5 * t);
        const double x = fmin(half * half, 1.0 - 1e-15);  // never 0 nor 1: logarithms
        const double cos_t = 1.0 - 2.0 * x;
        const double part = line->slope(line, x) * dt;
        sum->A_0 += part;
        sum->A_1 += part * cos_t;
        sum->A_2 += part * (2.0 * cos_t * cos_t - 1.0);
    }
}

static lw_mean_line mean_line_of(const shape *line)
{
    const double t_knee = lw_acos(1.0 - 2.0 * line->knee);
    integrals sum = {0};
    integrate(line, 0.0, t_knee, &sum);
    integrate(line, t_knee, LW_PI, &sum);
    return (lw_mean_line){.zero_lift_angle = (sum.A_0 - sum.A_1) / LW_PI,
                          .moment = -0.5 * (sum.A_1 - sum.A_2),
                          .ideal_angle = sum.A_0 / LW_PI,
                          .ideal_lift = 2.0 * sum.A_1};
}

static double four_digit_slope(const shape *line, double x)
{
    const double m = line->a, p = line->b;
    const double part = x < p ? p : 1.0 - p;
    return 2.0 * m * (p - x) / (part * part);
}

lw_mean_line lw_mean_line_four_digit(double m, double p)
{
    return mean_line_of(&(shape){.slope = four_digit_slope, .knee = p, .a = m, .b = p});
}

static double five_digit_slope(const shape *line, double x)
{
    const double k_1 = line->a, r = line->b;
    const double aft = -k_1 / 6.0 * r * r * r;
    return x < r ? aft + k_1 / 6.0 * (3.0 * x * x - 6.0 * r * x + 3.0 * r * r) : aft;
}

lw_mean_line lw_mean_line_five_digit(double k_1, double r)
{
    return mean_line_of(&(shape){.slope = five_digit_slope, .knee = r, .a = k_1, .b = r});
}

// x ln x, with its limit at 0.
static double x_ln_x(double x) { return x > 0.0 ? x * lw_log(x) : 0.0; }

// dz/dx = c_li / (2 pi (a + 1)) [((1-x) ln(1-x) - (a-x) ln|a-x|) / (1-a) - ln x - 1 - h]
// from the ordinates of [naca-824]; at a = 1 the fraction is ln(1-x) + 1.
static double a_slope(const shape *line, double x)
{
    const double a = line->a, scale = line->b / (2.0 * LW_PI * (a + 1.0));
    const double rest = 1.0 - a;
    if (rest < 1e-6) return scale * (lw_log(1.0 - x) - lw_log(x));

    const double to_a = copysign(1.0, a - x) * x_ln_x(fabs(a - x));
    const double fraction = (x_ln_x(1.0 - x) - to_a) / rest;
    const double g = -(0.5 * a * x_ln_x(a) - 0.25 * a * a + 0.25) / rest;
    const double h = 0.5 * x_ln_x(rest) - 0.25 * rest + g;
    return scale * (fraction - lw_log(x) - 1.0 - h);
}

lw_mean_line lw_mean_line_a(double a, double ideal_lift)
{
    const double knee = a > 0.0 && a < 1.0 ? a : 0.5;
    return mean_line_of(&(shape){.slope = a_slope, .knee = knee, .a = a, .b = ideal_lift});
}
