// margin_text.h - margins in the sailor's words, and the order in which they run out.
// SPDX-License-Identifier: MIT

#ifndef LW_MARGIN_TEXT_H
#define LW_MARGIN_TEXT_H

#include "answer/teller.h"
#include "lullwise/flight.h"

// What is left ("flap travel, up"), and what happens when it is used up ("flap at its up stop").
// Both for a row of lw_margins_table; LW_MARGIN_COUNT stands for "no steady balance".
const char *lw_margin_name(size_t row);
const char *lw_margin_end(size_t row);
const char *lw_margin_key(size_t row);  // as in JSON; NULL for LW_MARGIN_COUNT

// All rows, the first to run out first.
void lw_margins_order(const lw_margins *margins, size_t order[LW_MARGIN_COUNT]);

// The table `margins` in that order, each in its own unit.
void lw_tell_margins(lw_teller *teller, const lw_margins *margins, bool is_shown);

#endif
