// foil_curves.h - a foil under the surface, worked out once at every depth that flight may ask for.
// SPDX-License-Identifier: MIT

#ifndef LW_FOIL_CURVES_H
#define LW_FOIL_CURVES_H

#include "lullwise/craft.h"
#include "lullwise/wing.h"

// The lattice a craft is prepared with: one row of 24 strips, and two where the surface is nearer
// than a chord and a half. Within 0.4 % of four rows of 32 from 0.1 m down (test/test_craft.c).
lw_wing_mesh lw_foil_mesh(double depth_in_chords);

// Fills slope, induced, span_share, flap_lift and, when there is a foil behind, downwash. `at`:
// origin of the foil behind, in this one's axes. Depths below 5 mm count as 5 mm. Uses 0.6 MB of
// stack.
void lw_foil_curves(lw_foil_craft *foil, const lw_wing *wing, const lw_wing *behind,
                    lw_wing_point at);

#endif
