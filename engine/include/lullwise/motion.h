// motion.h - the boat in time: motion in gusts and chop, with a sailor of human delays.
// SPDX-License-Identifier: MIT

#ifndef LW_MOTION_H
#define LW_MOTION_H

#include "lullwise/craft.h"
#include "lullwise/pilot.h"
#include "lullwise/range.h"
#include "lullwise/ride.h"
#include "lullwise/ride_state.h"
#include "lullwise/weather.h"

// --- masses of a boat and of the water that her foils carry along, and how foils damp

#define LW_DOF 6  // surge, sway, heave; roll, pitch, yaw: along and about the boat's x, y, z

// Boat and carried water are symmetric about the boat's plane; the sailor's place is added to them
// as she moves (motion/inertia_lanes.h).
typedef struct lw_inertia {
    double mass[LW_DOF][LW_DOF];     // of the boat and of carried water
    double spin[3];                  // of the boat about its own middle [kg m^2]
    double body_spin;                // of the sailor about the own middle, either way [kg m^2]
    double damping[LW_DOF][LW_DOF];  // by the lift of foils and struts, over speed
} lw_inertia;

lw_inertia lw_inertia_of(const lw_craft *craft);

// --- the boat in time: motion in gusts and chop, with a sailor of human delays
//
// motion = lw_motion_of(&craft)              what rides share; then its gust and sea
//     plan   = lw_ride_plan_of(&motion, &ask, &answer)
//     lw_ride_begin(&ride, &motion, &plan)
//     lw_rides_advance(&motion, &ride, 1, 50)    fifty steps; then ride.tally, ride.events, a trace
//
// On the ground one axis points towards the mean wind and one to port of that. The boat's axes are
// those of craft.h.

// What no tape finds of wand and sailor; lw_ride_parameters_preset has a value for each.
typedef struct lw_ride_parameters {
    double step;       // dt    [s]
    double wand_lag;   // tau   [s]      of the wand behind the water
    double wand_fall;  //       [rad/s]  of a wand that the water has left
    double slack;      //       [rad]    of the flap, either way
    double delay;      //       [s]      of the sailor, from what is to what she has noticed
    double felt_lag;   //       [s]      over which she feels the wind that she sails by
    double mean_lag;   //       [s]      over which she feels the wind that she winds the rudder by
    double preview;    //       [s]      how far she sees lulls and puffs come
    double hand_lag;   //       [s]      of the arms, on sheet and helm
    double sheet_out, sheet_in;  // [1/s] how fast power is taken off and put back
    double helm_pace;            //       [rad/s]
    double turn_pace;            //       [turns/s] of the rudder's twist grip
    double body_lag;             //       [s]      of the sailor's body, moved across the boat
    double body_pace;            //       [m/s]
    double body_push;            //       [m/s^2]
    double forward;              //       [m/rad]  how far forward she goes for a bow too high
    double forward_lag;          //       [s]      over which she feels it
    double forward_pace;         //       [m/s]    0: she stays where she sits
    double swim;                 //       [s]      from a fall to being under way again
} lw_ride_parameters;

// Of a sailor of some skill (lw_person.skill); the preset's is practised.
lw_ride_parameters lw_ride_parameters_of(double skill);
lw_ride_parameters lw_ride_parameters_preset(void);

// What rides side by side share; constant while they are under way.
typedef struct lw_motion {
    const lw_craft *craft;
    lw_inertia inertia;
    lw_ride_parameters parameters;
    bool is_gusty, is_choppy;  // false: each ride has its plan's wind; plain water
    lw_gust_filter gust;       // made with parameters.step
    lw_sea_kind sea;
} lw_motion;

// Steady wind, plain water, the parameters of a sailor of the craft's skill.
lw_motion lw_motion_of(const lw_craft *craft);

typedef struct lw_ride_plan {
    lw_setup setup;
    double wind;   // [m/s] where it is not gusty
    double place;  // sailor's, forward of the main foil [m]
    bool starts_aloft;
    bool rests_aloft;           // after a swim: in flight, else on the hull
    lw_ride_state start, rest;  // to begin from, and to go on from after a swim
    lw_pilot pilot;
    uint64_t seed;  // of gusts and chop
} lw_ride_plan;

// Flights wanted by the wind of some seconds, at one rudder: those that were found are next to each
// other. Where `motion` is not gusty, the flight asked for alone.
typedef struct lw_wishes {
    lw_ask ask[LW_WISHES];
    lw_answer answer[LW_WISHES];
    int first, last;  // that fly; last < first: none does
} lw_wishes;

// Sought about a balance (motion/sailor/wish.h); or about those of another boat, for one that is a
// little different, at the balance's rudder.
lw_wishes lw_wishes_of(const lw_motion *motion, const lw_ask *ask, const lw_answer *answer);
lw_wishes lw_wishes_again(const lw_craft *craft, const lw_ask *ask, const lw_answer *answer,
                          const lw_wishes *others);

// A plan to sail as a balance does, from there, with a pilot for the boat as she is there: with
// given wishes, or those sought about it.
lw_ride_plan lw_ride_plan_with(const lw_motion *motion, const lw_ask *ask, const lw_answer *answer,
                               const lw_wishes *wishes);
lw_ride_plan lw_ride_plan_of(const lw_motion *motion, const lw_ask *ask, const lw_answer *answer);

// Has the rudder wound after the mean wind of the last minute, as a range is trimmed for it.
void lw_ride_plan_wind(lw_ride_plan *plan, const lw_craft *craft, const lw_range *range);

// Rates of all states in a steady wind over plain water, and their Jacobian: jacobian[i][j] is the
// change of rate i with state j. The flap is without slack, foils and struts without air.
typedef double lw_jacobian[LW_RIDE_STATES][LW_RIDE_STATES];
void lw_motion_rates(const lw_motion *motion, const lw_ride_plan *plan, const lw_ride_state *state,
                     lw_ride_state *rates);
void lw_motion_jacobian(const lw_motion *motion, const lw_ride_plan *plan,
                        const lw_ride_state *state, lw_jacobian jacobian);

#define LW_RIDE_LANES 416  // room for all that a ride remembers between calls

// One ride, owned by the caller.
typedef struct lw_ride {
    lw_ride_plan plan;
    lw_ride_tally tally;
    lw_ride_event *events;           // the caller's, or NULL
    size_t event_room, event_count;  // events beyond the room are counted, not kept
    int64_t lane[LW_RIDE_LANES];
} lw_ride;

// Sets all but `events` and `event_room`, which the caller has set.
void lw_ride_begin(lw_ride *ride, const lw_motion *motion, const lw_ride_plan *plan);

// Moves n rides on by some steps, side by side. The bits of a ride depend neither on its neighbours
// nor on how its steps are shared out among calls.
void lw_rides_advance(const lw_motion *motion, lw_ride *rides, size_t n, size_t steps);

lw_ride_state lw_ride_now(const lw_ride *ride);
lw_ride_stand lw_ride_stands(const lw_ride *ride);
lw_trace lw_ride_trace(const lw_motion *motion, const lw_ride *ride);

#endif
