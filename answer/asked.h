// asked.h - what questions are given beside boat, sailor and day: a pin, numbers.
// SPDX-License-Identifier: MIT

#ifndef LW_ASKED_H
#define LW_ASKED_H

#include "answer/question.h"
#include "lullwise/range.h"

#define LW_ALL_PINS (-1)

// The pin of --pin, or LW_ALL_PINS without it. False: refused.
bool lw_asked_pin(const lw_options *options, const lw_boat *boat, int *pin, lw_refusal *refusal);

// The pins asked for: that of --pin, or all of the boat's. False: refused.
bool lw_asked_pins(const lw_options *options, const lw_boat *boat, size_t *first, size_t *count,
                   lw_refusal *refusal);

// A number given with an option, in SI, or *si as it was. Refused when it is unsound or outside
// `low` to `high`, which `what` names ("the boat's place").
typedef struct lw_bounds {
    double low, high;
    const char *what;  // NULL: no bounds but those of the option
} lw_bounds;
bool lw_asked_number(const lw_options *options, const char *name, lw_bounds bounds, double *si,
                     lw_refusal *refusal);

// The same, and it must be whole.
bool lw_asked_whole(const lw_options *options, const char *name, double *value,
                    lw_refusal *refusal);

// The course of --course; upwind without it. False: refused.
bool lw_asked_course(const lw_options *options, lw_course_kind *course, lw_refusal *refusal);

lw_craft lw_asked_craft(const lw_inputs *inputs);

#endif
