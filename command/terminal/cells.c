// cells.c - what was told and is drawn together: a table, or a block of members.
// SPDX-License-Identifier: MIT

#include "command/terminal/cells.h"

#include <stdlib.h>
#include <string.h>

#include "command/terminal/print.h"
#include "records/utf8.h"

#define APART      2   // spaces between columns
#define TEXT_LEAST 24  // a last column is wrapped to no less
#define HANG       2   // of a sentence's lines after its first, where it is all that is shown

// Without memory the rest is not kept, and shows as nothing.
void lw_cells_add(lw_cells *cells, const char *text)
{
    if (cells->count == cells->room) {
        const size_t room = 2 * cells->room + 64;
        char **texts = realloc(cells->texts, room * sizeof *texts);
        if (!texts) return;
        cells->texts = texts, cells->room = room;
    }
    const size_t size = strlen(text) + 1;
    char *copy = malloc(size);
    if (copy) memcpy(copy, text, size);
    cells->texts[cells->count++] = copy;
}

void lw_cells_clear(lw_cells *cells)
{
    for (size_t i = 0; i < cells->count; i++) free(cells->texts[i]);
    free(cells->texts);
    *cells = (lw_cells){0};
}

static const char *text_at(const lw_cells *cells, size_t i)
{
    return i < cells->count && cells->texts[i] ? cells->texts[i] : "";
}

static size_t wide_of(const char *text) { return lw_utf8_count(text, strlen(text)); }

static size_t wider(size_t wide, const char *text)
{
    const size_t it = wide_of(text);
    return it > wide ? it : wide;
}

static void draw_spaces(FILE *out, size_t count) { fprintf(out, "%*s", (int)count, ""); }

// --- a table

typedef struct drawing {
    FILE *out;
    const lw_cells *cells;
    const lw_item *columns;
    size_t count, rows, last;  // last: the rightmost column shown
    size_t wide[LW_TABLE_COLUMNS_MOST];
    bool is_text[LW_TABLE_COLUMNS_MOST];
    size_t indent, apart;
    bool is_lone;   // one column is shown
    bool is_below;  // the last column stands on lines of its own
} drawing;

static bool is_shown(const drawing *d, size_t column) { return d->columns[column].head != NULL; }

static const char *unit_under(const lw_item *column)
{
    return column->form == LW_AS_BARE ? lw_unit_sign(column->unit) : "";
}

static void measure(drawing *d)
{
    size_t shown = 0;
    for (size_t c = 0; c < d->count; c++) {
        if (!is_shown(d, c)) continue;
        const lw_item *column = &d->columns[c];
        d->is_lone = shown++ == 0;
        d->last = c;
        d->is_text[c] = column->form == LW_AS_ERROR || column->form == LW_AS_TEXT;
        d->wide[c] = wider(wide_of(column->head), unit_under(column));
        for (size_t r = 0; r < d->rows; r++) {
            d->wide[c] = wider(d->wide[c], text_at(d->cells, r * d->count + c));
        }
    }
}

static size_t gap_before(const drawing *d, size_t column)
{
    if (column == 0 || d->columns[column].form == LW_AS_ERROR) return column > 0;
    return d->apart;
}

// Where a column begins.
static size_t begin_of(const drawing *d, size_t column)
{
    size_t at = d->indent;
    bool is_first = true;
    for (size_t c = 0; c <= column; c++) {
        if (!is_shown(d, c)) continue;
        if (!is_first) at += gap_before(d, c);
        if (c < column) at += d->wide[c];
        is_first = false;
    }
    return at;
}

// The text of the last column, wrapped.
static void draw_last(const drawing *d, const char *text, size_t from, size_t column)
{
    if (d->is_below) {
        fputc('\n', d->out);
        from = d->indent + (size_t)2 * APART, column = 0;
    }
    draw_spaces(d->out, from - column);
    lw_print_wrapped(d->out, text, from, d->is_lone ? from + HANG : from);
}

static void draw_cell(const drawing *d, size_t c, const char *text, size_t *column)
{
    const size_t begin = begin_of(d, c), wide = wide_of(text);
    const size_t from = d->is_text[c] || wide > d->wide[c] ? begin : begin + d->wide[c] - wide;
    if (!text[0]) return;
    if (c == d->last && d->is_text[c]) {
        draw_last(d, text, from, *column);
        *column = 0;
        return;
    }
    draw_spaces(d->out, from > *column ? from - *column : 0);
    fputs(text, d->out);
    *column = from + wide;
}

static void draw_line(const drawing *d, const char *(*text_of)(const drawing *, size_t, size_t),
                      size_t row)
{
    size_t column = 0;
    bool is_ended = false;
    for (size_t c = 0; c < d->count; c++) {
        if (!is_shown(d, c)) continue;
        const char *text = text_of(d, row, c);
        draw_cell(d, c, text, &column);
        is_ended = c == d->last && d->is_text[c] && text[0];
    }
    if (!is_ended) fputc('\n', d->out);
}

