// ask.c - a question of answer/ asked on the command line.
// SPDX-License-Identifier: MIT

#include "command/ask.h"

#include <stdlib.h>
#include <string.h>

#include "command/figures.h"
#include "command/terminal/print.h"
#include "command/terminal/progress.h"
#include "command/terminal/stop.h"
#include "command/told_json.h"
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

// Until all is done or Ctrl-C says that it is enough.
static void work(const lw_question *question, void *it)
{
    size_t done = 0, steps;
    lw_stop_watch();
    while (question->steps && done < (steps = question->steps(it))) {
        for (; done < steps && !lw_stop_wanted(); done++) {
            lw_progress(question->work, done, steps);
            question->step(it, done);
        }
        if (lw_stop_wanted()) break;
    }
    if (question->end) question->end(it);
    lw_progress_over();
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

// Into the file of an option, where it is given.
static bool write_file(const lw_options *options, const char *name, const void *it,
                       void (*face)(const void *, FILE *))
{
    const char *path = face ? lw_options_text(options, name) : NULL;
    const char *why = "there is not enough memory";
    lw_output output;
    if (!path) return true;
    bool is_written = lw_output_open(&output);
    if (is_written) {
        face(it, output.stream);
        is_written = lw_output_commit(&output, path, lw_options_has(options, "force"), &why);
    }
    if (!is_written) lw_print_complaint(options->command, "%s: %s", path, why);
    return is_written;
}

static lw_exit answer(const lw_question *question, void *it, const lw_options *options)
{
    work(question, it);
    const bool is_json = lw_options_has(options, "json");
    const bool is_told = !is_json || tell_json(question, it);
    if (!is_json) tell_text(question, it);
    const bool are_written = write_file(options, "svg", it, question->draw) &&
                             write_file(options, "csv", it, question->log);
    const bool is_fine = is_told && are_written && question->is_answered(it);
    return is_fine ? LW_EXIT_FINE : LW_EXIT_NO_ANSWER;
}

lw_exit lw_ask_question(const lw_question *question, const lw_options *options)
{
    static lw_inputs inputs;
    lw_refusal refusal = {0};
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
    free(it);
    return ended;
}
