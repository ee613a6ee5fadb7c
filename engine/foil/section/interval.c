// interval.c - momentum, energy and lag between two stations, with transition.
// SPDX-License-Identifier: MIT

#include "foil/section/interval.h"

#include <math.h>
#include <stdbool.h>

// How much the second station counts in the equations of energy and lag: more where the shape
// changes fast, so that nothing oscillates [drela-giles-1987].
typedef struct lateness {
    double late;
    double by_1, by_2;  // along the shapes
} lateness;

LW_INLINE lateness lateness_of(double H_1, double H_2)
{
    const double a = H_1 - 1.0, b = H_2 - 1.0;
    const double q = lw_four_log((lw_four){b / a, b / a, b / a, b / a})[0] / H_2;
    const double least = -15.0, power = -5.0 * q * q;
    if (power < least) return (lateness){1.0 - 0.5 * lw_four_exp((lw_four){least})[0], 0.0, 0.0};
    const double e = lw_four_exp((lw_four){power, 0.0, 0.0, 0.0})[0], per = 5.0 * q * e;
    return (lateness){1.0 - 0.5 * e, -per / (a * H_2), per * (1.0 / (b * H_2) - q / H_2)};
}

static const lw_four by_theta = {1.0, 0.0, 0.0, 0.0}, by_shape = {0.0, 1.0, 0.0, 0.0},
                     by_speed = {0.0, 0.0, 1.0, 0.0}, by_third = {0.0, 0.0, 0.0, 1.0};

// What both ends share.
typedef struct span {
    const lw_station *a, *b;
    double log_x, d_speed, H;  // ln x_2 / x_1, d ln U, mean shape
    lateness l;
} span;

//     d ln theta + (H + 2) d ln U = c_f / 2 x / theta d ln x
LW_INLINE void momentum(const span *w, lw_interval *of)
{
    const lw_station *a = w->a, *b = w->b;
    const lw_dual f_1 = a->closure.friction, f_2 = b->closure.friction;
    const double rub = 0.25 * (f_1.at * a->x + f_2.at * b->x), lean = w->H + 2.0;
    const double quarter = 0.25 * w->log_x;
    of->left[0] = b->at.log_theta - a->at.log_theta + lean * w->d_speed - rub * w->log_x;
    of->by_1[0] =
        0.5 * w->d_speed * by_shape - by_theta - lean * by_speed - quarter * a->x * f_1.by;
    of->by_2[0] =
        0.5 * w->d_speed * by_shape + by_theta + lean * by_speed - quarter * b->x * f_2.by;
    of->by_x_1[0] = rub / a->x - quarter * f_1.at;
    of->by_x_2[0] = -rub / b->x - quarter * f_2.at;
}

//     d ln H* + (1 - H) d ln U = (2 c_D / H* - c_f / 2) x / theta d ln x
LW_INLINE void energy(const span *w, lw_interval *of)
{
    const lw_station *a = w->a, *b = w->b;
    const lw_dual d_1 =
        lw_dual_less(a->closure.dissipation, lw_dual_line(0.5, a->closure.friction, 0.0));
    const lw_dual d_2 =
        lw_dual_less(b->closure.dissipation, lw_dual_line(0.5, b->closure.friction, 0.0));
    const double late = w->l.late, early = 1.0 - late, lean = 1.0 - w->H;
    const double lost = early * d_1.at * a->x + late * d_2.at * b->x;
    const double by_late = (d_2.at * b->x - d_1.at * a->x) * w->log_x;
    of->left[1] =
        b->closure.log_H_star.at - a->closure.log_H_star.at + lean * w->d_speed - lost * w->log_x;
    of->by_1[1] = -(0.5 * w->d_speed + by_late * w->l.by_1) * by_shape - lean * by_speed -
                  a->closure.log_H_star.by - early * a->x * w->log_x * d_1.by;
    of->by_2[1] = -(0.5 * w->d_speed + by_late * w->l.by_2) * by_shape + lean * by_speed +
                  b->closure.log_H_star.by - late * b->x * w->log_x * d_2.by;
    of->by_x_1[1] = lost / a->x - early * w->log_x * d_1.at;
    of->by_x_2[1] = -lost / b->x - late * w->log_x * d_2.at;
}

