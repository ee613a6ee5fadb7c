// record_parse.c - a YAML text put into a record: sections, values, and every fault on the way.
// SPDX-License-Identifier: MIT

#include <stdlib.h>
#include <string.h>

#include "records/record_file.h"
#include "records/record_value.h"
#include "records/source_text.h"
#include "records/yaml_node.h"

#define KEY_LENGTH  64
#define PATH_LENGTH 160

typedef struct parse {
    lw_yaml yaml;
    const lw_record *record;
    char *data;  // a copy: the caller's record is written when all is well
    lw_reading *reading;
    lw_faults *faults;
    uint64_t texts_given;  // bit i: text i was given
} parse;

// A key as it stands in the file; kept while its value is read.
typedef struct key {
    char text[KEY_LENGTH];
    size_t line, column;
} key;

static lw_written written_at(const parse *p, lw_node node, const char *path)
{
    return (lw_written){.file = p->yaml.file,
                        .line = node.line,
                        .column = node.column,
                        .key = path,
                        .text = node.kind == LW_NODE_TEXT ? node.text : ""};
}

static lw_written written_key(const parse *p, const key *at, const char *path)
{
    return (lw_written){.file = p->yaml.file,
                        .line = at->line,
                        .column = at->column,
                        .key = path,
                        .text = at->text};
}

static void say(lw_faults *faults, const lw_written *written, const char *sentence,
                const char *expected)
{
    lw_fault *fault = lw_faults_add(faults, written);
    LW_FIT(fault->sentence, "%s", sentence);
    LW_FIT(fault->expected, "%s", expected);
}

// The next key of a map; false at its end. A key that is no text is passed over with its value.
static bool next_key(parse *p, key *at)
{
    for (;;) {
        const lw_node node = lw_yaml_next(&p->yaml);
        if (node.kind == LW_NODE_END) return false;
        if (node.kind == LW_NODE_TEXT) {
            at->line = node.line, at->column = node.column;
            LW_FIT(at->text, "%s", node.text);
            return true;
        }
        const lw_written written = written_at(p, node, "");
        if (node.kind != LW_NODE_NONE)
            say(p->faults, &written, "a key must be a word", "key: value");
        lw_yaml_skip(&p->yaml, node);
        lw_yaml_skip(&p->yaml, lw_yaml_next(&p->yaml));
    }
}

// A node that must be a text: false, with a fault, when it is a map or a list.
static bool is_text(parse *p, lw_node node, const char *path, const char *expected)
{
    if (node.kind == LW_NODE_TEXT) return true;
    if (node.kind != LW_NODE_MAP && node.kind != LW_NODE_LIST) return false;
    const lw_written written = written_at(p, node, path);
    say(p->faults, &written, "one value is expected here, not a list or a section", expected);
    lw_yaml_skip(&p->yaml, node);
    return false;
}

// A node that must be a map or a list.
static bool is_kind(parse *p, lw_node node, lw_node_kind kind, const char *path)
{
    if (node.kind == kind) return true;
    const lw_written written = written_at(p, node, path);
    if (node.kind == LW_NODE_TEXT && !node.text[0]) {
        say(p->faults, &written, "the section is empty", "");
    } else if (node.kind != LW_NODE_NONE && node.kind != LW_NODE_END) {
        say(p->faults, &written,
            kind == LW_NODE_MAP ? "`key: value` lines are expected here, indented"
                                : "a list is expected here: lines that begin with -",
            "");
    }
    lw_yaml_skip(&p->yaml, node);
    return false;
}

static bool read_quantity(parse *p, lw_node node, const lw_quantity *row, const char *path,
                          double *si)
{
    char range[LW_RANGE_LENGTH];
    lw_quantity_range(row, row->min, row->max, range);
    if (!is_text(p, node, path, range)) return false;
    const lw_written written = written_at(p, node, path);
    return lw_written_quantity(&written, row, si, p->faults);
}

// Which other section has a row of this name: "span" belongs under main_foil.
static const char *home_of(const lw_record *record, const char *name)
{
    for (size_t i = 0; i < record->section_count; i++) {
        if (lw_table_find(record->sections[i].table, name)) return record->sections[i].table->key;
    }
    return NULL;
}

static void unknown_key(parse *p, const key *at, const char *path, const char *nearest)
{
    const lw_written written = written_key(p, at, path);
    const char *home = nearest ? NULL : home_of(p->record, at->text);
    if (home) {
        lw_fault *fault = lw_faults_add(p->faults, &written);
        LW_FIT(fault->sentence, "this key belongs under %s:", home);
        LW_FIT(fault->hint, "%s.%s", home, at->text);
    } else {
        lw_written_unknown(&written, "key", nearest, p->faults);
    }
    lw_yaml_skip(&p->yaml, lw_yaml_next(&p->yaml));
}

static void twice(parse *p, const key *at, const char *path)
{
    const lw_written written = written_key(p, at, path);
    say(p->faults, &written, "this key was given before: keep one of the two", "");
    lw_yaml_skip(&p->yaml, lw_yaml_next(&p->yaml));
}

