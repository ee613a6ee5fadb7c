// boundary_layer.c - loads of a section with its layers, once sweeps have settled.
// SPDX-License-Identifier: MIT

#include "lullwise/boundary_layer.h"

#include <math.h>

#include "foil/section/flow.h"
#include "foil/section/mixing.h"
#include "foil/section/sweep.h"
#include "lullwise/base.h"
#include "lullwise/elementary.h"

static const lw_layer_effort usual_effort = {100, 2e-4, true};

#define CHANGE_SWING 0.1  // up to here a swing of the last stations, not a failure

lw_layer_conditions lw_layer_free(double reynolds, double alpha)
{
    return (lw_layer_conditions){reynolds, alpha, LW_WAVE_GROWTH_USUAL, {1.0, 1.0}};
}

// c_d = 2 theta U^((H + 5) / 2) far behind                                        [squire-young]
static double drag_of(const lw_layer *l)
{
    const int last = l->all - 1;
    const double H = l->delta[last] / l->theta[last];
    return 2.0 * l->theta[last] * lw_pow(l->speed[last], 0.5 * (H + 5.0));
}

// The sweeps before are of use while they run down; not after a jump, nor with a station unsolved.
static void mix(lw_mixing *mixing, lw_sweep *s, const lw_swept *from, double change_before)
{
    const bool jumped = s->change > 3.0 * change_before || s->change > CHANGE_SWING;
    if (jumped || s->unsolved > 0) mixing->count = 0;
    if (s->unsolved == 0) lw_mixing_take(mixing, s, from);
}

// Sweeps at one set of conditions, from the last answer or from flat plates.
static void settle(lw_sweep *s, const lw_layer_effort *effort, lw_layer_load *load)
{
    lw_mixing mixing = {.count = 0};
    lw_layer *l = s->layer;
    const int last = l->nodes - 1;
    lw_sweep_start(s);
    const bool is_cold = !l->has_answer;
    if (is_cold) lw_sweep_guess(s);
    s->more[0] = is_cold ? 0.0 : l->mass[0] - l->mass[1];
    s->more[1] = is_cold ? 0.0 : l->mass[last] - l->mass[last - 1];
    lw_sweep_join_tail(s);
    load->outcome = LW_LAYER_NO_ANSWER;
    int swept = 0;
    for (; swept < effort->sweeps && load->outcome != LW_LAYER_SETTLED; swept++) {
        if (!is_cold || swept > 5) lw_sweep_draw_out(s);
        // what has not settled may swing to and fro
        s->taken = is_cold && swept < 5 ? 0.5 : swept < 30 ? 1.0 : swept < 60 ? 0.6 : 0.3;
        const lw_swept from = lw_swept_of(s);
        const double change_before = swept > 0 ? s->change : 1.0;
        if (!lw_sweep_once(s) || !(s->change < 50.0)) {
            load->change = 50.0;
            break;
        }
        load->change = s->change;
        if (swept >= (is_cold ? 7 : 1)) mix(&mixing, s, &from, change_before);
        const bool is_late = swept > (is_cold ? 9 : 2);
        if (is_late && s->change < effort->change && s->unsolved == 0)
            load->outcome = LW_LAYER_SETTLED;
    }
    load->sweeps += swept;
    // a station without a solution stands still, which must not pass for having settled
    const bool swings = load->change < CHANGE_SWING && s->unsolved == 0;
    if (load->outcome != LW_LAYER_SETTLED && swings) load->outcome = LW_LAYER_SWINGS;
    l->has_answer = load->outcome == LW_LAYER_SETTLED;
}

// Without an answer: the perfect fluid's, and no drag.
static void fill(const lw_sweep *s, lw_layer_load *load)
{
    const lw_layer *l = s->layer;
    double speed[LW_NODES_MOST] = {0.0};
    for (int i = 1; i < l->nodes - 1; i++) speed[i] = lw_sweep_speed(s, i);
    speed[l->nodes - 1] = 0.5 * (speed[l->nodes - 2] - speed[1]);
    speed[0] = -speed[l->nodes - 1];
    lw_profile_load outer = lw_load_of_speeds(&l->profile, speed, s->at->alpha);
    load->drag = drag_of(l);
    const bool is_sane = fabs(outer.lift) < 5.0 && load->drag > 0.0 && load->drag < 1.0;
    if (!is_sane) load->outcome = LW_LAYER_NO_ANSWER;
    if (load->outcome == LW_LAYER_NO_ANSWER) {
        outer = lw_profile_load_of(&l->profile, &l->flow, s->at->alpha);
        load->drag = 0.0;
    }
    load->lift = outer.lift;
    load->moment = outer.moment;
    load->least_pressure = outer.least_pressure;
    load->least_at = outer.least_at;
    for (int i = 0; i < 2; i++) {
        load->transition[i] = s->transition[i];
        load->separation[i] = s->separation[i];
    }
}

static bool is_within(const lw_layer_conditions *at)
{
    return at->reynolds >= 5e4 && at->reynolds <= 2e7 && fabs(at->alpha) <= 30.0 * LW_DEG &&
           at->wave_growth > 0.0 && at->wave_growth < 20.0 && at->trip[0] >= 0.0 &&
           at->trip[1] >= 0.0;
}

lw_layer_load lw_layer_load_of(lw_layer *layer, const lw_layer_conditions *conditions)
{
    return lw_layer_load_with(layer, conditions, &usual_effort);
}

lw_layer_load lw_layer_load_with(lw_layer *layer, const lw_layer_conditions *conditions,
                                 const lw_layer_effort *effort)
{
    lw_layer_load load = {.change = 50.0, .outcome = LW_LAYER_OUTSIDE};
    if (!is_within(conditions)) return load;
    lw_sweep s = {.layer = layer, .at = conditions};
    const bool was_warm = layer->has_answer;
    settle(&s, effort, &load);
    if (load.outcome != LW_LAYER_SETTLED && was_warm && effort->again) settle(&s, effort, &load);
    // by way of smaller angles
    lw_layer_conditions eased = *conditions;
    const bool is_lost = load.outcome == LW_LAYER_NO_ANSWER && effort->again;
    const int parts = 2 + (int)(fabs(conditions->alpha) / (2.0 * LW_DEG));
    for (int part = 1; part <= parts && is_lost; part++) {
        eased.alpha = conditions->alpha * part / parts;
        s.at = &eased;
        settle(&s, effort, &load);
    }
    s.at = conditions;
    fill(&s, &load);
    return load;
}
