// wing.h - a foil of any planform by stations; lift, drag and load under the surface by a lattice.
// SPDX-License-Identifier: MIT

#ifndef LW_WING_H
#define LW_WING_H

#include "lullwise/base.h"

// --- a foil of any planform, described by stations, and where it is in the water
//
// What it does there is told below. Axes of the foil: x forward, y to port, z up,
// origin where the depth is measured, as a rule the middle of the quarter-chord line.

#define LW_WING_STATIONS 72  // greatest numbers
#define LW_WING_STRIPS   64
#define LW_WING_ROWS     8
#define LW_WING_PANELS   256  // strips x rows

// Both sides of the wing are alike; between stations everything runs straight.
typedef struct lw_wing_station {
    double y;          // [m]     from the middle, 0 at the first station
    double chord;      // c [m]   0 only at the tip
    double x, z;       // [m]     quarter chord: forward and above the origin
    double twist;      // [rad]   nose up
    double zero_lift;  // alpha_0 [rad] of the section
    double slope;      // a_0 [1/rad]   of the section
    double moment;     // c_m0    of the section about its quarter chord, nose up
} lw_wing_station;

typedef struct lw_wing_flap {
    double inner, outer;  // [m] from the middle, on both sides
    double angle_share;   // tau  angle of the section that a unit of flap angle is worth
    double moment;        // d c_m / d flap [1/rad], flap down positive
} lw_wing_flap;

typedef struct lw_wing {
    int count;
    lw_wing_station station[LW_WING_STATIONS];
    lw_wing_flap flap;
} lw_wing;

// clang-format off
#define LW_WING_STATUS_LIST(X)                                                           \
    X(OK,           "ok")                                                                \
    X(COUNT,        "a wing has 2 to 72 stations")                                       \
    X(NOT_A_NUMBER, "a number of a station, the flap or the place is not finite")        \
    X(ORDER,        "stations run from the middle (0 m) outward")                        \
    X(CHORD,        "a chord is not above zero; only a tip may end in a point")          \
    X(SLOPE,        "a section's lift slope is not above zero")                          \
    X(FLAP,         "the flap does not end outside of where it begins, or leaves the wing") \
    X(MESH,         "a lattice has 2 to 64 strips, 1 to 8 rows, 256 panels at most; a line 1 row") \
    X(HEEL,         "heel lies outside -90..90 degrees")                                 \
    X(SINGULAR,     "the lattice has no solution")
// clang-format on
#define LW_AS_WING_STATUS(name, text) LW_WING_##name,
typedef enum lw_wing_status {
    LW_WING_STATUS_LIST(LW_AS_WING_STATUS) LW_WING_STATUS_COUNT
} lw_wing_status;

const char *lw_wing_status_text(lw_wing_status status);

typedef enum lw_wing_model {
    LW_WING_LATTICE,  // horseshoes at 1/4 of each panel, flow tangent at 3/4
    LW_WING_LINE      // Prandtl's line: straight wings of high aspect, as a check
} lw_wing_model;

typedef enum lw_wing_spacing {
    LW_WING_COSINE,  // strips finest at the tips
    LW_WING_EVEN
} lw_wing_spacing;

typedef struct lw_wing_mesh {
    lw_wing_model model;
    lw_wing_spacing spacing;
    int strips, rows;  // tip to tip; nose to tail
} lw_wing_mesh;

lw_wing_mesh lw_wing_mesh_usual(void);  // lattice, cosine, 32 strips of 4 rows

#define LW_WING_DEEP 1e6  // [m] a depth from which on there is no surface

typedef struct lw_wing_place {
    double depth;  // h [m] of the origin below the surface
    double heel;   // phi [rad] about x, port side up: to windward on starboard tack
} lw_wing_place;

typedef struct lw_wing_point {
    double x, y, z;  // [m] forward, to port, up
} lw_wing_point;

// What is wrong with a wing or mesh, before anything is computed.
lw_wing_status lw_wing_check(const lw_wing *wing, lw_wing_mesh mesh, lw_wing_place place);

// --- lift, drag, load and downwash of a wing under the surface, by a lattice
//
// Lay a lattice over a wing at a depth and heel, then ask for loads: one factored matrix serves
// every angle. See doc/wing.md.

// A strip from nose to tail. Points in water axes: y level, z up from the surface.
typedef struct lw_wing_strip {
    double y;              // [m] of its middle along the wing, to port
    double width;          // [m] along the wing's y
    double chord;          // [m] at its middle
    double twist;          // [rad] with the zero-lift angle taken off
    double slope, moment;  // of the section
    double flapped;        // part of its width with a flap
    double dihedral;       // [rad] against the wing's y
    double sine, cosine;   // of its slope against the surface, heel included
    lw_wing_point middle;  // quarter chord at y
} lw_wing_strip;

