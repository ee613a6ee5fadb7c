// choice_find.c - what is asked of a choice, and of the outlook that it rests on.
// SPDX-License-Identifier: MIT

#include "lullwise/choice_find.h"

#include <math.h>

const lw_placing *lw_choice_soonest(const lw_choice *choice, double *wind)
{
    const lw_placing *least = NULL;
    for (size_t i = 0; i < choice->count; i++) {
        const lw_prospect *p = &choice->places[i].prospect;
        if (p->launches_at <= 0.0) continue;
        const double from = fmax(p->launches_at, p->stays_up_at);
        if (!least || from < *wind) least = &choice->places[i], *wind = from;
    }
    return least;
}

const lw_placing *lw_choice_widest(const lw_choice *choice)
{
    const lw_placing *most = &choice->places[0];
    for (size_t i = 1; i < choice->count; i++) {
        if (choice->places[i].prospect.held_up_to > most->prospect.held_up_to) {
            most = &choice->places[i];
        }
    }
    return most;
}

const lw_placing *lw_choice_holder(const lw_choice *choice, double puff)
{
    for (size_t i = 0; i < choice->count; i++) {
        if (lw_placing_holds(&choice->places[i], puff)) return &choice->places[i];
    }
    return lw_choice_widest(choice);
}

// [m/s] So near, two winds are one: limits are summed from steps, knots are multiplied.
#define ONE_WIND 1e-9

bool lw_placing_stays_up(const lw_placing *place, double wind)
{
    const double from = place->prospect.stays_up_at;
    return place->flies && from > 0.0 && wind >= from - ONE_WIND;
}

bool lw_placing_holds(const lw_placing *place, double wind)
{
    return place->prospect.held_up_to > 0.0 && wind <= place->prospect.held_up_to + ONE_WIND;
}

double lw_outlook_felt_wind(const lw_outlook *outlook, size_t pin)
{
    const double knot = floor(outlook->gusts.mean / LW_KN + 0.5) - LW_RANGE_FIRST_KN;
    double most = 0.0;
    if (knot < 0.0 || knot >= LW_RANGE_WINDS) return 0.0;
    for (size_t c = 0; c < outlook->course_count; c++) {
        const lw_answer *a = &outlook->ranges[pin][c].at[(int)knot].trimmed;
        if (a->outcome == LW_FLIES) most = fmax(most, a->flight.apparent_wind);
    }
    return most;
}

lw_day lw_day_of_courses(const lw_day *day)
{
    lw_day then = *day;
    then.leg_count = LW_COURSE_COUNT;
    for (int course = 0; course < LW_COURSE_COUNT; course++) {
        then.legs[course] = (lw_leg){lw_course_of((lw_course_kind)course).direction, LW_NMI};
    }
    return then;
}
