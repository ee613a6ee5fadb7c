// check.c - `lullwise check`: are these files sound, and what in them is doubtful?
// SPDX-License-Identifier: MIT

#include "answer/check/check.h"

#include <stdlib.h>

#include "command/command.h"
#include "command/terminal/print.h"
#include "command/terminal/terminal.h"
#include "command/told_json.h"
#include "command/work.h"

// What one tape error of each measurement does; NULL when it is not asked for or not to be had.
static lw_sensed *sensitivity_of(lw_checked *checked, const lw_options *options)
{
    const char *why;
    lw_refusal refusal = {0};
    lw_inputs *inputs = &checked->inputs;
    if (!lw_options_has(options, "sensitivity") || checked->faults.fault_count) return NULL;
    inputs->day = inputs->day_as_given;
    if (!lw_day_settle(&inputs->day, &why)) return NULL;
    lw_sensed *sensed = calloc(1, sizeof *sensed);
    if (!sensed) {
        lw_print_complaint("check", "there is not enough memory");
        return NULL;
    }
    lw_sensed_begin(sensed, inputs, options, &refusal);
    lw_work(&lw_question_sensitivity, sensed);
    return sensed;
}

static lw_exit run(const lw_options *options)
{
    static lw_checked checked;
    lw_checked_read(&checked, options);
    lw_sensed *sensed = sensitivity_of(&checked, options);
    checked.sensitivity = sensed;
    if (lw_options_has(options, "json")) {
        lw_told_json_write(lw_checked_tell, &checked, stdout);
    } else {
        lw_print_faults(stdout, &checked.faults);
        lw_terminal_tell(lw_checked_tell, &checked, stdout, NULL);
    }
    const lw_exit ended = checked.faults.fault_count ? LW_EXIT_WRONG_INPUT : LW_EXIT_FINE;
    lw_faults_free(&checked.faults);
    free(sensed);
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
        "--sensitivity also answers `lullwise sensitivity` for these files.",
    .run = run,
};
