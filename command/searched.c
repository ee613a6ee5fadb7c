// searched.c - what a search for hardware came to, on standard output.
// SPDX-License-Identifier: MIT

#include "command/searched.h"

#include "command/terminal/terminal.h"
#include "command/told_json.h"
#include "sweep/best_told.h"

void lw_searched_tell(const lw_store *store)
{
    if (!store->sweep->sought_count) return;
    if (lw_options_has(store->sweep->options, "json"))
        lw_told_json_write(lw_best_tell, &store->best, stdout);
    else
        lw_terminal_tell(lw_best_tell, &store->best, stdout, NULL);
}
