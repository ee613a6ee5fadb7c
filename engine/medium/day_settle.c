// day_settle.c - lull, mean and puff of a day, from whichever wind it gives.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "lullwise/day.h"
#include "lullwise/order.h"
#include "medium/wind.h"

#define READINGS_LEAST 3

typedef struct swing {
    double lull, mean, puff;
} swing;

static void sort(double *values, size_t count)
{
    for (size_t i = 1; i < count; i++) {
        const double value = values[i];
        size_t k = i;
        for (; k > 0 && values[k - 1] > value; k--) values[k] = values[k - 1];
        values[k] = value;
    }
}

// The value below which a part of the sorted values lies, straight between neighbours.
static double point(const double *sorted, size_t count, double part)
{
    const double place = part * (double)(count - 1);
    const size_t below = (size_t)place;
    const size_t above = below + 1 < count ? below + 1 : below;
    return sorted[below] + (place - (double)below) * (sorted[above] - sorted[below]);
}

// 10 % point, average and 90 % point of the readings.
static swing swing_of_readings(const lw_day *day)
{
    const size_t count = day->reading_count;
    double sorted[LW_READINGS_MOST];
    memcpy(sorted, day->readings, count * sizeof sorted[0]);
    sort(sorted, count);

    double sum = 0.0;
    for (size_t i = 0; i < count; i++) sum += sorted[i];
    return (swing){.lull = point(sorted, count, 0.1),
                   .mean = sum / (double)count,
                   .puff = point(sorted, count, 0.9)};
}

// Swing of a forecast at the height where the day's wind is read.
//
//     puff / mean - 1 = (G(T_g / 2) - 1) (g - 1) / (G(3 s) - 1),   lull = 2 mean - puff
//
// G: [wmo-1555] for the exposure, in ten minutes; g: gust / mean as forecast, or G(3 s).
// A puff that the boat feels lasts about half the time from puff to puff.            [judged]
// The lull lies as far below the mean as the puff above it, and never under a fifth of the mean:
// no table of lulls was found, and the wind's swings about its mean are nearly even.  [judged]
// Leaves out   that gusts, in m/s, are nearly as strong at 2 m as at 10 m: carried down by the
//              log law with the mean, the puff's excess comes out about a seventh small.
static swing swing_of_forecast(const lw_day *day)
{
    const lw_forecast *forecast = &day->forecast;
    const double mean = lw_wind_at(forecast->mean, forecast->height, day->wind.height);
    const double G_3 = lw_wind_puff_factor(day->exposure, 3.0);
    const double G = lw_wind_puff_factor(day->exposure, 0.5 * day->wind.period);
    const double g = forecast->gust > 0.0 ? forecast->gust / forecast->mean : G_3;
    const double excess = (G - 1.0) * (g - 1.0) / (G_3 - 1.0);
    return (swing){
        .lull = mean * fmax(1.0 - excess, 0.2), .mean = mean, .puff = mean * (1.0 + excess)};
}

static bool readings_are_winds(const lw_day *day)
{
    for (size_t i = 0; i < day->reading_count; i++) {
        if (!(day->readings[i] >= 0.0 && day->readings[i] < 100.0)) return false;
    }
    return true;
}

// First sentence that is true of the day's wind, or NULL.
static const char *fault_of(const lw_day *day, bool has_swing)
{
    const lw_forecast *forecast = &day->forecast;
    const bool has_readings = day->reading_count > 0;
    const int given = has_swing + day->has_forecast + has_readings;
    if (given == 0)
        return "no wind is given: write lull, mean and puff, or readings, or a forecast";
    if (given > 1)
        return "wind is given twice: keep lull, mean and puff, or readings, or a forecast";
    if (!(day->wind.height > 0.0)) return "the height at which the wind is read must be above zero";
    if (has_readings && day->reading_count < READINGS_LEAST) return "three readings are the least";
    if (!readings_are_winds(day)) return "a reading is not a wind speed";
    const bool has_all = day->wind.lull > 0.0 && day->wind.mean > 0.0 && day->wind.puff > 0.0;
    if (has_swing && !has_all) return "lull, mean and puff go together: one is missing, or zero";
    if (!day->has_forecast) return NULL;
    if (!(forecast->mean > 0.0 && forecast->height > 0.0)) {
        return "the forecast needs a mean wind and its height";
    }
    return NULL;
}

bool lw_day_settle(lw_day *day, const char **why)
{
    lw_wind *wind = &day->wind;
    const bool has_numbers = wind->lull > 0.0 || wind->mean > 0.0 || wind->puff > 0.0;
    const bool has_swing = day->has_wind && has_numbers;
    *why = fault_of(day, has_swing);
    if (*why) return false;

    swing found = {wind->lull, wind->mean, wind->puff};
    if (day->reading_count > 0) found = swing_of_readings(day);
    if (day->has_forecast) found = swing_of_forecast(day);
    if (!(found.mean > 0.0)) {
        *why = "there is no wind at all";
        return false;
    }
    const lw_wind given = *wind;
    wind->lull = found.lull, wind->mean = found.mean, wind->puff = found.puff;
    const lw_order *failing = lw_order_failing(&lw_day_record, day);
    if (!failing) return true;
    *wind = given;
    *why = failing->why;
    return false;
}
