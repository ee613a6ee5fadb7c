// words.c - causes in the sailor's words, with how far.
// SPDX-License-Identifier: MIT

#include "answer/why/why.h"
#include "answer/words/move_text.h"
#include "records/fault.h"

void lw_why_cause(const lw_why *why, const lw_cause *cause, char text[LW_WHY_LENGTH])
{
    const lw_lever_row *row = lw_lever_of(cause->lever);
    const lw_pin *pins = why->inputs->boat.pins;
    const char *what = cause->is_more ? row->too_much : row->too_little;
    const bool is_told = why->found.told.pin == cause->stance.pin && why->known.has_pin;
    if (cause->lever != LW_LEVER_PIN) {
        lw_text_fit(text, LW_WHY_LENGTH, "%s, by about %s", what,
                    LW_LEVER_AMOUNT(cause->lever, cause->off));
    } else if (is_told) {
        lw_text_fit(text, LW_WHY_LENGTH, "%s: it is %s, and pin %s fits it best", what,
                    pins[cause->stance.pin].label, pins[why->scene.proper].label);
    } else {
        lw_text_fit(text, LW_WHY_LENGTH, "%s, as pin %s has", what, pins[cause->stance.pin].label);
    }
}
