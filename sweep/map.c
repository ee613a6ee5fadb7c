// map.c - one column of a sweep as a map over its two axes.
// SPDX-License-Identifier: MIT

#include <stdlib.h>
#include <string.h>

#include "picture/cells_picture.h"
#include "sweep/written.h"

typedef struct map {
    lw_store *store;
    size_t column;
    bool is_text;
} map;

// "held_up_to" of "held_up_to [kn]".
static bool is_named(const char *head, const char *name)
{
    const size_t length = strlen(name);
    return strncmp(head, name, length) == 0 && (head[length] == '\0' || head[length] == ' ');
}

static bool find(map *m, const char *name, char head[LW_HEAD_TEXT])
{
    for (m->column = 0; lw_sweep_head(m->store->sweep, m->column, head, &m->is_text); m->column++) {
        if (is_named(head, name)) return true;
    }
    LW_FIT(m->store->why, "--map %s: the table has no such column", name);
    return false;
}

static void cell_at(const void *it, size_t x, size_t y, char text[LW_CELLS_TEXT])
{
    const map *m = it;
    const char *at = lw_store_lines(m->store, x * m->store->sweep->overs[1].count + y), *cell = "";
    size_t length = 0;
    for (size_t k = 0; at && k <= m->column; k++) {
        if (lw_lines_cell(&at, &cell, &length) != LW_CELL_END && k < m->column) return;
    }
    if (m->is_text || length == 0)
        lw_text_fit(text, LW_CELLS_TEXT, "%.*s", (int)length, cell);
    else
        lw_text_fit(text, LW_CELLS_TEXT, "%.3g", strtod(cell, NULL));
}

static void along(const void *it, size_t axis, size_t i, char text[LW_CELLS_TEXT])
{
    char value[LW_OVER_TEXT];
    lw_over_value(&((const map *)it)->store->sweep->overs[axis], i, value);
    lw_text_fit(text, LW_CELLS_TEXT, "%s", value);
}

bool lw_sweep_write_map(lw_store *store, FILE *out)
{
    const lw_sweep *sweep = store->sweep;
    map m = {.store = store};
    bool is_text;
    char heads[2][LW_HEAD_TEXT], head[LW_HEAD_TEXT], title[2 * LW_HEAD_TEXT];
    const char *name = lw_options_text(sweep->options, "map");
    if (!find(&m, name ? name : sweep->answer->map, head)) return false;
    LW_FIT(title, "%s: %s", sweep->answer->name, head);
    for (size_t i = 0; i < 2; i++) lw_sweep_head(sweep, 1 + i, heads[i], &is_text);
    const lw_cells cells = {.columns = sweep->overs[0].count,
                            .rows = sweep->overs[1].count,
                            .x_label = heads[0],
                            .y_label = heads[1],
                            .title = title,
                            .are_words = m.is_text,
                            .it = &m,
                            .cell = cell_at,
                            .along = along};
    if (cells.columns <= LW_CELLS_MOST && cells.rows <= LW_CELLS_MOST) {
        lw_cells_draw(out, &cells);
        return true;
    }
    LW_FIT(store->why, "--svg: a map has %d values along each axis at most", LW_CELLS_MOST);
    return false;
}
