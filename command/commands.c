// commands.c - the commands of the lullwise program, the questions among them.
// SPDX-License-Identifier: MIT

#include "command/commands.h"

#include <string.h>

#define LW_AS_ENTRY(name) &lw_command_##name,
static const lw_command *const commands[] = {LW_COMMAND_LIST(LW_AS_ENTRY)};
#define COMMAND_COUNT (sizeof commands / sizeof commands[0])

// A command with what its question says of itself.
static lw_command as_asked(lw_command command)
{
    const lw_question *question = command.question;
    if (!question) return command;
    command.name = question->name;
    command.summary = question->summary;
    command.takes = question->takes;
    command.doc = question->doc;
    return command;
}

lw_command lw_command_at(size_t i)
{
    const lw_question *question;
    for (size_t k = 0; k < COMMAND_COUNT; k++) {
        if (commands[k]->is_behind) continue;
        if (i-- == 0) return as_asked(*commands[k]);
    }
    for (size_t k = 0; (question = lw_question_at(k)); k++) {
        if (i-- == 0) return as_asked((lw_command){.operands = "", .question = question});
    }
    for (size_t k = 0; k < COMMAND_COUNT; k++) {
        if (!commands[k]->is_behind) continue;
        if (i-- == 0) return as_asked(*commands[k]);
    }
    return (lw_command){0};
}

lw_command lw_command_named(const char *name)
{
    lw_command command;
    size_t i = 0;
    do command = lw_command_at(i++);
    while (command.name && strcmp(command.name, name) != 0);
    return command;
}
