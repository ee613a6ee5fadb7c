// page.c - records of the page: read with every fault named, and written.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "web/page.h"

#include <stdlib.h>
#include <string.h>

#include "records/record_value.h"
#include "records/yaml_node.h"
#include "web/parcel.h"

lw_web_slot lw_web_slots[LW_WEB_SLOTS];

static char *room;

LW_EXPORT(lw_web_room) char *lw_web_room(size_t bytes)
{
    room = realloc(room, bytes + 1);
    if (!room) abort();
    room[bytes] = '\0';
    return room;
}

static void *data_of(int slot, int record)
{
    lw_inputs *inputs = &lw_web_slots[slot].picked.inputs;
    void *const data[LW_WEB_RECORDS] = {&inputs->boat, &inputs->sailor, &inputs->day_as_given};
    return data[record];
}

static void put_faults(const lw_faults *faults)
{
    lw_parcel_list("faults");
    for (size_t i = 0; i < faults->count; i++) {
        const lw_fault *fault = &faults->list[i];
        lw_parcel_object("");
        lw_parcel_number("line", (double)fault->line);
        lw_parcel_number("column", (double)fault->column);
        lw_parcel_text("key", fault->key);
        lw_parcel_text("read", fault->read);
        lw_parcel_text("expected", fault->expected);
        lw_parcel_text("hint", fault->hint);
        lw_parcel_text("sentence", fault->sentence);
        lw_parcel_truth("is_doubt", fault->is_doubt);
        lw_parcel_end();
    }
    lw_parcel_end();
    lw_parcel_number("left_out", (double)faults->left_out);
}

static void put_node(lw_yaml *yaml, const char *key, lw_node node);

static void put_map(lw_yaml *yaml, const char *key)
{
    lw_parcel_object(key);
    for (;;) {
        char name[96];
        const lw_node node = lw_yaml_next(yaml);
        if (node.kind != LW_NODE_TEXT) break;
        LW_FIT(name, "%s", node.text);
        put_node(yaml, name, lw_yaml_next(yaml));
    }
    lw_parcel_end();
}

static void put_node(lw_yaml *yaml, const char *key, lw_node node)
{
    if (node.kind == LW_NODE_TEXT) {
        lw_parcel_text(key, node.text);
    } else if (node.kind == LW_NODE_MAP) {
        put_map(yaml, key);
    } else if (node.kind == LW_NODE_LIST) {
        lw_parcel_list(key);
        while ((node = lw_yaml_next(yaml)).kind != LW_NODE_END) put_node(yaml, "", node);
        lw_parcel_end();
    }
}

// A sound file as it was written: keys and texts, the owner's own units.
static void put_written(const char *text, size_t length)
{
    lw_faults ignored = {0};
    lw_yaml yaml;
    lw_yaml_open(&yaml, "", text, length, &ignored);
    put_node(&yaml, "written", lw_yaml_next(&yaml));
    lw_yaml_close(&yaml);
    lw_faults_free(&ignored);
}

static void put_section(const lw_section *section, void *data)
{
    const lw_table *table = section->table;
    if (section->kind == LW_SECTION_PLAIN) {
        lw_parcel_rows(table->key, table, (char *)data + section->offset);
        return;
    }
    lw_parcel_list(table->key);
    for (size_t i = 0; i < *lw_section_length(section, data); i++) {
        char *element = lw_section_element(section, data, i);
        if (section->kind == LW_SECTION_VALUES)
            lw_parcel_number("", lw_quantity_value(table->rows, element));
        else
            lw_parcel_rows("", table, element);
    }
    lw_parcel_end();
}

static void put_values(const lw_record *record, void *data)
{
    lw_parcel_object("values");
    for (size_t i = 0; i < record->text_count; i++) {
        lw_parcel_text(record->texts[i].key, (const char *)data + record->texts[i].offset);
    }
    for (size_t i = 0; i < record->section_count; i++) put_section(&record->sections[i], data);
    lw_parcel_end();
}

static void settle(lw_web_slot *slot)
{
    const char *why;
    slot->changes++;
    slot->picked.inputs.day = slot->picked.inputs.day_as_given;
    slot->is_settled = lw_day_settle(&slot->picked.inputs.day, &why);
}

static int index_of(const lw_record *record)
{
    int index = 0;
    while (lw_records[index] && lw_records[index] != record) index++;
    return lw_records[index] ? index : -1;
}

// The slot's record stays as it was when there is a fault.
static bool take(const lw_record *record, const char *name, const char *text, size_t length,
                 void *data, lw_faults *faults)
{
    void *copy = malloc(record->size);
    if (!copy) abort();
    lw_reading reading = lw_reading_of(record, copy);
    const bool is_sound =
        lw_reading_text(&reading, name, text, length, faults) && lw_reading_check(&reading, faults);
    if (is_sound) memcpy(data, copy, record->size);
    free(copy);
    return is_sound;
}

LW_EXPORT(lw_web_read) void lw_web_read(int slot, int record, size_t length)
{
    const char *name = room, *text = room + strlen(room) + 1;
    lw_faults faults = {0};
    length -= (size_t)(text - name);
    if (record < 0) record = index_of(lw_record_recognise(name, text, length, &faults));
    void *data = record < 0 ? NULL : data_of(slot, record);
    const bool is_sound = data && take(lw_records[record], name, text, length, data, &faults);
    lw_parcel_begin();
    lw_parcel_text("record", data ? lw_records[record]->name : "");
    lw_parcel_truth("is_sound", is_sound);
    put_faults(&faults);
    lw_faults_free(&faults);
    if (!is_sound) return;
    settle(&lw_web_slots[slot]);
    put_written(text, length);
    put_values(lw_records[record], data);
}

LW_EXPORT(lw_web_speak) void lw_web_speak(int slot, int unit)
{
    lw_web_slots[slot].picked.speed_unit = (lw_unit)unit;
}

LW_EXPORT(lw_web_write) void lw_web_write(int slot, int record)
{
    char *text = NULL;
    size_t length;
    FILE *out = open_memstream(&text, &length);
    lw_parcel_begin();
    if (!out) return;
    lw_record_write(lw_records[record], data_of(slot, record), out);
    fclose(out);
    lw_parcel_text("text", text);
    free(text);
}
