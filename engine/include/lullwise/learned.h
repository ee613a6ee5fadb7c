// learned.h - what is learned of a boat, as it is told and kept in a file.
// SPDX-License-Identifier: MIT

#ifndef LW_LEARNED_H
#define LW_LEARNED_H

#include "lullwise/lesson.h"

#define LW_LEARNED_LEAST 6    // numbers told, below which nothing is learned      [judged]
#define LW_ALIKE         0.9  // correlation above which two cannot be told apart  [judged]
#define LW_AS_BEFORE     0.8  // of the error before: one that is not much smaller [judged]

typedef struct lw_learned {
    lw_hidden values, errors;  // most likely, and one standard error of each
    double covariance[LW_HIDDEN_COUNT][LW_HIDDEN_COUNT];  // in errors before: 1 before any day
    size_t days, numbers;                                 // that counted, and that stood in them
} lw_learned;

// As it is kept in a file, for the boat whose record has this hash.
typedef struct lw_taught {
    double days, numbers;
} lw_taught;
typedef struct lw_learned_boat {
    char boat[LW_NAME_LENGTH];  // its name
    char hash[LW_NAME_LENGTH];  // 16 hexadecimal digits
    lw_hidden values, errors;
    lw_taught from;
} lw_learned_boat;
extern const lw_record lw_learned_record;

// Root of the mean squared difference between what days told and what was foreseen of them without
// them: five parts of the days left out in turn. NAN where no day tells it.
typedef struct lw_left_out {
    double as_measured[LW_LESSON_KINDS], learned[LW_LESSON_KINDS];
} lw_left_out;

#endif
