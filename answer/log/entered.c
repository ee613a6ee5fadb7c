// entered.c - a day to be logged, or changed, as options tell it.
// SPDX-License-Identifier: MIT

#include "answer/log/entered.h"

#include <math.h>
#include <string.h>

#include "records/logbook/column.h"
#include "records/record_value.h"

bool lw_entered_has(const char *assignment)
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
        const bool is_taken = (takes_all || lw_entered_has(text)) && !forget(entry, text);
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
    put_sets(entry, options, takes_all_sets, faults);
    put_signs(entry, options, faults);
    put_notes(entry, options, faults);
}

static lw_entry_source source_of(const lw_options *options)
{
    return (lw_entry_source){.file = "command line", .today = options->today};
}

// --- a new one

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

bool lw_entered_begin(lw_entry *entry, const lw_inputs *inputs, const lw_options *options,
                      lw_faults *faults)
{
    const lw_entry_source source = source_of(options);
    LW_FIT(entry->day.date, "%s", options->today ? options->today : "");
    if (inputs) take_inputs(entry, inputs);
    put_options(entry, options, false, faults);
    if (inputs && entry->day.pin[0]) {
        const int pin = lw_boat_pin(&inputs->boat, entry->day.pin);
        if (pin >= 0) entry->day.setup.incidence = inputs->boat.pins[pin].incidence;
        return lw_entry_settle(entry, &source, faults) && faults->fault_count == 0;
    }
    if (inputs) ask_pin(&inputs->boat, faults);
    lw_entry_has_date(entry, &source, faults);
    return false;
}

// --- one that is kept

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

bool lw_entered_change(lw_entry *entry, const lw_options *options, lw_faults *faults)
{
    const lw_entry_source source = source_of(options);
    char pin[LW_NAME_LENGTH];
    LW_FIT(pin, "%s", entry->day.pin);
    put_options(entry, options, true, faults);
    if (strcmp(pin, entry->day.pin) != 0) follow_pin(entry);
    return lw_entry_settle(entry, &source, faults) && faults->fault_count == 0;
}
