// arc.c - roots along a curve, each at a given length from the last.
// SPDX-License-Identifier: MIT

#include "foil/section/arc.h"

#include <math.h>
#include <stddef.h>

#include "lullwise/base.h"

#define FIRST      (0.4 * LW_DEG)
#define MOST       (2.0 * LW_DEG)
#define LEAST      (0.1 * LW_DEG)
#define STEPS_MOST 18  // of Newton's
#define STEPS_FEW  9   // after these a longer stride is tried

void lw_arc_begin(lw_arc_walk *w, lw_layer *layer, const lw_layer_conditions *at, bool is_up)
{
    const double alpha = layer->state.alpha;
    lw_system_begin(&w->system, layer, at);
    layer->state.alpha = alpha;
    w->arc = (lw_arc){.by_alpha = is_up ? 1.0 : -1.0};
    w->length = 0.0;
    w->stride = FIRST;
    w->steps = 0;
}

// The direction from the last root to this one.
static void turn(lw_arc_walk *w, const lw_layer_state *old)
{
    const lw_layer *l = w->system.layer;
    double d_alpha = l->state.alpha - old->alpha, sum = d_alpha * d_alpha;
    for (int i = 0; i < l->all; i++) {
        const double d = l->state.mass[i] - old->mass[i];
        w->arc.by_mass[i] = d;
        sum += d * d;
    }
    const double size = sqrt(sum), per = 1.0 / size;
    w->arc.by_alpha = per * d_alpha;
    for (int i = 0; i < l->all; i++) w->arc.by_mass[i] *= per;
    w->length += size;
}

bool lw_arc_next(lw_arc_walk *w)
{
    // shorter; or longer, past a node that the stagnation point passes, where equations change
    static const double tries[] = {1.0, 0.5, 0.25, 1.6, 2.5, 0.1, 4.0};
    lw_layer *l = w->system.layer;
    const lw_layer_state old = l->state;
    w->arc.alpha = old.alpha;
    for (int i = 0; i < l->all; i++) w->arc.mass[i] = old.mass[i];
    w->system.arc = &w->arc;
    for (size_t i = 0; i < sizeof tries / sizeof tries[0]; i++) {
        w->arc.length = tries[i] * w->stride;
        const lw_sought sought = lw_newton(&w->system, STEPS_MOST);
        w->steps += sought.steps;
        if (sought.is_found) {
            turn(w, &old);
            if (tries[i] < 1.0) w->stride = fmax(tries[i] * w->stride, LEAST);
            if (tries[i] >= 1.0 && sought.steps <= STEPS_FEW)
                w->stride = fmin(1.5 * w->stride, MOST);
            return true;
        }
        l->state = old;
    }
    return false;
}
