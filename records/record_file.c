// record_file.c - reading a record from start to end, and what only the whole record shows.
// SPDX-License-Identifier: MIT

#include "records/record_file.h"

#include <stdlib.h>
#include <string.h>

#include "lullwise/boat.h"
#include "lullwise/day.h"
#include "lullwise/order.h"
#include "records/record_value.h"
#include "records/yaml_node.h"

lw_reading lw_reading_of(const lw_record *record, void *data)
{
    lw_record_preset(record, data);
    return (lw_reading){.record = record, .data = data};
}

bool lw_reading_file(lw_reading *reading, const char *path, lw_faults *faults)
{
    size_t length;
    char *text = lw_source_fetch(path, LW_FILE_MOST, &length, faults);
    if (!text) return false;
    const bool is_sound = lw_reading_text(reading, &(lw_source_text){path, text, length}, faults);
    free(text);
    return is_sound;
}

static const char *day_contradiction(const lw_reading *reading, const char **why)
{
    lw_day copy = *(const lw_day *)reading->data;
    if (lw_day_settle(&copy, why)) return NULL;
    const lw_order *failing = lw_order_failing(&lw_day_record, &copy);
    if (failing) return failing->section;
    if (copy.has_wind) return "wind";
    return copy.has_forecast ? "forecast" : copy.reading_count ? "readings" : "";
}

static const char *contradiction(const lw_reading *reading, const char **why)
{
    if (reading->record == &lw_boat_record) return lw_boat_contradiction(reading->data, why);
    if (reading->record == &lw_day_record) return day_contradiction(reading, why);
    return NULL;
}

// Where a section was given: in the last assignment to it, else in the file.
static lw_written place_of(const lw_reading *reading, const char *key)
{
    const lw_section *section = lw_record_section(reading->record, key);
    const size_t i = section ? (size_t)(section - reading->record->sections) : 0;
    if (section && reading->set_by[i])
        return (lw_written){.file = lw_reading_option(reading),
                            .line = 1,
                            .column = 1,
                            .key = key,
                            .text = reading->set_by[i]};
    const size_t line = section ? reading->section_line[i] : 0;
    return (lw_written){.file = reading->file ? reading->file : reading->record->name,
                        .line = line,
                        .column = line ? 1 : 0,
                        .key = key,
                        .text = ""};
}

// The rank of a label that is a number or, where letters are asked for, one letter.
static bool rank_of(const char *label, bool is_letter, double *rank)
{
    const char *rest;
    if (!is_letter) return lw_decimal_read(label, rank, &rest) && !*rest;
    *rank = (double)(label[0] | 0x20);
    return *rank >= 'a' && *rank <= 'z' && !label[1];
}

static bool rank_pins(const lw_boat *boat, bool is_letter, double ranks[LW_PINS_MOST])
{
    for (size_t i = 0; i < boat->pin_count; i++) {
        if (!rank_of(boat->pins[i].label, is_letter, &ranks[i])) return false;
    }
    return true;
}

// Index of the first pin that has more lift than the next against the order of the other labels,
// where all are numbers or all are letters; else the number of pins. An angle that was written
// wrong shows so.
static size_t odd_pin(const lw_boat *boat)
{
    double ranks[LW_PINS_MOST];
    size_t up = 0;
    if (!rank_pins(boat, false, ranks) && !rank_pins(boat, true, ranks)) return boat->pin_count;
    for (size_t i = 1; i < boat->pin_count; i++) up += ranks[i] > ranks[i - 1];
    const bool runs_up = 2 * up + 1 >= boat->pin_count;
    for (size_t i = 1; i < boat->pin_count; i++) {
        if ((ranks[i] > ranks[i - 1]) != runs_up) return i - 1;
    }
    return boat->pin_count;
}

