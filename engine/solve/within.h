// within.h - a number kept between two bounds.
// SPDX-License-Identifier: MIT

#ifndef LW_WITHIN_H
#define LW_WITHIN_H

#include <math.h>

static inline double lw_within(double x, double low, double high)
{
    return fmin(fmax(x, low), high);
}

#endif
