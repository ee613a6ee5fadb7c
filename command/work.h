// work.h - a question worked out in its steps, on all cores where they stand apart.
// SPDX-License-Identifier: MIT

#ifndef LW_COMMAND_WORK_H
#define LW_COMMAND_WORK_H

#include "answer/question.h"

// Until all is done, or Ctrl-C says that it is enough.
void lw_work(const lw_question *question, void *it);

#endif
