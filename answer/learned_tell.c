// learned_tell.c - what was learned of a boat, told as it is kept in its file.
// SPDX-License-Identifier: MIT

#include "answer/learned.h"
#include "answer/words/number_text.h"

void lw_learned_tell_value(lw_teller *t, const lw_quantity *row, double si, const char *sign)
{
    char number[LW_CELL_LENGTH], text[LW_CELL_LENGTH];
    const double shown = si / lw_unit_in_si(row->unit);
    lw_cell_number(number, shown, row->decimals, false);
    LW_FIT(text, "%s%s%s", sign, number, lw_unit_behind(row->unit));
    lw_tell_number_as(t, NULL, shown, text);
}

static void tell_values(const lw_learned_boat *learned, lw_teller *t)
{
    static const lw_item columns[] = {
        {"key", NULL, LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
        {"value", "learned", LW_AS_NUMBER, LW_UNIT_NONE, 3, NULL},
        {"error", "", LW_AS_NUMBER, LW_UNIT_NONE, 3, NULL},
        {"what", "what", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
    };
    lw_tell_table(t, "learned", "", columns, LW_COUNT_OF(columns));
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) {
        const lw_quantity *row = &lw_hidden_table.rows[k];
        lw_tell_row(t);
        lw_tell_text(t, NULL, row->key);
        lw_learned_tell_value(t, row, lw_quantity_value(row, &learned->values), "");
        lw_learned_tell_value(t, row, lw_quantity_value(row, &learned->errors), "± ");
        lw_tell_text(t, NULL, row->doc);
    }
    lw_tell_end(t);
}

void lw_learned_tell(const void *it, lw_teller *t)
{
    const lw_learned_told *told = it;
    const lw_learned_boat *learned = told->learned;
    char text[300];
    LW_FIT(text, "%s, from %.0f days with %.0f numbers; with one standard error. %s", learned->boat,
           learned->from.days, learned->from.numbers,
           told->is_hers ? "All answers of this page take it."
                         : "It is of another boat than the one on Today, or of her measured "
                           "otherwise: it is left out.");
    lw_tell_sentence(t, "says", text);
    lw_tell_flag(t, "is_hers", told->is_hers);
    tell_values(learned, t);
}
