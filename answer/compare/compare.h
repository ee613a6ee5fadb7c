// compare.h - two rankings side by side, as it is and with something changed.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_COMPARE_H
#define LW_ANSWER_COMPARE_H

#include "answer/teller.h"
#include "answer/words/compared.h"

// Of two set-ups: numbers beside each other, every pin of both, orders, and what the change does.
void lw_tell_compared(lw_teller *teller, lw_side as_is, lw_side changed);

#endif
