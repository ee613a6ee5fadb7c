// flight.h - steady flight: the balance of one pose, and its margins.
// SPDX-License-Identifier: MIT

#ifndef LW_FLIGHT_H
#define LW_FLIGHT_H

#include "lullwise/craft.h"

// clang-format off
// How an answer ends: one line makes the code and its sentence.
#define LW_OUTCOME_LIST(X)                                                       \
    X(FLIES,      "flies")                                                       \
    X(FLOATS,     "sails on the hull")                                           \
    X(NO_BALANCE, "no steady balance found")
// clang-format on

#define LW_AS_OUTCOME(name, text) LW_##name,
typedef enum lw_outcome { LW_OUTCOME_LIST(LW_AS_OUTCOME) LW_OUTCOME_COUNT } lw_outcome;
const char *lw_outcome_text(lw_outcome outcome);

// What is left before something gives; negative: it has given.
typedef struct lw_margins {
    double flap_up;       // [rad]    flap travel left, trailing edge up
    double flap_down;     // [rad]
    double wand_forward;  // [rad]    wand travel left before its forward stop
    double
        tip_depth;  // [chords] higher main-foil tip below the trough of the chop and half a chord
    double rudder_tip;    // [chords] the same of the rudder foil
    double clearance;     // [m]      hull above the water
    double pressure;      // [-]      cavitation number above the foils' lowest pressure
    double main_stall;    // [rad]    angle left to stall
    double rudder_stall;  // [rad]
    double ventilation;   // [rad]    strut angle left to that at which air runs down
    double helm;          // [rad]
    double thread;        // [turns]  left on the rudder's thread, either way
    double heel;          // [rad]    windward heel above the least that the sailor wants in hand
    double power;         // [-]      part of the sail's power that can still be taken off
} lw_margins;
#define LW_MARGIN_COUNT (sizeof(lw_margins) / sizeof(double))

// One steady state, or one moment of gathering way when its speed was given.
typedef struct lw_flight {
    double wind;            // U       [m/s]   as read
    double heading;         // gamma   [rad]   track from the wind
    double speed;           // V       [m/s]
    double vmg;             //         [m/s]   to windward; negative: to leeward
    double leeway;          // lambda  [rad]
    double ride_height;     // h       [m]     hull's bottom at the main strut above the water
    double pitch;           // theta   [rad]   bow up
    double heel;            // phi     [rad]   windward
    double place_x;         // x_s     [m]     sailor's middle from the transom
    double turns;           // n       [turns] rudder lift on from the mark
    double helm;            // delta_r [rad]
    double effort;          // p       [-]     0 sitting in, 1 hiked; beyond, power taken off
    double hiking;          //         [-]     0 sitting in, 1 fully hiked
    double sail_power;      //         [-]     1 full
    double twist;           // a       [-]
    double wand;            // psi     [rad]
    double flap;            // delta   [rad]
    double apparent_wind;   //         [m/s]
    double apparent_angle;  //         [rad]
    double main_lift;       //         [N]
    double rudder_lift;     //         [N]
    double main_side;       //         [N]     of the strut, to windward
    double rudder_side;     //         [N]
    double buoyancy;        //         [N]
    double drive;           //         [N]     of sail and windage together, along the track
    double sail_side;       //         [N]     to leeward, in the boat
    double windage;         //         [N]     along the track
    double foil_drag;       //         [N]
    double strut_drag;      //         [N]
    double hull_drag;       //         [N]
    double main_lift_coefficient;    // C_L [-]
    double rudder_lift_coefficient;  // C_L [-]
    double strut_angle;              //         [rad]   of the strut nearer to ventilating
    double air_stays;                //         [rad]   strut angle above which air stays down it
    double acceleration;             // dV/dt   [m/s^2] zero in a steady state
    double residual;    //         [-]     greatest force / weight or moment / (weight 1 m) left
    double iterations;  //         [-]     of the solver
} lw_flight;

extern const lw_table lw_flight_table;
extern const lw_table lw_margins_table;

