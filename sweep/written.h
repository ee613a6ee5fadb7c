// written.h - a sweep's table written down: CSV, JSON lines, a map.
// SPDX-License-Identifier: MIT

#ifndef LW_WRITTEN_H
#define LW_WRITTEN_H

#include "sweep/store.h"

// Heads are "key" or "key [unit]", once for all forms. Points that are not worked out have a line
// that tells why in place of the outcome. `worker`: any of the sweep's, for those lines.
void lw_sweep_write_csv(lw_store *store, lw_sweep_worker *worker, FILE *out);
void lw_sweep_write_json(lw_store *store, lw_sweep_worker *worker, FILE *out);

// The head of the k-th column, and whether its cells are texts; false behind the last.
#define LW_HEAD_TEXT 140
bool lw_sweep_head(const lw_sweep *sweep, size_t k, char head[LW_HEAD_TEXT], bool *is_text);

// A map of the first lines' column of --map, or the answer's own, over both axes. False: there is
// no such column, as store->why says.
bool lw_sweep_write_map(lw_store *store, FILE *out);

// Ends a run: all that the options ask for is written, once the table is whole or has gaps with
// names. False, with store->why: the table is not whole, or could not be written.
bool lw_sweep_finish(lw_store *store);

#endif
