// gusts.c - the winds of a day in another mean wind.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/outlook.h"

lw_gusts lw_gusts_at(lw_gusts gusts, double mean)
{
    const double share = gusts.mean > 0.0 ? fmax(mean, 0.0) / gusts.mean : 0.0;
    return (lw_gusts){share * gusts.lull, share * gusts.mean, share * gusts.puff, gusts.period};
}
