// bench.c - how fast the engine is: each figure beside a yardstick measured in the same run.
// SPDX-License-Identifier: MIT
//
// Medians of REPEATS; the two sides of a ratio take turns, so that a busy machine slows both.

#define _DEFAULT_SOURCE  // wait4

#include <cminpack.h>
#include <math.h>
#include <stdio.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/utsname.h>
#include <sys/wait.h>
#include <unistd.h>

#include "bench/linear.h"
#include "bench/ride.h"
#include "bench/scalar.h"
#include "bench/sea.h"
#include "bench/stopwatch.h"
#include "flight/balance.h"
#include "lullwise/choice.h"
#include "records/record_file.h"
#include "test/preset.h"

#define QUESTIONS 4000
#define POSES     40000

static void print_machine(void)
{
    struct utsname name;
    char line[256] = "unknown processor";
    FILE *info = fopen("/proc/cpuinfo", "r");
    while (info && fgets(line, sizeof line, info)) {
        if (strncmp(line, "model name", 10) == 0) break;
    }
    if (info) fclose(info);
    const char *colon = strchr(line, ':');
    printf("machine   %s", colon ? colon + 2 : "unknown processor\n");
    if (uname(&name) == 0) printf("          %s %s, ", name.sysname, name.machine);
    printf("compiler %s, lanes %d\n\n", __VERSION__, LW_WIDTH);
}

// --- flight balances against MINPACK's hybrid method

typedef struct tried {
    scalar_question question;
    bool has_converged;
    long looks;
} tried;

// The function that hybrd drives to zero. It is stopped where our own search stops, and kept from
// sailing backwards, where the forces have no value; both help it.
static int residual_for_hybrd(void *context, int n, const double *x, double *residual, int flag)
{
    (void)flag;
    tried *t = context;
    double inside[6], most = 0.0;
    memcpy(inside, x, sizeof inside);
    inside[0] = fmax(x[0], 0.2);
    scalar_residual(&t->question, inside, residual);
    t->looks++;
    for (int i = 0; i < n; i++) most = fmax(most, fabs(residual[i]));
    t->has_converged = x[0] == inside[0] && most < LW_RESIDUAL;
    return t->has_converged ? -1 : 0;
}

// With its own scaling of the unknowns (mode 1) it finds more than in the fixed form hybrd1.
static bool hybrd_finds(const lw_craft *craft, const lw_ask *ask, long *looks)
{
    enum { N = 6, TRIANGLE = N * (N + 1) / 2, LOOKS_MOST = 200 * (N + 1) };
    tried t = {.has_converged = false};
    const lw_ask_start *s = &ask->start;
    double x[N] = {s->speed, s->leeway, s->ride_height, s->rudder, s->helm, s->effort};
    double residual[N], scale[N], jacobian[N * N], r[TRIANGLE], qtf[N], work[4][N];
    int looked;
    scalar_ask(&t.question, craft, ask);
    hybrd(residual_for_hybrd, &t, N, x, residual, 1e-12, LOOKS_MOST, N - 1, N - 1, 0.0, scale, 1,
          100.0, 0, &looked, jacobian, N, r, TRIANGLE, qtf, work[0], work[1], work[2], work[3]);
    *looks += t.looks;
    return t.has_converged;
}

static void bench_balances(const lw_craft *craft)
{
    static lw_ask asks[QUESTIONS];
    static lw_solution solutions[QUESTIONS];
    random_stream stream = {7};
    for (int i = 0; i < QUESTIONS; i++) asks[i] = random_flight(craft, &stream);

    double ours[REPEATS], theirs[REPEATS], ratio[REPEATS];
    int found = 0, found_by_hybrd = 0;
    double iterations = 0.0;
    long looks = 0;
    for (int k = 0; k < REPEATS; k++) {
        const double start = seconds_now();
        lw_solve(craft, asks, false, solutions, QUESTIONS);
        const double middle = seconds_now();
        found_by_hybrd = 0, looks = 0;
        for (int i = 0; i < QUESTIONS; i++) found_by_hybrd += hybrd_finds(craft, &asks[i], &looks);
        const double end = seconds_now();
        ours[k] = (middle - start) / QUESTIONS;
        theirs[k] = (end - middle) / QUESTIONS;
        ratio[k] = theirs[k] / ours[k];
    }
    for (int i = 0; i < QUESTIONS; i++) {
        found += solutions[i].residual < LW_RESIDUAL;
        iterations += solutions[i].iterations;
    }
    const double a = median_of(ours), b = median_of(theirs);
    printf("flight balances, %d random questions, residual below %.0e\n", QUESTIONS, LW_RESIDUAL);
    printf("  lw_solve        %7.0f a second   %5.1f us   found %4.1f %%   %4.1f iterations\n",
           1.0 / a, 1e6 * a, 100.0 * found / QUESTIONS, iterations / QUESTIONS);
    printf("  hybrd, scalar   %7.0f a second   %5.1f us   found %4.1f %%   %4.1f evaluations\n",
           1.0 / b, 1e6 * b, 100.0 * found_by_hybrd / QUESTIONS, (double)looks / QUESTIONS);
    printf("  ratio           %7.1f   (target 10)\n\n", median_of(ratio));
}

// --- one evaluation of all forces

