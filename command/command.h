// command.h - what a command of the lullwise program is: a question (answer/), or one of its own.
// SPDX-License-Identifier: MIT

#ifndef LW_COMMAND_H
#define LW_COMMAND_H

#include "answer/question.h"

// clang-format off
// Those that are no questions, in the order of the help. X(check) stands for `const lw_command
// lw_command_check` in check.c.
#define LW_COMMAND_LIST(X) \
    X(new)                 \
    X(check)               \
    X(track)               \
    X(desk)                \
    X(log)                 \
    X(sweep)               \
    X(learn)               \
    X(invent)              \
    X(quantities)
// clang-format on

// How a command ends.
typedef enum lw_exit {
    LW_EXIT_FINE = 0,
    LW_EXIT_NO_ANSWER = 1,    // all was read, but there is none; or it could not be written
    LW_EXIT_WRONG_INPUT = 2,  // options, files or values
} lw_exit;

typedef struct lw_command {
    const char *name;
    const char *summary;   // one line of the help
    const char *operands;  // as the usage shows them: "FILE..."; "" when there are none
    size_t operand_least, operand_most;
    const char *takes;  // options by name, spaces between: "json set"; --help always
    const char *doc;    // the help's paragraph
    lw_exit (*run)(const lw_options *options);
    const lw_question *question;  // or NULL: it is run; it has name, summary, options and doc
    bool is_hidden;               // not in the list of commands
    bool is_behind;               // stands behind the questions there
} lw_command;

#define LW_AS_COMMAND(name) extern const lw_command lw_command_##name;
LW_COMMAND_LIST(LW_AS_COMMAND)

#endif
