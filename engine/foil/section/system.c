// system.c - equations of all stations, each linked to those before it.
// SPDX-License-Identifier: MIT

#include "foil/section/link.h"

#include <math.h>
#include <stddef.h>

#include "lullwise/elementary.h"
#include "solve/rows.h"

// The perfect fluid's speeds at the state's angle, and how they change with it.
static void face(lw_system *s)
{
    lw_layer *l = s->layer;
    const double cosine = lw_cos(l->state.alpha), sine = lw_sin(l->state.alpha);
    for (int i = 0; i < l->all; i++) {
        s->undisturbed[i] = l->along[i] * cosine + l->across[i] * sine;
        l->response[(size_t)i * LW_FLOW_ROW + (size_t)l->all + 1] =
            l->across[i] * cosine - l->along[i] * sine;
    }
}

void lw_system_begin(lw_system *s, lw_layer *layer, const lw_layer_conditions *at)
{
    s->layer = layer;
    s->at = at;
    s->log_reynolds = lw_log(at->reynolds);
    s->arc = NULL;
    layer->state.alpha = at->alpha;
    face(s);
    s->side[0] =
        (lw_side){.number = 0, .sign = -1.0, .turns = 0, .turn_least = -1.0, .turn_most = 1e9};
    s->side[1] =
        (lw_side){.number = 1, .sign = 1.0, .turns = 0, .turn_least = -1.0, .turn_most = 1e9};
}

// The node in the fore part after which the flow turns from backwards to forwards; -1: none.
static int nose_of(const lw_layer *l)
{
    int found = -1;
    double steepest = 0.0;
    for (int i = 2; i < l->nodes - 3; i++) {
        const double a = l->state.speed[i], b = l->state.speed[i + 1];
        if (!(a < 0.0) || !(b >= 0.0)) continue;
        const double slope = (b - a) / (l->s[i + 1] - l->s[i]);
        if (slope > steepest) steepest = slope, found = i;
    }
    return found;
}

bool lw_system_flow(lw_system *s)
{
    lw_layer *l = s->layer;
    const double *speed = l->state.speed;
    const int nose = nose_of(l);
    if (nose < 0) return false;
    s->nose = nose;
    const double a = speed[nose], b = speed[nose + 1];
    s->origin = l->s[nose] + a / (a - b) * (l->s[nose + 1] - l->s[nose]);
    s->side[0].count = nose + 1;
    s->side[1].count = l->nodes - nose - 1;
    return true;
}

// How far the outer flow differs from the speeds.
static void compare_flow(lw_system *s)
{
    lw_layer *l = s->layer;
    double outer[LW_FLOW_NODES];
    lw_rows_times(l->response, l->all, LW_FLOW_ROW, l->state.mass, outer);
    for (int i = 0; i < l->all; i++) {
        const double off = outer[i] + s->undisturbed[i] - l->state.speed[i];
        l->response[(size_t)i * LW_FLOW_ROW + (size_t)l->all] = off;
        s->left = fmax(s->left, fabs(off));
        s->sum += off * off;
    }
}

static void compare_arc(lw_system *s)
{
    const lw_arc *arc = s->arc;
    const lw_layer_state *z = &s->layer->state;
    face(s);
    double left = arc->by_alpha * (z->alpha - arc->alpha) - arc->length;
    for (int i = 0; i < s->layer->all; i++) left += arc->by_mass[i] * (z->mass[i] - arc->mass[i]);
    s->arc_left = left;
    s->left = fmax(s->left, fabs(left));
    s->sum += left * left;
}

// --- stations

static lw_station *station_at(lw_system *s, const lw_side *side, int k)
{
    lw_layer *l = s->layer;
    const int node = lw_side_node(s, side, k);
    lw_station *t = &s->station[node];
    const double speed = fmax(side->sign * l->state.speed[node], 1e-4);
    l->state.speed[node] = side->sign * speed;
    const double delta = side->sign * l->state.mass[node] / speed;
    const lw_four e = lw_four_exp((lw_four){-l->state.log_theta[node], 0.0, 0.0, 0.0});
    t->x = fmax(side->sign * (l->s[node] - s->origin), 1e-12);
    t->at = (lw_layer_place){.log_theta = l->state.log_theta[node],
                             .shape = delta * e[0],
                             .log_speed = lw_four_log((lw_four){speed, speed, speed, speed})[0],
                             .third = l->state.third[node]};
    return t;
}