// Required rows that were not given; they are missed at the section's own line.
static void miss_rows(parse *p, const lw_table *table, uint64_t given, const key *section)
{
    for (size_t i = 0; i < table->count; i++) {
        if (!table->rows[i].required || (given >> i & 1)) continue;
        char path[PATH_LENGTH], range[LW_RANGE_LENGTH];
        lw_text_fit(path, sizeof path, "%s.%s", section->text, table->rows[i].key);
        lw_quantity_range(&table->rows[i], table->rows[i].min, table->rows[i].max, range);
        lw_written written = written_key(p, section, path);
        written.text = "";
        say(p->faults, &written, "this value is missing", range);
    }
}

// The `key: value` lines of one struct, up to the map's end; returns which rows were given.
static uint64_t read_rows(parse *p, const lw_table *table, const key *section, char *data)
{
    uint64_t given = 0;
    key at;
    while (next_key(p, &at)) {
        char path[PATH_LENGTH];
        lw_text_fit(path, sizeof path, "%s.%s", section->text, at.text);
        const lw_quantity *row = lw_table_find(table, at.text);
        if (!row) {
            const lw_quantity *nearest = lw_table_nearest(table, at.text);
            unknown_key(p, &at, path, nearest ? nearest->key : NULL);
            continue;
        }
        const uint64_t bit = UINT64_C(1) << (row - table->rows);
        if (given & bit) {
            twice(p, &at, path);
            continue;
        }
        double si;
        given |= bit;
        if (read_quantity(p, lw_yaml_next(&p->yaml), row, path, &si))
            lw_quantity_put(row, data, si);
    }
    miss_rows(p, table, given, section);
    return given;
}

static uint64_t read_plain(parse *p, const lw_section *section, const key *at)
{
    if (!is_kind(p, lw_yaml_next(&p->yaml), LW_NODE_MAP, at->text)) return 0;
    lw_section_mark(section, p->data);
    return read_rows(p, section->table, at, p->data + section->offset);
}

// Room for one more element: its place, or NULL, with a fault the first time.
static char *next_element(parse *p, const lw_section *section, lw_node node, size_t *tried)
{
    size_t *count = lw_section_length(section, p->data);
    if ((*tried)++ < section->most) return lw_section_element(section, p->data, (*count)++);
    if (*tried == section->most + 1) {
        const lw_written written = written_at(p, node, section->table->key);
        lw_fault *fault = lw_faults_add(p->faults, &written);
        LW_FIT(fault->sentence, "the list is too long");
        LW_FIT(fault->expected, "%zu at most", section->most);
    }
    return NULL;
}

static bool has_label(const parse *p, const lw_section *section, const char *label)
{
    char *data = p->data;
    for (size_t i = 0; i < *lw_section_length(section, data); i++) {
        if (!strcmp(lw_section_element(section, data, i) + section->label_offset, label))
            return true;
    }
    return false;
}

// One `label: value` line whose label was just read.
static void read_labelled_line(parse *p, const lw_section *section, const key *at, size_t *tried)
{
    char path[PATH_LENGTH];
    lw_text_fit(path, sizeof path, "%s.%s", section->table->key, at->text);
    const lw_written label = written_key(p, at, path);
    if (has_label(p, section, at->text)) {
        say(p->faults, &label, "this label was given before: labels must differ", "");
        lw_yaml_skip(&p->yaml, lw_yaml_next(&p->yaml));
        return;
    }
    const bool is_label = lw_written_label(&label, p->faults);
    const lw_node node = lw_yaml_next(&p->yaml);
    const lw_quantity *row = &section->table->rows[0];
    double si = 0.0;
    read_quantity(p, node, row, path, &si);
    const lw_node place = {.kind = LW_NODE_NONE, .line = at->line, .column = at->column};
    char *element = is_label ? next_element(p, section, place, tried) : NULL;
    if (!element) return;
    lw_quantity_put(row, element, si);
    memcpy(element + section->label_offset, at->text, strlen(at->text) + 1);
}

static void read_labelled(parse *p, const lw_section *section, const key *at)
{
    size_t tried = 0;
    key label;
    if (!is_kind(p, lw_yaml_next(&p->yaml), LW_NODE_MAP, at->text)) return;
    while (next_key(p, &label)) read_labelled_line(p, section, &label, &tried);
    lw_section_sort(section, p->data);
}

static void read_list(parse *p, const lw_section *section, const key *at)
{
    size_t tried = 0;
    if (!is_kind(p, lw_yaml_next(&p->yaml), LW_NODE_LIST, at->text)) return;
    for (;;) {
        const lw_node node = lw_yaml_next(&p->yaml);
        if (node.kind == LW_NODE_END) return;
        key item = {.line = node.line, .column = node.column};
        lw_text_fit(item.text, sizeof item.text, "%.40s[%zu]", section->table->key, tried);
        if (!is_kind(p, node, LW_NODE_MAP, item.text)) continue;
        char *element = next_element(p, section, node, &tried);
        if (element) {
            lw_table_preset(section->table, element);
            read_rows(p, section->table, &item, element);
        } else {
            lw_yaml_skip(&p->yaml, node);
        }
    }
}

