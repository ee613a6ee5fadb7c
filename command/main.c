// main.c - the lullwise program: finds the command and hands the words over.
// SPDX-License-Identifier: MIT

#include <stdio.h>
#include <string.h>

#include "command/ask.h"
#include "command/command.h"
#include "command/command_line.h"
#include "command/commands.h"
#include "command/pages.h"
#include "command/terminal/print.h"
#include "records/output_file.h"

#ifndef LW_VERSION
#define LW_VERSION "unversioned"
#endif

static void print_help(FILE *out)
{
    fputs("lullwise - which set-up to sail on a foiling dinghy\n\n", out);
    fputs("usage: lullwise COMMAND [OPTION...] [FILE...]\n\n", out);
    lw_command command;
    for (size_t i = 0; (command = lw_command_at(i)).name; i++) {
        if (command.is_hidden) continue;
        fprintf(out, "  %-13s", command.name);
        lw_print_wrapped(out, command.summary, 15, 15);
    }
    fputs("\n`lullwise COMMAND --help` tells more.\n", out);
    fputs("Ends with 0: fine, 1: no answer, 2: wrong input.\n", out);
}

static void print_command_help(const lw_command *command)
{
    printf("usage: lullwise %s%s%s%s\n\n", command->name, command->takes[0] ? " [OPTION...]" : "",
           command->operands[0] ? " " : "", command->operands);
    lw_print_wrapped(stdout, command->doc, 0, 0);
    putchar('\n');
    lw_command_line_help(stdout, command->takes);
}

static lw_exit say_unknown(const char *name)
{
    const char *nearest = NULL;
    lw_command command;
    for (size_t i = 0; (command = lw_command_at(i)).name; i++) {
        if (!command.is_hidden) nearest = lw_text_nearer(name, nearest, command.name);
    }
    lw_print_complaint("", "there is no command \"%s\"; %s%s%s", name,
                       nearest ? "did you mean \"" : "--help lists them", nearest ? nearest : "",
                       nearest ? "\"?" : "");
    return LW_EXIT_WRONG_INPUT;
}

// Files that would be refused in the end are refused before the work.
static bool outputs_can_be(const lw_options *options)
{
    static const char *const names[] = {"output", "csv", "geojson"};
    const bool may_replace = lw_options_has(options, "force") || lw_options_has(options, "resume");
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        const char *path = lw_options_text(options, names[i]), *why;
        if (lw_output_can(path, may_replace, &why)) continue;
        lw_print_complaint(options->command, "%s: %s", path, why);
        return false;
    }
    return true;
}

static lw_exit run(const lw_command *command, int count, char *const *words)
{
    static lw_options options;
    options.command = command->name;
    if (!lw_command_line_read(&options, command->takes, count, words)) return LW_EXIT_WRONG_INPUT;
    if (lw_options_has(&options, "help")) {
        print_command_help(command);
        return LW_EXIT_FINE;
    }
    if (options.operand_count < command->operand_least) {
        lw_print_complaint(command->name, "something is missing: lullwise %s %s", command->name,
                           command->operands);
        return LW_EXIT_WRONG_INPUT;
    }
    if (options.operand_count > command->operand_most) {
        lw_print_complaint(command->name, "\"%s\" is one word too many",
                           options.operands[command->operand_most]);
        return LW_EXIT_WRONG_INPUT;
    }
    if (!outputs_can_be(&options)) return LW_EXIT_WRONG_INPUT;
    if (!command->question) return command->run(&options);
    if (!lw_pages_can(command->question, &options)) return LW_EXIT_WRONG_INPUT;
    return lw_ask_question(command->question, &options);
}

static lw_exit answer(int count, char *const *words)
{
    const char *name = count > 1 ? words[1] : "";
    if (!strcmp(name, "--help") || !strcmp(name, "-h") || !strcmp(name, "help")) {
        print_help(stdout);
        return LW_EXIT_FINE;
    }
    if (!strcmp(name, "--version")) {
        puts("lullwise " LW_VERSION);
        return LW_EXIT_FINE;
    }
    if (!name[0]) {
        print_help(stderr);
        return LW_EXIT_WRONG_INPUT;
    }
    const lw_command command = lw_command_named(name);
    return command.name ? run(&command, count - 2, words + 2) : say_unknown(name);
}

int main(int count, char **words)
{
    const lw_exit ended = answer(count, words);
    if (fflush(stdout) == 0 && !ferror(stdout)) return (int)ended;
    lw_print_complaint("", "the answer could not be written");
    return ended == LW_EXIT_FINE ? LW_EXIT_NO_ANSWER : (int)ended;
}
