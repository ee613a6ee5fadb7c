// record_set.c - one value of a record set from "main_foil.span=1.05 m".
// SPDX-License-Identifier: MIT

#include <assert.h>
#include <string.h>

#include "records/record_file.h"
#include "records/record_value.h"
#include "records/utf8.h"

#define KEY_LENGTH      96
#define ELEMENT_DOUBLES 8  // room for one leg

// An assignment taken apart. "legs[0].length = 400 m": section legs, index 0, member length.
typedef struct assignment {
    char key[KEY_LENGTH];  // all to the left of the =
    char section[KEY_LENGTH];
    char member[KEY_LENGTH];  // behind the dot; "" when there is none
    size_t index;             // in brackets
    bool has_index;
    size_t key_column;
    const char *value;
    lw_written written;  // of the value
} assignment;

static bool say(const assignment *set, lw_faults *faults, const char *sentence,
                const char *expected)
{
    lw_written written = set->written;
    written.column = set->key_column;
    written.text = set->key;
    lw_fault *fault = lw_faults_add(faults, &written);
    LW_FIT(fault->sentence, "%s", sentence);
    LW_FIT(fault->expected, "%s", expected);
    return false;
}

static void copy_part(char to[KEY_LENGTH], const char *from, size_t length)
{
    while (length && *from == ' ') from++, length--;
    while (length && from[length - 1] == ' ') length--;
    if (length >= KEY_LENGTH) length = KEY_LENGTH - 1;
    memcpy(to, from, length);
    to[length] = '\0';
}

// "[12]" at `at`: false when a bracket is there but no index in it.
static bool take_index(assignment *set, const char *at)
{
    if (*at != '[') return *at == '\0' || *at == '.';
    const char *digit = at + 1;
    for (; *digit >= '0' && *digit <= '9' && set->index < 100000; digit++) {
        set->index = 10 * set->index + (size_t)(*digit - '0');
    }
    set->has_index = digit > at + 1 && *digit == ']' && (digit[1] == '.' || digit[1] == '\0');
    return set->has_index;
}

// "boat.hull.length" is "hull.length" of a boat.
static const char *behind_record_name(const lw_record *record, const char *text)
{
    const size_t length = strlen(record->name);
    while (*text == ' ') text++;
    return strncmp(text, record->name, length) == 0 && text[length] == '.' ? text + length + 1
                                                                           : text;
}

const char *lw_reading_option(const lw_reading *reading)
{
    return reading->option ? reading->option : "--set";
}

static bool take_apart(assignment *set, const lw_reading *reading, const char *text,
                       lw_faults *faults)
{
    static const char form[] = "key=value, as in main_foil.span='98 cm'";
    const char *equals = strchr(text, '=');
    *set = (assignment){
        .written = {.file = lw_reading_option(reading), .line = 1, .column = 1, .text = text}};
    set->written.key = set->key;
    const char *key = behind_record_name(reading->record, text);
    set->key_column = lw_utf8_count(text, (size_t)(key - text)) + 1;
    copy_part(set->key, key, equals ? (size_t)(equals - key) : strlen(key));
    if (!equals) return say(set, faults, "an = is missing", form);
    if (!set->key[0]) return say(set, faults, "no key stands before the =", form);

    set->value = equals + 1;
    while (*set->value == ' ') set->value++;
    set->written.column = lw_utf8_count(text, (size_t)(set->value - text)) + 1;
    set->written.text = set->value;

    const char *dot = strchr(set->key, '.');
    const size_t head = strcspn(set->key, ".[");
    copy_part(set->section, set->key, head);
    if (dot) copy_part(set->member, dot + 1, strlen(dot + 1));
    return take_index(set, set->key + head) || say(set, faults, "the index cannot be read", "[0]");
}

// "span" alone: the full key it may have meant.
static bool say_unknown(const lw_reading *reading, const assignment *set, lw_faults *faults)
{
    char full[KEY_LENGTH] = "";
    const char *nearest = lw_record_nearest(reading->record, set->section);
    for (size_t i = 0; !nearest && !full[0] && i < reading->record->section_count; i++) {
        const lw_table *table = reading->record->sections[i].table;
        const lw_quantity *row = lw_table_find(table, set->section);
        if (row) LW_FIT(full, "%s.%s", table->key, row->key);
    }
    lw_written written = set->written;
    written.column = set->key_column;
    written.text = set->section;
    lw_written_unknown(&written, "key", full[0] ? full : nearest, faults);
    return false;
}

