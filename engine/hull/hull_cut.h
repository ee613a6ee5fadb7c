// hull_cut.h - cuts one hull many times: its lines are worked out before.
// SPDX-License-Identifier: MIT

#ifndef LW_HULL_CUT_LINES_H
#define LW_HULL_CUT_LINES_H

#include <stddef.h>

#include "hull/section_curve.h"

// The wetted area costs as much as the rest of the cut: none (it is 0), by every other point (a
// fifth of the cost), or as lw_hull_cut_at has it.
typedef enum lw_hull_area {
    LW_HULL_AREA_NONE,
    LW_HULL_AREA_COARSE,
    LW_HULL_AREA_FINE
} lw_hull_area;

// As lw_hull_cut_at.
lw_hull_status lw_hull_cut_lines(lw_hull_cut *cut, const lw_hull_lines *lines,
                                 lw_hull_attitude attitude, lw_hull_area area);

// lw_hull_wave_area at some speeds, rising, by every other point of the cut: a twentieth of the
// cost.
void lw_hull_wave_areas(const lw_hull_cut *cut, const double *speeds, size_t count, double *areas);

#endif
