// sweep.c - `lullwise sweep`: a table over any quantities, on all cores of this machine.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <string.h>
#include <time.h>

#include "answer/asked.h"
#include "command/command.h"
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

static bool next(void *store, size_t *point)
{
    return !lw_stop_wanted() && lw_store_hand_out(store, point);
}

static void done(void *store, size_t point, const char *lines)
{
    lw_store_put(store, point, lines);
}

// Until the threads have ended.
static void show_progress(lw_crew *crew, const lw_store *store)
{
    const struct timespec while_waiting = {.tv_nsec = 50000000};
    while (atomic_load(&crew->at_work) > 0) {
        lw_progress("points of the table", store->done, store->sweep->points);
        nanosleep(&while_waiting, NULL);
    }
    lw_progress_over();
}

static lw_exit complain(lw_store *store, bool forgets)
{
    lw_print_complaint("sweep", "%s", store->why);
    lw_store_close(store, forgets);
    return LW_EXIT_NO_ANSWER;
}

static lw_exit work(const lw_sweep *sweep, lw_store *store, size_t threads)
{
    static lw_crew crew;
    const size_t before = store->done;
    if (!lw_crew_start(&crew, sweep, threads, (lw_crew_work){store, next, done})) {
        LW_FIT(store->why, "there is not enough memory");
        return complain(store, before == 0);
    }
    show_progress(&crew, store);
    lw_crew_join(&crew);
    if (store->is_broken) return complain(store, false);
    if (store->path[0] && store->done < sweep->points) {
        LW_FIT(store->why, "%zu of %zu points are worked out and kept in %s; --resume goes on",
               store->done, sweep->points, store->path);
        return complain(store, false);
    }
    if (!lw_sweep_write(store)) return complain(store, false);
    const bool is_whole = store->done == sweep->points;
    lw_store_close(store, true);
    return is_whole ? LW_EXIT_FINE : LW_EXIT_NO_ANSWER;
}

static lw_exit sweep_run(const lw_options *options)
{
    static lw_sweep sweep;
    static lw_store store;
    lw_refusal refusal = {0};
    double threads = (double)lw_crew_cores();
    const char *output = lw_options_text(options, "output");
    lw_exit ended;
    if (lw_options_has(options, "resume") && !output) {
        lw_refuse(&refusal, "--resume goes on with what -o FILE has begun: give it too");
        return refuse(options, &refusal);
    }
    if (!lw_sweep_begin(&sweep, options, &refusal) ||
        !lw_asked_whole(options, "threads", &threads, &refusal)) {
        ended = refuse(options, &refusal);
    } else if (!lw_store_open(&store, &sweep, output, lw_options_has(options, "resume"),
                              lw_options_has(options, "force"))) {
        complain(&store, false);
        ended = LW_EXIT_WRONG_INPUT;
    } else {
        lw_stop_watch();
        ended = work(&sweep, &store, (size_t)threads);
    }
    lw_sweep_end(&sweep);
    return ended;
}

const lw_command lw_command_sweep = {
    .name = "sweep",
    .summary = "A table of answers over any quantities: sailors, winds, boats, all cores at work.",
    .operands = "",
    .takes = LW_SWEEP_OPTIONS,
    .doc =
        "Answers at every point of a grid, as CSV or, with --json, as an object a line: --over "
        "KEY=from:to:step, or values with semicolons between; boat, sailor and day as keys take "
        "files. A wind that is varied alone takes lull, mean and puff with it in proportion. "
        "--draws N adds N draws of boat and sailor within the errors of their tables. --ask is "
        "choice (which it is without it), range, swims, flight or balance. With -o FILE a run "
        "that was stopped or killed goes on with --resume; two axes can be drawn as a map with "
        "--svg. The same table to the bit, whatever the number of threads. Ends with 1 when it "
        "is not whole.",
    .run = sweep_run,
    .is_behind = true,
};
