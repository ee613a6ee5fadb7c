// ascent.c - Newton's method on differences, its steps side by side.
// SPDX-License-Identifier: MIT

#include "solve/ascent.h"

#include <math.h>
#include <stdbool.h>

#include "solve/linear.h"
#include "solve/within.h"

#define MOST        LW_ASCENT_MOST
#define PAIRS       (MOST * (MOST - 1) / 2)
#define PAIRS_EVERY 3  // rounds: how variables bend together changes slowly
#define STEPS       8
#define NOWHERE     (-1e8)  // below this a point has no value

// What is known of the function around a point.
typedef struct model {
    double value, gradient[MOST], second[MOST][MOST];
} model;

static lw_point moved(const lw_ascent *a, const lw_point *from, const double by[MOST])
{
    lw_point to = *from;
    for (size_t i = 0; i < a->count; i++) {
        to.x[i] = lw_within(from->x[i] + by[i], a->low.x[i], a->high.x[i]);
    }
    return to;
}

// The value to one side along a variable, and how far off that is.
typedef struct beside {
    double value, h;
} beside;

static bool is_known(const beside *b) { return b->h > 0.0 && b->value > NOWHERE; }

// Slope and bend along variable i from the values to either side, which need not be as far off.
static void bend_along(model *m, size_t i, const beside *below, const beside *above)
{
    const double down = is_known(below) ? (m->value - below->value) / below->h : NAN;
    const double up = is_known(above) ? (above->value - m->value) / above->h : NAN;
    m->second[i][i] = 0.0;
    m->gradient[i] = down == down ? down : up == up ? up : 0.0;
    if (!(down == down && up == up)) return;
    m->second[i][i] = 2.0 * (up - down) / (below->h + above->h);
    m->gradient[i] = (up * below->h + down * above->h) / (below->h + above->h);
}

// Evaluates either way along each variable, and along each pair of them when `pairs` says so.
static void difference(const lw_ascent *a, const lw_point *at, bool pairs, model *m)
{
    lw_point points[2 * MOST + PAIRS];
    double values[2 * MOST + PAIRS];
    size_t n = 0;
    for (size_t i = 0; i < a->count; i++) {
        for (int side = -1; side <= 1; side += 2) {
            double by[MOST] = {0};
            by[i] = side * a->apart;
            points[n++] = moved(a, at, by);
        }
    }
    for (size_t i = 0; pairs && i < a->count; i++) {
        for (size_t j = 0; j < i; j++) {
            double by[MOST] = {0};
            by[i] = by[j] = a->apart;
            points[n++] = moved(a, at, by);
        }
    }
    a->evaluate(a->of, points, values, n);
    for (size_t i = 0; i < a->count; i++) {
        const beside below = {values[2 * i], at->x[i] - points[2 * i].x[i]};
        const beside above = {values[2 * i + 1], points[2 * i + 1].x[i] - at->x[i]};
        bend_along(m, i, &below, &above);
    }
    for (size_t i = 0, k = 2 * a->count; pairs && i < a->count; i++) {
        for (size_t j = 0; j < i; j++, k++) {
            const double h = (points[k].x[i] - at->x[i]) * (points[k].x[j] - at->x[j]);
            const double up[2] = {values[2 * i + 1], values[2 * j + 1]};
            const bool is_sound =
                h > 0.0 && up[0] > NOWHERE && up[1] > NOWHERE && values[k] > NOWHERE;
            m->second[i][j] = is_sound ? (values[k] - up[0] - up[1] + m->value) / h : 0.0;
            m->second[j][i] = m->second[i][j];
        }
    }
}

static bool is_pressed(const lw_ascent *a, const lw_point *at, const model *m, size_t i)
{
    return (at->x[i] <= a->low.x[i] && m->gradient[i] <= 0.0) ||
           (at->x[i] >= a->high.x[i] && m->gradient[i] >= 0.0);
}

// (lambda I - H) d = g in the variables that are free to move; no step where that has no answer.
static void step_of(const lw_ascent *a, const lw_point *at, const model *m, double lambda,
                    double step[MOST])
{
    const int n = (int)a->count;
    double matrix[MOST * MOST];
    int pivot[MOST];
    for (int i = 0; i < n; i++) {
        const bool held = is_pressed(a, at, m, (size_t)i);
        step[i] = held ? 0.0 : m->gradient[i];
        for (int j = 0; j < n; j++) {
            const bool apart = held || is_pressed(a, at, m, (size_t)j);
            matrix[i * n + j] = apart ? 0.0 : -m->second[i][j];
        }
        matrix[i * n + i] += held ? 1.0 : lambda;
    }
    if (!lw_linear_factor(matrix, n, pivot)) {
        for (int i = 0; i < n; i++) step[i] = 0.0;
        return;
    }
    lw_linear_solve(matrix, n, pivot, step);
    double longest = 1.0;
    for (int i = 0; i < n; i++) longest = fmax(longest, fabs(step[i]));
    for (int i = 0; i < n; i++) step[i] /= longest;
}

// One round: differences, then steps of every length; moves to the best. Returns what it gained.
static double climb(const lw_ascent *a, lw_point *at, bool pairs, model *m)
{
    lw_point trials[STEPS];
    double values[STEPS], step[MOST];
    difference(a, at, pairs, m);
    double lambda = 0.0;
    for (int k = 0; k < STEPS; k++) {
        step_of(a, at, m, lambda, step);
        trials[k] = moved(a, at, step);
        lambda = k == 0 ? 1e-3 : 10.0 * lambda;
    }
    a->evaluate(a->of, trials, values, STEPS);
    int best = 0;
    for (int k = 1; k < STEPS; k++) {
        if (values[k] > values[best]) best = k;
    }
    const double gain = values[best] - m->value;
    if (!(gain > 0.0)) return 0.0;
    *at = trials[best], m->value = values[best];
    return gain;
}

double lw_ascent_from(const lw_ascent *a, lw_point *at)
{
    model m = {0};
    a->evaluate(a->of, at, &m.value, 1);
    for (int round = 0; round < a->rounds; round++) {
        const double gain = climb(a, at, round % PAIRS_EVERY == 0, &m);
        if (gain < a->gain) break;
    }
    return m.value;
}
