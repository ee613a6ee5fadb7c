// hull_shape.h - hulls by formula and by sections: how they float, and what it costs to drive them.
// SPDX-License-Identifier: MIT

#ifndef LW_HULL_SHAPE_H
#define LW_HULL_SHAPE_H

#include "lullwise/base.h"

// --- a mathematical hull, its hydrostatics and its wave resistance

// Wigley's hull: y = B/2 (1 - (2x/L)^2) (1 - (z/T)^2), z down from the waterline.  [wigley-1934]
typedef struct lw_hull_form {
    double length;  // L [m]
    double beam;    // B [m]
    double draft;   // T [m]
} lw_hull_form;

typedef struct lw_hydrostatics {
    double volume;             // [m^3]  4/9 L B T
    double waterplane;         // [m^2]  2/3 L B
    double wetted;             // [m^2]  by quadrature
    double centre_height;      // KB [m] above the keel: 5/8 T
    double metacentre_across;  // BM [m] 9/105 B^2 / T
    double metacentre_along;   // BM [m] 3/40 L^2 / T
} lw_hydrostatics;

lw_hydrostatics lw_hull_form_hydrostatics(lw_hull_form form);

// Wave resistance by thin-ship theory, as a drag area: R_w / (1/2 rho V^2) [m^2].
//
//     R_w = 4 rho g^2 / (pi V^2) int J^2 c^2 du,  u from 0                [michell-1898]
//     J = int int y_x e^(-n c^2 z) sin(n c x) dx dz,   n = g / V^2,  c = cosh u
//
// The inner integrals are in closed form, the outer by the trapezoid rule (exact to all orders at
// u = 0, where the integrand is even), fine enough for the waves along the hull.
// Holds for    slender hulls, B / L up to 0.15, at Fn 0.15..1.5; the least speed taken is Fn 0.1.
// Leaves out   sinkage and trim, viscosity, the transom: humps and hollows come out too strong
//              below Fn 0.4, and the level within 25 % of a tank's.
double lw_hull_form_wave_area(lw_hull_form form, double speed);

// Drag coefficient, on its base, of a wedge that parts the water with a cavity behind it.
//
//     C_D = 4 gamma / pi / (1 + 0.65 gamma),   gamma: half its angle [rad]
//
// 4 gamma / pi of thin wedges [tulin-1953]; 0.65 fitted to the whole theory [kirchhoff-1869].
// Holds for    half angles to 30 deg, within 2 %; no gravity.
double lw_hull_form_wedge_drag(double half_angle);

// --- a hull given by its sections: how it floats, and what it costs to drive it
//
// Describe the hull by sections, cut it with the water at any draft and trim, then ask what that
// cut displaces and resists. Axes of the hull: x forward, z up from any base line. See doc/hull.md.

#define LW_HULL_STATIONS   41  // greatest numbers
#define LW_HULL_POINTS     25
#define LW_HULL_WATERLINES 24
#define LW_HULL_LENGTHS    48  // of the cut: even steps from end to end
#define LW_HULL_LEVELS     12  // and from keel to water

typedef struct lw_hull_section {
    double x;                       // [m] of the station
    int count;                      // points, from the keel up to the deck
    double height[LW_HULL_POINTS];  // z [m]
    double half[LW_HULL_POINTS];    // half-breadth y [m]; above 0 at the keel for a flat bottom
} lw_hull_section;

typedef struct lw_hull_shape {
    int count;
    lw_hull_section section[LW_HULL_STATIONS];  // from the transom to the bow
} lw_hull_shape;

// clang-format off
#define LW_HULL_STATUS_LIST(X)                                                   \
    X(OK,           "ok")                                                        \
    X(STATIONS_COUNT, "a hull has 3 to 41 stations")                               \
    X(POINTS_COUNT, "a section has 3 to 25 points")                              \
    X(NOT_A_NUMBER, "a number is not finite")                                    \
    X(ORDER,        "stations run forward from the transom, each beyond the last") \
    X(KEEL,         "the keel is not below the deck")                            \
    X(HEIGHTS,      "heights of a section rise from the keel to the deck")       \
    X(BREADTH,      "a half-breadth is below zero, or the hull has none at all") \
    X(DIMENSIONS,   "no hull has these dimensions")                              \
    X(DRY,          "the hull is clear of the water")                            \
    X(DECK_UNDER,   "water would stand over the deck")                           \
    X(NO_BALANCE,   "the hull does not float so")
// clang-format on
#define LW_AS_HULL_STATUS(name, text) LW_HULL_##name,
typedef enum lw_hull_status {
    LW_HULL_STATUS_LIST(LW_AS_HULL_STATUS) LW_HULL_STATUS_COUNT
} lw_hull_status;

