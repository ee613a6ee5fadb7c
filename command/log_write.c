// log_write.c - `lullwise log add`, `edit` and `remove`.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "answer/track/sailed.h"
#include "command/log.h"
#include "command/terminal/print.h"
#include "records/logbook/column.h"
#include "records/logbook/track_hash.h"
#include "records/record_file.h"
#include "records/record_value.h"

// --- what options tell of a day beside the files

// A key of a logged day that neither boat, sailor nor day has: "turns.upwind", "log.wind.lull".
static bool is_of_log(const char *assignment)
{
    char head[64];
    LW_FIT(head, "%.*s", (int)strcspn(assignment, ".[= "), assignment);
    if (strcmp(head, lw_logged_record.name) == 0) return true;
    for (const lw_record *const *record = lw_records; *record; record++) {
        if (strcmp((*record)->name, head) == 0 || lw_record_section(*record, head) ||
            lw_record_text(*record, head))
            return false;
    }
    return lw_record_nearest(&lw_logged_record, head) != NULL;
}

// The options without those --set that are of the log.
static lw_options of_inputs(const lw_options *options)
{
    lw_options others = *options;
    others.count = 0;
    for (size_t i = 0; i < options->count; i++) {
        if (strcmp(options->given[i]->name, "set") == 0 && is_of_log(options->texts[i])) continue;
        others.given[others.count] = options->given[i];
        others.texts[others.count++] = options->texts[i];
    }
    return others;
}

// "outing.swims=none", "verdict=none": what need not be told is not told any more.
static bool forget(lw_entry *entry, const char *assignment)
{
    const lw_columns columns = lw_columns_of();
    const lw_written nothing = {.file = "--set", .key = "", .text = ""};
    char key[48];
    lw_faults faults = {0};
    LW_FIT(key, "%.*s", (int)strcspn(assignment, "= "), assignment);
    const char *value = strchr(assignment, '=');
    const lw_column *column = lw_columns_named(&columns, key);
    const bool is_free =
        column && (column->row ? isnan(column->row->preset) : column->text && column->text->words);
    if (!is_free || !value || strcmp(value + 1, "none") != 0) return false;
    return lw_column_put_text(column, entry, &nothing, &faults);
}

static void put_sets(lw_entry *entry, const lw_options *options, bool takes_all, lw_faults *faults)
{
    lw_reading reading = {.record = &lw_logged_record, .data = &entry->day};
    const char *text;
    for (size_t n = 0; (text = lw_options_nth(options, "set", n)); n++) {
        const bool is_taken = (takes_all || is_of_log(text)) && !forget(entry, text);
        if (is_taken) lw_reading_set(&reading, text, faults);
    }
}

static lw_written written_with(const char *option, const char *text)
{
    return (lw_written){.file = "command line", .key = option, .text = text};
}

// Those told take the place of the signs that were there; "none" leaves none.
static void put_signs(lw_entry *entry, const lw_options *options, lw_faults *faults)
{
    const char *text;
    if (lw_options_has(options, "sign")) entry->day.signs = 0;
    for (size_t n = 0; (text = lw_options_nth(options, "sign", n)); n++) {
        const lw_written written = written_with("--sign", text);
        if (strcmp(text, "none") != 0) lw_sign_put(&entry->day.signs, &written, faults);
    }
}

static void put_notes(lw_entry *entry, const lw_options *options, lw_faults *faults)
{
    const char *text = lw_options_text(options, "notes");
    if (!text) return;
    const lw_written written = written_with("--notes", text);
    if (!lw_notes_are_sound(&written, faults)) return;
    if (!lw_entry_put(&entry->notes, text, strlen(text)))
        lw_faults_no_memory(faults, "command line");
}

static void put_tracks(lw_entry *entry, const lw_options *options, lw_faults *faults)
{
    const char *path;
    if (lw_options_has(options, "track")) entry->track_count = 0;
    for (size_t n = 0; (path = lw_options_nth(options, "track", n)); n++) {
        const lw_written written = written_with("--track", path);
        const char *why = NULL;
        if (!lw_track_hash(entry, path, &why))
            LW_FIT(lw_faults_add(faults, &written)->sentence, "%s", why);
    }
}

