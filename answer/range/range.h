// range.h - `lullwise range`: from what wind each pin flies, up to what wind it is held, and why.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_RANGE_H
#define LW_ANSWER_RANGE_H

#include "answer/question.h"
#include "lullwise/craft.h"
#include "lullwise/range.h"

// Winds for which turns are told, of those of a range: 6, 8 ... 24 kn.
#define LW_RANGED_FIRST 2
#define LW_RANGED_STEP  2
#define LW_RANGED_WINDS 10

// A pin on a course.
typedef struct lw_ranged_one {
    lw_range range;
    double most[LW_RANGED_WINDS];  // turns that hold most; NAN: no flight keeps its margins
} lw_ranged_one;

typedef struct lw_ranged {
    const lw_inputs *inputs;
    lw_craft craft;
    double puff;  // above the wind that she is trimmed for [m/s]
    lw_unit speed_unit;
    double width;                                     // [px] of the picture; 0: as it comes
    size_t first, count;                              // pins asked for
    lw_ranged_one of[LW_PINS_MOST][LW_COURSE_COUNT];  // by pin of the boat
} lw_ranged;

// The point of wind `i` of those for which turns are told.
const lw_range_point *lw_ranged_point(const lw_range *range, size_t i);

// The faces of the question.
bool lw_ranged_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                     lw_refusal *refusal);
size_t lw_ranged_steps(void *it);
void lw_ranged_step(void *it, size_t step);
void lw_ranged_give(const void *it, size_t step, void *part);
void lw_ranged_take(void *it, size_t step, const void *part);
bool lw_ranged_is_answered(const void *it);
void lw_ranged_tell(const void *it, lw_teller *teller);
void lw_ranged_draw(const void *it, FILE *out);

// What was asked, winds in a unit; and what ends a pin's range.
#define LW_RANGED_LENGTH 500
void lw_ranged_question(const lw_ranged *ranged, lw_unit unit, char text[LW_RANGED_LENGTH]);
const char *lw_ranged_end(const lw_range *range);

#endif
