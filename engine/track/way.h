// way.h - angles and times along a track that several of its files use.
// SPDX-License-Identifier: MIT

#ifndef LW_TRACK_WAY_H
#define LW_TRACK_WAY_H

#include <math.h>

#include "lullwise/track.h"

#define SLOW (2.0 * LW_KN)  // [m/s] under way from here on  [judged]

// An angle within -pi to pi, and within 0 to 2 pi.
static inline double turn_within(double angle)
{
    return angle - 2.0 * LW_PI * floor(angle / (2.0 * LW_PI) + 0.5);
}

static inline double turn_around(double angle)
{
    const double around = angle - 2.0 * LW_PI * floor(angle / (2.0 * LW_PI));
    return around < 2.0 * LW_PI ? around : 0.0;
}

#endif
