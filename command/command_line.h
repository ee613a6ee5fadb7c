// command_line.h - the words of a command line sorted into options and files; the help on them.
// SPDX-License-Identifier: MIT

#ifndef LW_COMMAND_LINE_H
#define LW_COMMAND_LINE_H

#include <stdio.h>

#include "answer/options.h"

// Sorts the words behind the command's name. `takes`: the names of the options allowed, spaces
// between. False, after a message on standard error, when a word fits nothing.
bool lw_command_line_read(lw_options *options, const char *takes, int count, char *const *words);

// The options allowed, one paragraph each, within 80 columns.
void lw_command_line_help(FILE *out, const char *takes);

#endif
