// log_call.c - what the words of `lullwise log` share.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "command/log.h"
#include "command/terminal/print.h"
#include "command/terminal/terminal.h"
#include "command/told_json.h"

bool lw_log_open(lw_log_call *call, bool writes)
{
    if (lw_logbook_open(&call->book, call->path, writes)) return true;
    lw_log_complain(call);
    return false;
}

lw_exit lw_log_complain(const lw_log_call *call)
{
    lw_print_complaint("log", "%s", call->book.why);
    return LW_EXIT_NO_ANSWER;
}

lw_exit lw_log_refuse(lw_faults *faults)
{
    lw_print_faults(stderr, faults);
    lw_faults_free(faults);
    return LW_EXIT_WRONG_INPUT;
}

bool lw_log_read(lw_log_call *call, bool writes, bool wants_all, lw_entries *days)
{
    if (!lw_log_open(call, writes)) return false;
    if (lw_logbook_days(&call->book, wants_all, days)) return true;
    lw_log_complain(call);
    lw_logbook_close(&call->book);
    lw_entries_free(days);
    return false;
}

#define DIGITS_LEAST 4  // of an id: fewer may be a slip

static bool is_meant(const lw_entry *entry, const char *word)
{
    const size_t length = strlen(word);
    return strcmp(entry->day.date, word) == 0 ||
           (length >= DIGITS_LEAST && strncmp(entry->id, word, length) == 0);
}

lw_entry *lw_log_day(const lw_log_call *call, const lw_entries *days)
{
    lw_entry *found = NULL;
    size_t count = 0;
    const bool is_last = strcmp(call->word, "last") == 0;
    for (size_t i = 0; i < days->count; i++) {
        if (!is_last && !is_meant(&days->list[i], call->word)) continue;
        found = &days->list[i];
        count++;
    }
    if (count == 1 || (is_last && found)) return found;
    if (count == 0)
        lw_print_complaint("log", "no day \"%s\" is logged; `lullwise log list` has them",
                           call->word);
    else
        lw_print_complaint("log",
                           "%zu days are \"%s\"; take digits of the id of one, which `lullwise log "
                           "list` has, all of them with --json",
                           count, call->word);
    return NULL;
}

lw_exit lw_log_tell(const lw_log_call *call, lw_tell *tell, const void *it)
{
    if (!lw_options_has(call->options, "json")) {
        lw_terminal_tell(tell, it, stdout, NULL);
        return LW_EXIT_FINE;
    }
    return lw_told_json_write(tell, it, stdout) ? LW_EXIT_FINE : LW_EXIT_NO_ANSWER;
}
