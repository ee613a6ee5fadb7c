// learned.c - what was learned of a boat, put into a slot.
// SPDX-License-Identifier: MIT

#include "answer/learned.h"
#include "answer/parcel.h"
#include "web/page.h"

LW_EXPORT(lw_web_learn) void lw_web_learn(int slot, size_t length)
{
    lw_web_slot *now = &lw_web_slots[slot];
    const lw_source_text source = {"", lw_web_room(length), length};
    lw_learned_boat learned;
    lw_faults faults = {0};
    const bool is_sound = lw_source_is_clean(&source, &faults) &&
                          lw_record_read_text(&lw_learned_record, &source, &learned, &faults);
    const lw_learned_told told = {&learned,
                                  is_sound && lw_learned_is_of(&learned, &now->inputs.boat)};
    lw_parcel_begin();
    lw_parcel_truth("is_sound", is_sound);
    lw_parcel_faults(&faults);
    lw_faults_free(&faults);
    if (!is_sound) return;
    if (told.is_hers) lw_hidden_put(&learned.values, &now->inputs);
    now->changes++;
    lw_teller teller = lw_parcel_teller(now->speed_unit);
    lw_parcel_object("told");
    lw_learned_tell(&told, &teller);
    lw_teller_finish(&teller);
    lw_parcel_end();
}
