// sweep.c - `lullwise sweep`: a table over any quantities, on all cores of this machine.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <string.h>
#include <time.h>

#include "answer/asked.h"
#include "command/command.h"
#include "command/searched.h"
#include "command/terminal/print.h"
#include "command/terminal/progress.h"
#include "command/terminal/stop.h"
#include "sweep/crew.h"
#include "sweep/written.h"

static lw_exit refuse(const lw_options *options, lw_refusal *refusal)
{
    lw_print_faults(stderr, &refusal->faults);
    if (refusal->text[0]) lw_print_complaint(options->command, "%s", refusal->text);
    lw_faults_free(&refusal->faults);
    return LW_EXIT_WRONG_INPUT;
}

static const struct timespec while_waiting = {.tv_nsec = 2000000};

// Waits while a search has nothing to hand out until more points are there.
static bool next(void *it, size_t *point)
{
    lw_store *store = it;
    while (!lw_stop_wanted()) {
        if (lw_store_hand_out(store, point)) return true;
        if (!store->sweep->sought_count || lw_store_is_over(store)) return false;
        nanosleep(&while_waiting, NULL);
    }
    return false;
}

static void done(void *store, size_t point, const char *lines)
{
    lw_store_put(store, point, lines);
}

// Until the threads have ended.
static void show_progress(lw_crew *crew, lw_store *store)
{
    const struct timespec a_moment = {.tv_nsec = 50000000};
    while (atomic_load(&crew->at_work) > 0) {
        lw_progress("points of the table", store->done, lw_store_all(store));
        nanosleep(&a_moment, NULL);
    }
    lw_progress_over();
}

static bool work(const lw_sweep *sweep, lw_store *store, size_t threads)
{
    static lw_crew crew;
    if (!lw_crew_start(&crew, sweep, threads, (lw_crew_work){store, next, done})) {
        LW_FIT(store->why, "there is not enough memory");
        return false;
    }
    show_progress(&crew, store);
    lw_crew_join(&crew);
    return lw_sweep_finish(store);
}

static lw_exit run_kept(const lw_sweep *sweep, size_t threads)
{
    static lw_store store;
    const lw_options *options = sweep->options;
    const bool is_open =
        lw_store_open(&store, sweep, lw_options_text(options, "output"),
                      lw_options_has(options, "resume"), lw_options_has(options, "force"));
    lw_stop_watch();
    const bool is_whole = is_open && work(sweep, &store, threads);
    if (is_whole) lw_searched_tell(&store);
    if (!is_whole) lw_print_complaint("sweep", "%s", store.why);
    lw_store_close(&store, is_whole);
    return is_whole ? LW_EXIT_FINE : is_open ? LW_EXIT_NO_ANSWER : LW_EXIT_WRONG_INPUT;
}

static lw_exit sweep_run(const lw_options *options)
{
    static lw_sweep sweep;
    lw_refusal refusal = {0};
    double threads = (double)lw_crew_cores();
    const bool can = lw_sweep_begin(&sweep, options, &refusal) &&
                     lw_asked_whole(options, "threads", &threads, &refusal);
    const lw_exit ended = can ? run_kept(&sweep, (size_t)threads) : refuse(options, &refusal);
    lw_sweep_end(&sweep);
    return ended;
}

const lw_command lw_command_sweep = {
    .name = "sweep",
    .summary = "A table of answers over many sailors, winds or boats, on all cores.",
    .operands = "",
    .takes = LW_SWEEP_OPTIONS,
    .doc =
        "Answers at every point of a grid, as CSV or, with --json, as an object a line: --over "
        "KEY=from:to:step, or values with semicolons between; boat, sailor and day as keys take "
        "files. A wind that is varied alone takes lull, mean and puff with it in proportion. "
        "--draws N adds N draws of boat and sailor within the errors of their tables. --ask is "
        "choice (which it is without it), range, swims, flight or balance. --best "
        "KEY=from:to:step seeks hardware within bounds, over all these cases: what to buy first, "
        "and what it costs elsewhere; it goes by the time of a choice, or the speed of a flight or "
        "balance, and -o FILE then keeps what was tried. With -o FILE a run "
        "that was stopped or killed goes on with --resume; two axes can be drawn as a map with "
        "--svg. The same table to the bit, whatever the number of threads. Ends with 1 when it "
        "is not whole.",
    .run = sweep_run,
    .is_behind = true,
};