static void bench_forces(const lw_craft *craft)
{
    random_stream stream = {8};
    const lw_ask ask = random_flight(craft, &stream);
    lw_pose pose;
    scalar_question question;
    for (int i = 0; i < LW_WIDTH; i++) lw_pose_put(&pose, i, &ask);
    scalar_ask(&question, craft, &ask);

    double lanes[REPEATS], scalar[REPEATS], ratio[REPEATS];
    double sum = 0.0;  // so that no evaluation is left out
    for (int k = 0; k < REPEATS; k++) {
        const double start = seconds_now();
        for (int i = 0; i < POSES; i += LW_WIDTH) {
            lw_lanes residual[6];
            pose.leeway = lw_all(0.04 + 1e-8 * i);
            lw_pose_residual(craft, &pose, residual);
            sum += residual[0][0];
        }
        const double middle = seconds_now();
        for (int i = 0; i < POSES; i++) {
            const double x[6] = {ask.start.speed,  0.04 + 1e-8 * i, ask.start.ride_height,
                                 ask.start.rudder, ask.start.helm,  ask.start.effort};
            double residual[6];
            scalar_residual(&question, x, residual);
            sum += residual[0];
        }
        const double end = seconds_now();
        lanes[k] = (middle - start) / POSES;
        scalar[k] = (end - middle) / POSES;
        ratio[k] = scalar[k] / lanes[k];
    }
    printf("all forces of one pose%s\n", isfinite(sum) ? "" : ": no number");
    printf("  in lanes        %7.0f ns\n", 1e9 * median_of(lanes));
    printf("  scalar          %7.0f ns\n", 1e9 * median_of(scalar));
    printf("  ratio           %7.1f\n\n", median_of(ratio));
}

// --- from a boat to a choice

typedef struct scenario {
    lw_boat boat;
    lw_sailor sailor;
    lw_day day;
} scenario;

static bool read_demo(scenario *demo)
{
    const char *why;
    lw_faults faults = {0};
    const bool is_read =
        lw_record_read_file(&lw_boat_record, LW_DEMO_DIR "/heron.yaml", &demo->boat, &faults) &&
        lw_record_read_file(&lw_sailor_record, LW_DEMO_DIR "/light.yaml", &demo->sailor, &faults) &&
        lw_record_read_file(&lw_day_record, LW_DEMO_DIR "/breeze.yaml", &demo->day, &faults);
    lw_faults_free(&faults);
    return is_read && lw_day_settle(&demo->day, &why);
}

static void bench_choice(const scenario *demo)
{
    static lw_outlook outlook;
    static lw_polar_room room;
    static lw_sections sections;
    const lw_medium medium = lw_medium_of(&demo->day);
    double solve[REPEATS], prepare[REPEATS], choose[REPEATS];
    for (int k = 0; k < REPEATS; k++) {
        const double start = seconds_now();
        lw_sections_prepare(&sections, &demo->boat, &room);
        const double ready = seconds_now();
        lw_craft_prepare(&outlook.craft, &demo->boat, &sections, &demo->sailor.person, &medium);
        const double middle = seconds_now();
        lw_outlook_prepare(&outlook, &demo->boat, &sections, &demo->sailor.person, &demo->day);
        const lw_choice choice = lw_choice_of(&outlook, LW_AIM_RACE, 0.0);
        const double end = seconds_now();
        if (choice.count != demo->boat.pin_count) printf("a pin is missing from the choice\n");
        solve[k] = ready - start;
        prepare[k] = middle - ready;
        choose[k] = end - middle;
    }
    const double a = median_of(prepare), b = median_of(choose);
    printf("demo day, one core\n");
    printf("  the sections    %7.0f ms   (target 200)\n", 1e3 * median_of(solve));
    printf("  a craft         %7.2f ms\n", 1e3 * a);
    printf("  a choice, rides %7.0f ms\n", 1e3 * b);
    printf("  both            %7.0f ms   (target 1000)\n", 1e3 * (median_of(solve) + b));
    printf("  ratio           %7.0f crafts to a choice\n\n", b / a);
}

// --- memory of the program

static void bench_memory(const char *program)
{
    struct rusage use = {0};
    int status = 1;
    fflush(stdout);
    const pid_t child = fork();
    if (child == 0) {
        if (!freopen("/dev/null", "w", stdout)) _exit(126);
        execl(program, program, "pick", "--boat", LW_DEMO_DIR "/heron.yaml", "--sailor",
              LW_DEMO_DIR "/light.yaml", "--day", LW_DEMO_DIR "/breeze.yaml", (char *)NULL);
        _exit(127);
    }
    if (child < 0 || wait4(child, &status, 0, &use) < 0 || status != 0) {
        printf("`%s pick` did not run\n", program);
        return;
    }
    printf("peak memory of `lullwise pick` on the demo day\n");
    printf("  resident        %7.1f MiB   (target 64)\n", (double)use.ru_maxrss / 1024.0);
}

int main(void)
{
    static scenario demo;
    const lw_craft craft = preset_craft();
    print_machine();
    bench_balances(&craft);
    bench_forces(&craft);
    if (read_demo(&demo)) {
        bench_choice(&demo);
    } else {
        printf("the demo day cannot be read\n");
    }
    bench_sea();
    bench_rides();
    bench_linear();
    bench_memory(LW_PROGRAM);
    return 0;
}
