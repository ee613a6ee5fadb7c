// stall.c - the greatest lift of a section.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/base.h"
#include "lullwise/boundary_layer.h"
#include "lullwise/elementary.h"

#define ANGLES_MOST 25     // [deg] that are searched
#define LOST_MOST   4      // angles in a row without an answer
#define FALL        0.002  // of lift behind its greatest, so that no ripple passes for it

double lw_layer_nose_limit(double reynolds)
{
    const double most = 14.0;
    return fmin(13.0 + 3.2 * lw_log10(reynolds / 6e6), most);
}

// An angle with its lift and suction.
typedef struct point {
    double alpha, lift, suction;
} point;

// The limit lies between this point and the one before.
static lw_layer_stall at_nose(const point *before, const point *here, double limit)
{
    const double part = (limit - before->suction) / (here->suction - before->suction);
    return (lw_layer_stall){before->alpha + part * (here->alpha - before->alpha),
                            before->lift + part * (here->lift - before->lift), LW_STALL_NOSE};
}

// The top of the parabola through three points, the second of which is the highest.
static lw_layer_stall at_tail(const point *p)
{
    const double a = p[1].alpha - p[0].alpha, b = p[2].alpha - p[1].alpha;
    const double left = (p[1].lift - p[0].lift) / a, right = (p[2].lift - p[1].lift) / b;
    const double bend = (right - left) / (a + b), slope = (left * b + right * a) / (a + b);
    const double to_top = bend < 0.0 ? -0.5 * slope / bend : 0.0;
    return (lw_layer_stall){p[1].alpha + to_top, p[1].lift + 0.5 * slope * to_top, LW_STALL_TAIL};
}

lw_layer_stall lw_layer_stall_of(lw_layer *layer, const lw_layer_conditions *from)
{
    const double limit = lw_layer_nose_limit(from->reynolds), step = 0.5 * LW_DEG;
    lw_layer_stall stall = {.alpha = from->alpha, .lift = -10.0, .cause = LW_STALL_NOT_FOUND};
    lw_layer_conditions at = *from;
    point p[3] = {{0}};
    int lost = 0, known = 0;  // angles in a row without an answer: some are stepped over
    layer->has_root = false;
    for (int k = 0; k <= 2 * ANGLES_MOST; k++) {
        at.alpha = from->alpha + k * step;
        const lw_layer_load load = lw_layer_load_next(layer, &at);
        if (load.outcome == LW_LAYER_OUTSIDE) return stall;
        if (load.outcome == LW_LAYER_NO_ANSWER) {
            if (++lost > LOST_MOST) return stall;
            continue;
        }
        lost = 0;
        p[0] = p[1], p[1] = p[2];
        p[2] = (point){at.alpha, load.lift, -load.least_pressure};
        known++;
        if (p[2].suction > limit)
            return known == 1 ? (lw_layer_stall){p[2].alpha, p[2].lift, LW_STALL_NOSE}
                              : at_nose(&p[1], &p[2], limit);
        if (known > 2 && p[1].lift > p[0].lift && p[2].lift < p[1].lift - FALL) return at_tail(p);
        if (p[2].lift > stall.lift) stall.lift = p[2].lift, stall.alpha = p[2].alpha;
    }
    return stall;
}
