// outline.c - outlines of sections from coordinates: checked and put in order.
// SPDX-License-Identifier: MIT

#include "foil/section/outline.h"

#include <math.h>

#define LW_AS_TEXT(name, text) text,
const char *lw_profile_status_text(lw_profile_status status)
{
    static const char *const texts[] = {LW_PROFILE_STATUS_LIST(LW_AS_TEXT)};
    return (unsigned)status < LW_PROFILE_STATUS_COUNT ? texts[status] : "?";
}

// --- order

static void reverse(double *a, int count)
{
    for (int i = 0, j = count - 1; i < j; i++, j--) {
        const double old = a[i];
        a[i] = a[j];
        a[j] = old;
    }
}

// Twice the area inside, positive when the points run anticlockwise.
static double area_of(const lw_outline *o)
{
    double area = 0.0;
    for (int i = 0; i < o->count; i++) {
        const int j = i + 1 < o->count ? i + 1 : 0;
        area += o->x[i] * o->y[j] - o->x[j] * o->y[i];
    }
    return area;
}

// Both sides given from the nose: the place where the second begins, or 0. There x falls at once
// over more than half the chord, and the first point lies at the nose.
static int second_side_of(const lw_outline *o, double x_least, double chord)
{
    if (o->x[0] > x_least + 0.1 * chord) return 0;
    for (int i = 1; i < o->count; i++) {
        if (o->x[i] < o->x[i - 1] - 0.5 * chord) return i;
    }
    return 0;
}

// Drops points that lie on the one before.
static void drop_repeated(lw_outline *o, double chord)
{
    int kept = 1;
    for (int i = 1; i < o->count; i++) {
        const double dx = fabs(o->x[i] - o->x[kept - 1]), dy = fabs(o->y[i] - o->y[kept - 1]);
        if (dx + dy < 1e-7 * chord) continue;
        o->x[kept] = o->x[i];
        o->y[kept++] = o->y[i];
    }
    o->count = kept;
}

// A closed list that begins elsewhere than at the tail is turned until it does.
static void begin_at_tail(lw_outline *o, double x_most, double chord)
{
    if (o->x[0] > x_most - 0.05 * chord) return;
    int tail = 0;
    for (int i = 1; i < o->count; i++) {
        if (o->x[i] > o->x[tail]) tail = i;
    }
    const double dx = fabs(o->x[0] - o->x[o->count - 1]), dy = fabs(o->y[0] - o->y[o->count - 1]);
    if (dx + dy < 1e-7 * chord) o->count--;
    reverse(o->x, tail);
    reverse(o->y, tail);
    reverse(o->x + tail, o->count - tail);
    reverse(o->y + tail, o->count - tail);
    reverse(o->x, o->count);
    reverse(o->y, o->count);
    o->x[o->count] = o->x[0];
    o->y[o->count++] = o->y[0];
}

// A list that names its tail once gets it at its other end as well. Its ends lie one behind the
// other; those of an open tail lie one above the other.
static void repeat_tail(lw_outline *o, double chord)
{
    const int n = o->count;
    const double dx = o->x[0] - o->x[n - 1], dy = o->y[0] - o->y[n - 1];
    if (n == LW_OUTLINE_MOST || fabs(dx) < 1e-5 * chord || fabs(dx) < fabs(dy)) return;
    o->x[n] = o->x[0];
    o->y[n] = o->y[0];
    if (dx < 0.0) {  // the last is the tail
        for (int i = n; i > 0; i--) {
            o->x[i] = o->x[i - 1];
            o->y[i] = o->y[i - 1];
        }
        o->x[0] = o->x[n];
        o->y[0] = o->y[n];
    }
    o->count++;
}

// --- faults

static double side_of(const lw_outline *o, int i, int p)  // twice the triangle i, i + 1, p
{
    return (o->x[i + 1] - o->x[i]) * (o->y[p] - o->y[i]) -
           (o->x[p] - o->x[i]) * (o->y[i + 1] - o->y[i]);
}

