// progress.c - one line on standard error that says what is being worked out, on a terminal only.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "command/terminal/progress.h"

#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

// On a terminal that can go back to the start of a line.
static bool is_shown(void)
{
    const char *terminal = getenv("TERM");
    return isatty(fileno(stderr)) == 1 && !(terminal && strcmp(terminal, "dumb") == 0);
}

#define BLANK "\r%70s\r"

void lw_progress(const char *what, size_t done, size_t all)
{
    if (!is_shown()) return;
    fprintf(stderr, BLANK "working out %.40s", "", what);
    if (all > 1) fprintf(stderr, " (%zu of %zu)", done + 1, all);
    fflush(stderr);
}

void lw_progress_over(void)
{
    if (is_shown()) fprintf(stderr, BLANK, "");
}
