// march.c - the two-point equations of the layer, solved together with the outer flow by Newton.
// SPDX-License-Identifier: MIT

#include "foil/section/march.h"

#include <math.h>
#include <stddef.h>

#include "solve/four.h"

#define UNKNOWNS 3

// Logarithm of theta, mass, logarithm of the stress.
typedef struct unknown {
    double at[UNKNOWNS];
} unknown;

typedef struct step {
    const lw_layer_flow *flow;
    const lw_march_from *from;
    const lw_outer *outer;
    double d_log_x;
} step;

LW_INLINE int unknowns_of(const step *s) { return s->flow->kind == LW_LAMINAR ? 2 : 3; }

LW_INLINE lw_station station_of(const step *s, const unknown *z)
{
    const double speed = s->outer->speed + s->outer->pull * z->at[1];
    const bool is_laminar = s->flow->kind == LW_LAMINAR;
    const lw_four exps = lw_four_exp((lw_four){z->at[0], z->at[2]});
    return (lw_station){.at = {.x = s->outer->x,
                               .theta = exps[0],
                               .delta = z->at[1] / speed,
                               .stress = is_laminar ? 0.0 : exps[1],
                               .speed = speed},
                        .log_theta = z->at[0],
                        .log_speed = lw_four_log((lw_four){speed, speed, speed, speed})[0],
                        .log_stress = z->at[2]};
}

LW_INLINE double square(double x) { return x * x; }

// What is left of the three equations [drela-giles-1987], between the stations 1 and 2:
//
//     d ln theta + (H + 2) d ln U = c_f / 2 x / theta d ln x
//     d ln H* + (1 - H) d ln U = (2 c_D / H* - c_f / 2) x / theta d ln x
//     2 thick d ln S = 5.6 * 4/3 / (1 + U_s) (c_eq - lag S) dx + 2 thick (g_eq dx - d ln U)
//
// Means of both ends; where H changes fast the second counts more, so that nothing oscillates.
LW_INLINE unknown left_over(const step *s, const lw_station *here, const lw_closure *b)
{
    const lw_layer_kind kind = s->flow->kind;
    const lw_station *before = &s->from->station;
    const lw_layer_place *p = &before->at, *q = &here->at;
    const lw_closure *a = &s->from->closure;
    const double d_theta = here->log_theta - before->log_theta;
    const double d_U = here->log_speed - before->log_speed;
    const double d_x = s->d_log_x, dx = q->x - p->x;
    const double H = 0.5 * (a->H + b->H), late = b->late, early = 1.0 - late;
    const double per_1 = p->x / p->theta, per_2 = q->x / q->theta;
    const double friction = 0.5 * (a->c_f * per_1 + b->c_f * per_2);
    const double friction_late = early * a->c_f * per_1 + late * b->c_f * per_2;
    const double dissipation = early * a->two_c_D * per_1 + late * b->two_c_D * per_2;

    unknown left = {{0.0}};
    left.at[0] = d_theta + (H + 2.0) * d_U - 0.5 * friction * d_x;
    left.at[1] =
        b->log_H_star - a->log_H_star + (1.0 - H) * d_U - (dissipation - 0.5 * friction_late) * d_x;
    if (kind == LW_LAMINAR) return left;

    const double lag = kind == LW_WAKE ? 0.9 : 1.0;
    const double S = early * p->stress + late * q->stress;
    const double c_eq = early * a->c_eq + late * b->c_eq, thick = 0.5 * (a->thick + b->thick);
    const double U_s = 0.5 * (a->U_s + b->U_s), shape = early * a->H + late * b->H;
    const double R = 0.5 * (a->R + b->R), delta = early * p->delta + late * q->delta;
    const double c_f = early * a->c_f + late * b->c_f;
    const double thin = shape - 1.0 - (kind == LW_WAKE ? 0.0 : 18.0 / R);
    const double core = thin > 0.01 ? thin : 0.01;
    const double g_eq = (0.5 * c_f - square(core / (6.7 * lag * shape))) / (0.75 * delta);
    left.at[2] = 5.6 * 1.333 / (1.0 + U_s) * (c_eq - lag * S) * dx / thick -
                 2.0 * (here->log_stress - before->log_stress) + 2.0 * (g_eq * dx - d_U);
    return left;
}

// Where a search for a station stands.
typedef struct turn {
    unknown z;
    lw_station here;
    lw_closure closure;
    unknown left;
    double worst;
} turn;

// The inverse by Gauss and Jordan; false when there is none.
LW_INLINE bool invert(double J[UNKNOWNS][2 * UNKNOWNS], int n)
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
LW_INLINE bool learn(const step *s, const unknown *z, const unknown *left, lw_march_memory *memory)
{
    const int n = unknowns_of(s);
    double J[UNKNOWNS][2 * UNKNOWNS] = {{0.0}};
    for (int k = 0; k < n; k++) {
        unknown near = *z;
        const double nudge = k == 1 ? 1e-6 * z->at[1] : 1e-6;
        near.at[k] += nudge;
        const lw_station there = station_of(s, &near);
        const lw_closure closure = lw_closure_of(s->flow, &there, &s->from->closure);
        const unknown other = left_over(s, &there, &closure);
        for (int i = 0; i < n; i++) J[i][k] = (other.at[i] - left->at[i]) / nudge;
        J[k][UNKNOWNS + k] = 1.0;
    }
    memory->is_known = invert(J, n);
    memory->kind = s->flow->kind;
    for (int i = 0; i < n; i++) {
        for (int k = 0; k < n; k++) memory->inverse[i][k] = J[i][UNKNOWNS + k];
    }
    return memory->is_known;
}

