// sailed.c - what a range is sailed with in a mean wind: flight and turns.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/range.h"

double lw_range_wind(int i) { return (LW_RANGE_FIRST_KN + i) * LW_KN; }

lw_range_interval lw_range_interval_of(double wind)
{
    const double at = wind / LW_KN - LW_RANGE_FIRST_KN;
    const int below = (int)fmin(fmax(floor(at), 0.0), LW_RANGE_WINDS - 2.0);
    return (lw_range_interval){below, fmin(fmax(at - below, 0.0), 1.0)};
}

int lw_range_nearest(double wind)
{
    const double at = floor(wind / LW_KN + 0.5) - LW_RANGE_FIRST_KN;
    return (int)fmin(fmax(at, 0.0), LW_RANGE_WINDS - 1.0);
}

// The nearest knot of which a claim is true, the lower first; NULL: none.
static const lw_range_point *nearest(const lw_range *range, double wind,
                                     bool claim(const lw_answer *))
{
    const lw_range_point *best = NULL;
    for (int i = 0; i < LW_RANGE_WINDS; i++) {
        const lw_range_point *point = &range->at[i];
        if (!claim(&point->trimmed)) continue;
        if (!best || fabs(point->wind - wind) < fabs(best->wind - wind)) best = point;
    }
    return best;
}

const lw_range_point *lw_range_sailed(const lw_range *range, double wind)
{
    const lw_range_point *kept = nearest(range, wind, lw_answer_is_kept);
    return kept ? kept : nearest(range, wind, lw_answer_is_up);
}

double lw_range_turns(const lw_range *range, double wind)
{
    const lw_range_interval in = lw_range_interval_of(wind);
    const lw_range_point *a = &range->at[in.below], *b = &range->at[in.below + 1];
    if (!lw_answer_is_kept(&a->trimmed) || !lw_answer_is_kept(&b->trimmed)) {
        const lw_range_point *sailed = lw_range_sailed(range, wind);
        return sailed ? sailed->trimmed.flight.turns : 0.0;
    }
    const double from = a->trimmed.flight.turns;
    return from + in.part * (b->trimmed.flight.turns - from);
}
