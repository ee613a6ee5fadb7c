// nose.c - the line through an outline's points, its nose, and points between those that were
// given, so that a coarse outline keeps its nose.
// SPDX-License-Identifier: MIT
//
// About a focus half a radius behind the nose, z = focus + along w^2 unrolls the outline: a
// parabola becomes a straight line, a section a gentle curve from tail to tail, even where only a
// few points turn about the nose. A cubic spline through w tells what lies between them.

#include <math.h>

#include "foil/section/outline.h"
#include "solve/spline.h"

void lw_outline_smooth(lw_outline *o)
{
    double spare[LW_OUTLINE_MOST];
    o->s[0] = 0.0;
    for (int i = 1; i < o->count; i++) {
        const double dx = o->x[i] - o->x[i - 1], dy = o->y[i] - o->y[i - 1];
        o->s[i] = o->s[i - 1] + sqrt(dx * dx + dy * dy);
    }
    lw_spline_slopes(o->count, o->s, o->x, o->x_s, spare);
    lw_spline_slopes(o->count, o->s, o->y, o->y_s, spare);
}

double lw_outline_nose(const lw_outline *o)
{
    const int n = o->count;
    const double x_t = o->x[0], y_t = o->y[0];
    int far = 1;
    double most = 0.0;
    for (int i = 0; i < n; i++) {
        const double dx = o->x[i] - x_t, dy = o->y[i] - y_t;
        if (dx * dx + dy * dy <= most) continue;
        most = dx * dx + dy * dy;
        far = i;
    }
    if (far < 1 || far > n - 2) return o->s[far];
    // the distance from the tail grows before it and falls after: its slope changes sign
    double low = o->s[far - 1], high = o->s[far + 1];
    for (int step = 0; step < 50; step++) {
        const double s = 0.5 * (low + high);
        const lw_spline_point x = lw_spline_at(n, o->s, o->x, o->x_s, s);
        const lw_spline_point y = lw_spline_at(n, o->s, o->y, o->y_s, s);
        const bool grows = (x.value - x_t) * x.slope + (y.value - y_t) * y.slope > 0.0;
        *(grows ? &low : &high) = s;
    }
    return 0.5 * (low + high);
}

// --- between the points

// A place, or a complex number.
typedef struct place {
    double x, y;
} place;

typedef struct unrolled {
    place focus, along;
    double s[LW_OUTLINE_MOST], x[LW_OUTLINE_MOST], y[LW_OUTLINE_MOST];
    double x_s[LW_OUTLINE_MOST], y_s[LW_OUTLINE_MOST];
} unrolled;

static double length_of(place p) { return sqrt(p.x * p.x + p.y * p.y); }

// p seen from `from`, `along` being its x axis.
static place seen(place p, place from, place along)
{
    const double dx = p.x - from.x, dy = p.y - from.y;
    return (place){dx * along.x + dy * along.y, dy * along.x - dx * along.y};
}

static place point_at(const lw_outline *o, int i) { return (place){o->x[i], o->y[i]}; }

// The nose as given where a point lies near it, else as splined; the points on either side of it.
typedef struct nose {
    place at;
    int below, above;
} nose;

static nose nose_of(const lw_outline *o)
{
    const double s = lw_outline_nose(o), near = 0.25;
    int i = 1;
    while (i < o->count - 3 && o->s[i + 1] < s) i++;
    const double part = (s - o->s[i]) / (o->s[i + 1] - o->s[i]);
    if (part < near) return (nose){point_at(o, i), i - 1, i + 1};
    if (part > 1.0 - near) return (nose){point_at(o, i + 1), i, i + 2};
    const place at = {lw_spline_at(o->count, o->s, o->x, o->x_s, s).value,
                      lw_spline_at(o->count, o->s, o->y, o->y_s, s).value};
    return (nose){at, i, i + 1};
}

// Of a parabola y^2 = 2 r x through the points beside the nose: r / 2 behind it.
static void put_focus(unrolled *w, const lw_outline *o)
{
    const nose n = nose_of(o);
    const place chord = {o->x[0] - n.at.x, o->y[0] - n.at.y};
    const double length = length_of(chord);
    w->along = (place){chord.x / length, chord.y / length};
    const place a = seen(point_at(o, n.below), n.at, w->along);
    const place b = seen(point_at(o, n.above), n.at, w->along);
    const double r = 0.25 * (a.y * a.y / fmax(a.x, 1e-6) + b.y * b.y / fmax(b.x, 1e-6));
    const double behind = 0.5 * fmin(fmax(r, 1e-4), 0.1);
    w->focus = (place){n.at.x + behind * w->along.x, n.at.y + behind * w->along.y};
}

