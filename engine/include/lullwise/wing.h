// wing.h - a foil of any planform, described by stations, and where it is in the water.
// SPDX-License-Identifier: MIT
//
// What it does there is the matter of wing_lattice.h. Axes of the foil: x forward, y to port, z up,
// origin where the depth is measured, as a rule the middle of the quarter-chord line.

#ifndef LW_WING_H
#define LW_WING_H

#include "lullwise/base.h"

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

#endif
