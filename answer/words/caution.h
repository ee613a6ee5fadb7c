// caution.h - is this sensible to sail? Plain words; local rules and qualified people decide.
// SPDX-License-Identifier: MIT
//
// Every answer that tells a pin or a trim to sail with tells them: lw_tell_cautions.

#ifndef LW_WORDS_CAUTION_H
#define LW_WORDS_CAUTION_H

#include "answer/teller.h"
#include "answer/words/picked.h"

#define LW_CAUTIONS_MOST  14
#define LW_CAUTION_LENGTH 240

// The sailing that is cautioned about.
typedef struct lw_care {
    const lw_inputs *inputs;
    lw_unit speed_unit;
    double mean, puff;        // [m/s] the most that is to come
    double felt;              // [m/s] over the rack; 0: not known, and then the mean is taken
    const lw_picked *picked;  // ranked; NULL: nothing is said of what holds, nor of swims
} lw_care;

lw_care lw_care_of_day(const lw_inputs *inputs, lw_unit speed_unit);
lw_care lw_care_of(const lw_picked *picked);  // who sails the first place

// Sentences, those with numbers first; returns how many.
size_t lw_cautions(const lw_care *care, char lines[LW_CAUTIONS_MOST][LW_CAUTION_LENGTH]);

// The list "cautions"; and of two, where what counts for one of them alone says for which.
#define LW_CAUTIONS_HEAD "Take care"
void lw_tell_cautions(lw_teller *teller, const lw_care *care);
void lw_tell_cautions_of_two(lw_teller *teller, const lw_care *as_is, const lw_care *changed);

// Into the list that is open, behind what the answer has of its own.
void lw_tell_caution_lines(lw_teller *teller, const lw_care *care);

#endif
