// newton.c - Newton's method on layers and outer flow, no step longer than is sound.
// SPDX-License-Identifier: MIT

#include "foil/section/newton.h"

#include <math.h>

#include "foil/section/lay.h"
#include "lullwise/elementary.h"

#define ENOUGH      1e-8  // left of equations of logarithms, and of speeds
#define PART_LEAST  0.2   // of a step that is taken of all stations alike
#define NOSE_MOST   4     // nodes that the stagnation point may pass in a step
#define GROWTH_MOST 4.0   // of the sum of squares in a step
#define PASSED_MOST 50.0  // of that sum where the stagnation point has passed a node
#define PASSES_MOST 3     // in a search: else it may pass a node to and fro without end
#define SHORTER     0.4   // than a step that was not sound
#define TRIES       6
#define TURN_MOST   20.0  // lengths of two panels that transition may move in a step

bool lw_newton_start(lw_system *s)
{
    lw_layer *l = s->layer;
    for (int i = 0; i < l->all; i++) l->state.speed[i] = s->undisturbed[i];
    if (!lw_system_flow(s)) return false;
    l->state.nose = s->nose;
    lw_lay_layers(s);
    for (int i = 0; i < 2; i++) l->state.turns[i] = s->side[i].turns;
    return true;
}

// Nodes that the stagnation point has passed lie on the other side, at its beginning.
static void pass_nose(lw_system *s)
{
    lw_layer_state *z = &s->layer->state;
    const int old = z->nose, now = s->nose;
    const int from = old < now ? old + 1 : now + 1, to = old < now ? now : old;
    const int model = old < now ? now + 1 : now;  // still on its side
    for (int i = from; i <= to; i++) {
        z->log_theta[i] = z->log_theta[model];
        z->third[i] = 0.0;
        z->mass[i] = LW_STAGNATION_SHAPE * lw_exp(z->log_theta[i]) * z->speed[i];
    }
    z->turns[0] += now - old;
    z->turns[1] -= now - old;
    z->nose = now;
}

// No shape below what the closures hold for.
static void keep_shapes(lw_system *s)
{
    lw_layer_state *z = &s->layer->state;
    for (int i = 0; i < s->layer->all; i++) {
        const double shape = i < s->layer->nodes ? 1.02 : 1.0001, sign = i <= s->nose ? -1.0 : 1.0;
        const double least = shape * lw_exp(z->log_theta[i]) * fabs(z->speed[i]);
        if (!(sign * z->mass[i] > least)) z->mass[i] = sign * least;
    }
}

static bool is_turbulent(const lw_system *s, int i)
{
    if (i >= s->layer->nodes) return true;
    return i <= s->nose ? s->nose - i >= s->side[0].turns : i - s->nose - 1 >= s->side[1].turns;
}

// How many times too long the step is at a node.
static double excess_at(const lw_system *s, int i)
{
    const lw_layer_state *z = &s->layer->state;
    const double theta = fabs(s->step.theta[i]) / 0.5;
    if (i == s->nose || i == s->nose + 1) return theta;
    const double third = is_turbulent(s, i) ? fabs(s->step.third[i]) : 0.0;
    const double speed = s->step.speed[i] / z->speed[i],
                 delta = s->step.mass[i] / z->mass[i] - speed;
    const double H = s->station[i].at.shape, shape = H * (delta - s->step.theta[i]);
    double most = fmax(fmax(theta, third), fmax(delta / 0.8, -delta / 0.5));
    most = fmax(most, fabs(speed) / 0.4);
    if (i >= s->layer->nodes) return most;
    return fmax(most, shape < 0.0 ? -shape / (0.7 * (H - 1.0)) : shape / (H - 0.8));
}

// The greatest of all; none is endless.
static double excesses(const lw_system *s, double *excess)
{
    double worst = 1.0;
    for (int i = 0; i < s->layer->all; i++) {
        const double here = excess_at(s, i);
        excess[i] = here < 1e9 ? fmax(here, 1.0) : 1e9;
        worst = fmax(worst, excess[i]);
    }
    return worst;
}

// A part of the step for all, and less where that is still too long.
static void take(lw_system *s, const double *excess, double part, double ease)
{
    lw_layer_state *z = &s->layer->state;
    z->alpha += part * s->alpha_step;
    for (int i = 0; i < s->layer->all; i++) {
        const double here = fmin(part, ease / excess[i]);
        z->mass[i] += here * s->step.mass[i];
        z->speed[i] += here * s->step.speed[i];
        z->log_theta[i] += here * s->step.theta[i];
        z->third[i] += here * s->step.third[i];
    }
}

// Transition goes no further from where it was than some stations.
static void hold_turns(lw_system *s)
{
    const double *along = s->layer->s;
    for (int i = 0; i < 2; i++) {
        const lw_side *d = &s->side[i];
        const int k = d->turns < d->count ? d->turns : d->count - 1;
        const int node = lw_side_node(s, d, k), before = lw_side_node(s, d, k > 1 ? k - 2 : 0);
        const double way = TURN_MOST * fabs(along[node] - along[before]);
        s->side[i].turn_least = d->turn - way;
        s->side[i].turn_most = d->turn + way;
    }
}

// Equations at the state there is; false where the flow has gone astray.
static bool look(lw_system *s, int nose)
{
    if (!lw_system_flow(s)) return false;
    if (s->nose > nose + NOSE_MOST || s->nose < nose - NOSE_MOST) return false;
    pass_nose(s);
    keep_shapes(s);
    lw_system_assemble(s);
    return s->sum < 1e20;
}

// Whether what is left does not grow much. Where the stagnation point has passed a node, other
// equations hold beside it: what is left of those compares with nothing before, and soon goes.
static bool is_sound(lw_system *s, double before, int nose)
{
    if (s->sum < GROWTH_MOST * before + 1e-3) return true;
    return s->nose != nose && s->passes++ < PASSES_MOST && s->sum < PASSED_MOST;
}

// Newton's step, shortened until it is sound.
static bool step(lw_system *s)
{
    lw_layer *l = s->layer;
    const lw_layer_state old = l->state;
    const lw_side side[2] = {s->side[0], s->side[1]};
    const double before = s->sum;
    const int nose = s->nose;
    double excess[LW_FLOW_NODES] = {1.0};
    const double part = fmax(1.0 / excesses(s, excess), PART_LEAST);
    double ease = 1.0;
    for (int turn = 0; turn < TRIES; turn++, ease *= SHORTER) {
        l->state = old;
        s->side[0] = side[0], s->side[1] = side[1];
        take(s, excess, ease * part, ease);
        if (look(s, nose) && is_sound(s, before, nose)) return true;
    }
    return s->sum < 1e6;
}

lw_sought lw_newton(lw_system *s, int steps_most)
{
    lw_sought sought = {.left = 1e30};
    s->passes = 0;
    if (!lw_system_flow(s) || !look(s, s->nose)) return sought;
    for (; sought.steps < steps_most; sought.steps++) {
        sought.left = s->left;
        sought.is_found = s->left < ENOUGH && !s->side[0].is_held && !s->side[1].is_held;
        if (sought.is_found || !(s->left < 1e6) || !lw_system_solve(s)) return sought;
        hold_turns(s);
        if (!step(s)) return sought;
    }
    return sought;
}
