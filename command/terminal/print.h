// print.h - text within 80 columns, and faults as a person reads them.
// SPDX-License-Identifier: MIT

#ifndef LW_PRINT_H
#define LW_PRINT_H

#include <stdio.h>

#include "records/fault.h"

#define LW_PRINT_WIDTH 80

// Columns there are: those of the page, or of a narrower terminal, which COLUMNS may tell too.
size_t lw_print_width(FILE *out);

// Words wrapped at that width; lines after the first begin at `indent`. `column` is where the first
// word stands. Ends with a newline.
void lw_print_wrapped(FILE *out, const char *text, size_t column, size_t indent);

// True when `out` is a terminal that shows colours and NO_COLOR is not set.
bool lw_print_has_colour(FILE *out);

// Each with its place, its key, what is wrong, what was read and what was expected.
void lw_print_faults(FILE *out, const lw_faults *faults);

// One fault about what stands on the command line: "lullwise check: ...", wrapped.
void lw_print_complaint(const char *command, const char *format, ...)
    __attribute__((format(printf, 2, 3)));

#endif
