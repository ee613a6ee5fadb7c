// log.c - logged days in the page: held while it is open, read, changed, told.
// SPDX-License-Identifier: MIT

#include <stdlib.h>
#include <string.h>

#include "answer/log/entered.h"
#include "answer/log/log.h"
#include "answer/parcel.h"
#include "records/logbook/arrived.h"
#include "web/page.h"

static lw_entries held;  // as a logbook gives them: by date, and by id within one

// --- what is held

static void drop(const char *id)
{
    lw_entry *entry = lw_entries_find(&held, id);
    if (!entry) return;
    lw_entry_free(entry);
    const size_t behind = held.count - 1 - (size_t)(entry - held.list);
    memmove(entry, entry + 1, behind * sizeof *entry);
    held.count--;
}

static bool is_before(const lw_entry *a, const lw_entry *b)
{
    const int order = strcmp(a->day.date, b->day.date);
    return order ? order < 0 : strcmp(a->id, b->id) < 0;
}

// Takes over what the entry has.
static void hold(const lw_entry *entry)
{
    drop(entry->id);
    if (!lw_entries_add(&held)) abort();
    size_t place = held.count - 1;
    for (; place > 0 && is_before(entry, &held.list[place - 1]); place--)
        held.list[place] = held.list[place - 1];
    held.list[place] = *entry;
}

// --- days in the room and in the parcel

static void put_day(const lw_entry *entry)
{
    const lw_columns columns = lw_columns_of();
    lw_parcel_object("");
    for (size_t i = 0; i < columns.count; i++) {
        char *text = lw_column_text(&columns.list[i], entry);
        if (!text) abort();
        if (text[0]) lw_parcel_text(columns.list[i].key, text);
        free(text);
    }
    lw_parcel_end();
}

static void answer(const lw_entry *days, size_t count, bool is_sound, lw_faults *faults)
{
    lw_parcel_begin();
    lw_parcel_truth("is_sound", is_sound);
    lw_parcel_faults(faults);
    lw_parcel_list("days");
    for (size_t i = 0; is_sound && i < count; i++) put_day(&days[i]);
    lw_parcel_end();
    lw_faults_free(faults);
}

// Keys of columns and their texts in turn.
static void read_columns(lw_entry *entry, const char *at, const char *end, lw_faults *faults)
{
    const lw_columns columns = lw_columns_of();
    while (at < end) {
        const lw_column *column = lw_columns_named(&columns, at);
        const char *text = at + strlen(at) + 1;
        const lw_written written = {
            .file = "", .key = column ? at : "", .text = column ? text : at};
        if (text >= end) return;
        if (column)
            lw_column_put_text(column, entry, &written, faults);
        else
            lw_arrived_unknown(&columns, &written, faults);
        at = text + strlen(text) + 1;
    }
}

LW_EXPORT(lw_web_log_take) void lw_web_log_take(size_t length, int holds)
{
    const char *room = lw_web_room(length), *at = room + strlen(room) + 1;
    const lw_entry_source source = {.file = "", .today = room[0] ? room : NULL};
    lw_faults faults = {0};
    lw_entry entry = lw_entry_blank();
    read_columns(&entry, at, room + length, &faults);
    const bool is_sound = faults.fault_count == 0 && lw_arrived_settle(&entry, &source, &faults);
    answer(&entry, 1, is_sound, &faults);
    if (is_sound && holds)
        hold(&entry);
    else
        lw_entry_free(&entry);
}

LW_EXPORT(lw_web_log_csv) void lw_web_log_csv(size_t length)
{
    const char *room = lw_web_room(length);
    const size_t head = strlen(room) + 1;
    const lw_source_text source = {"", room + head, length - head};
    lw_faults faults = {0};
    lw_entries days = {0};
    const bool is_sound =
        lw_source_is_clean(&source, &faults) && lw_days_read_csv(&source, room, &days, &faults);
    answer(days.list, days.count, is_sound, &faults);
    lw_entries_free(&days);
}

// --- changes

// Today, an id, options. Returns the id; NULL: there is none, or an option is none.
static const char *read_options(lw_options *options, size_t length)
{
    const char *room = lw_web_room(length), *end = room + length;
    const char *id = room + strlen(room) + 1;
    *options = (lw_options){.command = "log", .today = room};
    if (id >= end || strlen(id) >= LW_ID_LENGTH) return NULL;
    return lw_web_options(options, id + strlen(id) + 1, end) ? id : NULL;
}

