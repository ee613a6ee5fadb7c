// wing_lattice.h - lift, drag, load and downwash of a wing under the surface, by a lattice.
// SPDX-License-Identifier: MIT
//
// Lay a lattice over a wing at a depth and heel, then ask for loads: one factored matrix serves
// every angle. See doc/wing.md.

#ifndef LW_WING_LATTICE_H
#define LW_WING_LATTICE_H

#include "lullwise/wing.h"

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
