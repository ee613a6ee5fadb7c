// swims.c - rides of a set-up in several winds, and the smooth rate that fits what they count.
// SPDX-License-Identifier: MIT

#include "lullwise/swims.h"

#include <math.h>

#include "lullwise/elementary.h"

#define LYING      2.0  // [s] from a swim until the ride goes on: the water is as it was
#define LIMIT_STEP (0.1 * LW_KN)

// Before any ride: 5 swims an hour, give or take a factor of seven; from wind to wind the factor
// changes by some three times, from pin to pin it changes by a third.  [judged]
static const lw_rate_prior before = {-6.6, 2.0, 1.2, 0.35};

lw_weather lw_weather_of(const lw_craft *craft, const lw_day *day)
{
    return (lw_weather){lw_gust_kind_of(day, craft->sail.centre_height)};
}

void lw_weather_put(const lw_weather *weather, double wind, lw_motion *motion)
{
    const double share = wind / weather->gust.mean;
    lw_gust_kind gust = weather->gust;
    gust.lull *= share, gust.mean = wind, gust.puff *= share;
    motion->gust = lw_gust_filter_of(gust, motion->rules.step);
    motion->sea = lw_sea_kind_of(&motion->craft->medium, wind);
    motion->is_gusty = true;
    motion->is_choppy = motion->sea.wave.height > 0.0;
}

// The knot of a range nearest to a wind.
static int knot_at(double wind)
{
    const double k = floor(wind / LW_KN + 0.5) - LW_RANGE_FIRST_KN;
    return (int)fmin(fmax(k, 0.0), LW_RANGE_WINDS - 1.0);
}

// The flight trimmed for a knot or the next below; NULL when there is none.
static const lw_answer *trimmed_below(const lw_range *range, int k)
{
    while (k >= 0 && range->at[k].trimmed.outcome != LW_FLIES) k--;
    return k >= 0 ? &range->at[k].trimmed : NULL;
}

// Aloft from the start, and again after a swim.
static lw_ride_plan plan_of(const lw_motion *motion, const lw_ask *ask, const lw_answer *answer)
{
    lw_ride_plan plan = lw_ride_plan_of(motion, ask, answer);
    plan.rest = plan.start;
    plan.rests_aloft = true;
    return plan;
}

#define PART_APART ((LW_SWIM_MOST - LW_SWIM_LEAST) / (LW_SWIM_WINDS - 1.0))
_Static_assert(LW_SWIM_WINDS == LW_RATE_TERMS, "a term for each wind that is ridden in");

// Rides in one wind; adds what each counts.
static void ride_in(const lw_motion *motion, lw_ride_plan plan, double x, double seconds,
                    lw_swim_counts *counts)
{
    lw_ride rides[LW_SWIM_RIDES];
    for (int i = 0; i < LW_SWIM_RIDES; i++) {
        rides[i].events = NULL, rides[i].event_room = 0;
        lw_ride_begin(&rides[i], motion, &plan);
        plan.seed++;
    }
    lw_rides_advance(motion, rides, LW_SWIM_RIDES, (size_t)(seconds / motion->rules.step + 0.5));
    for (int i = 0; i < LW_SWIM_RIDES; i++) {
        const lw_ride_tally *tally = &rides[i].tally;
        counts->of[counts->count++] =
            (lw_rate_count){.x = x, .events = lw_ride_tally_swims(tally), .time = tally->flying};
    }
}

void lw_swims_ride(const lw_craft *craft, const lw_setup *setup, const lw_range *range,
                   const lw_weather *weather, lw_swim_effort effort, lw_swim_counts *counts)
{
    const double mean = weather->gust.mean;
    lw_motion motion = lw_motion_of(craft);
    motion.rules.swim = LYING;
    *counts = (lw_swim_counts){0};
    for (int i = 0, before_k = -1; i < LW_SWIM_WINDS && mean > 0.0; i++) {
        const int k = knot_at((LW_SWIM_LEAST + PART_APART * i) * mean);
        const lw_answer *trimmed = trimmed_below(range, k);
        if (k == before_k || !trimmed) continue;
        before_k = k;
        const double wind = range->at[k].wind;
        lw_weather_put(weather, wind, &motion);
        const lw_ask ask = lw_ask_as(craft, setup, trimmed);
        lw_ride_plan plan = plan_of(&motion, &ask, trimmed);
        plan.seed = effort.seed + (uint64_t)(LW_SWIM_RIDES * i);
        if (counts->count == 0) counts->low = wind;
        counts->high = wind;
        ride_in(&motion, plan, (wind / mean - LW_SWIM_LEAST) / PART_APART, effort.seconds, counts);
    }
}

void lw_swims_fit(const lw_weather *weather, size_t n, const lw_swim_counts *const counts[],
                  lw_rate_family *family, lw_swims *const swims[])
{
    lw_rate_count all[LW_PINS_MOST * LW_SWIM_WINDS * LW_SWIM_RIDES] = {0};
    size_t m = 0;
    for (size_t i = 0; i < n; i++) {
        const lw_swim_counts *c = counts[i];
        *swims[i] = (lw_swims){.first = LW_SWIM_LEAST * weather->gust.mean,
                               .apart = PART_APART * weather->gust.mean,
                               .low = c->low,
                               .high = c->high,
                               .is_known = c->count > 0};
        for (size_t k = 0; k < c->count; k++) {
            all[m] = c->of[k];
            all[m++].curve = i;
            swims[i]->events += c->of[k].events;
            swims[i]->time += c->of[k].time;
        }
    }
    lw_rate_family_of(family, n, all, m, &before);
    for (size_t i = 0; i < n; i++) swims[i]->curve = lw_rate_family_curve(family, i);
}

lw_swims lw_swims_of(const lw_craft *craft, const lw_setup *setup, const lw_range *range,
                     const lw_weather *weather, lw_swim_effort effort)
{
    lw_swims swims, *const to = &swims;
    lw_swim_counts counts;
    const lw_swim_counts *const from = &counts;
    lw_rate_family family;
    lw_swims_ride(craft, setup, range, weather, effort, &counts);
    lw_swims_fit(weather, 1, &from, &family, &to);
    return swims;
}

double lw_swims_x(const lw_swims *swims, double wind)
{
    if (swims->apart <= 0.0) return 0.0;
    return (fmin(fmax(wind, swims->low), swims->high) - swims->first) / swims->apart;
}

double lw_swims_rate(const lw_swims *swims, double wind)
{
    return lw_rate_at(&swims->curve, lw_swims_x(swims, wind));
}

double lw_swims_log_error(const lw_swims *swims, double wind)
{
    return lw_rate_log_error(&swims->curve, lw_swims_x(swims, wind));
}

double lw_swims_limit(const lw_swims *swims, double most)
{
    double wind = swims->is_known ? swims->high : 0.0;
    while (wind > 0.0 && lw_swims_rate(swims, wind) >= most) {
        wind = wind > swims->low ? fmax(wind - LIMIT_STEP, swims->low) : 0.0;
    }
    return wind;
}

double lw_swims_hold(const lw_swims *swims)
{
    double least = INFINITY;
    for (double wind = swims->low; swims->is_known && wind <= swims->high; wind += LIMIT_STEP) {
        least = fmin(least, lw_swims_rate(swims, wind));
    }
    return lw_swims_limit(swims, least + LW_SWIM_MANY);
}