// What the tracks tell takes the place of what was there; a file of another kind is kept by name.
static void put_sailed(lw_entry *entry, const lw_options *options, lw_faults *faults)
{
    lw_faults ignored = {0};
    const char *first = lw_options_text(options, "track");
    if (!first) return;
    entry->day.sailed = lw_entry_blank().day.sailed;
    if (!lw_sailed_read(&entry->day.sailed, options, &ignored)) {
        const lw_written written = written_with("--track", first);
        LW_FIT(lw_faults_doubt(faults, &written)->sentence,
               "no track that can be read: only its name is kept");
    }
    lw_faults_free(&ignored);
}

static void put_text(lw_entry *entry, const lw_options *options, const char *name,
                     lw_faults *faults)
{
    const char *text = lw_options_text(options, name);
    char option[20];
    LW_FIT(option, "--%s", name);
    if (!text) return;
    const lw_written written = written_with(option, text);
    lw_written_text(&written, lw_record_text(&lw_logged_record, name), &entry->day, faults);
}

static void put_options(lw_entry *entry, const lw_options *options, bool takes_all_sets,
                        lw_faults *faults)
{
    put_text(entry, options, "date", faults);
    put_text(entry, options, "pin", faults);
    put_tracks(entry, options, faults);
    put_sailed(entry, options, faults);
    put_sets(entry, options, takes_all_sets, faults);
    put_signs(entry, options, faults);
    put_notes(entry, options, faults);
}

static lw_entry_source source_of(const lw_options *options)
{
    return (lw_entry_source){.file = "command line", .today = options->today};
}

// --- add

static void take_inputs(lw_entry *entry, const lw_inputs *inputs)
{
    const lw_person *person = &inputs->sailor.person;
    const lw_linkage *linkage = &inputs->boat.linkage;
    lw_logged *day = &entry->day;
    LW_FIT(day->waters, "%s", inputs->day.name);
    day->wind = inputs->day.wind, day->sea = inputs->day.sea;
    day->water = inputs->day.water, day->air = inputs->day.air;
    day->setup = (lw_setup){
        .wand_length = linkage->wand_length, .gearing = linkage->gearing, .rod = linkage->rod};
    day->outing.mass = person->mass + person->gear;
    entry->boat = lw_entry_record_text(&lw_boat_record, &inputs->boat);
    entry->sailor = lw_entry_record_text(&lw_sailor_record, &inputs->sailor);
}

// "which pin was sailed?", with those of the boat.
static void ask_pin(const lw_boat *boat, lw_faults *faults)
{
    const lw_written written = written_with("--pin", "");
    lw_fault *fault = lw_faults_add(faults, &written);
    LW_FIT(fault->sentence, "which pin was sailed?");
    for (size_t i = 0; i < boat->pin_count; i++)
        lw_text_add(fault->expected, sizeof fault->expected, "%s%s", i ? ", " : "",
                    boat->pins[i].label);
}

// A day is logged as it was: nothing of it is taken from the examples of `lullwise new`.
static bool has_files(const lw_options *options, lw_faults *faults)
{
    const size_t before = faults->fault_count;
    for (const lw_record *const *record = lw_records; *record; record++) {
        char option[20];
        LW_FIT(option, "--%s", (*record)->name);
        const lw_written written = written_with(option, "");
        if (lw_options_has(options, (*record)->name)) continue;
        LW_FIT(lw_faults_add(faults, &written)->sentence, "the file of the %s is missing",
               (*record)->name);
    }
    return faults->fault_count == before;
}

static bool read_day(lw_entry *entry, const lw_options *options, lw_faults *faults)
{
    static lw_inputs inputs;
    const lw_options others = of_inputs(options);
    const lw_entry_source source = source_of(options);
    const bool has_all = has_files(options, faults);
    const bool are_read = lw_inputs_read(&inputs, &others, faults) && has_all;
    LW_FIT(entry->day.date, "%s", options->today ? options->today : "");
    if (are_read) take_inputs(entry, &inputs);
    put_options(entry, options, false, faults);
    if (are_read && entry->day.pin[0]) {
        const int pin = lw_boat_pin(&inputs.boat, entry->day.pin);
        if (pin >= 0) entry->day.setup.incidence = inputs.boat.pins[pin].incidence;
        return lw_entry_settle(entry, &source, faults) && faults->fault_count == 0;
    }
    if (are_read) ask_pin(&inputs.boat, faults);
    lw_entry_has_date(entry, &source, faults);
    return false;
}

