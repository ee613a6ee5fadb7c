// inputs.h - what questions are asked of: a boat, a sailor and a day.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_INPUTS_H
#define LW_ANSWER_INPUTS_H

#include "answer/options.h"
#include "lullwise/day.h"

#define LW_INPUT_OPTIONS "boat sailor day learned set aim"

// Files of --boat, --sailor and --day (the examples of `lullwise new` where none is given), what
// --learned has of the boat, then --set and --aim in their order. All faults of all of them are
// added; true when there was none.
bool lw_inputs_read(lw_inputs *inputs, const lw_options *options, lw_faults *faults);

// Several assignments, given with an option, which faults name.
typedef struct lw_assignments {
    const char *option;
    const char *const *texts;
    size_t count;
} lw_assignments;

// --set and --aim once more, where a record of the inputs is another by now, then these; what only
// whole records show is looked at behind the last. Changed only when it returns true.
bool lw_inputs_put(lw_inputs *inputs, const lw_options *options, const lw_assignments *more,
                   lw_faults *faults);

// One more assignment ("boat.", "sailor." or "day." in front, or not), given with an option, which
// faults name. The inputs are changed only when it returns true.
bool lw_inputs_set(lw_inputs *inputs, const char *option, const char *assignment,
                   lw_faults *faults);

#endif
