// craft.h - a boat made ready to compute with: coefficients worked out once from measurements.
// SPDX-License-Identifier: MIT
//
// Origin of the boat's axes: the main foil's quarter chord on the strut axis with the middle pin
// in; x forward, y to port, z up, hull level. Constant during every call that takes it.

#ifndef LW_CRAFT_H
#define LW_CRAFT_H

#include "lullwise/boat.h"
#include "lullwise/medium.h"
#include "lullwise/polar.h"
#include "lullwise/prepared.h"

// Knots of the curves over ln V, V in m/s: 0.3 to 27 m/s.
#define LW_SPEED_FIRST (-1.2)
#define LW_SPEED_STEP  (4.5 / (LW_CURVE_KNOTS - 1))

// Knots of the hull's splines: volumes under water from none to twice the measured, even in their
// root; slopes along the hull up to 8.5 deg either way; Froude numbers, even in their logarithm.
#define LW_HULL_STRIPS   8
#define LW_HULL_VOLUMES  6
#define LW_HULL_SLOPES   7
#define LW_HULL_SPEEDS   14
#define LW_HULL_STEEPEST (8.5 * LW_DEG)
#define LW_HULL_SLOWEST  0.25
#define LW_HULL_FASTEST  1.75

// Knots of the curves over a foil's depth: 0 to 1.5 m.
#define LW_DEPTH_STEP (1.5 / (LW_CURVE_KNOTS - 1))

// A foil as prepared from its measurements: all that does not change in flight.
typedef struct lw_foil_craft {
    double span, area, chord;  // b, S [m^2], mean chord c [m]
    lw_curve slope;            // a over depth [m]: d C_L / d alpha [1/rad]
    lw_curve induced;          // k over depth [m]: C_Di / C_L^2
    lw_curve downwash;         // over depth [m]: downwash at the foil behind / C_L
    lw_polar polar;            // of the section
    lw_curve profile;          // section drag over ln V: c_d at y = 0, flap in line
    double log_re;             // ln Re at 1 m/s
    double zero_lift_angle;    // [rad] as measured
    double span_share;         // C_L of the whole foil / c_l of its most loaded part
    double flap_lift;  // angle of the whole foil / angle of the section that a flap is worth
    lw_curve face, face_flap, face_drag;     // over depth, of foil/ventilation/face.h: a, t_L, t_D
    lw_curve face_centre, face_flap_centre;  // over depth
    double junction_drag;                    // area [m^2]
} lw_foil_craft;

typedef struct lw_strut_craft {
    double chord;       // c_s [m]
    double length;      // l   [m]  hull bottom to foil
    lw_curve profile;   // section drag over ln V: 2 C_f form
    double spray_drag;  // area [m^2] of one pierced surface
    double foil_span;   // b_f [m]  of the foil below: an end plate
} lw_strut_craft;

typedef struct lw_linkage_craft {
    double forward_stop, aft_stop;        // psi_min, psi_max [rad]
    double neutral_angle;                 // psi_0 [rad]
    double flap_up_stop, flap_down_stop;  // d_min, d_max [rad]
} lw_linkage_craft;

// A piece of the hull across. T deep, it is wet over
//     width T y (1 - b + y (b - c + c y)) / (1 + y (1 + y (b + c y))),   y = T / t_0
// V-shaped at the keel, wall-sided far above it, where it has t_0 less than its full width.
typedef struct lw_hull_strip {
    double x, keel;  // [m] of its middle forward of the main foil; above the hull's bottom there
    double width;    // beam x length of the strip [m^2]
    double per_t;    // 1 / t_0 [1/m]
    double b, c;
} lw_hull_strip;

// What the hull's splines over volume and slope hold.
typedef enum lw_hull_form_of {
    LW_HULL_WETTED,  // wetted area [m^2] x C_F on the wetted length / C_F on the whole
    LW_HULL_ACROSS,  // second moment of the waterplane across [m^4]
    LW_HULL_CENTRE,  // height of the volume's middle above the hull's bottom at the strut [m]
} lw_hull_form_of;

