// check.c - `lullwise check`: are these files sound, and what in them is doubtful?
// SPDX-License-Identifier: MIT

#include "answer/check/check.h"

#include "command/command.h"
#include "command/sensitivity.h"
#include "command/terminal/print.h"
#include "command/terminal/terminal.h"
#include "command/told_json.h"

// What one tape error of each measurement does; NULL when it is not asked for or not to be had.
static const lw_sensitivity *sensitivity_of(lw_checked *checked, const lw_options *options)
{
    static lw_sensitivity sensitivity;
    const char *why;
    lw_inputs *inputs = &checked->inputs;
    if (!lw_options_has(options, "sensitivity") || checked->faults.fault_count) return NULL;
    inputs->day = inputs->day_as_given;
    if (!lw_day_settle(&inputs->day, &why)) return NULL;
    if (lw_sensitivity_of(inputs, &sensitivity)) return &sensitivity;
    lw_print_complaint("check", "there is not enough memory");
    return NULL;
}

static lw_exit run(const lw_options *options)
{
    static lw_checked checked;
    lw_checked_read(&checked, options);
    checked.sensitivity = sensitivity_of(&checked, options);
    if (lw_options_has(options, "json")) {
        lw_told_json_write(lw_checked_tell, &checked, stdout);
    } else {
        lw_print_faults(stdout, &checked.faults);
        lw_terminal_tell(lw_checked_tell, &checked, stdout, NULL);
    }
    const lw_exit ended = checked.faults.fault_count ? LW_EXIT_WRONG_INPUT : LW_EXIT_FINE;
    lw_faults_free(&checked.faults);
    return ended;
}

const lw_command lw_command_check = {
    .name = "check",
    .summary = "Look boat, sailor and day files over: faults, and what is doubtful.",
    .operands = "FILE...",
    .operand_least = 1,
    .operand_most = LW_GIVEN_MOST,
    .takes = "sensitivity json",
    .doc =
        "Reads each file, tells by its sections whether it is a boat, a sailor or a day, and "
        "names every fault with line and column, what was read and what was expected. A doubt "
        "is a value that is taken but unusual. A file named - is standard input. "
        "--sensitivity moves each measurement of the boat and the sailor by its error and tells "
        "which matter most for the choice on the day.",
    .run = run,
};
