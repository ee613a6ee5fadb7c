// check.h - `lullwise check`: are these files sound, and what in them is doubtful?
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_CHECK_H
#define LW_ANSWER_CHECK_H

#include "answer/inputs.h"
#include "answer/sensitivity/sensitivity.h"

// One file, as far as it could be read.
typedef struct lw_checked_file {
    const char *path;
    const lw_record *record;  // NULL when it is none of ours
    bool is_sound;
    size_t faults, doubts;     // of this file
    size_t values, at_preset;  // and those not given
    char name[LW_NAME_LENGTH];
} lw_checked_file;

typedef struct lw_checked {
    lw_inputs inputs;  // what was read, over the examples
    lw_checked_file files[LW_GIVEN_MOST];
    size_t count;
    lw_faults faults;              // of all of them
    const lw_sensed *sensitivity;  // or NULL: not asked for
} lw_checked;

// Reads the files that stand as operands. From {0}; the faults are to be freed.
void lw_checked_read(lw_checked *checked, const lw_options *options);

// Faults are told to programs only: a terminal prints them by line and column.
void lw_checked_tell(const void *it, lw_teller *teller);

#endif
