// foil_curves.c - slope, induced drag and downwash of a foil over its depth, by a lattice.
// SPDX-License-Identifier: MIT

#include "boat/foil_curves.h"

#include <math.h>

#include "solve/curve.h"
#include "solve/spline.h"

#define LEAST_DEPTH 0.005  // [m]

lw_wing_mesh lw_foil_mesh(double depth_in_chords)
{
    return (lw_wing_mesh){LW_WING_LATTICE, LW_WING_COSINE, 24, depth_in_chords < 1.5 ? 2 : 1};
}

// c_l of the strip that is loaded most: there the stall begins [anderson-1936].
static double most_loaded(const lw_wing_lattice *lattice, const lw_wing_load *load)
{
    double most = 0.0;
    for (int k = 0; k < lattice->mesh.strips; k++) most = fmax(most, load->section_lift[k]);
    return most;
}

// Shares of span and flap are alike at every depth within 1 and 0.3 %: the last stands.
static void at_depth(const lw_wing_lattice *lattice, lw_foil_craft *foil, int i,
                     const lw_wing *behind, lw_wing_point at)
{
    const lw_wing_slopes slopes = lw_wing_slopes_of(lattice);
    lw_wing_load load;
    lw_wing_load_at(lattice, (lw_wing_flow){.alpha = 0.1}, &load);
    foil->slope.value[i] = slopes.lift;
    foil->span_share = load.lift / most_loaded(lattice, &load);
    foil->induced.value[i] = load.drag / (load.lift * load.lift);
    foil->flap_lift = slopes.flap / slopes.lift;
    if (behind) {
        foil->downwash.value[i] = -lw_wing_wash_over(lattice, &load, behind, at) / load.lift;
    }
}

// Flat at the ends, beyond which the curve stands still: no corner as a foil comes out.
static void smooth(lw_curve *curve)
{
    lw_curve_smooth(curve);
    curve->slope[0] = curve->slope[LW_CURVE_KNOTS - 1] = 0.0;
}

// Knots at which a lattice is laid: all near the surface, fewer where depth changes little. Between
// them values go by a spline, within 2e-5 of what a lattice gives there.
static const int laid[] = {0,  1,  2,  3,  4,  5,  6,  7,  8,  9,  10, 11,
                           12, 14, 16, 18, 20, 24, 28, 32, 36, 40, 44, LW_CURVE_KNOTS - 1};
#define LAID ((int)(sizeof laid / sizeof laid[0]))

static void fill(lw_curve *curve)
{
    double s[LAID], y[LAID], slope[LAID], spare[LAID];
    for (int k = 0; k < LAID; k++) s[k] = laid[k], y[k] = curve->value[laid[k]];
    lw_spline_slopes(LAID, s, y, slope, spare);
    for (int k = 1; k < LAID; k++) {
        for (int i = laid[k - 1] + 1; i < laid[k]; i++)
            curve->value[i] = lw_spline_at(LAID, s, y, slope, i).value;
    }
}

void lw_foil_curves(lw_foil_craft *foil, const lw_wing *wing, const lw_wing *behind,
                    lw_wing_point at)
{
    lw_wing_lattice lattice;
    foil->slope = foil->induced = foil->downwash = (lw_curve){.step = LW_DEPTH_STEP};
    for (int k = 0; k < LAID; k++) {
        const lw_wing_place place = {.depth = fmax(laid[k] * LW_DEPTH_STEP, LEAST_DEPTH)};
        const lw_wing_status status =
            lw_wing_lay(&lattice, wing, lw_foil_mesh(place.depth / foil->chord), place);
        if (status != LW_WING_OK) continue;  // no lift at a depth that has no solution
        at_depth(&lattice, foil, laid[k], behind, at);
    }
    lw_curve *const curves[] = {&foil->slope, &foil->induced, &foil->downwash};
    for (int i = 0; i < 3; i++) fill(curves[i]), smooth(curves[i]);
}
