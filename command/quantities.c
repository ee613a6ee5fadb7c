// quantities.c - `lullwise quantities`: the page doc/quantities.md.
// SPDX-License-Identifier: MIT

#include <stdio.h>

#include "command/command.h"
#include "lullwise/choice.h"
#include "lullwise/logged.h"
#include "records/record_file.h"

static const lw_table *const results[] = {&lw_setup_table, &lw_flight_table,   &lw_margins_table,
                                          &lw_range_table, &lw_prospect_table, NULL};

static bool is_of_day(const lw_table *table)
{
    for (size_t i = 0; i < lw_day_record.section_count; i++) {
        if (lw_day_record.sections[i].table == table) return true;
    }
    return false;
}

// What a logged day has beside tables that stand here already.
static void write_logged(void)
{
    const lw_record *record = &lw_logged_record;
    printf(
        "\n## %s\n\n%s Wind, sea, water and air are those of a day, the set-up is among the "
        "results; beside them:\n\n",
        record->title, record->doc);
    for (size_t i = 0; i < record->text_count; i++)
        printf("- `%s`: %s\n", record->texts[i].key, record->texts[i].doc);
    for (size_t i = 0; i < record->section_count; i++) {
        const lw_table *table = record->sections[i].table;
        if (is_of_day(table) || table == &lw_setup_table) continue;
        printf("\n### %s: `%s`\n\n%s\n\n", table->title, table->key, table->doc);
        lw_table_manual(stdout, table);
    }
}

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
    write_logged();
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
