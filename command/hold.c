// hold.c - `lullwise hold`: the wind builds; hold the pin, or stop and change it.
// SPDX-License-Identifier: MIT

#include <stdlib.h>

#include "command/command.h"
#include "command/given.h"
#include "command/held.h"
#include "command/print.h"
#include "records/json.h"

#define STOP 120.0  // [s] from slowing down to sailing at speed again  [judged]

// What is asked beside the inputs; false after a complaint.
static bool ask(lw_held *held, int pin, const lw_options *options)
{
    if (pin == LW_ALL_PINS) {
        lw_print_complaint(options->command, "which pin is in the boat? Say it with --pin LABEL");
        return false;
    }
    const lw_day *day = &held->picked.inputs.day;
    lw_hold *hold = &held->hold;
    const lw_bounds any = {0};
    hold->pin = (size_t)pin;
    hold->left = lw_hold_course(day);
    if (hold->left <= 0.0) {
        lw_print_complaint(options->command, "the day has no legs; add what is left of the race");
        return false;
    }
    hold->now = hold->later = day->wind.mean;
    hold->stop = STOP;
    return lw_given_number(options, "left", any, &hold->left) &&
           lw_given_number(options, "builds-to", any, &hold->later) &&
           lw_given_number(options, "stop", any, &hold->stop);
}

static lw_exit run(const lw_options *options)
{
    static lw_held held;
    int pin;
    if (!lw_given(&held.picked.inputs, &pin, options) || !ask(&held, pin, options)) {
        return LW_EXIT_WRONG_INPUT;
    }
    held.picked.outlook = malloc(sizeof *held.picked.outlook);
    if (!held.picked.outlook) {
        lw_print_complaint(options->command, "there is not enough memory");
        return LW_EXIT_NO_ANSWER;
    }
    lw_held_work_out(&held);
    if (lw_options_has(options, "json"))
        lw_json_write(lw_held_json(&held), stdout);
    else
        lw_held_print(&held);
    const lw_exit ended = lw_hold_flies(&held.hold) ? LW_EXIT_FINE : LW_EXIT_NO_ANSWER;
    free(held.picked.outlook);
    return ended;
}

const lw_command lw_command_hold = {
    .name = "hold",
    .summary = "The wind builds: hold the pin that is in the boat, or stop and change it.",
    .operands = "",
    .takes = "boat sailor day set pin left builds-to stop json",
    .doc =
        "Weighs what is left of the race against a stop: time to the finish with the pin of --pin "
        "held and with each other pin, from rides in the same gusts, swims at the day's cost, "
        "while "
        "the mean wind goes evenly to that of --builds-to. Tells the break-even in miles and "
        "minutes left, the chance that a stop pays, and when to stop if later is better. Ends with "
        "1 when no pin flies.",
    .run = run,
};
