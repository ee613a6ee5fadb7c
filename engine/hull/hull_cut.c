// hull_cut.c - the part of a hull that is under water, and how it floats.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "hull/hull_cut.h"
#include "lullwise/elementary.h"

#define LENGTHS LW_HULL_LENGTHS
#define LEVELS  LW_HULL_LEVELS

#define SEARCH LW_HULL_PLACES
#define UP     36  // steps of the wetted area from keel to water

typedef struct water_line {
    double height, slope;  // z at x = 0 [m], fall forward
} water_line;

static double water_at(water_line water, double x) { return water.height - x * water.slope; }

static double draft_at(const lw_hull_lines *lines, water_line water, double x)
{
    return water_at(water, x) - lw_hull_blend_at(lines, x).keel;
}

// Where between a wet place and a dry one the keel comes out: by halving.
static double keel_out(const lw_hull_lines *lines, water_line water, double wet, double dry)
{
    for (int i = 0; i < 40; i++) {
        const double middle = 0.5 * (wet + dry);
        if (draft_at(lines, water, middle) > 0.0) {
            wet = middle;
        } else {
            dry = middle;
        }
    }
    return wet;
}

// Ends of the wet part that holds the deepest place, or DRY, or DECK_UNDER.
static lw_hull_status find_ends(lw_hull_cut *cut, const lw_hull_lines *lines, water_line water)
{
    const lw_hull_shape *shape = lines->shape;
    const double first = lw_hull_place(shape, 0), step = lw_hull_place(shape, 1) - first;
    int deepest = 0;
    double draft[SEARCH + 1];
    for (int i = 0; i <= SEARCH; i++) {
        const double level = water_at(water, lw_hull_place(shape, i));
        draft[i] = level - lines->keel[i];
        if (draft[i] > 0.0 && level > lines->deck[i] * (1.0 + 1e-12)) return LW_HULL_DECK_UNDER;
        if (draft[i] > draft[deepest]) deepest = i;
    }
    if (!(draft[deepest] > 0.0)) return LW_HULL_DRY;
    int aft = deepest, fore = deepest;
    while (aft > 0 && draft[aft - 1] > 0.0) aft--;
    while (fore < SEARCH && draft[fore + 1] > 0.0) fore++;
    cut->aft = first + step * aft, cut->fore = first + step * fore;
    if (aft > 0) cut->aft = keel_out(lines, water, cut->aft, cut->aft - step);
    if (fore < SEARCH) cut->fore = keel_out(lines, water, cut->fore, cut->fore + step);
    return cut->fore > cut->aft ? LW_HULL_OK : LW_HULL_DRY;
}

// --- sums over the cut, by Simpson's rule: exact for the cubes that the points are joined by

static double simpson(int i, int steps) { return i == 0 || i == steps ? 1.0 : i % 2 ? 4.0 : 2.0; }

// Area of one section, and its first moment about the water.
static void section_sums(const lw_hull_cut *cut, int i, double *area, double *moment)
{
    const double step = cut->draft[i] / LEVELS;
    *area = *moment = 0.0;
    for (int k = 0; k <= LEVELS; k++) {
        const double part = simpson(k, LEVELS) * step / 3.0 * 2.0 * cut->half[i][k];
        *area += part;
        *moment -= part * step * (LEVELS - k);
    }
}

static void sum_up(lw_hull_cut *cut, water_line water)
{
    lw_hull_floating *f = &cut->floating;
    const double step = (cut->fore - cut->aft) / LENGTHS;
    double plane_1 = 0.0, plane_2 = 0.0;
    for (int i = 0; i <= LENGTHS; i++) {
        const double x = cut->aft + step * i, w = simpson(i, LENGTHS) * step / 3.0;
        double area, moment;
        section_sums(cut, i, &area, &moment);
        f->volume += w * area;
        f->centre_x += w * area * x;
        f->centre_z += w * (moment + area * water_at(water, x));

        const double y = cut->half[i][LEVELS];
        f->waterplane += w * 2.0 * y;
        plane_1 += w * 2.0 * y * x, plane_2 += w * 2.0 * y * x * x;
        f->across += w * 2.0 / 3.0 * y * y * y;
        f->beam = fmax(f->beam, 2.0 * y);
        f->draft = fmax(f->draft, cut->draft[i]);
        if (i == 0) f->transom_area = area, f->transom_draft = cut->draft[0];
    }
    f->length = cut->fore - cut->aft;
    if (f->volume > 0.0) f->centre_x /= f->volume, f->centre_z /= f->volume;
    if (f->waterplane > 0.0) f->waterplane_x = plane_1 / f->waterplane;
    f->along = plane_2 - f->waterplane * f->waterplane_x * f->waterplane_x;
}

