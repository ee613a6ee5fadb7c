// profile.c - panels on an outline, with a flap.
// SPDX-License-Identifier: MIT

#include "lullwise/profile.h"

#include <math.h>

#include "foil/section/outline.h"
#include "lullwise/base.h"
#include "lullwise/elementary.h"
#include "solve/spline.h"

// A bend of the chord line: straight up to `from`, an arc until `to`, then straight at `angle`.
typedef struct bend {
    double from, to, y, angle;
} bend;

typedef struct place {
    double x, y;
} place;

static place place_at(const lw_outline *o, double s)
{
    return (place){lw_spline_at(o->count, o->s, o->x, o->x_s, s).value,
                   lw_spline_at(o->count, o->s, o->y, o->y_s, s).value};
}

// y of one side at x, between s_0 (x high or low) and s_1, x changing one way only between them.
static double side_at(const lw_outline *o, double x, double s_nose, double s_tail)
{
    double near = s_nose, far = s_tail;
    for (int step = 0; step < 50; step++) {
        const double s = 0.5 * (near + far);
        *(place_at(o, s).x < x ? &near : &far) = s;
    }
    return place_at(o, near).y;
}

static bend bend_of(const lw_outline *o, lw_profile_flap flap, double nose)
{
    const double below = side_at(o, flap.hinge, nose, 0.0);
    const double above = side_at(o, flap.hinge, nose, o->s[o->count - 1]);
    const double half = 0.5 * fabs(above - below);
    return (bend){flap.hinge - half, flap.hinge + half, 0.5 * (above + below), flap.angle};
}

// The line y = b.y is bent; every point keeps its distance from it and its foot on it.
static place bent(const bend *b, place p)
{
    if (p.x <= b->from || b->angle == 0.0) return p;
    const double curve = b->angle / (b->to - b->from);
    const double arc = fmin(p.x, b->to) - b->from, straight = fmax(p.x - b->to, 0.0);
    const double turn = curve * arc, sine = lw_sin(turn), cosine = lw_cos(turn);
    const double half = lw_sin(0.5 * turn);
    const double x = b->from + sine / curve + straight * cosine;
    const double y = b->y - 2.0 * half * half / curve - straight * sine;
    const double off = p.y - b->y;
    return (place){x + off * sine, y + off * cosine};
}

// Where the nodes of one side lie, as parts of its length from the nose.
typedef struct spacing {
    double lean, bow;     // steps at the nose to those at the tail; how much both crowd
    double hinge, width;  // of the crowd at a flap's hinge; 0: no crowd
} spacing;

#define NOSE_STEP 0.15   // radii of the nose, from the node there to the next
#define TAIL_STEP 0.002  // of a side
#define ABOUT     2e-4   // chords either way, in which the nose turns

static double nose_radius(const lw_outline *o, double nose)
{
    place t[2];
    for (int i = 0; i < 2; i++) {
        const double s = nose + (i ? ABOUT : -ABOUT);
        t[i].x = lw_spline_at(o->count, o->s, o->x, o->x_s, s).slope;
        t[i].y = lw_spline_at(o->count, o->s, o->y, o->y_s, s).slope;
    }
    const double sine = t[0].x * t[1].y - t[0].y * t[1].x,
                 cosine = t[0].x * t[1].x + t[0].y * t[1].y;
    return 2.0 * ABOUT / fmax(fabs(lw_atan2(sine, cosine)), 1e-3);
}

// The first and the last of `count` steps are given; between them they change smoothly, as a
// hyperbolic tangent bent towards the shorter [vinokur-1983].
static spacing spacing_of(double first, double last, int count)
{
    const double most = 1.0 / (count * sqrt(first * last));  // sinh(bow) / bow
    double low = 1e-3, high = 20.0;
    for (int step = 0; step < 45; step++) {
        const double bow = 0.5 * (low + high);
        *(lw_sinh(bow) < most * bow ? &low : &high) = bow;
    }
    return (spacing){.lean = sqrt(last / first), .bow = 0.5 * (low + high)};
}

static double part_of(const spacing *at, double u)
{
    const double even = 0.5 + 0.5 * lw_tanh(at->bow * (u - 0.5)) / lw_tanh(0.5 * at->bow);
    return even / (at->lean + (1.0 - at->lean) * even);
}

static double crowded(const spacing *at, double u)
{
    if (at->hinge == 0.0) return u;
    const double most = 0.2;  // as many nodes more as this part of all
    return u +
           most / LW_PI *
               (lw_atan((part_of(at, u) - at->hinge) / at->width) + lw_atan(at->hinge / at->width));
}

static double node_part(const spacing *at, double share)
{
    if (at->hinge == 0.0) return part_of(at, share);
    const double all = crowded(at, 1.0);
    double low = 0.0, high = 1.0;
    for (int step = 0; step < 45; step++) {
        const double u = 0.5 * (low + high);
        *(crowded(at, u) < share * all ? &low : &high) = u;
    }
    return part_of(at, 0.5 * (low + high));
}

lw_profile_status lw_profile_of(const lw_outline *outline, lw_profile_flap flap, int panels,
                                lw_profile *profile)
{
    const lw_outline *o = outline;
    profile->count = 0;
    if (o->count < 3) return LW_PROFILE_TOO_FEW;
    if (panels < LW_PANELS_LEAST || panels > LW_PANELS_MOST || panels % 2 != 0) {
        return LW_PROFILE_BAD_PANELS;
    }
    bend b = {0};
    const double nose = lw_outline_nose(o);
    const double nose_step = fmin(fmax(NOSE_STEP * nose_radius(o, nose), 1e-5), 5e-3);
    spacing spread = spacing_of(nose_step, TAIL_STEP, panels / 2);
    if (flap.hinge != 0.0) {
        if (!(flap.hinge >= 0.4 && flap.hinge <= 0.95)) return LW_PROFILE_BAD_HINGE;
        if (!(fabs(flap.angle) <= 30.0 * LW_DEG)) return LW_PROFILE_BAD_FLAP;
        b = bend_of(o, flap, nose);
        spread.hinge = flap.hinge, spread.width = fmax(b.to - b.from, 0.01);
    }
    const int half = panels / 2;
    const double length = o->s[o->count - 1];
    for (int i = 0; i <= half; i++) {
        const double part = i == half ? 1.0 : node_part(&spread, (double)i / half);
        const place below = bent(&b, place_at(o, nose * (1.0 - part)));
        const place above = bent(&b, place_at(o, nose + (length - nose) * part));
        profile->x[half - i] = below.x;
        profile->y[half - i] = below.y;
        profile->x[half + i] = above.x;
        profile->y[half + i] = above.y;
    }
    profile->count = panels + 1;
    return LW_PROFILE_OK;
}
