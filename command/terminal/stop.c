// stop.c - Ctrl-C ends long work with what there is.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "command/terminal/stop.h"

#include <signal.h>
#include <stddef.h>

static volatile sig_atomic_t is_wanted;

static void ask(int number)
{
    (void)number;
    is_wanted = 1;
}

void lw_stop_watch(void)
{
    struct sigaction action = {.sa_handler = ask, .sa_flags = (int)SA_RESETHAND};
    sigemptyset(&action.sa_mask);
    sigaction(SIGINT, &action, NULL);
}

bool lw_stop_wanted(void) { return is_wanted; }
