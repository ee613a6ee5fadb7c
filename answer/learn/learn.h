// learn.h - `lullwise learn`: what the logged days tell of the boat, and what to try next.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_LEARN_H
#define LW_ANSWER_LEARN_H

#include "answer/question.h"
#include "lullwise/trial.h"
#include "records/logbook/logbook.h"

// Asked by the program, which has a logbook; the page has none to read.
extern const lw_question lw_question_learn;

typedef struct lw_taking {
    const lw_inputs *inputs;
    bool asks_day;  // what to try next counts
    const char *path;
    char home[LW_LOGBOOK_PATH];
    lw_entries entries;
    size_t of_others, of_weights;  // days left out: of another boat, of another weight
    size_t told;                   // numbers in the others
    lw_lesson_day *days;
    lw_season season;
    lw_learning learning;
    bool is_whole;  // all steps were done: what follows counts
    lw_learned learned;
    lw_left_out left_out;
    lw_next next;
} lw_taking;

// The faces of the question.
bool lw_taking_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                     lw_refusal *refusal);
size_t lw_taking_steps(void *it);
void lw_taking_step(void *it, size_t step);
bool lw_taking_are_apart(const void *it);
void lw_taking_end(void *it);
bool lw_taking_is_answered(const void *it);
void lw_taking_release(void *it);
void lw_taking_tell(const void *it, lw_teller *teller);
void lw_taking_write(const void *it, FILE *out);

// What is to be tried next, told.
void lw_taking_tell_next(const lw_taking *taking, lw_teller *teller);

#endif
