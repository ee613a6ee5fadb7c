// program.h - runs the lullwise program and looks at what it said and how it ended.
// SPDX-License-Identifier: MIT
//
// Define _POSIX_C_SOURCE as 200809L before the first include.

#ifndef LW_TEST_PROGRAM_H
#define LW_TEST_PROGRAM_H

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/wait.h>

#define ANSWER_LENGTH 200000

static char answer[ANSWER_LENGTH];  // of the last run, standard output and error together

// Runs `lullwise WORDS` by the shell: the exit status, or -1 when it did not end by itself.
static inline int lullwise(const char *words)
{
    char line[4000];
    snprintf(line, sizeof line, "'%s' %s 2>&1", LW_PROGRAM, words);
    FILE *pipe = popen(line, "r");
    if (!pipe) return -1;
    const size_t length = fread(answer, 1, sizeof answer - 1, pipe);
    answer[length] = '\0';
    const int status = pclose(pipe);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

static inline int answer_has(const char *text) { return strstr(answer, text) != NULL; }

#endif
