// flow.c - the perfect fluid around a profile: linear vorticity on straight panels.
// SPDX-License-Identifier: MIT

#include "foil/section/flow.h"

#include <math.h>
#include <stddef.h>

#include "foil/section/panel.h"
#include "lullwise/elementary.h"
#include "solve/linear.h"
#include "solve/linear_many.h"

#define INSIDE 0.1  // how far the tail's place lies from its end, in lengths of its panels

lw_tail lw_tail_of(const lw_profile *p)
{
    const int last = p->count - 1;
    const lw_panel below = lw_panel_of(p->x, p->y, 0), above = lw_panel_of(p->x, p->y, last - 1);
    const double x = above.t_x - below.t_x, y = above.t_y - below.t_y;
    const double per = 1.0 / sqrt(x * x + y * y), in = INSIDE * fmin(below.length, above.length);
    return (lw_tail){p->x[0] - in * per * x, p->y[0] - in * per * y, per * x, per * y};
}

// The two nodes at the tail are one place, so the last node's equation is another: there is no flow
// along the bisector inside the tail.
static void tail_equation(const lw_profile *p, double *row)
{
    const lw_tail tail = lw_tail_of(p);
    for (int j = 0; j <= p->count; j++) row[j] = 0.0;
    for (int panel = 0; panel < p->count - 1; panel++) {
        const lw_panel q = lw_panel_of(p->x, p->y, panel);
        lw_plane_vector ends[2];
        lw_panel_vortex_velocity(&q, tail.x, tail.y, ends);
        for (int end = 0; end < 2; end++)
            row[panel + end] += ends[end].x * tail.t_x + ends[end].y * tail.t_y;
    }
}

bool lw_flow_equations(const lw_profile *profile, lw_profile_room *room)
{
    const lw_profile *p = profile;
    const int n = p->count, stride = n + 1;
    for (int i = 0; i < n * stride; i++) room->matrix[i] = 0.0;
    for (int panel = 0; panel < n - 1; panel++) {
        const lw_panel q = lw_panel_of(p->x, p->y, panel);
        for (int i = 0; i < n - 1; i++) {
            const lw_ends ends = lw_panel_vortex(&q, p->x[i], p->y[i]);
            room->matrix[i * stride + panel] += ends.first;
            room->matrix[i * stride + panel + 1] += ends.second;
        }
    }
    for (int i = 0; i < n - 1; i++) room->matrix[i * stride + n] = -1.0;
    tail_equation(p, room->matrix + (size_t)(n - 1) * (size_t)stride);
    double *kutta = room->matrix + (size_t)n * (size_t)stride;
    for (int j = 0; j <= n; j++) kutta[j] = j == 0 || j == n - 1 ? 1.0 : 0.0;

    return lw_linear_factor(room->matrix, n + 1, room->pivot);
}

lw_profile_status lw_profile_flow_of(const lw_profile *profile, lw_profile_room *room,
                                     lw_profile_flow *flow)
{
    const int n = profile->count;
    if (n < 3 || !lw_flow_equations(profile, room)) return LW_PROFILE_NO_SOLUTION;
    // psi = y of the flow along, -x of the flow across
    for (int i = 0; i <= n; i++) {
        double *pair = room->right + 2 * (size_t)i;
        pair[0] = i < n - 1 ? -profile->y[i] : 0.0;
        pair[1] = i < n - 1 ? profile->x[i] : 0.0;
    }
    const lw_tail tail = lw_tail_of(profile);
    room->right[2 * (size_t)(n - 1)] = -tail.t_x;
    room->right[2 * (size_t)(n - 1) + 1] = -tail.t_y;
    lw_linear_solve_many(room->matrix, n + 1, room->pivot, room->right, 2);
    for (int i = 0; i < n; i++) {
        const double *pair = room->right + 2 * (size_t)i;
        flow->along[i] = pair[0];
        flow->across[i] = pair[1];
        if (!(fabs(flow->along[i]) + fabs(flow->across[i]) < 1e6)) return LW_PROFILE_NO_SOLUTION;
    }
    return LW_PROFILE_OK;
}

double lw_profile_speed(const lw_profile_flow *flow, int node, double alpha)
{
    return flow->along[node] * lw_cos(alpha) + flow->across[node] * lw_sin(alpha);
}

// The lowest of three pressures a little apart, by the parabola through them.
static double least_of(const double c_p[3], double a, double b)  // distances to the neighbours
{
    const double left = (c_p[1] - c_p[0]) / a, right = (c_p[2] - c_p[1]) / b;
    const double bend = (right - left) / (a + b);
    if (!(bend > 0.0)) return c_p[1];
    const double slope = (left * b + right * a) / (a + b);
    return c_p[1] - 0.25 * slope * slope / bend;
}

lw_profile_load lw_load_of_speeds(const lw_profile *p, const double *speed, double alpha)
{
    const double cosine = lw_cos(alpha), sine = lw_sin(alpha);
    lw_profile_load load = {.least_pressure = 1.0};
    double force_x = 0.0, force_y = 0.0;
    for (int i = 0; i < p->count - 1; i++) {
        const double dx = p->x[i + 1] - p->x[i], dy = p->y[i + 1] - p->y[i];
        const double first = 1.0 - speed[i] * speed[i];
        const double second = 1.0 - speed[i + 1] * speed[i + 1];
        // the speed is linear on a panel, and so its square is not
        const double mean = (first + second + 1.0 - speed[i] * speed[i + 1]) / 3.0;
        const double rise = (second - first) / 12.0;
        // pressure pushes to the right of the clockwise direction
        force_x += mean * dy;
        force_y -= mean * dx;
        const double x = 0.5 * (p->x[i] + p->x[i + 1]) - 0.25, y = 0.5 * (p->y[i] + p->y[i + 1]);
        load.moment += mean * (x * dx + y * dy) + rise * (dx * dx + dy * dy);
        if (i == 0 || first >= load.least_pressure) continue;
        load.least_pressure = first;
        load.least_at = p->x[i];
        const double before = speed[i - 1] * speed[i - 1];
        const double lengths[2] = {lw_panel_of(p->x, p->y, i - 1).length, sqrt(dx * dx + dy * dy)};
        const double around[3] = {1.0 - before, first, second};
        if (1.0 - before >= first && second >= first) {
            load.least_pressure = least_of(around, lengths[0], lengths[1]);
        }
    }
    load.lift = force_y * cosine - force_x * sine;
    return load;
}

lw_profile_load lw_profile_load_of(const lw_profile *profile, const lw_profile_flow *flow,
                                   double alpha)
{
    double speed[LW_NODES_MOST] = {0.0};
    for (int i = 0; i < profile->count; i++) speed[i] = lw_profile_speed(flow, i, alpha);
    lw_profile_load load = lw_load_of_speeds(profile, speed, alpha);
    // lift by the circulation, c_l = 2 Gamma / (V c), which panels give better than pressures
    load.lift = 0.0;
    for (int i = 0; i < profile->count - 1; i++) {
        load.lift += (speed[i] + speed[i + 1]) * lw_panel_of(profile->x, profile->y, i).length;
    }
    return load;
}
