// held_work.c - the answer of `lullwise hold` worked out.
// SPDX-License-Identifier: MIT

#include "advice/sections.h"
#include "command/held.h"
#include "command/progress.h"
#include "records/fault.h"

#define MINUTES 4.0  // of each ride
#define SEED    1

static lw_pace pace_of(const lw_held *held, const lw_weather *weather, size_t pin)
{
    const lw_outlook *outlook = held->picked.outlook;
    const lw_swim_effort effort = {60.0 * MINUTES, SEED};
    lw_swims swims[LW_COURSES_MOST] = {0};
    lw_setup setup = outlook->craft.setup;
    setup.incidence = held->picked.inputs.boat.pins[pin].incidence;
    for (size_t course = 0; course < outlook->course_count; course++) {
        char what[64];
        LW_FIT(what, "rides with pin %s", lw_picked_label(&held->picked, pin));
        lw_progress(what, pin * outlook->course_count + course,
                    outlook->pin_count * outlook->course_count);
        swims[course] =
            lw_swims_of(&outlook->craft, &setup, &outlook->ranges[pin][course], weather, effort);
    }
    return lw_pace_of(outlook, pin, swims, held->now, held->later);
}

static void find_best(lw_held *held)
{
    held->has_best = false;
    for (size_t pin = 0; pin < held->picked.outlook->pin_count; pin++) {
        if (pin == held->pin) continue;
        const double saved = held->changes[pin].best_saved;
        if (held->has_best && saved <= held->changes[held->best].best_saved) continue;
        held->best = pin, held->has_best = true;
    }
}

void lw_held_work_out(lw_held *held)
{
    const lw_inputs *inputs = &held->picked.inputs;
    lw_outlook *outlook = held->picked.outlook;
    lw_progress("every pin on every leg", 0, 1);
    lw_outlook_prepare(outlook, &inputs->boat, lw_sections_of(&inputs->boat),
                       &inputs->sailor.person, &inputs->day);
    lw_picked_rank(&held->picked);
    const lw_weather weather = lw_weather_of(&outlook->craft, &inputs->day);
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        held->paces[pin] = pace_of(held, &weather, pin);
    }
    lw_progress_over();
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        held->changes[pin] =
            lw_change_of(&held->paces[held->pin], &held->paces[pin], held->left, held->stop);
    }
    find_best(held);
}

bool lw_held_flies(const lw_held *held)
{
    for (size_t pin = 0; pin < held->picked.outlook->pin_count; pin++) {
        if (lw_pace_rest(held->paces[pin].flying, 1.0, 0.0) > 0.0) return true;
    }
    return false;
}

double lw_held_swims(const lw_held *held, size_t pin, double *error)
{
    const double cost = held->picked.inputs.day.cost.swim;
    const lw_pace *pace = &held->paces[pin];
    *error = cost > 0.0 ? lw_pace_rest(pace->error, held->left, 0.0) / cost : 0.0;
    return lw_pace_rest(pace->swims, held->left, 0.0);
}
