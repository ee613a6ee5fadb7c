// conditions.c - how like two days are.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/logged.h"
#include "lullwise/medium.h"
#include "medium/wind.h"

#define HEIGHT 3.0  // [m] that winds are carried to: the preset of where they are read

lw_conditions lw_conditions_of(const lw_wind *wind, const lw_sea *sea, double mass)
{
    const lw_medium medium = {.wind_height = wind->height,
                              .fetch = sea->fetch,
                              .wave_height = sea->height,
                              .wave_period = sea->period};
    return (lw_conditions){.lull = lw_wind_at(wind->lull, wind->height, HEIGHT),
                           .mean = lw_wind_at(wind->mean, wind->height, HEIGHT),
                           .puff = lw_wind_at(wind->puff, wind->height, HEIGHT),
                           .chop = lw_medium_wave(&medium, wind->mean).height,
                           .mass = mass};
}

// A step is about what makes a sailor think of another pin.  [judged]
static const lw_conditions steps = {
    .lull = 2.0 * LW_KN, .mean = 2.0 * LW_KN, .puff = 2.0 * LW_KN, .chop = 0.10, .mass = 8.0};

double lw_conditions_step(size_t row)
{
    return lw_quantity_value(&lw_conditions_table.rows[row], &steps);
}

double lw_conditions_apart(const lw_conditions *a, const lw_conditions *b)
{
    double sum = 0.0;
    for (size_t i = 0; i < lw_conditions_table.count; i++) {
        const lw_quantity *row = &lw_conditions_table.rows[i];
        const double apart =
            (lw_quantity_value(row, a) - lw_quantity_value(row, b)) / lw_conditions_step(i);
        if (!isnan(apart)) sum += apart * apart;
    }
    return sqrt(sum);
}