typedef struct point {
    double x, y, z;
} point;

// Area of a skewed four-cornered patch: half the cross product of its diagonals.
static double patch(point a, point b, point c, point d)
{
    const point p = {c.x - a.x, c.y - a.y, c.z - a.z}, q = {d.x - b.x, d.y - b.y, d.z - b.z};
    const double x = p.y * q.z - p.z * q.y, y = p.z * q.x - p.x * q.z, z = p.x * q.y - p.y * q.x;
    return 0.5 * sqrt(x * x + y * y + z * z);
}

// The patches between two stations, `stride` steps apart up the side; both sides and a flat bottom.
static double strip_area(const point *aft, const point *fore, int stride)
{
    double area = (fore[0].x - aft[0].x) * (aft[0].y + fore[0].y);
    for (int k = 0; k < UP; k += stride) {
        area += 2.0 * patch(aft[k], fore[k], fore[k + stride], aft[k + stride]);
    }
    return area;
}

// Without the transom, by patches `stride` steps long and high.
static double wetted_area(const lw_hull_cut *cut, const lw_hull_lines *lines, water_line water,
                          int stride)
{
    const double step = (cut->fore - cut->aft) / LENGTHS;
    point side[2][UP + 1];  // of this station and the one aft of it
    double area = 0.0;
    for (int i = 0; i <= LENGTHS; i += stride) {
        const double x = cut->aft + step * i;
        const lw_hull_blend blend = lw_hull_blend_at(lines, x);
        point *here = side[i / stride % 2], *aft = side[(i / stride + 1) % 2];
        double z[UP + 1], half[UP + 1];
        for (int n = 0; n <= UP / stride; n++) {
            // finer towards the keel, where sections turn fastest
            const double part = (double)n * n * stride * stride / (UP * UP);
            z[n] = blend.keel + part * (water_at(water, x) - blend.keel);
        }
        lw_hull_halves(lines, &blend, z, UP / stride + 1, half);
        for (int n = 0, k = 0; k <= UP; n++, k += stride) here[k] = (point){x, half[n], z[n]};
        if (i > 0) area += strip_area(aft, here, stride);
    }
    return area;
}

static void fill_cut(lw_hull_cut *cut, const lw_hull_lines *lines, water_line water)
{
    const double step = (cut->fore - cut->aft) / LENGTHS;
    for (int i = 0; i <= LENGTHS; i++) {
        const double x = cut->aft + step * i;
        const lw_hull_blend blend = lw_hull_blend_at(lines, x);
        cut->draft[i] = fmax(water_at(water, x) - blend.keel, 0.0);
        double z[LEVELS + 1];
        for (int k = 0; k <= LEVELS; k++) z[k] = blend.keel + cut->draft[i] * k / LEVELS;
        lw_hull_halves(lines, &blend, z, LEVELS + 1, cut->half[i]);
    }
}

lw_hull_status lw_hull_cut_lines(lw_hull_cut *cut, const lw_hull_lines *lines,
                                 lw_hull_attitude attitude, lw_hull_area area)
{
    if (!(fabs(attitude.draft) < 1e6 && fabs(attitude.trim) < 0.5)) return LW_HULL_NOT_A_NUMBER;
    const water_line water = {attitude.draft, lw_tan(attitude.trim)};
    lw_hull_cut made = {.attitude = attitude};
    const lw_hull_status status = find_ends(&made, lines, water);
    if (status != LW_HULL_OK) return status;
    fill_cut(&made, lines, water);
    sum_up(&made, water);
    if (area == LW_HULL_AREA_COARSE) made.floating.wetted = wetted_area(&made, lines, water, 2);
    if (area == LW_HULL_AREA_FINE) {  // both leave an error of fourth order [richardson]
        const double coarse = wetted_area(&made, lines, water, 2);
        made.floating.wetted = (4.0 * wetted_area(&made, lines, water, 1) - coarse) / 3.0;
    }
    *cut = made;
    return LW_HULL_OK;
}

