// words.c - words that several answers about logged days share.
// SPDX-License-Identifier: MIT

#include "answer/log/words.h"

const char *lw_verdict_text(const lw_entry *entry, char text[LW_NAME_LENGTH])
{
    lw_text_fit(text, LW_NAME_LENGTH, "%s", entry->day.verdict);
    for (char *at = text; *at; at++) {
        if (*at == '-') *at = ' ';
    }
    return text[0] ? text : NULL;
}

const char *lw_short_id(const lw_entry *entry, char text[LW_SHORT_ID + 1])
{
    lw_text_fit(text, LW_SHORT_ID + 1, "%s", entry->id);
    return text;
}
