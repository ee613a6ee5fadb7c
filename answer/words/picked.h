// picked.h - the set-ups ranked for a day, with less and more wind too, and why in sentences.
// SPDX-License-Identifier: MIT

#ifndef LW_WORDS_PICKED_H
#define LW_WORDS_PICKED_H

#include "answer/words/number_text.h"
#include "lullwise/choice.h"
#include "lullwise/day.h"

#define LW_WIND_STEP  (2.0 * LW_KN)  // how much less and more wind is looked at
#define LW_SWIMS_MANY 0.5            // in a lap: so many are told beside its time  [judged]

typedef struct lw_picked {
    lw_inputs inputs;
    lw_outlook *outlook;  // prepared from the inputs; the owner frees it
    lw_unit speed_unit;   // of winds and speeds in sentences; LW_UNIT_NONE: knots
    lw_choice now, less, more;
} lw_picked;

// Ranks: now, less and more from the outlook.
void lw_picked_rank(lw_picked *picked);

const char *lw_picked_label(const lw_picked *picked, size_t pin);
const lw_placing *lw_picked_place_of(const lw_choice *choice, size_t pin);
bool lw_picked_flies(const lw_choice *choice);  // any of them

// A course's name: "upwind", "on the leg at 90°".
#define LW_COURSE_NAME 32
void lw_picked_course_name(const lw_picked *picked, size_t course, char name[LW_COURSE_NAME]);

// The head of a table of rudder turns, which are told for the longest leg.
#define LW_TURNS_WAY  "Plus is rudder lift wound on: stern up, bow down; minus is off."
#define LW_TURNS_HEAD 100
void lw_picked_turns_head(const lw_picked *picked, char head[LW_TURNS_HEAD]);

// What ends a pin's hold: "main foil's tip in the chop, downwind, as the puff hits".
#define LW_REASON_LENGTH 320
void lw_picked_end(const lw_picked *picked, size_t pin, char text[LW_REASON_LENGTH]);

// Why a place is where it is, with its numbers. No full stop at the end.
void lw_picked_reason(const lw_picked *picked, size_t place, char text[LW_REASON_LENGTH]);

// How far a place is behind the one before it, and how surely; false where seconds do not decide.
bool lw_picked_behind(const lw_picked *picked, size_t place, char text[LW_REASON_LENGTH]);

// What the next pin with less lift costs and buys: "costs 0.2 kn under way, costs 4 s round the
// course; holds 0.6 kn more".
void lw_picked_step(const lw_picked *picked, size_t pin, char text[LW_REASON_LENGTH]);

// "C D B A", best first.
void lw_picked_order(const lw_picked *picked, const lw_choice *choice, char text[LW_REASON_LENGTH]);

#endif
