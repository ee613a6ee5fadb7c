// swims.c - `lullwise swims`: how often each pin swims in winds around the day's, from rides.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "command/cell.h"
#include "command/command.h"
#include "command/given.h"
#include "command/print.h"
#include "command/progress.h"
#include "lullwise/elementary.h"
#include "lullwise/swims.h"
#include "records/json.h"

#define MINUTES 4.0  // of each ride
#define SEED    1
#define WINDS   6

typedef struct counted {
    lw_inputs inputs;
    lw_craft craft;
    lw_weather weather;
    size_t first, count;  // pins asked for
    lw_swims swims[LW_PINS_MOST][LW_COURSE_COUNT];
} counted;

static const char *label_of(const counted *c, size_t pin) { return c->inputs.boat.pins[pin].label; }

static void work_out(counted *c)
{
    static lw_range range;
    const lw_gust_kind *gust = &c->weather.gust;
    const lw_swim_effort effort = {60.0 * MINUTES, SEED};
    for (size_t i = 0; i < c->count; i++) {
        const size_t pin = c->first + i;
        const lw_setup setup = lw_given_setup(&c->craft, &c->inputs.boat, pin);
        for (int course = 0; course < LW_COURSE_COUNT; course++) {
            char what[64];
            LW_FIT(what, "rides with pin %s, %s", label_of(c, pin), lw_course_text(course));
            lw_progress(what, i * LW_COURSE_COUNT + (size_t)course, c->count * LW_COURSE_COUNT);
            lw_range_of(&c->craft, &setup, lw_course_of(course), gust->puff - gust->mean, &range);
            c->swims[pin][course] = lw_swims_of(&c->craft, &setup, &range, &c->weather, effort);
        }
    }
    lw_progress_over();
}

// Mean winds of the columns, from the least to the greatest that is ridden in.
static double column_wind(const counted *c, int i)
{
    const double least = LW_SWIM_LEAST, most = LW_SWIM_MOST;
    return c->weather.gust.mean * (least + (most - least) * i / (WINDS - 1.0));
}

static bool is_ridden(const lw_swims *swims, double wind)
{
    return swims->is_known && wind > swims->low - LW_KN && wind < swims->high + LW_KN;
}

// "12 x1.3": swims an hour, and the factor by which the truth may well be more or less.
static void fit_rate(char text[LW_CELL_LENGTH], const lw_swims *swims, double wind)
{
    const double rate = 3600.0 * lw_swims_rate(swims, wind);
    const double factor = lw_exp(lw_swims_log_error(swims, wind));
    if (!is_ridden(swims, wind))
        lw_text_fit(text, LW_CELL_LENGTH, "-");
    else if (factor < 9.95)
        lw_text_fit(text, LW_CELL_LENGTH, "%.0f x%.1f", rate, factor);
    else
        lw_text_fit(text, LW_CELL_LENGTH, "%.0f x10+", rate);
}

static void fit_limit(char text[LW_CELL_LENGTH], const lw_swims *swims)
{
    const double limit = lw_swims_limit(swims, LW_SWIM_MANY);
    if (limit <= 0.0)
        lw_text_fit(text, LW_CELL_LENGTH, "-");
    else
        lw_text_fit(text, LW_CELL_LENGTH, "%s%.1f kn", limit >= swims->high ? "over " : "",
                    limit / LW_KN);
}

static void print_course(const counted *c, int course, size_t wide)
{
    char text[LW_CELL_LENGTH];
    printf("%s, swims an hour in a mean wind of\n", lw_course_text(course));
    printf("  %-*s", (int)wide, "pin");
    for (int i = 0; i < WINDS; i++) {
        LW_FIT(text, "%.1f kn", column_wind(c, i) / LW_KN);
        lw_cell_right(stdout, text, 10);
    }
    printf("%14s\n", "carried to");
    for (size_t pin = c->first; pin < c->first + c->count; pin++) {
        fputs("  ", stdout);
        lw_cell_left(stdout, label_of(c, pin), wide);
        for (int i = 0; i < WINDS; i++) {
            fit_rate(text, &c->swims[pin][course], column_wind(c, i));
            lw_cell_right(stdout, text, 10);
        }
        fit_limit(text, &c->swims[pin][course]);
        lw_cell_right(stdout, text, 14);
        putchar('\n');
    }
    putchar('\n');
}