static const char *cell_text(const drawing *d, size_t row, size_t c)
{
    return text_at(d->cells, row * d->count + c);
}

static const char *head_text(const drawing *d, size_t row, size_t c)
{
    return row ? unit_under(&d->columns[c]) : d->columns[c].head;
}

static bool has_line(const drawing *d, size_t row)
{
    for (size_t c = 0; c < d->count; c++) {
        if (is_shown(d, c) && head_text(d, row, c)[0]) return true;
    }
    return false;
}

// Where the last column ends, at the least.
static size_t end_of(const drawing *d)
{
    const bool is_wrapped = d->is_text[d->last] && d->wide[d->last] > TEXT_LEAST;
    return begin_of(d, d->last) + (is_wrapped ? TEXT_LEAST : d->wide[d->last]);
}

// Whether columns stand close: there is no room else, or the last text need not be wrapped then.
static bool is_tight(const drawing *d, size_t width)
{
    drawing close = *d;
    close.apart = 1;
    const size_t wide = d->wide[d->last];
    if (end_of(d) > width) return true;
    return begin_of(d, d->last) + wide > width && begin_of(&close, d->last) + wide <= width;
}

void lw_cells_draw_table(FILE *out, const lw_cells *cells, const lw_item *columns, size_t count,
                         size_t indent)
{
    drawing d = {.out = out,
                 .cells = cells,
                 .columns = columns,
                 .count = count,
                 .rows = cells->count / count,
                 .indent = indent,
                 .apart = APART};
    measure(&d);
    if (is_tight(&d, lw_print_width(out))) d.apart = 1;
    d.is_below = d.is_text[d.last] && !d.is_lone && end_of(&d) > lw_print_width(out);
    for (size_t line = 0; line < 2; line++) {
        if (has_line(&d, line)) draw_line(&d, head_text, line);
    }
    for (size_t row = 0; row < d.rows; row++) draw_line(&d, cell_text, row);
}

// --- a block of members

#define TWO_FROM 6  // members: fewer stand one below the other
#define BETWEEN  4  // spaces between the two columns

typedef struct strip {
    size_t from, to;  // members
    size_t name, value;
} strip;

static strip strip_of(const lw_cells *cells, size_t from, size_t to)
{
    strip s = {from, to, 0, 0};
    for (size_t i = from; i < to; i++) {
        s.name = wider(s.name, text_at(cells, 2 * i));
        s.value = wider(s.value, text_at(cells, 2 * i + 1));
    }
    return s;
}

static size_t wide_of_strip(const strip *s) { return s->name + APART + s->value; }

// One member; nothing when the strip has no such line. True when something was drawn.
static bool draw_member(FILE *out, const lw_cells *cells, const strip *s, size_t line)
{
    const size_t i = s->from + line;
    if (i >= s->to) return false;
    const char *name = text_at(cells, 2 * i), *value = text_at(cells, 2 * i + 1);
    fputs(name, out);
    draw_spaces(out, wide_of_strip(s) - wide_of(name) - wide_of(value));
    fputs(value, out);
    return true;
}

// Values first, where names are too long to stand before them.
static void draw_turned(FILE *out, const lw_cells *cells, const strip *s, size_t indent)
{
    const size_t begin = indent + s->value + APART;
    for (size_t i = s->from; i < s->to; i++) {
        const char *name = text_at(cells, 2 * i), *value = text_at(cells, 2 * i + 1);
        draw_spaces(out, indent + s->value - wide_of(value));
        fputs(value, out);
        draw_spaces(out, APART);
        lw_print_wrapped(out, name, begin, begin);
    }
}

void lw_cells_draw_members(FILE *out, const lw_cells *cells, size_t indent)
{
    const size_t count = cells->count / 2, half = (count + 1) / 2;
    strip left = strip_of(cells, 0, half), right = strip_of(cells, half, count);
    const size_t wide = indent + wide_of_strip(&left) + BETWEEN + wide_of_strip(&right);
    if (count < TWO_FROM || wide > lw_print_width(out)) {
        left = strip_of(cells, 0, count);
        right = (strip){0};
    }
    if (indent + wide_of_strip(&left) > lw_print_width(out)) {
        draw_turned(out, cells, &left, indent);
        return;
    }
    for (size_t line = 0; line < left.to; line++) {
        draw_spaces(out, indent);
        draw_member(out, cells, &left, line);
        if (right.from + line < right.to) draw_spaces(out, BETWEEN);
        draw_member(out, cells, &right, line);
        fputc('\n', out);
    }
}
