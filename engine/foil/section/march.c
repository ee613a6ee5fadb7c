// march.c - the two-point equations of the layer, solved together with the outer flow by Newton.
// SPDX-License-Identifier: MIT

#include "foil/section/march.h"

#include <math.h>

#include "lullwise/elementary.h"

#define UNKNOWNS 3

// Logarithm of theta, mass, logarithm of the stress.
typedef struct unknown {
    double at[UNKNOWNS];
} unknown;

typedef struct step {
    lw_layer_kind kind;
    const lw_layer_place *from;
    lw_closure before;
    const lw_outer *outer;
    double reynolds;
} step;

static lw_layer_place place_of(const step *s, const unknown *z)
{
    const double speed = s->outer->speed + s->outer->pull * z->at[1];
    return (lw_layer_place){.x = s->outer->x,
                            .theta = lw_exp(z->at[0]),
                            .delta = z->at[1] / speed,
                            .stress = s->kind == LW_LAMINAR ? 0.0 : lw_exp(z->at[2]),
                            .speed = speed};
}

static double square(double x) { return x * x; }

// What is left of the three equations [drela-giles-1987], between the stations 1 and 2:
//
//     d ln theta + (H + 2) d ln U = c_f / 2 x / theta d ln x
//     d ln H* + (1 - H) d ln U = (2 c_D / H* - c_f / 2) x / theta d ln x
//     2 thick d ln S = 5.6 * 4/3 / (1 + U_s) (c_eq - lag S) dx + 2 thick (g_eq dx - d ln U)
//
// Means of both ends; where H changes fast the second counts more, so that nothing oscillates.
static unknown left_over(const step *s, const lw_layer_place *place)
{
    const lw_layer_place *p = s->from, *q = place;
    const lw_closure a = s->before, b = lw_closure_of(s->kind, q, s->reynolds);
    const double d_theta = lw_log(q->theta / p->theta), d_U = lw_log(q->speed / p->speed);
    const double d_x = lw_log(q->x / p->x), dx = q->x - p->x;
    const double H = 0.5 * (a.H + b.H);

    const double change = lw_log((b.H - 1.0) / (a.H - 1.0));
    const double late = 1.0 - 0.5 * lw_exp(-fmin(5.0 * square(change / b.H), 15.0));
    const double early = 1.0 - late;
    const double per_1 = p->x / p->theta, per_2 = q->x / q->theta;
    const double friction = 0.5 * (a.c_f * per_1 + b.c_f * per_2);
    const double friction_late = early * a.c_f * per_1 + late * b.c_f * per_2;
    const double dissipation = early * a.two_c_D * per_1 + late * b.two_c_D * per_2;

    unknown left = {{0.0}};
    left.at[0] = d_theta + (H + 2.0) * d_U - 0.5 * friction * d_x;
    left.at[1] =
        lw_log(b.H_star / a.H_star) + (1.0 - H) * d_U - (dissipation - 0.5 * friction_late) * d_x;
    if (s->kind == LW_LAMINAR) return left;

    const double lag = s->kind == LW_WAKE ? 0.9 : 1.0;
    const double S = early * p->stress + late * q->stress;
    const double c_eq = early * a.c_eq + late * b.c_eq, thick = 0.5 * (a.thick + b.thick);
    const double U_s = 0.5 * (a.U_s + b.U_s), shape = early * a.H + late * b.H;
    const double R = 0.5 * (a.R + b.R), delta = early * p->delta + late * q->delta;
    const double c_f = early * a.c_f + late * b.c_f;
    const double core = fmax(shape - 1.0 - (s->kind == LW_WAKE ? 0.0 : 18.0 / R), 0.01);
    const double g_eq = (0.5 * c_f - square(core / (6.7 * lag * shape))) / (0.75 * delta);
    left.at[2] = 5.6 * 1.333 / (1.0 + U_s) * (c_eq - lag * S) * dx -
                 2.0 * thick * lw_log(q->stress / p->stress) + 2.0 * thick * (g_eq * dx - d_U);
    left.at[2] /= thick;
    return left;
}

// The inverse by Gauss and Jordan; false when there is none.
static bool invert(double J[UNKNOWNS][2 * UNKNOWNS], int n)
{
    for (int k = 0; k < n; k++) {
        int p = k;
        for (int i = k + 1; i < n; i++) {
            if (fabs(J[i][k]) > fabs(J[p][k])) p = i;
        }
        if (!(fabs(J[p][k]) > 1e-300)) return false;
        for (int j = 0; j < 2 * UNKNOWNS && p != k; j++) {
            const double old = J[k][j];
            J[k][j] = J[p][j];
            J[p][j] = old;
        }
        for (int i = 0; i < n; i++) {
            if (i == k) continue;
            const double f = J[i][k] / J[k][k];
            for (int j = k; j < 2 * UNKNOWNS; j++) J[i][j] -= f * J[k][j];
        }
    }
    for (int k = 0; k < n; k++) {
        for (int j = 0; j < n; j++) J[k][UNKNOWNS + j] /= J[k][k];
    }
    return true;
}

