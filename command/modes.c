// modes.c - `lullwise modes`: is she steady, what swings, and how near the wand's loop is to it.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/words/flown.h"
#include "answer/words/modes_text.h"
#include "answer/words/sections.h"
#include "command/cell.h"
#include "command/command.h"
#include "command/given.h"
#include "command/given_flight.h"
#include "command/terminal/print.h"
#include "records/json.h"

typedef struct asked {
    lw_inputs inputs;
    lw_flown flown;
    lw_motion motion;
    lw_ride_plan plan;
    lw_modes sailed, alone;
    lw_wand_margin margin;
} asked;

static void find(asked *a)
{
    a->motion = lw_motion_of(&a->flown.craft);
    a->plan = lw_ride_plan_of(&a->motion, &a->flown.ask, &a->flown.answer);
    lw_modes_of(&a->motion, &a->plan, LW_HANDS_SAILING, &a->sailed);
    lw_modes_of(&a->motion, &a->plan, LW_HANDS_STILL, &a->alone);
    a->margin = lw_wand_margin_of(&a->motion, &a->plan, LW_HANDS_SAILING);
}

// --- JSON

static json_t *mode_json(const lw_mode *mode)
{
    json_t *shares = json_object();
    for (int i = 0; i < LW_PARTS; i++) {
        json_object_set_new(shares, lw_part_key((lw_part)i), json_real(mode->share[i]));
    }
    return json_pack("{s:s, s:s, s:o, s:o}", "mostly", lw_part_key(mode->first), "then",
                     lw_part_key(mode->second), "swing",
                     lw_table_json(&lw_swing_table, &mode->swing), "shares", shares);
}

static json_t *modes_json(const lw_modes *modes)
{
    json_t *list = json_array();
    for (size_t i = 0; i < modes->count; i++) {
        json_array_append_new(list, mode_json(&modes->mode[i]));
    }
    return json_pack("{s:b, s:o}", "steady", modes->is_steady, "modes", list);
}

static json_t *answer_json(const asked *a)
{
    const lw_flown *flown = &a->flown;
    const char *keys[] = {"flies", "floats", "no_balance"};
    json_t *json = json_pack("{s:s, s:s, s:s, s:s, s:o}", "boat", a->inputs.boat.name, "sailor",
                             a->inputs.sailor.name, "pin", a->inputs.boat.pins[flown->pin].label,
                             "outcome", keys[flown->answer.outcome], "flight",
                             lw_table_json(&lw_flight_table, &flown->answer.flight));
    if (flown->answer.outcome == LW_NO_BALANCE) return json;
    json_object_set_new(json, "as_sailed", modes_json(&a->sailed));
    json_object_set_new(json, "left_alone", modes_json(&a->alone));
    if (flown->answer.outcome == LW_FLIES)
        json_object_set_new(json, "wand", lw_table_json(&lw_wand_margin_table, &a->margin));
    json_object_set_new(
        json, "units",
        json_pack("{s:o, s:o, s:o}", "flight", lw_table_units_json(&lw_flight_table), "swing",
                  lw_table_units_json(&lw_swing_table), "wand",
                  lw_table_units_json(&lw_wand_margin_table)));
    return json;
}

// --- text

static void print_question(const asked *a)
{
    char text[LW_FLOWN_LENGTH];
    const lw_flown *f = &a->flown;
    const lw_pin *pin = &a->inputs.boat.pins[f->pin];
    LW_FIT(text, "%s, %s. Pin %s (%.1f deg), wind %.1f kn.", a->inputs.boat.name,
           a->inputs.sailor.name, pin->label, pin->incidence / LW_DEG, f->wind / LW_KN);
    lw_print_wrapped(stdout, text, 0, 0);
    lw_flown_outcome(f, text);
    lw_print_wrapped(stdout, text, 0, 0);
}

// A time in seconds, whole ones from a hundred on; "long" where nobody waits for it.
static void print_time(const char *before, double seconds, size_t width)
{
    char text[LW_CELL_LENGTH] = "-";
    if (seconds < 999.5)
        LW_FIT(text, "%s%.*f s", before, seconds < 99.95 ? 1 : 0, seconds);
    else if (isfinite(seconds))
        LW_FIT(text, "%slong", before);
    lw_cell_right(stdout, text, width);
}

