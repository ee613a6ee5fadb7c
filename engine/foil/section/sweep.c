// sweep.c - one pass along both layers and the wake, with the outer flow's answer at each station.
// SPDX-License-Identifier: MIT

#include "foil/section/sweep.h"

#include <math.h>
#include <stddef.h>

#include "foil/section/closure.h"
#include "foil/section/march.h"
#include "lullwise/elementary.h"

#define LAMINAR_H_MOST 6.0  // a laminar layer so far apart turns turbulent at once [judged]

static const double *row_of(const lw_layer *l, int node)
{
    return l->response + (size_t)node * (size_t)l->all;
}

double lw_sweep_speed(const lw_sweep *s, int node)
{
    const lw_layer *l = s->layer;
    const double *row = row_of(l, node), *mass = l->mass;
    double sum[4] = {0.0};  // four at once
    int j = 0;
    for (; j + 4 <= l->all; j += 4) {
        for (int k = 0; k < 4; k++) sum[k] += row[j + k] * mass[j + k];
    }
    for (; j < l->all; j++) sum[0] += row[j] * mass[j];
    return s->undisturbed[node] + ((sum[0] + sum[1]) + (sum[2] + sum[3]));
}

// No station lies at the tail itself, where the speed is only drawn out from that before it. The
// mass there is drawn out from the last two stations of a side, and the wake starts with both.
void lw_sweep_join_tail(lw_sweep *s)
{
    lw_layer *l = s->layer;
    const int n = l->nodes;
    l->mass[0] = l->mass[1] + s->more[0];
    l->mass[n - 1] = l->mass[n - 2] + s->more[1];
    l->mass[n] = l->mass[n - 1] - l->mass[0];
}

// The difference from the last station follows at half the way a sweep: at once, it would swing.
void lw_sweep_draw_out(lw_sweep *s)
{
    lw_layer *l = s->layer;
    const int n = l->nodes;
    const double below = (l->s[1] - l->s[0]) / (l->s[2] - l->s[1]);
    const double above = (l->s[n - 1] - l->s[n - 2]) / (l->s[n - 2] - l->s[n - 3]);
    s->more[0] += 0.5 * (below * (l->mass[1] - l->mass[2]) - s->more[0]);
    s->more[1] += 0.5 * (above * (l->mass[n - 2] - l->mass[n - 3]) - s->more[1]);
    lw_sweep_join_tail(s);
}

// Speed at a node for mass at the same node, with what that makes of the tail's.
static double pull_of(const lw_sweep *s, int node)
{
    const lw_layer *l = s->layer;
    const int n = l->nodes;
    const double *row = row_of(l, node);
    if (node == 1) return row[1] + row[0] - row[n];
    if (node == n - 2) return row[n - 2] + row[n - 1] + row[n];
    return row[node];
}

void lw_sweep_start(lw_sweep *s)
{
    lw_layer *l = s->layer;
    const double R = s->at->reynolds;
    for (int kind = 0; kind < 3; kind++) {
        s->flow[kind] = (lw_layer_flow){(lw_layer_kind)kind, R, lw_log(R)};
    }
    const double cosine = lw_cos(s->at->alpha), sine = lw_sin(s->at->alpha);
    for (int i = 0; i < l->nodes; i++) {
        s->undisturbed[i] = l->flow.along[i] * cosine + l->flow.across[i] * sine;
    }
    s->undisturbed[l->nodes] = 1.0;  // no station
    for (int k = 1; k < LW_WAKE_NODES; k++) {
        const double u = l->wake_along[k][0] * cosine + l->wake_across[k][0] * sine;
        const double v = l->wake_along[k][1] * cosine + l->wake_across[k][1] * sine;
        s->undisturbed[l->nodes + k] = sqrt(u * u + v * v);
    }
}