typedef struct lw_wing_panel {
    lw_wing_point port, starboard;  // ends of its bound vortex, water axes
    lw_wing_point control;
} lw_wing_panel;

// A wing at a place, ready to answer. About 0.6 MB; its owner is the caller.
typedef struct lw_wing_lattice {
    lw_wing_mesh mesh;
    lw_wing_place place;
    bool has_surface;
    double span, area, mean_chord;  // b [m], S [m^2] of the whole wing; c = S / b
    double flap_share, flap_moment;
    double wet_from, wet_to;             // [m] along y: what is under water; equal when nothing is
    double depth_port, depth_starboard;  // [m] of the tips' quarter chords; below 0 in the air
    lw_wing_strip strip[LW_WING_STRIPS];
    lw_wing_panel panel[LW_WING_PANELS];           // row by row within a strip
    double wake[LW_WING_STRIPS * LW_WING_STRIPS];  // far downwash at a strip of one of each
    double matrix[LW_WING_PANELS * LW_WING_PANELS];
    int pivot[LW_WING_PANELS];
} lw_wing_lattice;

typedef struct lw_wing_flow {
    double alpha;  // [rad] of the wing's x axis to the flow, in the wing's own plane of symmetry
    double flap;   // [rad] down
    double roll;   // p b / (2 V) [-] about x, port side going up
} lw_wing_flow;

// Coefficients on 1/2 rho V^2 S of the whole wing, whether wet or not.
typedef struct lw_wing_load {
    double lift;                          // C_L   along the wing's z
    double side;                          // C_Y   along the wing's y; 0 without dihedral
    double drag;                          // C_Di  induced, from the far wake
    double pitch;                         // C_m   on S c, nose up, about the origin
    double roll;                          // C_l   on S b, port side up, about the origin
    double centre;                        // [m]   y of the lift; 0 when there is none
    double efficiency;                    // e = C_L^2 / (pi A C_Di); 0 when there is no drag
    double section_lift[LW_WING_STRIPS];  // c_l of each strip
    double circulation[LW_WING_PANELS];   // Gamma / V [m] of each panel
} lw_wing_load;

// Lays the lattice over the part of the wing that is under water, and factors its matrix:
//
//     sum_j (w_ij + w'_ij) Gamma_j + (2/a_0 - 1/pi) Gamma_strip / c = V alpha_i
//
// w: downwash of a horseshoe [weissinger-1947] [falkner-1943]; w': of its image above the surface,
// with the same circulation. The last term gives each section its own lift slope.
// Holds for    small angles; V / sqrt(g h) above about 5 for the image.
// Leaves out   thickness, roll-up of the wake, waves, air drawn down.
lw_wing_status lw_wing_lay(lw_wing_lattice *lattice, const lw_wing *wing, lw_wing_mesh mesh,
                           lw_wing_place place);

void lw_wing_load_at(const lw_wing_lattice *lattice, lw_wing_flow flow, lw_wing_load *load);

typedef struct lw_wing_slopes {
    double lift;       // d C_L / d alpha [1/rad]
    double flap;       // d C_L / d flap  [1/rad]
    double roll;       // d C_l / d alpha [1/rad]: not 0 when heeled
    double damping;    // d C_l / d (p b / 2V), below 0
    double zero_lift;  // [rad] alpha of no lift, flap in line
} lw_wing_slopes;

lw_wing_slopes lw_wing_slopes_of(const lw_wing_lattice *lattice);

// Induced drag of a given load, Gamma / V [m] of each strip, as C_Di.
double lw_wing_wake_drag(const lw_wing_lattice *lattice, const double *circulation);

// Speed that the wing and its image add to the flow at a point of the wing's axes, over V. Behind
// a lifting wing z is below zero: the downwash angle. Between strips it is interpolated, so that
// the single vortices of the wake do not show.
lw_wing_point lw_wing_wash(const lw_wing_lattice *lattice, const lw_wing_load *load,
                           lw_wing_point at);

// Mean of the upwash over another wing of the same boat whose origin stands at `origin` of this
// one's axes, weighted by its chords; what is above water does not count. A rudder foil's angle of
// attack grows by it.
double lw_wing_wash_over(const lw_wing_lattice *lattice, const lw_wing_load *load,
                         const lw_wing *other, lw_wing_point origin);

#endif
