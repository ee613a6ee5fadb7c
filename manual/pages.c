// pages.c - the manual pages: the programs, and the files that they read.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "answer/options.h"
#include "command/commands.h"
#include "manual/mdoc.h"
#include "manual/takes.h"
#include "sweep/sweep.h"

#define LINE 400

// --- options

static void write_option(const lw_mdoc *page, const lw_option *option)
{
    char line[LINE];
    if (option->letter)
        LW_FIT(line, ".It Fl %c , Fl -%s", option->letter, option->name);
    else
        LW_FIT(line, ".It Fl -%s", option->name);
    if (option->argument) lw_text_add(line, sizeof line, " Ar %s", option->argument);
    lw_mdoc_macro(page, line);
    lw_mdoc_text(page, option->help);
}

static void write_options(const lw_mdoc *page, const char *takes)
{
    const lw_option *option;
    lw_mdoc_macro(page, ".Bl -tag -width Ds");
    for (size_t i = 0; (option = lw_option_at(i)); i++) {
        if (!takes || lw_takes(takes, option->name)) write_option(page, option);
    }
    lw_mdoc_macro(page, ".El");
}

static void write_ends(const lw_mdoc *page)
{
    lw_mdoc_heading(page, "EXIT STATUS");
    lw_mdoc_macro(page,
                  ".Bl -tag -width Ds\n.It 0\nFine.\n.It 1\nNo answer.\n.It 2\nWrong input.\n"
                  ".El");
}

// --- the program

static void write_command(const lw_mdoc *page, const lw_command *command)
{
    char line[LINE], takes[2000] = "";
    const lw_option *option;
    LW_FIT(line, ".It Cm %s%s%s", command->name, command->operands[0] ? " Ar " : "",
           command->operands);
    lw_mdoc_macro(page, line);
    lw_mdoc_text(page, command->doc);
    for (size_t i = 0; (option = lw_option_at(i)); i++) {
        if (!lw_takes(command->takes, option->name)) continue;
        lw_text_add(takes, sizeof takes, "%s--%s", takes[0] ? ", " : "Takes ", option->name);
    }
    if (!takes[0]) return;
    lw_text_add(takes, sizeof takes, ".");
    lw_mdoc_macro(page, ".Pp");
    lw_mdoc_text(page, takes);
}

static void write_commands(const lw_mdoc *page)
{
    lw_command command;
    lw_mdoc_macro(page, ".Bl -tag -width Ds");
    for (size_t i = 0; (command = lw_command_at(i)).name; i++) {
        if (!command.is_hidden) write_command(page, &command);
    }
    lw_mdoc_macro(page, ".El");
}

void lw_mdoc_program(const lw_mdoc *page)
{
    lw_mdoc_head(page);
    lw_mdoc_heading(page, "SYNOPSIS");
    lw_mdoc_macro(page, ".Nm\n.Ar COMMAND\n.Op Ar OPTION ...\n.Op Ar FILE ...");
    lw_mdoc_heading(page, "DESCRIPTION");
    lw_mdoc_text(page,
                 "From a boat measured with a tape, a sailor and the day's lulls and puffs the "
                 "program works out which set-up to sail, and why. Boat, sailor and day are files; "
                 "without one a generic example is taken. Any number can be changed for one run "
                 "with --set, as in --set person.mass='80 kg'.");
    lw_mdoc_heading(page, "COMMANDS");
    write_commands(page);
    lw_mdoc_heading(page, "OPTIONS");
    lw_mdoc_text(page, "Each command takes those that it names.");
    write_options(page, NULL);
    lw_mdoc_heading(page, "FILES");
    lw_mdoc_macro(page,
                  ".Bl -tag -width Ds\n.It Pa ~/.local/share/lullwise/logbook.db\nThe logbook, "
                  "or where\n.Ev XDG_DATA_HOME\nsays.\n.El");
    write_ends(page);
    lw_mdoc_heading(page, "EXAMPLES");
    lw_mdoc_macro(page,
                  ".Dl lullwise new boat -o boat.yaml\n"
                  ".Dl lullwise pick --boat boat.yaml --day day.yaml");
    lw_mdoc_heading(page, "SEE ALSO");
    lw_mdoc_macro(page,
                  ".Xr lullwise-sweep 1 ,\n.Xr lullwise-boat 5 ,\n.Xr lullwise-day 5 ,\n"
                  ".Xr lullwise-sailor 5");
    lw_mdoc_foot(page);
    lw_mdoc_heading(page, "CAVEATS");
    lw_mdoc_text(page,
                 "Foils cut, cold water kills, and a mast near a power line kills too. "
                 "Nothing here says that it is safe to sail: local rules, and qualified "
                 "people who see the place and you, decide.");
}

