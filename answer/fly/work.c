// work.c - the answer of `lullwise fly` worked out.
// SPDX-License-Identifier: MIT

#include "answer/asked_flight.h"
#include "answer/fly/fly.h"

bool lw_fly_begin(void *it, const lw_inputs *inputs, const lw_options *options, lw_refusal *refusal)
{
    lw_fly *fly = it;
    fly->speed_unit = options->speed_unit;
    return lw_asked_flight(&fly->flown, inputs, options, refusal) &&
           lw_asked_number(options, "width", (lw_bounds){0}, &fly->width, refusal);
}

size_t lw_fly_steps(void *it)
{
    const lw_fly *fly = it;
    return fly->has_flight && fly->flown.answer.outcome != LW_FLIES ? 2 : 1;
}

void lw_fly_step(void *it, size_t step)
{
    lw_fly *fly = it;
    if (step == 0) {
        fly->flown.asks_most = true;
        lw_flown_answer(&fly->flown);
        fly->has_flight = true;
    } else {
        lw_flown_range(&fly->flown);
        fly->has_range = true;
    }
}

bool lw_fly_is_answered(const void *it)
{
    return ((const lw_fly *)it)->flown.answer.outcome != LW_NO_BALANCE;
}
