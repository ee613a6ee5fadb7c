// dual.h - inside the section folder: a number with its slopes along the four unknowns of a
// station.
// SPDX-License-Identifier: MIT

#ifndef LW_DUAL_H
#define LW_DUAL_H

#include "solve/four.h"

// A station's unknowns, in the order of slopes.
enum { LW_BY_THETA, LW_BY_SHAPE, LW_BY_SPEED, LW_BY_THIRD };

typedef struct lw_dual {
    double at;
    lw_four by;
} lw_dual;

LW_INLINE lw_dual lw_dual_constant(double at) { return (lw_dual){at, (lw_four){0.0}}; }

LW_INLINE lw_dual lw_dual_plus(lw_dual a, lw_dual b) { return (lw_dual){a.at + b.at, a.by + b.by}; }

LW_INLINE lw_dual lw_dual_less(lw_dual a, lw_dual b) { return (lw_dual){a.at - b.at, a.by - b.by}; }

LW_INLINE lw_dual lw_dual_times(lw_dual a, lw_dual b)
{
    return (lw_dual){a.at * b.at, a.at * b.by + b.at * a.by};
}

LW_INLINE lw_dual lw_dual_over(lw_dual a, lw_dual b)
{
    const double per = 1.0 / b.at, at = a.at * per;
    return (lw_dual){at, per * (a.by - at * b.by)};
}

// a x + b
LW_INLINE lw_dual lw_dual_line(double a, lw_dual x, double b)
{
    return (lw_dual){a * x.at + b, a * x.by};
}

// A function of x, with its value and slope there.
LW_INLINE lw_dual lw_dual_of(double value, double slope, lw_dual x)
{
    return (lw_dual){value, slope * x.by};
}

LW_INLINE lw_dual lw_dual_square(lw_dual x) { return lw_dual_of(x.at * x.at, 2.0 * x.at, x); }

LW_INLINE lw_dual lw_dual_root(lw_dual x)
{
    const double root = __builtin_sqrt(x.at);
    return lw_dual_of(root, 0.5 / root, x);
}

LW_INLINE lw_dual lw_dual_more(lw_dual a, lw_dual b) { return a.at > b.at ? a : b; }
LW_INLINE lw_dual lw_dual_at_least(lw_dual a, double b)
{
    return a.at > b ? a : lw_dual_constant(b);
}
LW_INLINE lw_dual lw_dual_at_most(lw_dual a, double b)
{
    return a.at < b ? a : lw_dual_constant(b);
}

#endif