// Coefficients of B-splines over volume, slope and ln V; each row starts a knot before the first.
typedef struct lw_hull_craft {
    double reach;   // farthest end from the main foil [m]
    double lowest;  // strip above the hull's bottom at the strut [m]
    lw_hull_strip strip[LW_HULL_STRIPS];
    double stem_x, stem_deep;  // [m] foremost strip; how deep it floats
    double stem_drag;          // [m] drag area for each metre that it is deeper than that
    double most, steepest;     // last knots: volume [m^3], slope
    double form[LW_HULL_VOLUMES + 2][LW_HULL_SLOPES + 2][4];
    double wave_first, wave_step;  // of ln V
    double wave[LW_HULL_VOLUMES + 2][LW_HULL_SLOPES + 2]
               [LW_HULL_SPEEDS + 2];  // R_w / (1/2 rho V^2 volume) [1/m]
    lw_curve friction;                // over ln V: (1 + k) C_F on the whole length
} lw_hull_craft;

// What floats on each side of the hull.
typedef struct lw_rack_craft {
    double volume;     // V [m^3] of one side
    double thickness;  // t [m] from its lowest to its highest edge, as it goes under
    double x, y, z;    // middle: forward of the main foil, off the middle line, above the foil [m]
} lw_rack_craft;

typedef struct lw_sail_craft {
    double area;           // A [m^2]
    double luff;           // P [m]
    double centre_height;  // z_CE [m] above the main foil, full sail
    double centre_x;       // [m] forward of the main foil
    double induced;        // 1 / (pi A_e) + 0.005
    double profile_drag;   // added to the table's
    double flattest;       // F
    double most_twist;     // a_max
    lw_curve lift, drag;   // C_L full and C_Dp over apparent wind angle [rad]
} lw_sail_craft;

// What of the boat is fixed while sailing.
typedef struct lw_setup {
    double incidence;    // i_m [rad]  of the pin
    double wand_length;  // l_w [m]
    double gearing;      // G   [-]
    double rod;          // r   [rad]
} lw_setup;

typedef struct lw_craft {
    lw_foil_craft main_foil, rudder_foil;
    lw_strut_craft main_strut, rudder_strut;
    lw_linkage_craft linkage;
    lw_hull_craft hull;
    lw_rack_craft rack;
    lw_sail_craft sail;

    double weight;                      // W [N] all that floats or flies
    double hull_mass, hull_x, hull_z;   // boat without the sailor [kg], [m], [m]
    double body_mass, body_z;           // sailor with gear [kg], [m]
    double body_inboard, body_reach;    // middle of the sailor to windward: sitting in, hiked [m]
    double place_aft, place_forward;    // bounds of the sailor's x [m]
    double least_heel, most_heel;       // windward [rad]
    double most_bow_down, most_bow_up;  // that this sailor lets her fly with [rad]
    double skill;                       // of the sailor: 0 beginner, 1 practised, 2 expert

    double pin_middle;                  // incidence at which the strut stands square [rad]
    double pin_arm;                     // foil below the bearing that the pin turns it about [m]
    double rudder_x, rudder_z;          // rudder foil's quarter chord [m]
    double wand_x, wand_z;              // pivot [m]
    double windage, windage_side;       // drag area of boat, wind ahead and abeam [m^2]
    double windage_z;                   // its middle [m]
    double body_windage;                // drag area of the sailor [m^2]
    double wind_at_sail, wind_at_body;  // wind there / wind as read

    double transom_x, bow_x;  // ends of the hull [m]
    lw_curve trough;          // over wind [m/s]: depth of the chop's troughs [m]

    double rudder_mark, rudder_turn;  // [rad], [rad/turn]
    double least_turns, most_turns;   // [turns]
    double helm_limit;                // [rad]
    lw_setup setup;                   // the boat's own wand, gearing, rod; first pin
    lw_medium medium;
} lw_craft;

// Works the craft out from what was measured. Some 30 ms; allocates nothing.
void lw_craft_prepare(lw_craft *craft, const lw_boat *boat, const lw_sections *sections,
                      const lw_person *person, const lw_medium *medium);

// The same for a boat that is a little different in the same water, with the form that her hull has
// under water: its weight and windage are hers. Some 10 ms.
void lw_craft_vary(lw_craft *craft, const lw_craft *from, const lw_boat *boat,
                   const lw_sections *sections, const lw_person *person);

// The boat's own set-up with one of its pins.
lw_setup lw_craft_setup(const lw_craft *craft, const lw_boat *boat, size_t pin);

// Incidence of the rudder foil, wound some turns of lift on from the reference mark [rad].
double lw_craft_rudder(const lw_craft *craft, double turns);

#endif
