// list.c - all logged days told, a line each.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "answer/log/words.h"

// clang-format off
static const lw_item all_columns[] = {
    {"date",    "date",    LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"pin",     "pin",     LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"lull",    "lull",    LW_AS_BARE,   LW_UNIT_KN,   1, NULL},
    {"mean",    "mean",    LW_AS_BARE,   LW_UNIT_KN,   1, NULL},
    {"puff",    "puff",    LW_AS_BARE,   LW_UNIT_KN,   1, NULL},
    {"swims",   "swims",   LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL},
    {"verdict", "verdict", LW_AS_TEXT,   LW_UNIT_NONE, 0, "-"},
    {"id",      NULL,      LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"short",   NULL,      LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},  // headed where a date has two
    {"boat",    NULL,      LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"sailor",  NULL,      LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"waters",  "waters",  LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
};
// clang-format on
#define SHORT_COLUMN 8

static bool has_two_of_a_date(const lw_entries *days)
{
    for (size_t i = 1; i < days->count; i++) {
        if (strcmp(days->list[i].day.date, days->list[i - 1].day.date) == 0) return true;
    }
    return false;
}

static void tell_day(const lw_entry *entry, const lw_entries *days, lw_teller *t)
{
    const lw_logged *day = &entry->day;
    char verdict[LW_NAME_LENGTH], id[LW_ID_LENGTH];
    lw_tell_row(t);
    lw_tell_text(t, NULL, day->date);
    lw_tell_text(t, NULL, day->pin);
    lw_tell_number(t, NULL, day->wind.lull);
    lw_tell_number(t, NULL, day->wind.mean);
    lw_tell_number(t, NULL, day->wind.puff);
    lw_tell_number(t, NULL, day->outing.swims);
    lw_tell_text(t, NULL, lw_verdict_text(entry, verdict));
    lw_tell_text(t, NULL, entry->id);
    lw_tell_text(t, NULL, lw_short_id(entry, days, id));
    lw_tell_text(t, NULL, day->boat);
    lw_tell_text(t, NULL, day->sailor);
    lw_tell_text(t, NULL, day->waters);
}

void lw_log_says_count(const lw_listed *listed, lw_teller *t)
{
    const size_t count = listed->days->count;
    char text[700], path[512];
    lw_text_tame(path, sizeof path, listed->path);
    if (count == 0)
        LW_FIT(text, "No day is logged yet in %s.", path);
    else
        LW_FIT(text, "%zu day%s in %s.", count, count == 1 ? "" : "s", path);
    lw_tell_sentence(t, "says", text);
    lw_tell_name(t, "logbook", path);
}

void lw_listed_tell(const void *it, lw_teller *t)
{
    const lw_listed *listed = it;
    const size_t count = listed->days->count;
    lw_item columns[LW_COUNT_OF(all_columns)];
    lw_log_says_count(listed, t);
    memcpy(columns, all_columns, sizeof columns);
    if (has_two_of_a_date(listed->days)) columns[SHORT_COLUMN].head = "id";
    lw_tell_table(t, "days", count ? "" : NULL, columns, LW_COUNT_OF(columns));
    for (size_t i = 0; i < count; i++) tell_day(&listed->days->list[i], listed->days, t);
    lw_tell_end(t);
}