// Whether a step from an old place to a new one may be taken.
LW_INLINE bool is_sound(const lw_layer_place *old, const lw_layer_place *q)
{
    const double H = q->delta / q->theta, H_old = old->delta / old->theta;
    return q->speed > 0.8 * old->speed && q->speed < 1.25 * old->speed && H > 1.01 &&
           fabs(H - H_old) < 0.5 * (H_old - 0.9);
}

// Takes the change, or as large a part of it as is sound: that part, 0 when there is none.
LW_INLINE double take(const step *s, turn *t, const lw_march_memory *memory)
{
    const int n = unknowns_of(s);
    const turn old = *t;
    unknown change = {{0.0}};
    for (int i = 0; i < n; i++) {
        for (int k = 0; k < n; k++) change.at[i] -= memory->inverse[i][k] * old.left.at[k];
    }
    double part = 1.0;
    for (int halving = 0; halving < 14; halving++, part *= 0.5) {
        for (int k = 0; k < n; k++) t->z.at[k] = old.z.at[k] + part * change.at[k];
        const bool is_far = fabs(part * change.at[0]) >= 0.4 || fabs(part * change.at[2]) > 1.0;
        if (is_far) continue;
        t->here = station_of(s, &t->z);
        if (is_sound(&old.here.at, &t->here.at)) return part;
    }
    return 0.0;
}

LW_INLINE double worst_of(const unknown *left)
{
    const double *a = left->at;
    const bool is_sane = fabs(a[0]) < 1e6 && fabs(a[1]) < 1e6 && fabs(a[2]) < 1e6;
    return is_sane ? fmax(fmax(fabs(a[0]), fabs(a[1])), fabs(a[2])) : INFINITY;
}

LW_INLINE void look(const step *s, turn *t)
{
    t->closure = lw_closure_of(s->flow, &t->here, &s->from->closure);
    t->left = left_over(s, &t->here, &t->closure);
    t->worst = worst_of(&t->left);
}

// What a step has shown is put into the inverse [broyden-1965]; lengths count as parts of theta,
// mass and stress.
LW_INLINE void learn_from(const turn *old, const turn *now, lw_march_memory *memory)
{
    double moved[UNKNOWNS], by[UNKNOWNS] = {0.0}, row[UNKNOWNS] = {0.0}, sum = 0.0;
    for (int i = 0; i < UNKNOWNS; i++) {
        moved[i] = now->z.at[i] - old->z.at[i];
        for (int k = 0; k < UNKNOWNS; k++) {
            by[i] += memory->inverse[i][k] * (now->left.at[k] - old->left.at[k]);
        }
    }
    const double per_mass = 1.0 / square(old->z.at[1]);
    for (int k = 0; k < UNKNOWNS; k++) {
        const double part = moved[k] * (k == 1 ? per_mass : 1.0);
        for (int j = 0; j < UNKNOWNS; j++) row[j] += part * memory->inverse[k][j];
        sum += part * by[k];
    }
    if (!(fabs(sum) > 1e-300)) return;
    for (int i = 0; i < UNKNOWNS; i++) {
        for (int j = 0; j < UNKNOWNS; j++) {
            memory->inverse[i][j] += (moved[i] - by[i]) * row[j] / sum;
        }
    }
}

// Newton's method. The inverse of an earlier turn or sweep serves while a step takes away half of
// what it would if all were straight.
LW_INLINE bool solve(const step *s, turn *t, lw_march_memory *memory)
{
    bool is_fresh = false;
    t->here = station_of(s, &t->z);
    look(s, t);
    if (memory->kind != s->flow->kind) memory->is_known = false;
    for (int i = 0; i < 25; i++) {
        if (!(t->worst < 1e6)) return false;
        if (t->worst < 1e-6) return true;
        if (!memory->is_known) {
            if (!learn(s, &t->z, &t->left, memory)) return false;
            is_fresh = true;
        }
        turn next = *t;
        const double part = take(s, &next, memory);
        if (part > 0.0) {
            look(s, &next);
            memory->is_known = next.worst < (1.0 - 0.5 * part) * t->worst;
            if (memory->is_known) learn_from(t, &next, memory);
            if (is_fresh || memory->is_known) *t = next;
        } else {
            if (is_fresh) return false;
            memory->is_known = false;
        }
        is_fresh = false;
    }
    return false;
}

lw_march_from lw_march_start(const lw_layer_flow *flow, const lw_layer_place *place)
{
    const lw_station station = lw_station_of(place);
    return (lw_march_from){*flow, station, lw_closure_of(flow, &station, NULL)};
}

LW_CLONES bool lw_march(const lw_march_from *from, const lw_outer *outer, lw_layer_place *place,
                        lw_march_from *end, lw_march_memory *memory)
{
    const lw_four logs = lw_four_log((lw_four){place->theta, fmax(place->stress, 1e-4),
                                               outer->x / from->station.at.x, place->theta});
    const step s = {&from->flow, from, outer, logs[2]};
    // the guess has its own speed, which fixes the mass; where the outer flow hardly answers,
    // its thickness does
    const double by_speed = (place->speed - outer->speed) / outer->pull;
    const double by_delta = place->speed * place->delta;
    const double masses[2] = {by_delta, by_speed};
    for (int i = 0; i < 2; i++) {
        turn t = {.z = {{logs[0], masses[i], logs[1]}}};
        if (!(masses[i] > 0.0) || !(outer->speed + outer->pull * masses[i] > 1e-3)) continue;
        if (!solve(&s, &t, memory)) continue;
        *place = t.here.at;
        *end = (lw_march_from){from->flow, t.here, t.closure};
        return true;
    }
    place->x = outer->x;
    return false;
}
