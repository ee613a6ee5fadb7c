// polar_row.c - the boundary layer of a section over a row of angles, from stall to stall.
// SPDX-License-Identifier: MIT

#include "foil/polar_row.h"

#include <math.h>

#include "foil/section.h"
#include "lullwise/base.h"
#include "lullwise/elementary.h"

#define PANELS      60
#define CAMBER_PART (1.0386 * LW_DEG)  // zero-lift angle of 1 % of camber at 40 % [glauert-1926]
#define TAIL_STALL  0.25               // of a slope of 2 pi: near enough to the greatest lift

// Angles from the middle, on either side of it.
static const double up[] = {2.5, 5.0, 7.5, 10.0, 12.0, 14.0, 16.0, 18.0};
static const double down[] = {-3.0, -6.0, -9.0, -12.0, -15.0};

bool lw_polar_outline(const lw_polar_shape *shape, lw_outline *outline)
{
    if (shape->designation) return lw_outline_naca(shape->designation, outline) == LW_PROFILE_OK;
    const double camber = -0.01 * shape->zero_lift_angle / CAMBER_PART;
    return lw_outline_four_digit(camber, 0.4, shape->thickness, outline) == LW_PROFILE_OK;
}

bool lw_row_lay(const lw_polar_shape *shape, double flap, lw_polar_room *room)
{
    const bool has_flap = shape->flap_chord > 0.0 && flap != 0.0;
    const double hinge = fmin(fmax(1.0 - shape->flap_chord, 0.4), 0.95);
    const lw_profile_flap at = {has_flap ? hinge : 0.0, has_flap ? flap : 0.0};
    return lw_polar_outline(shape, &room->outline) &&
           lw_profile_of(&room->outline, at, PANELS, &room->profile) == LW_PROFILE_OK &&
           lw_layer_of(&room->profile, &room->solving, &room->layer) == LW_PROFILE_OK;
}

static lw_layer_load load_at(lw_polar_room *room, const lw_polar_shape *shape, double reynolds,
                             double alpha)
{
    const double trip = fmin(fmax(shape->smooth, 0.01), 1.0);
    const lw_layer_conditions at = {reynolds, alpha, shape->waves, {trip, trip}};
    return lw_layer_load_next(&room->layer, &at);
}

static bool is_answer(const lw_layer_load *load) { return load->outcome == LW_LAYER_SETTLED; }

double lw_row_middle_alpha(double flap_chord)
{
    return flap_chord > 0.0 ? -lw_acos(2.0 * (1.0 - flap_chord) - 1.0) / LW_PI : 0.0;
}

static lw_polar_point point_of(const lw_layer_load *load, double alpha)
{
    return (lw_polar_point){alpha, load->lift, load->drag, load->moment, -load->least_pressure};
}

// A side of the row: points from the middle outwards.
typedef struct side {
    const double *angles;
    int angle_count;
    double limit;  // suction that the nose bears
    int count;
    lw_polar_point point[LW_POLAR_POINTS];
    double most, most_alpha;
} side;

// The top of the parabola through the last three points: at most 2 degrees beyond the last, or,
// where lift has fallen, about the middle one.
static void stall_at_tail(side *d)
{
    const lw_polar_point *p = &d->point[d->count - 1];
    const double a = p[-1].alpha - p[-2].alpha, b = p[0].alpha - p[-1].alpha;
    const double left = (p[-1].lift - p[-2].lift) / a, right = (p[0].lift - p[-1].lift) / b;
    const double bend = (right - left) / (0.5 * (a + b)), most = 2.0 * LW_DEG;
    const lw_polar_point *from = right < 0.0 ? p - 1 : p;
    const double slope = right + (right < 0.0 ? -0.5 : 0.5) * b * bend;
    const double to_top = bend * b < 0.0 ? -slope / bend : 0.0;
    const double beyond = copysign(fmin(fabs(to_top), most), to_top);
    const double gain = beyond * (slope + 0.5 * bend * beyond);
    d->most = from->lift + copysign(fmin(fabs(gain), 0.05), gain);
    d->most_alpha = from->alpha + beyond;
}

// Between the last two points, where the suction reaches the nose's limit.
static void stall_at_nose(side *d)
{
    const lw_polar_point *p = &d->point[d->count - 1];
    const double part = (d->limit - p[-1].suction) / (p->suction - p[-1].suction);
    const double held = fmin(fmax(part, 0.0), 1.0);
    d->most = p[-1].lift + held * (p->lift - p[-1].lift);
    d->most_alpha = p[-1].alpha + held * (p->alpha - p[-1].alpha);
}

static bool is_stalled(side *d)
{
    const lw_polar_point *p = &d->point[d->count - 1];
    d->most = p->lift;
    d->most_alpha = p->alpha;
    if (d->count < 2) return false;
    if (p->suction > d->limit) {
        stall_at_nose(d);
        return true;
    }
    const double slope = (p->lift - p[-1].lift) / (p->alpha - p[-1].alpha);
    if (d->count < 3 || slope > TAIL_STALL * 2.0 * LW_PI) return false;
    stall_at_tail(d);
    if (slope < 0.0) d->count--;  // lift rises outwards all along the row
    return true;
}

static void walk(side *d, const lw_polar_shape *shape, double reynolds, lw_polar_row *row,
                 lw_polar_room *room)
{
    const double middle = d->point[0].alpha;
    int lost = 0;
    for (int i = 0; i < d->angle_count && lost < 2; i++) {
        const double alpha = middle + d->angles[i] * LW_DEG;
        const lw_layer_load load = load_at(room, shape, reynolds, alpha);
        row->tried += 1.0;
        if (!is_answer(&load)) {
            row->filled += 1.0;
            lost++;
            continue;
        }
        d->point[d->count++] = point_of(&load, alpha);
        if (is_stalled(d)) return;
    }
}

