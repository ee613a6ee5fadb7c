// picked_work.c - the answer of `lullwise pick` worked out.
// SPDX-License-Identifier: MIT

#include <stdlib.h>

#include "answer/words/sections.h"
#include "command/picked.h"
#include "command/terminal/print.h"
#include "command/terminal/progress.h"

bool lw_picked_work_out(lw_picked *picked, const char *what)
{
    picked->outlook = malloc(sizeof *picked->outlook);
    if (!picked->outlook) {
        lw_print_complaint("pick", "there is not enough memory");
        return false;
    }
    lw_progress(what, 0, 1);
    lw_picked_begin(picked);
    lw_picked_sail(picked, what);
    lw_picked_rank(picked);
    lw_progress_over();
    return true;
}

void lw_picked_begin(lw_picked *picked)
{
    const lw_inputs *inputs = &picked->inputs;
    lw_outlook_begin(picked->outlook, &inputs->boat, lw_sections_of(&inputs->boat),
                     &inputs->sailor.person, &inputs->day);
}

void lw_picked_sail(lw_picked *picked, const char *what)
{
    size_t done = 0, steps;
    while (done < (steps = lw_outlook_steps(picked->outlook))) {
        for (; done < steps; done++) {
            lw_progress(what, done, steps);
            lw_outlook_step(picked->outlook, done);
        }
    }
    lw_outlook_end(picked->outlook);
}

void lw_picked_free(lw_picked *picked)
{
    free(picked->outlook);
    picked->outlook = NULL;
}
