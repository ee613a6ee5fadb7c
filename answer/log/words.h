// words.h - words that several answers about logged days share.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_LOG_WORDS_H
#define LW_ANSWER_LOG_WORDS_H

#include "answer/log/log.h"

// "much too strong"; NULL: not told.
const char *lw_verdict_text(const lw_entry *entry, char text[LW_NAME_LENGTH]);

// The digits of an id that a person is shown.
const char *lw_short_id(const lw_entry *entry, char text[LW_SHORT_ID + 1]);

// "12 days in book.db.", and the logbook's path.
void lw_log_says_count(const lw_listed *listed, lw_teller *teller);

#endif
