// work.c - the answer of `lullwise range` worked out.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/asked.h"
#include "answer/range/range.h"

// As long as a pin on a course is not worked out: no flight in any wind.
static void put_nothing(lw_ranged_one *one)
{
    for (int i = 0; i < LW_RANGE_WINDS; i++) {
        one->range.at[i].wind = lw_range_wind(i);
        one->range.at[i].trimmed.outcome = LW_NO_BALANCE;
    }
}

bool lw_ranged_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                     lw_refusal *refusal)
{
    lw_ranged *ranged = it;
    if (!lw_asked_pins(options, &inputs->boat, &ranged->first, &ranged->count, refusal))
        return false;
    ranged->inputs = inputs;
    ranged->speed_unit = options->speed_unit;
    ranged->puff = inputs->day.wind.puff - inputs->day.wind.mean;
    ranged->craft = lw_asked_craft(inputs);
    for (size_t i = 0; i < LW_PINS_MOST; i++) {
        for (size_t k = 0; k < LW_COURSE_COUNT; k++) put_nothing(&ranged->of[i][k]);
    }
    return lw_asked_number(options, "puff", (lw_bounds){0}, &ranged->puff, refusal) &&
           lw_asked_number(options, "width", (lw_bounds){0}, &ranged->width, refusal);
}

// A step is a pin on a course.
size_t lw_ranged_steps(void *it) { return ((const lw_ranged *)it)->count * LW_COURSE_COUNT; }

static size_t pin_of(const lw_ranged *ranged, size_t step)
{
    return ranged->first + step / LW_COURSE_COUNT;
}

const lw_range_point *lw_ranged_point(const lw_range *range, size_t i)
{
    return &range->at[LW_RANGED_FIRST + i * LW_RANGED_STEP];
}

void lw_ranged_step(void *it, size_t step)
{
    lw_ranged *ranged = it;
    const size_t pin = pin_of(ranged, step), course = step % LW_COURSE_COUNT;
    lw_ranged_one *one = &ranged->of[pin][course];
    const lw_setup setup = lw_craft_setup(&ranged->craft, &ranged->inputs->boat, pin);
    const lw_course on = lw_course_of((lw_course_kind)course);
    lw_range_of(&ranged->craft, &setup, on, ranged->puff, &one->range);
    for (size_t i = 0; i < LW_RANGED_WINDS; i++) {
        const lw_range_point *point = lw_ranged_point(&one->range, i);
        one->most[i] =
            lw_answer_is_kept(&point->trimmed)
                ? lw_range_most_turns(&ranged->craft, &setup, on, ranged->puff, &point->trimmed)
                : NAN;
    }
}

void lw_ranged_give(const void *it, size_t step, void *part)
{
    const lw_ranged *ranged = it;
    *(lw_ranged_one *)part = ranged->of[pin_of(ranged, step)][step % LW_COURSE_COUNT];
}

void lw_ranged_take(void *it, size_t step, const void *part)
{
    lw_ranged *ranged = it;
    ranged->of[pin_of(ranged, step)][step % LW_COURSE_COUNT] = *(const lw_ranged_one *)part;
}

bool lw_ranged_is_answered(const void *it)
{
    const lw_ranged *ranged = it;
    for (size_t i = 0; i < ranged->count; i++) {
        for (int course = 0; course < LW_COURSE_COUNT; course++) {
            if (ranged->of[ranged->first + i][course].range.has_flight) return true;
        }
    }
    return false;
}
