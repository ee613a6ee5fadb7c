// main.c - lullwise-sweep: `lullwise sweep` on many machines, started by mpirun.
// SPDX-License-Identifier: MIT

#define _DEFAULT_SOURCE

#include <mpi.h>
#include <signal.h>
#include <string.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>

#include "answer/asked.h"
#include "command/command.h"
#include "command/command_line.h"
#include "command/searched.h"
#include "command/terminal/print.h"
#include "command/terminal/progress.h"
#include "command/terminal/stop.h"
#include "ranks/rank.h"
#include "records/output_file.h"
#include "sweep/written.h"

#define ROOT     0
#define PATIENCE 30.0  // [s] a machine that is merely busy is not silent for so long  [judged]
#define FAREWELL 10    // [s] for all ranks to end together  [judged]

// What the root says before anybody works: go on, or end with this.
#define GO_ON (-1)

static void print_help(void)
{
    printf("usage: mpirun -n RANKS lullwise-sweep [OPTION...]\n\n");
    lw_print_wrapped(stdout, LW_RANKS_DOC, 0, 0);
    putchar('\n');
    lw_command_line_help(stdout, LW_RANKS_OPTIONS);
}

static bool begin(lw_sweep *sweep, const lw_options *options, lw_root_plan *plan, bool is_heard)
{
    lw_refusal refusal = {0};
    double threads = 1.0;
    const bool can =
        lw_sweep_begin(sweep, options, &refusal) &&
        lw_asked_whole(options, "threads", &threads, &refusal) &&
        lw_asked_number(options, "patience", (lw_bounds){0}, &plan->patience, &refusal);
    plan->threads = (size_t)threads;
    if (!can && is_heard) {
        lw_print_faults(stderr, &refusal.faults);
        if (refusal.text[0]) lw_print_complaint("sweep", "%s", refusal.text);
    }
    lw_faults_free(&refusal.faults);
    return can;
}

// The root's part before the others are heard of: what to end with, or GO_ON.
static int prepare(lw_sweep *sweep, lw_store *store, const lw_options *options, lw_root_plan *plan)
{
    const char *path = lw_options_text(options, "output"), *why;
    const bool resumes = lw_options_has(options, "resume");
    const bool may_replace = lw_options_has(options, "force");
    if (lw_options_has(options, "help")) {
        print_help();
        return LW_EXIT_FINE;
    }
    if (!begin(sweep, options, plan, true)) return LW_EXIT_WRONG_INPUT;
    if (!lw_output_can(path, may_replace || resumes, &why)) {
        lw_print_complaint("sweep", "%s: %s", path, why);
        return LW_EXIT_WRONG_INPUT;
    }
    if (lw_store_open(store, sweep, path, resumes, may_replace)) return GO_ON;
    lw_print_complaint("sweep", "%s", store->why);
    return LW_EXIT_WRONG_INPUT;
}

static int lead(lw_store *store, const lw_root_plan *plan, bool *may_finalize)
{
    lw_stop_watch();
    *may_finalize = lw_root_run(store, plan);
    lw_progress_over();
    if (!*may_finalize && !store->is_broken) lw_print_complaint("sweep", "%s", store->why);
    const bool is_whole = lw_sweep_finish(store);
    if (is_whole) lw_searched_tell(store);
    if (!is_whole) lw_print_complaint("sweep", "%s", store->why);
    lw_store_close(store, is_whole);
    lw_root_dismiss(plan->ranks, *may_finalize);
    return is_whole ? LW_EXIT_FINE : LW_EXIT_NO_ANSWER;
}

static int run(int count, char **words, int rank, lw_root_plan *plan, bool *may_finalize)
{
    static lw_options options = {.command = "sweep"};
    static lw_sweep sweep;
    static lw_store store;
    int ended = GO_ON;
    const bool is_root = rank == ROOT;
    if (is_root) {
        const bool is_read = lw_command_line_read(&options, LW_RANKS_OPTIONS, count - 1, words + 1);
        ended = is_read && !options.operand_count ? prepare(&sweep, &store, &options, plan)
                                                  : LW_EXIT_WRONG_INPUT;
    }
    MPI_Bcast(&ended, 1, MPI_INT, ROOT, MPI_COMM_WORLD);
    if (ended == GO_ON && is_root) {
        ended = lead(&store, plan, may_finalize);
    } else if (ended == GO_ON) {
        const bool can = lw_command_line_read(&options, LW_RANKS_OPTIONS, count - 1, words + 1) &&
                         begin(&sweep, &options, plan, false);
        *may_finalize = can ? lw_rank_run(&sweep, plan->threads) : lw_rank_decline();
        ended = LW_EXIT_FINE;
    }
    lw_sweep_end(&sweep);
    return ended;
}

// Managers of processes end all ranks as soon as one of those that they started is ended by a
// signal. So this one only waits for the one that works, and ends by itself.
static int keep(pid_t worker)
{
    int status;
    signal(SIGINT, SIG_IGN);
    signal(SIGUSR1, SIG_IGN);  // by which some of them tell that a rank died
    while (waitpid(worker, &status, 0) < 0) continue;
    return WIFEXITED(status) ? WEXITSTATUS(status) : LW_EXIT_NO_ANSWER;
}

static volatile sig_atomic_t ended_with;

static void leave(int number)
{
    (void)number;
    _exit(ended_with);
}

// A rank that died after its last word would be waited for without end.
static void finalize(int ended)
{
    ended_with = ended;
    signal(SIGALRM, leave);
    alarm(FAREWELL);
    MPI_Finalize();
    alarm(0);
}

static int work(int count, char **words)
{
    int rank, threads;
    bool may_finalize = true;
    lw_root_plan plan = {
        .patience = PATIENCE, .wants_end = lw_stop_wanted, .progress = lw_progress};
    MPI_Init_thread(&count, &words, MPI_THREAD_FUNNELED, &threads);
    signal(SIGUSR1, SIG_IGN);
    MPI_Comm_set_errhandler(MPI_COMM_WORLD, MPI_ERRORS_RETURN);
    MPI_Comm_rank(MPI_COMM_WORLD, &rank);
    MPI_Comm_size(MPI_COMM_WORLD, &plan.ranks);
    const int ended = run(count, words, rank, &plan, &may_finalize);
    fflush(NULL);
    if (!may_finalize) _exit(ended);
    finalize(ended);
    return ended;
}

int main(int count, char **words)
{
    const pid_t started = getpid(), worker = fork();
    if (worker > 0) return keep(worker);
    if (worker == 0) prctl(PR_SET_PDEATHSIG, SIGKILL);
    return worker == 0 && getppid() != started ? LW_EXIT_NO_ANSWER : work(count, words);
}
