// strut_limits.c - ventilated struts: side force, and the angles between which they stay so.
// SPDX-License-Identifier: MIT

#include "foil/ventilation/strut_limits.h"

#include <math.h>

#include "foil/ventilation/ventilated_strut.h"

double lw_ventilation_number(double depth, double speed)
{
    return 2.0 * LW_GRAVITY * depth / (speed * speed);
}

double lw_ventilated_side(double aspect, double number, double angle)
{
    return lw_strut_ventilated(lw_all(aspect), lw_all(number), lw_all(angle))[0];
}

double lw_ventilation_washout(double aspect, double number)
{
    return lw_strut_washout(lw_all(aspect), lw_all(number))[0];
}

#define SMALL 0.3   // [rad] most angles sought are below
#define FINE  1e-7  // [rad]

// Ends between which the angle lies, and how much each is off; which one moved last: -1 the high.
typedef struct ends {
    lw_lanes low, high, below, above, moved;
} ends;

// False position whose end that stays put counts for half of what it is [dowell-jarratt-1971].
LW_INLINE void close_in(lw_mask where, lw_lanes x, lw_lanes off, ends *e)
{
    const lw_mask is_high = where & (off > 0.0), is_low = where & ~(off > 0.0);
    const lw_lanes half_below = lw_select(e->moved < 0.0, 0.5 * e->below, e->below);
    const lw_lanes half_above = lw_select(e->moved > 0.0, 0.5 * e->above, e->above);
    e->high = lw_select(is_high, x, e->high), e->low = lw_select(is_low, x, e->low);
    e->above = lw_select(is_high, off, lw_select(is_low, half_above, e->above));
    e->below = lw_select(is_low, off, lw_select(is_high, half_below, e->below));
    e->moved = lw_select(is_high, lw_all(-1.0), lw_select(is_low, lw_all(1.0), e->moved));
}

// How much more the ventilated coefficient is at an angle than that of washout. Not inlined: it is
// asked in three places.
__attribute__((noinline)) LW_CLONES static void off_at(const lw_lanes *aspect,
                                                       const lw_lanes *number, const lw_lanes *x,
                                                       lw_lanes *off)
{
    *off = lw_strut_ventilated(*aspect, *number, *x) - lw_strut_washout(*aspect, *number);
}

// Angle at which they are the same.
LW_CLONES void lw_ventilation_stays(const lw_lanes *aspect, const lw_lanes *number, lw_lanes *stays)
{
    const lw_lanes none = lw_all(0.0), small = lw_all(SMALL), most = lw_all(0.5 * LW_PI);
    lw_lanes off_none, off, off_most, at;
    off_at(aspect, number, &none, &off_none);
    off_at(aspect, number, &small, &off);
    off_at(aspect, number, &most, &off_most);
    const lw_mask is_large = off <= 0.0;
    ends e = {lw_select(is_large, small, none), lw_select(is_large, most, small),
              lw_select(is_large, off, off_none), lw_select(is_large, off_most, off), none};
    lw_mask is_found = is_large & (off_most <= 0.0);
    lw_lanes found = most;
    for (int i = 0; i < 40; i++) {
        const lw_mask seeks = ~is_found & (e.high - e.low > FINE);
        if (!lw_any(seeks)) break;
        const lw_lanes x = e.low - e.below * (e.high - e.low) / (e.above - e.below);
        off_at(aspect, number, &x, &at);
        const lw_mask hits = seeks & (lw_lanes_abs(at) < 1e-12);
        found = lw_select(hits, x, found);
        is_found |= hits;
        close_in(seeks & ~hits, x, at, &e);
    }
    *stays = lw_select(is_found, found, 0.5 * (e.low + e.high));
}

lw_ventilation lw_ventilation_at(double stays)
{
    return (lw_ventilation){.forms = fmax(14.5 * LW_DEG, stays),
                            .forms_least = stays,
                            .forms_most = fmax(25.0 * LW_DEG, stays),
                            .stays = stays,
                            .stays_least = 0.8 * stays,
                            .stays_most = 1.3 * stays};
}

lw_ventilation lw_ventilation_of(double aspect, double number)
{
    const lw_lanes A = lw_all(aspect), sigma = lw_all(number);
    lw_lanes stays;
    lw_ventilation_stays(&A, &sigma, &stays);
    return lw_ventilation_at(stays[0]);
}

bool lw_ventilated_next(const lw_ventilation *limit, bool ventilated, double angle)
{
    return fabs(angle) > (ventilated ? limit->stays : limit->forms);
}
