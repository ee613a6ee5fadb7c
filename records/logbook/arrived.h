// arrived.h - what a reader of days does with each.
// SPDX-License-Identifier: MIT

#ifndef LW_LOGBOOK_ARRIVED_H
#define LW_LOGBOOK_ARRIVED_H

#include "records/logbook/transfer.h"

// The readers of the two forms.
bool lw_days_read_csv(const lw_source_text *source, const char *today, lw_entries *days,
                      lw_faults *faults);
bool lw_days_read_json(const lw_source_text *source, const char *today, lw_entries *days,
                       lw_faults *faults);

// A key that no column has.
void lw_arrived_unknown(const lw_columns *columns, const lw_written *written, lw_faults *faults);

// Settles an entry whose columns are in, and gives it an id where it has none.
bool lw_arrived_settle(lw_entry *entry, const lw_entry_source *source, lw_faults *faults);

#endif