typedef struct lw_answer {
    lw_outcome outcome;
    lw_flight flight;
    lw_margins margins;
} lw_answer;

// What of a balance may be given. The acceleration is, as zero, where the speed is not.
typedef struct lw_ask_given {
    double speed;   // [m/s]
    double pitch;   // [rad]
    double rudder;  // incidence of the rudder foil [rad]
} lw_ask_given;

// Where to start looking for what is not given.
typedef struct lw_ask_start {
    double speed;        // [m/s]
    double leeway;       // [rad]
    double ride_height;  // [m]
    double pitch;        // [rad]
    double rudder;       // [rad]
    double helm;         // [rad]
    double effort;       // [-]
} lw_ask_start;

// What is asked of one balance. Angles and lengths as in the boat's axes (craft.h). Six are sought:
// leeway, ride height, helm, effort; speed or acceleration; pitch or rudder.
typedef struct lw_ask {
    double wind, heading;  // [m/s], [rad]
    lw_setup setup;
    double heel, place;  // free controls: [rad], [m] forward of the main foil
    bool gives_speed;    // true: as towed, the acceleration is sought; false: the speed is
    bool gives_pitch;    // true: the rudder is sought; false: the rudder is given, the pitch sought
    lw_ask_given given;
    lw_ask_start start;
} lw_ask;

// From nothing but the wind, flying, with the bow level.
lw_ask lw_ask_of(const lw_craft *craft, const lw_setup *setup, double wind, double heading);

// Gives a speed, a pitch, or a rudder; what was given in its place is sought, from there.
void lw_ask_give_speed(lw_ask *ask, double speed);
void lw_ask_give_pitch(lw_ask *ask, double pitch);
void lw_ask_give_rudder(lw_ask *ask, double rudder);

// The rudder as it stands, given or to start from; and to give it so.
double lw_ask_rudder(const lw_ask *ask);
void lw_ask_hold_rudder(lw_ask *ask);

// Solves n balances side by side. Every answer is a balance with residual below LW_RESIDUAL, or
// says that none was found.
#define LW_RESIDUAL 1e-9
void lw_balance(const lw_craft *craft, const lw_ask *asks, lw_answer *answers, size_t n);

// The same where all begin close to one another and give the same numbers: quicker, and to within
// LW_RESIDUAL the same answers. In their last bits they depend on the first, too.
void lw_balance_akin(const lw_craft *craft, const lw_ask *asks, lw_answer *answers, size_t n);

// The same for one, sought on the hull at speeds between two [m/s]; where a speed is given, at the
// first of them that has a balance. What flies is an answer too. Its outcome is LW_NO_BALANCE when
// there is none.
lw_answer lw_afloat(const lw_craft *craft, const lw_ask *ask, double slow, double fast);

// The next ask starts from this answer, and gives what the answer has.
void lw_ask_follow(const lw_craft *craft, lw_ask *ask, const lw_answer *from);

// What asks for a flight again: its wind and heading, from there, with its heel and place.
lw_ask lw_ask_as(const lw_craft *craft, const lw_setup *setup, const lw_answer *answer);

// Speed made good along a course [m/s]; course: direction from the wind [rad].
double lw_flight_made_good(const lw_flight *flight, double course);

// How much of a margin counts as one, in its unit in SI: "a little" to a sailor.  [judged]
double lw_margins_scale(size_t row);

// Which margin runs out first: the index of its row, by least margin / its scale.
size_t lw_margins_first(const lw_margins *margins);

// Sum of what is overdrawn, each in its own scale; 0 when all margins hold.
double lw_margins_overdrawn(const lw_margins *margins);

// All margins hold, but for what the search's last steps leave undecided: a twentieth of a scale.
bool lw_margins_hold(const lw_margins *margins);

// Whether she flies with the hull clear; keeps all margins so; or does either in a puff, which may
// set her down on the hull: that costs time, but is no breach.
bool lw_answer_is_up(const lw_answer *answer);
bool lw_answer_is_kept(const lw_answer *answer);
bool lw_answer_rides_out(const lw_answer *answer);

#endif
