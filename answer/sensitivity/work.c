// work.c - the answer of `lullwise sensitivity` worked out.
// SPDX-License-Identifier: MIT

#include "answer/sensitivity/sensitivity.h"
#include "answer/words/sections.h"

bool lw_sensed_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                     lw_refusal *refusal)
{
    lw_sensed *sensed = it;
    (void)options, (void)refusal;
    sensed->inputs = *inputs;
    lw_outlook_begin(&sensed->outlook, &inputs->boat, lw_sections_of(&inputs->boat),
                     &inputs->sailor.person, &inputs->day);
    return true;
}

static bool are_moved(const lw_sensed *sensed)
{
    size_t moved = 0;
    while (moved < sensed->row_count && sensed->is_moved[moved]) moved++;
    return moved == sensed->row_count;
}

static void list(lw_sensed *sensed)
{
    lw_outlook_end(&sensed->outlook);
    lw_sensing_begin(&sensed->sensing, &sensed->outlook, &sensed->scratch, lw_sections_kept());
    sensed->outlook_steps = lw_outlook_steps(&sensed->outlook);
    sensed->row_count = sensed->sensing.found.count;
    sensed->is_listed = true;
}

// Those that no step has moved are left out.
static void sort(lw_sensed *sensed)
{
    lw_sensitivity *found = &sensed->sensing.found;
    lw_sensitivity_sort(found);
    sensed->anew_count = found->count < LW_SEARCHED_ANEW ? found->count : LW_SEARCHED_ANEW;
    sensed->is_sorted = true;
}

// What can be done now that was not before.
size_t lw_sensed_steps(void *it)
{
    lw_sensed *sensed = it;
    if (!sensed->is_listed && lw_outlook_is_whole(&sensed->outlook)) list(sensed);
    if (!sensed->is_listed) return lw_outlook_steps(&sensed->outlook);
    if (!sensed->is_sorted && are_moved(sensed)) sort(sensed);
    return sensed->outlook_steps + sensed->row_count + sensed->anew_count;
}

static bool is_of_outlook(const lw_sensed *sensed, size_t step)
{
    return !sensed->is_listed || step < sensed->outlook_steps;
}

// The measurement of a step, as they are listed; or, those searched anew, as they are sorted.
static size_t row_of(const lw_sensed *sensed, size_t step, bool *is_anew)
{
    const size_t row = step - sensed->outlook_steps;
    *is_anew = row >= sensed->row_count;
    return *is_anew ? row - sensed->row_count : row;
}

void lw_sensed_step(void *it, size_t step)
{
    lw_sensed *sensed = it;
    bool is_anew;
    lw_sensed_steps(sensed);
    if (is_of_outlook(sensed, step)) {
        lw_outlook_step(&sensed->outlook, step);
        return;
    }
    const size_t row = row_of(sensed, step, &is_anew);
    if (is_anew != sensed->is_sorted) return;
    lw_sensing_row(&sensed->sensing, row, is_anew);
    if (!is_anew) sensed->is_moved[row] = true;
}

void lw_sensed_give(const void *it, size_t step, void *part)
{
    const lw_sensed *sensed = it;
    lw_sensed_part *to = part;
    bool is_anew;
    if (is_of_outlook(sensed, step)) {
        lw_outlook_give(&sensed->outlook, step, &to->outlook);
        return;
    }
    const lw_sensitivity_row *row = &sensed->sensing.found.rows[row_of(sensed, step, &is_anew)];
    to->row.hold = row->hold, to->row.seconds = row->seconds;
    to->row.weight = row->weight, to->row.first_instead = row->first_instead;
}

void lw_sensed_take(void *it, size_t step, const void *part)
{
    lw_sensed *sensed = it;
    const lw_sensed_part *from = part;
    bool is_anew;
    lw_sensed_steps(sensed);
    if (is_of_outlook(sensed, step)) {
        lw_outlook_take(&sensed->outlook, step, &from->outlook);
        return;
    }
    const size_t at = row_of(sensed, step, &is_anew);
    if (is_anew != sensed->is_sorted) return;
    lw_sensitivity_row *row = &sensed->sensing.found.rows[at];
    row->hold = from->row.hold, row->seconds = from->row.seconds;
    row->weight = from->row.weight, row->first_instead = from->row.first_instead;
    if (!is_anew) sensed->is_moved[at] = true;
}

void lw_sensed_end(void *it)
{
    lw_sensed *sensed = it;
    lw_sensed_steps(sensed);
    if (!sensed->is_listed) return;
    if (!sensed->is_sorted) sort(sensed);
    lw_sensitivity_sort_first(&sensed->sensing.found, sensed->anew_count);
}

bool lw_sensed_is_answered(const void *it) { return ((const lw_sensed *)it)->sensing.found.flies; }
