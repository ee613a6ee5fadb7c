// output_file.h - output that is written whole or not at all.
// SPDX-License-Identifier: MIT

#ifndef LW_OUTPUT_FILE_H
#define LW_OUTPUT_FILE_H

#include <stdbool.h>
#include <stdio.h>

// What is written goes to memory first.
typedef struct lw_output {
    FILE *stream;  // write here
    char *bytes;
    size_t length;
} lw_output;

// False when there is no memory.
bool lw_output_open(lw_output *output);

// Hands all of it over: to standard output (path NULL or "-"), or to a file, which is replaced
// only if `may_replace`. False with a sentence in *why, and no file touched, when that fails.
// Frees the memory either way.
bool lw_output_commit(lw_output *output, const char *path, bool may_replace, const char **why);

// Whether a file could be written, without touching it: what would be refused for its path is
// refused before any work. True for standard output; false with a sentence in *why.
bool lw_output_can(const char *path, bool may_replace, const char **why);

// Gives it up.
void lw_output_drop(lw_output *output);

#endif
