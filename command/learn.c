// learn.c - `lullwise learn`: a question that is asked of the logbook.
// SPDX-License-Identifier: MIT

#include "answer/learn/learn.h"
#include "command/command.h"

const lw_command lw_command_learn = {
    .operands = "",
    .question = &lw_question_learn,
    .is_behind = true,
};