static void read_values(parse *p, const lw_section *section, const key *at)
{
    size_t tried = 0;
    if (!is_kind(p, lw_yaml_next(&p->yaml), LW_NODE_LIST, at->text)) return;
    for (;;) {
        const lw_node node = lw_yaml_next(&p->yaml);
        if (node.kind == LW_NODE_END) return;
        char path[PATH_LENGTH];
        double si = 0.0;
        lw_text_fit(path, sizeof path, "%s[%zu]", at->text, tried);
        const bool is_read = read_quantity(p, node, &section->table->rows[0], path, &si);
        char *element = next_element(p, section, node, &tried);
        if (is_read && element) lw_quantity_put(&section->table->rows[0], element, si);
    }
}

static void read_section(parse *p, const lw_section *section, const key *at)
{
    const size_t index = (size_t)(section - p->record->sections);
    if (p->reading->section_line[index]) {
        twice(p, at, at->text);
        return;
    }
    p->reading->section_line[index] = at->line;
    p->reading->given[index] = 0;
    if (section->kind != LW_SECTION_PLAIN) *lw_section_length(section, p->data) = 0;
    switch (section->kind) {
        case LW_SECTION_PLAIN:
            p->reading->given[index] = read_plain(p, section, at);
            break;
        case LW_SECTION_LABELLED:
            read_labelled(p, section, at);
            break;
        case LW_SECTION_LIST:
            read_list(p, section, at);
            break;
        case LW_SECTION_VALUES:
            read_values(p, section, at);
            break;
    }
}

static void read_text(parse *p, const lw_text *text, const key *at)
{
    const uint64_t bit = UINT64_C(1) << (text - p->record->texts);
    if (p->texts_given & bit) {
        twice(p, at, at->text);
        return;
    }
    p->texts_given |= bit;
    const lw_node node = lw_yaml_next(&p->yaml);
    if (!is_text(p, node, at->text, "a text")) return;
    const lw_written written = written_at(p, node, at->text);
    lw_written_text(&written, text, p->data, p->faults);
}

static void miss_sections(parse *p)
{
    for (size_t i = 0; i < p->record->section_count; i++) {
        const lw_section *section = &p->record->sections[i];
        if (!section->required || p->reading->section_line[i]) continue;
        const lw_written written = {.file = p->yaml.file,
                                    .line = p->yaml.line,
                                    .column = 1,
                                    .key = section->table->key,
                                    .text = ""};
        lw_fault *fault = lw_faults_add(p->faults, &written);
        LW_FIT(fault->sentence, "the section is missing");
        LW_FIT(fault->expected, "%s: and its values", section->table->key);
        if (lw_record_named(p->record->name))  // that of what was learned comes from `learn` alone
            LW_FIT(fault->expected, "%s: and its values, as `lullwise new %s` writes them",
                   section->table->key, p->record->name);
    }
}

static void read_top(parse *p)
{
    const lw_node top = lw_yaml_next(&p->yaml);
    if (!is_kind(p, top, LW_NODE_MAP, "")) return;
    key at;
    while (next_key(p, &at)) {
        const lw_section *section = lw_record_section(p->record, at.text);
        const lw_text *text = lw_record_text(p->record, at.text);
        if (section)
            read_section(p, section, &at);
        else if (text)
            read_text(p, text, &at);
        else
            unknown_key(p, &at, at.text, lw_record_nearest(p->record, at.text));
    }
    while (!p->yaml.is_over) lw_yaml_skip(&p->yaml, lw_yaml_next(&p->yaml));  // a second document?
}

bool lw_reading_text(lw_reading *reading, const lw_source_text *source, lw_faults *faults)
{
    const size_t before = faults->fault_count, first = faults->count;
    if (!lw_source_is_clean(source, faults)) return false;
    if (!lw_yaml_is_alike(source, faults)) return false;

    char *data = malloc(reading->record->size);
    if (!data) return lw_faults_no_memory(faults, source->name);
    lw_reading next = *reading;
    next.file = source->name;
    memset(next.section_line, 0, sizeof next.section_line);
    memcpy(data, reading->data, reading->record->size);
    parse p = {.record = reading->record, .data = data, .reading = &next, .faults = faults};

    lw_yaml_open(&p.yaml, source, faults);
    read_top(&p);
    const bool is_cut = faults->fault_count > before && p.yaml.parser.error != YAML_NO_ERROR;
    if (!is_cut) miss_sections(&p);
    lw_yaml_close(&p.yaml);

    const bool is_sound = faults->fault_count == before;
    lw_faults_sort(faults, first);
    if (is_sound) {
        memcpy(reading->data, data, reading->record->size);
        *reading = next;
    }
    free(data);
    return is_sound;
}
