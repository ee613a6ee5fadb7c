// given_flight.c - which steady flight is asked for.
// SPDX-License-Identifier: MIT

#include "command/given_flight.h"

#include <string.h>

#include "command/given.h"
#include "command/terminal/print.h"

static bool read_course(const lw_options *options, lw_course_kind *course)
{
    const char *text = lw_options_text(options, "course");
    if (!text) return true;
    for (int kind = 0; kind < LW_COURSE_COUNT; kind++) {
        if (strcmp(text, lw_course_text((lw_course_kind)kind)) != 0) continue;
        *course = (lw_course_kind)kind;
        return true;
    }
    lw_print_complaint(options->command,
                       "there is no course \"%s\"; it is upwind, reach or downwind, or take "
                       "--heading",
                       text);
    return false;
}

static bool read_trim(const lw_options *options, lw_criterion *by)
{
    const char *text = lw_options_text(options, "trim");
    *by = text ? lw_criterion_of(text) : LW_BY_SPEED;
    if (*by <= LW_BY_LEVEL) return true;
    lw_print_complaint(options->command, "there is no trim \"%s\"; it is speed, hold or level",
                       text);
    return false;
}

bool lw_given_flight(const lw_options *options, int pin, lw_flown *flown)
{
    const lw_boat *boat = &flown->inputs->boat;
    const lw_bounds none = {0}, along = {boat->place.aft_x, boat->place.forward_x, "the boat"};
    const lw_bounds thread = {boat->rudder.least_turns, boat->rudder.most_turns, "the thread"};
    flown->pin = pin == LW_ALL_PINS ? boat->pin_count / 2 : (size_t)pin;
    flown->wind = flown->inputs->day.wind.mean;
    flown->course = LW_UPWIND;
    flown->has_heading = lw_options_has(options, "heading");
    flown->has_heel = lw_options_has(options, "heel");
    flown->has_place = lw_options_has(options, "place");
    flown->has_turns = lw_options_has(options, "turns");
    return lw_given_number(options, "wind", none, &flown->wind) &&
           read_course(options, &flown->course) && read_trim(options, &flown->by) &&
           lw_given_number(options, "heading", none, &flown->heading) &&
           lw_given_number(options, "heel", none, &flown->heel) &&
           lw_given_number(options, "place", along, &flown->place) &&
           lw_given_number(options, "turns", thread, &flown->turns);
}