// Flat plates to begin with: 1.72 sqrt(nu x / U) laminar, 0.046 x (U x / nu)^-0.2 turbulent.
void lw_sweep_guess(lw_sweep *s)
{
    lw_layer *l = s->layer;
    const double R = s->at->reynolds;
    int nose = 1;
    while (nose < l->nodes - 2 && s->undisturbed[nose] < 0.0) nose++;
    for (int i = 0; i < l->all; i++) {
        const double U = fmax(fabs(s->undisturbed[i]), 0.1);
        const double x = i < l->nodes ? fabs(l->s[i] - l->s[nose]) + 1e-3 : 1.0;
        const double laminar = 1.72 * sqrt(x / (R * U));
        const double turbulent = 0.046 * x * lw_pow(fmax(R * U * x, 1.0), -0.2);
        const double delta = x < 0.3 ? laminar : turbulent;
        l->theta[i] = delta / (x < 0.3 ? 2.6 : 1.45);
        l->delta[i] = delta;
        l->stress[i] = 0.03;
        l->speed[i] = U;
        l->mass[i] = i < l->nodes ? copysign(U * delta, s->undisturbed[i]) : U * 2.0 * delta;
        if (i >= l->nodes) l->theta[i] *= 2.0, l->delta[i] *= 2.0;
    }
}

// The node in the fore part after which the flow turns from backwards to forwards, with its place.
static int stagnation_of(const lw_sweep *s, double *place)
{
    const lw_layer *l = s->layer;
    double speed = lw_sweep_speed(s, 1), steepest = 0.0;
    int found = 0;
    for (int i = 2; i < l->nodes - 1; i++) {
        const double next = lw_sweep_speed(s, i);
        const double slope = (next - speed) / (l->s[i] - l->s[i - 1]);
        if (speed < 0.0 && next >= 0.0 && slope > steepest && l->profile.x[i] < 0.4) {
            steepest = slope;
            found = i - 1;
            *place = l->s[i - 1] - speed / slope;
        }
        speed = next;
    }
    return steepest > 0.0 ? found : -1;
}

// --- one side

// A station that is marched to.
typedef struct ahead {
    int node;
    lw_outer outer;
    lw_layer_place place;
} ahead;

// At x, the flow going along s or against it: the place as it was in the last sweep, with the speed
// that the outer flow has there now.
static ahead ahead_at(const lw_sweep *s, int node, double sign, double x)
{
    const lw_layer *l = s->layer;
    const double speed = sign * lw_sweep_speed(s, node), pull = pull_of(s, node);
    return (ahead){.node = node,
                   .outer = {x, speed - sign * pull * l->mass[node], pull},
                   .place = {.theta = l->theta[node],
                             .delta = l->delta[node],
                             .stress = l->stress[node],
                             .speed = fmax(speed, 0.02)}};
}

static void keep(lw_sweep *s, int node, double sign, const lw_layer_place *p)
{
    lw_layer *l = s->layer;
    s->change = fmax(s->change, fabs(p->speed - l->speed[node]));
    l->theta[node] = p->theta;
    l->delta[node] = p->delta;
    l->stress[node] = p->stress;
    l->speed[node] = p->speed;
    l->mass[node] += s->taken * (sign * p->speed * p->delta - l->mass[node]);
    if (node == 1 || node == l->nodes - 2) lw_sweep_join_tail(s);
}

// The station when it could not be solved: the one before goes on at the outer speed of before.
static lw_layer_place gone_on(const lw_layer_place *from, const lw_layer_place *old)
{
    lw_layer_place p = *from;
    p.x = old->x;
    p.speed = old->speed;
    p.theta = from->theta * lw_pow(from->speed / old->speed, 3.0);
    if (!(p.theta < 2.0 * from->theta) || !(p.theta > 0.5 * from->theta)) p.theta = from->theta;
    p.delta = p.theta * from->delta / from->theta;
    return p;
}

