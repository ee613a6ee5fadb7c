// learned.h - what was learned of a boat, put into her.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_LEARNED_H
#define LW_ANSWER_LEARNED_H

#include "answer/options.h"
#include "answer/teller.h"
#include "lullwise/learned.h"

#define LW_HASH_TEXT 17  // 16 hexadecimal digits and the closing zero

// The hash of a boat as she was measured, as it is written.
void lw_boat_hash_text(const lw_boat *boat, char text[LW_HASH_TEXT]);

// Puts what the file of --learned has into boat, sailor and day, as read from theirs. False, with
// faults, where it cannot be read or is of another boat; true without the option.
bool lw_learned_put(lw_inputs *inputs, const lw_options *options, lw_faults *faults);

// Whether it was learned of this boat, measured as she is.
bool lw_learned_is_of(const lw_learned_boat *learned, const lw_boat *boat);

// A cell of a table: a value in SI, as its row shows it, behind a sign.
void lw_learned_tell_value(lw_teller *teller, const lw_quantity *row, double si, const char *sign);

// What was learned with its errors, told where it is taken from its file.
typedef struct lw_learned_told {
    const lw_learned_boat *learned;
    bool is_hers;  // of the boat that is asked about
} lw_learned_told;
void lw_learned_tell(const void *it, lw_teller *teller);

#endif
