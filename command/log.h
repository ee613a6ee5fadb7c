// log.h - the words of `lullwise log`: each reads or changes the logbook.
// SPDX-License-Identifier: MIT

#ifndef LW_COMMAND_LOG_H
#define LW_COMMAND_LOG_H

#include "answer/log/log.h"
#include "command/command.h"
#include "records/logbook/logbook.h"

// What every word has at hand.
typedef struct lw_log_call {
    const lw_options *options;  // today's date in it
    const char *word;           // what stands behind "log" or NULL
    char home[LW_LOGBOOK_PATH];
    const char *path;  // of the logbook
    lw_logbook book;
} lw_log_call;

lw_exit lw_log_add(lw_log_call *call);
lw_exit lw_log_edit(lw_log_call *call);
lw_exit lw_log_remove(lw_log_call *call);
lw_exit lw_log_list(lw_log_call *call);
lw_exit lw_log_show(lw_log_call *call);
lw_exit lw_log_near(lw_log_call *call);
lw_exit lw_log_export(lw_log_call *call);
lw_exit lw_log_import(lw_log_call *call);

// --- shared by them

// Opens the logbook; a message when it cannot be.
bool lw_log_open(lw_log_call *call, bool writes);

// A message of what the logbook last said; LW_EXIT_NO_ANSWER.
lw_exit lw_log_complain(const lw_log_call *call);

// All faults printed, and given up; LW_EXIT_WRONG_INPUT.
lw_exit lw_log_refuse(lw_faults *faults);

// Opens the logbook and reads all days. False after a message.
bool lw_log_read(lw_log_call *call, bool writes, bool wants_all, lw_entries *days);

// The day that the word means: the first digits of its id, its date, or "last". NULL after a
// message.
lw_entry *lw_log_day(const lw_log_call *call, const lw_entries *days);

// Text or JSON, as asked.
lw_exit lw_log_tell(const lw_log_call *call, lw_tell *tell, const void *it);

#endif
