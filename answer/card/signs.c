// signs.c - what the boat does, and the first change of trim: as a card has room for.
// SPDX-License-Identifier: MIT

#include "answer/card/card.h"

// Common practice, no source.
static const lw_card_sign list[] = {
    {"bow up, stern low", "rudder lift on"},
    {"bow down", "rudder lift off"},
    {"rises bodily, wand at its stop", "less of both"},
    {"bow down and still rising", "pin with less lift"},
};

size_t lw_card_signs(const lw_carded *card, const lw_card_sign **signs)
{
    (void)card;
    *signs = list;
    return LW_COUNT_OF(list);
}

const char *lw_card_signs_source(void) { return "common practice, no source"; }
