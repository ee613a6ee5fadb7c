// compared.h - two answers side by side, in sentences: as it is, and with something changed.
// SPDX-License-Identifier: MIT

#ifndef LW_WORDS_COMPARED_H
#define LW_WORDS_COMPARED_H

#include "answer/words/picked.h"

// One set-up of an answer: the pin's place in the ranking.
typedef struct lw_side {
    const lw_picked *picked;  // ranked
    const lw_placing *place;
} lw_side;

// The side of a pin's label, or of the first place where it is NULL or no pin's; the ranking must
// have a place.
lw_side lw_side_of(const lw_picked *picked, const char *label);

// What the change does, sentence by sentence, speeds in the unit of `as_is`; returns how many.
#define LW_COMPARED_MOST 8
size_t lw_compared(lw_side as_is, lw_side changed, char lines[LW_COMPARED_MOST][LW_REASON_LENGTH]);

#endif
