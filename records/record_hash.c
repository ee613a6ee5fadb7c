// record_hash.c - a number that tells whether two records are the same.
// SPDX-License-Identifier: MIT

#include "records/record_hash.h"

#include <string.h>

uint64_t lw_hash_add(uint64_t hash, const void *bytes, size_t count)
{
    const unsigned char *at = bytes;
    for (size_t i = 0; i < count; i++) hash = (hash ^ at[i]) * UINT64_C(0x100000001b3);
    return hash;
}

// With its closing zero, so that "ab" and "c" differ from "a" and "bc".
static uint64_t add_text(uint64_t hash, const char *text)
{
    return lw_hash_add(hash, text, strlen(text) + 1);
}

static uint64_t add_number(uint64_t hash, double x)
{
    uint64_t bits;
    unsigned char bytes[8];
    if (x == 0.0) x = 0.0;  // -0 counts as 0
    memcpy(&bits, &x, sizeof bits);
    for (int i = 0; i < 8; i++) bytes[i] = (unsigned char)(bits >> 8 * i & 0xFF);
    return lw_hash_add(hash, bytes, sizeof bytes);
}

static uint64_t add_rows(uint64_t hash, const lw_table *table, const void *data)
{
    for (size_t i = 0; i < table->count; i++) {
        const lw_quantity *row = &table->rows[i];
        const double value = lw_quantity_value(row, data);
        if (row->is_late && value == row->preset * lw_unit_in_si(row->unit)) continue;
        hash = add_text(hash, row->key);
        hash = add_number(hash, value);
    }
    return hash;
}

static uint64_t add_section(uint64_t hash, const lw_section *section, const void *data)
{
    const char *at = (const char *)data + section->offset;
    size_t count = 1;
    hash = add_text(hash, section->table->key);
    if (section->kind != LW_SECTION_PLAIN)
        memcpy(&count, (const char *)data + section->count_offset, sizeof count);
    for (size_t i = 0; i < count; i++, at += section->stride) {
        if (section->kind == LW_SECTION_LABELLED) hash = add_text(hash, at + section->label_offset);
        hash = add_rows(hash, section->table, at);
    }
    return hash;
}

uint64_t lw_record_hash(const lw_record *record, const void *data)
{
    uint64_t hash = add_text(LW_HASH_EMPTY, record->name);
    for (size_t i = 0; i < record->text_count; i++) {
        hash = add_text(hash, record->texts[i].key);
        hash = add_text(hash, (const char *)data + record->texts[i].offset);
    }
    for (size_t i = 0; i < record->section_count; i++)
        hash = add_section(hash, &record->sections[i], data);
    return hash;
}
