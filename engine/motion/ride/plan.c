// plan.c - a plan from a balance: where to begin, and a pilot who suits the boat there.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "motion/initial.h"
#include "motion/sailor/set_up.h"

#define PATIENCE 2.0  // [s] in which a steady miss is worked off  [judged]

lw_ride_plan lw_ride_plan_with(const lw_motion *motion, const lw_ask *ask, const lw_answer *answer,
                               const lw_wishes *wishes)
{
    lw_ride_plan plan;
    memset(&plan, 0, sizeof plan);
    plan.setup = ask->setup;
    plan.wind = ask->wind;
    plan.place = ask->place;
    plan.starts_aloft = answer->outcome == LW_FLIES;
    plan.start = lw_initial_state(motion, ask, answer);
    plan.pilot = (lw_pilot){.wind = ask->wind, .patience = 1.0 / PATIENCE};
    for (int k = 0; k < LW_WISHES; k++) plan.pilot.rudder[k] = plan.start.rudder;
    for (int k = 0; k < LW_WISHES; k++) {
        plan.pilot.wish[k] = (lw_wish){.heel = plan.start.heel,
                                       .bow = plan.start.bow,
                                       .helm = plan.start.helm,
                                       .pitch = plan.start.pitch};
    }
    lw_pilot_set_up(motion, ask, wishes, &plan);
    if (answer->outcome == LW_NO_BALANCE) plan.start = plan.rest;
    return plan;
}

lw_ride_plan lw_ride_plan_of(const lw_motion *motion, const lw_ask *ask, const lw_answer *answer)
{
    const lw_wishes wishes = lw_wishes_of(motion, ask, answer);
    return lw_ride_plan_with(motion, ask, answer, &wishes);
}

void lw_ride_plan_wind(lw_ride_plan *plan, const lw_craft *craft, const lw_range *range)
{
    for (int k = 0; k < LW_WISHES; k++) {
        const double turns = lw_range_turns(range, lw_wish_wind(plan->pilot.wind, k));
        plan->pilot.rudder[k] = lw_craft_rudder(craft, turns);
    }
}
