// choice.c - the day's outlook in steps, and the ranking as it is told.
// SPDX-License-Identifier: MIT

#include <stdlib.h>
#include <string.h>

#include "answer/pick/pick.h"
#include "answer/words/sections.h"
#include "web/page.h"
#include "web/parcel.h"

LW_EXPORT(lw_web_begin) int lw_web_begin(int slot)
{
    lw_picked *picked = &lw_web_slots[slot].picked;
    const lw_inputs *inputs = &picked->inputs;
    if (!lw_web_slots[slot].is_settled || inputs->boat.pin_count == 0) return 0;
    if (!picked->outlook) picked->outlook = malloc(sizeof *picked->outlook);
    if (!picked->outlook) abort();
    lw_outlook_begin(picked->outlook, &inputs->boat, lw_sections_of(&inputs->boat),
                     &inputs->sailor.person, &inputs->day);
    return (int)lw_outlook_steps(picked->outlook);
}

LW_EXPORT(lw_web_steps) int lw_web_steps(int slot)
{
    return (int)lw_outlook_steps(lw_web_slots[slot].picked.outlook);
}

LW_EXPORT(lw_web_forget) void lw_web_forget(int slot)
{
    lw_outlook_forget(lw_web_slots[slot].picked.outlook);
}

LW_EXPORT(lw_web_part_size) size_t lw_web_part_size(void) { return sizeof(lw_outlook_part); }

LW_EXPORT(lw_web_step) void lw_web_step(int slot, int step)
{
    lw_outlook *outlook = lw_web_slots[slot].picked.outlook;
    lw_outlook_part *to = (lw_outlook_part *)lw_web_room(sizeof *to);
    memset(to, 0, sizeof *to);
    lw_outlook_step(outlook, (size_t)step);
    lw_outlook_give(outlook, (size_t)step, to);
}

LW_EXPORT(lw_web_take) void lw_web_take(int slot, int step)
{
    const lw_outlook_part *from = (const lw_outlook_part *)lw_web_room(sizeof *from);
    lw_outlook_take(lw_web_slots[slot].picked.outlook, (size_t)step, from);
}

LW_EXPORT(lw_web_choice) void lw_web_choice(int slot)
{
    lw_picked *picked = &lw_web_slots[slot].picked;
    lw_outlook_end(picked->outlook);
    lw_picked_rank(picked);
    lw_parcel_begin();
    lw_teller teller = lw_parcel_teller(picked->speed_unit);
    lw_tell_picked(&teller, picked);
    lw_teller_finish(&teller);
}