// The root of z with y >= 0.
static place root_of(place z)
{
    const double r = length_of(z), x = copysign(sqrt(fmax(0.5 * (r + z.x), 0.0)), z.y);
    return (place){x, sqrt(fmax(0.5 * (r - z.x), 0.0))};
}

// Away from the nose the root that goes on from the one before.
static void put_root(unrolled *w, const lw_outline *o, int i, int before)
{
    const place z = seen(point_at(o, i), w->focus, w->along), root = root_of(z);
    const bool is_turned = z.x > 0.1 && root.x * w->x[before] + root.y * w->y[before] < 0.0;
    w->x[i] = is_turned ? -root.x : root.x;
    w->y[i] = is_turned ? -root.y : root.y;
}

static void unroll(unrolled *w, const lw_outline *o)
{
    double spare[LW_OUTLINE_MOST];
    int middle = 0;
    put_focus(w, o);
    for (int i = 1; i < o->count; i++) {
        const place a = seen(point_at(o, i), w->focus, w->along);
        const place b = seen(point_at(o, middle), w->focus, w->along);
        if (length_of(a) < length_of(b)) middle = i;
    }
    w->x[middle] = w->y[middle] = 0.0;  // none before it to go on from
    put_root(w, o, middle, middle);
    for (int i = middle + 1; i < o->count; i++) put_root(w, o, i, i - 1);
    for (int i = middle - 1; i >= 0; i--) put_root(w, o, i, i + 1);
    w->s[0] = 0.0;
    for (int i = 1; i < o->count; i++) {
        const place step = {w->x[i] - w->x[i - 1], w->y[i] - w->y[i - 1]};
        w->s[i] = w->s[i - 1] + length_of(step);
    }
    lw_spline_slopes(o->count, w->s, w->x, w->x_s, spare);
    lw_spline_slopes(o->count, w->s, w->y, w->y_s, spare);
}

static place rolled(const unrolled *w, int count, double s)
{
    const double x = lw_spline_at(count, w->s, w->x, w->x_s, s).value;
    const double y = lw_spline_at(count, w->s, w->y, w->y_s, s).value;
    const place z = {x * x - y * y, 2.0 * x * y};
    return (place){w->focus.x + w->along.x * z.x - w->along.y * z.y,
                   w->focus.y + w->along.y * z.x + w->along.x * z.y};
}

void lw_outline_fill(lw_outline *o)
{
    const int given = o->count, pieces = (LW_OUTLINE_MOST - 1) / (given - 1);
    unrolled w;
    unroll(&w, o);
    for (int i = given - 1; i >= 0; i--) {  // from the end, so that nothing is written over
        const int to = i * pieces;
        o->x[to] = o->x[i];
        o->y[to] = o->y[i];
    }
    for (int i = 0; i < given - 1; i++) {
        for (int k = 1; k < pieces; k++) {
            const double part = (double)k / pieces;
            const place p = rolled(&w, given, w.s[i] + part * (w.s[i + 1] - w.s[i]));
            const int to = i * pieces + k;
            o->x[to] = p.x;
            o->y[to] = p.y;
        }
    }
    o->count = (given - 1) * pieces + 1;
    o->given = given;
    lw_outline_smooth(o);
}

// Which of the points given lies nearest to the nose.
static int nose_given(const lw_outline *o, int pieces)
{
    const double s = lw_outline_nose(o);
    int nearest = 0;
    double least = fabs(o->s[0] - s);
    for (int i = 1; i < o->given; i++) {
        const int at = i * pieces;
        const double off = fabs(o->s[at] - s);
        if (off < least) least = off, nearest = i;
    }
    return nearest;
}

bool lw_outline_thin(const lw_outline *from, lw_outline *thin)
{
    if (from->given < 2 * LW_OUTLINE_LEAST) return false;
    const int pieces = (from->count - 1) / (from->given - 1), last = from->given - 1;
    const int middle = nose_given(from, pieces);
    *thin = (lw_outline){.count = 0};
    for (int i = 0; i <= last; i++) {
        if ((i - middle) % 2 != 0 && i != 0 && i != last) continue;
        const int at = i * pieces;
        thin->x[thin->count] = from->x[at];
        thin->y[thin->count++] = from->y[at];
    }
    lw_outline_smooth(thin);
    lw_outline_fill(thin);
    return true;
}
