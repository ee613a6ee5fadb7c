// hull_shape.c - sections checked, and shapes made from offsets, dimensions and a formula.
// SPDX-License-Identifier: MIT

#include "lullwise/hull_shape.h"

#include <math.h>

#include "lullwise/elementary.h"

#define AS_TEXT(name, text) text,
static const char *const texts[] = {LW_HULL_STATUS_LIST(AS_TEXT)};

const char *lw_hull_status_text(lw_hull_status status)
{
    return status >= 0 && status < LW_HULL_STATUS_COUNT ? texts[status] : "no such status";
}

static bool is_finite(double x) { return fabs(x) <= 1e6; }  // false for NaN

static lw_hull_fault fault(lw_hull_status status, int station, int point)
{
    return (lw_hull_fault){.status = status, .station = station, .point = point};
}

static lw_hull_fault check_section(const lw_hull_section *section, int i)
{
    const int n = section->count;
    if (n < 3 || n > LW_HULL_POINTS) return fault(LW_HULL_POINTS_COUNT, i, -1);
    if (!is_finite(section->x)) return fault(LW_HULL_NOT_A_NUMBER, i, -1);
    for (int k = 0; k < n; k++) {
        if (!(is_finite(section->height[k]) && is_finite(section->half[k]))) {
            return fault(LW_HULL_NOT_A_NUMBER, i, k);
        }
    }
    if (section->height[n - 1] <= section->height[0]) return fault(LW_HULL_KEEL, i, -1);
    for (int k = 0; k < n; k++) {
        if (k > 0 && section->height[k] <= section->height[k - 1])
            return fault(LW_HULL_HEIGHTS, i, k);
        if (section->half[k] < 0.0) return fault(LW_HULL_BREADTH, i, k);
    }
    return fault(LW_HULL_OK, -1, -1);
}

lw_hull_fault lw_hull_shape_check(const lw_hull_shape *shape)
{
    if (shape->count < 3 || shape->count > LW_HULL_STATIONS)
        return fault(LW_HULL_STATIONS_COUNT, -1, -1);
    double widest = 0.0;
    for (int i = 0; i < shape->count; i++) {
        const lw_hull_section *section = &shape->section[i];
        const lw_hull_fault found = check_section(section, i);
        if (found.status != LW_HULL_OK) return found;
        if (i > 0 && section->x <= shape->section[i - 1].x) return fault(LW_HULL_ORDER, i, -1);
        for (int k = 0; k < section->count; k++) widest = fmax(widest, section->half[k]);
    }
    return fault(widest > 0.0 ? LW_HULL_OK : LW_HULL_BREADTH, -1, -1);
}

lw_hull_fault lw_hull_shape_of_offsets(lw_hull_shape *shape, const lw_hull_offsets *offsets)
{
    if (offsets->stations < 3 || offsets->stations > LW_HULL_STATIONS) {
        return fault(LW_HULL_STATIONS_COUNT, -1, -1);
    }
    if (offsets->waterlines < 2 || offsets->waterlines > LW_HULL_WATERLINES) {
        return fault(LW_HULL_POINTS_COUNT, -1, -1);
    }
    for (int k = 0; k < offsets->waterlines; k++) {
        if (!is_finite(offsets->height[k])) return fault(LW_HULL_NOT_A_NUMBER, -1, k);
        if (k > 0 && offsets->height[k] <= offsets->height[k - 1])
            return fault(LW_HULL_HEIGHTS, -1, k);
    }
    lw_hull_shape made = {.count = offsets->stations};
    for (int i = 0; i < offsets->stations; i++) {
        lw_hull_section *section = &made.section[i];
        section->x = offsets->x[i];
        if (!is_finite(offsets->keel[i])) return fault(LW_HULL_NOT_A_NUMBER, i, -1);
        if (offsets->keel[i] >= offsets->height[offsets->waterlines - 1])
            return fault(LW_HULL_KEEL, i, -1);
        section->height[section->count++] = offsets->keel[i];
        for (int k = 0; k < offsets->waterlines; k++) {
            if (offsets->height[k] <= offsets->keel[i]) continue;
            section->half[section->count] = offsets->half[i][k];
            section->height[section->count++] = offsets->height[k];
        }
        if (section->count > 2) continue;
        // one waterline above the keel: the side between them is straight
        section->height[2] = section->height[1], section->half[2] = section->half[1];
        section->height[1] = 0.5 * (section->height[0] + section->height[2]);
        section->half[1] = 0.5 * section->half[2], section->count = 3;
    }
    const lw_hull_fault found = lw_hull_shape_check(&made);
    if (found.status == LW_HULL_OK) *shape = made;
    return found;
}

// --- Wigley's hull

