// caution.h - is this sensible to sail? Plain words; local rules and qualified people decide.
// SPDX-License-Identifier: MIT

#ifndef LW_WORDS_CAUTION_H
#define LW_WORDS_CAUTION_H

#include "answer/teller.h"
#include "answer/words/picked.h"

#define LW_CAUTIONS_MOST  10
#define LW_CAUTION_LENGTH 240

// The cautions for the day, those with numbers first; returns how many.
size_t lw_cautions(const lw_picked *picked, char lines[LW_CAUTIONS_MOST][LW_CAUTION_LENGTH]);

// The same into the list that is open.
void lw_tell_cautions(lw_teller *teller, const lw_picked *picked);

#endif
