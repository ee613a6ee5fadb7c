// stall.c - the greatest lift of a section, on the curve of its roots.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "foil/section/arc.h"
#include "foil/section/flow.h"
#include "lullwise/base.h"
#include "lullwise/elementary.h"

#define BEGINNINGS 12  // angles to begin from, a degree apart
#define ALPHA_MOST (28.0 * LW_DEG)
#define ROOTS_MOST 150  // followed
#define GAPS_MOST  4    // of the curve, where equations change; begun anew behind
#define GAP        (0.6 * LW_DEG)
#define FALL       0.06  // of lift behind its greatest, so that no ripple passes for it

double lw_layer_nose_limit(double reynolds)
{
    const double most = 14.0;
    return fmin(13.0 + 3.2 * lw_log10(reynolds / 6e6), most);
}

// A root on the curve: how far along, and its angle, lift and suction.
typedef struct point {
    double length, alpha, lift, suction;
} point;

static point point_of(const lw_layer *l, double length)
{
    const double alpha = l->state.alpha;
    const lw_profile_load load = lw_load_of_speeds(&l->profile, l->state.speed, alpha);
    return (point){length, alpha, load.lift, -load.least_pressure};
}

// The limit lies between this point and the one before.
static lw_layer_stall at_nose(const point *before, const point *here, double limit)
{
    const double part = (limit - before->suction) / (here->suction - before->suction);
    return (lw_layer_stall){before->alpha + part * (here->alpha - before->alpha),
                            before->lift + part * (here->lift - before->lift), LW_STALL_NOSE};
}

// The top of the parabola through three points, the second of which is the highest.
static lw_layer_stall at_top(const point p[3])
{
    const double a = p[1].length - p[0].length, b = p[2].length - p[1].length;
    const double left = (p[1].lift - p[0].lift) / a, right = (p[2].lift - p[1].lift) / b;
    const double bend = (right - left) / (a + b), slope = (left * b + right * a) / (a + b);
    const double to_top = bend < 0.0 ? -0.5 * slope / bend : 0.0;
    const double turn =
        to_top < 0.0 ? (p[1].alpha - p[0].alpha) / a : (p[2].alpha - p[1].alpha) / b;
    return (lw_layer_stall){p[1].alpha + to_top * turn, p[1].lift + 0.5 * slope * to_top,
                            LW_STALL_TAIL};
}

static lw_layer_stall higher(lw_layer_stall a, lw_layer_stall b) { return a.lift > b.lift ? a : b; }

// The first root from the conditions' angle upwards.
static bool begin(lw_layer *layer, lw_layer_conditions *at)
{
    for (int k = 0; k < BEGINNINGS; k++, at->alpha += LW_DEG) {
        if (lw_layer_load_of(layer, at).outcome == LW_LAYER_SETTLED) return true;
    }
    return false;
}

// Up along the curve from the first root that there is.
static lw_layer_stall climb(lw_layer *layer, lw_layer_conditions *at)
{
    const double limit = lw_layer_nose_limit(at->reynolds);
    lw_layer_stall top = {.alpha = at->alpha, .lift = -10.0, .cause = LW_STALL_LOST};
    lw_arc_walk walk;
    if (!begin(layer, at)) return top;
    lw_arc_begin(&walk, layer, at, true);
    point p[3] = {{0.0, 0.0, 0.0, 0.0}};
    p[2] = point_of(layer, 0.0);
    if (p[2].suction > limit) return (lw_layer_stall){at->alpha, p[2].lift, LW_STALL_NOSE};
    for (int known = 2; known < ROOTS_MOST && lw_arc_next(&walk); known++) {
        p[0] = p[1], p[1] = p[2], p[2] = point_of(layer, walk.length);
        if (p[2].suction > limit) return higher(top, at_nose(&p[1], &p[2], limit));
        if (known > 2 && p[1].lift > fmax(fmax(p[0].lift, p[2].lift), top.lift)) top = at_top(p);
        if (p[2].lift < top.lift - FALL) return top;
        if (p[2].alpha > ALPHA_MOST) break;
    }
    top.cause = p[2].alpha > ALPHA_MOST ? LW_STALL_BEYOND : LW_STALL_LOST;
    if (p[2].lift > top.lift) top.lift = p[2].lift, top.alpha = p[2].alpha;
    return top;
}

lw_layer_stall lw_layer_stall_of(lw_layer *layer, const lw_layer_conditions *from)
{
    lw_layer_conditions at = *from;
    lw_layer_stall top = climb(layer, &at);
    for (int again = 0; again < GAPS_MOST && top.cause == LW_STALL_LOST; again++) {
        at.alpha = fmax(top.alpha, at.alpha) + GAP;
        const lw_layer_stall next = climb(layer, &at);
        if (next.cause != LW_STALL_LOST || next.lift > top.lift) top = next;
    }
    return top;
}