void lw_mdoc_ranks(const lw_mdoc *page)
{
    const lw_command sweep = lw_command_named("sweep");
    lw_mdoc_head(page);
    lw_mdoc_heading(page, "SYNOPSIS");
    lw_mdoc_macro(page, ".Cm mpirun Fl n Ar RANKS\n.Nm\n.Op Ar OPTION ...");
    lw_mdoc_heading(page, "DESCRIPTION");
    lw_mdoc_text(page, sweep.doc);
    lw_mdoc_macro(page, ".Pp");
    lw_mdoc_text(page, LW_RANKS_DOC);
    lw_mdoc_heading(page, "OPTIONS");
    write_options(page, LW_RANKS_OPTIONS);
    write_ends(page);
    lw_mdoc_heading(page, "SEE ALSO");
    lw_mdoc_macro(page, ".Xr lullwise 1");
    lw_mdoc_foot(page);
}

// --- a file

static void write_row(const lw_mdoc *page, const lw_quantity *row)
{
    char line[LINE];
    const char *unit = lw_unit_text(row->unit);
    LW_FIT(line, ".It Li %s", row->key);
    lw_mdoc_macro(page, line);
    LW_FIT(line, "%.6g to %.6g%s%s", row->min, row->max, unit[0] ? " " : "", unit);
    if (!row->required) lw_text_add(line, sizeof line, "; %.6g where it is not given", row->preset);
    if (row->error > 0.0) lw_text_add(line, sizeof line, "; known to %.6g", row->error);
    lw_text_add(line, sizeof line, ".");
    lw_mdoc_text(page, line);
    if (row->doc && row->doc[0]) lw_mdoc_text(page, row->doc);
}

static void write_section(const lw_mdoc *page, const lw_section *section)
{
    char line[LINE];
    const lw_table *table = section->table;
    LW_FIT(line, ".Ss %s (%s)", table->title, table->key);
    lw_mdoc_macro(page, line);
    lw_mdoc_text(page, table->doc);
    lw_mdoc_macro(page, ".Bl -tag -width Ds");
    for (size_t i = 0; i < table->count; i++) write_row(page, &table->rows[i]);
    lw_mdoc_macro(page, ".El");
}

static void write_words(const lw_mdoc *page, const lw_record *record)
{
    char line[LINE];
    lw_mdoc_macro(page, ".Bl -tag -width Ds");
    for (size_t i = 0; i < record->text_count; i++) {
        LW_FIT(line, ".It Li %s", record->texts[i].key);
        lw_mdoc_macro(page, line);
        lw_mdoc_text(page, record->texts[i].doc);
    }
    lw_mdoc_macro(page, ".El");
}

void lw_mdoc_record(const lw_mdoc *page, const lw_record *record)
{
    char line[LINE];
    lw_mdoc_head(page);
    lw_mdoc_heading(page, "DESCRIPTION");
    lw_mdoc_text(page, record->doc);
    lw_mdoc_text(page,
                 "The file is a small part of YAML: key and value on a line, sections, "
                 "lists, comments behind a #. Any unit of a quantity's kind will do.");
    LW_FIT(line, ".Pp\n.Dl lullwise new %s -o %s.yaml", record->name, record->name);
    lw_mdoc_macro(page, line);
    lw_mdoc_macro(page, ".Pp\nwrites one in which every value is explained.");
    lw_mdoc_heading(page, "WORDS");
    write_words(page, record);
    lw_mdoc_heading(page, "SECTIONS");
    for (size_t i = 0; i < record->section_count; i++) write_section(page, &record->sections[i]);
    lw_mdoc_heading(page, "SEE ALSO");
    lw_mdoc_macro(page, ".Xr lullwise 1");
    lw_mdoc_foot(page);
}
