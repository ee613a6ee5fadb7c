// wind_text.c - how lull, mean and puff came of what a day gives of its wind.
// SPDX-License-Identifier: MIT

#include "answer/words/wind_text.h"

#include "answer/words/number_text.h"
#include "records/fault.h"

static void of_readings(const lw_day *day, char text[LW_WIND_ORIGIN])
{
    lw_text_fit(text, LW_WIND_ORIGIN,
                "From %zu readings: one in ten is below the lull, one in ten above the puff; the "
                "mean is their average.",
                day->reading_count);
}

// "gusts 18.0 kn", as forecast or by the exposure.
static void fit_gusts(const lw_day *day, lw_unit unit, char text[100])
{
    if (day->forecast.gust > 0.0)
        lw_text_fit(text, 100, "gusts %s", LW_SPEED_TEXT(day->forecast.gust, 1, unit));
    else
        lw_text_fit(text, 100, "gusts by the exposure (%s)", day->exposure);
}

static void of_forecast(const lw_day *day, lw_unit unit, char text[LW_WIND_ORIGIN])
{
    const lw_wind *wind = &day->wind;
    const double above = wind->puff / wind->mean - 1.0, below = 1.0 - wind->lull / wind->mean;
    char gusts[100];
    fit_gusts(day, unit, gusts);
    lw_text_fit(text, LW_WIND_ORIGIN,
                "From a forecast of %s at %.0f m, %s: mean %s at %.1f m. A puff that lasts %.0f s, "
                "half the time from puff to puff, is %.0f %% above the mean: %s. A lull is taken "
                "to be %.0f %% below it: %s.",
                LW_SPEED_TEXT(day->forecast.mean, 1, unit), day->forecast.height, gusts,
                LW_SPEED_TEXT(wind->mean, 1, unit), wind->height, 0.5 * wind->period, 100.0 * above,
                LW_SPEED_TEXT(wind->puff, 1, unit), 100.0 * below,
                LW_SPEED_TEXT(wind->lull, 1, unit));
}

bool lw_wind_origin(const lw_day *day, lw_unit speed_unit, char text[LW_WIND_ORIGIN])
{
    const lw_unit unit = lw_speed_unit(speed_unit);
    text[0] = '\0';
    if (day->has_forecast)
        of_forecast(day, unit, text);
    else if (day->reading_count > 0)
        of_readings(day, text);
    return text[0] != '\0';
}
