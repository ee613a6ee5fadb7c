// key_text.c - a key of a record as people say it.
// SPDX-License-Identifier: MIT

#include "records/key_text.h"

#include <string.h>

#include "records/fault.h"
#include "records/record_file.h"

// The section whose key stands before the first point; NULL for none.
static const lw_section *section_of(const char *key)
{
    const size_t length = strcspn(key, ".");
    if (key[length] != '.') return NULL;
    for (int r = 0; lw_records[r]; r++) {
        for (size_t i = 0; i < lw_records[r]->section_count; i++) {
            const lw_section *section = &lw_records[r]->sections[i];
            const char *own = section->table->key;
            if (strlen(own) == length && memcmp(own, key, length) == 0) return section;
        }
    }
    return NULL;
}

const char *lw_key_text(char text[LW_KEY_TEXT], const char *key)
{
    const lw_section *section = section_of(key);
    lw_text_fit(text, LW_KEY_TEXT, "%s", key);
    if (!section) return text;
    lw_text_fit(text, LW_KEY_TEXT, "%s: %s", section->table->title, strchr(key, '.') + 1);
    if (section->kind == LW_SECTION_LABELLED) return text;
    for (char *at = strchr(text, ':'); *at; at++) {
        if (*at == '_') *at = ' ';
    }
    return text;
}
