// margin_text.c - margins in the sailor's words, and the order in which they run out.
// SPDX-License-Identifier: MIT

#include "answer/words/margin_text.h"

#include "answer/words/number_text.h"

// clang-format off
// In the order of lw_margins.
static const struct { const char *name, *end; } words[] = {
    {"flap travel, up",              "flap at its up stop"},
    {"flap travel, down",            "flap at its down stop"},
    {"wand travel, forward",         "wand at its forward stop"},
    {"main foil's higher tip", "main foil's tip in the chop"},
    {"rudder foil's higher tip",     "rudder foil's tip in the chop"},
    {"hull above the water",         "hull in the water"},
    {"pressure to cavitation",       "cavitation"},
    {"main foil to stall",           "main foil stalls"},
    {"rudder foil to stall",         "rudder foil stalls"},
    {"struts to ventilation",        "air runs down a strut"},
    {"rudder blade angle",           "rudder blade hard over"},
    {"rudder turns left",            "rudder thread at its end"},
    {"windward heel in hand",        "windward heel lost"},
    {"sail power to take off",       "no more sail power to take off"},
    {"balance",                      "no steady balance"},
};
// clang-format on
_Static_assert(sizeof words / sizeof words[0] == LW_MARGIN_COUNT + 1, "every margin has its words");

const char *lw_margin_name(size_t row) { return words[row].name; }
const char *lw_margin_end(size_t row) { return words[row].end; }

const char *lw_margin_key(size_t row)
{
    return row < LW_MARGIN_COUNT ? lw_margins_table.rows[row].key : NULL;
}

void lw_margins_order(const lw_margins *margins, size_t order[LW_MARGIN_COUNT])
{
    lw_margins left = *margins;
    for (size_t i = 0; i < LW_MARGIN_COUNT; i++) {
        order[i] = lw_margins_first(&left);
        lw_quantity_put(&lw_margins_table.rows[order[i]], &left, 1e9);
    }
}

// clang-format off
static const lw_item columns[] = {
    {"margin", NULL,   LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"name",   "",     LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"left",   "",     LW_AS_NUMBER, LW_UNIT_NONE, 2, NULL},
    {"unit",   NULL,   LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"scales", NULL,   LW_AS_NUMBER, LW_UNIT_NONE, 1, NULL},
    {"end",    "",     LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
};
// clang-format on

// Each has a unit of its own, so that what is left goes in as it is told.
static void tell_margin(lw_teller *t, const lw_margins *margins, size_t i)
{
    char shown[LW_CELL_LENGTH];
    const lw_quantity *row = &lw_margins_table.rows[i];
    const double left = lw_quantity_value(row, margins);
    lw_cell_value(shown, row, margins);
    lw_tell_row(t);
    lw_tell_text(t, NULL, row->key);
    lw_tell_text(t, NULL, lw_margin_name(i));
    lw_tell_number_as(t, NULL, lw_quantity_shown(row, margins), shown);
    lw_tell_text(t, NULL, lw_unit_sign(row->unit));
    lw_tell_number(t, NULL, left / lw_margins_scale(i));
    lw_tell_text(t, NULL, left < 0.0 ? lw_margin_end(i) : NULL);
}

void lw_tell_margins(lw_teller *t, const lw_margins *margins, bool is_shown)
{
    size_t order[LW_MARGIN_COUNT];
    lw_margins_order(margins, order);
    lw_tell_table(t, "margins", is_shown ? "Margins left" : NULL, columns, LW_COUNT_OF(columns));
    for (size_t i = 0; i < LW_MARGIN_COUNT; i++) tell_margin(t, margins, order[i]);
    lw_tell_end(t);
}