//     2 d ln S + 2 d ln U = lag dx
LW_INLINE void lag(const span *w, lw_interval *of)
{
    const lw_station *a = w->a, *b = w->b;
    const lw_dual l_1 = a->closure.lag, l_2 = b->closure.lag;
    const double late = w->l.late, early = 1.0 - late, dx = b->x - a->x;
    const double mean = early * l_1.at + late * l_2.at, by_late = (l_2.at - l_1.at) * dx;
    of->left[2] = 2.0 * (b->at.third - a->at.third + w->d_speed) - mean * dx;
    of->by_1[2] =
        -2.0 * (by_third + by_speed) - early * dx * l_1.by - by_late * w->l.by_1 * by_shape;
    of->by_2[2] = 2.0 * (by_third + by_speed) - late * dx * l_2.by - by_late * w->l.by_2 * by_shape;
    of->by_x_1[2] = mean;
    of->by_x_2[2] = -mean;
}

LW_INLINE double logarithm(double x) { return lw_four_log((lw_four){x, x, x, x})[0]; }

LW_INLINE void equations(lw_layer_kind kind, const lw_station *a, const lw_station *b,
                         lw_interval *of)
{
    const span w = {.a = a,
                    .b = b,
                    .log_x = logarithm(b->x / a->x),
                    .d_speed = b->at.log_speed - a->at.log_speed,
                    .H = 0.5 * (a->closure.shape + b->closure.shape),
                    .l = lateness_of(a->closure.shape, b->closure.shape)};
    for (int i = 0; i < LW_EQUATIONS; i++) of->by_0[i] = (lw_four){0.0};
    momentum(&w, of);
    energy(&w, of);
    if (kind != LW_LAMINAR) lag(&w, of);
}

LW_CLONES void lw_interval_of(lw_layer_kind kind, const lw_station *a, const lw_station *b,
                              lw_interval *of)
{
    equations(kind, a, b, of);
}

// --- waves

// Growth behind a station: a + b d, which does not fall below nothing within the full way.
typedef struct trend {
    double a, b;
    lw_four a_by_1, b_by_0, b_by_1;
} trend;

LW_INLINE trend trend_of(const lw_station *before, const lw_station *from, double full)
{
    const lw_dual here = from->closure.growth;
    trend t = {.a = here.at, .a_by_1 = here.by};
    if (!before) return t;
    const lw_dual old = before->closure.growth;
    const double per = 1.0 / (from->x - before->x);
    t.b = (here.at - old.at) * per;
    t.b_by_0 = -per * old.by;
    t.b_by_1 = per * here.by;
    if (t.b * full < -here.at) {
        t.b = -here.at / full;
        t.b_by_0 = (lw_four){0.0};
        t.b_by_1 = -here.by / full;
    }
    return t;
}

LW_CLONES void lw_waves_grow(const lw_station *before, const lw_station *from, double way,
                             double full, lw_waves *waves)
{
    const trend t = trend_of(before, from, full);
    const double half = 0.5 * way * way;
    waves->n = from->at.third + t.a * way + t.b * half;
    waves->slope = t.a + t.b * way;
    waves->by_0 = half * t.b_by_0;
    waves->by_1 = by_third + way * t.a_by_1 + half * t.b_by_1;
}

// The root of n_1 + a d + b d^2 / 2 = most.
LW_CLONES void lw_turn_of(const lw_station *before, const lw_station *from, double full,
                          double most, lw_turn *turn)
{
    lw_waves w;
    lw_waves_grow(before, from, full, full, &w);
    *turn = (lw_turn){.part = 2.0};
    if (w.n < most) return;
    const trend t = trend_of(before, from, full);
    const double lack = most - from->at.third;
    const double root = sqrt(fmax(t.a * t.a + 2.0 * t.b * lack, 0.0));
    const double way = fmin(2.0 * lack / (t.a + root), full);
    lw_waves_grow(before, from, way, full, &w);
    const double per = 1.0 / (fmax(w.slope, 1e-6) * full);
    *turn = (lw_turn){way / full, -per * w.by_0, -per * w.by_1};
}

// --- transition

// The place between two stations where the layer turns, and how its theta, H and U follow both.
typedef struct between {
    lw_layer_place at;
    double x, full;           // the place, and the whole way
    double by_1[3], by_2[3];  // of ln theta, H, ln U along the same of the ends
    double H_by_theta[2];     // of H along ln theta of the ends
    double by_part[3];
} between;

