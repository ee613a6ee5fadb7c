// held_work.c - the answer of `lullwise hold` worked out.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "command/held.h"
#include "command/picked.h"
#include "command/progress.h"

static void find_best(lw_held *held)
{
    held->has_best = false;
    for (size_t pin = 0; pin < held->picked.outlook->pin_count; pin++) {
        if (pin == held->pin) continue;
        const double saved = held->changes[pin].best_saved;
        if (held->has_best && saved <= held->changes[held->best].best_saved) continue;
        held->best = pin, held->has_best = true;
    }
}

void lw_held_work_out(lw_held *held)
{
    lw_outlook *outlook = held->picked.outlook;
    lw_picked_begin(&held->picked);
    outlook->effort = lw_effort_thorough();
    lw_picked_sail(&held->picked, "every pin on every leg, and rides");
    lw_picked_rank(&held->picked);
    lw_progress_over();
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        held->paces[pin] = lw_pace_of(outlook, pin, held->now, held->later);
    }
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        held->changes[pin] =
            lw_change_of(&held->paces[held->pin], &held->paces[pin], held->left, held->stop);
    }
    find_best(held);
}

bool lw_held_flies(const lw_held *held)
{
    for (size_t pin = 0; pin < held->picked.outlook->pin_count; pin++) {
        if (lw_way_rest(held->paces[pin].flying, 1.0, 0.0) > 0.0) return true;
    }
    return false;
}

double lw_held_swims(const lw_held *held, size_t pin, double *error)
{
    double swims[LW_SETS];
    for (int set = 0; set < LW_SETS; set++) {
        swims[set] = lw_way_rest(held->paces[pin].swims[set], held->left, 0.0);
    }
    *error = hypot(lw_jackknife(swims), lw_way_rest(held->paces[pin].unseen, held->left, 0.0));
    return swims[0];
}
