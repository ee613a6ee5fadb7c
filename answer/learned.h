// learned.h - what was learned of a boat, put into her.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_LEARNED_H
#define LW_ANSWER_LEARNED_H

#include "answer/options.h"
#include "lullwise/day.h"

#define LW_HASH_TEXT 17  // 16 hexadecimal digits and the closing zero

// The hash of a boat as she was measured, as it is written.
void lw_boat_hash_text(const lw_boat *boat, char text[LW_HASH_TEXT]);

// Puts what the file of --learned has into boat, sailor and day, as read from theirs. False, with
// faults, where it cannot be read or is of another boat; true without the option.
bool lw_learned_put(lw_inputs *inputs, const lw_options *options, lw_faults *faults);

#endif
