// takes.h - which options a command takes.
// SPDX-License-Identifier: MIT

#ifndef LW_TAKES_H
#define LW_TAKES_H

#include <stdbool.h>
#include <string.h>

// Whether a name is among words with spaces between.
static inline bool lw_takes(const char *takes, const char *name)
{
    const size_t length = strlen(name);
    for (const char *at = takes; at && (at = strstr(at, name)); at += length) {
        const bool begins = at == takes || at[-1] == ' ';
        if (begins && (at[length] == ' ' || at[length] == '\0')) return true;
    }
    return false;
}

#endif