static bool is_crossed(const lw_outline *o)
{
    for (int i = 0; i < o->count - 1; i++) {
        for (int j = i + 2; j < o->count - 1; j++) {
            if (i == 0 && j == o->count - 2) continue;  // both end at the tail
            const double a = side_of(o, i, j), b = side_of(o, i, j + 1);
            const double c = side_of(o, j, i), d = side_of(o, j, i + 1);
            if (a * b < 0.0 && c * d < 0.0) return true;
        }
    }
    return false;
}

// --- size

static void scale(lw_outline *o, double x_least, double chord)
{
    for (int i = 0; i < o->count; i++) {
        o->x[i] = (o->x[i] - x_least) / chord;
        o->y[i] /= chord;
    }
}

// Both ends of an open tail move to the middle, and what is before them in proportion to x.
static void close_tail(lw_outline *o)
{
    const int last = o->count - 1;
    const double half_y = 0.5 * (o->y[last] - o->y[0]);
    const double half_x = 0.5 * (o->x[last] - o->x[0]);
    o->was_open = fabs(half_y) > 1e-9;
    const double nose = lw_outline_nose(o), length = o->s[last];
    for (int i = 0; i <= last; i++) {
        const double s = o->s[i];
        const double part = s < nose ? (nose - s) / nose : -(s - nose) / (length - nose);
        const double share = part * fabs(part);
        o->x[i] += half_x * share;
        o->y[i] += half_y * share;
    }
    lw_outline_smooth(o);
}

static lw_profile_status put_in_order(lw_outline *o)
{
    double x_least = o->x[0], x_most = o->x[0], y_least = o->y[0], y_most = o->y[0];
    for (int i = 0; i < o->count; i++) {
        if (!(fabs(o->x[i]) < 1e12) || !(fabs(o->y[i]) < 1e12)) return LW_PROFILE_NOT_A_NUMBER;
        x_least = fmin(x_least, o->x[i]);
        x_most = fmax(x_most, o->x[i]);
        y_least = fmin(y_least, o->y[i]);
        y_most = fmax(y_most, o->y[i]);
    }
    const double chord = x_most - x_least;
    if (!(chord > 0.0) || y_most - y_least > 1.01 * chord) return LW_PROFILE_FLAT;
    o->was_scaled = fabs(x_least) > 0.002 || fabs(chord - 1.0) > 0.004;

    const int second = second_side_of(o, x_least, chord);
    if (second > 0) {
        reverse(o->x, second);
        reverse(o->y, second);
        o->was_reversed = true;
    }
    drop_repeated(o, chord);
    if (o->count < LW_OUTLINE_LEAST) return LW_PROFILE_TOO_FEW;
    if (o->count < LW_OUTLINE_MOST) begin_at_tail(o, x_most, chord);
    repeat_tail(o, chord);
    if (is_crossed(o)) return LW_PROFILE_CROSSED;
    const double area = area_of(o);
    if (fabs(area) < 2e-3 * chord * chord) return LW_PROFILE_FLAT;
    if (area > 0.0) {
        // anticlockwise, as most files are: turned round without a word
        reverse(o->x, o->count);
        reverse(o->y, o->count);
    }
    scale(o, x_least, chord);
    return LW_PROFILE_OK;
}

lw_profile_status lw_outline_of_points(const double *x, const double *y, int count,
                                       lw_outline *outline)
{
    lw_outline *o = outline;
    o->count = 0;
    if (count < LW_OUTLINE_LEAST) return LW_PROFILE_TOO_FEW;
    if (count > LW_OUTLINE_MOST) return LW_PROFILE_TOO_MANY;
    for (int i = 0; i < count; i++) {
        o->x[i] = x[i];
        o->y[i] = y[i];
    }
    o->count = count;
    o->was_reversed = o->was_open = o->was_scaled = false;
    const lw_profile_status status = put_in_order(o);
    if (status != LW_PROFILE_OK) return status;
    lw_outline_smooth(o);
    close_tail(o);
    lw_outline_fill(o);
    return LW_PROFILE_OK;
}