static void print_damping(const lw_swing *swing, size_t width)
{
    char text[LW_CELL_LENGTH] = "-";
    if (isfinite(swing->period)) lw_cell_number(text, swing->damping, 2, false);
    lw_cell_right(stdout, text, width);
}

#define SHAPE_AT 51  // column

static void print_mode(const lw_mode *mode)
{
    char name[LW_CELL_LENGTH], shape[LW_MODES_LENGTH];
    const lw_swing *s = &mode->swing;
    lw_mode_name(mode, name);
    lw_mode_shape(mode, shape);
    fputs("  ", stdout);
    lw_cell_left(stdout, name, 20);
    const bool grows = s->growth > 0.0;
    print_time("", s->period, 8);
    print_time(grows ? "x2 " : "", grows ? s->doubles : s->halves, 10);
    print_damping(s, 9);
    fputs("  ", stdout);
    lw_print_wrapped(stdout, shape, SHAPE_AT, SHAPE_AT);
}

static void print_modes(const char *title, const lw_modes *modes)
{
    size_t unseen = 0;
    printf("\n%s\n", title);
    printf("  %-20s%8s%10s%9s  %s\n", "mostly", "swing", "half gone", "damping", "together");
    for (size_t i = 0; i < modes->count; i++) {
        if (lw_mode_is_seen(&modes->mode[i]))
            print_mode(&modes->mode[i]);
        else
            unseen++;
    }
    if (unseen) printf("  and %zu that are over before they are seen\n", unseen);
}

static void print_line(const char *head, const char *text)
{
    fputs("  ", stdout);
    lw_cell_left(stdout, head, 16);
    lw_print_wrapped(stdout, text, 18, 18);
}

static void print_wand(const lw_wand_margin *margin, double gearing)
{
    char text[LW_MODES_LENGTH];
    printf("\nRide height by wand and flap, gearing %.2f\n", gearing);
    lw_wand_more(margin, text);
    print_line("more gearing", text);
    lw_wand_less(margin, text);
    print_line("less gearing", text);
    lw_wand_late(margin, text);
    print_line("a later wand", text);
}

static void print_text(const asked *a)
{
    char text[LW_MODES_LENGTH];
    print_question(a);
    if (a->flown.answer.outcome == LW_NO_BALANCE) return;
    putchar('\n');
    lw_modes_verdict(&a->sailed, &a->alone, text);
    lw_print_wrapped(stdout, text, 0, 0);
    print_modes("As sailed: body, sheet and helm answer what the sailor sees", &a->sailed);
    print_modes("Left alone: body, sheet and helm stay where they are", &a->alone);
    if (a->flown.answer.outcome == LW_FLIES) print_wand(&a->margin, a->plan.setup.gearing);
    fputs("\nHow far to trust it\n", stdout);
    for (int i = 0; i < LW_MODES_TRUST; i++) {
        fputs("  ", stdout);
        lw_print_wrapped(stdout, lw_modes_trust[i], 2, 2);
    }
}

static lw_exit run(const lw_options *options)
{
    static asked it;
    int pin;
    if (!lw_given(&it.inputs, &pin, options)) return LW_EXIT_WRONG_INPUT;
    lw_flown_prepare(&it.flown, &it.inputs, lw_sections_of(&it.inputs.boat));
    if (!lw_given_flight(options, pin, &it.flown)) return LW_EXIT_WRONG_INPUT;
    lw_flown_answer(&it.flown);
    const bool has_balance = it.flown.answer.outcome != LW_NO_BALANCE;
    if (has_balance) find(&it);
    if (lw_options_has(options, "json"))
        lw_json_write(answer_json(&it), stdout);
    else
        print_text(&it);
    return has_balance ? LW_EXIT_FINE : LW_EXIT_NO_ANSWER;
}

const lw_command lw_command_modes = {
    .name = "modes",
    .summary = "Is she steady, what swings, and how much more gearing until the wand's loop does.",
    .operands = "",
    .takes = LW_INPUT_OPTIONS " pin wind course heading heel place turns trim json",
    .doc =
        "Disturbs a steady flight a little and tells what becomes of it: each motion that dies "
        "away or grows by itself, with its swing, how long it takes to be half gone, and what "
        "goes together in it; once as the sailor sails, once left alone. Then how much "
        "more gearing, or what lag of the wand, makes ride height and pitch swing by "
        "themselves. The flight is that of `lullwise fly` with the same options. Ends with 1 "
        "when there is no balance.",
    .run = run,
};
