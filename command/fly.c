// fly.c - `lullwise fly`: one steady flight, its forces, and which margin runs out first.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "command/cell.h"
#include "command/command.h"
#include "command/flight_text.h"
#include "command/given.h"
#include "advice/margin_text.h"
#include "command/print.h"
#include "lullwise/range.h"
#include "records/json.h"

// What is asked, and what came of it.
typedef struct asked {
    lw_inputs inputs;
    lw_craft craft;
    size_t pin;
    double wind, heading, heel, place, turns;
    bool has_heading, has_heel, has_place, has_turns;
    lw_answer answer;
    lw_range range;  // on this heading alone, in even wind
} asked;

static bool read_options(asked *a, const lw_options *options)
{
    const lw_boat *boat = &a->inputs.boat;
    const lw_bounds none = {0}, along = {boat->place.aft_x, boat->place.forward_x, "the boat"};
    const lw_bounds thread = {boat->rudder.least_turns, boat->rudder.most_turns, "the thread"};
    a->wind = a->inputs.day.wind.mean;
    a->has_heading = lw_options_has(options, "heading");
    a->has_heel = lw_options_has(options, "heel");
    a->has_place = lw_options_has(options, "place");
    a->has_turns = lw_options_has(options, "turns");
    return lw_given_number(options, "wind", none, &a->wind) &&
           lw_given_number(options, "heading", none, &a->heading) &&
           lw_given_number(options, "heel", none, &a->heel) &&
           lw_given_number(options, "place", along, &a->place) &&
           lw_given_number(options, "turns", thread, &a->turns);
}

// Without a heading: the upwind course, on which the best VMG is sought.
static lw_course course_of(const asked *a)
{
    const double heading = fabs(a->heading);
    return a->has_heading ? (lw_course){heading, heading, heading} : lw_course_of(LW_UPWIND);
}

#define WINDINGS 8

// The rudder wound to the turns asked for, a part at a time so that each balance leads to the next.
static lw_answer wound(const asked *a, lw_ask *ask, const lw_freedom *free)
{
    const double from = ask->rudder, to = a->craft.rudder_mark + a->turns * a->craft.rudder_turn;
    ask->level = false;
    for (int i = 1; i < WINDINGS; i++) {
        lw_answer part;
        ask->rudder = from + (to - from) * i / WINDINGS;
        lw_balance(&a->craft, ask, &part, 1);
        lw_ask_follow(&a->craft, ask, &part);
    }
    ask->rudder = to;
    return lw_fastest(&a->craft, ask, free);
}

static lw_answer answer_of(const asked *a)
{
    const lw_setup setup = lw_given_setup(&a->craft, &a->inputs.boat, a->pin);
    const lw_course course = course_of(a);
    const lw_freedom free = {.heel = !a->has_heel,
                             .place = !a->has_place,
                             .heading = !a->has_heading,
                             .heading_low = course.low,
                             .heading_high = course.high,
                             .course = course.direction};
    lw_ask ask = lw_ask_of(&a->craft, &setup, a->wind, 0.5 * (course.low + course.high));
    if (a->has_heel) ask.heel = a->heel;
    if (a->has_place) ask.place = a->place + a->craft.transom_x;
    const lw_answer level = lw_fastest(&a->craft, &ask, &free);
    if (level.outcome == LW_FLIES && !a->has_turns) return level;

    // Turns as given; on the hull as at the mark: there the hull, not the rudder foil, sets the bow.
    const lw_answer turned = wound(a, &ask, &free);
    return a->has_turns || turned.outcome == LW_FLOATS ? turned : level;
}

static bool is_level(const asked *a)
{
    return !a->has_turns && fabs(a->answer.flight.pitch) < 1e-9;
}

