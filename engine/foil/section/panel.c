// panel.c - integrals of vortices and sources over a straight panel.
// SPDX-License-Identifier: MIT
//
// In the panel's own axes: X along it from its first end, Y to its left, u = X - xi for an element
// at xi, so that u runs from u_1 = X to u_2 = X - L.

#include "foil/section/panel.h"

#include <math.h>

#include "lullwise/base.h"
#include "lullwise/elementary.h"

typedef struct seen {
    double u_1, u_2, Y;  // the ends, seen from the point
    double r_1, r_2;     // squares of the distances
    double ln_1, ln_2;   // their logarithms; 0 at an end itself
} seen;

static double ln_or_0(double square) { return square > 1e-28 ? lw_log(square) : 0.0; }

static seen seen_from(const lw_panel *p, double x, double y)
{
    const double dx = x - p->x, dy = y - p->y;
    const double X = dx * p->t_x + dy * p->t_y, Y = dy * p->t_x - dx * p->t_y;
    const double u_2 = X - p->length;
    const double r_1 = X * X + Y * Y, r_2 = u_2 * u_2 + Y * Y;
    return (seen){X, u_2, Y, r_1, r_2, ln_or_0(r_1), ln_or_0(r_2)};
}

lw_panel lw_panel_of(const double *x, const double *y, int from)
{
    const double dx = x[from + 1] - x[from], dy = y[from + 1] - y[from];
    const double length = sqrt(dx * dx + dy * dy);
    return (lw_panel){x[from], y[from], dx / length, dy / length, length};
}

//     2 pi psi = int gamma 1/2 ln(u^2 + Y^2) d xi
lw_ends lw_panel_vortex(const lw_panel *panel, double x, double y)
{
    const seen s = seen_from(panel, x, y);
    const double L = panel->length, h = fabs(s.Y);
    const double angle = h > 0.0 ? lw_atan2(s.u_1, h) - lw_atan2(s.u_2, h) : 0.0;
    const double even = 0.5 * (s.u_1 * s.ln_1 - s.u_2 * s.ln_2) - L + h * angle;
    const double rest = 0.25 * (s.r_1 * (s.ln_1 - 1.0) - s.r_2 * (s.ln_2 - 1.0));
    const double second = (s.u_1 * even - rest) / L;  // of vorticity xi / L
    return (lw_ends){(even - second) / (2.0 * LW_PI), second / (2.0 * LW_PI)};
}

// int of the angle d u: u atan2(u, h) - h/2 ln(u^2 + h^2) with h = -Y for a panel of the section;
// for the wake the angle counts from upstream.
double lw_panel_source(const lw_panel *panel, double x, double y, bool is_wake)
{
    const seen s = seen_from(panel, x, y);
    double first, second;
    if (is_wake) {
        first = s.u_1 * lw_atan2(-s.Y, -s.u_1) + 0.5 * s.Y * s.ln_1;
        second = s.u_2 * lw_atan2(-s.Y, -s.u_2) + 0.5 * s.Y * s.ln_2;
    } else {
        first = s.u_1 * lw_atan2(s.u_1, -s.Y) + 0.5 * s.Y * s.ln_1;
        second = s.u_2 * lw_atan2(s.u_2, -s.Y) + 0.5 * s.Y * s.ln_2;
    }
    return (first - second) / (2.0 * LW_PI);
}

// Apart, and not inlined: side by side gcc 12 makes one fused instruction of a b - c d and a d + c
// b where the machine has it, -ffp-contract=off or not, and the bits would differ from machine to
// machine.
__attribute__((noinline)) static double sum_of_products(double a, double b, double c, double d)
{
    return a * b + c * d;
}

static lw_plane_vector turned(const lw_panel *p, double along, double left)
{
    return (lw_plane_vector){sum_of_products(along, p->t_x, -left, p->t_y),
                             sum_of_products(along, p->t_y, left, p->t_x)};
}

// int Y / r^2 du and int u / r^2 du
typedef struct pulls {
    double across, along;
} pulls;

static pulls pulls_of(const seen *s)
{
    const double h = fabs(s->Y);
    const double angle = lw_atan2(s->u_1, h) - lw_atan2(s->u_2, h);
    return (pulls){copysign(angle, s->Y), 0.5 * (s->ln_1 - s->ln_2)};
}

void lw_panel_vortex_velocity(const lw_panel *panel, double x, double y, lw_plane_vector ends[2])
{
    const seen s = seen_from(panel, x, y);
    const pulls p = pulls_of(&s);
    const double L = panel->length;
    const double u_second = (s.u_1 * p.across - s.Y * p.along) / L;
    const double v_second = -(s.u_1 * p.along - L + s.Y * p.across) / L;
    const double per = 1.0 / (2.0 * LW_PI);
    ends[0] = turned(panel, per * (p.across - u_second), per * (-p.along - v_second));
    ends[1] = turned(panel, per * u_second, per * v_second);
}

lw_plane_vector lw_panel_source_velocity(const lw_panel *panel, double x, double y)
{
    const seen s = seen_from(panel, x, y);
    const pulls p = pulls_of(&s);
    const double per = 1.0 / (2.0 * LW_PI);
    return turned(panel, per * p.along, per * p.across);
}