// Points by rule when the layers tell too little: the middle of a polar as tunnels find it.
static void by_rule(lw_polar_row *row, const lw_polar_shape *shape, double flap, double reynolds)
{
    const double a_0 = lw_section_slope_measured(reynolds);
    const double middle = lw_row_middle_alpha(shape->flap_chord) * flap;
    const double worth = 0.8 * lw_flap_of(shape->flap_chord).angle_share;
    const double zero = shape->zero_lift_angle - worth * flap;
    const double drag = 0.0085 * lw_pow(reynolds / 1e6, -0.2);
    row->count = 0;
    for (int k = -10; k <= 10; k += 2) {
        const double alpha = middle + k * LW_DEG, lift = a_0 * (alpha - zero);
        row->point[row->count++] =
            (lw_polar_point){alpha, lift, drag * (1.0 + 0.01 * k * k), 0.0, 0.5 + 0.05 * k * k};
    }
    row->middle = row->count / 2;
}

static void join(lw_polar_row *row, const side *above, const side *below)
{
    row->count = 0;
    for (int i = below->count - 1; i > 0; i--) row->point[row->count++] = below->point[i];
    row->middle = row->count;
    for (int i = 0; i < above->count; i++) row->point[row->count++] = above->point[i];
}

bool lw_row_of(lw_polar_row *row, const lw_polar_shape *shape, double flap, double reynolds,
               lw_polar_room *room)
{
    *row = (lw_polar_row){.tried = 1.0};
    if (!lw_row_lay(shape, flap, room)) return false;
    const double middle = lw_row_middle_alpha(shape->flap_chord) * flap;
    const double limit = lw_layer_nose_limit(reynolds);
    const lw_layer_load load = load_at(room, shape, reynolds, middle);
    const lw_layer_state root = room->layer.state;
    side above = {.angles = up, .angle_count = sizeof up / sizeof up[0], .limit = limit};
    side below = {.angles = down, .angle_count = sizeof down / sizeof down[0], .limit = limit};
    if (is_answer(&load)) {
        above.point[above.count++] = below.point[below.count++] = point_of(&load, middle);
        walk(&above, shape, reynolds, row, room);
        room->layer.state = root;
        room->layer.has_root = true;
        walk(&below, shape, reynolds, row, room);
        join(row, &above, &below);
    }
    if (row->middle < 1 || row->count - row->middle < 3) {
        row->filled = row->tried;
        by_rule(row, shape, flap, reynolds);
        above.most = row->point[row->count - 1].lift;
        above.most_alpha = row->point[row->count - 1].alpha;
        below.most = row->point[0].lift;
        below.most_alpha = row->point[0].alpha;
    }
    row->most = above.most, row->most_alpha = above.most_alpha;
    row->least = below.most, row->least_alpha = below.most_alpha;
    return true;
}

bool lw_row_over_speeds(lw_polar_row *row, const lw_polar_shape *shape, lw_polar_room *room)
{
    *row = (lw_polar_row){.count = LW_POLAR_SPEEDS};
    if (!lw_row_lay(shape, 0.0, room)) return false;
    for (int i = 0; i < LW_POLAR_SPEEDS; i++) {
        const lw_layer_load load = load_at(room, shape, LW_POLAR_SLOWEST * (double)(1 << i), 0.0);
        row->tried += 1.0;
        if (is_answer(&load))
            row->point[i] = point_of(&load, 0.0);
        else
            row->filled += 1.0;
    }
    return true;
}

// Slope at point i: harmonic mean of the neighbouring ones, none where they differ in sign.
static double slope_at(const double *x, const double *y, int count, int i)
{
    if (i == 0) return (y[1] - y[0]) / (x[1] - x[0]);
    if (i == count - 1) return (y[i] - y[i - 1]) / (x[i] - x[i - 1]);
    const double a = x[i] - x[i - 1], b = x[i + 1] - x[i];
    const double left = (y[i] - y[i - 1]) / a, right = (y[i + 1] - y[i]) / b;
    if (!(left * right > 0.0)) return 0.0;
    const double w = (a + 2.0 * b) / (3.0 * (a + b));
    return left * right / (w * right + (1.0 - w) * left);
}

lw_row_value lw_row_between(const double *x, const double *y, int count, double at)
{
    int k = 0;
    while (k < count - 2 && at > x[k + 1]) k++;
    const double width = x[k + 1] - x[k], rise = y[k + 1] - y[k];
    const double m_0 = slope_at(x, y, count, k) * width, m_1 = slope_at(x, y, count, k + 1) * width;
    if (at < x[k]) return (lw_row_value){y[k] + m_0 / width * (at - x[k]), m_0 / width};
    if (at > x[k + 1]) {
        return (lw_row_value){y[k + 1] + m_1 / width * (at - x[k + 1]), m_1 / width};
    }
    const double t = (at - x[k]) / width, u = 1.0 - t;
    const double bend = m_0 - rise, fall = rise - m_1;
    const double value = y[k] + t * (rise + u * (u * bend + t * fall));
    const double slope = rise + u * (1.0 - 3.0 * t) * bend + t * (2.0 - 3.0 * t) * fall;
    return (lw_row_value){value, slope / width};
}
