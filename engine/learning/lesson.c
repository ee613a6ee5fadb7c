// lesson.c - what a logged day tells of boat and sailor.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/lesson.h"

#define FLOWN_LEAST 60.0  // [s] on a course, to take its speed  [judged]

lw_lesson_kind lw_lesson_kind_of(size_t row)
{
    const size_t last = LW_LESSON_COUNT - 2;
    return row < last ? (lw_lesson_kind)(row / LW_COURSE_COUNT)
                      : (lw_lesson_kind)(LW_LESSON_FLYING + (row - last));
}

size_t lw_lesson_first(lw_lesson_kind kind)
{
    return kind < LW_LESSON_FLYING ? (size_t)kind * LW_COURSE_COUNT
                                   : LW_LESSON_COUNT - 2 + (size_t)(kind - LW_LESSON_FLYING);
}

static double where_flown(double value, double time) { return time >= FLOWN_LEAST ? value : NAN; }

static lw_lesson told_by(const lw_used *used, const lw_sailed *sailed, const lw_outing *outing)
{
    const double up = sailed->upwind_time, across = sailed->reach_time;
    const double down = sailed->downwind_time;
    return (lw_lesson){.upwind_turns = used->upwind,
                       .reach_turns = used->reach,
                       .downwind_turns = used->downwind,
                       .upwind_speed = where_flown(sailed->upwind_speed, up),
                       .reach_speed = where_flown(sailed->reach_speed, across),
                       .downwind_speed = where_flown(sailed->downwind_speed, down),
                       .upwind_scatter = where_flown(sailed->upwind_scatter, up),
                       .reach_scatter = where_flown(sailed->reach_scatter, across),
                       .downwind_scatter = where_flown(sailed->downwind_scatter, down),
                       .flying = sailed->flying,
                       .swims = outing->afloat > 0.0 ? outing->swims / outing->afloat : NAN};
}

// Of the time under way a track keeps only what was flown, and the part that this is.
static lw_lesson seconds_of(const lw_sailed *sailed, const lw_outing *outing)
{
    const double up = sailed->upwind_time, across = sailed->reach_time;
    const double down = sailed->downwind_time;
    return (lw_lesson){
        .upwind_turns = NAN,
        .reach_turns = NAN,
        .downwind_turns = NAN,
        .upwind_speed = up,
        .reach_speed = across,
        .downwind_speed = down,
        .upwind_scatter = up,
        .reach_scatter = across,
        .downwind_scatter = down,
        .flying = fmax((up + across + down) / fmax(sailed->flying, 0.1), FLOWN_LEAST),
        .swims = outing->afloat};
}

lw_lesson_day lw_lesson_of(const lw_logged *logged, size_t pin)
{
    return (lw_lesson_day){.pin = pin,
                           .wind = lw_conditions_of(&logged->wind, &logged->sea, NAN).mean,
                           .told = told_by(&logged->used, &logged->sailed, &logged->outing),
                           .seconds = seconds_of(&logged->sailed, &logged->outing)};
}

static void move(double *mean, double to, size_t before)
{
    *mean = before == 0 ? to : *mean + (to - *mean) / (double)(before + 1);
}

void lw_season_day_add(lw_day *day, size_t before, const lw_logged *logged)
{
    const lw_conditions was = lw_conditions_of(&logged->wind, &logged->sea, NAN);
    if (before == 0) lw_record_preset(&lw_day_record, day);
    move(&day->wind.lull, was.lull, before);
    move(&day->wind.mean, was.mean, before);
    move(&day->wind.puff, was.puff, before);
    move(&day->sea.fetch, logged->sea.fetch, before);
    move(&day->sea.height, logged->sea.height, before);
    move(&day->sea.period, logged->sea.period, before);
    move(&day->water.temperature, logged->water.temperature, before);
    move(&day->water.salinity, logged->water.salinity, before);
    move(&day->air.temperature, logged->air.temperature, before);
    move(&day->air.pressure, logged->air.pressure, before);
}
