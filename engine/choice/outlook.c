// outlook.c - everything that a day's choice rests on: each pin's range on each course of the day.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/choice.h"

// Of each ride, in each wind: what half a second of work is enough for.
static const lw_swim_effort effort = {.seconds = 60.0, .seed = 1};

#define BEAR_AWAY (100.0 * LW_DEG)  // heading on which a boat launches soonest

// The course a leg belongs to; a new one while there is room, else the nearest in direction.
static size_t course_for(lw_outlook *outlook, lw_course course)
{
    size_t nearest = 0;
    double least = 1e9;
    for (size_t i = 0; i < outlook->course_count; i++) {
        const double off = fabs(outlook->courses[i].direction - course.direction);
        if (off < least) least = off, nearest = i;
    }
    if (least < 0.5 * LW_DEG || outlook->course_count == LW_COURSES_MOST) return nearest;
    outlook->courses[outlook->course_count] = course;
    return outlook->course_count++;
}

static void take_legs(lw_outlook *outlook, const lw_day *day)
{
    outlook->leg_count = day->leg_count;
    for (size_t i = 0; i < day->leg_count; i++) {
        const lw_leg *leg = &day->legs[i];
        outlook->leg_length[i] = leg->length;
        outlook->leg_course[i] = course_for(outlook, lw_course_to(leg->heading));
    }
}

static lw_setup setup_of(const lw_craft *craft, const lw_pin *pin)
{
    lw_setup setup = craft->setup;
    setup.incidence = pin->incidence;
    return setup;
}

void lw_outlook_begin(lw_outlook *outlook, const lw_boat *boat, const lw_sections *sections,
                      const lw_person *person, const lw_day *day)
{
    const lw_medium medium = lw_medium_of(day);
    const lw_wind *wind = &day->wind;
    *outlook = (lw_outlook){.gusts = {wind->lull, wind->mean, wind->puff, wind->period},
                            .cost = day->cost,
                            .pin_count = boat->pin_count};
    lw_craft_prepare(&outlook->craft, boat, sections, person, &medium);
    outlook->weather = lw_weather_of(&outlook->craft, day);
    take_legs(outlook, day);
}

size_t lw_outlook_steps(const lw_outlook *outlook)
{
    return outlook->pin_count * outlook->course_count;
}

void lw_outlook_step(lw_outlook *outlook, const lw_boat *boat, size_t step)
{
    const size_t pin = step / outlook->course_count, course = step % outlook->course_count;
    const lw_setup setup = setup_of(&outlook->craft, &boat->pins[pin]);
    lw_range *range = &outlook->ranges[pin][course];
    lw_range_of(&outlook->craft, &setup, outlook->courses[course],
                outlook->gusts.puff - outlook->gusts.mean, range);
    lw_swims_ride(&outlook->craft, &setup, range, &outlook->weather, effort,
                  &outlook->ridden[pin][course]);
    if (course > 0) return;
    outlook->reach_launch[pin] = lw_range_launch(&outlook->craft, &setup, range, BEAR_AWAY);
}

// All pins of a course together.
void lw_outlook_end(lw_outlook *outlook)
{
    for (size_t c = 0; c < outlook->course_count; c++) {
        const lw_swim_counts *counts[LW_PINS_MOST];
        lw_swims *swims[LW_PINS_MOST];
        for (size_t pin = 0; pin < outlook->pin_count; pin++) {
            counts[pin] = &outlook->ridden[pin][c];
            swims[pin] = &outlook->swims[pin][c];
        }
        lw_swims_fit(&outlook->weather, outlook->pin_count, counts, &outlook->rates[c], swims);
    }
}

// By rides; no bound where none of the winds ridden in has too many swims.
double lw_outlook_ridden_to(const lw_outlook *outlook, size_t pin, size_t course)
{
    const lw_swims *swims = &outlook->swims[pin][course];
    const double limit = lw_swims_hold(swims);
    return !swims->is_known || limit >= swims->high ? INFINITY : limit;
}

double lw_outlook_hold(const lw_outlook *outlook, size_t pin, size_t course)
{
    const lw_range *range = &outlook->ranges[pin][course];
    return range->has_hold ? fmin(range->held_up_to, lw_outlook_ridden_to(outlook, pin, course))
                           : 0.0;
}

bool lw_outlook_hold_ends_by_rides(const lw_outlook *outlook, size_t pin, size_t course)
{
    const lw_range *range = &outlook->ranges[pin][course];
    return range->has_hold && lw_outlook_ridden_to(outlook, pin, course) < range->held_up_to;
}

size_t lw_outlook_hardest(const lw_outlook *outlook, size_t pin)
{
    size_t hardest = 0;
    for (size_t c = 1; c < outlook->course_count; c++) {
        if (lw_outlook_hold(outlook, pin, c) < lw_outlook_hold(outlook, pin, hardest)) hardest = c;
    }
    return hardest;
}

void lw_outlook_prepare(lw_outlook *outlook, const lw_boat *boat, const lw_sections *sections,
                        const lw_person *person, const lw_day *day)
{
    lw_outlook_begin(outlook, boat, sections, person, day);
    const size_t steps = lw_outlook_steps(outlook);
    for (size_t step = 0; step < steps; step++) lw_outlook_step(outlook, boat, step);
    lw_outlook_end(outlook);
}
