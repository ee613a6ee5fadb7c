// inputs.c - boat, sailor and day as the options of a command give them.
// SPDX-License-Identifier: MIT

#include "answer/inputs.h"

#include <string.h>

#include "answer/learned.h"
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

// The full keys that end in this one: "hull.mass or person.mass"; empty when none does.
static void homes_of(const char *key, char *list, size_t room)
{
    list[0] = '\0';
    for (int i = 0; i < RECORD_COUNT; i++) {
        for (size_t k = 0; k < lw_records[i]->section_count; k++) {
            const lw_section *section = &lw_records[i]->sections[k];
            const size_t length = strlen(list);
            const bool is_home = section->kind == LW_SECTION_PLAIN;
            if (!is_home || !lw_table_find(section->table, key)) continue;
            lw_text_fit(list + length, room - length, "%s%s.%s", length ? " or " : "",
                        section->table->key, key);
        }
    }
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
    const char *nearest = NULL;
    int owner = BOAT;
    for (int i = 0; i < RECORD_COUNT; i++) {
        const char *other = lw_record_nearest(lw_records[i], head);
        const char *nearer = lw_text_nearer(head, nearest, other);
        if (nearer != nearest) nearest = nearer, owner = i;
    }
    return owner;
}

static int owner_count(const char *head)
{
    int count = 0;
    for (int i = 0; i < RECORD_COUNT; i++) count += knows(lw_records[i], head);
    return count;
}

static bool set_one(lw_reading readings[RECORD_COUNT], const char *option, const char *assignment,
                    lw_faults *faults)
{
    char head[64], homes[64] = "";
    head_of(assignment, head, sizeof head);
    const int owners = owner_count(head);
    if (owners == 0) homes_of(head, homes, sizeof homes);
    for (int i = 0; i < RECORD_COUNT; i++) readings[i].option = option;
    if (owners < 2 && !homes[0])
        return lw_reading_set(&readings[owner_of(head)], assignment, faults);

    const lw_written written = {.file = option, .line = 1, .column = 1, .key = head, .text = head};
    lw_fault *fault = lw_faults_add(faults, &written);
    if (homes[0]) {
        LW_FIT(fault->sentence, "the section of this key is missing");
        LW_FIT(fault->hint, "%s", homes);
    } else {
        LW_FIT(fault->sentence, "boat, sailor and day all have this key");
        LW_FIT(fault->expected, "boat.%s, sailor.%s or day.%s", head, head, head);
    }
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
        set_one(readings, "--set", text, faults);
    }
    if (!(text = lw_options_text(options, "aim"))) return;
    const lw_written aim = {.file = "--aim", .line = 1, .column = 1, .key = "aim", .text = text};
    lw_written_text(&aim, lw_record_text(&lw_day_record, "aim"), readings[DAY].data, faults);
}

bool lw_inputs_read(lw_inputs *inputs, const lw_options *options, lw_faults *faults)
{
    const size_t before = faults->fault_count;
    lw_reading readings[RECORD_COUNT];
    begin(readings, inputs);
    read_files(readings, options, faults);
    if (faults->fault_count == before) lw_learned_put(inputs, options, faults);
    read_sets(readings, options, faults);
    return faults->fault_count == before && settle(readings, inputs, faults);
}

bool lw_inputs_put(lw_inputs *inputs, const lw_options *options, const lw_assignments *more,
                   lw_faults *faults)
{
    const size_t before = faults->fault_count;
    lw_inputs next = *inputs;
    lw_reading readings[RECORD_COUNT];
    begin(readings, &next);
    read_sets(readings, options, faults);
    for (size_t i = 0; i < more->count; i++) {
        set_one(readings, more->option, more->texts[i], faults);
    }
    if (faults->fault_count != before || !settle(readings, &next, faults)) return false;
    *inputs = next;
    return true;
}

bool lw_inputs_set(lw_inputs *inputs, const char *option, const char *assignment, lw_faults *faults)
{
    lw_inputs next = *inputs;
    lw_reading readings[RECORD_COUNT];
    begin(readings, &next);
    if (!set_one(readings, option, assignment, faults) || !settle(readings, &next, faults))
        return false;
    *inputs = next;
    return true;
}
