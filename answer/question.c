// question.c - the questions that can be asked.
// SPDX-License-Identifier: MIT

#include "answer/question.h"

#include <string.h>

#define LW_AS_ENTRY(name) &lw_question_##name,
static const lw_question *const list[] = {LW_QUESTION_LIST(LW_AS_ENTRY) NULL};
#define QUESTION_COUNT (sizeof list / sizeof list[0] - 1)

const lw_question *lw_question_at(size_t i) { return i < QUESTION_COUNT ? list[i] : NULL; }

const lw_question *lw_question_named(const char *name)
{
    for (size_t i = 0; i < QUESTION_COUNT; i++) {
        if (strcmp(list[i]->name, name) == 0) return list[i];
    }
    return NULL;
}
