// medium.c - what surrounds the boat on a day.
// SPDX-License-Identifier: MIT

#include "lullwise/medium.h"

#include "medium/air.h"
#include "medium/water.h"
#include "medium/wind.h"

lw_medium lw_medium_of(const lw_day *day)
{
    return (lw_medium){
        .water_density = lw_water_density(day->water),
        .water_viscosity = lw_water_viscosity(day->water),
        .vapour_pressure = lw_vapour_pressure(day->water),
        .air_density = lw_air_density(day->air),
        .air_pressure = day->air.pressure,
        .wind_height = day->wind.height,
        .fetch = day->sea.fetch,
        .wave_height = day->sea.height,
        .wave_period = day->sea.period,
        .wave_from = day->sea.from,
        .wave_spread = day->sea.spread,
    };
}

lw_wave lw_medium_wave(const lw_medium *medium, double wind)
{
    const double flat_period = 2.0;
    const double U_10 = lw_wind_at(wind, medium->wind_height, 10.0);
    lw_wave sea = lw_wave_of_fetch(U_10, medium->fetch);
    if (medium->wave_height > 0.0) {
        sea.height = medium->wave_height;
        sea.period = lw_wave_period_of_height(U_10, sea.height);
    }
    if (medium->wave_period > 0.0) sea.period = medium->wave_period;
    if (!(sea.period > 0.0)) sea.period = flat_period;
    return sea;
}