static bool put_row(const assignment *set, const lw_table *table, char *data, lw_faults *faults)
{
    const lw_quantity *row = lw_table_find(table, set->member);
    if (!row) {
        const lw_quantity *nearest = lw_table_nearest(table, set->member);
        lw_written written = set->written;
        written.column = set->key_column + lw_utf8_count(set->key, strcspn(set->key, ".") + 1);
        written.text = set->member;
        lw_written_unknown(&written, "key", nearest ? nearest->key : NULL, faults);
        return false;
    }
    double si;
    if (!lw_written_quantity(&set->written, row, &si, faults)) return false;
    lw_quantity_put(row, data, si);
    return true;
}

static bool set_plain(lw_reading *reading, const lw_section *section, const assignment *set,
                      lw_faults *faults)
{
    if (set->has_index) return say(set, faults, "this section is no list: leave the index out", "");
    if (!put_row(set, section->table, (char *)reading->data + section->offset, faults))
        return false;
    const size_t index = (size_t)(section - reading->record->sections);
    const lw_quantity *row = lw_table_find(section->table, set->member);
    reading->given[index] |= UINT64_C(1) << (row - section->table->rows);
    lw_section_mark(section, reading->data);
    return true;
}

// Index of the element with this label, or the length when there is none.
static size_t label_index(const lw_section *section, void *data, const char *label)
{
    const size_t count = *lw_section_length(section, data);
    for (size_t i = 0; i < count; i++) {
        if (!strcmp(lw_section_element(section, data, i) + section->label_offset, label)) return i;
    }
    return count;
}

static bool set_labelled(void *data, const lw_section *section, const assignment *set,
                         lw_faults *faults)
{
    lw_written label = set->written;
    label.column = set->key_column;
    label.text = set->member;
    if (set->has_index) return say(set, faults, "name the label, not an index", "pins.A");
    if (!lw_written_label(&label, faults)) return false;
    const size_t index = label_index(section, data, set->member);
    if (index >= section->most) return say(set, faults, "the list is full", "");

    const lw_quantity *row = &section->table->rows[0];
    double si;
    if (!lw_written_quantity(&set->written, row, &si, faults)) return false;
    char *element = lw_section_element(section, data, index);
    lw_quantity_put(row, element, si);
    memcpy(element + section->label_offset, set->member, strlen(set->member) + 1);
    size_t *count = lw_section_length(section, data);
    if (index == *count) ++*count;
    lw_section_sort(section, data);
    return true;
}

// One value of an element, put into a copy first, so that a fault leaves no trace.
static bool put_element(const assignment *set, const lw_section *section, bool is_new,
                        char *element, lw_faults *faults)
{
    double copy[ELEMENT_DOUBLES];
    assert(section->stride <= sizeof copy);
    memcpy(copy, element, section->stride);
    if (is_new) lw_table_preset(section->table, copy);
    if (section->kind == LW_SECTION_VALUES) {
        if (set->member[0]) return say(set, faults, "nothing may stand behind the index", "");
        if (!lw_written_quantity(&set->written, section->table->rows, copy, faults)) return false;
    } else if (!put_row(set, section->table, (char *)copy, faults)) {
        return false;
    }
    memcpy(element, copy, section->stride);
    return true;
}

static bool set_element(void *data, const lw_section *section, const assignment *set,
                        lw_faults *faults)
{
    size_t *count = lw_section_length(section, data);
    if (!set->has_index) return say(set, faults, "an index is missing", "[0] for the first");
    if (set->index > *count || set->index >= section->most) {
        char expected[40];
        const size_t last = *count < section->most ? *count : section->most - 1;
        LW_FIT(expected, "[0] to [%zu]", last);
        return say(set, faults, "there is no place of this index", expected);
    }
    char *element = lw_section_element(section, data, set->index);
    const bool is_new = set->index == *count;
    if (!put_element(set, section, is_new, element, faults)) return false;
    if (is_new) ++*count;
    return true;
}

static bool set_section(lw_reading *reading, const lw_section *section, const assignment *set,
                        lw_faults *faults)
{
    switch (section->kind) {
        case LW_SECTION_PLAIN:
            return set_plain(reading, section, set, faults);
        case LW_SECTION_LABELLED:
            return set_labelled(reading->data, section, set, faults);
        default:
            return set_element(reading->data, section, set, faults);
    }
}

bool lw_reading_set(lw_reading *reading, const char *text, lw_faults *faults)
{
    assignment set;
    if (!take_apart(&set, reading, text, faults)) return false;
    const lw_text *free_text = lw_record_text(reading->record, set.key);
    if (free_text) return lw_written_text(&set.written, free_text, reading->data, faults);

    const lw_section *section = lw_record_section(reading->record, set.section);
    if (!section) return say_unknown(reading, &set, faults);
    if (!set_section(reading, section, &set, faults)) return false;
    reading->set_by[section - reading->record->sections] = text;
    return true;
}

bool lw_record_set(const lw_record *record, void *data, const char *text, lw_faults *faults)
{
    lw_reading reading = {.record = record, .data = data};
    return lw_reading_set(&reading, text, faults);
}
