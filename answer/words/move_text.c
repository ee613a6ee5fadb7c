// move_text.c - what to move, and how far, in the sailor's words.
// SPDX-License-Identifier: MIT

#include "answer/words/move_text.h"

#include <math.h>

#include "answer/words/number_text.h"
#include "records/fault.h"

const char *lw_lever_amount(char text[LW_MOVE_LENGTH], lw_lever lever, double si)
{
    const lw_quantity *row = &lw_levers_table.rows[lever];
    const double by = fabs(si);
    if (lever == LW_LEVER_SAIL || lever == LW_LEVER_WIND)
        return lw_measure_text(text, by, 0, LW_UNIT_PERCENT);
    if (row->unit == LW_UNIT_M) return lw_measure_text(text, by, 0, LW_UNIT_CM);
    return lw_measure_text(text, by, row->decimals, row->unit);
}

// The turns that a change of pin takes with it, after the words for winding.
static void add_turns(const lw_remedy *remedy, const char *winding, char text[LW_MOVE_LENGTH])
{
    if (fabs(remedy->turns) < LW_TURNS_UNTOLD) return;
    lw_text_add(text, LW_MOVE_LENGTH, ", %s %s by %s", winding, remedy->turns > 0.0 ? "on" : "off",
                LW_LEVER_AMOUNT(LW_LEVER_TURNS, remedy->turns));
}

static void add_place(const lw_remedy *remedy, char text[LW_MOVE_LENGTH])
{
    const double place = remedy->after.levers.place - remedy->before.levers.place;
    if (fabs(place) < LW_PLACE_UNTOLD) return;
    lw_text_add(text, LW_MOVE_LENGTH, ", sitting %s further %s",
                LW_LEVER_AMOUNT(LW_LEVER_PLACE, place), place > 0.0 ? "forward" : "aft");
}

void lw_move_text(const lw_boat *boat, const lw_remedy *remedy, char text[LW_MOVE_LENGTH])
{
    const lw_lever_row *row = lw_lever_of(remedy->lever);
    const char *what = remedy->is_more ? row->more : row->less;
    if (remedy->lever != LW_LEVER_PIN) {
        lw_text_fit(text, LW_MOVE_LENGTH, "%s by %s", what,
                    LW_LEVER_AMOUNT(remedy->lever, remedy->by));
        return;
    }
    lw_text_fit(text, LW_MOVE_LENGTH, "%s: %s", what, boat->pins[remedy->after.pin].label);
    add_turns(remedy, "with rudder lift wound", text);
    add_place(remedy, text);
}

void lw_move_text_brief(const lw_boat *boat, const lw_remedy *remedy, char text[LW_MOVE_LENGTH])
{
    if (remedy->lever != LW_LEVER_PIN) {
        lw_move_text(boat, remedy, text);
        return;
    }
    lw_text_fit(text, LW_MOVE_LENGTH, "pin %s", boat->pins[remedy->after.pin].label);
    add_turns(remedy, "rudder lift", text);
}
