// entry.c - a day as the logbook keeps it.
// SPDX-License-Identifier: MIT

#define _DEFAULT_SOURCE  // getentropy

#include "records/logbook/entry.h"

#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

#include "records/record_file.h"
#include "records/record_hash.h"

lw_entry lw_entry_blank(void)
{
    lw_entry entry = {0};
    lw_record_preset(&lw_logged_record, &entry.day);
    return entry;
}

void lw_entry_free(lw_entry *entry)
{
    free(entry->notes), free(entry->boat), free(entry->sailor);
    entry->notes = entry->boat = entry->sailor = NULL;
}

bool lw_entry_put(char **member, const char *text, size_t length)
{
    char *copy = malloc(length + 1);
    if (!copy) return false;
    memcpy(copy, text, length);
    copy[length] = '\0';
    free(*member);
    *member = copy;
    return true;
}

bool lw_entry_draw_id(char id[LW_ID_LENGTH])
{
    unsigned char bytes[4];
    if (getentropy(bytes, sizeof bytes) != 0) return false;
    snprintf(id, LW_ID_LENGTH, "%08" PRIx32, (uint32_t)time(NULL));
    for (size_t i = 0; i < sizeof bytes; i++) snprintf(id + 8 + 2 * i, 3, "%02x", bytes[i]);
    return true;
}

char *lw_entry_record_text(const lw_record *record, const void *data)
{
    char *text = NULL;
    size_t length = 0;
    FILE *out = open_memstream(&text, &length);
    if (!out) return NULL;
    lw_record_write_bare(record, data, out);
    if (fclose(out) == 0) return text;
    free(text);
    return NULL;
}

// --- a list

lw_entry *lw_entries_add(lw_entries *entries)
{
    if (entries->count == entries->room) {
        const size_t room = entries->room ? 2 * entries->room : 16;
        lw_entry *list = realloc(entries->list, room * sizeof *list);
        if (!list) return NULL;
        entries->list = list, entries->room = room;
    }
    lw_entry *entry = &entries->list[entries->count++];
    *entry = lw_entry_blank();
    return entry;
}

lw_entry *lw_entries_find(const lw_entries *entries, const char *id)
{
    for (size_t i = 0; i < entries->count; i++) {
        if (strcmp(entries->list[i].id, id) == 0) return &entries->list[i];
    }
    return NULL;
}

void lw_entries_free(lw_entries *entries)
{
    for (size_t i = 0; i < entries->count; i++) lw_entry_free(&entries->list[i]);
    free(entries->list);
    *entries = (lw_entries){0};
}

// --- what the parts show together

static bool say(const lw_entry_source *source, const char *key, const char *read,
                const char *sentence, lw_faults *faults)
{
    const lw_written written = {.file = source->file,
                                .line = source->line,
                                .column = source->line ? 1 : 0,
                                .key = key,
                                .text = read};
    LW_FIT(lw_faults_add(faults, &written)->sentence, "%s", sentence);
    return false;
}

bool lw_entry_has_date(const lw_entry *entry, const lw_entry_source *source, lw_faults *faults)
{
    const char *date = entry->day.date;
    if (!lw_date_is_sound(date))
        return say(source, "date", date, "no date of the calendar; write it as 2030-05-17", faults);
    if (source->today && strcmp(date, source->today) > 0)
        return say(source, "date", date, "still to come: a day is logged when it is sailed",
                   faults);
    return true;
}

static bool are_numbers_sound(const lw_entry *entry, const lw_entry_source *source,
                              lw_faults *faults)
{
    const lw_wind *wind = &entry->day.wind;
    const double swims = entry->day.outing.swims;
    bool is_sound = true;
    if (wind->lull > wind->mean || wind->mean > wind->puff)
        is_sound = say(source, "wind", "", "lull, mean and puff are not in this order", faults);
    if (swims >= 0.0 && swims != (double)(long)swims)
        is_sound = say(source, "outing.swims", "", "swims are counted: a whole number", faults);
    return is_sound;
}

// A record is read from its text, which becomes the one that is kept.
static bool settle_record(char **text, const lw_record *record, void *data,
                          const lw_entry_source *source, lw_faults *faults)
{
    lw_faults inside = {0};
    const lw_source_text written = {record->name, *text ? *text : "", *text ? strlen(*text) : 0};
    const bool is_read = *text && lw_record_read_text(record, &written, data, &inside);
    lw_faults_free(&inside);
    if (!is_read)
        return say(source, record->name, "", "the record that is kept of it cannot be read",
                   faults);
    char *kept = lw_entry_record_text(record, data);
    if (!kept) return lw_faults_no_memory(faults, source->file);
    free(*text);
    *text = kept;
    return true;
}

// A name may be told too; it must then be that of the record.
static bool settle_name(char name[LW_NAME_LENGTH], const char *of_record, const char *key,
                        const lw_entry_source *source, lw_faults *faults)
{
    if (name[0] && strcmp(name, of_record) != 0)
        return say(source, key, name, "not the name in the record that is kept of it", faults);
    lw_text_fit(name, LW_NAME_LENGTH, "%s", of_record);
    return true;
}

static bool settle_boat(lw_entry *entry, const lw_entry_source *source, lw_faults *faults)
{
    lw_boat boat;
    if (!settle_record(&entry->boat, &lw_boat_record, &boat, source, faults)) return false;
    entry->boat_hash = lw_record_hash(&lw_boat_record, &boat);
    const bool is_named = settle_name(entry->day.boat, boat.name, "boat", source, faults);
    if (lw_boat_pin(&boat, entry->day.pin) >= 0) return is_named;
    return say(source, "pin", entry->day.pin, "the boat has no pin of this label", faults);
}

static bool settle_sailor(lw_entry *entry, const lw_entry_source *source, lw_faults *faults)
{
    lw_sailor sailor;
    if (!settle_record(&entry->sailor, &lw_sailor_record, &sailor, source, faults)) return false;
    entry->sailor_hash = lw_record_hash(&lw_sailor_record, &sailor);
    return settle_name(entry->day.sailor, sailor.name, "sailor", source, faults);
}

bool lw_entry_settle(lw_entry *entry, const lw_entry_source *source, lw_faults *faults)
{
    const size_t before = faults->fault_count;
    lw_entry_has_date(entry, source, faults);
    are_numbers_sound(entry, source, faults);
    settle_boat(entry, source, faults);
    settle_sailor(entry, source, faults);
    return faults->fault_count == before;
}
