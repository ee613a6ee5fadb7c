// browser.c - shows an address in the browser, where there is one.
// SPDX-License-Identifier: MIT

#define _GNU_SOURCE  // POSIX_SPAWN_SETSID

#include "desk/browser.h"

#include <fcntl.h>
#include <signal.h>
#include <spawn.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

extern char **environ;

static const char *value_of(const char *name)
{
    const char *value = getenv(name);
    return value ? value : "";
}

// In a session of its own, so that Ctrl-C at the desk leaves it, and silent.
static bool start(char *program, char *address)
{
    char *words[] = {program, address, NULL};
    posix_spawn_file_actions_t files;
    posix_spawnattr_t manner;
    sigset_t usual;
    pid_t child;
    if (posix_spawn_file_actions_init(&files) != 0) return false;
    if (posix_spawnattr_init(&manner) != 0) {
        posix_spawn_file_actions_destroy(&files);
        return false;
    }
    sigemptyset(&usual);
    sigaddset(&usual, SIGCHLD);
    sigaddset(&usual, SIGPIPE);
    posix_spawnattr_setsigdefault(&manner, &usual);
    posix_spawnattr_setflags(&manner, POSIX_SPAWN_SETSID | POSIX_SPAWN_SETSIGDEF);
    for (int fd = 0; fd <= 2; fd++) {
        posix_spawn_file_actions_addopen(&files, fd, "/dev/null", O_RDWR, 0);
    }
    signal(SIGCHLD, SIG_IGN);  // nobody waits for it
    const bool is_started = posix_spawnp(&child, program, &files, &manner, words, environ) == 0;
    posix_spawn_file_actions_destroy(&files);
    posix_spawnattr_destroy(&manner);
    return is_started;
}

bool lw_browser_show(const char *address)
{
    char program[1000], word[100];
    if (!value_of("DISPLAY")[0] && !value_of("WAYLAND_DISPLAY")[0]) return false;
    // A list with ":" between; the first is what its owner likes best.
    const char *list = value_of("BROWSER")[0] ? value_of("BROWSER") : "xdg-open";
    snprintf(program, sizeof program, "%.*s", (int)strcspn(list, ":"), list);
    snprintf(word, sizeof word, "%s", address);
    return start(program, word);
}