static void print_text(const counted *c)
{
    char text[600];
    const lw_gust_kind *gust = &c->weather.gust;
    size_t wide = 3;
    for (size_t i = 0; i < c->count; i++) wide = lw_cell_width(wide, label_of(c, c->first + i));
    LW_FIT(text,
           "%s, %s. Lulls at %.0f %% of the mean wind and puffs at %.0f %%, a puff about every "
           "%.0f s; the chop grows with the wind.",
           c->inputs.boat.name, c->inputs.sailor.name, 100.0 * gust->lull / gust->mean,
           100.0 * gust->puff / gust->mean, gust->period);
    lw_print_wrapped(stdout, text, 0, 0);
    putchar('\n');
    for (int course = 0; course < LW_COURSE_COUNT; course++) print_course(c, course, wide);
    LW_FIT(text,
           "\"8 x1.5\": 8 an hour, two times in three between 8 / 1.5 and 8 x 1.5, as far as the "
           "number of rides goes: %d of %.0f min in each of %d winds. Carried to: greatest mean "
           "wind with fewer than %.0f an hour; \"-\": none of these.",
           LW_SWIM_RIDES, MINUTES, LW_SWIM_WINDS, 3600.0 * LW_SWIM_MANY);
    lw_print_wrapped(stdout, text, 0, 0);
    lw_print_wrapped(
        stdout,
        "The sailor of these rides keeps her rudder turns through every gust, never tires and "
        "never looks ahead. Compare pins and winds rather than trust a number.",
        0, 0);
}

static json_t *swims_json(const counted *c, size_t pin, int course)
{
    const lw_swims *swims = &c->swims[pin][course];
    json_t *at = json_array();
    for (int i = 0; i < WINDS; i++) {
        const double wind = column_wind(c, i);
        if (!is_ridden(swims, wind)) continue;
        json_array_append_new(at, json_pack("{s:f, s:f, s:f}", "wind", wind / LW_KN, "swims",
                                            3600.0 * lw_swims_rate(swims, wind), "factor",
                                            lw_exp(lw_swims_log_error(swims, wind))));
    }
    return json_pack("{s:s, s:s, s:f, s:f, s:f, s:o}", "pin", label_of(c, pin), "course",
                     lw_course_text(course), "counted", swims->events, "hours",
                     swims->time / 3600.0, "carried_to",
                     lw_swims_limit(swims, LW_SWIM_MANY) / LW_KN, "at", at);
}

static json_t *counted_json(const counted *c)
{
    json_t *list = json_array();
    for (size_t pin = c->first; pin < c->first + c->count; pin++) {
        for (int course = 0; course < LW_COURSE_COUNT; course++) {
            json_array_append_new(list, swims_json(c, pin, course));
        }
    }
    return json_pack("{s:s, s:s, s:o, s:{s:s, s:s, s:s}}", "boat", c->inputs.boat.name, "sailor",
                     c->inputs.sailor.name, "swims", list, "units", "wind", "kn", "swims", "/h",
                     "carried_to", "kn");
}

static bool is_known(const counted *c)
{
    for (size_t pin = c->first; pin < c->first + c->count; pin++) {
        for (int course = 0; course < LW_COURSE_COUNT; course++) {
            if (c->swims[pin][course].is_known) return true;
        }
    }
    return false;
}

static lw_exit run(const lw_options *options)
{
    static counted c;
    int pin;
    if (!lw_given(&c.inputs, &pin, options)) return LW_EXIT_WRONG_INPUT;
    c.first = pin == LW_ALL_PINS ? 0 : (size_t)pin;
    c.count = pin == LW_ALL_PINS ? c.inputs.boat.pin_count : 1;
    c.craft = lw_given_craft(&c.inputs);
    c.weather = lw_weather_of(&c.craft, &c.inputs.day);
    work_out(&c);
    if (lw_options_has(options, "json"))
        lw_json_write(counted_json(&c), stdout);
    else
        print_text(&c);
    return is_known(&c) ? LW_EXIT_FINE : LW_EXIT_NO_ANSWER;
}

const lw_command lw_command_swims = {
    .name = "swims",
    .summary = "How often each pin swims in winds around the day's, from rides in gusts and chop.",
    .operands = "",
    .takes = "boat sailor day set pin json",
    .doc =
        "Sails each pin upwind, on a reach and downwind through the day's gusts and chop, in mean "
        "winds from well below the day's to well above, many rides in each, and counts the swims. "
        "A smooth curve through the counts gives swims an hour with its standard error, and the "
        "mean wind up to which a pin is carried. Ends with 1 when no pin flies at all.",
    .run = run,
};
