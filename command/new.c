// new.c - `lullwise new`: a file to fill in, every value explained.
// SPDX-License-Identifier: MIT

#include "command/command.h"
#include "command/terminal/print.h"
#include "records/output_file.h"
#include "records/record_file.h"

static lw_exit say_unknown(const char *name)
{
    const char *nearest = NULL;
    for (const lw_record *const *record = lw_records; *record; record++) {
        nearest = lw_text_nearer(name, nearest, (*record)->name);
    }
    if (nearest)
        lw_print_complaint("new",
                           "\"%s\" is none of boat, sailor, day; did you mean "
                           "\"%s\"?",
                           name, nearest);
    else
        lw_print_complaint("new", "\"%s\" is none of boat, sailor, day", name);
    return LW_EXIT_WRONG_INPUT;
}

static lw_exit run(const lw_options *options)
{
    const lw_record *record = lw_record_named(options->operands[0]);
    if (!record) return say_unknown(options->operands[0]);

    const char *path = lw_options_text(options, "output");
    const char *why = "there is not enough memory";
    lw_output output;
    bool is_written = lw_output_open(&output);
    if (is_written) {
        lw_record_write(record, NULL, output.stream);
        is_written = lw_output_commit(&output, path, lw_options_has(options, "force"), &why);
    }
    if (is_written) return LW_EXIT_FINE;
    lw_print_complaint("new", "%s: %s", path ? path : "standard output", why);
    return path ? LW_EXIT_WRONG_INPUT : LW_EXIT_NO_ANSWER;
}

const lw_command lw_command_new = {
    .name = "new",
    .summary = "Write a file to fill in: a boat, a sailor or a day.",
    .operands = "boat|sailor|day",
    .operand_least = 1,
    .operand_most = 1,
    .takes = "output force",
    .doc =
        "Writes a file in which every value is explained: what it is, how to measure it and "
        "what it usually is. Replace the values by your own, then run `lullwise check`.",
    .run = run,
};
