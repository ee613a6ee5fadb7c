// thin_ship.c - wave resistance and friction of a hull as it is cut by the water.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "foil/friction.h"
#include "hull/hull_cut.h"
#include "lullwise/elementary.h"
#include "solve/elementary.h"
#include "solve/lanes.h"

#define LENGTHS LW_HULL_LENGTHS
#define LEVELS  LW_HULL_LEVELS

// Integrals over s from -1 to 1 of 1, s, s^2 times a kernel of q s.
typedef struct moments {
    lw_lanes zero, one, two;
} moments;

// Series of both kernels below, for small q; sign -1 for cos and sin, 1 for cosh and -sinh.
LW_INLINE moments small_moments(lw_lanes q, double sign)
{
    const lw_lanes none = lw_all(0.0), square = sign * q * q;
    moments sum = {none, none, none};
    lw_lanes even = lw_all(1.0), odd = q;  // q^2m / (2m)!, q^(2m+1) / (2m+1)!
    for (int m = 0; m < 7; m++) {
        sum.zero += even * (2.0 / (2.0 * m + 1.0));
        sum.two += even * (2.0 / (2.0 * m + 3.0));
        sum.one += odd * (2.0 / (2.0 * m + 3.0));
        even *= square * (1.0 / ((2.0 * m + 1.0) * (2.0 * m + 2.0)));
        odd *= square * (1.0 / ((2.0 * m + 2.0) * (2.0 * m + 3.0)));
    }
    return sum;
}

LW_INLINE moments select_moments(lw_mask where, moments yes, moments no)
{
    return (moments){lw_select(where, yes.zero, no.zero), lw_select(where, yes.one, no.one),
                     lw_select(where, yes.two, no.two)};
}

// cos(q s), s sin(q s), s^2 cos(q s)                                                   [filon-1928]
LW_INLINE moments wave_moments(lw_lanes q)
{
    lw_lanes s, c;
    lw_lanes_sincos(q, &s, &c);
    const lw_lanes per = 1.0 / q, per_2 = per * per;
    const moments large = {.zero = 2.0 * s * per,
                           .one = 2.0 * (s * per_2 - c * per),
                           .two = 2.0 * (s * per + 2.0 * (c * per_2 - s * per_2 * per))};
    const lw_mask is_small = q < 1.0;
    return lw_any(is_small) ? select_moments(is_small, small_moments(q, -1.0), large) : large;
}

// e^(-q s), s e^(-q s), s^2 e^(-q s), all times e^(-q): decay from the upper end. `decay` e^(-2q).
LW_INLINE moments decay_moments(lw_lanes q, lw_lanes decay)
{
    const lw_lanes s = 1.0 - decay, c = 1.0 + decay;  // 2 sinh, 2 cosh, times e^(-q)
    const lw_lanes per = 1.0 / q, per_2 = per * per;
    const moments large = {.zero = s * per,
                           .one = s * per_2 - c * per,
                           .two = s * per + 2.0 * (s * per_2 * per - c * per_2)};
    const lw_mask is_small = q < 1.0;
    if (!lw_any(is_small)) return large;
    const moments sum = small_moments(q, 1.0);
    const lw_lanes scale = lw_lanes_sqrt(decay);
    const moments small = {scale * sum.zero, -scale * sum.one, scale * sum.two};
    return select_moments(is_small, small, large);
}

// int y e^(-k d) dd over one section, d down from the water, by every `stride`th point.
LW_INLINE lw_lanes section_integral(const lw_hull_cut *cut, int i, lw_lanes k, int stride)
{
    const double h = cut->draft[i] / LEVELS * stride;
    lw_lanes sum = lw_all(0.0), reach = lw_all(1.0);  // e^(-k d) at the upper end of a pair
    if (!(h > 0.0)) return sum;
    const lw_lanes q = k * h, decay = lw_lanes_exp(-2.0 * q);
    const moments m = decay_moments(q, decay);
    for (int j = LEVELS; j > 0; j -= 2 * stride) {
        const double *y = cut->half[i];
        const double upper = y[j], middle = y[j - stride], lower = y[j - 2 * stride];
        const double slope = 0.5 * (lower - upper), bend = 0.5 * (upper - 2.0 * middle + lower);
        sum += reach * (middle * m.zero + slope * m.one + bend * m.two);
        reach *= decay;
    }
    return h * sum;
}

