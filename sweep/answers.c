// answers.c - what a sweep can ask at every point, and the columns of each.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "sweep/sweep.h"

// A wind or a time that may not be there: 0 says so.
static double unless_none(double shown) { return shown == 0.0 ? NAN : shown; }

static void add_truth(lw_sweep_worker *worker, bool is_so)
{
    lw_lines_text(&worker->lines, is_so ? "yes" : "no");
}

// --- the ranking of a day

static void work_out_outlook(lw_sweep_worker *worker, const lw_day *day, bool is_thorough)
{
    const lw_inputs *inputs = &worker->inputs;
    lw_outlook *outlook = &worker->outlook;
    lw_outlook_begin(outlook, &inputs->boat, worker->sections, &inputs->sailor.person, day);
    if (is_thorough) outlook->effort = lw_effort_thorough();
    outlook->effort.first_seed = (uint64_t)lw_sweep_seed(worker->sweep, worker->point);
    lw_outlook_work_out(outlook);
}

static const char *outcome_of(const lw_placing *place)
{
    if (!place->can_be_sailed) return "cannot be sailed";
    return place->flies ? "flies" : "sails on the hull";
}

static void add_place(lw_sweep_worker *worker, const lw_choice *choice, size_t i)
{
    const lw_placing *place = &choice->places[i];
    const lw_table *table = &lw_prospect_table;
    lw_lines *lines = &worker->lines;
    lw_sweep_line(worker, outcome_of(place));
    lw_lines_number(lines, (double)i + 1.0);
    lw_lines_text(lines, worker->inputs.boat.pins[place->pin].label);
    for (size_t k = 0; k < table->count; k++) {
        const double shown = lw_quantity_shown(&table->rows[k], &place->prospect);
        lw_lines_number(lines, lw_prospect_may_lack(k) ? unless_none(shown) : shown);
    }
    lw_lines_number(lines, place->behind);
    lw_lines_number(lines, place->error);
    lw_lines_number(lines, place->spread);
    lw_lines_number(lines, place->chance);
    lw_lines_text(lines, lw_reason_text(place->reason));
}

static void work_choice(lw_sweep_worker *worker)
{
    work_out_outlook(worker, &worker->inputs.day, false);
    const lw_choice choice = lw_choice_of(&worker->outlook, worker->outlook.aim, 0.0);
    for (size_t i = 0; i < choice.count; i++) {
        const char *label = worker->inputs.boat.pins[choice.places[i].pin].label;
        const char *pin = worker->sweep->pin;
        if (!pin || strcmp(pin, label) == 0) add_place(worker, &choice, i);
    }
}

// clang-format off
static const lw_sweep_worth least_time = {
    .what = "expected time round the course",
    .column = {"seconds", "seconds", "seconds"},
    .sign = {-1.0, -1.0, -1.0},
    .unit = LW_UNIT_S,
    .has_rides = true,
};

const lw_sweep_answer lw_sweep_choice = {
    .name = "choice",
    .doc = "the pins ranked, best first",
    .columns = {{.key = "outcome", .is_text = true},
                {.key = "place"},
                {.key = "pin", .is_text = true},
                {.table = &lw_prospect_table},
                {.key = "behind", .unit = LW_UNIT_S},
                {.key = "error", .unit = LW_UNIT_S},
                {.key = "spread", .unit = LW_UNIT_S},
                {.key = "chance"},
                {.key = "reason", .is_text = true}},
    .map = "pin",
    .worth = &least_time,
    .work = work_choice,
};
// clang-format on

// --- from what wind to what wind

static void add_range(lw_sweep_worker *worker, size_t pin, int course)
{
    const lw_range *range = &worker->range;
    const lw_quantity *rows = lw_range_table.rows;
    lw_lines *lines = &worker->lines;
    lw_sweep_line(worker, range->has_flight ? "flies" : "flies in no wind");
    lw_lines_text(lines, worker->inputs.boat.pins[pin].label);
    lw_lines_text(lines, lw_course_text((lw_course_kind)course));
    for (size_t i = 0; i < lw_range_table.count; i++) {
        lw_lines_number(lines, unless_none(lw_quantity_shown(&rows[i], range)));
    }
    const bool has_end = range->has_hold && range->ends_by < LW_MARGIN_COUNT;
    lw_lines_text(lines, has_end ? lw_margins_table.rows[range->ends_by].key : "");
    add_truth(worker, range->ends_in_puff);
}

static void work_range(lw_sweep_worker *worker)
{
    size_t first, count;
    const lw_wind *wind = &worker->inputs.day.wind;
    lw_sweep_pins(worker, &first, &count);
    for (size_t pin = first; pin < first + count; pin++) {
        const lw_setup setup = lw_craft_setup(&worker->craft, &worker->inputs.boat, pin);
        for (int course = 0; course < LW_COURSE_COUNT; course++) {
            lw_range_of(&worker->craft, &setup, lw_course_of((lw_course_kind)course),
                        wind->puff - wind->mean, &worker->range);
            add_range(worker, pin, course);
        }
    }
}

// clang-format off
const lw_sweep_answer lw_sweep_range = {
    .name = "range",
    .doc = "every pin on every course: from what wind she flies, up to what wind she is held",
    .columns = {{.key = "outcome", .is_text = true},
                {.key = "pin", .is_text = true},
                {.key = "course", .is_text = true},
                {.table = &lw_range_table},
                {.key = "ends_by", .is_text = true},
                {.key = "ends_in_puff", .is_text = true}},
    .map = "held_up_to",
    .work = work_range,
};
// clang-format on

// --- swims

