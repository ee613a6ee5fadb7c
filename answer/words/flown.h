// flown.h - one steady flight asked for, its answer, and what is said about it.
// SPDX-License-Identifier: MIT

#ifndef LW_WORDS_FLOWN_H
#define LW_WORDS_FLOWN_H

#include "answer/words/inputs.h"
#include "lullwise/walk.h"

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

// The craft in the water and air of the day.
void lw_flown_prepare(lw_flown *flown, const lw_inputs *inputs);

// Works out the answer; and, for advice where she does not fly, the range.
void lw_flown_answer(lw_flown *flown);
void lw_flown_range(lw_flown *flown);

// Turns for the answer and turns that hold most, and where they part; only where she flies and the
// turns are free.
#define LW_FLOWN_LENGTH 400
bool lw_flown_turns(const lw_flown *flown, char text[LW_FLOWN_LENGTH]);

// "Flies at 17.2 kn on 45 deg. First to run out: ..."; what to try when she does not fly; and what
// was given and what was chosen.
void lw_flown_outcome(const lw_flown *flown, char text[LW_FLOWN_LENGTH]);
void lw_flown_advice(const lw_flown *flown, char text[LW_FLOWN_LENGTH]);
void lw_flown_freedom(const lw_flown *flown, char text[LW_FLOWN_LENGTH]);

// Sentences on where the model leaves its grounds; returns how many, at most LW_TRUST_MOST.
#define LW_TRUST_MOST   8
#define LW_TRUST_LENGTH 240
size_t lw_flown_trust(const lw_flown *flown, char notes[LW_TRUST_MOST][LW_TRUST_LENGTH]);

#endif
