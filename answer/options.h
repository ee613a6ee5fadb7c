// options.h - the options of all questions in one table, and those given with one.
// SPDX-License-Identifier: MIT

#ifndef LW_OPTIONS_H
#define LW_OPTIONS_H

#include "lullwise/quantity.h"
#include "records/fault.h"

#define LW_GIVEN_MOST 64  // options, and operands, given at once

typedef struct lw_option {
    const char *name;        // without the --
    char letter;             // "-o"; 0: none
    const char *argument;    // as the help shows it; NULL: a switch
    const lw_quantity *row;  // range and unit of a number; NULL: a text
    const char *help;
} lw_option;

typedef struct lw_options {
    const char *command;      // the question's name, for messages
    lw_unit speed_unit;       // of speeds in sentences; LW_UNIT_NONE: knots
    const char *today;        // as in 2030-05-17; NULL: not known
    bool (*wants_end)(void);  // whether a long step should end with what there is; or NULL
    size_t count, operand_count;
    const lw_option *given[LW_GIVEN_MOST];
    const char *texts[LW_GIVEN_MOST];  // what was given with each
    const char *operands[LW_GIVEN_MOST];
} lw_options;

const lw_option *lw_option_named(const char *name);  // or NULL
const lw_option *lw_option_at(size_t i);             // NULL behind the last

// Last text given with an option, or NULL; whether it was given; the n-th of a repeated one, or
// NULL behind the last.
const char *lw_options_text(const lw_options *options, const char *name);
bool lw_options_has(const lw_options *options, const char *name);
const char *lw_options_nth(const lw_options *options, const char *name, size_t n);

// The number given with an option that has a row, in SI. True when it was given and is sound; a
// fault is added when it is not.
bool lw_options_quantity(const lw_options *options, const char *name, double *si,
                         lw_faults *faults);

#endif
