// wind_text.h - how lull, mean and puff came of what a day gives of its wind.
// SPDX-License-Identifier: MIT

#ifndef LW_WIND_TEXT_H
#define LW_WIND_TEXT_H

#include "lullwise/day.h"

// Of a settled day, speeds in the unit (LW_UNIT_NONE: knots). False where all three are as given.
#define LW_WIND_ORIGIN 320
bool lw_wind_origin(const lw_day *day, lw_unit speed_unit, char text[LW_WIND_ORIGIN]);

#endif
