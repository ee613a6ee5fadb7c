// figures.h - what the terminal draws beside what it is told: charts of letters and lines.
// SPDX-License-Identifier: MIT

#ifndef LW_FIGURES_H
#define LW_FIGURES_H

#include "answer/question.h"
#include "command/terminal/terminal.h"

#define LW_FIGURES_MOST 4

// The figures of an answer, in room of the caller's that ends with one whose key is NULL.
const lw_figure *lw_figures_of(const lw_question *question, const void *it,
                               lw_figure figures[LW_FIGURES_MOST + 1]);

#endif
