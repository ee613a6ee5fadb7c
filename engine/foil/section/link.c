// link.c - what is left at a station, and its slopes, made links to the stations before it.
// SPDX-License-Identifier: MIT

#include "foil/section/link.h"

#include <math.h>

int lw_side_node(const lw_system *s, const lw_side *side, int k)
{
    return side->number == 0 ? s->nose - k : s->nose + 1 + k;
}

lw_four lw_by_mass(lw_four by, const lw_station *t, double mass, double speed)
{
    const double shape = by[LW_BY_SHAPE] * t->at.shape;
    return (lw_four){by[LW_BY_THETA] - shape, by[LW_BY_THIRD], shape / mass,
                     (by[LW_BY_SPEED] - shape) / speed};
}

lw_four lw_by_speed(lw_four by, double speed)
{
    return (lw_four){by[LW_BY_THETA], by[LW_BY_THIRD], 0.0, by[LW_BY_SPEED] / speed};
}

static lw_link combined(const lw_equations *e, const double w[3])
{
    lw_link link = {.by_nose = 0.0};
    for (int i = 0; i < 3; i++) {
        link.by_0 -= w[i] * e->by_0[i];
        link.by_1 -= w[i] * e->by_1[i];
        link.by_mass -= w[i] * e->by_2[i][2];
        link.by_speed -= w[i] * e->by_2[i][3];
        link.by_nose -= w[i] * e->by_nose[i];
        link.rest -= w[i] * e->left[i];
    }
    return link;
}

static void cross(const double a[3], const double b[3], double per, double c[3])
{
    c[0] = per * (a[1] * b[2] - a[2] * b[1]);
    c[1] = per * (a[2] * b[0] - a[0] * b[2]);
    c[2] = per * (a[0] * b[1] - a[1] * b[0]);
}

void lw_link_up(const lw_equations *e, lw_links *links)
{
    double theta[3], third[3], none[3], p[3], q[3];
    for (int i = 0; i < 3; i++) theta[i] = e->by_2[i][0], third[i] = e->by_2[i][1];
    cross(theta, third, 1.0, none);
    const double size_2 = none[0] * none[0] + none[1] * none[1] + none[2] * none[2];
    const double per_2 = 1.0 / fmax(size_2, 1e-200), per = sqrt(per_2);
    cross(third, none, per_2, p);
    cross(none, theta, per_2, q);
    for (int i = 0; i < 3; i++) none[i] *= per;
    links->theta = combined(e, p);
    links->third = combined(e, q);
    links->mass = combined(e, none);
}

void lw_note(lw_system *s, const lw_equations *e)
{
    for (int i = 0; i < 3; i++) {
        const double left = fabs(e->left[i]);
        s->sum += left < 1e15 ? left * left : 1e30;
        if (!(left <= s->left)) s->left = left < 1e30 ? left : 1e30;
    }
}

void lw_equations_of(const lw_system *s, const lw_interval *v, const lw_row *at, lw_equations *e)
{
    const lw_layer *l = s->layer;
    const double *mass = l->state.mass, *speed = l->state.speed;
    const int a = at->nodes[1], b = at->nodes[2], o = at->nodes[0], k = at->k;
    for (int i = 0; i < 3; i++) {
        e->left[i] = v->left[i];
        e->by_2[i] = lw_by_mass(v->by_2[i], &s->station[b], mass[b], speed[b]);
        e->by_1[i] = k == 1 ? lw_by_speed(v->by_1[i], speed[a])
                            : lw_by_mass(v->by_1[i], &s->station[a], mass[a], speed[a]);
        e->by_0[i] = (lw_four){0.0};
        if (o >= 0)
            e->by_0[i] = k == 2 ? lw_by_speed(v->by_0[i], speed[o])
                                : lw_by_mass(v->by_0[i], &s->station[o], mass[o], speed[o]);
        e->by_nose[i] = -at->sign * (v->by_x_1[i] + v->by_x_2[i]);
    }
}
