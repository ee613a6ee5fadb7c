// thin_ship.c - wave resistance and friction of a hull as it is cut by the water.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "foil/friction.h"
#include "lullwise/elementary.h"
#include "lullwise/hull_shape.h"

#define LENGTHS LW_HULL_LENGTHS
#define LEVELS  LW_HULL_LEVELS

// Integrals over s from -1 to 1 of 1, s, s^2 times a kernel of q s.
typedef struct moments {
    double zero, one, two;
} moments;

// Series of both kernels below, for small q; sign -1 for cos and sin, 1 for cosh and -sinh.
static moments small_moments(double q, double sign)
{
    moments sum = {0};
    double even = 1.0, odd = q;  // q^2m / (2m)!, q^(2m+1) / (2m+1)!
    for (int m = 0; m < 7; m++) {
        sum.zero += even * 2.0 / (2.0 * m + 1.0);
        sum.two += even * 2.0 / (2.0 * m + 3.0);
        sum.one += odd * 2.0 / (2.0 * m + 3.0);
        even *= sign * q * q / ((2.0 * m + 1.0) * (2.0 * m + 2.0));
        odd *= sign * q * q / ((2.0 * m + 2.0) * (2.0 * m + 3.0));
    }
    return sum;
}

// cos(q s), s sin(q s), s^2 cos(q s)                                                   [filon-1928]
static moments wave_moments(double q)
{
    if (q < 1.0) return small_moments(q, -1.0);
    const double s = lw_sin(q), c = lw_cos(q), q_2 = q * q;
    return (moments){.zero = 2.0 * s / q,
                     .one = 2.0 * (s - q * c) / q_2,
                     .two = 2.0 * ((q_2 - 2.0) * s + 2.0 * q * c) / (q_2 * q)};
}

// e^(-q s), s e^(-q s), s^2 e^(-q s), all times e^(-q): decay from the upper end. `decay` e^(-2q).
static moments decay_moments(double q, double decay)
{
    if (q < 1.0) {
        const moments sum = small_moments(q, 1.0);
        const double scale = sqrt(decay);
        return (moments){scale * sum.zero, -scale * sum.one, scale * sum.two};
    }
    const double s = 1.0 - decay, c = 1.0 + decay, q_2 = q * q;  // 2 sinh, 2 cosh, times e^(-q)
    return (moments){.zero = s / q,
                     .one = -(q * c - s) / q_2,
                     .two = ((q_2 + 2.0) * s - 2.0 * q * c) / (q_2 * q)};
}

// int y e^(-k d) dd over one section, d down from the water.
static double section_integral(const lw_hull_cut *cut, int i, double k)
{
    const double h = cut->draft[i] / LEVELS;
    if (!(h > 0.0)) return 0.0;
    const double q = k * h, decay = lw_exp(-2.0 * q);
    const moments m = decay_moments(q, decay);
    double sum = 0.0, reach = 1.0;  // e^(-k d) at the upper end of a pair of steps
    for (int j = LEVELS; j >= 2; j -= 2) {
        const double *y = &cut->half[i][j];
        const double slope = 0.5 * (y[-2] - y[0]), bend = 0.5 * (y[0] - 2.0 * y[-1] + y[-2]);
        sum += reach * (y[-1] * m.zero + slope * m.one + bend * m.two);
        reach *= decay;
    }
    return h * sum;
}

// Adds int p e^(i k x) dx of a parabola through three values a step h apart, the middle at x.
static void add_pair(double sum[2], moments m, double h, const double p[3], double phase)
{
    const double even = p[1] * m.zero + 0.5 * (p[0] - 2.0 * p[1] + p[2]) * m.two;
    const double odd = 0.5 * (p[2] - p[0]) * m.one;
    const double c = lw_cos(phase), s = lw_sin(phase);
    sum[0] += h * (c * even - s * odd);
    sum[1] += h * (s * even + c * odd);
}

// |J| / (n c) squared, for waves of number n c along the hull and n c^2 down.
static double wave_square(const lw_hull_cut *cut, double along, double down, double hollow)
{
    double p[LENGTHS + 1], sum[2] = {0.0, 0.0};
    for (int i = 0; i <= LENGTHS; i++) p[i] = section_integral(cut, i, down);
    const double h = (cut->fore - cut->aft) / LENGTHS;
    const moments m = wave_moments(along * h);
    for (int i = 0; i < LENGTHS; i += 2) add_pair(sum, m, h, p + i, along * h * (i + 1));
    if (hollow > 0.0) {
        const double tail[3] = {0.0, 0.75 * p[0], p[0]}, half = 0.5 * hollow;
        add_pair(sum, wave_moments(along * half), half, tail, -along * half);
    }
    return sum[0] * sum[0] + sum[1] * sum[1];
}

double lw_hull_wave_area(const lw_hull_cut *cut, double speed)
{
    const double g = LW_GRAVITY, L = cut->floating.length, T = cut->floating.draft;
    if (!(L > 0.0 && T > 0.0)) return 0.0;
    const double V_2 = fmax(speed * speed, 0.01 * g * L), n = g / V_2;
    // behind a transom the water closes after the way made while it falls that deep  [judged]
    const double hollow = sqrt(2.0 * V_2 * cut->floating.transom_draft / g);
    const double c_most = fmax(8.0, sqrt(40.0 / (n * T)));  // beyond lies 1e-4 of the integral
    const double u_most = lw_log(2.0 * c_most);
    const int steps = 48 + (int)(6.0 * n * (L + hollow));

    double sum = 0.0;
    for (int i = 0; i <= steps; i++) {
        const double e = lw_exp(u_most * i / steps), c = 0.5 * (e + 1.0 / e);
        const double J_2 = n * n * c * c * wave_square(cut, n * c, n * c * c, hollow);
        sum += (i == 0 ? 0.5 : 1.0) * J_2 * c * c;
    }
    return 8.0 * n * n / LW_PI * sum * u_most / steps;
}

double lw_hull_friction_area(const lw_hull_cut *cut, double speed, double viscosity, double k)
{
    const double Re = fabs(speed) * cut->floating.length / viscosity;
    const double C_F = lw_friction_ittc57(lw_all(lw_log(fmax(Re, 1.0))))[0];
    return (1.0 + k) * C_F * cut->floating.wetted;
}
