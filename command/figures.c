// figures.c - what the terminal draws beside what it is told.
// SPDX-License-Identifier: MIT

#include "command/figures.h"

#include <string.h>

#include "command/terminal/chart.h"
#include "command/terminal/flight_picture.h"

static const struct {
    const lw_question *question;
    const char *key;
    bool (*is_there)(const void *it);  // NULL: always
    void (*draw)(FILE *out, const void *it);
} list[] = {
    {&lw_question_fly, "flight", lw_flight_has_picture, lw_flight_picture},
    {&lw_question_range, "ranges", NULL, lw_chart_draw},
};

const lw_figure *lw_figures_of(const lw_question *question, const void *it,
                               lw_figure figures[LW_FIGURES_MOST + 1])
{
    size_t count = 0;
    for (size_t i = 0; i < sizeof list / sizeof list[0]; i++) {
        if (list[i].question != question || count == LW_FIGURES_MOST) continue;
        if (list[i].is_there && !list[i].is_there(it)) continue;
        figures[count++] = (lw_figure){list[i].key, list[i].draw, it};
    }
    figures[count] = (lw_figure){0};
    return figures;
}
