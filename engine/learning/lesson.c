// lesson.c - what a logged day tells of the boat.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/learning.h"

#define FLOWN_LEAST 60.0  // [s] on a course, to take its speed  [judged]

static double speed_of(double speed, double time) { return time >= FLOWN_LEAST ? speed : NAN; }

lw_lesson_day lw_lesson_of(const lw_logged *logged, size_t pin)
{
    const lw_used *used = &logged->used;
    const lw_sailed *sailed = &logged->sailed;
    return (lw_lesson_day){
        .pin = pin,
        .wind = lw_conditions_of(&logged->wind, &logged->sea, NAN).mean,
        .told = {.upwind_turns = used->upwind,
                 .reach_turns = used->reach,
                 .downwind_turns = used->downwind,
                 .upwind_speed = speed_of(sailed->upwind_speed, sailed->upwind_time),
                 .reach_speed = speed_of(sailed->reach_speed, sailed->reach_time),
                 .downwind_speed = speed_of(sailed->downwind_speed, sailed->downwind_time)}};
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