lw_hull_status lw_hull_cut_at(lw_hull_cut *cut, const lw_hull_shape *shape,
                              lw_hull_attitude attitude)
{
    const lw_hull_fault fault = lw_hull_shape_check(shape);
    if (fault.status != LW_HULL_OK) return fault.status;
    lw_hull_lines lines;
    lw_hull_lines_of(&lines, shape);
    return lw_hull_cut_lines(cut, &lines, attitude, LW_HULL_AREA_FINE);
}

// --- balance

// Highest water that leaves the deck dry at this trim, and lowest that wets the hull.
static void bounds_of(const lw_hull_shape *shape, double slope, double *low, double *high)
{
    *low = 1e6, *high = 1e6;
    for (int i = 0; i < shape->count; i++) {
        const lw_hull_section *s = &shape->section[i];
        *low = fmin(*low, s->height[0] + s->x * slope);
        *high = fmin(*high, s->height[s->count - 1] + s->x * slope);
    }
}

// Draft at which the volume floats at a trim: Newton with the waterplane, kept between bounds.
static lw_hull_status float_at_trim(lw_hull_cut *cut, const lw_hull_lines *lines, double volume,
                                    double trim)
{
    double low, high;
    bounds_of(lines->shape, lw_tan(trim), &low, &high);
    double draft = 0.5 * (low + high);
    for (int i = 0; i < 60; i++) {
        const lw_hull_status status =
            lw_hull_cut_lines(cut, lines, (lw_hull_attitude){draft, trim}, LW_HULL_AREA_NONE);
        double next = low;  // no Newton
        if (status == LW_HULL_OK) {
            const double miss = cut->floating.volume - volume;
            if (fabs(miss) < 1e-9 * volume) return LW_HULL_OK;
            *(miss < 0.0 ? &low : &high) = draft;
            if (cut->floating.waterplane > 0.0) next = draft - miss / cut->floating.waterplane;
        } else {
            *(status == LW_HULL_DRY ? &low : &high) = draft;
        }
        draft = next > low && next < high ? next : 0.5 * (low + high);
    }
    return LW_HULL_DECK_UNDER;
}

lw_hull_status lw_hull_float(lw_hull_cut *cut, const lw_hull_shape *shape, double volume, double x)
{
    const lw_hull_fault fault = lw_hull_shape_check(shape);
    if (fault.status != LW_HULL_OK) return fault.status;
    if (!(volume > 0.0 && volume < 1e6 && fabs(x) < 1e6)) return LW_HULL_NOT_A_NUMBER;
    lw_hull_lines lines;
    lw_hull_lines_of(&lines, shape);
    lw_hull_cut made;
    const double most = 10.0 * LW_DEG;
    double trim = 0.0, low = -most, high = most;
    for (int i = 0; i < 60; i++) {
        const lw_hull_status status = float_at_trim(&made, &lines, volume, trim);
        if (status != LW_HULL_OK) return i == 0 ? status : LW_HULL_NO_BALANCE;
        // bow up brings the buoyancy aft
        const double ahead = made.floating.centre_x - x;
        if (fabs(ahead) < 1e-7 * made.floating.length) {
            const lw_hull_status last =
                lw_hull_cut_lines(&made, &lines, made.attitude, LW_HULL_AREA_FINE);
            if (last == LW_HULL_OK) *cut = made;
            return last;
        }
        if (ahead > 0.0) {
            low = trim;
        } else {
            high = trim;
        }
        const double next = trim + ahead * volume / made.floating.along;
        trim = next > low && next < high ? next : 0.5 * (low + high);
        if (high - low < 1e-12) return LW_HULL_NO_BALANCE;
    }
    return LW_HULL_NO_BALANCE;
}
