// ride.c - `lullwise ride`: boat and sailor through the day's gusts and chop, once or many times.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/words/sections.h"
#include "command/command.h"
#include "command/given.h"
#include "command/given_flight.h"
#include "command/ride_log.h"
#include "command/ride_many.h"
#include "command/terminal/print.h"
#include "command/terminal/stop.h"
#include "records/json.h"
#include "records/output_file.h"

#define MINUTES 10.0
#define EVERY   0.2  // [s]
#define SEED    1.0
#define ERROR   0.05

typedef struct asked {
    lw_inputs inputs;
    lw_ride_log log;
    double minutes, seed, runs, error;
} asked;

static bool is_whole(const lw_options *options, const char *name, double value)
{
    if (value == floor(value)) return true;
    lw_print_complaint(options->command, "--%s %s is no whole number", name,
                       lw_options_text(options, name));
    return false;
}

static bool read_options(asked *a, const lw_options *options)
{
    const lw_bounds none = {0};
    return lw_given_number(options, "minutes", none, &a->minutes) &&
           lw_given_number(options, "every", none, &a->log.every) &&
           lw_given_number(options, "seed", none, &a->seed) && is_whole(options, "seed", a->seed) &&
           lw_given_number(options, "runs", none, &a->runs) && is_whole(options, "runs", a->runs) &&
           lw_given_number(options, "error", none, &a->error);
}

// Writes with one of the log's faces into the file of an option, where it is given.
static bool write_file(const asked *a, const lw_options *options, const char *name,
                       void (*face)(FILE *, const lw_ride_log *))
{
    const char *path = lw_options_text(options, name), *why = "there is not enough memory";
    lw_output output;
    if (!path) return true;
    bool is_written = lw_output_open(&output);
    if (is_written) {
        face(output.stream, &a->log);
        is_written = lw_output_commit(&output, path, lw_options_has(options, "force"), &why);
    }
    if (!is_written) lw_print_complaint(options->command, "%s: %s", path, why);
    return is_written;
}

static lw_exit ride_once(asked *a, const lw_options *options)
{
    a->log.seconds = 60.0 * a->minutes;
    if (!lw_ride_log_fill(&a->log)) {
        lw_print_complaint(options->command, "there is not enough memory");
        return LW_EXIT_NO_ANSWER;
    }
    if (lw_options_has(options, "json"))
        lw_json_write(lw_ride_log_json(&a->log), stdout);
    else
        lw_ride_log_print(stdout, &a->log);
    const bool is_written = write_file(a, options, "csv", lw_ride_log_csv) &&
                            write_file(a, options, "svg", lw_ride_log_draw);
    lw_ride_log_free(&a->log);
    return is_written ? LW_EXIT_FINE : LW_EXIT_WRONG_INPUT;
}

static lw_exit ride_many(const asked *a, const lw_options *options)
{
    lw_ride_many many = {.ridden = &a->log.ridden,
                         .seconds = 60.0 * a->minutes,
                         .most = (size_t)a->runs,
                         .error = a->error};
    if (!lw_ride_many_fill(&many)) {
        lw_print_complaint(options->command, "there is not enough memory");
        return LW_EXIT_NO_ANSWER;
    }
    if (lw_options_has(options, "json"))
        lw_json_write(lw_ride_many_json(&many), stdout);
    else
        lw_ride_many_print(stdout, &many);
    lw_ride_many_free(&many);
    return many.sample.rides > 0.0 ? LW_EXIT_FINE : LW_EXIT_NO_ANSWER;
}

// What is said of one ride only.
static bool fits_many(const lw_options *options)
{
    static const char *const of_one_only[] = {"csv", "svg", "every", NULL};
    for (int i = 0; of_one_only[i]; i++) {
        if (!lw_options_has(options, of_one_only[i])) continue;
        lw_print_complaint(options->command, "--%s is of one ride: not with --runs",
                           of_one_only[i]);
        return false;
    }
    return true;
}

static lw_exit run(const lw_options *options)
{
    static asked a;
    int pin;
    lw_stop_watch();
    if (!lw_given(&a.inputs, &pin, options)) return LW_EXIT_WRONG_INPUT;
    lw_ridden_prepare(&a.log.ridden, &a.inputs, lw_sections_of(&a.inputs.boat));
    a.minutes = MINUTES, a.seed = SEED, a.error = ERROR, a.log.every = EVERY;
    const bool is_many = lw_options_has(options, "runs");
    if ((is_many && !fits_many(options)) || !read_options(&a, options)) return LW_EXIT_WRONG_INPUT;
    if (!lw_given_flight(options, pin, &a.log.ridden.flown)) return LW_EXIT_WRONG_INPUT;
    lw_ridden_plan(&a.log.ridden, (uint64_t)a.seed);
    return is_many ? ride_many(&a, options) : ride_once(&a, options);
}

const lw_command lw_command_ride = {
    .name = "ride",
    .summary = "A ride through the day's gusts and chop: what happens, and how often.",
    .operands = "",
    .takes =
        "boat sailor day set"
        " pin wind course heading heel place turns trim minutes seed runs error every csv svg "
        "force "
        "json",
    .doc =
        "Sails boat and sailor for some minutes through the day's lulls, puffs and waves, trimmed "
        "for the mean wind, the rudder wound after the wind of the last minute unless --turns "
        "fixes it, "
        "and tells what happens: touches, "
        "breaches, air on the foils, drops, swims. Without --pin it is the middle one, without "
        "--course or --heading upwind with the best VMG. --wind is the mean wind instead of the "
        "day's; lull and puff go with it. --csv and --svg keep the history. --runs sails many "
        "rides on all cores and gives each rate with its standard error. Ctrl-C ends with what "
        "there is.",
    .run = run,
};
