// within.h - a number kept between two bounds.
// SPDX-License-Identifier: MIT

#ifndef LW_WITHIN_H
#define LW_WITHIN_H

// low where x is no number. Not by fmin and fmax, which gcc calls as functions.
static inline double lw_within(double x, double low, double high)
{
    const double most = x > low ? x : low;
    return most < high ? most : high;
}

#endif
