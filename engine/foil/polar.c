// polar.c - rows of layers made into smooth functions of lift, flap and Reynolds number.
// SPDX-License-Identifier: MIT

#include "lullwise/polar.h"

#include <math.h>
#include <string.h>

#include "foil/friction.h"
#include "foil/polar_lift.h"
#include "foil/polar_read.h"
#include "foil/polar_row.h"
#include "foil/polar_table.h"
#include "lullwise/base.h"
#include "lullwise/elementary.h"

#define SPAN 1.5                        // y goes this far on either side
enum { IN_LINE = LW_POLAR_FLAPS / 2 };  // the knot of the flap in line

static void take_line(lw_polar *polar, const lw_polar_row *row)
{
    const lw_lift_curve c = lw_lift_curve_of(row);
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
static double worth_of(const lw_polar *polar, const lw_polar_row *row, double most, double down)
{
    const double k = sqrt(polar->corner_2);
    double sum = 0.0;
    for (int i = 0; i < 2; i++) {
        const lw_polar_point *p = &row->point[row->middle + i];
        const double limit = p->lift > 0.0 ? most : down;
        const double straight = limit * lw_lift_unbent(k, p->lift / limit);
        sum += 0.5 * (straight / polar->slope - p->alpha + polar->zero_lift_angle);
    }
    return sum;
}

static void take_flap(lw_polar *polar, const lw_polar_row *row, int f, double least_drag)
{
    const double k = sqrt(polar->corner_2),
                 flap = polar->flap_step > 0.0 ? (f - IN_LINE) * polar->flap_step : 0.0;
    const double stall = lw_lift_bent(k, polar->stall_share);
    const lw_polar_point *middle = &row->point[row->middle];
    lw_polar_bent *bent = &polar->bent[f].value;
    bent->greatest = fmax(row->most, 0.3) / stall;
    bent->least = fmax(-row->least, 0.3) / stall;
    bent->worth = worth_of(polar, row, bent->greatest, bent->least);
    const double y = middle->lift - polar->ideal_lift - polar->ideal_per_flap * flap;
    bent->moment = middle->moment - polar->moment_slope * y;
    const lw_sampled drag = lw_polar_sample(polar, row, flap, least_drag);
    const lw_sampled suction = lw_polar_sample(polar, row, flap, 0.0);
    lw_polar_fill_drag(polar, &drag, polar->drag[f]);
    lw_polar_fill_suction(polar, &suction, polar->suction[f]);
}

// What changes with ln Re: slope, greatest lift, and drag over lift.
static void take_faster(lw_polar *polar, const lw_polar_row *row, const lw_polar_row *faster)
{
    const double per = 1.0 / lw_polar_speed(lw_all(lw_log(LW_POLAR_FASTER)))[0];
    double growth[LW_POLAR_LIFTS], slope[LW_POLAR_LIFTS];
    const lw_lift_curve c = lw_lift_curve_with(sqrt(polar->corner_2), faster);
    polar->slope_growth = fmin(fmax(per * lw_log(c.slope / polar->slope), -0.1), 0.1);
    const double more = fmax(faster->most, 0.3) / fmax(row->most, 0.3);
    polar->most_growth = fmin(fmax(per * lw_log(more), -0.2), 0.3);
    const lw_sampled a = lw_polar_sample(polar, row, 0.0, row->point[row->middle].drag);
    const lw_sampled b = lw_polar_sample(polar, faster, 0.0, faster->point[faster->middle].drag);
    const double low = fmax(a.y[0], b.y[0]), high = fmin(a.y[a.count - 1], b.y[b.count - 1]);
    for (int k = 0; k < LW_POLAR_LIFTS; k++) {
        const double y = fmin(fmax(lw_polar_y(polar, k), low), high);
        const double first = lw_row_between(a.y, a.value, a.count, y).value;
        const double second = lw_row_between(b.y, b.value, b.count, y).value;
        growth[k] = fmin(fmax(per * (second - first), -0.4), 0.4);
    }
    lw_polar_smooth(growth, slope, LW_POLAR_LIFTS);
    slope[0] = slope[LW_POLAR_LIFTS - 1] = 0.0;  // beyond, nothing changes
    for (int k = 0; k < LW_POLAR_LIFTS; k++) {
        polar->growth[k] = (lw_polar_pair){growth[k], slope[k]};
    }
}

static void take_speeds(lw_polar *polar, const lw_polar_row *row)
{
    polar->log_re_first = lw_log(LW_POLAR_SLOWEST);
    polar->log_re_step = lw_log(2.0);
    for (int i = 0; i < LW_POLAR_SPEEDS; i++) {
        const double log_re = lw_log(LW_POLAR_SLOWEST * (double)(1 << i));
        const double plates = 2.3 * lw_friction_schlichting(lw_all(log_re))[0];
        const double drag = row->point[i].drag;
        polar->drag_log[i] = lw_log(drag > 0.0 ? drag : plates);
    }
}

// Knots as far either way as the flap goes one way, so that one has it in line.
static double flap_step_of(const lw_polar_shape *shape)
{
    if (!(shape->flap_chord > 0.0)) return 0.0;
    const double most = fmax(fmax(fabs(shape->flap_up), fabs(shape->flap_down)), 2.0 * LW_DEG);
    return fmin(most, 30.0 * LW_DEG) / IN_LINE;
}

// Knot of the flap that a row of the last kind is for.
static int flap_of(size_t number)
{
    const int f = (int)number - LW_POLAR_ROWS_PLAIN;
    return f < LW_POLAR_FLAPS / 2 ? f : f + 1;
}

static void take_flaps(lw_polar *polar, const lw_polar_shape *shape, const lw_polar_rows *rows)
{
    const int middle = LW_POLAR_FLAPS / 2;
    const lw_polar_row *in_line = &rows->row[0];
    const double least_drag = in_line->point[in_line->middle].drag;
    polar->ideal_per_flap = 4.0 * sqrt(shape->flap_chord * (1.0 - shape->flap_chord));
    polar->flap_step = flap_step_of(shape);
    polar->flap_first = -middle * polar->flap_step;
    take_flap(polar, in_line, middle, least_drag);
    for (size_t number = LW_POLAR_ROWS_PLAIN; number < LW_POLAR_ROWS; number++) {
        take_flap(polar, &rows->row[number], flap_of(number), least_drag);
    }
    polar->bent[middle].value.worth = 0.0;
    lw_polar_smooth_bent(polar->bent);
}

static void take_in_line(lw_polar *polar)
{
    const int f = polar->flap_step > 0.0 ? LW_POLAR_FLAPS / 2 : 0;
    for (int k = 0; k < LW_POLAR_LIFTS; k++) {
        const lw_polar_knot *drag = &polar->drag[f][k], *suction = &polar->suction[f][k];
        polar->drag_in_line[k] = (lw_polar_pair){drag->value, drag->by_lift};
        polar->suction_in_line[k] = (lw_polar_pair){suction->value, suction->by_lift};
    }
}

size_t lw_polar_row_count(const lw_polar_shape *shape)
{
    return shape->flap_chord > 0.0 ? LW_POLAR_ROWS : LW_POLAR_ROWS_PLAIN;
}

static bool row_of(lw_polar_row *row, const lw_polar_shape *shape, size_t number,
                   lw_polar_room *room)
{
    if (number == 0) return lw_row_of(row, shape, 0.0, LW_POLAR_REYNOLDS, room);
    if (number == 1) return lw_row_of(row, shape, 0.0, LW_POLAR_FASTER, room);
    if (number == 2) return lw_row_over_speeds(row, shape, room);
    const double flap = (flap_of(number) - IN_LINE) * flap_step_of(shape);
    return lw_row_of(row, shape, flap, LW_POLAR_REYNOLDS, room);
}

void lw_polar_row_prepare(lw_polar_row *row, const lw_polar_shape *given, size_t number,
                          lw_polar_room *room)
{
    lw_polar_shape shape = *given;
    const bool is_shape = row_of(row, &shape, number, room);
    if (!is_shape) {
        shape.designation = NULL;
        shape.thickness = fmin(fmax(shape.thickness, 0.06), 0.2);
        shape.zero_lift_angle = fmin(fmax(shape.zero_lift_angle, -7.0 * LW_DEG), 1.0 * LW_DEG);
        row_of(row, &shape, number, room);
    }
    row->is_shape = is_shape ? 1.0 : 0.0;
}

bool lw_polar_of_rows(lw_polar *polar, const lw_polar_shape *shape, const lw_polar_rows *rows)
{
    const size_t count = lw_polar_row_count(shape);
    const lw_polar_row *in_line = &rows->row[0];
    *polar = (lw_polar){.tried = 0.0};
    for (size_t i = 0; i < count; i++) {
        polar->tried += rows->row[i].tried;
        polar->filled += rows->row[i].filled;
    }
    take_line(polar, in_line);
    take_faster(polar, in_line, &rows->row[1]);
    take_speeds(polar, &rows->row[2]);
    if (count == LW_POLAR_ROWS)
        take_flaps(polar, shape, rows);
    else
        take_flap(polar, in_line, 0, in_line->point[in_line->middle].drag);
    lw_polar_smooth_across(polar->drag);
    lw_polar_smooth_across(polar->suction);
    take_in_line(polar);
    return in_line->is_shape > 0.0;
}

bool lw_polar_prepare(lw_polar *polar, const lw_polar_shape *shape, lw_polar_room *room)
{
    const size_t count = lw_polar_row_count(shape);
    for (size_t i = 0; i < count; i++) lw_polar_row_prepare(&room->rows.row[i], shape, i, room);
    return lw_polar_of_rows(polar, shape, &room->rows);
}

static bool texts_are_alike(const char *a, const char *b)
{
    return a == b || (a && b && strcmp(a, b) == 0);
}

// Polars go a little beyond the flap's ends: other ends, other polars, if only by a little. An
// answer must not depend on the boat that was asked about before.
bool lw_polar_shapes_are_alike(const lw_polar_shape *a, const lw_polar_shape *b)
{
    return texts_are_alike(a->designation, b->designation) && a->thickness == b->thickness &&
           a->zero_lift_angle == b->zero_lift_angle && a->flap_chord == b->flap_chord &&
           a->smooth == b->smooth && a->waves == b->waves && flap_step_of(a) == flap_step_of(b);
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