static json_t *answer_json(const asked *a)
{
    const bool has_balance = a->answer.outcome != LW_NO_BALANCE;
    const char *keys[] = {"flies", "floats", "no_balance"};
    char notes[LW_TRUST_MOST][LW_TRUST_LENGTH];
    json_t *trust = json_array();
    const size_t count = lw_flight_trust(&a->craft, &a->answer, notes);
    for (size_t i = 0; i < count; i++) json_array_append_new(trust, json_string(notes[i]));
    const size_t first = lw_margins_first(&a->answer.margins);
    const bool holds = has_balance && lw_margins_hold(&a->answer.margins);
    return json_pack(
        "{s:s, s:s, s:s, s:s, s:b, s:s?, s:b, s:o, s:o?, s:o, s:{s:f, s:f}, s:{s:o, s:o, s:s}}",
        "boat", a->inputs.boat.name, "sailor", a->inputs.sailor.name, "pin",
        a->inputs.boat.pins[a->pin].label, "outcome", keys[a->answer.outcome], "keeps_margins",
        holds, "first_to_run_out", has_balance ? lw_margin_key(first) : NULL, "bow_level",
        is_level(a), "flight", lw_table_json(&lw_flight_table, &a->answer.flight), "margins",
        has_balance ? lw_table_json(&lw_margins_table, &a->answer.margins) : NULL, "trust", trust,
        "steady_flight", "stays_up_at", a->range.stays_up_at / LW_KN, "launches_at",
        a->range.launches_at / LW_KN, "units", "flight", lw_table_units_json(&lw_flight_table),
        "margins", lw_table_units_json(&lw_margins_table), "steady_flight", "kn");
}

static void print_question(const asked *a)
{
    char text[400], heading[60] = "heading chosen for the best VMG upwind";
    const lw_pin *pin = &a->inputs.boat.pins[a->pin];
    if (a->has_heading) LW_FIT(heading, "heading %.0f deg", fabs(a->heading) / LW_DEG);
    LW_FIT(text, "%s, %s. Pin %s (%.1f deg), wind %.1f kn, %s%s.", a->inputs.boat.name,
           a->inputs.sailor.name, pin->label, pin->incidence / LW_DEG, a->wind / LW_KN, heading,
           a->heading < 0.0 ? " (starboard tack; port is its mirror)" : "");
    lw_print_wrapped(stdout, text, 0, 0);
    const char *rudder = a->has_turns  ? "Rudder as given"
                         : is_level(a) ? "Rudder turned to keep the bow level"
                                       : "Rudder at the reference mark";
    LW_FIT(text, "%s%s%s.", rudder, a->has_heel ? "; heel as given" : "; heel for best speed",
           a->has_place ? "; place as given" : "; place for best speed");
    lw_print_wrapped(stdout, text, 0, 0);
    putchar('\n');
}

static void print_outcome(const asked *a)
{
    char text[300];
    const lw_flight *f = &a->answer.flight;
    const lw_margins *m = &a->answer.margins;
    const size_t first = lw_margins_first(m);
    if (a->answer.outcome == LW_FLOATS) {
        LW_FIT(text, "Sails on the hull at %.1f kn.", f->speed / LW_KN);
    } else if (!lw_margins_hold(m)) {
        LW_FIT(text, "A balance in flight at %.1f kn on %.0f deg, but she cannot be held: %s.",
               f->speed / LW_KN, f->heading / LW_DEG, lw_margin_end(first));
    } else {
        LW_FIT(text, "Flies at %.1f kn on %.0f deg. First to run out: %s.", f->speed / LW_KN,
               f->heading / LW_DEG, lw_margin_name(first));
    }
    lw_print_wrapped(stdout, text, 0, 0);
    putchar('\n');
}

// What gets her flying: another heading, or more lift.
static const char *more_lift(const asked *a)
{
    const double heading = a->has_heading ? fabs(a->heading) / LW_DEG : 0.0;
    const bool has_more = a->pin > 0;
    if (heading < 80.0)
        return has_more ? "Bear away, or take a pin with more lift" : "Bear away, or wait for wind";
    if (heading > 120.0)
        return has_more ? "Come up, or take a pin with more lift" : "Come up, or wait for wind";
    return has_more ? "Take a pin with more lift" : "Wait for wind";
}

