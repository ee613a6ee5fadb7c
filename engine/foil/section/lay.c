// lay.c - layers laid along given speeds [drela-1989].
// SPDX-License-Identifier: MIT

#include "foil/section/lay.h"

#include <math.h>

#include "lullwise/elementary.h"

static void look(const lw_laid *d, lw_interval *v)
{
    lw_closure_of(d->kind, d->log_reynolds, &d->b->at, &d->b->closure);
    if (d->turn)
        lw_interval_turning(d->log_reynolds, d->a, d->b, d->turn, v);
    else
        lw_interval_of(d->kind, d->a, d->b, v);
    if (d->kind == LW_LAMINAR) {
        v->left[2] = 0.0;
        v->by_2[2] = (lw_four){0.0, 0.0, 0.0, 1.0};
    }
}

static double determinant(double c[3][3])
{
    return c[0][0] * (c[1][1] * c[2][2] - c[1][2] * c[2][1]) -
           c[0][1] * (c[1][0] * c[2][2] - c[1][2] * c[2][0]) +
           c[0][2] * (c[1][0] * c[2][1] - c[1][1] * c[2][0]);
}

// Steps of theta, shape or speed, and third, by determinants.
static bool steps_of(const lw_interval *v, int second, double step[3])
{
    const int columns[3] = {LW_BY_THETA, second, LW_BY_THIRD};
    double c[3][3];
    for (int i = 0; i < 3; i++) {
        for (int j = 0; j < 3; j++) c[i][j] = v->by_2[i][columns[j]];
    }
    const double all = determinant(c);
    if (!(fabs(all) > 1e-200)) return false;
    for (int j = 0; j < 3; j++) {
        double one[3][3];
        for (int i = 0; i < 3; i++) {
            for (int k = 0; k < 3; k++) one[i][k] = k == j ? -v->left[i] : c[i][k];
        }
        step[j] = determinant(one) / all;
    }
    return true;
}

// The speed is given, or the shape.
static bool search(const lw_laid *d, bool has_shape)
{
    lw_layer_place *p = &d->b->at;
    for (int turn = 0; turn < 25; turn++) {
        lw_interval v;
        double step[3];
        look(d, &v);
        if (!steps_of(&v, has_shape ? LW_BY_SPEED : LW_BY_SHAPE, step)) return false;
        const double most_second = has_shape ? 0.3 : 0.3 * (p->shape - 0.9);
        const double worst = fmax(fmax(fabs(step[0]) / 0.4, fabs(step[1]) / most_second),
                                  d->kind == LW_LAMINAR ? 0.0 : fabs(step[2]));
        const double part = worst > 1.0 ? 1.0 / worst : 1.0;
        p->log_theta += part * step[0];
        *(has_shape ? &p->log_speed : &p->shape) += part * step[1];
        if (d->kind != LW_LAMINAR) p->third += part * step[2];
        if (worst < 1e-5) return true;
    }
    return false;
}

void lw_lay_station(const lw_laid *d, double most_shape)
{
    const lw_layer_place guess = d->b->at;
    if (!search(d, false) || !(d->b->at.shape < most_shape) || !(d->b->at.shape > 1.02)) {
        d->b->at = guess;
        d->b->at.shape = fmin(fmax(d->a->at.shape, 1.4), most_shape);
        if (!search(d, true)) {
            d->b->at = guess;
            d->b->at.shape = fmin(fmax(d->a->at.shape, 1.4), most_shape);
        }
    }
    lw_closure_of(d->kind, d->log_reynolds, &d->b->at, &d->b->closure);
}

static void keep(lw_system *s, int node, double sign)
{
    lw_layer_state *z = &s->layer->state;
    const lw_layer_place *p = &s->station[node].at;
    z->log_theta[node] = p->log_theta;
    z->third[node] = p->third;
    z->speed[node] = sign * lw_exp(p->log_speed);
    z->mass[node] = z->speed[node] * lw_exp(p->log_theta) * p->shape;
}

static void lay_side(lw_system *s, lw_side *side)
{
    const lw_layer *l = s->layer;
    const double trip = lw_trip_of(s, side);
    lw_begin_side(s, side);
    keep(s, lw_side_node(s, side, 0), side->sign);
    bool is_turbulent = false;
    side->turns = side->count;
    for (int k = 1; k < side->count; k++) {
        const int node = lw_side_node(s, side, k);
        lw_station *b = &s->station[node];
        const lw_station *a = &s->station[lw_side_node(s, side, k - 1)];
        const double speed = fmax(side->sign * l->state.speed[node], 0.01);
        b->x = side->sign * (l->s[node] - s->origin);
        b->at = a->at;
        b->at.log_speed = lw_log(speed);
        lw_turn turn = {.part = 2.0};
        if (!is_turbulent) turn = lw_turn_at(s, side, k, trip);
        const bool turns = turn.part <= 1.0;
        if (turns) {
            lw_dual start;
            lw_closure_start(s->log_reynolds, &a->at, &start);
            b->at.third = fmax(start.at, -4.0);
            b->at.shape = fmin(b->at.shape, 2.0);
            side->turns = k;
            is_turbulent = true;
        }
        const lw_laid d = {.log_reynolds = s->log_reynolds,
                           .kind = is_turbulent ? LW_TURBULENT : LW_LAMINAR,
                           .a = a,
                           .b = b,
                           .turn = turns ? &turn : NULL};
        if (!is_turbulent) {
            lw_waves waves;
            const lw_station *o = k > 1 ? &s->station[lw_side_node(s, side, k - 2)] : NULL;
            lw_waves_grow(o, a, b->x - a->x, b->x - a->x, &waves);
            b->at.third = waves.n;
        }
        lw_lay_station(&d, is_turbulent ? 2.5 : 4.0);
        keep(s, node, side->sign);
    }
}

static void lay_wake(lw_system *s)
{
    const lw_layer *l = s->layer;
    lw_begin_wake(s);
    for (int node = l->nodes + 1; node < l->all; node++) {
        lw_station *b = &s->station[node];
        const lw_station *a = &s->station[node - 1];
        b->x = l->s[l->nodes - 1] - s->origin + l->s[node];
        b->at = a->at;
        b->at.log_speed = lw_log(fmax(l->state.speed[node], 0.05));
        b->at.shape = 1.0 + 0.9 * (b->at.shape - 1.0);
        const lw_laid d = {.log_reynolds = s->log_reynolds, .kind = LW_WAKE, .a = a, .b = b};
        lw_lay_station(&d, fmax(a->at.shape, 1.1));
        keep(s, node, 1.0);
    }
}

void lw_lay_layers(lw_system *s)
{
    lay_side(s, &s->side[0]);
    lay_side(s, &s->side[1]);
    lay_wake(s);
}
