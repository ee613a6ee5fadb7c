// lines.c - what a point of a sweep comes to: lines of cells, as one text.
// SPDX-License-Identifier: MIT

#include "sweep/lines.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "records/fault.h"

#define CELL_MOST 400
#define ENDS      "\x1f\x1e"

static void add(lw_lines *lines, const char *text, size_t length)
{
    if (lines->length + length + 1 > lines->room) {
        const size_t room = 2 * (lines->length + length + 1);
        char *more = realloc(lines->text, room);
        if (!more) {
            lines->is_short = true;
            return;
        }
        lines->text = more, lines->room = room;
    }
    memcpy(lines->text + lines->length, text, length);
    lines->length += length;
    lines->text[lines->length] = '\0';
}

void lw_lines_clear(lw_lines *lines)
{
    lines->length = 0;
    lines->has_line = lines->has_cell = lines->is_short = false;
    add(lines, "", 0);
}

void lw_lines_free(lw_lines *lines)
{
    free(lines->text);
    *lines = (lw_lines){0};
}

void lw_lines_begin(lw_lines *lines)
{
    if (lines->has_line) add(lines, (char[]){LW_LINE_END}, 1);
    lines->has_line = true, lines->has_cell = false;
}

void lw_lines_text(lw_lines *lines, const char *text)
{
    char tame[CELL_MOST];
    lw_text_tame(tame, sizeof tame, text);
    if (lines->has_cell) add(lines, (char[]){LW_CELL_END}, 1);
    lines->has_cell = true;
    add(lines, tame, strlen(tame));
}

void lw_lines_number(lw_lines *lines, double value)
{
    char text[40] = "";
    if (isfinite(value)) LW_FIT(text, "%.12g", value == 0.0 ? 0.0 : value);  // no -0
    lw_lines_text(lines, text);
}

char lw_lines_cell(const char **at, const char **cell, size_t *length)
{
    *cell = *at;
    *length = strcspn(*at, ENDS);
    const char end = (*at)[*length];
    *at += *length + (end != '\0');
    return end;
}