static void add_swims(lw_sweep_worker *worker, size_t pin, int course)
{
    const lw_swims *swims = &worker->outlook.swims[pin][course];
    const double mean = worker->inputs.day.wind.mean;
    lw_lines *lines = &worker->lines;
    const lw_ride_hold hold = lw_swims_hold(swims, &worker->outlook.weather);
    lw_sweep_line(worker, swims->is_known ? "ridden" : "flies in no wind");
    lw_lines_text(lines, worker->inputs.boat.pins[pin].label);
    lw_lines_text(lines, lw_course_text((lw_course_kind)course));
    lw_lines_number(
        lines, swims->is_known ? lw_swims_rate(swims, mean) / lw_unit_in_si(LW_UNIT_PERH) : NAN);
    lw_lines_number(lines, swims->is_known ? lw_swims_factor(swims, mean) : NAN);
    lw_lines_number(lines,
                    swims->is_known ? unless_none(hold.puff / lw_unit_in_si(LW_UNIT_KN)) : NAN);
    add_truth(worker, swims->is_known && hold.has_end);
}

static void work_swims(lw_sweep_worker *worker)
{
    size_t first, count;
    const lw_day day = lw_day_of_courses(&worker->inputs.day);
    lw_sweep_pins(worker, &first, &count);
    work_out_outlook(worker, &day, true);
    for (size_t pin = first; pin < first + count; pin++) {
        for (int course = 0; course < LW_COURSE_COUNT; course++) add_swims(worker, pin, course);
    }
}

// clang-format off
const lw_sweep_answer lw_sweep_swims = {
    .name = "swims",
    .doc = "every pin on every course: swims an hour under way in the day's mean wind, from rides",
    .columns = {{.key = "outcome", .is_text = true},
                {.key = "pin", .is_text = true},
                {.key = "course", .is_text = true},
                {.key = "swims", .unit = LW_UNIT_PERH},
                {.key = "factor"},
                {.key = "rides_to", .unit = LW_UNIT_KN},
                {.key = "rides_end", .is_text = true}},
    .map = "swims",
    .work = work_swims,
};
// clang-format on

// --- steady flight

static void add_answer(lw_sweep_worker *worker, size_t pin, const lw_answer *answer)
{
    lw_lines *lines = &worker->lines;
    const bool is_there = answer->outcome != LW_NO_BALANCE;
    lw_sweep_line(worker, lw_outcome_text(answer->outcome));
    lw_lines_text(lines, worker->inputs.boat.pins[pin].label);
    for (size_t i = 0; !is_there && i < lw_flight_table.count; i++) lw_lines_text(lines, "");
    if (is_there) lw_sweep_rows(worker, &lw_flight_table, &answer->flight);
    const size_t first = lw_margins_first(&answer->margins);
    lw_lines_text(lines, is_there ? lw_margins_table.rows[first].key : "");
    lw_lines_text(lines, !is_there ? "" : lw_margins_hold(&answer->margins) ? "yes" : "no");
}

// Trimmed for speed.
static void work_flight(lw_sweep_worker *worker)
{
    size_t first, count;
    lw_flown *flown = &worker->flown;
    lw_sweep_pins(worker, &first, &count);
    *flown = (lw_flown){.wind = worker->inputs.day.wind.mean, .course = worker->sweep->course};
    lw_flown_prepare(flown, &worker->inputs, worker->sections);
    for (size_t pin = first; pin < first + count; pin++) {
        flown->pin = pin;
        lw_flown_answer(flown);
        add_answer(worker, pin, &flown->answer);
    }
}

#define BOWS 3  // level, half down, down as far as the sailor lets it

// On the course's middle heading, the bow as high as there is a balance.
static void work_balance(lw_sweep_worker *worker)
{
    size_t first, count;
    const lw_craft *craft = &worker->craft;
    const double heading = lw_course_middle(lw_course_of(worker->sweep->course));
    lw_sweep_pins(worker, &first, &count);
    for (size_t pin = first; pin < first + count; pin++) {
        const lw_setup setup = lw_craft_setup(craft, &worker->inputs.boat, pin);
        lw_ask asks[BOWS];
        lw_answer answers[BOWS];
        for (int i = 0; i < BOWS; i++) {
            asks[i] = lw_ask_of(craft, &setup, worker->inputs.day.wind.mean, heading);
            asks[i].given.pitch = -0.5 * i * craft->most_bow_down;
        }
        lw_balance(craft, asks, answers, BOWS);
        int best = 0;
        while (best < BOWS - 1 && answers[best].outcome == LW_NO_BALANCE) best++;
        add_answer(worker, pin, &answers[best]);
    }
}

// clang-format off
#define FLIGHT_COLUMNS {{.key = "outcome", .is_text = true}, \
                        {.key = "pin", .is_text = true},     \
                        {.table = &lw_flight_table},         \
                        {.key = "first_margin", .is_text = true}, \
                        {.key = "margins_hold", .is_text = true}}

static const lw_sweep_worth most_made_good = {
    .what = "speed made good in steady flight",
    .column = {"vmg", "speed", "vmg"},
    .sign = {1.0, 1.0, -1.0},
    .unit = LW_UNIT_KN,
};

const lw_sweep_answer lw_sweep_flight = {
    .name = "flight",
    .doc = "every pin's steady flight in the day's mean wind, trimmed for speed",
    .columns = FLIGHT_COLUMNS,
    .map = "speed",
    .worth = &most_made_good,
    .work = work_flight,
};

const lw_sweep_answer lw_sweep_balance = {
    .name = "balance",
    .doc = "the same on the course's middle heading, with nothing sought: very quick",
    .columns = FLIGHT_COLUMNS,
    .map = "speed",
    .worth = &most_made_good,
    .work = work_balance,
};
// clang-format on