// How the unknowns follow what is left over, differenced at a place.
static bool learn(const step *s, const unknown *z, const unknown *left, lw_march_memory *memory)
{
    const int n = s->kind == LW_LAMINAR ? 2 : 3;
    double J[UNKNOWNS][2 * UNKNOWNS] = {{0.0}};
    for (int k = 0; k < n; k++) {
        unknown near = *z;
        const double nudge = k == 1 ? 1e-6 * z->at[1] : 1e-6;
        near.at[k] += nudge;
        const lw_layer_place there = place_of(s, &near);
        const unknown other = left_over(s, &there);
        for (int i = 0; i < n; i++) J[i][k] = (other.at[i] - left->at[i]) / nudge;
        J[k][UNKNOWNS + k] = 1.0;
    }
    memory->is_known = invert(J, n);
    memory->kind = s->kind;
    for (int i = 0; i < n; i++) {
        for (int k = 0; k < n; k++) memory->inverse[i][k] = J[i][UNKNOWNS + k];
    }
    return memory->is_known;
}

static bool is_sound(const step *s, const unknown *z, const lw_layer_place *old)
{
    const lw_layer_place q = place_of(s, z);
    const double H = q.delta / q.theta, H_old = old->delta / old->theta;
    return q.speed > 0.8 * old->speed && q.speed < 1.25 * old->speed && H > 1.01 &&
           fabs(H - H_old) < 0.5 * (H_old - 0.9) && fabs(lw_log(q.theta / old->theta)) < 0.4;
}

// Takes the change, or as large a part of it as is sound.
static bool take(const step *s, unknown *z, const unknown *left, const lw_march_memory *memory)
{
    const int n = s->kind == LW_LAMINAR ? 2 : 3;
    const lw_layer_place old = place_of(s, z);
    unknown change = {{0.0}};
    for (int i = 0; i < n; i++) {
        for (int k = 0; k < n; k++) change.at[i] -= memory->inverse[i][k] * left->at[k];
    }
    double part = 1.0;
    for (int halving = 0; halving < 14; halving++, part *= 0.5) {
        unknown next = *z;
        for (int k = 0; k < n; k++) next.at[k] += part * change.at[k];
        if (n == UNKNOWNS && fabs(next.at[2] - z->at[2]) > 1.0) continue;
        if (!is_sound(s, &next, &old)) continue;
        *z = next;
        return true;
    }
    return false;
}

static double worst_of(const unknown *left)
{
    const double *a = left->at;
    const bool is_sane = fabs(a[0]) < 1e6 && fabs(a[1]) < 1e6 && fabs(a[2]) < 1e6;
    return is_sane ? fmax(fmax(fabs(a[0]), fabs(a[1])), fabs(a[2])) : INFINITY;
}

// Newton's method; the inverse of an earlier turn or sweep serves while it takes four fifths away.
static bool solve(const step *s, unknown *z, lw_march_memory *memory)
{
    lw_layer_place here = place_of(s, z);
    unknown left = left_over(s, &here);
    double worst = worst_of(&left);
    bool is_fresh = false;
    if (memory->kind != s->kind) memory->is_known = false;
    for (int turn = 0; turn < 25; turn++) {
        if (!(worst < 1e6)) return false;
        if (worst < 1e-6) return true;
        if (!memory->is_known) {
            if (!learn(s, z, &left, memory)) return false;
            is_fresh = true;
        }
        unknown next = *z;
        if (take(s, &next, &left, memory)) {
            here = place_of(s, &next);
            const unknown rest = left_over(s, &here);
            const double now = worst_of(&rest);
            memory->is_known = now < 0.2 * worst;
            if (is_fresh || memory->is_known) *z = next, left = rest, worst = now;
        } else {
            if (is_fresh) return false;
            memory->is_known = false;
        }
        is_fresh = false;
    }
    return false;
}

bool lw_march(lw_layer_kind kind, const lw_layer_place *from, const lw_outer *outer,
              double reynolds, lw_layer_place *place, lw_march_memory *memory)
{
    const step s = {kind, from, lw_closure_of(kind, from, reynolds), outer, reynolds};
    // the guess has its own speed, which fixes the mass; where the outer flow hardly answers,
    // its thickness does
    const double by_speed = (place->speed - outer->speed) / outer->pull;
    const double by_delta = place->speed * place->delta;
    const double stress = lw_log(fmax(place->stress, 1e-4));
    const unknown guesses[2] = {{{lw_log(place->theta), by_delta, stress}},
                                {{lw_log(place->theta), by_speed, stress}}};
    for (int i = 0; i < 2; i++) {
        unknown z = guesses[i];
        if (!(z.at[1] > 0.0) || !(outer->speed + outer->pull * z.at[1] > 1e-3)) continue;
        if (!solve(&s, &z, memory)) continue;
        *place = place_of(&s, &z);
        return true;
    }
    place->x = outer->x;
    return false;
}
