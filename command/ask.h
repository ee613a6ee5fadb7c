// ask.h - a question of answer/ asked on the command line.
// SPDX-License-Identifier: MIT

#ifndef LW_ASK_H
#define LW_ASK_H

#include "answer/question.h"
#include "command/command.h"

// Reads boat, sailor and day, does the steps with progress, and tells the answer as text or JSON.
lw_exit lw_ask_question(const lw_question *question, const lw_options *options);

#endif
