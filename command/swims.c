// swims.c - `lullwise swims`: how often each pin swims in winds around the day's, from rides.
// SPDX-License-Identifier: MIT

#include <stdlib.h>

#include "answer/words/sections.h"
#include "command/cell.h"
#include "command/command.h"
#include "command/given.h"
#include "command/terminal/print.h"
#include "command/terminal/progress.h"
#include "lullwise/choice.h"
#include "lullwise/elementary.h"
#include "records/json.h"

typedef struct counted {
    lw_inputs inputs;
    size_t first, count;  // pins asked for
    lw_outlook *outlook;  // of a day whose legs are the three courses
} counted;

static const char *label_of(const counted *c, size_t pin) { return c->inputs.boat.pins[pin].label; }

static const lw_swims *swims_of(const counted *c, size_t pin, int course)
{
    return &c->outlook->swims[pin][course];
}

// The day with a leg upwind, one on a reach and one downwind, in the order of the courses.
static lw_day three_legs(const lw_day *day)
{
    lw_day then = *day;
    then.leg_count = LW_COURSE_COUNT;
    for (int course = 0; course < LW_COURSE_COUNT; course++) {
        then.legs[course] = (lw_leg){lw_course_of((lw_course_kind)course).direction, LW_NMI};
    }
    return then;
}

static void work_out(counted *c)
{
    const lw_day day = three_legs(&c->inputs.day);
    const lw_boat *boat = &c->inputs.boat;
    size_t done = 0, steps;
    lw_outlook_begin(c->outlook, boat, lw_sections_of(boat), &c->inputs.sailor.person, &day);
    c->outlook->effort = lw_effort_thorough();
    while (done < (steps = lw_outlook_steps(c->outlook))) {
        for (; done < steps; done++) {
            lw_progress("rides of every pin on three courses", done, steps);
            lw_outlook_step(c->outlook, done);
        }
    }
    lw_outlook_end(c->outlook);
    lw_progress_over();
}

static double column_wind(const counted *c, int i)
{
    return c->outlook->gusts.mean * (LW_RIDE_LEAST + LW_RIDE_APART * i);
}

// "12 x1.3": swims an hour, and the factor by which the truth may well be more or less.
static void fit_rate(char text[LW_CELL_LENGTH], const lw_swims *swims, double wind)
{
    const double rate = 3600.0 * lw_swims_rate(swims, wind);
    const double factor = lw_exp(lw_swims_log_error(swims, wind));
    if (!swims->is_known)
        lw_text_fit(text, LW_CELL_LENGTH, "-");
    else if (factor < 9.95)
        lw_text_fit(text, LW_CELL_LENGTH, "%.0f x%.1f", rate, factor);
    else
        lw_text_fit(text, LW_CELL_LENGTH, "%.0f x10+", rate);
}

static void fit_limit(char text[LW_CELL_LENGTH], const counted *c, const lw_swims *swims)
{
    const lw_ride_hold hold = lw_swims_hold(swims, &c->outlook->weather);
    if (hold.puff <= 0.0)
        lw_text_fit(text, LW_CELL_LENGTH, "none");
    else
        lw_text_fit(text, LW_CELL_LENGTH, "%s%.1f kn", hold.has_end ? "" : "over ",
                    hold.puff / LW_KN);
}

static void print_course(const counted *c, int course, size_t wide)
{
    char text[LW_CELL_LENGTH];
    printf("%s, swims an hour in a mean wind of\n", lw_course_text(course));
    printf("  %-*s", (int)wide, "pin");
    for (int i = 0; i < LW_RIDE_WINDS; i++) {
        LW_FIT(text, "%.1f kn", column_wind(c, i) / LW_KN);
        lw_cell_right(stdout, text, 10);
    }
    printf("%14s\n", "held, puffs");
    for (size_t pin = c->first; pin < c->first + c->count; pin++) {
        fputs("  ", stdout);
        lw_cell_left(stdout, label_of(c, pin), wide);
        for (int i = 0; i < LW_RIDE_WINDS; i++) {
            fit_rate(text, swims_of(c, pin, course), column_wind(c, i));
            lw_cell_right(stdout, text, 10);
        }
        fit_limit(text, c, swims_of(c, pin, course));
        lw_cell_right(stdout, text, 14);
        putchar('\n');
    }
    putchar('\n');
}

static void print_text(const counted *c)
{
    char text[600];
    const lw_gust_kind *gust = &c->outlook->weather.gust;
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
    LW_FIT(
        text,
        "\"8 x1.5\": 8 an hour under way, two times in three between 8 / 1.5 and 8 x 1.5, as far "
        "as the number of rides goes: %d of %.1f min in each wind. Held to, " LW_HELD_BY_RIDES
        "; margins are not asked here.",
        LW_BLOCKS, c->outlook->effort.seconds / 60.0);
    lw_print_wrapped(stdout, text, 0, 0);
    lw_print_wrapped(
        stdout,
        "The sailor of these rides winds her rudder after the wind of the last minute, never tires "
        "and sees no more than a gust ahead. Compare pins and winds rather than trust a number.",
        0, 0);
}

static json_t *swims_json(const counted *c, size_t pin, int course)
{
    const lw_swims *swims = swims_of(c, pin, course);
    const lw_ride_hold hold = lw_swims_hold(swims, &c->outlook->weather);
    json_t *at = json_array();
    for (int i = 0; swims->is_known && i < LW_RIDE_WINDS; i++) {
        const double wind = column_wind(c, i);
        json_array_append_new(at, json_pack("{s:f, s:f, s:f}", "wind", wind / LW_KN, "swims",
                                            3600.0 * lw_swims_rate(swims, wind), "factor",
                                            lw_exp(lw_swims_log_error(swims, wind))));
    }
    return json_pack("{s:s, s:s, s:f, s:f, s:o, s:b, s:o}", "pin", label_of(c, pin), "course",
                     lw_course_text((lw_course_kind)course), "counted", swims->events, "hours",
                     swims->time / 3600.0, "rides_to",
                     hold.puff > 0.0 ? json_real(hold.puff / LW_KN) : json_null(), "rides_end",
                     hold.has_end, "at", at);
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
                     "rides_to", "kn");
}

static bool is_known(const counted *c)
{
    for (size_t pin = c->first; pin < c->first + c->count; pin++) {
        for (int course = 0; course < LW_COURSE_COUNT; course++) {
            if (swims_of(c, pin, course)->is_known) return true;
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
    c.outlook = malloc(sizeof *c.outlook);
    if (!c.outlook) {
        lw_print_complaint(options->command, "there is not enough memory");
        return LW_EXIT_NO_ANSWER;
    }
    work_out(&c);
    if (lw_options_has(options, "json"))
        lw_json_write(counted_json(&c), stdout);
    else
        print_text(&c);
    const lw_exit ended = is_known(&c) ? LW_EXIT_FINE : LW_EXIT_NO_ANSWER;
    free(c.outlook);
    return ended;
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
        "puffs up to which it is held by rides. Ends with 1 when no pin flies at all.",
    .run = run,
};
