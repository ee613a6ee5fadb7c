// pilot.c - a pilot's wishes by wind, and one set of gains for all.
// SPDX-License-Identifier: MIT

#include "lullwise/pilot.h"

double lw_wish_wind(double mean, int which)
{
    return mean * (LW_WISH_FIRST + LW_WISH_STEP * which);
}

void lw_gains_everywhere(lw_pilot *pilot, const lw_gains *gains)
{
    pilot->rest = pilot->rising = *gains;
    for (int k = 0; k < LW_WISHES; k++) pilot->wish[k].gains = *gains;
}
