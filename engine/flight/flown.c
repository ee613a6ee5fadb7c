// flown.c - one steady flight asked for, worked out.
// SPDX-License-Identifier: MIT

#include "lullwise/flown.h"

#include <math.h>

void lw_flown_prepare(lw_flown *flown, const lw_inputs *inputs, const lw_sections *sections)
{
    const lw_medium medium = lw_medium_of(&inputs->day);
    flown->inputs = inputs;
    flown->walk.craft = NULL;
    lw_craft_prepare(&flown->craft, &inputs->boat, sections, &inputs->sailor.person, &medium);
}

static lw_setup setup_of(const lw_flown *flown)
{
    return lw_craft_setup(&flown->craft, &flown->inputs->boat, flown->pin);
}

// Without a heading: the course, on which the best VMG is sought.
static lw_course course_of(const lw_flown *a)
{
    const double heading = fabs(a->heading);
    return a->has_heading ? (lw_course){heading, heading, heading} : lw_course_of(a->course);
}

static double puff_of(const lw_flown *a)
{
    const lw_wind *wind = &a->inputs->day.wind;
    return wind->puff - wind->mean;
}

#define WINDINGS 8

// The rudder wound to the turns asked for, a part at a time so that each balance leads to the next.
static lw_trim wound(const lw_flown *a, const lw_trim *from, double turns, const lw_freedom *free)
{
    lw_trim trim = *from;
    lw_ask *ask = &trim.ask;
    const double was = lw_ask_rudder(ask), to = lw_craft_rudder(&a->craft, turns);
    for (int i = 1; i < WINDINGS; i++) {
        lw_answer part;
        lw_ask_give_rudder(ask, was + (to - was) * i / WINDINGS);
        lw_balance(&a->craft, ask, &part, 1);
        lw_ask_follow(&a->craft, ask, &part);
    }
    lw_ask_give_rudder(ask, to);
    return lw_trim_from(&a->craft, &trim, free);
}

static lw_freedom freedom_of(const lw_flown *a, lw_course course)
{
    return (lw_freedom){.by = a->by,
                        .heel = !a->has_heel,
                        .place = !a->has_place,
                        .turns = !a->has_turns,
                        .course = course.direction,
                        .puff = puff_of(a)};
}

// What of a trim is given.
static void put_given(const lw_flown *a, lw_trim *trim)
{
    if (a->has_heel) trim->ask.heel = a->heel;
    if (a->has_place) trim->ask.place = a->place + a->craft.transom_x;
}

// On the hull: rudder at the mark or as given, where the hull and no foil sets the bow.
static lw_trim afloat(const lw_flown *a, const lw_setup *setup, lw_course course)
{
    lw_freedom free = freedom_of(a, course);
    lw_trim trim = {.ask = lw_ask_of(&a->craft, setup, a->wind, lw_course_middle(course))};
    put_given(a, &trim);
    lw_ask_hold_rudder(&trim.ask);
    const lw_answer hull = lw_afloat(&a->craft, &trim.ask, 0.3 * a->wind, 1.3 * a->wind);
    lw_ask_follow(&a->craft, &trim.ask, &hull);
    free.turns = false, free.puff = 0.0;
    free.heading = !a->has_heading;
    free.heading_low = course.low, free.heading_high = course.high;
    return wound(a, &trim, a->has_turns ? a->turns : 0.0, &free);
}

static bool is_same(lw_course a, lw_course b)
{
    return a.direction == b.direction && a.low == b.low && a.high == b.high;
}

// The walk on this course: a new one where boat, pin or course are others than the last time.
static void walk(lw_flown *a, const lw_setup *setup, lw_course course)
{
    const lw_walk *w = &a->walk;
    const bool is_known = w->craft == &a->craft && w->setup.incidence == setup->incidence &&
                          is_same(w->course, course) && w->puff == puff_of(a);
    if (!is_known) a->walk = lw_walk_of(&a->craft, setup, course, puff_of(a));
}

static lw_trim trim_of(lw_flown *a)
{
    const lw_setup setup = setup_of(a);
    const lw_course course = course_of(a);
    const lw_freedom free = freedom_of(a, course);
    walk(a, &setup, course);
    lw_trim trim = lw_walk_flight(&a->walk, a->wind);
    if (trim.steady.outcome != LW_FLIES) {
        const lw_trim hull = afloat(a, &setup, course);
        return hull.steady.outcome == LW_NO_BALANCE ? trim : hull;
    }
    const bool is_given = a->has_heel || a->has_place || a->has_turns;
    if (!is_given && a->by == LW_BY_SPEED) return trim;
    put_given(a, &trim);
    if (!is_given && a->by == LW_BY_HOLD) return lw_walk_holding(&a->walk, &trim);
    return a->has_turns ? wound(a, &trim, a->turns, &free) : lw_trim_from(&a->craft, &trim, &free);
}

void lw_flown_answer(lw_flown *flown)
{
    const lw_trim trim = trim_of(flown);
    flown->answer = trim.steady;
    flown->ask = trim.ask;
    if (!flown->asks_most || trim.steady.outcome != LW_FLIES || flown->has_turns) return;
    const lw_trim most = lw_walk_holding(&flown->walk, &trim);
    flown->most_turns = most.steady.flight.turns;
    flown->holds_most = lw_trim_is_held(&most);
}

void lw_flown_range(lw_flown *flown)
{
    const lw_setup setup = setup_of(flown);
    lw_range_of(&flown->craft, &setup, course_of(flown), puff_of(flown), &flown->range);
}
