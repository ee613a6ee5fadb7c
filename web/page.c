// page.c - records of the page: read with every fault named, and written.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "web/page.h"

#include <stdlib.h>
#include <string.h>

#include "answer/parcel.h"
#include "records/record_value.h"
#include "records/yaml_node.h"

lw_web_slot lw_web_slots[LW_WEB_SLOTS];

static char *room;

LW_EXPORT(lw_web_parcel) const char *lw_web_parcel(void)
{
    size_t length;
    const char *bytes = lw_parcel_bytes(&length);
    if (!bytes) abort();  // the script starts the engine anew
    return bytes;
}

LW_EXPORT(lw_web_parcel_length) size_t lw_web_parcel_length(void)
{
    size_t length;
    lw_parcel_bytes(&length);
    return length;
}

LW_EXPORT(lw_web_room) char *lw_web_room(size_t bytes)
{
    room = realloc(room, bytes + 1);
    if (!room) abort();
    room[bytes] = '\0';
    return room;
}

static void *data_of(int slot, int record)
{
    lw_inputs *inputs = &lw_web_slots[slot].inputs;
    if (record == LW_WEB_BOAT) return &inputs->boat;
    if (record == LW_WEB_SAILOR) return &inputs->sailor;
    return &inputs->day_as_given;
}

void lw_parcel_faults(const lw_faults *faults)
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

// The next key of a map; false at its end.
static bool next_key(lw_yaml *yaml, char name[LW_NAME_LENGTH])
{
    const lw_node node = lw_yaml_next(yaml);
    if (node.kind != LW_NODE_TEXT) return false;
    lw_text_fit(name, LW_NAME_LENGTH, "%s", node.text);
    return true;
}

// The `key: value` lines of a section that is one struct, or of one of a list.
static void put_struct(lw_yaml *yaml, const char *key)
{
    char name[LW_NAME_LENGTH];
    lw_parcel_object(key);
    while (next_key(yaml, name)) lw_parcel_text(name, lw_yaml_next(yaml).text);
    lw_parcel_end();
}

// Labels have an order, which keys of an object would lose: a list of label and text.
static void put_labelled(lw_yaml *yaml, const char *key)
{
    char name[LW_NAME_LENGTH];
    lw_parcel_list(key);
    while (next_key(yaml, name)) {
        lw_parcel_object("");
        lw_parcel_text("label", name);
        lw_parcel_text("text", lw_yaml_next(yaml).text);
        lw_parcel_end();
    }
    lw_parcel_end();
}

static void put_list(lw_yaml *yaml, const char *key)
{
    lw_parcel_list(key);
    for (;;) {
        const lw_node node = lw_yaml_next(yaml);
        if (node.kind == LW_NODE_END) break;
        if (node.kind == LW_NODE_MAP)
            put_struct(yaml, "");
        else
            lw_parcel_text("", node.text);
    }
    lw_parcel_end();
}

static bool is_labelled(const lw_record *record, const char *key)
{
    const lw_section *section = lw_record_section(record, key);
    return section && section->kind == LW_SECTION_LABELLED;
}

// A sound file as it was written: keys and texts, the owner's own units.
static void put_written(const lw_record *record, const lw_source_text *source)
{
    char key[LW_NAME_LENGTH];
    lw_faults ignored = {0};
    lw_yaml yaml;
    lw_yaml_open(&yaml, source, &ignored);
    lw_yaml_next(&yaml);
    lw_parcel_object("written");
    while (next_key(&yaml, key)) {
        const lw_node node = lw_yaml_next(&yaml);
        if (node.kind == LW_NODE_TEXT)
            lw_parcel_text(key, node.text);
        else if (node.kind == LW_NODE_LIST)
            put_list(&yaml, key);
        else if (is_labelled(record, key))
            put_labelled(&yaml, key);
        else
            put_struct(&yaml, key);
    }
    lw_parcel_end();
    lw_yaml_close(&yaml);
    lw_faults_free(&ignored);
}

static void put_element(const lw_section *section, const char *element)
{
    if (section->kind == LW_SECTION_VALUES) {
        lw_parcel_number("", lw_quantity_value(section->table->rows, element));
    } else if (section->kind == LW_SECTION_LABELLED) {
        lw_parcel_object("");
        lw_parcel_text("label", element + section->label_offset);
        lw_parcel_number("value", lw_quantity_value(section->table->rows, element));
        lw_parcel_end();
    } else {
        lw_parcel_rows("", section->table, element);
    }
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
        put_element(section, lw_section_element(section, data, i));
    }
    lw_parcel_end();
}

void lw_parcel_values(const lw_record *record, void *data)
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
    slot->inputs.day = slot->inputs.day_as_given;
    slot->is_settled = lw_day_settle(&slot->inputs.day, &why);
}

static int index_of(const lw_record *record)
{
    int index = 0;
    while (lw_records[index] && lw_records[index] != record) index++;
    return lw_records[index] ? index : -1;
}

LW_EXPORT(lw_web_read) void lw_web_read(int slot, int record, size_t length)
{
    const size_t name = strlen(room) + 1;
    const lw_source_text source = {room, room + name, length - name};
    lw_faults faults = {0};
    if (record < 0) record = index_of(lw_record_recognise(&source, &faults));
    void *data = record < 0 ? NULL : data_of(slot, record);
    const bool is_sound = data && lw_record_read_text(lw_records[record], &source, data, &faults);
    lw_parcel_begin();
    lw_parcel_text("record", data ? lw_records[record]->name : "");
    lw_parcel_truth("is_sound", is_sound);
    lw_parcel_faults(&faults);
    lw_faults_free(&faults);
    if (!is_sound) return;
    settle(&lw_web_slots[slot]);
    put_written(lw_records[record], &source);
    lw_parcel_values(lw_records[record], data);
}

LW_EXPORT(lw_web_speak) void lw_web_speak(int slot)
{
    lw_web_slots[slot].speed_unit = lw_unit_of(room);
}

// A record of a slot as its file; of no slot (-1) one to begin with.
LW_EXPORT(lw_web_write) void lw_web_write(int slot, int record)
{
    char *text = NULL;
    size_t length;
    FILE *out = open_memstream(&text, &length);
    lw_parcel_begin();
    if (!out) return;
    lw_record_write(lw_records[record], slot < 0 ? NULL : data_of(slot, record), out);
    fclose(out);
    lw_parcel_text("text", text);
    free(text);
}
