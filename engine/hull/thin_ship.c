// thin_ship.c - wave resistance and friction of a hull as it is cut by the water.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "foil/friction.h"
#include "hull/hull_cut.h"
#include "lullwise/elementary.h"
#include "solve/bspline.h"
#include "solve/elementary.h"
#include "solve/gather.h"
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

// |J| / (n c) squared from the integrals of the sections, `steps` apart by h, for waves of number
// `along` along the hull.
LW_INLINE lw_lanes wave_square(const lw_lanes *p, int steps, double h, lw_lanes along,
                               double hollow)
{
    const moments m = wave_moments(along * h);
    lw_lanes s, c;
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

// The outer integral at one speed: over u from 0, waves of number n cosh u along the hull and
// n cosh^2 u down. Beyond its end lies 1e-4 of it.
typedef struct outer {
    double n, hollow, u_most;
} outer;

static outer outer_at(const lw_hull_cut *cut, double speed)
{
    const double g = LW_GRAVITY, L = cut->floating.length, T = cut->floating.draft;
    const double V_2 = fmax(speed * speed, 0.01 * g * L), n = g / V_2;
    const double c_most = fmax(8.0, sqrt(40.0 / (n * T)));
    // behind a transom the water closes after the way made while it falls that deep  [judged]
    const double hollow = sqrt(2.0 * V_2 * cut->floating.transom_draft / g);
    return (outer){n, hollow, lw_log(2.0 * c_most)};
}

// Integrals of every `stride`th section for waves of number `down`. By address: where the function
// is not inlined, caller and called may be built for processors that pass lanes in unlike ways.
typedef void section_integrals(const void *of, const lw_lanes *down, int stride,
                               lw_lanes p[LENGTHS + 1]);

typedef struct grain {
    int stride;         // through the points of the cut
    int least, a_wave;  // steps of the outer integral: so many, and so many more for each n L
} grain;

LW_INLINE double wave_area(const lw_hull_cut *cut, const outer *by, grain of_steps,
                           section_integrals *integrals, const void *of)
{
    const double n = by->n;
    const int steps =
        of_steps.least + (int)(of_steps.a_wave * n * (cut->floating.length + by->hollow));
    const int sections = LENGTHS / of_steps.stride;
    const double h = (cut->fore - cut->aft) / sections;
    double sum = 0.0;
    for (int first = 0; first <= steps; first += LW_WIDTH) {
        lw_lanes u, p[LENGTHS + 1];
        LW_EACH_LANE (k) u[k] = by->u_most * (first + k) / steps;
        const lw_lanes e = lw_lanes_exp(u), c = 0.5 * (e + 1.0 / e);
        const lw_lanes down = n * c * c;
        integrals(of, &down, of_steps.stride, p);
        const lw_lanes square = wave_square(p, sections, h, n * c, by->hollow);
        const lw_lanes term = n * n * c * c * c * c * square;
        for (int k = 0; k < LW_WIDTH && first + k <= steps; k++) {
            sum += (first + k == 0 ? 0.5 : 1.0) * term[k];
        }
    }
    return 8.0 * n * n / LW_PI * sum * by->u_most / steps;
}

static bool is_afloat(const lw_hull_cut *cut)
{
    return cut->floating.length > 0.0 && cut->floating.draft > 0.0;
}

LW_INLINE void each_section(const void *of, const lw_lanes *down, int stride,
                            lw_lanes p[LENGTHS + 1])
{
    for (int i = 0; i <= LENGTHS / stride; i++)
        p[i] = section_integral(of, i * stride, *down, stride);
}

LW_CLONES
double lw_hull_wave_area(const lw_hull_cut *cut, double speed)
{
    if (!is_afloat(cut)) return 0.0;
    const outer by = outer_at(cut, speed);
    return wave_area(cut, &by, (grain){1, 48, 6}, each_section, cut);
}

// --- at many speeds: the sections' integrals are alike for all, and read from splines

#define STRIDE 2
#define KNOTS  44

typedef struct read_sections {
    double first, per_knot;  // log of wave numbers, even
    double spline[LENGTHS / STRIDE + 1][KNOTS + 2];
} read_sections;

LW_INLINE void read_section(const void *of, const lw_lanes *down, int stride,
                            lw_lanes p[LENGTHS + 1])
{
    const read_sections *read = of;
    const lw_bspline_interval in =
        lw_bspline_interval_of(KNOTS, (lw_lanes_log(*down) - read->first) * read->per_knot);
    for (int i = 0; i <= LENGTHS / stride; i++) {
        lw_fours four;
        LW_EACH_LANE (k) four.from[k] = read->spline[i] + in.first[k];
        lw_gather(&four);
        const lw_lanes low = in.value[0] * four.part[0] + in.value[1] * four.part[1];
        p[i] = low + (in.value[2] * four.part[2] + in.value[3] * four.part[3]);
    }
}

// Of all wave numbers from that along the hull in the quickest to the greatest down in the slowest.
LW_INLINE void fill_sections(read_sections *read, const lw_hull_cut *cut, const outer *quickest,
                             const outer *slowest)
{
    const double last = lw_log(slowest->n) + 2.0 * slowest->u_most;  // cosh u < e^u
    read->first = lw_log(quickest->n);
    const double step = (last - read->first) / (KNOTS - 1);
    read->per_knot = 1.0 / step;
    for (int k = 0; k < KNOTS; k += LW_WIDTH) {
        lw_lanes down, p[LENGTHS + 1];
        LW_EACH_LANE (i) down[i] = read->first + (k + i) * step;
        down = lw_lanes_exp(down);
        each_section(cut, &down, STRIDE, p);
        for (int i = 0; i <= LENGTHS / STRIDE; i++) {
            for (int n = 0; n < LW_WIDTH && k + n < KNOTS; n++)
                read->spline[i][1 + k + n] = p[i][n];
        }
    }
    for (int i = 0; i <= LENGTHS / STRIDE; i++) lw_bspline_fit(read->spline[i], KNOTS, 1);
}

LW_CLONES
void lw_hull_wave_areas(const lw_hull_cut *cut, const double *speeds, size_t count, double *areas)
{
    for (size_t k = 0; k < count; k++) areas[k] = 0.0;
    if (count == 0 || !is_afloat(cut)) return;
    read_sections read;
    const outer slowest = outer_at(cut, speeds[0]), quickest = outer_at(cut, speeds[count - 1]);
    fill_sections(&read, cut, &quickest, &slowest);
    for (size_t k = 0; k < count; k++) {
        const outer by = outer_at(cut, speeds[k]);
        areas[k] = wave_area(cut, &by, (grain){STRIDE, 32, 4}, read_section, &read);
    }
}

double lw_hull_friction_area(const lw_hull_cut *cut, double speed, double viscosity, double k)
{
    const double Re = fabs(speed) * cut->floating.length / viscosity;
    const double C_F = lw_friction_ittc57(lw_all(lw_log(fmax(Re, 1.0))))[0];
    return (1.0 + k) * C_F * cut->floating.wetted;
}
