// boat.h - the boat as measured with a tape, the sailor, and what of the boat is a set-up.
// SPDX-License-Identifier: MIT
//
// Where things are: every `_x` is measured forward from the transom along the hull, every
// `_height` up from the hull's bottom at the main strut, with the hull level.

#ifndef LW_BOAT_H
#define LW_BOAT_H

#include "lullwise/quantity.h"

typedef struct lw_hull {
    double length;          // L      [m]   waterline, floating upright
    double beam;            // B      [m]   greatest, at the waterline
    double transom_beam;    // B_t    [m]   at the waterline, aft
    double draft;           // T      [m]   of the bare hull with the sailor aboard
    double block;           // C_B    [-]   displaced volume / (L B T)
    double waterplane;      // C_WP   [-]   waterplane area / (L B)
    double form_factor;     // k      [-]   viscous drag = (1 + k) x flat plate
    double mass;            // m_b    [kg]  boat ready to sail, without the sailor
    double centre_x;        // x_G    [m]   centre of gravity without the sailor
    double centre_height;   // z_G    [m]
    double rack_width;      // b_r    [m]   over both racks: where the sailor's feet or thighs are
    double rack_height;     // z_r    [m]
    double rack_volume;     // V_r    [m^3] of one side: what goes under when she heels
    double windage_area;    // C_D A  [m^2] drag area of hull, racks and stays, head to wind
    double windage_side;    // C_D A  [m^2] the same, wind abeam
    double windage_height;  // z_w    [m]   middle of that area
} lw_hull;

typedef struct lw_foil {
    double span;             // b        [m]    tip to tip
    double root_chord;       // c_r      [m]
    double tip_chord;        // c_t      [m]
    double thickness;        // t/c      [-]
    double zero_lift_angle;  // alpha_0  [rad]  of the section, flap in line
    double smooth;           // -        [-]    smooth from the nose on, / chord
    double waves;            // n        [-]    they grow e^n before its layers turn turbulent
    double flap_chord;       // E        [-]    flap chord / foil chord; 0: no flap
    double flap_span;        // b_f/b    [-]    part of the span that has the flap
} lw_foil;

typedef struct lw_strut {
    double x;          // x_f  [m]  of the foil's quarter chord
    double length;     // l    [m]  hull bottom (or its continuation aft) down to the foil
    double chord;      // c_s  [m]
    double thickness;  // t/c  [-]
} lw_strut;

typedef struct lw_linkage {
    double wand_x;            // x_w     [m]    the wand's pivot
    double wand_height;       // z_p     [m]
    double wand_length;       // l_w     [m]    pivot to tip
    double forward_stop;      // psi_min [rad]  wand from straight down, swung aft positive
    double aft_stop;          // psi_max [rad]
    double neutral_angle;     // psi_0   [rad]  wand angle at which the flap is in line, rod at 0
    double gearing;           // G       [-]    flap degrees per wand degree
    double rod;               // r       [rad]  flap added by the ride-height rod
    double flap_up_stop;      // d_min   [rad]  trailing edge up negative
    double flap_down_stop;    // d_max   [rad]
    double pin_pivot_height;  // z_pp    [m]    bearing about which a pin turns strut and foil
} lw_linkage;

typedef struct lw_rudder {
    double mark_incidence;  // i_r0   [rad]       of the rudder foil at the reference mark
    double turn;            // k_t    [rad/turn]  rudder lift on positive
    double least_turns;     // n_min  [turns]     end of the thread
    double most_turns;      // n_max  [turns]
    double helm_limit;      // d_rmax [rad]       rudder blade each way
} lw_rudder;

typedef struct lw_rig {
    double sail_area;      // A       [m^2]
    double luff;           // P       [m]    tack to head
    double foot_height;    // z_t     [m]    tack above the hull's bottom
    double centre_x;       // x_CE    [m]    centre of effort
    double centre_part;    // -       [-]    centre of effort above the tack / luff
    double greatest_lift;  // C_Lmax  [-]    fullest trim
    double flattest;       // F       [-]    least lift by flattening alone / greatest lift
    double most_twist;     // a_max   [-]    second harmonic of the span load / first
    double profile_drag;   // C_D0    [-]    mast and sail, on the sail area
} lw_rig;

typedef struct lw_place {
    double forward_x;  // [m]  furthest forward the sailor's middle can be
    double aft_x;      // [m]  furthest aft
    double
        inboard;  // [m]  middle of the sailor off the centreline, sitting in; to leeward negative
} lw_place;

typedef struct lw_pin {
    double incidence;             // i_m [rad]  main foil's chord line to the hull's bottom line
    char label[LW_LABEL_LENGTH];  // the owner's own
} lw_pin;

#define LW_SECTION_AS_MEASURED "as measured"
#define LW_GRIP_UNKNOWN        "unknown"

typedef struct lw_boat {
    char name[LW_NAME_LENGTH];
    char main_section[LW_NAME_LENGTH];    // designation of the main foil's section, "NACA 63-412",
    char rudder_section[LW_NAME_LENGTH];  // and of the rudder foil's; or as measured
    char grip[LW_NAME_LENGTH];  // how the twist grip turns to add rudder lift: "clockwise",
                                // "counter-clockwise" or "unknown"
    lw_hull hull;
    lw_foil main_foil;
    lw_foil rudder_foil;
    lw_strut main_strut;
    lw_strut rudder_strut;
    lw_linkage linkage;
    lw_rudder rudder;
    lw_rig rig;
    lw_place place;
    size_t pin_count;
    lw_pin pins[LW_PINS_MOST];
} lw_boat;

typedef struct lw_person {
    double mass;         // m_s    [kg]   in swimming things
    double gear;         // m_g    [kg]   what is worn: wet
    double hike;         // y_h    [m]    body centre outside the rack's edge, fully hiked
    double body_height;  // z_b    [m]    body centre above the rack
    double drag_area;    // C_D A  [m^2]  body to the wind
    double least_heel;  // phi_0  [rad]  windward heel wanted in hand, below which a gust throws her
                        // over
    double most_heel;   // phi_m  [rad]  greatest windward heel this sailor holds for a leg
    double most_bow_down;  // theta_d [rad]  furthest down this sailor lets the bow fly
    double most_bow_up;    // theta_u [rad]  furthest up
    double skill;          // -      [-]    0 a beginner on foils, 1 practised, 2 an expert
    double puff_known;     // U_k    [m/s]  strongest puffs sailed and come home from; 0: not said
} lw_person;

typedef struct lw_sailor {
    char name[LW_NAME_LENGTH];
    lw_person person;
} lw_sailor;

extern const lw_record lw_boat_record;
extern const lw_record lw_sailor_record;

// Index of the pin with this label, or -1.
int lw_boat_pin(const lw_boat *boat, const char *label);

// Faults that one row cannot show (a tip chord above the root, a hull that cannot float the
// crew, pins out of order, stops that cross). Returns the section key of the first, with the
// sentence in *why, or NULL when the boat is sound.
const char *lw_boat_contradiction(const lw_boat *boat, const char **why);

#endif
