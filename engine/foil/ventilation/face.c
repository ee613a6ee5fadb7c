// face.c - a plate with a flap under the surface, its back in air.
// SPDX-License-Identifier: MIT
//
// The water is a half plane slit behind the nose; z = h/pi (t - 1 - ln t) maps it to that above the
// real line of t: the face to 1 < t < b = s^2, where the slope is given; pressure is the air's on
// all the rest. So far it is an aerofoil on 1..b. With t = (b + 1)/2 - (b - 1)/2 cos(theta):
//
//     u   = alpha cot(theta/2) + delta ((pi - hinge) cot(theta/2)
//           + ln |sin((theta + hinge)/2) / sin((theta - hinge)/2)|) / pi
//     C_L = 2 h / (pi c) int u (t - 1)/t dt,    C_D = h / c v^2
//
// v: how fast the sheet of water above is thrown down, far behind, over the speed.

#include "foil/ventilation/face.h"

#include <math.h>
#include <stdbool.h>

#include "foil/ventilation/ventilated_foil.h"
#include "lullwise/elementary.h"

#define LEAST_DEPTH 1e-4  // [chords]

// Places x from the nose, pi / h times: t - 1 - ln t.
static double along(double t) { return t - 1.0 - lw_log(t); }

// The t above 1 where along(t) is x.
static double place_of(double x)
{
    double low = 1.0, high = 2.0 * (1.0 + x) + 2.0;
    for (int i = 0; i < 60; i++) {
        const double middle = 0.5 * (low + high);
        *(along(middle) < x ? &low : &high) = middle;
    }
    return 0.5 * (low + high);
}

typedef struct plate {
    double s, b;   // trailing edge at b = s^2
    double x;      // pi c / h
    double hinge;  // theta of the flap's hinge; pi: no flap
} plate;

static plate plate_of(double depth, double flap_chord)
{
    const double x = LW_PI / fmax(depth, LEAST_DEPTH), b = place_of(x);
    const double t = place_of((1.0 - flap_chord) * x);
    const double cosine = (0.5 * (b + 1.0) - t) / (0.5 * (b - 1.0));
    return (plate){sqrt(b), b, x, lw_acos(fmin(fmax(cosine, -1.0), 1.0))};
}

// int of sqrt((t - 1)/(b - t)) / t dt from the hinge on.
static double over_place(const plate *p)
{
    const double half = 0.5 * p->hinge;
    return LW_PI - p->hinge - 2.0 / p->s * lw_atan2(lw_cos(half), p->s * lw_sin(half));
}

// Flap's share of the lift, of all of it when the hinge is at the nose.
static double flap_share(const plate *p)
{
    const double whole = 0.5 * LW_PI * (p->s - 1.0) * (p->s - 1.0);
    const double lever = 0.5 * (p->b - 1.0) * (LW_PI - p->hinge + lw_sin(p->hinge));
    return (lever - p->s * over_place(p)) / whole;
}

#define STEPS 64

// Adds a stretch of the chord's lift and its moment about the nose [chords], by the flap or by the
// whole plate. Places crowd at the hinge, where the pressure has no bound.
LW_CLONES
static void add_load(const plate *p, bool by_flap, double end, double sum[2])
{
    for (int first = 0; first < STEPS; first += LW_WIDTH) {
        lw_lanes r, s, c, sine, cosine;
        LW_EACH_LANE (i) r[i] = (first + i + 0.5) / STEPS;
        const lw_lanes theta = p->hinge + (end - p->hinge) * r * r;
        const lw_lanes width = fabs(end - p->hinge) * 2.0 * r / (double)STEPS;
        lw_lanes_sincos(0.5 * theta, &s, &c);
        lw_lanes_sincos(theta, &sine, &cosine);
        lw_lanes u = c / s;
        if (by_flap) {
            const lw_lanes up = lw_lanes_sin(0.5 * (theta + p->hinge));
            const lw_lanes down = lw_lanes_sin(0.5 * (theta - p->hinge));
            u = ((LW_PI - p->hinge) * u + lw_lanes_log(lw_lanes_abs(up / down))) / LW_PI;
        }
        const lw_lanes t = 0.5 * (p->b + 1.0) - 0.5 * (p->b - 1.0) * cosine;
        const lw_lanes lift = u * (t - 1.0) / t * 0.5 * (p->b - 1.0) * sine * width;
        const lw_lanes moment = lift * (t - 1.0 - lw_lanes_log(t)) / p->x;
        LW_EACH_LANE (i) sum[0] += lift[i], sum[1] += moment[i];
    }
}

static double centre_of(const plate *p, bool by_flap)
{
    double sum[2] = {0.0, 0.0};
    add_load(p, by_flap, 0.0, sum);
    add_load(p, by_flap, LW_PI, sum);
    return sum[1] / sum[0];
}

lw_face lw_face_of(double depth, double flap_chord)
{
    const plate p = plate_of(depth, flap_chord);
    const bool has_flap = flap_chord > 0.0;
    const plate whole = {p.s, p.b, p.x, 0.5 * LW_PI};  // parted anywhere
    const double rise = p.s - 1.0;
    return (lw_face){.slope = LW_PI * rise * rise / (p.b - 1.0 - 2.0 * lw_log(p.s)),
                     .flap_share = has_flap ? flap_share(&p) : 0.0,
                     .flap_drag = has_flap ? p.s * over_place(&p) / (LW_PI * rise) : 0.0,
                     .centre = centre_of(&whole, false),
                     .flap_centre = has_flap ? centre_of(&p, true) : 0.25};
}

double lw_face_lift(double slope, double induced, double angle, double number)
{
    const lw_lanes x = lw_face_angle(lw_all(angle), lw_all(fmax(number, 1e-6)));
    return (lw_face_rise(lw_all(slope), lw_all(induced), x) * x)[0];
}
