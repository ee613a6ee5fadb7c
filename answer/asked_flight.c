// asked_flight.c - which steady flight is asked for.
// SPDX-License-Identifier: MIT

#include "answer/asked_flight.h"

#include "answer/words/sections.h"

static bool ask_pin(lw_flown *flown, const lw_options *options, lw_refusal *refusal)
{
    int pin;
    const lw_boat *boat = &flown->inputs->boat;
    if (!lw_asked_pin(options, boat, &pin, refusal)) return false;
    flown->pin = pin == LW_ALL_PINS ? boat->pin_count / 2 : (size_t)pin;
    return true;
}

static bool ask_trim(lw_flown *flown, const lw_options *options, lw_refusal *refusal)
{
    const char *text = lw_options_text(options, "trim");
    flown->by = text ? lw_criterion_of(text) : LW_BY_SPEED;
    if (flown->by <= LW_BY_LEVEL) return true;
    return lw_refuse(refusal, "there is no trim \"%s\"; it is speed, hold or level", text);
}

static bool ask_numbers(lw_flown *flown, const lw_options *options, lw_refusal *refusal)
{
    const lw_boat *boat = &flown->inputs->boat;
    const lw_bounds none = {0}, along = {boat->place.aft_x, boat->place.forward_x, "the boat"};
    const lw_bounds thread = {boat->rudder.least_turns, boat->rudder.most_turns, "the thread"};
    flown->has_heading = lw_options_has(options, "heading");
    flown->has_heel = lw_options_has(options, "heel");
    flown->has_place = lw_options_has(options, "place");
    flown->has_turns = lw_options_has(options, "turns");
    return lw_asked_number(options, "heading", none, &flown->heading, refusal) &&
           lw_asked_number(options, "heel", none, &flown->heel, refusal) &&
           lw_asked_number(options, "place", along, &flown->place, refusal) &&
           lw_asked_number(options, "turns", thread, &flown->turns, refusal);
}

bool lw_asked_flight(lw_flown *flown, const lw_inputs *inputs, const lw_options *options,
                     lw_refusal *refusal)
{
    lw_flown_prepare(flown, inputs, lw_sections_of(&inputs->boat));
    flown->wind = inputs->day.wind.mean;
    return ask_pin(flown, options, refusal) &&
           lw_asked_number(options, "wind", (lw_bounds){0}, &flown->wind, refusal) &&
           lw_asked_course(options, &flown->course, refusal) && ask_trim(flown, options, refusal) &&
           ask_numbers(flown, options, refusal);
}
