// record_kinds.c - the records that have files of their own, by name.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "lullwise/boat.h"
#include "lullwise/day.h"
#include "records/record_file.h"

const lw_record *const lw_records[] = {&lw_boat_record, &lw_sailor_record, &lw_day_record, NULL};

const lw_record *lw_record_named(const char *name)
{
    for (const lw_record *const *record = lw_records; *record; record++) {
        if (strcmp((*record)->name, name) == 0) return *record;
    }
    return NULL;
}