static bool is_marched(lw_sweep *s, const lw_march_from *from, ahead *to, lw_march_from *end)
{
    lw_march_memory *memory = &s->memory[to->node];
    if (lw_march(from, &to->outer, &to->place, end, memory)) return true;
    lw_layer_place other = from->station.at;  // from the place before instead
    other.speed = to->place.speed;
    if (from->flow.kind == LW_LAMINAR) other.delta = 2.4 * other.theta;
    if (!lw_march(from, &to->outer, &other, end, memory)) return false;
    to->place = other;
    return true;
}

// From one place to the next, which becomes the one to go on from.
static void march_or_go_on(lw_sweep *s, lw_march_from *from, ahead *to)
{
    if (is_marched(s, from, to, from)) return;
    to->place = gone_on(&from->station.at, &to->place);
    *from = lw_march_start(&from->flow, &to->place);
    s->unsolved++;
}

// Near the stagnation point U grows as x: theta^2 = 0.075 nu x / U, H = 2.24 [thwaites-1949].
static lw_layer_place first_place(const lw_sweep *s, double x, double speed)
{
    const double theta = sqrt(0.075 * x / (s->at->reynolds * speed));
    return (lw_layer_place){.x = x, .theta = theta, .delta = 2.24 * theta, .speed = speed};
}

static lw_layer_place between(const lw_layer_place *a, const lw_layer_place *b, double part)
{
    return (lw_layer_place){.x = a->x + part * (b->x - a->x),
                            .theta = a->theta + part * (b->theta - a->theta),
                            .delta = a->delta + part * (b->delta - a->delta),
                            .speed = a->speed + part * (b->speed - a->speed)};
}

static double wave_growth_at(const lw_march_from *at)
{
    return lw_wave_growth(at->closure.H, at->station.at.theta, at->closure.R);
}

// A side being marched.
typedef struct side {
    int number;     // 0 below, 1 above
    double sign;    // of the flow along s
    double origin;  // s of the stagnation point
    double grown;   // n so far
    bool is_turbulent;
    double trip;  // as x from the stagnation point
} side;

// s where the surface of that side has the x asked for, as a distance from the stagnation point.
static double trip_of(const lw_layer *l, const side *d, int nose, double at)
{
    if (!(at < 1.0)) return 1e9;
    for (int i = nose; i > 0 && i < l->nodes - 1; i += (int)d->sign) {
        const int next = i + (int)d->sign;
        const double a = l->profile.x[i], b = l->profile.x[next];
        if (b < at || b <= a) continue;
        const double part = fmax((at - a) / (b - a), 0.0);
        return fmax(fabs(l->s[i] + part * (l->s[next] - l->s[i]) - d->origin), 1e-6);
    }
    return 1e9;
}

// Part of the way to the next node that stays laminar; above 1: all of it.
static double laminar_part(const lw_sweep *s, side *d, const lw_march_from *from,
                           const lw_march_from *to)
{
    const double a = wave_growth_at(from), b = wave_growth_at(to), x = from->station.at.x;
    const double dx = to->station.at.x - x, gain = sqrt(0.5 * (a * a + b * b)) * dx;
    const double left = s->at->wave_growth - d->grown;
    d->grown += gain;
    return fmin(gain > left ? left / gain : 2.0, (d->trip - x) / dx);
}

// The beginning of a turbulent layer where a laminar one has come to.
static lw_march_from turned_at(const lw_sweep *s, lw_layer_place place)
{
    const lw_layer_flow *flow = &s->flow[LW_TURBULENT];
    const lw_closure c = lw_march_start(flow, &place).closure;
    place.stress = fmax(lw_stress_at_transition(c.H) * c.c_eq, 1e-3);
    return lw_march_start(flow, &place);
}

