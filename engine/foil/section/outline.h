// outline.h - inside the section folder: how outlines are put together.
// SPDX-License-Identifier: MIT

#ifndef LW_OUTLINE_H
#define LW_OUTLINE_H

#include "lullwise/profile.h"

// Splines through the count points of the outline, which run clockwise from the tail.
void lw_outline_smooth(lw_outline *outline);

// The point of the outline that lies farthest from its tail: s there.
double lw_outline_nose(const lw_outline *outline);

// Puts points between those of an outline from coordinates, as many as there is room for.
void lw_outline_fill(lw_outline *outline);

// The outline through every second of the points given, counted from the nose, and both tails;
// false when that leaves too few.
bool lw_outline_thin(const lw_outline *from, lw_outline *thin);

// Half thicknesses of the built-in families at x, in chords.
double lw_thickness_four_digit(double t, double x);

// Six series: points of the upper side for i = 0 (nose) to `steps` (tail); family 3..6 for 63..66.
bool lw_thickness_six(int family, double t, int steps, double *x, double *y);

#endif
