// check.c - `lullwise check`: are these files sound, and what in them is doubtful?
// SPDX-License-Identifier: MIT

#include <stdlib.h>
#include <string.h>

#include "answer/inputs.h"
#include "command/command.h"
#include "command/sensitivity.h"
#include "command/terminal/print.h"
#include "lullwise/prepared.h"
#include "records/json.h"
#include "records/record_file.h"
#include "records/record_value.h"
#include "records/source_text.h"

// One file, as far as it could be read.
typedef struct checked {
    const char *path;
    const lw_record *record;  // NULL when it is none of ours
    bool is_sound;
    size_t faults, doubts;    // of this file
    size_t count, at_preset;  // values, and those not given
    char name[LW_NAME_LENGTH];
} checked;

static void *place_of(lw_inputs *inputs, const lw_record *record)
{
    if (record == &lw_boat_record) return &inputs->boat;
    if (record == &lw_sailor_record) return &inputs->sailor;
    return &inputs->day_as_given;
}

static void read_record(checked *file, const char *text, size_t length, lw_inputs *inputs,
                        lw_faults *faults)
{
    void *data = place_of(inputs, file->record);
    lw_reading reading = lw_reading_of(file->record, data);
    file->is_sound = lw_reading_text(&reading, file->path, text, length, faults) &&
                     lw_reading_check(&reading, faults);
    if (file->is_sound) file->count = lw_reading_count(&reading, &file->at_preset);
    const lw_text *name = lw_record_text(file->record, "name");
    if (file->is_sound && name) LW_FIT(file->name, "%s", (const char *)data + name->offset);
}

static void check_file(checked *file, lw_inputs *inputs, lw_faults *faults)
{
    const size_t faults_before = faults->fault_count;
    const size_t all_before = faults->count + faults->left_out;
    size_t length;
    char *text = lw_source_fetch(file->path, LW_FILE_MOST, &length, faults);
    if (text) file->record = lw_record_recognise(file->path, text, length, faults);
    if (file->record) read_record(file, text, length, inputs, faults);
    free(text);
    file->faults = faults->fault_count - faults_before;
    file->doubts = faults->count + faults->left_out - all_before - file->faults;
}

static const char *plural(size_t count) { return count == 1 ? "" : "s"; }

static void print_summary(const checked *file)
{
    char text[500], name[300], presets[80] = "", doubts[40] = "no doubts";
    lw_text_tame(name, sizeof name, lw_source_name(file->path));
    if (file->at_preset) LW_FIT(presets, ", of which %zu stand at their presets", file->at_preset);
    if (file->doubts) LW_FIT(doubts, "%zu doubt%s", file->doubts, plural(file->doubts));
    if (file->is_sound) {
        LW_FIT(text, "%s: the %s \"%s\" is sound. %zu values%s; %s.", name, file->record->name,
               file->name, file->count, presets, doubts);
    } else {
        LW_FIT(text, "%s: %zu fault%s, %s.", name, file->faults, plural(file->faults), doubts);
    }
    lw_print_wrapped(stdout, text, 0, 4);
}

// What forces read from curves of a boat, and how far those are off.
static void print_prepared(lw_prepared_list list)
{
    for (size_t i = 0; i < list.count; i++) {
        const lw_prepared *row = &list.rows[i];
        printf("  %-24s %6.4g %-25s %s\n", row->function, row->error, row->unit, row->where);
    }
}

static void print_all_prepared(void)
{
    lw_print_wrapped(stdout,
                     "Read from curves that are worked out once for a boat, and the largest error "
                     "of each against the full computation, on the generic boat:",
                     0, 0);
    print_prepared(lw_prepared_foils());
    print_prepared(lw_prepared_hull());
}

static void append_prepared(json_t *list, lw_prepared_list prepared)
{
    for (size_t i = 0; i < prepared.count; i++) {
        const lw_prepared *row = &prepared.rows[i];
        json_array_append_new(
            list, json_pack("{s:s, s:f, s:s, s:s}", "function", row->function, "error", row->error,
                            "unit", row->unit, "where", row->where));
    }
}

