// work.c - the answer of `lullwise swims` worked out.
// SPDX-License-Identifier: MIT

#include "answer/asked.h"
#include "answer/swims/swims.h"
#include "answer/words/sections.h"

bool lw_counted_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                      lw_refusal *refusal)
{
    lw_counted *counted = it;
    const lw_boat *boat = &inputs->boat;
    const lw_day day = lw_day_of_courses(&inputs->day);
    if (!lw_asked_pins(options, boat, &counted->first, &counted->count, refusal)) return false;
    counted->inputs = *inputs;
    counted->speed_unit = options->speed_unit;
    lw_outlook_begin(&counted->outlook, boat, lw_sections_of(boat), &inputs->sailor.person, &day);
    counted->outlook.effort = lw_effort_thorough();
    return true;
}

size_t lw_counted_steps(void *it) { return lw_outlook_steps(&((lw_counted *)it)->outlook); }

void lw_counted_step(void *it, size_t step) { lw_outlook_step(&((lw_counted *)it)->outlook, step); }

void lw_counted_give(const void *it, size_t step, void *part)
{
    lw_outlook_give(&((const lw_counted *)it)->outlook, step, part);
}

void lw_counted_take(void *it, size_t step, const void *part)
{
    lw_outlook_take(&((lw_counted *)it)->outlook, step, part);
}

void lw_counted_end(void *it) { lw_outlook_end(&((lw_counted *)it)->outlook); }

bool lw_counted_is_answered(const void *it)
{
    const lw_counted *counted = it;
    for (size_t pin = counted->first; pin < counted->first + counted->count; pin++) {
        for (int course = 0; course < LW_COURSE_COUNT; course++) {
            if (counted->outlook.swims[pin][course].is_known) return true;
        }
    }
    return false;
}
