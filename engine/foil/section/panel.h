// panel.h - inside the section folder: what vortices and sources on a straight panel do.
// SPDX-License-Identifier: MIT

#ifndef LW_PANEL_H
#define LW_PANEL_H

#include "lullwise/profile.h"

// A panel from (x, y) in the direction of the unit vector (t_x, t_y); the outside of a section
// lies to its left.
typedef struct lw_panel {
    double x, y, t_x, t_y, length;
} lw_panel;

lw_panel lw_panel_of(const double *x, const double *y, int from);

// Shares of the two ends of the panel.
typedef struct lw_ends {
    double first, second;
} lw_ends;

// Stream function at a point for vorticity (clockwise) of 1 at one end falling to 0 at the other.
lw_ends lw_panel_vortex(const lw_panel *panel, double x, double y);

// Stream function for a source of strength 1 per length. It jumps across a line that leaves a
// panel of the section outwards, and one of the wake downstream.
double lw_panel_source(const lw_panel *panel, double x, double y, bool is_wake);

typedef struct lw_plane_vector {
    double x, y;
} lw_plane_vector;

// Velocities at a point off the panel.
void lw_panel_vortex_velocity(const lw_panel *panel, double x, double y, lw_plane_vector ends[2]);
lw_plane_vector lw_panel_source_velocity(const lw_panel *panel, double x, double y);

#endif
