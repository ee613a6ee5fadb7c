// compare.c - what differs between the rankings of two slots, once both were asked for theirs.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "answer/compare/compare.h"
#include "answer/parcel.h"
#include "answer/pick/pick.h"
#include "web/page.h"

LW_EXPORT(lw_web_compare) void lw_web_compare(size_t length)
{
    const char *label = lw_web_room(length), *other = label + strlen(label) + 1;
    const lw_pick *as_is = lw_web_asked(0, &lw_question_pick);
    const lw_pick *changed = lw_web_asked(1, &lw_question_pick);
    lw_parcel_begin();
    if (!as_is || !changed) return;
    lw_teller teller = lw_parcel_teller(lw_web_slots[0].speed_unit);
    lw_tell_compared(&teller, lw_side_of(&as_is->as_is, label), lw_side_of(&changed->as_is, other));
    lw_teller_finish(&teller);
}
