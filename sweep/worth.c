// worth.c - what the lines of a point are worth to who seeks hardware.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "sweep/written.h"

static bool is_named(const char *head, const char *name)
{
    const size_t length = strlen(name);
    return strncmp(head, name, length) == 0 && (head[length] == '\0' || head[length] == ' ');
}

static size_t column_of(const lw_sweep *sweep, const char *name)
{
    char head[LW_HEAD_TEXT];
    bool is_text;
    size_t k = 1 + sweep->sought_count + sweep->over_count;  // behind the point's own
    while (lw_sweep_head(sweep, k, head, &is_text) && !is_named(head, name)) k++;
    return k;
}

double lw_sweep_worth_of(const lw_sweep *sweep, const char *lines)
{
    const lw_sweep_worth *worth = sweep->answer->worth;
    const size_t column = column_of(sweep, worth->column[sweep->course]);
    const char *at = lines, *cell;
    size_t length, k = 0;
    double most = NAN;
    for (char end = LW_LINE_END; end;) {
        end = lw_lines_cell(&at, &cell, &length);
        if (k == column && length)
            most = fmax(most, worth->sign[sweep->course] * strtod(cell, NULL));
        k = end == LW_LINE_END ? 0 : k + 1;
    }
    return most * lw_unit_in_si(worth->unit);
}
