// sensitivity.c - which measurement the choice depends on most, one measurement a call.
// SPDX-License-Identifier: MIT

#include "lullwise/sensitivity.h"

#include <stdlib.h>

#include "answer/words/sections.h"
#include "web/page.h"
#include "web/parcel.h"

static lw_sensing sensing;  // of the slot asked last
static lw_outlook *scratch;

LW_EXPORT(lw_web_sense) void lw_web_sense(int slot)
{
    const lw_picked *picked = &lw_web_slots[slot].picked;
    if (!scratch) scratch = malloc(sizeof *scratch);
    if (!scratch) abort();
    lw_outlook_end(picked->outlook);
    lw_sensing_begin(&sensing, picked->outlook, scratch, lw_sections_kept());
    lw_parcel_begin();
    lw_parcel_truth("flies", sensing.found.flies);
    lw_parcel_number("count", (double)sensing.found.count);
    lw_parcel_number("anew", LW_SEARCHED_ANEW);
    if (!sensing.found.flies) return;
    lw_parcel_text("pin", lw_picked_label(picked, sensing.found.pin));
    lw_parcel_number("held_up_to", sensing.found.held_up_to);
    lw_parcel_number("seconds", sensing.found.seconds);
}

LW_EXPORT(lw_web_sense_row) void lw_web_sense_row(int slot, int row, int is_anew)
{
    const lw_picked *picked = &lw_web_slots[slot].picked;
    const lw_sensitivity_row *found = &sensing.found.rows[row];
    lw_sensing_row(&sensing, (size_t)row, is_anew);
    lw_parcel_begin();
    lw_parcel_text("key", found->key);
    lw_parcel_number("row", row);
    lw_parcel_number("error", found->row->error);
    lw_parcel_text("unit", lw_unit_text(found->row->unit));
    lw_parcel_number("hold", found->hold);
    lw_parcel_number("seconds", found->seconds);
    lw_parcel_number("weight", found->weight);
    const int first = found->first_instead;
    lw_parcel_text("first_instead", first < 0 ? "" : lw_picked_label(picked, (size_t)first));
}
