// pick.c - `lullwise pick`: which set-up for this day, this sailor and this aim, and why.
// SPDX-License-Identifier: MIT

#include "command/command.h"
#include "command/given.h"
#include "command/picked.h"
#include "command/terminal/print.h"
#include "records/json.h"

static bool change(lw_inputs *inputs, const lw_options *options)
{
    lw_faults faults = {0};
    bool is_sound = true;
    const char *text;
    for (size_t n = 0; (text = lw_options_nth(options, "against", n)); n++) {
        if (!lw_inputs_set(inputs, "--against", text, &faults)) is_sound = false;
    }
    if (!is_sound) lw_print_faults(stderr, &faults);
    lw_faults_free(&faults);
    return is_sound;
}

static json_t *against_json(const lw_picked *changed, const lw_options *options)
{
    json_t *changes = json_array();
    const char *text;
    for (size_t n = 0; (text = lw_options_nth(options, "against", n)); n++) {
        char tame[300];
        lw_text_tame(tame, sizeof tame, text);
        json_array_append_new(changes, json_string(tame));
    }
    return json_pack("{s:o, s:o}", "changes", changes, "answer", lw_picked_json(changed));
}

static void answer(const lw_picked *as_is, const lw_picked *changed, const lw_options *options)
{
    if (!lw_options_has(options, "json")) {
        if (changed->outlook)
            lw_picked_print_against(as_is, changed, options);
        else
            lw_picked_print(as_is);
        return;
    }
    json_t *json = lw_picked_json(as_is);
    if (changed->outlook) json_object_set_new(json, "against", against_json(changed, options));
    lw_json_write(json, stdout);
}

static lw_exit run(const lw_options *options)
{
    static lw_picked as_is, changed;
    int pin;
    if (!lw_given(&as_is.inputs, &pin, options)) return LW_EXIT_WRONG_INPUT;
    const bool is_against = lw_options_has(options, "against");
    changed.inputs = as_is.inputs;
    if (!change(&changed.inputs, options)) return LW_EXIT_WRONG_INPUT;
    lw_exit ended = LW_EXIT_NO_ANSWER;
    if (lw_picked_work_out(&as_is, "every pin on every leg") &&
        (!is_against || lw_picked_work_out(&changed, "the same with the change"))) {
        answer(&as_is, &changed, options);
        if (lw_picked_flies(&as_is.now)) ended = LW_EXIT_FINE;
    }
    lw_picked_free(&as_is);
    lw_picked_free(&changed);
    return ended;
}

const lw_command lw_command_pick = {
    .name = "pick",
    .summary = "Which pin for this day, this sailor and this aim, and why.",
    .operands = "",
    .takes = LW_INPUT_OPTIONS " against json",
    .doc =
        "Ranks the pins for the day's lulls and puffs, sea and course: expected time, share of the "
        "time flying, swims, the winds in which each launches, stays up and is held, and the "
        "reason for its place; then the order in 2 kn less and 2 kn more wind, rudder turns, what "
        "a calmer pin costs and buys, and cautions. --against answers twice, side by side. Ends "
        "with 1 when nothing flies.",
    .run = run,
};