// Flow to a stagnation point by the closures themselves, so that nothing is left there however
// near it the first station lies: shape, and lambda = theta^2 dU/ds / nu. Exact: 2.216, 0.0855
// [schlichting].
static const double stagnation_lambda = 0.08481793401086216;

void lw_begin_side(lw_system *s, const lw_side *side)
{
    const lw_layer *l = s->layer;
    const int node = lw_side_node(s, side, 0);
    lw_station *t = &s->station[node];
    const double rise = l->state.speed[s->nose + 1] - l->state.speed[s->nose];
    const double slope = rise / (l->s[s->nose + 1] - l->s[s->nose]);
    t->x = fmax(side->sign * (l->s[node] - s->origin), 1e-12);
    t->at =
        (lw_layer_place){.log_theta = 0.5 * (lw_log(stagnation_lambda / slope) - s->log_reynolds),
                         .shape = LW_STAGNATION_SHAPE,
                         .log_speed = lw_log(fmax(side->sign * l->state.speed[node], 1e-12))};
    lw_closure_of(LW_LAMINAR, s->log_reynolds, &t->at, &t->closure);
}

static void begin_side(lw_system *s, const lw_side *side, lw_links *links)
{
    lw_layer *l = s->layer;
    const int node = lw_side_node(s, side, 0), other = side->number == 0 ? node + 1 : node - 1;
    lw_begin_side(s, side);
    const double log_theta = s->station[node].at.log_theta;
    const double rise = l->state.speed[s->nose + 1] - l->state.speed[s->nose];
    const double delta = LW_STAGNATION_SHAPE * lw_exp(log_theta), gain = -0.5 * side->sign / rise;
    const double mass = delta * l->state.speed[node];
    *links = (lw_links){.node_0 = -1, .node_1 = other, .node = node};
    links->theta.by_speed = gain;
    links->theta.by_1[3] = -gain;
    links->theta.rest = log_theta - l->state.log_theta[node];
    links->mass = (lw_link){
        .by_mass = -1.0, .by_speed = delta + mass * gain, .rest = mass - l->state.mass[node]};
    links->mass.by_1[3] = -mass * gain;
    const lw_equations off = {.left = {links->theta.rest, links->mass.rest / delta, 0.0}};
    lw_note(s, &off);
    l->state.third[node] = 0.0;
}

// --- a side

// Distance from the stagnation point of the place at x on a side; far off where nothing is forced.
double lw_trip_of(const lw_system *s, const lw_side *side)
{
    const lw_layer *l = s->layer;
    const double at = s->at->trip[side->number];
    if (!(at < 1.0)) return 1e9;
    for (int k = 0; k < side->count - 1; k++) {
        const int i = lw_side_node(s, side, k), j = lw_side_node(s, side, k + 1);
        const double a = l->profile.x[i], b = l->profile.x[j];
        if (b < at || b <= a) continue;
        const double part = fmax((at - a) / (b - a), 0.0);
        return fmax(side->sign * (l->s[i] + part * (l->s[j] - l->s[i]) - s->origin), 1e-6);
    }
    return 1e9;
}

// Where in the interval before station k the layer turns, if it does: a part above 1 is none.
lw_turn lw_turn_at(const lw_system *s, lw_side *side, int k, double trip)
{
    const lw_station *a = &s->station[lw_side_node(s, side, k - 1)];
    const lw_station *b = &s->station[lw_side_node(s, side, k)];
    const lw_station *o = k > 1 ? &s->station[lw_side_node(s, side, k - 2)] : NULL;
    const double full = b->x - a->x, forced = (trip - a->x) / full;
    const double early = (side->turn_least - a->x) / full, late = (side->turn_most - a->x) / full;
    lw_turn turn;
    lw_turn_of(o, a, full, s->at->wave_growth, &turn);
    if (forced < turn.part && forced <= 1.0) turn = (lw_turn){.part = fmax(forced, 0.0)};
    const bool is_early = turn.part <= 1.0 && turn.part < early;
    const bool is_late = turn.part > late && late <= 1.0;
    side->is_held = side->is_held || is_early || is_late;
    if (is_early)
        turn = (lw_turn){.part = early > 1.0 ? 2.0 : early};
    else if (is_late)
        turn = (lw_turn){.part = fmax(late, 0.0)};
    return turn;
}