static json_t *prepared_json(void)
{
    json_t *list = json_array();
    append_prepared(list, lw_prepared_foils());
    append_prepared(list, lw_prepared_hull());
    return list;
}

static json_t *file_json(const checked *file)
{
    char path[512];
    lw_text_tame(path, sizeof path, file->path);
    return json_pack("{s:s, s:s?, s:b, s:I, s:I, s:I, s:I}", "file", path, "record",
                     file->record ? file->record->name : NULL, "sound", file->is_sound, "faults",
                     (json_int_t)file->faults, "doubts", (json_int_t)file->doubts, "values",
                     (json_int_t)file->count, "at_preset", (json_int_t)file->at_preset);
}

static bool print_json(const checked *files, size_t count, const lw_faults *faults,
                       json_t *sensitivity)
{
    json_t *list = json_array();
    for (size_t i = 0; i < count; i++) json_array_append_new(list, file_json(&files[i]));
    return lw_json_write(
        json_pack("{s:o, s:o, s:o, s:o*}", "files", list, "faults", lw_faults_json(faults),
                  "prepared", prepared_json(), "sensitivity", sensitivity),
        stdout);
}

// What one tape error of each measurement does; NULL when it is not asked for or not to be had.
static const lw_sensitivity *sensitivity_of(lw_inputs *inputs, const lw_options *options,
                                            const lw_faults *faults)
{
    static lw_sensitivity sensitivity;
    const char *why;
    if (!lw_options_has(options, "sensitivity") || faults->fault_count) return NULL;
    inputs->day = inputs->day_as_given;
    if (!lw_day_settle(&inputs->day, &why)) return NULL;
    if (lw_sensitivity_of(inputs, &sensitivity)) return &sensitivity;
    lw_print_complaint("check", "there is not enough memory");
    return NULL;
}

static bool has_boat(const checked *files, size_t count)
{
    for (size_t i = 0; i < count; i++) {
        if (files[i].is_sound && files[i].record == &lw_boat_record) return true;
    }
    return false;
}

static lw_exit run(const lw_options *options)
{
    static lw_inputs inputs;
    checked files[LW_GIVEN_MOST] = {{0}};
    lw_faults faults = {0};
    for (size_t i = 0; lw_records[i]; i++) {
        lw_record_example(lw_records[i], place_of(&inputs, lw_records[i]));
    }
    for (size_t i = 0; i < options->operand_count; i++) {
        files[i].path = options->operands[i];
        check_file(&files[i], &inputs, &faults);
    }
    const lw_sensitivity *sensitivity = sensitivity_of(&inputs, options, &faults);
    if (lw_options_has(options, "json")) {
        print_json(files, options->operand_count, &faults,
                   sensitivity ? lw_sensitivity_json(&inputs, sensitivity) : NULL);
    } else {
        lw_print_faults(stdout, &faults);
        for (size_t i = 0; i < options->operand_count; i++) print_summary(&files[i]);
        if (has_boat(files, options->operand_count)) putchar('\n'), print_all_prepared();
        if (sensitivity) putchar('\n'), lw_sensitivity_print(stdout, &inputs, sensitivity);
    }
    const lw_exit ended = faults.fault_count ? LW_EXIT_WRONG_INPUT : LW_EXIT_FINE;
    lw_faults_free(&faults);
    return ended;
}

const lw_command lw_command_check = {
    .name = "check",
    .summary = "Look boat, sailor and day files over: faults, and what is doubtful.",
    .operands = "FILE...",
    .operand_least = 1,
    .operand_most = LW_GIVEN_MOST,
    .takes = "sensitivity json",
    .doc =
        "Reads each file, tells by its sections whether it is a boat, a sailor or a day, and "
        "names every fault with line and column, what was read and what was expected. A doubt "
        "is a value that is taken but unusual. A file named - is standard input. "
        "--sensitivity moves each measurement of the boat and the sailor by its error and tells "
        "which matter most for the choice on the day.",
    .run = run,
};
