// words.c - causes and moves in the sailor's words, with how far.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/why/why.h"
#include "answer/words/number_text.h"
#include "records/fault.h"

// "2.0 turns", "10 cm", "0.05", "10 %": how far a lever is off or moved, without a sign.
static const char *amount(char text[LW_CELL_LENGTH], lw_lever lever, double si)
{
    const lw_quantity *row = &lw_levers_table.rows[lever];
    const double by = fabs(si);
    if (lever == LW_LEVER_SAIL || lever == LW_LEVER_WIND)
        return lw_measure_text(text, by, 0, LW_UNIT_PERCENT);
    if (row->unit == LW_UNIT_M) return lw_measure_text(text, by, 0, LW_UNIT_CM);
    return lw_measure_text(text, by, row->decimals, row->unit);
}
#define AMOUNT(lever, si) amount((char[LW_CELL_LENGTH]){0}, (lever), (si))

void lw_why_cause(const lw_why *why, const lw_cause *cause, char text[LW_WHY_LENGTH])
{
    const lw_lever_row *row = lw_lever_of(cause->lever);
    const lw_pin *pins = why->inputs->boat.pins;
    const char *what = cause->is_more ? row->too_much : row->too_little;
    const bool is_told = why->found.told.pin == cause->stance.pin && why->known.has_pin;
    if (cause->lever != LW_LEVER_PIN) {
        lw_text_fit(text, LW_WHY_LENGTH, "%s, by about %s", what, AMOUNT(cause->lever, cause->off));
    } else if (is_told) {
        lw_text_fit(text, LW_WHY_LENGTH, "%s: it is %s, and pin %s fits it best", what,
                    pins[cause->stance.pin].label, pins[why->scene.proper].label);
    } else {
        lw_text_fit(text, LW_WHY_LENGTH, "%s, as pin %s has", what, pins[cause->stance.pin].label);
    }
}

void lw_why_move(const lw_why *why, const lw_remedy *remedy, char text[LW_WHY_LENGTH])
{
    const lw_lever_row *row = lw_lever_of(remedy->lever);
    const char *what = remedy->is_more ? row->more : row->less;
    if (remedy->lever != LW_LEVER_PIN) {
        lw_text_fit(text, LW_WHY_LENGTH, "%s by %s", what, AMOUNT(remedy->lever, remedy->by));
        return;
    }
    lw_text_fit(text, LW_WHY_LENGTH, "%s: %s", what,
                why->inputs->boat.pins[remedy->after.pin].label);
    if (fabs(remedy->turns) < 0.25) return;
    lw_text_add(text, LW_WHY_LENGTH, ", with rudder lift wound %s by %s",
                remedy->turns > 0.0 ? "on" : "off", AMOUNT(LW_LEVER_TURNS, remedy->turns));
}
