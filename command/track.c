// track.c - `lullwise track`: a question that is asked of files.
// SPDX-License-Identifier: MIT

#include "answer/track/track.h"
#include "command/command.h"

const lw_command lw_command_track = {
    .operands = "FILE...",
    .operand_least = 1,
    .operand_most = LW_GIVEN_MOST,
    .question = &lw_question_track,
    .is_behind = true,
};
