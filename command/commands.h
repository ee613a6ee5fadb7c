// commands.h - the commands of the lullwise program, the questions among them.
// SPDX-License-Identifier: MIT

#ifndef LW_COMMANDS_H
#define LW_COMMANDS_H

#include "command/command.h"

// In the order of the help; no name behind the last.
lw_command lw_command_at(size_t i);

// No name: there is none.
lw_command lw_command_named(const char *name);

#endif
