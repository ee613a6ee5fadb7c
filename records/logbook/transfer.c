// transfer.c - days of a logbook read from CSV or JSON, whichever it is.
// SPDX-License-Identifier: MIT

#include "records/logbook/transfer.h"

#include <stdlib.h>
#include <string.h>

#include "records/logbook/arrived.h"

bool lw_days_read(const lw_source_text *source, const char *today, lw_entries *days,
                  lw_faults *faults)
{
    if (!lw_source_is_clean(source, faults)) return false;
    const char *at = source->text;
    lw_source_text rest = *source;
    if (strncmp(at, "\xEF\xBB\xBF", 3) == 0) rest.text += 3, rest.length -= 3;
    at = rest.text + strspn(rest.text, " \r\n");
    return *at == '{' ? lw_days_read_json(&rest, today, days, faults)
                      : lw_days_read_csv(&rest, today, days, faults);
}

bool lw_days_are_same(const lw_entry *a, const lw_entry *b)
{
    const lw_columns columns = lw_columns_of();
    bool are_same = a->boat_hash == b->boat_hash && a->sailor_hash == b->sailor_hash;
    for (size_t i = 0; are_same && i < columns.count; i++) {
        if (columns.list[i].kind == LW_COLUMN_RECORD) continue;
        char *one = lw_column_text(&columns.list[i], a);
        char *other = lw_column_text(&columns.list[i], b);
        are_same = one && other && strcmp(one, other) == 0;
        free(one), free(other);
    }
    return are_same;
}