lw_hull_status lw_hull_shape_wigley(lw_hull_shape *shape, lw_hull_form form, double freeboard)
{
    const double L = form.length, B = form.beam, T = form.draft;
    if (!(is_finite(L) && is_finite(B) && is_finite(T) && is_finite(freeboard)))
        return LW_HULL_NOT_A_NUMBER;
    if (!(L > 0.0 && B > 0.0 && T > 0.0 && freeboard >= 0.0)) return LW_HULL_DIMENSIONS;
    const int along = 20, up = 10;
    *shape = (lw_hull_shape){.count = along + 1};
    for (int i = 0; i <= along; i++) {
        lw_hull_section *section = &shape->section[i];
        const double s = 2.0 * i / along - 1.0;
        section->x = 0.5 * L * s;
        for (int k = 0; k <= up; k++) {
            const double r = 1.0 - (double)k / up;  // z / T, down from the water
            section->height[k] = T * k / up;
            section->half[k] = 0.5 * B * (1.0 - s * s) * (1.0 - r * r);
        }
        section->count = up + 1;
        for (int k = 1; k <= 2 && freeboard > 0.0; k++) {
            section->half[section->count] = section->half[up];
            section->height[section->count++] = T + 0.5 * freeboard * k;
        }
    }
    return LW_HULL_OK;
}

// --- a hull of our own lines

#define FALL    0.6   // of the draft, that the keel rises to the bow     [judged]
#define SECTION 0.88  // fullness of a section that is tried first       [judged]

typedef struct our_lines {
    double end;  // transom beam / beam
    double n;    // of the waterline
    double q;    // of the rocker
    double m;    // of the section
} our_lines;

// x from -1 at the transom to 1 at the bow; parts of beam and draft.
static double beam_part(our_lines lines, double x)
{
    return 1.0 - (x < 0.0 ? 1.0 - lines.end : 1.0) * lw_pow(fabs(x), lines.n);
}

static double draft_part(our_lines lines, double x)
{
    return 1.0 - (x < 0.0 ? 1.0 : FALL) * lw_pow(fabs(x), lines.q);
}

// int_0^1 (1 - a x^n) (1 - b x^q) dx
static double half_block(our_lines lines, double a, double b)
{
    const double n = lines.n, q = lines.q;
    return 1.0 - a / (n + 1.0) - b / (q + 1.0) + a * b / (n + q + 1.0);
}

// Mean of the product: the block coefficient of box-shaped sections.
static double box_block(our_lines lines)
{
    return 0.5 * (half_block(lines, 1.0 - lines.end, 1.0) + half_block(lines, 1.0, FALL));
}

// The rocker that meets the block coefficient with a usual section, or else the section that does.
static our_lines lines_of(lw_hull_dimensions d)
{
    our_lines lines = {.end = d.transom_beam / d.beam};
    lines.n = (1.0 - 0.5 * lines.end) / (1.0 - d.waterplane) - 1.0;
    double low = 1.2, high = 12.0;
    for (int i = 0; i < 50; i++) {
        lines.q = 0.5 * (low + high);
        if (SECTION * box_block(lines) < d.block) {
            low = lines.q;
        } else {
            high = lines.q;
        }
    }
    const double section = d.block / box_block(lines);
    lines.m = section / (1.0 - section);
    return lines;
}

static void fill_section(lw_hull_section *section, our_lines lines, double x, lw_hull_dimensions d)
{
    const double half = 0.5 * d.beam * beam_part(lines, x), deep = d.draft * draft_part(lines, x);
    const int below = 14, above = 3;
    section->x = 0.5 * d.length * (1.0 + x);
    section->count = below + above + 1;
    for (int k = 0; k <= below; k++) {
        const double part = (double)k * k / (below * below);  // finest at the keel
        section->height[k] = d.draft - deep * (1.0 - part);
        section->half[k] = half * (1.0 - lw_pow(1.0 - part, lines.m));
    }
    for (int k = 1; k <= above; k++) {
        section->height[below + k] = d.draft + d.freeboard * k / above;
        section->half[below + k] = half;
    }
}

lw_hull_status lw_hull_shape_of_dimensions(lw_hull_shape *shape, lw_hull_dimensions d)
{
    if (!(is_finite(d.length) && is_finite(d.beam) && is_finite(d.draft) &&
          is_finite(d.transom_beam) && is_finite(d.block) && is_finite(d.waterplane) &&
          is_finite(d.freeboard))) {
        return LW_HULL_NOT_A_NUMBER;
    }
    const bool is_hull = d.length > 0.0 && d.beam > 0.0 && d.draft > 0.0 && d.freeboard > 0.0 &&
                         d.transom_beam >= 0.0 && d.transom_beam <= d.beam && d.block > 0.1 &&
                         d.waterplane > 0.3 && d.waterplane < 0.98;
    if (!is_hull) return LW_HULL_DIMENSIONS;
    const our_lines lines = lines_of(d);
    if (!(lines.n > 0.3 && lines.m > 0.5 && lines.m < 60.0)) return LW_HULL_DIMENSIONS;

    const int along = LW_HULL_STATIONS - 1;
    *shape = (lw_hull_shape){.count = along + 1};
    for (int i = 0; i <= along; i++) {
        // finer towards the ends; the transom keeps a sliver of draft so that it is a section
        const double x = fmax(-lw_cos(LW_PI * i / along), -1.0);
        fill_section(&shape->section[i], lines, i == 0 ? -0.9999 : x, d);
    }
    return LW_HULL_OK;
}
