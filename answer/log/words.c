// words.c - words that several answers about logged days share.
// SPDX-License-Identifier: MIT

#include "answer/log/words.h"

#include <string.h>

const char *lw_verdict_text(const lw_entry *entry, char text[LW_NAME_LENGTH])
{
    lw_text_fit(text, LW_NAME_LENGTH, "%s", entry->day.verdict);
    for (char *at = text; *at; at++) {
        if (*at == '-') *at = ' ';
    }
    return text[0] ? text : NULL;
}

const char *lw_short_id(const lw_entry *entry, const lw_entries *days, char text[LW_ID_LENGTH])
{
    size_t digits = LW_SHORT_ID;
    for (size_t i = 0; i < days->count; i++) {
        const char *other = days->list[i].id;
        if (strcmp(other, entry->id) == 0) continue;
        while (digits < LW_ID_LENGTH - 1 && strncmp(other, entry->id, digits) == 0) digits++;
    }
    lw_text_fit(text, digits + 1, "%s", entry->id);
    return text;
}
