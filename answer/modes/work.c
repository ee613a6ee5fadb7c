// work.c - the answer of `lullwise modes` worked out.
// SPDX-License-Identifier: MIT

#include "answer/modes/modes.h"

#include "answer/asked_flight.h"

bool lw_disturbed_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                        lw_refusal *refusal)
{
    return lw_asked_flight(&((lw_disturbed *)it)->flown, inputs, options, refusal);
}

void lw_disturbed_find(lw_disturbed *disturbed)
{
    const lw_flown *flown = &disturbed->flown;
    const lw_motion motion = lw_motion_of(&flown->craft);
    const lw_ride_plan plan = lw_ride_plan_of(&motion, &flown->ask, &flown->answer);
    lw_modes_of(&motion, &plan, LW_HANDS_SAILING, &disturbed->sailed);
    lw_modes_of(&motion, &plan, LW_HANDS_STILL, &disturbed->alone);
    disturbed->gearing = plan.setup.gearing;
    if (flown->answer.outcome == LW_FLIES)
        disturbed->margin = lw_wand_margin_of(&motion, &plan, LW_HANDS_SAILING);
}

void lw_disturbed_end(void *it)
{
    lw_disturbed *disturbed = it;
    lw_flown_answer(&disturbed->flown);
    if (lw_disturbed_is_answered(it)) lw_disturbed_find(disturbed);
}

bool lw_disturbed_is_answered(const void *it)
{
    return ((const lw_disturbed *)it)->flown.answer.outcome != LW_NO_BALANCE;
}