// Slopes of an equation along the unknowns and the place there.
typedef struct along {
    lw_four unknowns;
    double x;
} along;

LW_INLINE between between_of(const lw_station *a, const lw_station *b, double part)
{
    const lw_four e = lw_four_exp(
        (lw_four){b->at.log_theta - a->at.log_theta, b->at.log_speed - a->at.log_speed, 0.0, 0.0});
    const double rest = 1.0 - part, H_1 = a->at.shape, H_2 = b->at.shape;
    const double theta = rest + part * e[0], speed = rest + part * e[1];
    const double first = rest / theta, second = part * e[0] / theta;  // shares in theta
    const lw_four logs = lw_four_log((lw_four){theta, speed, theta, speed});
    const double H = first * H_1 + second * H_2;
    between t = {.at = {a->at.log_theta + logs[0], H, a->at.log_speed + logs[1], 0.0},
                 .x = a->x + part * (b->x - a->x),
                 .full = b->x - a->x};
    t.by_1[0] = first, t.by_2[0] = second;
    t.by_1[1] = first, t.by_2[1] = second;
    t.by_1[2] = rest / speed, t.by_2[2] = part * e[1] / speed;
    t.H_by_theta[0] = first * (H_1 - H);
    t.H_by_theta[1] = second * (H_2 - H);
    t.by_part[0] = (e[0] - 1.0) / theta;
    t.by_part[1] = (e[0] * (H_2 - H) - (H_1 - H)) / theta;
    t.by_part[2] = (e[1] - 1.0) / speed;
    return t;
}

// Slopes of equation i along the turning place, handed on to what that follows from.
LW_INLINE void hand_on(const between *t, const lw_turn *turn, const along *by, lw_interval *of,
                       int i)
{
    const lw_four b = by->unknowns;
    of->by_1[i] += (lw_four){b[0] * t->by_1[0] + b[1] * t->H_by_theta[0], b[1] * t->by_1[1],
                             b[2] * t->by_1[2], 0.0};
    of->by_2[i] += (lw_four){b[0] * t->by_2[0] + b[1] * t->H_by_theta[1], b[1] * t->by_2[1],
                             b[2] * t->by_2[2], 0.0};
    const double by_part =
        b[0] * t->by_part[0] + b[1] * t->by_part[1] + b[2] * t->by_part[2] + by->x * t->full;
    of->by_0[i] += by_part * turn->by_0;
    of->by_1[i] += by_part * turn->by_1;
    of->by_x_1[i] += by->x * (1.0 - turn->part);
    of->by_x_2[i] += by->x * turn->part;
}

LW_CLONES void lw_interval_turning(double log_reynolds, const lw_station *a, const lw_station *b,
                                   const lw_turn *turn, lw_interval *of)
{
    const between t = between_of(a, b, turn->part);
    lw_station here = {.x = t.x, .at = t.at};
    lw_interval smooth, rough;
    lw_dual start;
    lw_closure_of(LW_LAMINAR, log_reynolds, &here.at, &here.closure);
    equations(LW_LAMINAR, a, &here, &smooth);
    lw_closure_start(log_reynolds, &here.at, &start);
    here.at.third = start.at;
    lw_closure_of(LW_TURBULENT, log_reynolds, &here.at, &here.closure);
    equations(LW_TURBULENT, &here, b, &rough);
    for (int i = 0; i < LW_EQUATIONS; i++) {
        const bool is_both = i != LW_OF_THIRD;
        of->left[i] = rough.left[i] + (is_both ? smooth.left[i] : 0.0);
        of->by_0[i] = (lw_four){0.0};
        of->by_1[i] = is_both ? smooth.by_1[i] : (lw_four){0.0};
        of->by_2[i] = rough.by_2[i];
        of->by_x_1[i] = is_both ? smooth.by_x_1[i] : 0.0;
        of->by_x_2[i] = rough.by_x_2[i];
        along by = {rough.by_1[i] + rough.by_1[i][LW_BY_THIRD] * start.by, rough.by_x_1[i]};
        if (is_both) by.unknowns += smooth.by_2[i], by.x += smooth.by_x_2[i];
        hand_on(&t, turn, &by, of, i);
    }
}
