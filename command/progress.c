// progress.c - one line on standard error that says what is being worked out, on a terminal only.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "command/progress.h"

#include <stdio.h>
#include <unistd.h>

#define BLANK "\r%70s\r"

void lw_progress(const char *what, size_t done, size_t all)
{
    if (isatty(fileno(stderr)) != 1) return;
    fprintf(stderr, BLANK "working out %.40s", "", what);
    if (all > 1) fprintf(stderr, " (%zu of %zu)", done + 1, all);
    fflush(stderr);
}

void lw_progress_over(void)
{
    if (isatty(fileno(stderr)) == 1) fprintf(stderr, BLANK, "");
}
