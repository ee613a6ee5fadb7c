// ridden.c - what a ride through a day's gusts and chop starts from.
// SPDX-License-Identifier: MIT

#include "lullwise/flown.h"

#include <math.h>

#include "lullwise/elementary.h"

void lw_ridden_prepare(lw_ridden *ridden, const lw_inputs *inputs, const lw_sections *sections)
{
    lw_flown *flown = &ridden->flown;
    lw_flown_prepare(flown, inputs, sections);
    flown->pin = inputs->boat.pin_count / 2;
    flown->wind = inputs->day.wind.mean;
    flown->course = LW_UPWIND;
    flown->has_heading = flown->has_heel = flown->has_place = flown->has_turns = false;
}

// Middle of the sail above the water, as she flies.
static double sail_height(const lw_ridden *ridden)
{
    const lw_craft *craft = &ridden->flown.craft;
    const double ride = fmax(ridden->flown.answer.flight.ride_height, 0.0);
    return craft->sail.centre_height - craft->main_strut.length + ride;
}

static void put_weather(lw_ridden *ridden)
{
    lw_day day = ridden->flown.inputs->day;
    lw_motion *motion = &ridden->motion;
    const double share = ridden->flown.wind / day.wind.mean;
    day.wind.lull *= share, day.wind.mean *= share, day.wind.puff *= share;
    ridden->wind = day.wind;
    motion->gust =
        lw_gust_filter_of(lw_gust_kind_of(&day, sail_height(ridden)), motion->parameters.step);
    motion->sea = lw_sea_kind_of(&ridden->flown.craft.medium, day.wind.mean);
    motion->is_gusty = true;
    motion->is_choppy = motion->sea.wave.height > 0.0;
}

// What she is sailed with: beyond the last wind that keeps her margins, the flight of that.
static void sail_as_held(lw_flown *flown)
{
    const lw_range_point *sailed = lw_range_sailed(&flown->range, flown->wind);
    const bool is_kept = lw_answer_is_kept(&flown->answer);
    if (is_kept || !sailed || fabs(sailed->wind - flown->wind) < LW_KN) return;
    flown->ask = lw_ask_as(&flown->craft, &flown->walk.setup, &sailed->trimmed);
    flown->answer = sailed->trimmed;
}

void lw_ridden_plan(lw_ridden *ridden, uint64_t seed)
{
    lw_flown *flown = &ridden->flown;
    lw_flown_answer(flown);
    lw_range_trims(&flown->walk, &flown->range);
    ridden->is_wound = !flown->has_turns && lw_range_sailed(&flown->range, flown->wind) != NULL;
    if (ridden->is_wound && !flown->has_heel && !flown->has_place) sail_as_held(flown);
    ridden->motion = lw_motion_of(&flown->craft);
    ridden->motion.parameters.swim = flown->inputs->day.cost.swim;
    put_weather(ridden);
    ridden->plan = lw_ride_plan_of(&ridden->motion, &flown->ask, &flown->answer);
    if (ridden->is_wound) lw_ride_plan_wind(&ridden->plan, &flown->craft, &flown->range);
    ridden->plan.seed = seed;
}

size_t lw_ridden_steps(const lw_ridden *ridden, double seconds)
{
    return (size_t)fmax(floor(seconds / ridden->motion.parameters.step + 0.5), 1.0);
}

void lw_ridden_water(const lw_ridden *ridden, const lw_sea_waves *sea, const lw_trace *at,
                     double height[LW_WATER_COUNT])
{
    const double along = lw_cos(at->bow), port = lw_sin(at->bow);
    for (int i = 0; i < LW_WATER_COUNT; i++) {
        const double s = LW_WATER_FROM + i * LW_WATER_STEP;
        const double x = at->upwind + s * along, y = at->across + s * port;
        height[i] = ridden->motion.is_choppy ? lw_sea_at(sea, x, y, at->time, 0.0).surface : 0.0;
    }
}
