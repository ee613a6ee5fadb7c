// arrived.c - what a reader of days does with each.
// SPDX-License-Identifier: MIT

#include "records/logbook/arrived.h"

#include <inttypes.h>
#include <stdlib.h>
#include <string.h>

#include "records/record_hash.h"
#include "records/record_value.h"

void lw_arrived_unknown(const lw_columns *columns, const lw_written *written, lw_faults *faults)
{
    const char *nearest = NULL;
    for (size_t i = 0; i < columns->count; i++)
        nearest = lw_text_nearer(written->text, nearest, columns->list[i].key);
    lw_written_unknown(written, "column", nearest, faults);
}

// Of all columns: the same day has the same one, wherever it is read.
static bool give_id(lw_entry *entry)
{
    const lw_columns columns = lw_columns_of();
    uint64_t hash = LW_HASH_EMPTY;
    for (size_t i = 0; i < columns.count; i++) {
        char *text = lw_column_text(&columns.list[i], entry);
        if (!text) return false;
        hash = lw_hash_add(hash, text, strlen(text) + 1);
        free(text);
    }
    LW_FIT(entry->id, "%016" PRIx64, hash);
    return true;
}

bool lw_arrived_settle(lw_entry *entry, const lw_entry_source *source, lw_faults *faults)
{
    if (!lw_entry_settle(entry, source, faults)) return false;
    return entry->id[0] || give_id(entry) || lw_faults_no_memory(faults, source->file);
}
