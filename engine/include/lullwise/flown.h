// flown.h - one steady flight or one ride asked for: what is given, what is chosen, its answer.
// SPDX-License-Identifier: MIT

#ifndef LW_FLOWN_H
#define LW_FLOWN_H

#include "lullwise/day.h"
#include "lullwise/motion.h"
#include "lullwise/range.h"

// --- one steady flight asked for: what is given of it, what is chosen, and its answer

// What is asked, and what came of it. What is not given is chosen by the criterion; where she
// floats the rudder stays at the mark.
typedef struct lw_flown {
    const lw_inputs *inputs;
    lw_craft craft;  // prepared from the inputs (lw_flown_prepare)
    size_t pin;
    double wind, heading, heel, place, turns;  // place from the transom
    bool has_heading, has_heel, has_place, has_turns;
    lw_criterion by;
    lw_course_kind course;  // sailed when no heading is given; upwind, if nobody says otherwise
    lw_answer answer;
    lw_ask ask;         // as it stood for the answer
    bool asks_most;     // for the trim that holds most, too, where she flies
    double most_turns;  // of that [turns]
    bool holds_most;    // and that it holds in the puff
    lw_walk walk;       // on this course, kept from question to question; no craft: not yet
    lw_range range;     // on this heading alone, in even wind: only where she does not fly
} lw_flown;

// The craft in the water and air of the day, with the sections of the inputs' boat.
void lw_flown_prepare(lw_flown *flown, const lw_inputs *inputs, const lw_sections *sections);

// Works out the answer; and, for advice where she does not fly, the range.
void lw_flown_answer(lw_flown *flown);
void lw_flown_range(lw_flown *flown);

// --- a ride through a day's gusts and chop: what is asked, and what it starts from
//
// Boat and sailor go out trimmed for steady flight in the mean wind (flown.h), with the rudder as
// wound for it. One seed on one machine is the same ride on any other.

typedef struct lw_ridden {
    lw_flown flown;  // what is asked is put here before the plan: pin, wind, course, heading ...
    lw_wind wind;    // lull, mean and puff that blow
    lw_motion motion;
    lw_ride_plan plan;
    bool is_wound;  // the rudder is wound after the mean wind; else its turns are given
} lw_ridden;

// The craft, on the upwind course with the middle pin in the day's mean wind.
void lw_ridden_prepare(lw_ridden *ridden, const lw_inputs *inputs, const lw_sections *sections);

// Gusts, chop, and the plan of a ride with this seed. Where `flown.wind` is not the day's mean,
// lull and puff go with it in proportion, and the chop with the wind.
void lw_ridden_plan(lw_ridden *ridden, uint64_t seed);

// So many steps of the motion in a time [s], at least one.
size_t lw_ridden_steps(const lw_ridden *ridden, double seconds);

// The water along the boat above its mean level [m], from behind the rudder to before the wand: at
// points of her middle line, so far forward of the main foil, as one moment of the ride has her.
#define LW_WATER_FROM  (-3.0)  // [m]
#define LW_WATER_STEP  0.25    // [m]
#define LW_WATER_COUNT 25
void lw_ridden_water(const lw_ridden *ridden, const lw_sea_waves *sea, const lw_trace *at,
                     double height[LW_WATER_COUNT]);

#endif
