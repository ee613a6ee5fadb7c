// polar_table.c - what rows of layers say, put at even steps of lift and flap, with slopes.
// SPDX-License-Identifier: MIT

#include "foil/polar_table.h"

#include <math.h>

#include "foil/polar_row.h"
#include "lullwise/elementary.h"

lw_sampled lw_polar_sample(const lw_polar *polar, const lw_polar_row *row, double flap,
                           double least_drag)
{
    lw_sampled s = {0};
    for (int i = 0; i < row->count; i++) {
        const lw_polar_point *p = &row->point[i];
        s.y[s.count] = p->lift - polar->ideal_lift - polar->ideal_per_flap * flap;
        s.value[s.count++] = least_drag > 0.0 ? lw_log(p->drag / least_drag) : p->suction;
    }
    // two points of one lift tell less than one
    int kept = 1;
    for (int i = 1; i < s.count; i++) {
        if (s.y[i] - s.y[kept - 1] < 0.02) continue;
        s.y[kept] = s.y[i], s.value[kept++] = s.value[i];
    }
    s.count = kept;
    return s;
}

double lw_polar_y(const lw_polar *polar, int k) { return polar->lift_first + k * polar->lift_step; }

// Beyond the stalls drag goes on as it does there, up to e^2 times the least.
void lw_polar_fill_drag(const lw_polar *polar, const lw_sampled *s, lw_polar_knot *knots)
{
    for (int k = 0; k < LW_POLAR_LIFTS; k++) {
        const lw_row_value v = lw_row_between(s->y, s->value, s->count, lw_polar_y(polar, k));
        const bool is_held = v.value > 2.0 || v.value < -0.3;
        const double value = lw_exp(fmin(fmax(v.value, -0.3), 2.0));
        knots[k].value = value;
        knots[k].by_lift = is_held ? 0.0 : value * v.slope * polar->lift_step;
    }
}

void lw_polar_fill_suction(const lw_polar *polar, const lw_sampled *s, lw_polar_knot *knots)
{
    for (int k = 0; k < LW_POLAR_LIFTS; k++) {
        const lw_row_value v = lw_row_between(s->y, s->value, s->count, lw_polar_y(polar, k));
        const bool is_held = v.value > 20.0 || v.value < 0.0;
        knots[k].value = fmin(fmax(v.value, 0.0), 20.0);
        knots[k].by_lift = is_held ? 0.0 : v.slope * polar->lift_step;
    }
}

// Harmonic mean of neighbouring differences: no overshoot [fritsch-butland].
static double slope_between(double before, double after)
{
    return before * after > 0.0 ? 2.0 * before * after / (before + after) : 0.0;
}

// As the parabola through three points has it, without a turn.
static double slope_at_end(double near, double next)
{
    const double slope = 1.5 * near - 0.5 * next;
    return slope * near > 0.0 ? copysign(fmin(fabs(slope), 3.0 * fabs(near)), near) : 0.0;
}

void lw_polar_smooth(double *value, double *slope, int count)
{
    for (int i = 1; i < count - 1; i++) {
        slope[i] = slope_between(value[i] - value[i - 1], value[i + 1] - value[i]);
    }
    slope[0] = slope_at_end(value[1] - value[0], value[2] - value[1]);
    slope[count - 1] =
        slope_at_end(value[count - 1] - value[count - 2], value[count - 2] - value[count - 3]);
}

// Slopes across the flap angles; flat at the ends of lift, beyond which nothing changes.
void lw_polar_smooth_across(lw_polar_knot table[LW_POLAR_FLAPS][LW_POLAR_LIFTS])
{
    const int last = LW_POLAR_FLAPS - 1;
    for (int k = 0; k < LW_POLAR_LIFTS; k++) {
        for (int f = 1; f < last; f++) {
            const lw_polar_knot *a = &table[f - 1][k], *c = &table[f + 1][k];
            lw_polar_knot *b = &table[f][k];
            b->by_flap = slope_between(b->value - a->value, c->value - b->value);
            b->by_both = 0.5 * (c->by_lift - a->by_lift);
        }
        for (int end = 0; end < 2; end++) {
            const int f = end ? last : 0, to = end ? -1 : 1;
            lw_polar_knot *a = &table[f][k];
            const lw_polar_knot *b = &table[f + to][k], *c = &table[f + 2 * to][k];
            a->by_flap = to * slope_at_end(b->value - a->value, c->value - b->value);
            a->by_both = to * (b->by_lift - a->by_lift);
        }
    }
    for (int f = 0; f <= last; f++) {
        lw_polar_knot *ends[] = {&table[f][0], &table[f][LW_POLAR_LIFTS - 1]};
        for (int i = 0; i < 2; i++) ends[i]->by_lift = ends[i]->by_both = 0.0;
    }
}

void lw_polar_smooth_bent(lw_polar_flap_knot bent[LW_POLAR_FLAPS])
{
    double value[LW_POLAR_FLAPS], slope[LW_POLAR_FLAPS];
    for (size_t i = 0; i < sizeof(lw_polar_bent) / sizeof(double); i++) {
        for (int f = 0; f < LW_POLAR_FLAPS; f++) value[f] = ((double *)&bent[f].value)[i];
        lw_polar_smooth(value, slope, LW_POLAR_FLAPS);
        for (int f = 0; f < LW_POLAR_FLAPS; f++) ((double *)&bent[f].slope)[i] = slope[f];
    }
}
