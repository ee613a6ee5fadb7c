// polar.h - foil sections in water with friction, as smooth functions that forces read fast.
// SPDX-License-Identifier: MIT

#ifndef LW_POLAR_H
#define LW_POLAR_H

#include <stdbool.h>
#include <stddef.h>

#include "lullwise/boat.h"
#include "lullwise/boundary_layer.h"

// --- a foil section in water with friction, as smooth functions that forces can read fast
//
// Worked out once by panels and boundary layer (profile.h, boundary_layer.h), over lift, flap angle
// and Reynolds number; read in lanes by engine/foil/polar_read.h. How: doc/section.md.

#define LW_POLAR_FLAPS    5      // knots over the flap angle
#define LW_POLAR_LIFTS    17     // knots over lift
#define LW_POLAR_SPEEDS   5      // knots over ln Re, each twice the one before
#define LW_POLAR_REYNOLDS 4.5e5  // at which all is worked out
#define LW_POLAR_FASTER   1e6    // at which it is again with the flap in line, to see what changes
#define LW_POLAR_SLOWEST  1.5e5  // of the knots over ln Re

// What a polar is worked out from.
typedef struct lw_polar_shape {
    const char *designation;  // NULL: four digits of this thickness and zero-lift angle
    double thickness;         // t/c     [-]
    double zero_lift_angle;   // alpha_0 [rad]
    double flap_chord;        // E       [-]   0: no flap
    double flap_up;           //         [rad] flap's ends, trailing edge up negative
    double flap_down;         //         [rad]
    double smooth;            // x/c     [-]   the layer is turbulent from here at the latest,
    double waves;             // n       [-]   or once waves have grown e^n times
} lw_polar_shape;

// A row of layers: one flap angle at one Reynolds number, angles rising, from stall to stall; or
// one angle at rising Reynolds numbers.
#define LW_POLAR_POINTS 18
typedef struct lw_polar_point {
    double alpha, lift, drag, moment, suction;
} lw_polar_point;

typedef struct lw_polar_row {
    int count;
    int middle;  // the point whose nose meets the flow smoothly
    lw_polar_point point[LW_POLAR_POINTS];
    double most, most_alpha;    // at the stall upwards
    double least, least_alpha;  // and downwards
    double tried, filled;
    double is_shape;  // 0: the designation or the shape was none, and four digits stand in
} lw_polar_row;

// The rows of a polar: flap in line, the same faster, over the speeds, then the flap's other
// angles.
#define LW_POLAR_ROWS_PLAIN 3
#define LW_POLAR_ROWS       (LW_POLAR_ROWS_PLAIN + LW_POLAR_FLAPS - 1)
typedef struct lw_polar_rows {
    lw_polar_row row[LW_POLAR_ROWS];
} lw_polar_rows;

// A value over lift and flap with its slopes, each in knots.
typedef struct lw_polar_knot {
    double value, by_lift, by_flap, by_both;
} lw_polar_knot;

// A value over lift, with its slope in knots.
typedef struct lw_polar_pair {
    double value, slope;
} lw_polar_pair;

// What a flap angle does.
typedef struct lw_polar_bent {
    double worth;     // angle that the flap is worth [rad]
    double greatest;  // most lift upwards,
    double least;     // and downwards, as a positive number
    double moment;    // c_m at y = 0
} lw_polar_bent;

typedef struct lw_polar_flap_knot {
    lw_polar_bent value, slope;
} lw_polar_flap_knot;

// All doubles. Lift is counted as y = c_l - ideal_lift - ideal_per_flap delta, how far it lies from
// that at which the flow meets the nose smoothly.
typedef struct lw_polar {
    double slope;                      // a_0 [1/rad]
    double zero_lift_angle;            // [rad] as computed; a boat's own is measured
    double corner_2, half;             // of the bend of lift, polar_read.h
    double stall_share;                // bend's argument at the stall
    double slope_growth, most_growth;  // d ln a_0, d ln most per r, polar_read.h
    double ideal_lift, ideal_per_flap;
    double flap_first, flap_step;  // [rad]; step 0: no flap, the first knot serves
    double lift_first, lift_step;
    double moment_slope;  // d c_m / d y
    lw_polar_flap_knot bent[LW_POLAR_FLAPS];
    lw_polar_knot drag[LW_POLAR_FLAPS][LW_POLAR_LIFTS];     // c_d / c_d at y = 0, flap in line
    lw_polar_knot suction[LW_POLAR_FLAPS][LW_POLAR_LIFTS];  // -C_p at its lowest
    lw_polar_pair drag_in_line[LW_POLAR_LIFTS], suction_in_line[LW_POLAR_LIFTS];
    lw_polar_pair growth[LW_POLAR_LIFTS];  // d ln drag per r
    double log_re_first, log_re_step;      // of the next
    double drag_log[LW_POLAR_SPEEDS];      // ln c_d at y = 0, flap in line, over ln Re
    double tried, filled;  // conditions asked of the boundary layer, and those without an answer
} lw_polar;

