// compare.c - what differs between the two slots, in sentences, once both have their ranking.
// SPDX-License-Identifier: MIT

#include "answer/words/compared.h"

#include <string.h>

#include "web/page.h"
#include "web/parcel.h"

LW_EXPORT(lw_web_compare) void lw_web_compare(size_t length)
{
    char lines[LW_COMPARED_MOST][LW_REASON_LENGTH];
    const char *label = lw_web_room(length), *other = label + strlen(label) + 1;
    const lw_picked *as_is = &lw_web_slots[0].picked, *changed = &lw_web_slots[1].picked;
    lw_parcel_begin();
    if (as_is->now.count == 0 || changed->now.count == 0) return;
    const lw_side one = lw_side_of(as_is, label), two = lw_side_of(changed, other);
    const size_t count = lw_compared(one, two, lines);
    lw_parcel_text("as_is", lw_picked_label(as_is, one.place->pin));
    lw_parcel_text("changed", lw_picked_label(changed, two.place->pin));
    lw_parcel_list("differences");
    for (size_t i = 0; i < count; i++) lw_parcel_text("", lines[i]);
    lw_parcel_end();
}
