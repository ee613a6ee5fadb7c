// polar.c - rows of layers made into smooth functions of lift, flap and Reynolds number.
// SPDX-License-Identifier: MIT

#include "lullwise/polar.h"

#include <math.h>

#include "foil/friction.h"
#include "foil/polar_read.h"
#include "foil/polar_row.h"
#include "lullwise/base.h"
#include "lullwise/elementary.h"

#define SPAN 1.5  // y goes this far on either side

// --- the lift curve

static double bent(double k, double x)
{
    const double up = x + 1.0, down = x - 1.0;
    return 0.5 * sqrt(1.0 + k * k) * (sqrt(up * up + k * k) - sqrt(down * down + k * k));
}

// The x at which the bend has this value; 3 at most, either way.
static double unbent(double k, double value)
{
    double low = -3.0, high = 3.0;
    for (int step = 0; step < 40; step++) {
        const double x = 0.5 * (low + high);
        *(bent(k, x) < value ? &low : &high) = x;
    }
    return 0.5 * (low + high);
}

// A straight line bent: c_l = most s(slope (alpha - zero) / most).
typedef struct lift_curve {
    double k, slope, zero, most, down, share;
    double off;  // sum of squares
} lift_curve;

static double lift_on(const lift_curve *c, double alpha)
{
    const double most = alpha > c->zero ? c->most : c->down;
    return most * bent(c->k, c->slope * (alpha - c->zero) / most);
}

// The straight line through the points below two thirds of the greatest lift, unbent.
static void straighten(lift_curve *c, const lw_row *row)
{
    double n = 0.0, x = 0.0, y = 0.0, xx = 0.0, xy = 0.0;
    for (int i = 0; i < row->count; i++) {
        const lw_row_point *p = &row->point[i];
        if (p->lift > 0.67 * row->most || p->lift < 0.5 * row->least) continue;
        const double most = p->lift > 0.0 ? c->most : c->down;
        const double straight = most * unbent(c->k, p->lift / most);
        n += 1.0, x += p->alpha, y += straight;
        xx += p->alpha * p->alpha, xy += p->alpha * straight;
    }
    const double spread = n * xx - x * x;
    c->slope = spread > 0.0 ? (n * xy - x * y) / spread : 2.0 * LW_PI;
    c->slope = fmin(fmax(c->slope, 4.0), 8.0);
    c->zero = n > 0.0 ? (x - y / c->slope) / n : 0.0;
}

static double at_least(double x, double least) { return x > least ? x : least; }

static lift_curve curve_with(double k, const lw_row *row)
{
    lift_curve c = {.k = k, .most = at_least(row->most, 0.3), .down = at_least(-row->least, 0.3)};
    const double most = c.most, down = c.down;
    for (int turn = 0; turn < 6; turn++) {
        straighten(&c, row);
        c.share = c.slope * (row->most_alpha - c.zero) / c.most;
        c.share = fmin(fmax(c.share, 0.8), 2.5);
        c.most = most / bent(k, c.share);
        c.down = down / bent(k, c.share);
    }
    for (int i = row->middle; i < row->count; i++) {
        const double off = lift_on(&c, row->point[i].alpha) - row->point[i].lift;
        c.off += off * off;
    }
    return c;
}

static lift_curve curve_of(const lw_row *row)
{
    lift_curve best = curve_with(0.05, row);
    for (double k = 0.1; k < 0.85; k += 0.05) {
        const lift_curve c = curve_with(k, row);
        if (c.off < best.off) best = c;
    }
    return best;
}

// --- tables

// What a row says of one quantity, over y.
typedef struct sampled {
    int count;
    double y[LW_ROW_MOST], value[LW_ROW_MOST];
} sampled;

