// swims.c - weather in other winds, and the smooth rate that fits the swims counted in them.
// SPDX-License-Identifier: MIT

#include "lullwise/swims.h"

#include <math.h>

#include "lullwise/elementary.h"

#define LIMIT_STEP (0.1 * LW_KN)

// Before any ride: half a swim an hour, give or take a factor of ten; from wind to wind and from
// pin to pin it may change by a factor of seven, as where a pin turns too strong it does.  [judged]
static const lw_rate_prior before = {-9.0, 2.3, 2.0, 2.0};

lw_weather lw_weather_of(const lw_craft *craft, const lw_day *day)
{
    return (lw_weather){lw_gust_kind_of(day, craft->sail.centre_height)};
}

void lw_weather_put(const lw_weather *weather, double wind, lw_motion *motion)
{
    const double share = wind / weather->gust.mean;
    lw_gust_kind gust = weather->gust;
    gust.lull *= share, gust.mean = wind, gust.puff *= share;
    motion->gust = lw_gust_filter_of(gust, motion->parameters.step);
    motion->sea = lw_sea_kind_of(&motion->craft->medium, wind);
    motion->is_gusty = true;
    motion->is_choppy = motion->sea.wave.height > 0.0;
}

void lw_swims_fit(const lw_weather *weather, const lw_rate_count *counts, size_t n, size_t pins,
                  lw_swims swims[])
{
    lw_rate_family family;
    lw_rate_family_of(&family, pins, counts, n, &before);
    for (size_t i = 0; i < pins; i++) {
        swims[i] = (lw_swims){.curve = lw_rate_family_curve(&family, i),
                              .first = LW_RIDE_LEAST * weather->gust.mean,
                              .apart = LW_RIDE_APART * weather->gust.mean};
    }
    for (size_t k = 0; k < n; k++) {
        lw_swims *to = &swims[counts[k].curve];
        to->events += counts[k].events;
        to->time += counts[k].time;
        to->is_known = true;
    }
}

double lw_swims_x(const lw_swims *swims, double wind)
{
    if (swims->apart <= 0.0) return 0.0;
    return fmin(fmax((wind - swims->first) / swims->apart, 0.0), LW_RIDE_WINDS - 1.0);
}

double lw_swims_rate(const lw_swims *swims, double wind)
{
    return lw_rate_at(&swims->curve, lw_swims_x(swims, wind));
}

double lw_swims_factor(const lw_swims *swims, double wind)
{
    return lw_exp(lw_rate_log_error(&swims->curve, lw_swims_x(swims, wind)));
}

lw_ride_hold lw_swims_hold(const lw_swims *swims, const lw_weather *weather)
{
    const double last = swims->first + swims->apart * (LW_RIDE_WINDS - 1.0);
    double wind = last;
    if (!swims->is_known) return (lw_ride_hold){0};
    while (wind >= swims->first && lw_swims_rate(swims, wind) >= LW_SWIM_MANY) wind -= LIMIT_STEP;
    if (wind < swims->first) return (lw_ride_hold){.has_end = true};
    return (lw_ride_hold){wind, wind * weather->gust.puff / weather->gust.mean, wind < last};
}
