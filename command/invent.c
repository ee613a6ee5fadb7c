// invent.c - `lullwise invent`: a question that writes a folder.
// SPDX-License-Identifier: MIT

#include "answer/invent/invent.h"
#include "command/command.h"

const lw_command lw_command_invent = {
    .operands = "FOLDER",
    .operand_least = 1,
    .operand_most = 1,
    .question = &lw_question_invent,
    .is_behind = true,
};
