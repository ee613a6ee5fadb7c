// inputs.c - boat, sailor and day as the options of a command give them.
// SPDX-License-Identifier: MIT

#include "command/inputs.h"

#include <string.h>

#include "records/record_file.h"
#include "records/record_value.h"

enum { BOAT, SAILOR, DAY, RECORD_COUNT };  // in the order of lw_records

static void begin(lw_reading readings[RECORD_COUNT], lw_inputs *inputs)
{
    void *const data[RECORD_COUNT] = {&inputs->boat, &inputs->sailor, &inputs->day_as_given};
    for (int i = 0; i < RECORD_COUNT; i++) {
        readings[i] = (lw_reading){.record = lw_records[i], .data = data[i]};
    }
}

// The first part of a key: "main_foil" of "main_foil.span=1 m".
static void head_of(const char *assignment, char *head, size_t room)
{
    assignment += strspn(assignment, " ");
    lw_text_fit(head, room, "%.*s", (int)strcspn(assignment, ".[= "), assignment);
}

static bool knows(const lw_record *record, const char *head)
{
    return lw_record_section(record, head) || lw_record_text(record, head);
}

static bool has_row(const lw_record *record, const char *key)
{
    for (size_t i = 0; i < record->section_count; i++) {
        if (lw_table_find(record->sections[i].table, key)) return true;
    }
    return false;
}

// The record that an assignment is for; for a key that none knows, the one with the likest key.
static int owner_of(const char *head)
{
    for (int i = 0; i < RECORD_COUNT; i++) {
        if (strcmp(lw_records[i]->name, head) == 0) return i;
    }
    for (int i = 0; i < RECORD_COUNT; i++) {
        if (knows(lw_records[i], head)) return i;
    }
    for (int i = 0; i < RECORD_COUNT; i++) {
        if (has_row(lw_records[i], head)) return i;
    }
    const char *nearest = NULL;
    int owner = BOAT;
    for (int i = 0; i < RECORD_COUNT; i++) {
        const char *other = lw_record_nearest(lw_records[i], head);
        const char *nearer = lw_text_nearer(head, nearest, other);
        if (nearer != nearest) nearest = nearer, owner = i;
    }
    return owner;
}

static bool is_shared(const char *head)
{
    int count = 0;
    for (int i = 0; i < RECORD_COUNT; i++) count += knows(lw_records[i], head);
    return count > 1;
}

static bool set_one(lw_reading readings[RECORD_COUNT], const char *assignment, lw_faults *faults)
{
    char head[64];
    head_of(assignment, head, sizeof head);
    if (!is_shared(head)) return lw_reading_set(&readings[owner_of(head)], assignment, faults);

    const lw_written written = {.file = "--set", .line = 1, .column = 1, .key = head, .text = head};
    lw_fault *fault = lw_faults_add(faults, &written);
    LW_FIT(fault->sentence, "boat, sailor and day all have this key");
    LW_FIT(fault->expected, "boat.%s, sailor.%s or day.%s", head, head, head);
    return false;
}

// What only whole records show; then the day's lull, mean and puff.
static bool settle(lw_reading readings[RECORD_COUNT], lw_inputs *inputs, lw_faults *faults)
{
    bool is_sound = true;
    for (int i = 0; i < RECORD_COUNT; i++) {
        if (!lw_reading_check(&readings[i], faults)) is_sound = false;
    }
    const char *why;
    inputs->day = inputs->day_as_given;
    return is_sound && lw_day_settle(&inputs->day, &why);
}

static void read_files(lw_reading readings[RECORD_COUNT], const lw_options *options,
                       lw_faults *faults)
{
    for (int i = 0; i < RECORD_COUNT; i++) {
        const char *path = lw_options_text(options, lw_records[i]->name);
        if (!path) {
            lw_record_example(readings[i].record, readings[i].data);
            continue;
        }
        lw_record_preset(readings[i].record, readings[i].data);
        lw_reading_file(&readings[i], path, faults);
    }
}

static void read_sets(lw_reading readings[RECORD_COUNT], const lw_options *options,
                      lw_faults *faults)
{
    const char *text;
    for (size_t n = 0; (text = lw_options_nth(options, "set", n)); n++) {
        set_one(readings, text, faults);
    }
    char aim[LW_NAME_LENGTH + 8];
    if (!(text = lw_options_text(options, "aim"))) return;
    LW_FIT(aim, "aim=%s", text);
    lw_reading_set(&readings[DAY], aim, faults);
}

bool lw_inputs_read(lw_inputs *inputs, const lw_options *options, lw_faults *faults)
{
    const size_t before = faults->fault_count;
    lw_reading readings[RECORD_COUNT];
    begin(readings, inputs);
    read_files(readings, options, faults);
    read_sets(readings, options, faults);
    return faults->fault_count == before && settle(readings, inputs, faults);
}

bool lw_inputs_set(lw_inputs *inputs, const char *assignment, lw_faults *faults)
{
    lw_inputs next = *inputs;
    lw_reading readings[RECORD_COUNT];
    begin(readings, &next);
    if (!set_one(readings, assignment, faults) || !settle(readings, &next, faults)) return false;
    *inputs = next;
    return true;
}