LW_EXPORT(lw_web_log_begin) void lw_web_log_begin(int slot, size_t length)
{
    const lw_web_slot *now = &lw_web_slots[slot];
    lw_options options;
    lw_faults faults = {0};
    lw_entry entry = lw_entry_blank();
    const char *id = read_options(&options, length);
    if (id) LW_FIT(entry.id, "%s", id);
    const bool is_sound =
        id && now->is_settled && lw_entered_begin(&entry, &now->inputs, &options, &faults);
    answer(&entry, 1, is_sound, &faults);
    lw_entry_free(&entry);
}

static lw_entry copy_of(const lw_entry *entry)
{
    lw_entry copy = *entry;
    copy.notes = copy.boat = copy.sailor = NULL;
    const char *notes = entry->notes ? entry->notes : "";
    if (!lw_entry_put(&copy.notes, notes, strlen(notes)) ||
        !lw_entry_put(&copy.boat, entry->boat, strlen(entry->boat)) ||
        !lw_entry_put(&copy.sailor, entry->sailor, strlen(entry->sailor)))
        abort();
    return copy;
}

LW_EXPORT(lw_web_log_change) void lw_web_log_change(size_t length)
{
    lw_options options;
    lw_faults faults = {0};
    const char *id = read_options(&options, length);
    const lw_entry *was = id ? lw_entries_find(&held, id) : NULL;
    lw_entry entry = was ? copy_of(was) : lw_entry_blank();
    const bool is_sound = was && lw_entered_change(&entry, &options, &faults);
    answer(&entry, 1, is_sound, &faults);
    lw_entry_free(&entry);
}

LW_EXPORT(lw_web_log_drop) void lw_web_log_drop(size_t length) { drop(lw_web_room(length)); }

// --- told

static void tell(lw_tell *what, const void *it)
{
    lw_teller teller = lw_parcel_teller(lw_web_slots[0].speed_unit);
    what(it, &teller);
    lw_teller_finish(&teller);
}

LW_EXPORT(lw_web_log_days) void lw_web_log_days(size_t length)
{
    const lw_listed listed = {.path = lw_web_room(length), .days = &held};
    lw_parcel_begin();
    tell(lw_log_days_tell, &listed);
}

// Labels of the pins that the boat had.
static void put_pins(const lw_entry *entry)
{
    lw_boat boat;
    lw_faults ignored = {0};
    const lw_source_text text = {"", entry->boat, strlen(entry->boat)};
    const bool is_read = lw_record_read_text(&lw_boat_record, &text, &boat, &ignored);
    lw_parcel_list("pins");
    for (size_t i = 0; is_read && i < boat.pin_count; i++) lw_parcel_text("", boat.pins[i].label);
    lw_parcel_end();
    lw_faults_free(&ignored);
}

LW_EXPORT(lw_web_log_show) void lw_web_log_show(size_t length)
{
    lw_entry *entry = lw_entries_find(&held, lw_web_room(length));
    lw_parcel_begin();
    if (!entry) return;
    lw_parcel_values(&lw_logged_record, &entry->day);
    put_pins(entry);
    lw_parcel_object("told");
    tell(lw_entry_tell, entry);
    lw_parcel_end();
}

LW_EXPORT(lw_web_log_near) void lw_web_log_near(int slot)
{
    const lw_web_slot *now = &lw_web_slots[slot];
    lw_near near = {.inputs = &now->inputs, .days = &held, .asks_mass = true, .asks_boat = true};
    lw_parcel_begin();
    if (!now->is_settled) return;
    lw_near_find(&near);
    tell(lw_near_tell, &near);
}

LW_EXPORT(lw_web_log_imported)
void lw_web_log_imported(size_t length, int added, int known, int different)
{
    const lw_log_change change = {.path = lw_web_room(length),
                                  .key = "imported",
                                  .added = (size_t)added,
                                  .known = (size_t)known,
                                  .different = (size_t)different};
    lw_parcel_begin();
    tell(lw_log_change_tell, &change);
}
