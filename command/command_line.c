// command_line.c - the words of a command line sorted into options and files; the help on them.
// SPDX-License-Identifier: MIT

#include "command/command_line.h"

#include <string.h>

#include "command/terminal/print.h"

// True when `name` is one of the words of `takes`. --help always is.
static bool is_taken(const char *takes, const char *name)
{
    const size_t length = strlen(name);
    if (strcmp(name, "help") == 0) return true;
    for (const char *at = takes; *at; at += strcspn(at, " ") + (at[strcspn(at, " ")] == ' ')) {
        if (strcspn(at, " ") == length && strncmp(at, name, length) == 0) return true;
    }
    return false;
}

// The option written as "--name", "--name=..." or "-n", among those that are taken.
static const lw_option *option_of_word(const char *takes, const char *word)
{
    const char *name = word + 2;
    const size_t length = strcspn(name, "=");
    const lw_option *option;
    for (size_t i = 0; (option = lw_option_at(i)); i++) {
        if (!is_taken(takes, option->name)) continue;
        const bool is_short = word[1] != '-' && word[1] == option->letter && word[2] == '\0';
        const bool is_long = word[1] == '-' && strlen(option->name) == length &&
                             strncmp(option->name, name, length) == 0;
        if (is_short || is_long) return option;
    }
    return NULL;
}

static bool say_unknown(const lw_options *options, const char *takes, const char *word)
{
    const char *nearest = NULL;
    char name[64];
    lw_text_fit(name, sizeof name, "%.*s", (int)strcspn(word, "="), word);
    const lw_option *option;
    for (size_t i = 0; (option = lw_option_at(i)); i++) {
        if (!is_taken(takes, option->name)) continue;
        nearest = lw_text_nearer(name + strspn(name, "-"), nearest, option->name);
    }
    if (nearest) {
        lw_print_complaint(options->command, "there is no option %s; did you mean --%s?", name,
                           nearest);
    } else {
        lw_print_complaint(options->command, "there is no option %s; --help lists them", name);
    }
    return false;
}

static bool add(lw_options *options, const lw_option *option, const char *text)
{
    if (options->count == LW_GIVEN_MOST) {
        lw_print_complaint(options->command, "%d options at most", LW_GIVEN_MOST);
        return false;
    }
    options->given[options->count] = option;
    options->texts[options->count++] = text;
    return true;
}

static bool add_operand(lw_options *options, const char *word)
{
    if (options->operand_count == LW_GIVEN_MOST) {
        lw_print_complaint(options->command, "%d files at most", LW_GIVEN_MOST);
        return false;
    }
    options->operands[options->operand_count++] = word;
    return true;
}

// One word that begins with "-", with its argument; *at moves behind what was used up.
static bool take_option(lw_options *options, const char *takes, char *const *words, int *at)
{
    const char *word = words[*at], *equals = strchr(word, '=');
    const lw_option *option = option_of_word(takes, word);
    if (!option) return say_unknown(options, takes, word);
    ++*at;
    if (!option->argument && equals) {
        lw_print_complaint(options->command, "--%s takes no value", option->name);
        return false;
    }
    if (!option->argument) return add(options, option, "");
    if (equals && word[1] == '-') return add(options, option, equals + 1);
    if (words[*at]) return add(options, option, words[(*at)++]);
    lw_print_complaint(options->command, "--%s needs a value: --%s %s", option->name, option->name,
                       option->argument);
    return false;
}

bool lw_command_line_read(lw_options *options, const char *takes, int count, char *const *words)
{
    bool has_ended = false;  // by "--"
    for (int i = 0; i < count;) {
        const char *word = words[i];
        if (!has_ended && strcmp(word, "--") == 0) {
            has_ended = true, i++;
        } else if (!has_ended && word[0] == '-' && word[1] != '\0') {
            if (!take_option(options, takes, words, &i)) return false;
        } else if (!add_operand(options, words[i++])) {
            return false;
        }
    }
    return true;
}

void lw_command_line_help(FILE *out, const char *takes)
{
    const size_t indent = 24;
    const lw_option *option;
    for (size_t i = 0; (option = lw_option_at(i)); i++) {
        char head[64], letter[8] = "";
        if (!is_taken(takes, option->name)) continue;
        if (option->letter) LW_FIT(letter, "-%c, ", option->letter);
        LW_FIT(head, "  %s--%s%s%s", letter, option->name, option->argument ? " " : "",
               option->argument ? option->argument : "");
        fprintf(out, "%-*s", (int)indent, head);
        if (strlen(head) >= indent) fprintf(out, "\n%*s", (int)indent, "");
        lw_print_wrapped(out, option->help, indent, indent);
    }
}
