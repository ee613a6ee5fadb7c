// log.c - `lullwise log`: finds the word and hands over.
// SPDX-License-Identifier: MIT

#include "command/log.h"

#include <string.h>

#include "command/terminal/print.h"
#include "command/today.h"

#define DAY_OPTIONS "date pin set sign notes track logbook json"

typedef struct log_word {
    const char *name;
    const char *operand;  // what stands behind it; NULL: nothing
    const char *takes;    // options
    lw_exit (*run)(lw_log_call *call);
} log_word;

static const log_word words[] = {
    {"add", NULL, "boat sailor day " DAY_OPTIONS, lw_log_add},
    {"list", NULL, "logbook json", lw_log_list},
    {"show", "DAY", "logbook json", lw_log_show},
    {"edit", "DAY", DAY_OPTIONS, lw_log_edit},
    {"remove", "DAY", "logbook json", lw_log_remove},
    {"near", NULL, "boat sailor day set logbook json", lw_log_near},
    {"export", NULL, "csv output force logbook json", lw_log_export},
    {"import", "FILE", "logbook json", lw_log_import},
};
#define WORDS (sizeof words / sizeof words[0])

static const log_word *word_named(const char *name)
{
    const char *nearest = NULL;
    for (size_t i = 0; i < WORDS; i++) {
        if (strcmp(words[i].name, name) == 0) return &words[i];
        nearest = lw_text_nearer(name, nearest, words[i].name);
    }
    lw_print_complaint("log", "there is no log %s; did you mean %s?", name,
                       nearest ? nearest : "add, list, show, edit, remove, near, export or import");
    return NULL;
}

static bool has_word(const char *list, const char *name)
{
    const size_t length = strlen(name);
    for (const char *at = strstr(list, name); at; at = strstr(at + 1, name)) {
        if ((at == list || at[-1] == ' ') && (at[length] == ' ' || !at[length])) return true;
    }
    return false;
}

static bool is_asked_well(const log_word *word, const lw_options *options)
{
    const size_t wanted = word->operand ? 2 : 1;
    for (size_t i = 0; i < options->count; i++) {
        if (has_word(word->takes, options->given[i]->name)) continue;
        lw_print_complaint("log", "log %s takes no --%s", word->name, options->given[i]->name);
        return false;
    }
    if (options->operand_count < wanted)
        lw_print_complaint("log", "something is missing: lullwise log %s %s", word->name,
                           word->operand);
    if (options->operand_count > wanted)
        lw_print_complaint("log", "\"%s\" is one word too many", options->operands[wanted]);
    return options->operand_count == wanted;
}

static lw_exit run(const lw_options *given)
{
    static lw_options options;
    static lw_log_call call;
    const log_word *word = word_named(given->operands[0]);
    if (!word || !is_asked_well(word, given)) return LW_EXIT_WRONG_INPUT;
    options = *given;
    options.today = lw_today();
    call.options = &options;
    call.word = word->operand ? given->operands[1] : NULL;
    call.path = lw_options_text(given, "logbook");
    if (!call.path && lw_logbook_home(call.home)) call.path = call.home;
    if (call.path) return word->run(&call);
    lw_print_complaint("log", "no home folder is known; say where with --logbook FILE");
    return LW_EXIT_WRONG_INPUT;
}

const lw_command lw_command_log = {
    .name = "log",
    .summary = "Keep sailed days, and find those most like a forecast.",
    .operands = "WORD [DAY|FILE]",
    .operand_least = 1,
    .operand_most = 2,
    .takes = "boat sailor day date pin set sign notes track csv output force logbook json",
    .doc =
        "WORD is one of these. add keeps a day: boat, sailor, wind and sea from their files, "
        "--pin, and what else is "
        "told: --sign, --notes, --track, and with --set turns.upwind, turns.reach, "
        "turns.downwind, outing.swims, outing.afloat, waters, and verdict: much-too-weak, "
        "too-weak, right, too-strong or much-too-strong. list, show and near read; edit changes "
        "what its options tell (--set takes every key that show has), remove takes a day out. DAY "
        "is the first digits of its id, its date, or last. near lists the days most like the "
        "day of --day and --set, with what differs. export writes all days as JSON, or as CSV "
        "with --csv, and import takes either in, no day twice.",
    .run = run,
    .is_behind = true,
};