// int p e^(i k x) dx over two steps, p the parabola through three values, apart from the turn of
// its middle: the real part, and the imaginary one.
LW_INLINE lw_lanes even_part(moments m, const lw_lanes p[3])
{
    return p[1] * m.zero + 0.5 * (p[0] - 2.0 * p[1] + p[2]) * m.two;
}
LW_INLINE lw_lanes odd_part(moments m, const lw_lanes p[3]) { return 0.5 * (p[2] - p[0]) * m.one; }

// |J| / (n c) squared, for waves of number n c along the hull and n c^2 down.
LW_INLINE lw_lanes wave_square(const lw_hull_cut *cut, lw_lanes along, lw_lanes down, double hollow,
                               int stride)
{
    const int steps = LENGTHS / stride;
    const double h = (cut->fore - cut->aft) / steps;
    const moments m = wave_moments(along * h);
    lw_lanes p[LENGTHS + 1], s, c;
    for (int i = 0; i <= steps; i++) p[i] = section_integral(cut, i * stride, down, stride);
    // cos and sin of odd multiples of a step, each from the two before it
    lw_lanes_sincos(along * h, &s, &c);
    const lw_lanes twice = 4.0 * c * c - 2.0;  // 2 cos of two steps
    lw_lanes real = lw_all(0.0), imaginary = real;
    lw_lanes c_0 = c, s_0 = -s;
    for (int i = 0; i < steps; i += 2) {
        const lw_lanes even = even_part(m, p + i), odd = odd_part(m, p + i);
        const lw_lanes c_1 = twice * c - c_0, s_1 = twice * s - s_0;
        real += c * even;
        real -= s * odd;
        imaginary += s * even;
        imaginary += c * odd;
        c_0 = c, s_0 = s, c = c_1, s = s_1;
    }
    real *= h, imaginary *= h;
    if (hollow > 0.0) {
        const lw_lanes tail[3] = {lw_all(0.0), 0.75 * p[0], p[0]};
        const double half = 0.5 * hollow;
        const moments n = wave_moments(along * half);
        const lw_lanes even = half * even_part(n, tail), odd = half * odd_part(n, tail);
        lw_lanes_sincos(-along * half, &s, &c);
        real += c * even;
        real -= s * odd;
        imaginary += s * even;
        imaginary += c * odd;
    }
    const lw_lanes square = real * real;
    return square + imaginary * imaginary;
}

typedef struct grain {
    int stride;         // through the points of the cut
    int least, a_wave;  // steps of the outer integral: so many, and so many more for each n L
} grain;

LW_INLINE double wave_area(const lw_hull_cut *cut, double speed, grain by)
{
    const double g = LW_GRAVITY, L = cut->floating.length, T = cut->floating.draft;
    if (!(L > 0.0 && T > 0.0)) return 0.0;
    const double V_2 = fmax(speed * speed, 0.01 * g * L), n = g / V_2;
    // behind a transom the water closes after the way made while it falls that deep  [judged]
    const double hollow = sqrt(2.0 * V_2 * cut->floating.transom_draft / g);
    const double c_most = fmax(8.0, sqrt(40.0 / (n * T)));  // beyond lies 1e-4 of the integral
    const double u_most = lw_log(2.0 * c_most);
    const int steps = by.least + (int)(by.a_wave * n * (L + hollow));

    double sum = 0.0;
    for (int first = 0; first <= steps; first += LW_WIDTH) {
        lw_lanes u;
        LW_EACH_LANE (k) u[k] = u_most * (first + k) / steps;
        const lw_lanes e = lw_lanes_exp(u), c = 0.5 * (e + 1.0 / e);
        const lw_lanes square = wave_square(cut, n * c, n * c * c, hollow, by.stride);
        const lw_lanes term = n * n * c * c * c * c * square;
        for (int k = 0; k < LW_WIDTH && first + k <= steps; k++) {
            sum += (first + k == 0 ? 0.5 : 1.0) * term[k];
        }
    }
    return 8.0 * n * n / LW_PI * sum * u_most / steps;
}

LW_CLONES
double lw_hull_wave_area(const lw_hull_cut *cut, double speed)
{
    return wave_area(cut, speed, (grain){1, 48, 6});
}

LW_CLONES
double lw_hull_wave_area_coarse(const lw_hull_cut *cut, double speed)
{
    return wave_area(cut, speed, (grain){2, 32, 4});
}

double lw_hull_friction_area(const lw_hull_cut *cut, double speed, double viscosity, double k)
{
    const double Re = fabs(speed) * cut->floating.length / viscosity;
    const double C_F = lw_friction_ittc57(lw_all(lw_log(fmax(Re, 1.0))))[0];
    return (1.0 + k) * C_F * cut->floating.wetted;
}
