// fly.c - `lullwise fly`: one steady flight, its forces, and which margin runs out first.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/words/flown.h"
#include "answer/words/margin_text.h"
#include "answer/words/sections.h"
#include "command/command.h"
#include "command/flight_text.h"
#include "command/given.h"
#include "command/given_flight.h"
#include "command/terminal/print.h"
#include "records/json.h"

typedef struct asked {
    lw_inputs inputs;
    lw_flown flown;
} asked;

static json_t *answer_json(const lw_flown *a)
{
    const bool has_balance = a->answer.outcome != LW_NO_BALANCE;
    const char *keys[] = {"flies", "floats", "no_balance"};
    char notes[LW_TRUST_MOST][LW_TRUST_LENGTH];
    json_t *trust = json_array();
    const size_t count = lw_flown_trust(a, notes);
    for (size_t i = 0; i < count; i++) json_array_append_new(trust, json_string(notes[i]));
    const size_t first = lw_margins_first(&a->answer.margins);
    const bool holds = has_balance && lw_margins_hold(&a->answer.margins);
    const bool has_most = a->answer.outcome == LW_FLIES && !a->has_turns;
    return json_pack(
        "{s:s, s:s, s:s, s:s, s:b, s:s?, s:s?, s:o, s:o, s:o?, s:o, s:{s:f, s:f}, s:{s:o, s:o, "
        "s:s}}",
        "boat", a->inputs->boat.name, "sailor", a->inputs->sailor.name, "pin",
        a->inputs->boat.pins[a->pin].label, "outcome", keys[a->answer.outcome], "keeps_margins",
        holds, "first_to_run_out", has_balance ? lw_margin_key(first) : NULL, "trim",
        a->has_turns ? NULL : lw_criterion_text(a->by), "turns_that_hold_most",
        has_most ? json_real(a->most_turns) : json_null(), "flight",
        lw_table_json(&lw_flight_table, &a->answer.flight), "margins",
        has_balance ? lw_table_json(&lw_margins_table, &a->answer.margins) : NULL, "trust", trust,
        "steady_flight", "stays_up_at", a->range.stays_up_at / LW_KN, "launches_at",
        a->range.launches_at / LW_KN, "units", "flight", lw_table_units_json(&lw_flight_table),
        "margins", lw_table_units_json(&lw_margins_table), "steady_flight", "kn");
}

static void print_question(const lw_flown *a)
{
    char text[400], heading[60];
    const lw_pin *pin = &a->inputs->boat.pins[a->pin];
    LW_FIT(heading, "%s%s", lw_course_text(a->course),
           a->course == LW_REACH ? "" : ", heading chosen for the best VMG");
    if (a->has_heading) LW_FIT(heading, "heading %.0f deg", fabs(a->heading) / LW_DEG);
    LW_FIT(text, "%s, %s. Pin %s (%.1f deg), wind %.1f kn, %s%s.", a->inputs->boat.name,
           a->inputs->sailor.name, pin->label, pin->incidence / LW_DEG, a->wind / LW_KN, heading,
           a->heading < 0.0 ? " (starboard tack; port is its mirror)" : "");
    lw_print_wrapped(stdout, text, 0, 0);
    lw_flown_freedom(a, text);
    lw_print_wrapped(stdout, text, 0, 0);
    putchar('\n');
}

static void print_advice(const lw_flown *a, bool has_outcome)
{
    char text[LW_FLOWN_LENGTH], all[2 * LW_FLOWN_LENGTH], outcome[LW_FLOWN_LENGTH] = "";
    if (has_outcome) lw_flown_outcome(a, outcome);
    lw_flown_advice(a, text);
    LW_FIT(all, "%s%s%s", outcome, has_outcome ? " " : "", text);
    lw_print_wrapped(stdout, all, 0, 0);
}

static void print_outcome(const lw_flown *a)
{
    char text[LW_FLOWN_LENGTH];
    lw_flown_outcome(a, text);
    lw_print_wrapped(stdout, text, 0, 0);
    putchar('\n');
}

static void print_trust(const lw_flown *a)
{
    char notes[LW_TRUST_MOST][LW_TRUST_LENGTH], text[300];
    const size_t count = lw_flown_trust(a, notes);
    fputs("\nHow far to trust it\n", stdout);
    for (size_t i = 0; i < count; i++) {
        fputs("  ", stdout);
        lw_print_wrapped(stdout, notes[i], 2, 2);
    }
    LW_FIT(text,
           "The forces balance to %.0e of the weight. This is steady flight in even wind; "
           "differences between pins are surer than the numbers themselves.",
           fmax(a->answer.flight.residual, 1e-15));
    fputs("  ", stdout);
    lw_print_wrapped(stdout, text, 2, 2);
}

static void print_turns(const lw_flown *a)
{
    char text[LW_FLOWN_LENGTH];
    if (!lw_flown_turns(a, text)) return;
    putchar('\n');
    lw_print_wrapped(stdout, text, 0, 0);
}

static void print_text(const lw_flown *a)
{
    print_question(a);
    if (a->answer.outcome == LW_NO_BALANCE) {
        print_advice(a, true);
        return;
    }
    print_outcome(a);
    if (a->answer.outcome == LW_FLIES) {
        lw_flight_picture(stdout, &a->inputs->boat, &a->answer.flight);
        putchar('\n');
    }
    lw_flight_print(stdout, &a->answer.flight);
    print_turns(a);
    if (a->answer.outcome == LW_FLOATS) {
        putchar('\n');
        print_advice(a, false);
    } else {
        lw_margins_print(stdout, &a->answer.margins);
    }
    print_trust(a);
}

static lw_exit run(const lw_options *options)
{
    static asked it;
    lw_flown *a = &it.flown;
    int pin;
    if (!lw_given(&it.inputs, &pin, options)) return LW_EXIT_WRONG_INPUT;
    lw_flown_prepare(a, &it.inputs, lw_sections_of(&it.inputs.boat));
    if (!lw_given_flight(options, pin, a)) return LW_EXIT_WRONG_INPUT;
    lw_flown_answer(a);
    if (a->answer.outcome != LW_FLIES) lw_flown_range(a);
    if (lw_options_has(options, "json"))
        lw_json_write(answer_json(a), stdout);
    else
        print_text(a);
    return a->answer.outcome == LW_NO_BALANCE ? LW_EXIT_NO_ANSWER : LW_EXIT_FINE;
}

const lw_command lw_command_fly = {
    .name = "fly",
    .summary = "One steady flight: speed, trim, forces, and what runs out first.",
    .operands = "",
    .takes = LW_INPUT_OPTIONS " pin wind course heading heel place turns trim json",
    .doc =
        "Balances the boat in one wind on one heading. Without --wind it is the day's mean, "
        "without --course or --heading upwind with the best VMG, without --pin the middle one. "
        "Rudder turns, heel and place are chosen by --trim, for speed without it, with all "
        "margins kept in the wind and in the day's puff; on the hull the rudder stays at the mark "
        "if it can. --turns, --heel and --place fix them. Ends with 1 when "
        "there is no balance.",
    .run = run,
};
