// hold_pins.c - every pin weighed against the one in the boat.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/hold.h"

static void find_best(lw_hold *hold)
{
    hold->has_best = false;
    for (size_t pin = 0; pin < hold->pin_count; pin++) {
        if (pin == hold->pin) continue;
        const double saved = hold->changes[pin].best_saved;
        if (hold->has_best && saved <= hold->changes[hold->best].best_saved) continue;
        hold->best = pin, hold->has_best = true;
    }
}

void lw_hold_work_out(lw_hold *hold, const lw_outlook *outlook)
{
    hold->pin_count = outlook->pin_count;
    for (size_t pin = 0; pin < hold->pin_count; pin++) {
        hold->paces[pin] = lw_pace_of(outlook, pin, hold->now, hold->later);
    }
    for (size_t pin = 0; pin < hold->pin_count; pin++) {
        hold->changes[pin] =
            lw_change_of(&hold->paces[hold->pin], &hold->paces[pin], hold->left, hold->stop);
    }
    find_best(hold);
}

double lw_hold_flying(const lw_hold *hold, size_t pin)
{
    return lw_way_rest(hold->paces[pin].flying, 1.0, 0.0);
}

bool lw_hold_flies(const lw_hold *hold)
{
    for (size_t pin = 0; pin < hold->pin_count; pin++) {
        if (lw_hold_flying(hold, pin) > 0.0) return true;
    }
    return false;
}

double lw_hold_unsure(double error, double spread) { return sqrt(error * error + spread * spread); }

double lw_hold_swims(const lw_hold *hold, size_t pin, double *error)
{
    const lw_pace *pace = &hold->paces[pin];
    double swims[LW_SETS];
    for (int set = 0; set < LW_SETS; set++) {
        swims[set] = lw_way_rest(pace->swims[set], hold->left, 0.0);
    }
    *error = lw_hold_unsure(lw_jackknife(swims), lw_way_rest(pace->unseen, hold->left, 0.0));
    return swims[0];
}

double lw_hold_swims_an_hour(const lw_hold *hold, size_t pin, double *error)
{
    const double swims = lw_hold_swims(hold, pin, error);
    const double hours = lw_way_rest(hold->paces[pin].seconds[0], hold->left, 0.0) / 3600.0;
    *error /= hours;
    return swims / hours;
}

double lw_hold_wind(const lw_hold *hold, double after)
{
    return hold->now + after / hold->left * (hold->later - hold->now);
}

double lw_hold_puff(const lw_hold *hold, double puff) { return puff * hold->later / hold->now; }

bool lw_hold_is_beyond_rides(const lw_hold *hold)
{
    return hold->later > LW_RIDE_MOST * hold->now || hold->later < LW_RIDE_LEAST * hold->now;
}

double lw_hold_course(const lw_day *day)
{
    double length = 0.0;
    for (size_t i = 0; i < day->leg_count; i++) length += day->legs[i].length;
    return length;
}
