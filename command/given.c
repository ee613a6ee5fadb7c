// given.c - what the commands that compute start from: inputs read, pins found.
// SPDX-License-Identifier: MIT

#include "command/given.h"

#include <string.h>

#include "answer/words/sections.h"
#include "command/terminal/print.h"

// "A, B, C, D".
static void list_pins(const lw_boat *boat, char *text, size_t room)
{
    size_t at = 0;
    for (size_t i = 0; i < boat->pin_count && at < room; i++) {
        lw_text_fit(text + at, room - at, "%s%s", i ? ", " : "", boat->pins[i].label);
        at += strlen(text + at);
    }
}

static bool find_pin(const lw_options *options, const lw_boat *boat, int *pin)
{
    const char *label = lw_options_text(options, "pin");
    *pin = LW_ALL_PINS;
    if (!label) return true;
    *pin = lw_boat_pin(boat, label);
    if (*pin >= 0) return true;
    char labels[LW_PINS_MOST * (LW_LABEL_LENGTH + 2)];
    list_pins(boat, labels, sizeof labels);
    lw_print_complaint(options->command, "the boat has no pin \"%s\"; it has %s", label, labels);
    return false;
}

bool lw_given(lw_inputs *inputs, int *pin, const lw_options *options)
{
    lw_faults faults = {0};
    const bool is_read = lw_inputs_read(inputs, options, &faults);
    const size_t doubts = faults.count + faults.left_out - faults.fault_count;
    if (!is_read) lw_print_faults(stderr, &faults);
    if (is_read && doubts) {
        lw_print_complaint(options->command,
                           "%zu value%s unusual; `lullwise check` on the files names %s", doubts,
                           doubts == 1 ? " is" : "s are", doubts == 1 ? "it" : "them");
    }
    lw_faults_free(&faults);
    return is_read && find_pin(options, &inputs->boat, pin);
}

static bool complain_of_bounds(const lw_options *options, const char *name, lw_bounds bounds)
{
    const lw_quantity *row = lw_option_named(name)->row;
    const double unit = lw_unit_in_si(row->unit);
    lw_print_complaint(options->command, "--%s %s is outside %s: %.*f to %.*f %s", name,
                       lw_options_text(options, name), bounds.what, row->decimals,
                       bounds.low / unit, row->decimals, bounds.high / unit,
                       lw_unit_text(row->unit));
    return false;
}

bool lw_given_number(const lw_options *options, const char *name, lw_bounds bounds, double *si)
{
    double value;
    lw_faults faults = {0};
    const bool is_given = lw_options_quantity(options, name, &value, &faults);
    const bool is_faulty = faults.fault_count > 0;
    if (is_faulty) lw_print_faults(stderr, &faults);
    lw_faults_free(&faults);
    if (is_faulty) return false;
    if (!is_given) return true;
    if (bounds.what && !(value >= bounds.low && value <= bounds.high)) {
        return complain_of_bounds(options, name, bounds);
    }
    *si = value;
    return true;
}

lw_craft lw_given_craft(const lw_inputs *inputs)
{
    lw_craft craft;
    const lw_medium medium = lw_medium_of(&inputs->day);
    lw_craft_prepare(&craft, &inputs->boat, lw_sections_of(&inputs->boat), &inputs->sailor.person,
                     &medium);
    return craft;
}
