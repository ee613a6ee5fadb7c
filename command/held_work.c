// held_work.c - the answer of `lullwise hold` worked out.
// SPDX-License-Identifier: MIT

#include "command/held.h"
#include "command/picked.h"
#include "command/progress.h"

void lw_held_work_out(lw_held *held)
{
    lw_outlook *outlook = held->picked.outlook;
    lw_picked_begin(&held->picked);
    outlook->effort = lw_effort_thorough();
    lw_picked_sail(&held->picked, "every pin on every leg, and rides");
    lw_picked_rank(&held->picked);
    lw_progress_over();
    lw_hold_work_out(&held->hold, outlook);
}