// Room to work in: 0.8 MB, the caller's.
typedef struct lw_polar_room {
    lw_outline outline;
    lw_profile profile;
    lw_profile_room solving;
    lw_layer layer;
    lw_polar_rows rows;
} lw_polar_room;

// The section itself, its flap in line. False when the designation or the shape is none.
bool lw_polar_outline(const lw_polar_shape *shape, lw_outline *outline);

// How many rows the polar of a shape has; each of them by itself, in any order and anywhere; and
// the polar that they make. False when the designation or the shape is none: the polar is then that
// of four digits as measured. Where layers have no answer neighbours stand in, and where none of a
// row has, a polar by rule (foil/section.h).
size_t lw_polar_row_count(const lw_polar_shape *shape);
void lw_polar_row_prepare(lw_polar_row *row, const lw_polar_shape *shape, size_t number,
                          lw_polar_room *room);
bool lw_polar_of_rows(lw_polar *polar, const lw_polar_shape *shape, const lw_polar_rows *rows);

// All of that at once: 80 layers and 0.14 s with a flap, 31 and 0.05 s without, on one core.
bool lw_polar_prepare(lw_polar *polar, const lw_polar_shape *shape, lw_polar_room *room);

// Whether two shapes have the same polar.
bool lw_polar_shapes_are_alike(const lw_polar_shape *a, const lw_polar_shape *b);

// Drag coefficient at y = 0 with the flap in line; beyond the knots it follows the turbulent plate.
double lw_polar_least_drag(const lw_polar *polar, double reynolds);

// --- the sections of a boat's foils, prepared before the boat is

// The sections of a boat's foils as smooth functions: what takes longest to prepare, and stays the
// same while only other things change.
typedef struct lw_sections {
    lw_polar main_foil, rudder_foil;
} lw_sections;

typedef enum lw_section_name {
    LW_MAIN_SECTION,
    LW_RUDDER_SECTION,
    LW_SECTION_COUNT
} lw_section_name;

// What a foil's polar is worked out from; points into the boat.
lw_polar_shape lw_sections_shape(const lw_boat *boat, lw_section_name name);
lw_polar *lw_sections_polar(lw_sections *sections, lw_section_name name);

// 0.2 s on one core for a flapped foil and one without. A designation that is none counts as
// measured (boat.h finds it a fault).
void lw_sections_prepare(lw_sections *sections, const lw_boat *boat, lw_polar_room *room);

// Those of `was` made those of another boat: what is alike stays.
void lw_sections_renew(lw_sections *sections, const lw_boat *was, const lw_boat *boat,
                       lw_polar_room *room);

// Whether both boats have the same sections, so that those of one serve the other.
bool lw_sections_are_alike(const lw_boat *a, const lw_boat *b);

// Sections of the first boat asked for and of the last: they serve any boat that has the same, and
// where one foil differs the other is kept. Begins as zeros; 0.8 MB, the caller's.
typedef struct lw_stored_sections {
    bool is_ready;
    lw_boat boat;
    lw_sections sections;
} lw_stored_sections;

typedef struct lw_section_store {
    lw_stored_sections first, other;
    lw_polar_room room;
} lw_section_store;

// Those of a boat, worked out if need be; they stand until the next call.
const lw_sections *lw_section_store_of(lw_section_store *store, const lw_boat *boat);

// Those of a boat as worked out elsewhere, exactly: kept as if this were the first boat.
void lw_section_store_take(lw_section_store *store, const lw_boat *boat,
                           const lw_sections *sections);

#endif
