// terminal.c - the teller's face that draws text.
// SPDX-License-Identifier: MIT

#include "command/terminal/terminal.h"

#include <string.h>

#include "command/terminal/cells.h"
#include "command/terminal/print.h"

#define STEP       2   // spaces that each heading indents by
#define SHORT_MOST 24  // characters: a longer text of a member stands on lines of its own

static size_t block_indent(const lw_terminal *t) { return t->indent < STEP ? STEP : t->indent; }

// An empty line where another kind of block begins.
static void begin_block(lw_terminal *t, lw_drawn_block block)
{
    const bool follows_on = t->last == LW_BLOCK_NONE ||
                            (t->last == LW_BLOCK_HEADING && block != LW_BLOCK_HEADING) ||
                            (t->last == block && block != LW_BLOCK_TABLE);
    if (!follows_on) fputc('\n', t->out);
    t->last = block;
}

static void draw_members(lw_terminal *t)
{
    if (t->columns || t->cells.count == 0) return;
    begin_block(t, LW_BLOCK_MEMBERS);
    lw_cells_draw_members(t->out, &t->cells, block_indent(t));
    lw_cells_clear(&t->cells);
}

static void draw_text(lw_terminal *t, const char *before, const char *text, size_t indent)
{
    fprintf(t->out, "%*s%s", (int)indent, "", before);
    lw_print_wrapped(t->out, text, indent + strlen(before), indent + strlen(before));
}

static void draw_heading(lw_terminal *t, const char *head)
{
    begin_block(t, LW_BLOCK_HEADING);
    draw_text(t, "", head, t->indent);
    t->indent += STEP;
}

static void draw_figure(lw_terminal *t, const char *key)
{
    for (const lw_figure *f = t->figures; f && f->key; f++) {
        if (strcmp(f->key, key) != 0) continue;
        begin_block(t, LW_BLOCK_TABLE);
        f->draw(t->out, f->data);
    }
}

static void open(void *to, lw_branch branch, const char *key, const char *head)
{
    lw_terminal *t = to;
    t->depth++;
    if (!t->hidden && !head) t->hidden = t->depth;
    if (!head || t->hidden || branch == LW_ROW) return;
    draw_members(t);
    t->has_heading[t->depth] = head[0] != '\0';
    if (head[0]) draw_heading(t, head);
    draw_figure(t, key);
}

static void close_table(lw_terminal *t)
{
    if (t->cells.count) {
        begin_block(t, LW_BLOCK_TABLE);
        lw_cells_draw_table(t->out, &t->cells, t->columns, t->column_count, block_indent(t));
    }
    lw_cells_clear(&t->cells);
    t->columns = NULL;
}

static void close(void *to, lw_branch branch)
{
    lw_terminal *t = to;
    const size_t depth = t->depth--;
    if (t->hidden) {
        if (t->hidden == depth) t->hidden = 0;
        return;
    }
    if (branch == LW_ROW) return;
    if (branch == LW_TABLE) close_table(t);
    draw_members(t);
    if (!t->has_heading[depth]) return;
    t->indent -= STEP;
    t->last = LW_BLOCK_SECTION;
}

static void columns(void *to, const lw_item *items, size_t count)
{
    lw_terminal *t = to;
    if (t->hidden) return;
    t->columns = items, t->column_count = count;
}

static void add(lw_terminal *t, const lw_item *item, const char *shown)
{
    if (t->hidden) return;
    if (t->columns) {
        lw_cells_add(&t->cells, shown);
        return;
    }
    if (!item->head) return;
    lw_cells_add(&t->cells, item->head);
    lw_cells_add(&t->cells, shown);
}

static void number(void *to, const lw_item *item, double told, const char *shown)
{
    (void)told;
    add(to, item, shown);
}

static void truth(void *to, const lw_item *item, bool is_so)
{
    add(to, item, is_so ? "yes" : "no");
}

// A text with a name before it, on lines of its own.
static void draw_named(lw_terminal *t, const char *name, const char *text)
{
    char before[80];
    draw_members(t);
    begin_block(t, LW_BLOCK_PARAGRAPH);
    snprintf(before, sizeof before, "%.70s  ", name);
    draw_text(t, before, text, t->indent);
}

static void text(void *to, const lw_item *item, const char *words)
{
    lw_terminal *t = to;
    const bool is_in_list = item->key[0] == '\0';
    if (t->hidden || t->columns || !item->head) {
        add(t, item, words ? words : item->none ? item->none : "");
    } else if (!words) {
        return;
    } else if (strcmp(item->head, LW_NOTE) == 0) {
        draw_members(t);
        draw_text(t, "", words, t->last == LW_BLOCK_PARAGRAPH ? t->indent : block_indent(t));
    } else if (is_in_list) {
        draw_members(t);
        begin_block(t, LW_BLOCK_LIST);
        draw_text(t, "- ", words, block_indent(t));
    } else if (item->head[0] == '\0') {
        draw_members(t);
        begin_block(t, LW_BLOCK_PARAGRAPH);
        draw_text(t, "", words, t->indent);
    } else if (strlen(words) <= SHORT_MOST) {
        add(t, item, words);
    } else {
        draw_named(t, item->head, words);
    }
}

static const lw_teller_face face = {true, open, close, columns, number, text, truth};

void lw_terminal_tell(lw_tell *tell, const void *it, FILE *out, const lw_figure *figures)
{
    lw_terminal terminal = {.out = out, .figures = figures};
    lw_teller teller = lw_teller_of(&face, &terminal);
    tell(it, &teller);
    lw_teller_finish(&teller);
    draw_members(&terminal);
}
