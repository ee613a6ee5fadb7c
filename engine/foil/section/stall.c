// stall.c - the greatest lift of a section.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/base.h"
#include "lullwise/boundary_layer.h"
#include "lullwise/elementary.h"

double lw_layer_nose_limit(double reynolds)
{
    const double most = 14.0;
    return fmin(13.0 + 3.2 * lw_log10(reynolds / 6e6), most);
}

lw_layer_stall lw_layer_stall_of(lw_layer *layer, const lw_layer_conditions *from)
{
    const double limit = lw_layer_nose_limit(from->reynolds), step = 0.5 * LW_DEG;
    lw_layer_stall stall = {.alpha = from->alpha, .lift = -10.0, .cause = LW_STALL_NOT_FOUND};
    lw_layer_load before = {0};
    double alpha_before = from->alpha;
    lw_layer_conditions at = *from;
    int lost = 0;  // angles in a row without an answer: three are stepped over
    for (int k = 0; k <= 48; k++) {
        at.alpha = from->alpha + k * step;
        const lw_layer_load load = lw_layer_load_of(layer, &at);
        if (load.outcome == LW_LAYER_OUTSIDE) return stall;
        if (load.outcome == LW_LAYER_NO_ANSWER) {
            if (++lost > 3) return stall;
            continue;
        }
        lost = 0;
        if (-load.least_pressure > limit) {
            // the limit lies between this angle and the one before
            const double rise = before.least_pressure - load.least_pressure;
            const double part = k == 0 ? 1.0 : (limit + before.least_pressure) / rise;
            const double lift = before.lift + part * (load.lift - before.lift);
            const double alpha = alpha_before + part * (at.alpha - alpha_before);
            return (lw_layer_stall){alpha, lift, LW_STALL_NOSE};
        }
        if (load.lift > stall.lift) {
            stall.lift = load.lift;
            stall.alpha = at.alpha;
        } else if (load.lift < stall.lift - 0.005) {
            stall.cause = LW_STALL_TAIL;
            return stall;
        }
        before = load;
        alpha_before = at.alpha;
    }
    return stall;
}
