// log_move.c - `lullwise log export` and `import`.
// SPDX-License-Identifier: MIT

#include <stdlib.h>
#include <string.h>

#include "command/log.h"
#include "command/terminal/print.h"
#include "command/terminal/progress.h"
#include "records/logbook/transfer.h"
#include "records/output_file.h"

// --- export

static bool write_days(const lw_log_call *call, const lw_entries *days)
{
    const lw_options *options = call->options;
    const char *csv = lw_options_text(options, "csv");
    const char *path = csv ? csv : lw_options_text(options, "output");
    const char *why = "there is not enough memory";
    lw_output output;
    bool is_written = lw_output_open(&output);
    if (is_written) {
        is_written =
            csv ? lw_days_write_csv(days, output.stream) : lw_days_write_json(days, output.stream);
        if (is_written)
            is_written = lw_output_commit(&output, path, lw_options_has(options, "force"), &why);
        else
            lw_output_drop(&output);
    }
    if (!is_written) lw_print_complaint("log", "%s: %s", path ? path : "standard output", why);
    return is_written;
}

lw_exit lw_log_export(lw_log_call *call)
{
    lw_entries days = {0};
    if (!lw_log_read(call, false, true, &days)) return LW_EXIT_NO_ANSWER;
    const bool is_written = write_days(call, &days);
    lw_entries_free(&days);
    lw_logbook_close(&call->book);
    return is_written ? LW_EXIT_FINE : LW_EXIT_NO_ANSWER;
}

// --- import

static int by_id(const void *a, const void *b)
{
    return strcmp(((const lw_entry *)a)->id, ((const lw_entry *)b)->id);
}

// Counts an entry that is there already. `kept` is in the order of ids.
static bool is_known(const lw_entry *entry, const lw_entries *kept, lw_log_change *change)
{
    const lw_entry *twin =
        kept->count ? bsearch(entry, kept->list, kept->count, sizeof *entry, by_id) : NULL;
    if (!twin) return false;
    change->known++;
    change->different += !lw_days_are_same(entry, twin);
    return true;
}

// All of them, or none.
static bool add_days(lw_log_call *call, const lw_entries *come, const lw_entries *kept,
                     lw_log_change *change)
{
    bool is_added = lw_logbook_begin(&call->book);
    for (size_t i = 0; is_added && i < come->count; i++) {
        const lw_entry *entry = &come->list[i];
        lw_progress("adding days", i, come->count);
        if (i > 0 && strcmp(entry->id, entry[-1].id) == 0) continue;  // twice in the file
        if (is_known(entry, kept, change)) continue;
        is_added = lw_logbook_add(&call->book, entry);
        change->added++;
    }
    lw_progress_over();
    return lw_logbook_end(&call->book, is_added) && is_added;
}

static lw_exit add_all(lw_log_call *call, lw_entries *come)
{
    lw_entries kept = {0};
    lw_log_change change = {.path = call->path, .key = "imported"};
    if (!lw_log_read(call, true, true, &kept)) return LW_EXIT_NO_ANSWER;
    if (kept.count) qsort(kept.list, kept.count, sizeof kept.list[0], by_id);
    if (come->count) qsort(come->list, come->count, sizeof come->list[0], by_id);
    const bool is_added = add_days(call, come, &kept, &change);
    lw_entries_free(&kept);
    lw_logbook_close(&call->book);
    return is_added ? lw_log_tell(call, lw_log_change_tell, &change) : lw_log_complain(call);
}

lw_exit lw_log_import(lw_log_call *call)
{
    lw_faults faults = {0};
    lw_entries come = {0};
    size_t length = 0;
    char *text = lw_source_fetch(call->word, LW_TRANSFER_MOST, &length, &faults);
    const lw_source_text source = {lw_source_name(call->word), text, length};
    const bool is_read = text && lw_days_read(&source, call->options->today, &come, &faults);
    const lw_exit ended = is_read ? add_all(call, &come) : lw_log_refuse(&faults);
    lw_faults_free(&faults);
    lw_entries_free(&come);
    free(text);
    return ended;
}
