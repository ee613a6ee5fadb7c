// picked.h - one answer of `lullwise pick`: worked out, printed, as JSON.
// SPDX-License-Identifier: MIT

#ifndef LW_PICKED_H
#define LW_PICKED_H

#include <jansson.h>

#include "answer/options.h"
#include "answer/words/picked.h"

// Works all of it out from the inputs; false, after a complaint, when memory ran out.
bool lw_picked_work_out(lw_picked *picked, const char *what);
void lw_picked_free(lw_picked *picked);

// The same in parts, with the outlook's memory there: after the first, other effort may be set.
void lw_picked_begin(lw_picked *picked);
void lw_picked_sail(lw_picked *picked, const char *what);

json_t *lw_picked_json(const lw_picked *picked);

// The whole answer on the terminal; and two of them side by side.
void lw_picked_print(const lw_picked *picked);
void lw_picked_print_head(const lw_picked *picked);
void lw_picked_print_against(const lw_picked *as_is, const lw_picked *changed,
                             const lw_options *options);

#endif
