// compare.c - what differs between the two slots, in sentences, once both have their ranking.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "answer/compare/compare.h"
#include "web/page.h"
#include "web/parcel.h"

LW_EXPORT(lw_web_compare) void lw_web_compare(size_t length)
{
    const char *label = lw_web_room(length), *other = label + strlen(label) + 1;
    const lw_picked *as_is = &lw_web_slots[0].picked, *changed = &lw_web_slots[1].picked;
    lw_parcel_begin();
    if (as_is->now.count == 0 || changed->now.count == 0) return;
    lw_teller teller = lw_parcel_teller(as_is->speed_unit);
    lw_tell_compared(&teller, lw_side_of(as_is, label), lw_side_of(changed, other));
    lw_teller_finish(&teller);
}
