// heads.c - what the columns of a sweep are called.
// SPDX-License-Identifier: MIT

#include "sweep/written.h"

static bool add_unit(char head[LW_HEAD_TEXT], const char *unit)
{
    if (unit[0]) lw_text_add(head, LW_HEAD_TEXT, " [%s]", unit);
    return true;
}

static bool name_it(char head[LW_HEAD_TEXT], const char *name)
{
    lw_text_fit(head, LW_HEAD_TEXT, "%s", name);
    return true;
}

static bool name_over(const lw_over *over, char head[LW_HEAD_TEXT])
{
    return name_it(head, over->key) && add_unit(head, over->unit);
}

static bool head_of_point(const lw_sweep *sweep, size_t k, char head[LW_HEAD_TEXT], bool *is_text)
{
    *is_text = false;
    if (k == 0) return name_it(head, "point");
    if (--k < sweep->sought_count) return name_over(&sweep->sought[k].over, head);
    if (sweep->sought_count && (k -= sweep->sought_count) == 0) return name_it(head, "seed");
    if (sweep->sought_count) k--;
    if (k == sweep->over_count) return name_it(head, "draw");
    *is_text = !sweep->overs[k].is_number;
    return name_over(&sweep->overs[k], head);
}

bool lw_sweep_head(const lw_sweep *sweep, size_t k, char head[LW_HEAD_TEXT], bool *is_text)
{
    const size_t sought = sweep->sought_count ? sweep->sought_count + 1 : 0;
    const size_t own = 1 + sought + sweep->over_count + (sweep->draws > 0);
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
