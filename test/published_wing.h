// published_wing.h - functions that test/published/ names: wings on a lattice.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_PUBLISHED_WING_H
#define LW_TEST_PUBLISHED_WING_H

#include <math.h>

#include "lullwise/wing.h"
#include "test/published_row.h"
#include "test/wings.h"

// The load at one radian of a wing laid as asked.
static lw_wing_load lattice_load(lw_wing wing, lw_wing_mesh mesh, double depth)
{
    static lw_wing_lattice lattice;
    lw_wing_load load = {0};
    const lw_wing_place place = {depth, 0.0};
    if (lw_wing_lay(&lattice, &wing, mesh, place) != LW_WING_OK) return (lw_wing_load){.lift = NAN};
    lw_wing_load_at(&lattice, (lw_wing_flow){.alpha = 1.0}, &load);
    return load;
}

// The line: aspect, taper.
static lw_wing_load discrete_line(const double *a)
{
    const lw_wing_mesh mesh = {LW_WING_LINE, LW_WING_COSINE, 64, 1};
    return lattice_load(straight_wing(a[0], a[1], 0.0, 2.0 * LW_PI), mesh, LW_WING_DEEP);
}
static double discrete_line_slope(const double *a) { return discrete_line(a).lift; }
static double discrete_line_delta(const double *a)
{
    return 1.0 / discrete_line(a).efficiency - 1.0;
}
static double discrete_line_tau(const double *a)
{
    return LW_PI * a[0] * (1.0 / discrete_line(a).lift - 0.5 / LW_PI) - 1.0;
}

// c_l of the strip that is loaded most, over C_L.
static double crest_of(const lw_wing_load *load, int strips)
{
    double most = 0.0;
    for (int k = 0; k < strips; k++) most = fmax(most, load->section_lift[k]);
    return most / load->lift;
}
static double discrete_line_crest(const double *a)
{
    const lw_wing_load load = discrete_line(a);
    return crest_of(&load, 64);
}

// A = 5, swept back 45 degrees: even panels a side, rows.
static double swept_slope(const double *a)
{
    const lw_wing_mesh mesh = {LW_WING_LATTICE, LW_WING_EVEN, 2 * (int)a[0], (int)a[1]};
    return lattice_load(straight_wing(5.0, 1.0, 0.25 * LW_PI, 2.0 * LW_PI), mesh, LW_WING_DEEP)
        .lift;
}

// Rectangular flat plate: aspect, depth / chord, with the usual lattice.
static lw_wing_load plate(double aspect, double depth)
{
    return lattice_load(straight_wing(aspect, 1.0, 0.0, 2.0 * LW_PI), lw_wing_mesh_usual(), depth);
}
static double plate_slope(const double *a) { return plate(a[0], LW_WING_DEEP).lift; }
static double plate_efficiency(const double *a) { return plate(a[0], LW_WING_DEEP).efficiency; }
static double plate_crest(const double *a)
{
    const lw_wing_load load = plate(a[0], LW_WING_DEEP);
    return crest_of(&load, lw_wing_mesh_usual().strips);
}
static double shallow_lift(const double *a)
{
    return plate(a[0], a[1]).lift / plate(a[0], LW_WING_DEEP).lift;
}
static double shallow_drag(const double *a) { return 1.0 / plate(a[0], a[1]).efficiency; }
static double shallow_section(const double *a)  // middle strip of an endless plate: depth / chord
{
    return plate(1e5, a[0]).section_lift[16] / (2.0 * LW_PI);
}

// Drag of an elliptic load from its image, as a part of its own: gap / span.
static double lattice_biplane(const double *a)
{
    static lw_wing_lattice lattice;
    double load[LW_WING_STRIPS], drag[2];
    const int strips = 32;
    const lw_wing wing = elliptic_wing(10.0, strips);
    for (int i = 0; i < 2; i++) {
        const lw_wing_place place = {i == 0 ? LW_WING_DEEP : 0.5 * a[0], 0.0};
        lw_wing_lay(&lattice, &wing, (lw_wing_mesh){LW_WING_LINE, LW_WING_COSINE, strips, 1},
                    place);
        for (int k = 0; k < strips; k++)
            load[k] = sqrt(1.0 - 4.0 * lattice.strip[k].y * lattice.strip[k].y);
        drag[i] = lw_wing_wake_drag(&lattice, load);
    }
    return drag[1] / drag[0] - 1.0;
}

// clang-format off
#define PUBLISHED_WING                                          \
    {"discrete_line_slope", "1/rad", 2, discrete_line_slope},   \
    {"discrete_line_delta", "-",     2, discrete_line_delta},   \
    {"discrete_line_tau",   "-",     2, discrete_line_tau},     \
    {"discrete_line_crest", "-",     2, discrete_line_crest},   \
    {"plate_crest",         "-",     1, plate_crest},           \
    {"swept_slope",         "1/rad", 2, swept_slope},           \
    {"plate_slope",         "1/rad", 1, plate_slope},           \
    {"plate_efficiency",    "-",     1, plate_efficiency},      \
    {"shallow_lift",        "-",     2, shallow_lift},          \
    {"shallow_drag",        "-",     2, shallow_drag},          \
    {"shallow_section",     "-",     1, shallow_section},       \
    {"lattice_biplane",     "-",     1, lattice_biplane}
// clang-format on

#endif
