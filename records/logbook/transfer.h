// transfer.h - days of a logbook as CSV and JSON, there and back without loss.
// SPDX-License-Identifier: MIT
//
// CSV as [rfc4180]: a header line, then a line each; a quantity's unit stands in its head
// ("wind.lull [kn]"). JSON as [rfc8259]: {"lullwise_logbook": 2, "units": {}, "days": [{}]}.

#ifndef LW_LOGBOOK_TRANSFER_H
#define LW_LOGBOOK_TRANSFER_H

#include <stdio.h>

#include "records/logbook/column.h"
#include "records/source_text.h"

#define LW_TRANSFER_MOST    64000000  // [bytes] that are read in
#define LW_TRANSFER_FORMAT  "lullwise_logbook"
#define LW_TRANSFER_VERSION 2  // 1 is read too: it has nothing of tracks but their names

// False: no memory, or `out` took less than all.
bool lw_days_write_csv(const lw_entries *days, FILE *out);
bool lw_days_write_json(const lw_entries *days, FILE *out);

// Reads either, behind what is in the list: settled entries, each with an id; one that had none has
// a hash of its columns. False: faults, by line of CSV, by place among the days of JSON.
bool lw_days_read(const lw_source_text *source, const char *today, lw_entries *days,
                  lw_faults *faults);

// Every column of two days is the same, boat and sailor by their hash. False: not, or no memory.
bool lw_days_are_same(const lw_entry *a, const lw_entry *b);

#endif
