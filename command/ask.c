// ask.c - a question of answer/ asked on the command line.
// SPDX-License-Identifier: MIT

#include "command/ask.h"

#include <stdlib.h>
#include <string.h>

#include "command/figures.h"
#include "command/pages.h"
#include "command/terminal/print.h"
#include "command/terminal/stop.h"
#include "command/today.h"
#include "command/told_json.h"
#include "command/work.h"
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

// Also writes the answer into the file of an option, where it is given.
static bool write_file(const lw_options *options, const char *name, lw_writer *write,
                       const void *it)
{
    const char *path = write ? lw_options_text(options, name) : NULL;
    const char *why = "there is not enough memory";
    lw_output output;
    if (!path) return true;
    bool is_written = lw_output_open(&output);
    if (is_written) {
        write(it, output.stream);
        is_written = lw_output_commit(&output, path, lw_options_has(options, "force"), &why);
    }
    if (!is_written) lw_print_complaint(options->command, "%s: %s", path, why);
    return is_written;
}

// It goes to standard output, in the place of text.
static bool is_output(const lw_options *options, const char *name, lw_writer *write)
{
    const char *path = write ? lw_options_text(options, name) : NULL;
    return path && strcmp(path, "-") == 0;
}

static bool tell(const lw_question *question, const void *it, const lw_options *options)
{
    lw_figure figures[LW_FIGURES_MOST + 1];
    if (lw_options_has(options, "json")) return lw_told_json_write(question->tell, it, stdout);
    if (is_output(options, "svg", question->draw) || is_output(options, "csv", question->log) ||
        is_output(options, "geojson", question->map) || is_output(options, "pdf", question->draw) ||
        is_output(options, "png", question->draw))
        return true;
    lw_terminal_tell(question->tell, it, stdout, lw_figures_of(question, it, figures));
    return true;
}

static lw_exit answer(const lw_question *question, void *it, const lw_options *options)
{
    lw_work(question, it);
    const bool is_told = tell(question, it, options);
    const bool is_drawn = lw_pages_write(question, it, options);
    const bool is_logged = write_file(options, "csv", question->log, it);
    const bool is_mapped = write_file(options, "geojson", question->map, it);
    const bool is_kept = write_file(options, "output", question->record, it);
    const bool is_answered = !question->is_answered || question->is_answered(it);
    const bool is_fine = is_told && is_drawn && is_logged && is_mapped && is_kept && is_answered;
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
    asked.today = lw_today();
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
