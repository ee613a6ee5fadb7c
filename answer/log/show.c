// show.c - one logged day told with everything in it.
// SPDX-License-Identifier: MIT

#include <inttypes.h>
#include <string.h>

#include "answer/log/words.h"

static void tell_head(const lw_entry *entry, lw_teller *t)
{
    const lw_logged *day = &entry->day;
    char text[600], verdict[LW_NAME_LENGTH];
    const char *judged = lw_verdict_text(entry, verdict);
    LW_FIT(text, "%s, %s. %s; %s. Pin %s%s%s.", day->date, day->waters, day->boat, day->sailor,
           day->pin, judged ? ": " : "", judged ? judged : "");
    lw_tell_sentence(t, "says", text);
    lw_tell_name(t, "id", entry->id);
    lw_tell_name(t, "date", day->date);
    lw_tell_name(t, "waters", day->waters);
    lw_tell_name(t, "boat", day->boat);
    lw_tell_name(t, "sailor", day->sailor);
    lw_tell_name(t, "pin", day->pin);
    lw_tell_name(t, "verdict", day->verdict[0] ? day->verdict : NULL);
}

// "flap up stop" of "flap_up_stop".
static void say_key(const char *key, char text[40])
{
    lw_text_fit(text, 40, "%s", key);
    for (char *at = text; *at; at++) {
        if (*at == '_') *at = ' ';
    }
}

static void tell_section(const lw_section *section, const lw_logged *day, lw_teller *t)
{
    const lw_table *table = section->table;
    lw_tell_object(t, table->key, table->title);
    for (size_t i = 0; i < table->count; i++) {
        char head[40];
        say_key(table->rows[i].key, head);
        lw_item item = lw_item_of(&table->rows[i], head);
        item.none = "not told";
        lw_tell_number(t, &item,
                       lw_quantity_value(&table->rows[i], (const char *)day + section->offset));
    }
    lw_tell_end(t);
}

static void tell_signs(const lw_entry *entry, lw_teller *t)
{
    const lw_sign_set set = entry->day.signs;
    lw_tell_list(t, "signs", set ? "She did this" : NULL);
    for (int s = 0; s < LW_SIGNS; s++) {
        if (set & LW_SIGN_BIT(s)) lw_tell_text(t, NULL, lw_sign_text((lw_sign)s));
    }
    lw_tell_end(t);
}

// The notes are the sailor's own words: a line each, as they were written.
static void tell_notes(const lw_entry *entry, lw_teller *t)
{
    const char *at = entry->notes ? entry->notes : "";
    lw_tell_list(t, "notes", *at ? "Notes" : NULL);
    while (*at) {
        char line[LW_NOTES_MOST + 1];
        const char *end = strchr(at, '\n');
        const size_t length = end ? (size_t)(end - at) : strlen(at);
        LW_FIT(line, "%.*s", (int)length, at);
        lw_tell_text(t, NULL, line);
        at += length + (end != NULL);
    }
    lw_tell_end(t);
}

static void tell_hash(const char *key, uint64_t hash, lw_teller *t)
{
    char text[LW_ID_LENGTH];
    LW_FIT(text, "%016" PRIx64, hash);
    lw_tell_name(t, key, text);
}

static void tell_tracks(const lw_entry *entry, lw_teller *t)
{
    static const lw_item columns[] = {
        {"hash", NULL, LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
        {"file", "", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
    };
    lw_tell_table(t, "tracks", entry->track_count ? "Tracks" : NULL, columns, LW_COUNT_OF(columns));
    for (size_t i = 0; i < entry->track_count; i++) {
        char hash[LW_ID_LENGTH];
        LW_FIT(hash, "%016" PRIx64, entry->tracks[i].hash);
        lw_tell_row(t);
        lw_tell_text(t, NULL, hash);
        lw_tell_text(t, NULL, entry->tracks[i].file);
    }
    lw_tell_end(t);
}

void lw_entry_tell(const void *it, lw_teller *t)
{
    const lw_entry *entry = it;
    tell_head(entry, t);
    for (size_t i = 0; i < lw_logged_record.section_count; i++)
        tell_section(&lw_logged_record.sections[i], &entry->day, t);
    tell_signs(entry, t);
    tell_notes(entry, t);
    tell_tracks(entry, t);
    tell_hash("boat_hash", entry->boat_hash, t);
    tell_hash("sailor_hash", entry->sailor_hash, t);
    lw_tell_name(t, "boat_record", entry->boat);
    lw_tell_name(t, "sailor_record", entry->sailor);
}