const char *lw_hull_status_text(lw_hull_status status);

// The first thing that is wrong with a hull, and where; -1 where that says nothing.
typedef struct lw_hull_fault {
    lw_hull_status status;
    int station, point;
} lw_hull_fault;

lw_hull_fault lw_hull_shape_check(const lw_hull_shape *shape);

// --- hulls from other descriptions; the shape is left alone when one is refused

// Half-breadths at the same heights for all stations: a table of offsets.
typedef struct lw_hull_offsets {
    int stations, waterlines;
    double x[LW_HULL_STATIONS];
    double keel[LW_HULL_STATIONS];      // z [m], half-breadth there 0
    double height[LW_HULL_WATERLINES];  // z [m], rising; those below a keel do not count there
    double half[LW_HULL_STATIONS][LW_HULL_WATERLINES];
} lw_hull_offsets;

lw_hull_fault lw_hull_shape_of_offsets(lw_hull_shape *shape, const lw_hull_offsets *offsets);

// A hull of our own lines with these measurements [judged]: parabolas of higher order for the
// waterline and the rocker, sections full as 1 - (1 - z/T)^m, topsides straight up. Transom at
// x = 0 and just touching the water, stem upright with 0.4 of the draft.
typedef struct lw_hull_dimensions {
    double length, beam, draft;  // L, B, T [m] of the waterline
    double transom_beam;         // B_t [m]
    double block, waterplane;    // C_B, C_WP
    double freeboard;            // [m]
} lw_hull_dimensions;

lw_hull_status lw_hull_shape_of_dimensions(lw_hull_shape *shape, lw_hull_dimensions dimensions);

// Wigley's hull, midships at x = 0, topsides straight up.  [wigley-1934]
lw_hull_status lw_hull_shape_wigley(lw_hull_shape *shape, lw_hull_form form, double freeboard);

// --- the hull in the water

typedef struct lw_hull_attitude {
    double draft;  // [m]   height of the water above z = 0 at x = 0
    double trim;   // [rad] bow up: the water stands at draft - x tan(trim)
} lw_hull_attitude;

// What is under water. Lengths along the hull's axes.
typedef struct lw_hull_floating {
    double volume;               // [m^3]
    double centre_x, centre_z;   // [m] of buoyancy
    double waterplane;           // [m^2]
    double waterplane_x;         // [m] of its middle
    double across, along;        // I_T, I_L [m^4] of the waterplane about its middle
    double wetted;               // [m^2] without the transom
    double length, beam, draft;  // [m] greatest, of the part under water
    double transom_area;         // [m^2]
    double transom_draft;        // [m]
} lw_hull_floating;

typedef struct lw_hull_cut {
    lw_hull_floating floating;
    lw_hull_attitude attitude;
    double aft, fore;                   // [m] ends of what is wet
    double draft[LW_HULL_LENGTHS + 1];  // [m] local, at even steps from aft to fore
    double half[LW_HULL_LENGTHS + 1][LW_HULL_LEVELS + 1];  // [m] from keel to water in even steps
} lw_hull_cut;

// Cuts the hull with the water. DRY and DECK_UNDER leave the cut alone.
// Holds for    an upright hull, trim up to 10 degrees either way.
lw_hull_status lw_hull_cut_at(lw_hull_cut *cut, const lw_hull_shape *shape,
                              lw_hull_attitude attitude);

// Draft and trim at which a volume [m^3] floats with its weight at x [m]; the cut is made there.
lw_hull_status lw_hull_float(lw_hull_cut *cut, const lw_hull_shape *shape, double volume, double x);

// --- what it costs to drive: drag areas, R / (1/2 rho V^2) [m^2]

// Wave resistance by thin-ship theory, for the hull as it is cut:
//
//     R_w = 4 rho g^2 / (pi V^2) int J^2 c^2 du,   u from 0              [michell-1898]
//     J = n c int int y e^(-n c^2 d) e^(i n c x) dd dx,   n = g / V^2,  c = cosh u,  d depth
//
// y in parabolas between the cut's points, their integrals exact [filon-1928]. A transom in the
// water is followed by a hollow of length V sqrt(2 T_t / g), parabolic to its end [judged].
// Holds for    B / L up to 0.15, Fn 0.15..1.5 on the length of the cut; slower than Fn 0.1 taken
//              as 0.1.
// Leaves out   lift of the bottom, spray, viscosity; up to 25 % off a tank's.
double lw_hull_wave_area(const lw_hull_cut *cut, double speed);

// (1 + k) C_F S with the line of the towing tanks [ittc-57], on the length of the cut.
double lw_hull_friction_area(const lw_hull_cut *cut, double speed, double viscosity, double k);

#endif