// A station that was of the other kind: turbulent, it begins with the stress of a layer that turns
// there; laminar, with the shape of the layer before it. The mass stays.
static void change_kind(lw_system *s, const lw_side *side, int k, bool is_laminar)
{
    lw_layer_state *z = &s->layer->state;
    const int node = lw_side_node(s, side, k);
    lw_station *t = &s->station[node];
    if (is_laminar) {
        const double shape = s->station[lw_side_node(s, side, k - 1)].at.shape;
        z->log_theta[node] += lw_log(t->at.shape / shape);
        t->at.log_theta = z->log_theta[node];
        t->at.shape = shape;
    } else {
        lw_dual start;
        lw_closure_start(s->log_reynolds, &t->at, &start);
        t->at.third = z->third[node] = start.at;
    }
}

static void assemble_laminar(lw_system *s, const int nodes[3], lw_interval *v)
{
    const lw_station *o = nodes[0] >= 0 ? &s->station[nodes[0]] : NULL, *a = &s->station[nodes[1]];
    lw_station *b = &s->station[nodes[2]];
    lw_waves waves;
    const double full = b->x - a->x;
    lw_waves_grow(o, a, full, full, &waves);
    b->at.third = s->layer->state.third[nodes[2]] = waves.n;
    lw_closure_of(LW_LAMINAR, s->log_reynolds, &b->at, &b->closure);
    lw_interval_of(LW_LAMINAR, a, b, v);
    v->left[2] = 0.0;
    v->by_x_1[2] = v->by_x_2[2] = 0.0;
    v->by_0[2] = -waves.by_0;
    v->by_1[2] = -waves.by_1;
    v->by_2[2] = (lw_four){0.0, 0.0, 0.0, 1.0};
}

static void assemble_turning(lw_system *s, lw_side *side, int k, const lw_turn *turn,
                             lw_interval *v)
{
    const int i = lw_side_node(s, side, k - 1), j = lw_side_node(s, side, k);
    const double *x = s->layer->profile.x;
    side->place = x[i] + turn->part * (x[j] - x[i]);
    side->turn = s->station[i].x + turn->part * (s->station[j].x - s->station[i].x);
    lw_closure_of(LW_TURBULENT, s->log_reynolds, &s->station[j].at, &s->station[j].closure);
    lw_interval_turning(s->log_reynolds, &s->station[i], &s->station[j], turn, v);
}

static void assemble_side(lw_system *s, lw_side *side, lw_links *links)
{
    const double trip = lw_trip_of(s, side);
    const int old = s->layer->state.turns[side->number];
    side->turns = side->count;
    side->place = 1.0;
    side->is_held = false;
    side->turn = side->sign * (s->layer->s[lw_side_node(s, side, side->count - 1)] - s->origin);
    begin_side(s, side, links++);
    for (int k = 1; k < side->count; k++, links++) {
        const lw_row at = {{k > 1 ? lw_side_node(s, side, k - 2) : -1, lw_side_node(s, side, k - 1),
                            lw_side_node(s, side, k)},
                           k,
                           side->sign};
        const int *nodes = at.nodes;
        lw_station *b = station_at(s, side, k);
        lw_interval v;
        lw_turn turn = {.part = 2.0};
        if (k < side->turns) turn = lw_turn_at(s, side, k, trip);
        if (turn.part <= 1.0) side->turns = k;
        const bool is_laminar = k < side->turns;
        if (is_laminar != (k < old)) change_kind(s, side, k, is_laminar);
        if (is_laminar) {
            assemble_laminar(s, nodes, &v);
        } else if (k == side->turns) {
            assemble_turning(s, side, k, &turn, &v);
        } else {
            lw_closure_of(LW_TURBULENT, s->log_reynolds, &b->at, &b->closure);
            lw_interval_of(LW_TURBULENT, &s->station[nodes[1]], b, &v);
        }
        lw_equations e;
        lw_equations_of(s, &v, &at, &e);
        *links = (lw_links){
            .node_0 = k <= side->turns ? nodes[0] : -1, .node_1 = nodes[1], .node = nodes[2]};
        lw_link_up(&e, links);
        lw_note(s, &e);
    }

    s->layer->state.turns[side->number] = side->turns;
}

void lw_system_assemble(lw_system *s)
{
    s->left = 0.0;
    s->sum = 0.0;
    if (s->arc) compare_arc(s);
    compare_flow(s);
    assemble_side(s, &s->side[0], s->links);
    assemble_side(s, &s->side[1], s->links + s->side[0].count);
    lw_wake_assemble(s, s->links + s->layer->nodes);
}
