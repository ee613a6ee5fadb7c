// quantities.c - `lullwise quantities`: the page doc/quantities.md.
// SPDX-License-Identifier: MIT

#include <stdio.h>

#include "command/command.h"
#include "lullwise/choice.h"
#include "records/record_file.h"

static const lw_table *const results[] = {&lw_setup_table, &lw_flight_table,   &lw_margins_table,
                                          &lw_range_table, &lw_prospect_table, NULL};

static lw_exit run(const lw_options *options)
{
    (void)options;
    fputs("# Quantities\n\n", stdout);
    fputs("Written by `lullwise quantities` from the tables of the program; do not edit.\n\n",
          stdout);
    fputs(
        "A value may be written in any unit of its kind. Outside its range it is refused; outside "
        "the usual\nband it is taken, and `lullwise check` asks to measure again. *Known to*: what "
        "a tape, a scale or an\neye leaves open, one sigma. [judged]: nobody has measured it; "
        "other words in brackets name a source\nin [sources](sources.md).\n",
        stdout);
    for (const lw_record *const *record = lw_records; *record; record++) {
        lw_record_manual(stdout, *record);
    }
    fprintf(stdout, "\n## %s\n\n%s In no file.\n\n", lw_judged_table.title, lw_judged_table.doc);
    lw_table_manual(stdout, &lw_judged_table);
    fputs("\n## Results\n\nWhat the commands answer, in these units in JSON.\n", stdout);
    for (const lw_table *const *table = results; *table; table++) {
        lw_result_manual(stdout, *table);
    }
    return LW_EXIT_FINE;
}

const lw_command lw_command_quantities = {
    .name = "quantities",
    .summary = "Write the page on all quantities.",
    .operands = "",
    .takes = "",
    .doc = "Writes doc/quantities.md.",
    .is_behind = true,
    .run = run,
    .is_hidden = true,
};