static lw_exit tell_change(const lw_log_call *call, const lw_entry *entry, const char *key,
                           const char *verb)
{
    const lw_log_change change = {.path = call->path, .key = key, .verb = verb, .entry = entry};
    return lw_log_tell(call, lw_log_change_tell, &change);
}

static lw_exit add(lw_log_call *call, lw_entry *entry)
{
    if (!lw_entry_draw_id(entry->id)) {
        lw_print_complaint("log", "this system gives no random numbers, which a day's id needs");
        return LW_EXIT_NO_ANSWER;
    }
    if (!lw_log_open(call, true)) return LW_EXIT_NO_ANSWER;
    const bool is_added = lw_logbook_add(&call->book, entry);
    lw_logbook_close(&call->book);
    return is_added ? tell_change(call, entry, "added", "Added") : lw_log_complain(call);
}

lw_exit lw_log_add(lw_log_call *call)
{
    lw_faults faults = {0};
    lw_entry entry = lw_entry_blank();
    const bool is_sound = read_day(&entry, call->options, &faults);
    lw_print_faults(stderr, &faults);  // what is unusual is taken all the same
    const lw_exit ended = is_sound ? add(call, &entry) : LW_EXIT_WRONG_INPUT;
    lw_faults_free(&faults);
    lw_entry_free(&entry);
    return ended;
}

// --- edit

// The incidence of a pin that was changed, by the boat's record of that day.
static void follow_pin(lw_entry *entry)
{
    lw_boat boat;
    lw_faults ignored = {0};
    const lw_source_text text = {"boat", entry->boat, strlen(entry->boat)};
    if (lw_record_read_text(&lw_boat_record, &text, &boat, &ignored)) {
        const int pin = lw_boat_pin(&boat, entry->day.pin);
        if (pin >= 0) entry->day.setup.incidence = boat.pins[pin].incidence;
    }
    lw_faults_free(&ignored);
}

static lw_exit edit(lw_log_call *call, lw_entry *entry)
{
    lw_faults faults = {0};
    const lw_entry_source source = source_of(call->options);
    char pin[LW_NAME_LENGTH];
    LW_FIT(pin, "%s", entry->day.pin);
    put_options(entry, call->options, true, &faults);
    if (strcmp(pin, entry->day.pin) != 0) follow_pin(entry);
    const bool is_sound = lw_entry_settle(entry, &source, &faults) && faults.fault_count == 0;
    lw_print_faults(stderr, &faults);
    lw_faults_free(&faults);
    if (!is_sound) return LW_EXIT_WRONG_INPUT;
    if (!lw_logbook_replace(&call->book, entry)) return lw_log_complain(call);
    return tell_change(call, entry, "changed", "Changed");
}

lw_exit lw_log_edit(lw_log_call *call)
{
    lw_entries days = {0};
    if (!lw_log_read(call, true, true, &days)) return LW_EXIT_NO_ANSWER;
    lw_entry *entry = lw_log_day(call, &days);
    const lw_exit ended = entry ? edit(call, entry) : LW_EXIT_WRONG_INPUT;
    lw_entries_free(&days);
    lw_logbook_close(&call->book);
    return ended;
}

// --- remove

lw_exit lw_log_remove(lw_log_call *call)
{
    lw_entries days = {0};
    if (!lw_log_read(call, true, false, &days)) return LW_EXIT_NO_ANSWER;
    const lw_entry *entry = lw_log_day(call, &days);
    lw_exit ended = LW_EXIT_WRONG_INPUT;
    if (entry)
        ended = lw_logbook_remove(&call->book, entry->id)
                    ? tell_change(call, entry, "removed", "Removed")
                    : lw_log_complain(call);
    lw_entries_free(&days);
    lw_logbook_close(&call->book);
    return ended;
}
