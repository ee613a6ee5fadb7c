// work.c - the answer of `lullwise hold` worked out.
// SPDX-License-Identifier: MIT

#include "answer/hold/hold.h"

#include "answer/asked.h"
#include "answer/words/sections.h"

#define STOP 120.0  // [s] from slowing down to sailing at speed again  [judged]

// What is asked beside the inputs.
static bool ask(lw_held *held, const lw_options *options, lw_refusal *refusal)
{
    const lw_day *day = &held->picked.inputs.day;
    const lw_bounds any = {0};
    lw_hold *hold = &held->hold;
    int pin;
    if (!lw_asked_pin(options, &held->picked.inputs.boat, &pin, refusal)) return false;
    if (pin == LW_ALL_PINS)
        return lw_refuse(refusal, "which pin is in the boat? Say it with --pin LABEL");
    hold->pin = (size_t)pin;
    hold->left = lw_hold_course(day);
    if (hold->left <= 0.0)
        return lw_refuse(refusal, "the day has no legs; add what is left of the race");
    hold->now = hold->later = day->wind.mean;
    hold->stop = STOP;
    return lw_asked_number(options, "left", any, &hold->left, refusal) &&
           lw_asked_number(options, "builds-to", any, &hold->later, refusal) &&
           lw_asked_number(options, "stop", any, &hold->stop, refusal);
}

bool lw_held_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                   lw_refusal *refusal)
{
    lw_held *held = it;
    held->picked.inputs = *inputs;
    held->picked.outlook = &held->outlook;
    held->picked.speed_unit = options->speed_unit;
    if (!ask(held, options, refusal)) return false;
    lw_outlook_begin(&held->outlook, &inputs->boat, lw_sections_of(&inputs->boat),
                     &inputs->sailor.person, &inputs->day);
    held->outlook.effort = lw_effort_thorough();
    return true;
}

size_t lw_held_steps(void *it) { return lw_outlook_steps(&((lw_held *)it)->outlook); }

void lw_held_step(void *it, size_t step) { lw_outlook_step(&((lw_held *)it)->outlook, step); }

void lw_held_give(const void *it, size_t step, void *part)
{
    lw_outlook_give(&((const lw_held *)it)->outlook, step, part);
}

void lw_held_take(void *it, size_t step, const void *part)
{
    lw_outlook_take(&((lw_held *)it)->outlook, step, part);
}

void lw_held_end(void *it)
{
    lw_held *held = it;
    lw_outlook_end(&held->outlook);
    lw_picked_rank(&held->picked);
    lw_hold_work_out(&held->hold, &held->outlook);
    for (size_t pin = 0; pin < held->outlook.pin_count; pin++) {
        held->most_turns[pin] = lw_outlook_most_turns(&held->outlook, pin, held->hold.later);
    }
}

bool lw_held_is_answered(const void *it) { return lw_hold_flies(&((const lw_held *)it)->hold); }

bool lw_held_stops(const lw_held *held)
{
    const lw_hold *hold = &held->hold;
    return hold->has_best && hold->changes[hold->best].best_saved > 0.0;
}
