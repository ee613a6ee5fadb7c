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

// An angle, or the mean of three neighbours.
typedef struct point {
    double alpha, lift, suction;
} point;

static point mean_of(const point *p)
{
    return (point){(p[0].alpha + p[1].alpha + p[2].alpha) / 3.0,
                   (p[0].lift + p[1].lift + p[2].lift) / 3.0,
                   (p[0].suction + p[1].suction + p[2].suction) / 3.0};
}

// The limit lies between this point and the one before.
static lw_layer_stall at_nose(const point *before, const point *here, double limit)
{
    const double part = (limit - before->suction) / (here->suction - before->suction);
    return (lw_layer_stall){before->alpha + part * (here->alpha - before->alpha),
                            before->lift + part * (here->lift - before->lift), LW_STALL_NOSE};
}

// Near the stall layers jump to and fro between two answers, some per cent apart, at the slightest
// cause: means of three neighbouring angles count.
lw_layer_stall lw_layer_stall_of(lw_layer *layer, const lw_layer_conditions *from)
{
    const double limit = lw_layer_nose_limit(from->reynolds), step = 0.5 * LW_DEG;
    lw_layer_stall stall = {.alpha = from->alpha, .lift = -10.0, .cause = LW_STALL_NOT_FOUND};
    lw_layer_conditions at = *from;
    point last[3] = {{0}}, before = {0};
    int lost = 0, known = 0;  // angles in a row without an answer: three are stepped over
    for (int k = 0; k <= 50; k++) {
        at.alpha = from->alpha + (k - 1) * step;
        const lw_layer_load load = lw_layer_load_of(layer, &at);
        if (load.outcome == LW_LAYER_OUTSIDE) return stall;
        if (load.outcome == LW_LAYER_NO_ANSWER) {
            if (++lost > 3) return stall;
            continue;
        }
        lost = 0;
        last[0] = last[1], last[1] = last[2];
        last[2] = (point){at.alpha, load.lift, -load.least_pressure};
        if (++known < 3) continue;
        const point here = mean_of(last);
        if (here.suction > limit) {
            return known == 3 ? (lw_layer_stall){here.alpha, here.lift, LW_STALL_NOSE}
                              : at_nose(&before, &here, limit);
        }
        if (here.lift > stall.lift) {
            stall.lift = here.lift;
            stall.alpha = here.alpha;
        } else if (here.lift < stall.lift - 0.005) {
            stall.cause = LW_STALL_TAIL;
            return stall;
        }
        before = here;
    }
    return stall;
}
