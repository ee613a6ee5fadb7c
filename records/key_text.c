// key_text.c - a key of a record as people say it.
// SPDX-License-Identifier: MIT

#include "records/key_text.h"

#include <string.h>

#include "records/fault.h"
#include "records/record_file.h"

// The section whose key is that long; NULL for none.
static const lw_section *section_of(const char *key, size_t length)
{
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
    const size_t length = strcspn(key, ".");
    const lw_section *section = key[length] ? section_of(key, length) : NULL;
    lw_text_fit(text, LW_KEY_TEXT, "%s", key);
    if (!section) return text;
    const char *title = section->table->title;
    lw_text_fit(text, LW_KEY_TEXT, "%s: %s", title, key + length + 1);
    if (section->kind == LW_SECTION_LABELLED) return text;
    for (size_t at = strlen(title); text[at]; at++) {
        if (text[at] == '_') text[at] = ' ';
    }
    return text;
}
