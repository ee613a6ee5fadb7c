// question.h - a question that can be asked; a new one is a folder here and a line in the list.
// SPDX-License-Identifier: MIT
//
// `lullwise NAME` asks it on the command line, and the page asks the same: options in, steps done,
// the answer told through a teller (teller.h).

#ifndef LW_QUESTION_H
#define LW_QUESTION_H

#include <stdio.h>

#include "answer/inputs.h"
#include "answer/teller.h"

// Why a question is not taken: faults of what was read, or a sentence.
#define LW_REFUSAL_LENGTH 600
typedef struct lw_refusal {
    lw_faults faults;
    char text[LW_REFUSAL_LENGTH];
} lw_refusal;

// Writes the sentence; false, so that it can be returned.
bool lw_refuse(lw_refusal *refusal, const char *format, ...) __attribute__((format(printf, 2, 3)));

// Writes an answer in a form of its own.
typedef void lw_writer(const void *it, FILE *out);

typedef struct lw_question {
    const char *name, *summary;
    const char *takes;  // options by name, spaces between; json always
    const char *doc;    // the help's paragraph
    size_t size;        // of what it works in, which begins as zeros

    // Takes what is asked; the inputs stay where they are. False: refused.
    bool (*begin)(void *it, const lw_inputs *inputs, const lw_options *options,
                  lw_refusal *refusal);

    // How many steps there are by now: when all of these are done there may be more; NULL: none.
    // One that can be worked out elsewhere is given and taken as so many bytes; `part` 0: none can.
    size_t (*steps)(void *it);
    void (*step)(void *it, size_t step);
    bool (*are_apart)(const void *it);  // those of now may be done at once; NULL: in their order
    size_t part;
    void (*give)(const void *it, size_t step, void *part);
    void (*take)(void *it, size_t step, const void *part);

    void (*end)(void *it);  // puts together what the steps gave; NULL: nothing is to be done
    bool (*is_answered)(const void *it);  // else the program ends with 1; NULL: always
    lw_tell *tell;

    lw_writer *draw;            // a picture as SVG; NULL: none
    lw_writer *draw_back;       // its second page; NULL: it has one
    lw_writer *log;             // a history as CSV; NULL: none
    lw_writer *map;             // where it was, as GeoJSON; NULL: none
    lw_writer *record;          // what it found, for -o; NULL: none
    void (*release)(void *it);  // gives memory back; NULL: it holds none
    const char *work;           // what is worked out, for a line of progress
} lw_question;

bool lw_always_apart(const void *it);  // for are_apart

// clang-format off
// In the order of the help. X(hold) stands for `const lw_question lw_question_hold` in hold/.
#define LW_QUESTION_LIST(X) \
    X(fly)   \
    X(range) \
    X(modes) \
    X(ride)  \
    X(swims) \
    X(pick)  \
    X(hold)  \
    X(why)   \
    X(card)  \
    X(sensitivity) \
    X(foil)  \
    X(hull)
// clang-format on

#define LW_AS_QUESTION(name) extern const lw_question lw_question_##name;
LW_QUESTION_LIST(LW_AS_QUESTION)

const lw_question *lw_question_named(const char *name);  // or NULL
const lw_question *lw_question_at(size_t i);             // NULL behind the last

#endif