// From a laminar place to a node: laminar all the way, or turbulent from some point on. Where no
// laminar layer stays on, it turns at once: a bubble shorter than the panel [judged].
static void pass(lw_sweep *s, side *d, lw_march_from *from, ahead *to)
{
    const double *x = s->layer->profile.x;
    const lw_layer_place *before = &from->station.at;
    lw_layer_place turned = *before;
    ahead laminar = *to;
    lw_march_from end;
    double part = 0.0;
    if (is_marched(s, from, &laminar, &end) &&
        laminar.place.delta < LAMINAR_H_MOST * laminar.place.theta) {
        part = laminar_part(s, d, from, &end);
        if (part > 1.0) {
            *to = laminar;
            *from = end;
            return;
        }
        part = fmin(fmax(part, 0.0), 0.98);
        turned = between(before, &laminar.place, part);
    }
    d->is_turbulent = true;
    *from = turned_at(s, turned);
    if (to->place.stress <= 0.0) to->place.stress = from->station.at.stress;
    march_or_go_on(s, from, to);
    const double x_1 = x[to->node - (int)d->sign], x_2 = x[to->node];
    s->transition[d->number] = x_1 + part * (x_2 - x_1);
}

static void note_separation(lw_sweep *s, const side *d, int node, bool is_apart)
{
    double *separation = &s->separation[d->number];
    if (!is_apart)
        *separation = 1.0;
    else if (*separation >= 1.0)
        *separation = s->layer->profile.x[node];
}

static void march_side(lw_sweep *s, side *d, int nose)
{
    lw_layer *l = s->layer;
    const int end = d->number == 0 ? 1 : l->nodes - 2, by = (int)d->sign;
    d->trip = trip_of(l, d, nose, s->at->trip[d->number]);
    s->transition[d->number] = s->separation[d->number] = 1.0;

    const double first = fmax(d->sign * lw_sweep_speed(s, nose), 1e-3);
    const lw_layer_place place = first_place(s, fabs(l->s[nose] - d->origin), first);
    lw_march_from at = lw_march_start(&s->flow[LW_LAMINAR], &place);
    keep(s, nose, d->sign, &place);
    for (int node = nose + by;; node += by) {
        ahead next = ahead_at(s, node, d->sign, fabs(l->s[node] - d->origin));
        if (d->is_turbulent)
            march_or_go_on(s, &at, &next);
        else
            pass(s, d, &at, &next);
        keep(s, node, d->sign, &next.place);
        note_separation(s, d, node, d->is_turbulent && at.closure.c_f < 0.0);
        if (node == end) break;
    }
}

// Both layers together make the wake; its first station lies behind the tail.
static void march_wake(lw_sweep *s, double origin)
{
    lw_layer *l = s->layer;
    const int n = l->nodes, a = 1, b = n - 2;
    const double theta = l->theta[a] + l->theta[b];
    const double stress = (l->stress[a] * l->theta[a] + l->stress[b] * l->theta[b]) / theta;
    const lw_layer_place begin = {.x = l->s[b] - origin,
                                  .theta = theta,
                                  .delta = l->delta[a] + l->delta[b],
                                  .stress = fmax(stress, 1e-3),
                                  .speed = 0.5 * (l->speed[a] + l->speed[b])};
    lw_march_from at = lw_march_start(&s->flow[LW_WAKE], &begin);
    for (int node = n + 1; node < l->all; node++) {
        ahead next = ahead_at(s, node, 1.0, l->s[n - 1] - origin + l->s[node]);
        march_or_go_on(s, &at, &next);
        keep(s, node, 1.0, &next.place);
    }
}

bool lw_sweep_once(lw_sweep *s)
{
    double origin = 0.0;
    s->change = 0.0;
    s->unsolved = 0;
    const int nose = stagnation_of(s, &origin);
    if (nose < 0) return false;
    side below = {.number = 0, .sign = -1.0, .origin = origin};
    side above = {.number = 1, .sign = 1.0, .origin = origin};
    march_side(s, &below, nose);
    march_side(s, &above, nose + 1);
    march_wake(s, origin);
    return true;
}
