// asked.c - what questions are given beside boat, sailor and day: a pin, numbers.
// SPDX-License-Identifier: MIT

#include "answer/asked.h"

#include <math.h>
#include <string.h>

#include "answer/words/sections.h"

// "A, B, C, D".
static void list_pins(const lw_boat *boat, char *text, size_t room)
{
    size_t at = 0;
    for (size_t i = 0; i < boat->pin_count && at < room; i++) {
        lw_text_fit(text + at, room - at, "%s%s", i ? ", " : "", boat->pins[i].label);
        at += strlen(text + at);
    }
}

bool lw_asked_pin(const lw_options *options, const lw_boat *boat, int *pin, lw_refusal *refusal)
{
    const char *label = lw_options_text(options, "pin");
    *pin = LW_ALL_PINS;
    if (!label) return true;
    *pin = lw_boat_pin(boat, label);
    if (*pin >= 0) return true;
    char labels[LW_PINS_MOST * (LW_LABEL_LENGTH + 2)];
    list_pins(boat, labels, sizeof labels);
    return lw_refuse(refusal, "the boat has no pin \"%s\"; it has %s", label, labels);
}

bool lw_asked_pins(const lw_options *options, const lw_boat *boat, size_t *first, size_t *count,
                   lw_refusal *refusal)
{
    int pin;
    if (!lw_asked_pin(options, boat, &pin, refusal)) return false;
    *first = pin == LW_ALL_PINS ? 0 : (size_t)pin;
    *count = pin == LW_ALL_PINS ? boat->pin_count : 1;
    return true;
}

static bool refuse_outside(const lw_options *options, const char *name, lw_bounds bounds,
                           lw_refusal *refusal)
{
    const lw_quantity *row = lw_option_named(name)->row;
    const double unit = lw_unit_in_si(row->unit);
    return lw_refuse(refusal, "--%s %s is outside %s: %.*f to %.*f%s", name,
                     lw_options_text(options, name), bounds.what, row->decimals, bounds.low / unit,
                     row->decimals, bounds.high / unit, lw_unit_behind(row->unit));
}

bool lw_asked_number(const lw_options *options, const char *name, lw_bounds bounds, double *si,
                     lw_refusal *refusal)
{
    double value;
    const size_t before = refusal->faults.fault_count;
    const bool is_given = lw_options_quantity(options, name, &value, &refusal->faults);
    if (refusal->faults.fault_count > before) return false;
    if (!is_given) return true;
    if (bounds.what && !(value >= bounds.low && value <= bounds.high)) {
        return refuse_outside(options, name, bounds, refusal);
    }
    *si = value;
    return true;
}

bool lw_asked_whole(const lw_options *options, const char *name, double *value, lw_refusal *refusal)
{
    if (!lw_asked_number(options, name, (lw_bounds){0}, value, refusal)) return false;
    if (*value == floor(*value)) return true;
    return lw_refuse(refusal, "--%s %s is no whole number", name, lw_options_text(options, name));
}

bool lw_asked_course(const lw_options *options, lw_course_kind *course, lw_refusal *refusal)
{
    const char *text = lw_options_text(options, "course");
    *course = LW_UPWIND;
    if (!text) return true;
    for (int kind = 0; kind < LW_COURSE_COUNT; kind++) {
        if (strcmp(text, lw_course_text((lw_course_kind)kind)) != 0) continue;
        *course = (lw_course_kind)kind;
        return true;
    }
    return lw_refuse(refusal,
                     "there is no course \"%s\"; it is upwind, reach or downwind, or take "
                     "--heading",
                     text);
}

lw_craft lw_asked_craft(const lw_inputs *inputs)
{
    lw_craft craft;
    const lw_medium medium = lw_medium_of(&inputs->day);
    lw_craft_prepare(&craft, &inputs->boat, lw_sections_of(&inputs->boat), &inputs->sailor.person,
                     &medium);
    return craft;
}
