// log_read.c - `lullwise log list`, `show` and `near`.
// SPDX-License-Identifier: MIT

#include "command/log.h"

lw_exit lw_log_list(lw_log_call *call)
{
    lw_entries days = {0};
    if (!lw_log_read(call, false, false, &days)) return LW_EXIT_NO_ANSWER;
    const lw_listed listed = {.path = call->path, .days = &days};
    const lw_exit ended = lw_log_tell(call, lw_listed_tell, &listed);
    lw_entries_free(&days);
    lw_logbook_close(&call->book);
    return ended;
}

lw_exit lw_log_show(lw_log_call *call)
{
    lw_entries days = {0};
    if (!lw_log_read(call, false, true, &days)) return LW_EXIT_NO_ANSWER;
    const lw_entry *entry = lw_log_day(call, &days);
    const lw_exit ended = entry ? lw_log_tell(call, lw_entry_tell, entry) : LW_EXIT_WRONG_INPUT;
    lw_entries_free(&days);
    lw_logbook_close(&call->book);
    return ended;
}

lw_exit lw_log_near(lw_log_call *call)
{
    static lw_inputs inputs;
    lw_faults faults = {0};
    lw_entries days = {0};
    if (!lw_inputs_read(&inputs, call->options, &faults)) return lw_log_refuse(&faults);
    lw_faults_free(&faults);
    if (!lw_log_read(call, false, false, &days)) return LW_EXIT_NO_ANSWER;
    lw_near near = {.inputs = &inputs,
                    .days = &days,
                    .asks_mass = lw_options_has(call->options, "sailor"),
                    .asks_boat = lw_options_has(call->options, "boat")};
    lw_near_find(&near);
    const lw_exit ended = lw_log_tell(call, lw_near_tell, &near);
    const bool is_answered = near.count > 0;
    lw_entries_free(&days);
    lw_logbook_close(&call->book);
    return is_answered ? ended : LW_EXIT_NO_ANSWER;
}
