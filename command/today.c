// today.c - the day on this computer's clock.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L  // localtime_r

#include "command/today.h"

#include <stddef.h>
#include <time.h>

const char *lw_today(void)
{
    static char text[16];
    const time_t now = time(NULL);
    struct tm at;
    if (!localtime_r(&now, &at) || !strftime(text, sizeof text, "%Y-%m-%d", &at)) return NULL;
    return text;
}
