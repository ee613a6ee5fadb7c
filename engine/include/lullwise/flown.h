// flown.h - one steady flight asked for: what is given of it, what is chosen, and its answer.
// SPDX-License-Identifier: MIT

#ifndef LW_FLOWN_H
#define LW_FLOWN_H

#include "lullwise/day.h"
#include "lullwise/range.h"

// What is asked, and what came of it. What is not given is chosen by the criterion; where she floats
// the rudder stays at the mark.
typedef struct lw_flown {
    const lw_inputs *inputs;
    lw_craft craft;  // prepared from the inputs (lw_flown_prepare)
    size_t pin;
    double wind, heading, heel, place, turns;  // place from the transom
    bool has_heading, has_heel, has_place, has_turns;
    lw_criterion by;
    lw_course_kind course;  // sailed when no heading is given; upwind, if nobody says otherwise
    lw_unit speed_unit;     // of speeds in sentences; LW_UNIT_NONE: knots
    lw_answer answer;
    lw_ask ask;         // as it stood for the answer
    double most_turns;  // of the trim that holds most, where she flies [turns]
    bool holds_most;    // and that it holds in the puff
    lw_walk walk;       // on this course, kept from question to question; no craft: not yet
    lw_range range;     // on this heading alone, in even wind: only where she does not fly
} lw_flown;

// The craft in the water and air of the day, with the sections of the inputs' boat.
void lw_flown_prepare(lw_flown *flown, const lw_inputs *inputs, const lw_sections *sections);

// Works out the answer; and, for advice where she does not fly, the range.
void lw_flown_answer(lw_flown *flown);
void lw_flown_range(lw_flown *flown);

#endif
