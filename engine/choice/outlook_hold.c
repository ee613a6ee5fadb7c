// outlook_hold.c - up to what puffs a pin is held on a course, and what ends it there.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/outlook.h"

static double margins_hold(const lw_range *range)
{
    return range->has_hold && range->held_up_to >= range->stays_up_at ? range->held_up_to : 0.0;
}

// By rides; no bound where the greatest wind that was ridden in is bearable.
static double rides_hold(const lw_outlook *outlook, size_t pin, size_t course)
{
    const lw_swims *swims = &outlook->swims[pin][course];
    const lw_ride_hold hold = lw_swims_hold(swims, &outlook->weather);
    return swims->is_known && hold.has_end ? hold.puff : INFINITY;
}

double lw_outlook_hold(const lw_outlook *outlook, size_t pin, size_t course)
{
    const lw_range *range = &outlook->ranges[pin][course];
    const double held = fmin(margins_hold(range), rides_hold(outlook, pin, course));
    return held >= range->stays_up_at ? held : 0.0;
}

bool lw_outlook_hold_ends_by_rides(const lw_outlook *outlook, size_t pin, size_t course)
{
    const double margins = margins_hold(&outlook->ranges[pin][course]);
    return margins > 0.0 && rides_hold(outlook, pin, course) < margins;
}

size_t lw_outlook_hardest(const lw_outlook *outlook, size_t pin)
{
    size_t hardest = 0;
    for (size_t c = 1; c < outlook->course_count; c++) {
        if (lw_outlook_hold(outlook, pin, c) < lw_outlook_hold(outlook, pin, hardest)) hardest = c;
    }
    return hardest;
}
