// words.h - words that several answers about logged days share.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_LOG_WORDS_H
#define LW_ANSWER_LOG_WORDS_H

#include "answer/log/log.h"

// "much too strong"; NULL: not told.
const char *lw_verdict_text(const lw_entry *entry, char text[LW_NAME_LENGTH]);

// The digits of an id that a person is shown.
// So many digits of its id, eight or more, that no other of the days begins with them.
const char *lw_short_id(const lw_entry *entry, const lw_entries *days, char text[LW_ID_LENGTH]);

// "12 days in book.db.", and the logbook's path.
void lw_log_says_count(const lw_listed *listed, lw_teller *teller);

#endif