static void doubt_pins(const lw_reading *reading, lw_faults *faults)
{
    if (reading->record != &lw_boat_record) return;
    const lw_boat *boat = reading->data;
    const size_t odd = odd_pin(boat);
    if (odd == boat->pin_count) return;
    const lw_pin *pin = &boat->pins[odd];
    char key[LW_LABEL_LENGTH + 8];
    LW_FIT(key, "pins.%s", pin->label);
    lw_written written = place_of(reading, "pins");
    written.key = key;
    LW_FIT(lw_faults_doubt(faults, &written)->sentence,
           "pin %s has more lift than pin %s, unlike the other labels; taken so", pin->label,
           pin[1].label);
}

bool lw_reading_check(const lw_reading *reading, lw_faults *faults)
{
    const char *why = NULL;
    const char *key = contradiction(reading, &why);
    if (!key) {
        doubt_pins(reading, faults);
        return true;
    }

    const lw_written written = place_of(reading, key);
    LW_FIT(lw_faults_add(faults, &written)->sentence, "%s", why);
    return false;
}

size_t lw_reading_count(const lw_reading *reading, size_t *at_preset)
{
    size_t count = 0, given = 0;
    for (size_t i = 0; i < reading->record->section_count; i++) {
        const lw_section *section = &reading->record->sections[i];
        if (section->kind != LW_SECTION_PLAIN || !lw_section_is_given(section, reading->data))
            continue;
        count += section->table->count;
        for (size_t k = 0; k < section->table->count; k++) given += reading->given[i] >> k & 1;
    }
    *at_preset = count - given;
    return count;
}

// Checks what was read into a copy, and hands the copy over when all is well.
static bool hand_over(lw_reading *reading, bool is_read, void *data, lw_faults *faults)
{
    const bool is_sound = is_read && lw_reading_check(reading, faults);
    if (is_sound) memcpy(data, reading->data, reading->record->size);
    free(reading->data);
    return is_sound;
}

bool lw_record_read_file(const lw_record *record, const char *path, void *data, lw_faults *faults)
{
    void *copy = malloc(record->size);
    if (!copy) return lw_faults_no_memory(faults, path);
    lw_reading reading = lw_reading_of(record, copy);
    return hand_over(&reading, lw_reading_file(&reading, path, faults), data, faults);
}

bool lw_record_read_text(const lw_record *record, const lw_source_text *source, void *data,
                         lw_faults *faults)
{
    void *copy = malloc(record->size);
    if (!copy) return lw_faults_no_memory(faults, source->name);
    lw_reading reading = lw_reading_of(record, copy);
    return hand_over(&reading, lw_reading_text(&reading, source, faults), data, faults);
}

// Adds to scores[i] for a top-level key that record i knows as a section.
static void score_key(const char *key, size_t *scores)
{
    for (size_t i = 0; lw_records[i]; i++)
        scores[i] += lw_record_section(lw_records[i], key) != NULL;
}

static void score(const lw_source_text *source, size_t *scores)
{
    lw_faults ignored = {0};
    lw_yaml yaml;
    lw_yaml_open(&yaml, source, &ignored);
    if (lw_yaml_next(&yaml).kind == LW_NODE_MAP) {
        while (!yaml.is_over) {
            const lw_node key = lw_yaml_next(&yaml);
            if (key.kind == LW_NODE_END) break;
            if (key.kind == LW_NODE_TEXT) score_key(key.text, scores);
            lw_yaml_skip(&yaml, key);
            lw_yaml_skip(&yaml, lw_yaml_next(&yaml));
        }
    }
    lw_yaml_close(&yaml);
    lw_faults_free(&ignored);
}

const lw_record *lw_record_recognise(const lw_source_text *source, lw_faults *faults)
{
    size_t scores[8] = {0}, best = 0;
    if (!lw_source_is_clean(source, faults)) return NULL;
    if (!lw_yaml_is_alike(source, faults)) return NULL;
    score(source, scores);
    for (size_t i = 1; lw_records[i]; i++) {
        if (scores[i] > scores[best]) best = i;
    }
    if (scores[best]) return lw_records[best];
    const lw_written written = {.file = source->name, .key = "", .text = ""};
    lw_fault *fault = lw_faults_add(faults, &written);
    LW_FIT(fault->sentence, "none of its sections is known");
    LW_FIT(fault->expected, "a boat, a sailor or a day, as `lullwise new` writes them");
    return NULL;
}
