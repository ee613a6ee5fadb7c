// ask.c - a question of answer/ asked on the command line.
// SPDX-License-Identifier: MIT

#include "command/ask.h"

#include <stdlib.h>
#include <string.h>

#include "command/figures.h"
#include "command/terminal/print.h"
#include "command/terminal/stop.h"
#include "command/told_json.h"
#include "command/work.h"
#include "records/json.h"
#include "records/output_file.h"

static void complain(const lw_options *options, const lw_refusal *refusal)
{
    lw_print_faults(stderr, &refusal->faults);
    if (refusal->text[0]) lw_print_complaint(options->command, "%s", refusal->text);
}

static void note_doubts(const lw_options *options, const lw_faults *faults)
{
    const size_t doubts = faults->count + faults->left_out - faults->fault_count;
    if (!doubts) return;
    lw_print_complaint(options->command,
                       "%zu value%s unusual; `lullwise check` on the files names %s", doubts,
                       doubts == 1 ? " is" : "s are", doubts == 1 ? "it" : "them");
}

static bool read_inputs(lw_inputs *inputs, const lw_options *options)
{
    lw_faults faults = {0};
    const bool is_read = lw_inputs_read(inputs, options, &faults);
    if (is_read)
        note_doubts(options, &faults);
    else
        lw_print_faults(stderr, &faults);
    lw_faults_free(&faults);
    return is_read;
}

static void tell_text(const lw_question *question, const void *it)
{
    lw_terminal terminal;
    lw_teller teller = lw_terminal_begin(&terminal, stdout, NULL);
    lw_figure figures[LW_FIGURES_MOST + 1];
    terminal.figures = lw_figures_of(question, it, figures);
    question->tell(it, &teller);
    lw_terminal_end(&terminal, &teller);
}

static bool tell_json(const lw_question *question, const void *it)
{
    lw_told_json told;
    lw_teller teller = lw_told_json_begin(&told);
    question->tell(it, &teller);
    return lw_json_write(lw_told_json_end(&told, &teller), stdout);
}

// A file that an answer is also written into: its option, and what writes it.
typedef struct extra {
    const char *option;
    void (*write)(const void *it, FILE *out);
} extra;

#define EXTRAS 2

static void list_extras(const lw_question *question, extra extras[EXTRAS])
{
    extras[0] = (extra){"svg", question->draw};
    extras[1] = (extra){"csv", question->log};
}

static const char *path_of(const lw_options *options, const extra *e)
{
    return e->write ? lw_options_text(options, e->option) : NULL;
}

// What would be refused for its name is refused before any work.
static bool can_write(const lw_question *question, const lw_options *options)
{
    extra extras[EXTRAS];
    list_extras(question, extras);
    for (size_t i = 0; i < EXTRAS; i++) {
        const char *path = path_of(options, &extras[i]), *why;
        if (!path || lw_output_can(path, lw_options_has(options, "force"), &why)) continue;
        lw_print_complaint(options->command, "%s: %s", path, why);
        return false;
    }
    return true;
}

static bool write_one(const lw_options *options, const extra *e, const void *it)
{
    const char *path = path_of(options, e), *why = "there is not enough memory";
    lw_output output;
    if (!path) return true;
    bool is_written = lw_output_open(&output);
    if (is_written) {
        e->write(it, output.stream);
        is_written = lw_output_commit(&output, path, lw_options_has(options, "force"), &why);
    }
    if (!is_written) lw_print_complaint(options->command, "%s: %s", path, why);
    return is_written;
}

static bool write_extras(const lw_question *question, const void *it, const lw_options *options)
{
    extra extras[EXTRAS];
    list_extras(question, extras);
    bool are_written = true;
    for (size_t i = 0; i < EXTRAS; i++) {
        if (!write_one(options, &extras[i], it)) are_written = false;
    }
    return are_written;
}

// One of them goes to standard output, in the place of text.
static bool takes_the_output(const lw_question *question, const lw_options *options)
{
    extra extras[EXTRAS];
    list_extras(question, extras);
    for (size_t i = 0; i < EXTRAS; i++) {
        const char *path = path_of(options, &extras[i]);
        if (path && strcmp(path, "-") == 0) return true;
    }
    return false;
}

static lw_exit answer(const lw_question *question, void *it, const lw_options *options)
{
    if (!can_write(question, options)) return LW_EXIT_WRONG_INPUT;
    lw_work(question, it);
    const bool is_json = lw_options_has(options, "json");
    const bool is_told = !is_json || tell_json(question, it);
    if (!is_json && !takes_the_output(question, options)) tell_text(question, it);
    const bool are_written = write_extras(question, it, options);
    const bool is_fine = is_told && are_written && question->is_answered(it);
    return is_fine ? LW_EXIT_FINE : LW_EXIT_NO_ANSWER;
}

lw_exit lw_ask_question(const lw_question *question, const lw_options *given)
{
    static lw_inputs inputs;
    static lw_options asked;
    const lw_options *options = &asked;
    lw_refusal refusal = {0};
    asked = *given;
    asked.wants_end = lw_stop_wanted;
    lw_stop_watch();
    if (!read_inputs(&inputs, options)) return LW_EXIT_WRONG_INPUT;
    void *it = calloc(1, question->size);
    if (!it) {
        lw_print_complaint(options->command, "there is not enough memory");
        return LW_EXIT_NO_ANSWER;
    }
    lw_exit ended = LW_EXIT_WRONG_INPUT;
    if (question->begin(it, &inputs, options, &refusal))
        ended = answer(question, it, options);
    else
        complain(options, &refusal);
    lw_faults_free(&refusal.faults);
    if (question->release) question->release(it);
    free(it);
    return ended;
}
