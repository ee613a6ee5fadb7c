// sensitivity_work.c - every measurement moved by its error, with progress on the terminal.
// SPDX-License-Identifier: MIT

#include <stdlib.h>

#include "answer/words/sections.h"
#include "command/sensitivity.h"
#include "command/terminal/progress.h"

static void work_out(lw_sensing *sensing, const lw_inputs *inputs, lw_outlook *outlook,
                     lw_outlook *scratch)
{
    lw_sensitivity *found = &sensing->found;
    lw_progress("every pin on every leg", 0, 1);
    lw_outlook_prepare(outlook, &inputs->boat, lw_sections_of(&inputs->boat),
                       &inputs->sailor.person, &inputs->day);
    lw_sensing_begin(sensing, outlook, scratch, lw_sections_kept());
    for (size_t i = 0; i < found->count; i++) {
        lw_progress("what each measurement does", i, found->count);
        lw_sensing_row(sensing, i, false);
    }
    lw_sensitivity_sort(found);
    const size_t most = found->count < LW_SEARCHED_ANEW ? found->count : LW_SEARCHED_ANEW;
    for (size_t i = 0; i < most; i++) {
        lw_progress("those that matter most", i, most);
        lw_sensing_row(sensing, i, true);
    }
    lw_sensitivity_sort_first(found, most);
    lw_progress_over();
}

bool lw_sensitivity_of(const lw_inputs *inputs, lw_sensitivity *sensitivity)
{
    static lw_sensing sensing;
    lw_outlook *outlook = malloc(sizeof *outlook), *scratch = malloc(sizeof *scratch);
    const bool has_room = outlook && scratch;
    if (has_room) work_out(&sensing, inputs, outlook, scratch);
    free(outlook);
    free(scratch);
    *sensitivity = sensing.found;
    return has_room;
}
