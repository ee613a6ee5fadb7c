// boundary_layer.c - loads of a section with its layers, once the root is found.
// SPDX-License-Identifier: MIT

#include "lullwise/boundary_layer.h"

#include <math.h>

#include "foil/section/flow.h"
#include "foil/section/newton.h"
#include "lullwise/base.h"
#include "lullwise/elementary.h"

#define STEPS_MOST 60              // of Newton's, from a start of its own
#define WALK_MOST  25              // from a root nearby
#define FIRST_STEP (3.1 * LW_DEG)  // on the way from another angle: one for the rows of a polar
#define LAST_STEP  (0.12 * LW_DEG)
#define OTHERS     4               // angles to begin from, either way
#define APART      (1.0 * LW_DEG)  // of these

lw_layer_conditions lw_layer_free(double reynolds, double alpha)
{
    return (lw_layer_conditions){reynolds, alpha, LW_WAVE_GROWTH_USUAL, {1.0, 1.0}};
}

// A search under way.
typedef struct search {
    lw_system system;
    lw_layer *layer;
    lw_layer_load load;
} search;

static bool seek(search *s, const lw_layer_conditions *at, bool is_anew)
{
    lw_system_begin(&s->system, s->layer, at);
    if (is_anew && !lw_newton_start(&s->system)) return false;
    const lw_sought sought = lw_newton(&s->system, is_anew ? STEPS_MOST : WALK_MOST);
    s->load.steps += sought.steps;
    s->load.left = sought.left;
    return sought.is_found;
}

// On from a root at another angle, in steps that are halved where one fails.
static bool walk(search *s, const lw_layer_conditions *to, double from)
{
    lw_layer_conditions at = *to;
    double alpha = from, step = FIRST_STEP;
    do {
        const lw_layer_state root = s->layer->state;
        const double way = to->alpha - alpha;
        at.alpha = fabs(way) <= step ? to->alpha : alpha + copysign(step, way);
        if (seek(s, &at, false)) {
            alpha = at.alpha;
        } else {
            s->layer->state = root;
            step = fmin(0.5 * step, 0.5 * fabs(way));
            if (step < LAST_STEP) return false;
        }
    } while (alpha != to->alpha);
    return true;
}

// From a start of its own; where that fails, by way of an angle where it does not.
static bool find(search *s, const lw_layer_conditions *at)
{
    if (seek(s, at, true)) return true;
    const double inwards = at->alpha > 0.0 ? -1.0 : 1.0;
    for (int k = 1; k <= 2 * OTHERS; k++) {
        lw_layer_conditions other = *at;
        const int steps = (k + 1) / 2;
        other.alpha += (k % 2 ? inwards : -inwards) * steps * APART;
        if (seek(s, &other, true) && walk(s, at, other.alpha)) return true;
    }
    return false;
}

// c_d = 2 theta U^((H + 5) / 2) far behind                                        [squire-young]
static double drag_of(const lw_layer *l)
{
    const int last = l->all - 1;
    const lw_layer_state *z = &l->state;
    const double theta = lw_exp(z->log_theta[last]), U = z->speed[last];
    return 2.0 * theta * lw_pow(U, 0.5 * (z->mass[last] / (U * theta) + 5.0));
}

// Where the turbulent layer of a side leaves for good.
static double separation_of(const lw_system *s, const lw_side *side)
{
    double place = 1.0;
    for (int k = side->count - 2; k >= side->turns && k > 0; k--) {
        const int node = lw_side_node(s, side, k);
        if (s->station[node].closure.friction.at >= 0.0) break;
        place = s->layer->profile.x[node];
    }
    return place;
}

static void take_root(search *s, double alpha)
{
    const lw_layer *l = s->layer;
    lw_layer_load *load = &s->load;
    const lw_profile_load outer = lw_load_of_speeds(&l->profile, l->state.speed, alpha);
    load->lift = outer.lift;
    load->moment = outer.moment;
    load->least_pressure = outer.least_pressure;
    load->least_at = outer.least_at;
    load->drag = drag_of(l);
    for (int i = 0; i < 2; i++) {
        load->transition[i] = s->system.side[i].place;
        load->separation[i] = separation_of(&s->system, &s->system.side[i]);
    }
    // a root of the equations that no water knows
    const bool is_sane =
        fabs(load->lift) < 5.0 && load->drag > 0.0 && load->drag < 1.0 && fabs(load->moment) < 2.0;
    load->outcome = is_sane ? LW_LAYER_SETTLED : LW_LAYER_NO_ANSWER;
}

// Without an answer: the perfect fluid's, and no drag.
static void take_perfect(search *s, double alpha)
{
    const lw_layer *l = s->layer;
    const lw_profile_load outer = lw_profile_load_of(&l->profile, &l->flow, alpha);
    s->load.lift = outer.lift;
    s->load.moment = outer.moment;
    s->load.least_pressure = outer.least_pressure;
    s->load.least_at = outer.least_at;
    s->load.drag = 0.0;
    s->load.transition[0] = s->load.transition[1] = 1.0;
    s->load.separation[0] = s->load.separation[1] = 1.0;
    s->load.outcome = LW_LAYER_NO_ANSWER;
}

static bool is_within(const lw_layer_conditions *at)
{
    return at->reynolds >= 5e4 && at->reynolds <= 2e7 && fabs(at->alpha) <= 30.0 * LW_DEG &&
           at->wave_growth > 0.0 && at->wave_growth < 20.0 && at->trip[0] >= 0.0 &&
           at->trip[1] >= 0.0;
}

static lw_layer_load load_of(lw_layer *layer, const lw_layer_conditions *at, bool goes_on)
{
    search s = {.layer = layer, .load = {.left = 1e30, .outcome = LW_LAYER_OUTSIDE}};
    if (!is_within(at)) return s.load;
    const bool is_next = goes_on && layer->has_root;
    const double from = layer->state.alpha;
    layer->has_root = is_next ? walk(&s, at, from) || seek(&s, at, true) : find(&s, at);
    layer->state.alpha = at->alpha;
    if (layer->has_root) take_root(&s, at->alpha);
    if (s.load.outcome != LW_LAYER_SETTLED) take_perfect(&s, at->alpha);
    return s.load;
}

lw_layer_load lw_layer_load_of(lw_layer *layer, const lw_layer_conditions *conditions)
{
    return load_of(layer, conditions, false);
}

lw_layer_load lw_layer_load_next(lw_layer *layer, const lw_layer_conditions *conditions)
{
    return load_of(layer, conditions, true);
}

static bool is_other(const lw_layer_load *a, const lw_layer_load *b)
{
    return fabs(a->lift - b->lift) > 0.002 || fabs(a->drag - b->drag) > 0.005 * b->drag;
}

lw_layer_load lw_layer_load_other(lw_layer *layer, const lw_layer_conditions *conditions,
                                  const lw_layer_load *taken)
{
    for (int side = -1; side <= 1; side += 2) {
        lw_layer_conditions aside = *conditions;
        aside.alpha += side * APART;
        if (lw_layer_load_of(layer, &aside).outcome != LW_LAYER_SETTLED) continue;
        const lw_layer_load load = lw_layer_load_next(layer, conditions);
        if (load.outcome == LW_LAYER_SETTLED && is_other(&load, taken)) return load;
    }
    return (lw_layer_load){.left = 1e30, .outcome = LW_LAYER_NO_ANSWER};
}
