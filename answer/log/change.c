// change.c - what a change of the logbook has done, told.
// SPDX-License-Identifier: MIT

#include "answer/log/words.h"

#define DIGITS 12  // of the id: eight of its second, four of chance

static void tell_entry(const lw_log_change *change, const char *path, lw_teller *t)
{
    const lw_entry *entry = change->entry;
    char text[800];
    LW_FIT(text, "%s %.*s: %s, %s, pin %s. In %s.", change->verb, DIGITS, entry->id,
           entry->day.date, entry->day.waters, entry->day.pin, path);
    lw_tell_sentence(t, "says", text);
    lw_tell_name(t, "id", entry->id);
    lw_tell_name(t, "date", entry->day.date);
}

static void tell_import(const lw_log_change *change, const char *path, lw_teller *t)
{
    static const lw_item added = {.key = "added"}, known = {.key = "known"};
    static const lw_item different = {.key = "different"};
    char text[800];
    LW_FIT(text, "%zu day%s added to %s; %zu %s there already.", change->added,
           change->added == 1 ? "" : "s", path, change->known, change->known == 1 ? "was" : "were");
    lw_tell_sentence(t, "says", text);
    lw_tell_number(t, &added, (double)change->added);
    lw_tell_number(t, &known, (double)change->known);
    lw_tell_number(t, &different, (double)change->different);
    if (change->different == 0) return;
    LW_FIT(text,
           "%zu of them %s changed in one of the two and left as in the logbook. To take the "
           "other, remove the day and import again.",
           change->different, change->different == 1 ? "was" : "were");
    lw_tell_sentence(t, "differs", text);
}

void lw_log_change_tell(const void *it, lw_teller *t)
{
    const lw_log_change *change = it;
    char path[512];
    lw_text_tame(path, sizeof path, change->path);
    lw_tell_name(t, "logbook", path);
    lw_tell_name(t, "did", change->key);
    if (change->entry)
        tell_entry(change, path, t);
    else
        tell_import(change, path, t);
}