static sampled sample(const lw_polar *polar, const lw_row *row, double flap, double least_drag)
{
    sampled s = {0};
    for (int i = 0; i < row->count; i++) {
        const lw_row_point *p = &row->point[i];
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

static double y_of(const lw_polar *polar, int k)
{
    return polar->lift_first + k * polar->lift_step;
}

// Beyond the stalls drag goes on as it does there, up to e^2 times the least.
static void fill_drag(const lw_polar *polar, const sampled *s, lw_polar_knot *knots)
{
    for (int k = 0; k < LW_POLAR_LIFTS; k++) {
        const lw_row_value v = lw_row_between(s->y, s->value, s->count, y_of(polar, k));
        const bool is_held = v.value > 2.0 || v.value < -0.3;
        const double value = lw_exp(fmin(fmax(v.value, -0.3), 2.0));
        knots[k].value = value;
        knots[k].by_lift = is_held ? 0.0 : value * v.slope * polar->lift_step;
    }
}

static void fill_suction(const lw_polar *polar, const sampled *s, lw_polar_knot *knots)
{
    for (int k = 0; k < LW_POLAR_LIFTS; k++) {
        const lw_row_value v = lw_row_between(s->y, s->value, s->count, y_of(polar, k));
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

static void smooth(double *value, double *slope, int count)
{
    for (int i = 1; i < count - 1; i++) {
        slope[i] = slope_between(value[i] - value[i - 1], value[i + 1] - value[i]);
    }
    slope[0] = slope_at_end(value[1] - value[0], value[2] - value[1]);
    slope[count - 1] =
        slope_at_end(value[count - 1] - value[count - 2], value[count - 2] - value[count - 3]);
}

// Slopes across the flap angles; flat at the ends of lift, beyond which nothing changes.
static void smooth_across(lw_polar_knot table[LW_POLAR_FLAPS][LW_POLAR_LIFTS])
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

static void smooth_bent(lw_polar_flap_knot bent[LW_POLAR_FLAPS])
{
    double value[LW_POLAR_FLAPS], slope[LW_POLAR_FLAPS];
    for (size_t i = 0; i < sizeof(lw_polar_bent) / sizeof(double); i++) {
        for (int f = 0; f < LW_POLAR_FLAPS; f++) value[f] = (&bent[f].value.worth)[i];
        smooth(value, slope, LW_POLAR_FLAPS);
        for (int f = 0; f < LW_POLAR_FLAPS; f++) (&bent[f].slope.worth)[i] = slope[f];
    }
}

// --- the polar

static void count(lw_polar *polar, const lw_row *row)
{
    polar->tried += row->tried;
    polar->filled += row->filled;
}

static void take_line(lw_polar *polar, const lw_row *row)
{
    const lift_curve c = curve_of(row);
    polar->slope = c.slope;
    polar->zero_lift_angle = c.zero;
    polar->corner_2 = c.k * c.k;
    polar->half = 0.5 * sqrt(1.0 + c.k * c.k);
    polar->stall_share = c.share;
    polar->ideal_lift = row->point[row->middle].lift;
    polar->lift_first = -SPAN;
    polar->lift_step = 2.0 * SPAN / (LW_POLAR_LIFTS - 1);
    const int a = row->middle - 1, b = row->middle + 2;
    polar->moment_slope =
        (row->point[b].moment - row->point[a].moment) / (row->point[b].lift - row->point[a].lift);
}

// What a flap angle is worth by the lift about the middle of its row, unbent.
static double worth_of(const lw_polar *polar, const lw_row *row, double most, double down)
{
    const double k = sqrt(polar->corner_2);
    double sum = 0.0;
    for (int i = 0; i < 2; i++) {
        const lw_row_point *p = &row->point[row->middle + i];
        const double limit = p->lift > 0.0 ? most : down;
        const double straight = limit * unbent(k, p->lift / limit);
        sum += 0.5 * (straight / polar->slope - p->alpha + polar->zero_lift_angle);
    }
    return sum;
}

static void take_flap(lw_polar *polar, const lw_row *row, int f, double least_drag)
{
    const double k = sqrt(polar->corner_2),
                 flap = polar->flap_step > 0.0 ? (f - LW_POLAR_FLAPS / 2) * polar->flap_step : 0.0;
    const double stall = bent(k, polar->stall_share);
    const lw_row_point *middle = &row->point[row->middle];
    lw_polar_bent *bent = &polar->bent[f].value;
    bent->greatest = at_least(row->most, 0.3) / stall;
    bent->least = at_least(-row->least, 0.3) / stall;
    bent->worth = worth_of(polar, row, bent->greatest, bent->least);
    const double y = middle->lift - polar->ideal_lift - polar->ideal_per_flap * flap;
    bent->moment = middle->moment - polar->moment_slope * y;
    const sampled drag = sample(polar, row, flap, least_drag);
    const sampled suction = sample(polar, row, flap, 0.0);
    fill_drag(polar, &drag, polar->drag[f]);
    fill_suction(polar, &suction, polar->suction[f]);
}

// What changes with ln Re: slope, greatest lift, and drag over lift.
static void take_faster(lw_polar *polar, const lw_row *row, const lw_row *faster)
{
    const double per = 1.0 / lw_polar_speed(lw_all(lw_log(LW_POLAR_FASTER)))[0];
    double growth[LW_POLAR_LIFTS], slope[LW_POLAR_LIFTS];
    const lift_curve c = curve_with(sqrt(polar->corner_2), faster);
    polar->slope_growth = fmin(fmax(per * lw_log(c.slope / polar->slope), -0.1), 0.1);
    const double more = at_least(faster->most, 0.3) / at_least(row->most, 0.3);
    polar->most_growth = fmin(fmax(per * lw_log(more), -0.2), 0.3);
    const sampled a = sample(polar, row, 0.0, row->point[row->middle].drag);
    const sampled b = sample(polar, faster, 0.0, faster->point[faster->middle].drag);
    const double low = fmax(a.y[0], b.y[0]), high = fmin(a.y[a.count - 1], b.y[b.count - 1]);
    for (int k = 0; k < LW_POLAR_LIFTS; k++) {
        const double y = fmin(fmax(y_of(polar, k), low), high);
        const double first = lw_row_between(a.y, a.value, a.count, y).value;
        const double second = lw_row_between(b.y, b.value, b.count, y).value;
        growth[k] = fmin(fmax(per * (second - first), -0.4), 0.4);
    }
    smooth(growth, slope, LW_POLAR_LIFTS);
    slope[0] = slope[LW_POLAR_LIFTS - 1] = 0.0;  // beyond, nothing changes
    for (int k = 0; k < LW_POLAR_LIFTS; k++) {
        polar->growth[k] = (lw_polar_pair){growth[k], slope[k]};
    }
}

static void take_speeds(lw_polar *polar, const lw_polar_shape *shape, lw_polar_room *room)
{
    double reynolds[LW_POLAR_SPEEDS], drag[LW_POLAR_SPEEDS];
    polar->log_re_first = lw_log(LW_POLAR_SLOWEST);
    polar->log_re_step = lw_log(2.0);
    for (int i = 0; i < LW_POLAR_SPEEDS; i++) {
        reynolds[i] = LW_POLAR_SLOWEST * (double)(1 << i);
        drag[i] = 0.0;
    }
    lw_row_least_drags(shape, reynolds, LW_POLAR_SPEEDS, drag, room);
    for (int i = 0; i < LW_POLAR_SPEEDS; i++) {
        const double plates = 2.3 * lw_friction_schlichting(lw_all(lw_log(reynolds[i])))[0];
        polar->tried += 1.0;
        polar->filled += drag[i] > 0.0 ? 0.0 : 1.0;
        polar->drag_log[i] = lw_log(drag[i] > 0.0 ? drag[i] : plates);
    }
}

// Knots as far either way as the flap goes one way, so that one has it in line.
static void take_flaps(lw_polar *polar, const lw_polar_shape *shape, const lw_row *in_line,
                       lw_polar_room *room)
{
    const int middle = LW_POLAR_FLAPS / 2;
    const double least_drag = in_line->point[in_line->middle].drag;
    const double most = fmax(fmax(fabs(shape->flap_up), fabs(shape->flap_down)), 2.0 * LW_DEG);
    polar->ideal_per_flap = 4.0 * sqrt(shape->flap_chord * (1.0 - shape->flap_chord));
    polar->flap_first = -fmin(most, 30.0 * LW_DEG);
    polar->flap_step = -polar->flap_first / middle;
    for (int f = 0; f < LW_POLAR_FLAPS; f++) {
        const double flap = (f - middle) * polar->flap_step;
        lw_row row = *in_line;
        if (f != middle) lw_row_of(&row, shape, flap, LW_POLAR_REYNOLDS, room);
        if (f != middle) count(polar, &row);
        take_flap(polar, &row, f, least_drag);
    }
    polar->bent[middle].value.worth = 0.0;
    smooth_bent(polar->bent);
    smooth_across(polar->drag);
    smooth_across(polar->suction);
}

bool lw_polar_prepare(lw_polar *polar, const lw_polar_shape *given, lw_polar_room *room)
{
    lw_polar_shape shape = *given;
    lw_row row, faster;
    *polar = (lw_polar){.tried = 0.0};
    bool is_shape = lw_row_of(&row, &shape, 0.0, LW_POLAR_REYNOLDS, room);
    if (!is_shape) {
        shape.designation = NULL;
        shape.thickness = fmin(fmax(shape.thickness, 0.06), 0.2);
        shape.zero_lift_angle = fmin(fmax(shape.zero_lift_angle, -7.0 * LW_DEG), 1.0 * LW_DEG);
        lw_row_of(&row, &shape, 0.0, LW_POLAR_REYNOLDS, room);
    }
    take_line(polar, &row);
    count(polar, &row);
    lw_row_of(&faster, &shape, 0.0, LW_POLAR_FASTER, room);
    count(polar, &faster);
    take_faster(polar, &row, &faster);
    take_speeds(polar, &shape, room);
    if (shape.flap_chord > 0.0) {
        take_flaps(polar, &shape, &row, room);
    } else {
        take_flap(polar, &row, 0, row.point[row.middle].drag);
        smooth_across(polar->drag);
        smooth_across(polar->suction);
    }
    for (int k = 0; k < LW_POLAR_LIFTS; k++) {
        const int f = polar->flap_step > 0.0 ? LW_POLAR_FLAPS / 2 : 0;
        const lw_polar_knot *drag = &polar->drag[f][k], *suction = &polar->suction[f][k];
        polar->drag_in_line[k] = (lw_polar_pair){drag->value, drag->by_lift};
        polar->suction_in_line[k] = (lw_polar_pair){suction->value, suction->by_lift};
    }
    return is_shape;
}

double lw_polar_least_drag(const lw_polar *polar, double reynolds)
{
    double at[LW_POLAR_SPEEDS];
    for (int i = 0; i < LW_POLAR_SPEEDS; i++) at[i] = polar->log_re_first + i * polar->log_re_step;
    const double log_re = lw_log(reynolds);
    const double held = fmin(fmax(log_re, at[0]), at[LW_POLAR_SPEEDS - 1]);
    const double inside = lw_row_between(at, polar->drag_log, LW_POLAR_SPEEDS, held).value;
    const double plate = lw_friction_schlichting(lw_all(log_re))[0];
    return lw_exp(inside) * plate / lw_friction_schlichting(lw_all(held))[0];
}