// What to try when she does not fly.
static void print_advice(const asked *a, const char *before)
{
    char text[400], all[500];
    const lw_range *r = &a->range;
    const bool is_fixed = a->has_heel || a->has_place || a->has_turns;
    if (a->has_heading && fabs(a->heading) < 30.0 * LW_DEG) {
        LW_FIT(text, "That is too close to the wind: bear away to 45 deg or more.");
    } else if (!r->has_flight) {
        LW_FIT(text, "With this pin she does not fly on this heading in any wind up to %d kn. %s.",
               LW_RANGE_FIRST_KN + LW_RANGE_WINDS - 1, more_lift(a));
    } else if (a->wind < r->stays_up_at) {
        LW_FIT(text, "Steady flight on this heading begins at %.1f kn: %.1f kn more than this. %s.",
               r->stays_up_at / LW_KN, (r->stays_up_at - a->wind) / LW_KN, more_lift(a));
    } else if (is_fixed) {
        LW_FIT(text,
               "Left free she should fly in this wind: leave out --heel, --place or --turns "
               "and see what she wants.");
    } else {
        LW_FIT(text,
               "Steady flight on this heading begins at %.1f kn; this may be beyond what "
               "can be held: try less wind or a pin with less lift.",
               r->stays_up_at / LW_KN);
    }
    LW_FIT(all, "%s%s", before, text);
    lw_print_wrapped(stdout, all, 0, 0);
}

static void print_trust(const asked *a)
{
    char notes[LW_TRUST_MOST][LW_TRUST_LENGTH], text[300];
    const size_t count = lw_flight_trust(&a->craft, &a->answer, notes);
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

static void print_text(const asked *a)
{
    print_question(a);
    if (a->answer.outcome == LW_NO_BALANCE) {
        print_advice(a, "No steady balance was found. ");
        return;
    }
    print_outcome(a);
    if (a->answer.outcome == LW_FLIES) {
        lw_flight_picture(stdout, &a->inputs.boat, &a->answer.flight);
        putchar('\n');
    }
    lw_flight_print(stdout, &a->answer.flight);
    if (a->answer.outcome == LW_FLOATS) {
        putchar('\n');
        print_advice(a, "");
    } else {
        lw_margins_print(stdout, &a->answer.margins);
    }
    print_trust(a);
}

static lw_exit run(const lw_options *options)
{
    static asked a;
    int pin;
    if (!lw_given(&a.inputs, &pin, options) || !read_options(&a, options)) {
        return LW_EXIT_WRONG_INPUT;
    }
    a.pin = pin == LW_ALL_PINS ? a.inputs.boat.pin_count / 2 : (size_t)pin;
    a.craft = lw_given_craft(&a.inputs);
    a.answer = answer_of(&a);
    if (a.answer.outcome != LW_FLIES) {
        const lw_setup setup = lw_given_setup(&a.craft, &a.inputs.boat, a.pin);
        lw_range_of(&a.craft, &setup, course_of(&a), 0.0, &a.range);
    }
    if (lw_options_has(options, "json"))
        lw_json_write(answer_json(&a), stdout);
    else
        print_text(&a);
    return a.answer.outcome == LW_NO_BALANCE ? LW_EXIT_NO_ANSWER : LW_EXIT_FINE;
}

const lw_command lw_command_fly = {
    .name = "fly",
    .summary = "One steady flight: speed, trim, forces, and what runs out first.",
    .operands = "",
    .takes = LW_INPUT_OPTIONS " pin wind heading heel place turns json",
    .doc =
        "Balances the boat in one wind on one heading. Without --wind it is the day's mean, "
        "without "
        "--heading the one with the best VMG upwind, without --pin the middle one. The rudder "
        "is turned until the bow is level (on the hull it stays at the mark if it can), heel and "
        "place are "
        "chosen for speed; --turns, --heel and --place fix them, and with --turns the bow goes "
        "where it will. Ends with 1 when "
        "there is no balance.",
    .run = run,
};
