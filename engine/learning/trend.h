// trend.h - how what rides tell moves with the hidden quantities: evened over winds and pins,
// because two rides that differ a little soon differ by chance.
// SPDX-License-Identifier: MIT

#ifndef LW_TREND_H
#define LW_TREND_H

#include "lullwise/learning.h"

// From what was ridden beside what was thought: for each row and quantity the line over the wind,
// steeper in light winds, that is nearest to half of `more` less `less`.
void lw_trend_put(lw_learning *learning);

// [SI] a row's change with one error of a quantity.
double lw_trend_slope(const lw_trend *trend, size_t row, size_t quantity, double wind);

#endif
