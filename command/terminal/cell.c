// cell.c - cells of a table on the terminal.
// SPDX-License-Identifier: MIT

#include "command/terminal/cell.h"

#include <string.h>

#include "records/utf8.h"

static int missing(const char *text, size_t width)
{
    const size_t wide = lw_utf8_count(text, strlen(text));
    return wide < width ? (int)(width - wide) : 0;
}

void lw_cell_left(FILE *out, const char *text, size_t width)
{
    fprintf(out, "%s%*s", text, missing(text, width), "");
}

size_t lw_cell_width(size_t least, const char *text)
{
    const size_t wide = lw_utf8_count(text, strlen(text));
    return wide > least ? wide : least;
}
