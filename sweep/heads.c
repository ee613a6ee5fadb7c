// heads.c - what the columns of a sweep are called.
// SPDX-License-Identifier: MIT

#include "sweep/written.h"

static bool add_unit(char head[LW_HEAD_TEXT], const char *unit)
{
    if (unit[0]) lw_text_add(head, LW_HEAD_TEXT, " [%s]", unit);
    return true;
}

static bool head_of_point(const lw_sweep *sweep, size_t k, char head[LW_HEAD_TEXT], bool *is_text)
{
    *is_text = false;
    if (k == 0) {
        lw_text_fit(head, LW_HEAD_TEXT, "point");
    } else if (k <= sweep->over_count) {
        const lw_over *over = &sweep->overs[k - 1];
        *is_text = !over->is_number;
        lw_text_fit(head, LW_HEAD_TEXT, "%s", over->key);
        add_unit(head, over->unit);
    } else {
        lw_text_fit(head, LW_HEAD_TEXT, "draw");
    }
    return true;
}

bool lw_sweep_head(const lw_sweep *sweep, size_t k, char head[LW_HEAD_TEXT], bool *is_text)
{
    const size_t own = 1 + sweep->over_count + (sweep->draws > 0);
    if (k < own) return head_of_point(sweep, k, head, is_text);
    const lw_sweep_column *column = sweep->answer->columns;
    for (k -= own; column->key || column->table; column++) {
        const size_t cells = column->table ? column->table->count : 1;
        if (k >= cells) {
            k -= cells;
            continue;
        }
        const lw_quantity *row = column->table ? &column->table->rows[k] : NULL;
        *is_text = column->is_text;
        lw_text_fit(head, LW_HEAD_TEXT, "%s", row ? row->key : column->key);
        return add_unit(head, lw_unit_text(row ? row->unit : column->unit));
    }
    return false;
}
