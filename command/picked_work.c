// picked_work.c - the answer of `lullwise pick` worked out.
// SPDX-License-Identifier: MIT

#include <stdlib.h>

#include "advice/sections.h"
#include "command/picked.h"
#include "command/print.h"
#include "command/progress.h"

bool lw_picked_work_out(lw_picked *picked, const char *what)
{
    picked->outlook = malloc(sizeof *picked->outlook);
    if (!picked->outlook) {
        lw_print_complaint("pick", "there is not enough memory");
        return false;
    }
    const lw_inputs *inputs = &picked->inputs;
    lw_progress(what, 0, 1);
    lw_outlook_prepare(picked->outlook, &inputs->boat, lw_sections_of(&inputs->boat),
                       &inputs->sailor.person, &inputs->day);
    lw_picked_rank(picked);
    lw_progress_over();
    return true;
}

void lw_picked_free(lw_picked *picked)
{
    free(picked->outlook);
    picked->outlook = NULL;
}
