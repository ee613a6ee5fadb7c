// steps.c - values written as one, or as from:to:step.
// SPDX-License-Identifier: MIT

#include "answer/steps.h"

#include <math.h>
#include <string.h>

#include "records/record_value.h"

#define PART_LENGTH 64

typedef char part[2 * PART_LENGTH];  // with room for another's unit

static bool refuse(const lw_written *written, const char *sentence, lw_faults *faults)
{
    lw_fault *fault = lw_faults_add(faults, written);
    LW_FIT(fault->sentence, "%s", sentence);
    LW_FIT(fault->expected, "one value, or from:to:step, as in 2:8:0.5");
    return false;
}

// The text cut at its colons; how many parts, or 0 when there are too many or one is too long.
static int cut(const char *text, part parts[3])
{
    for (int count = 0; count < 3; count++) {
        const size_t length = strcspn(text, ":");
        if (length >= PART_LENGTH) return 0;
        memcpy(parts[count], text, length);
        parts[count][length] = '\0';
        if (text[length] == '\0') return count + 1;
        text += length + 1;
    }
    return 0;
}

// What stands behind the number of the last part, or the row's own unit.
static const char *unit_behind(const char *text, const lw_quantity *row, bool may_be_bare)
{
    double value;
    const char *rest = "";
    while (*text == ' ') text++;
    if (!lw_decimal_read(text, &value, &rest)) return "";
    rest += strspn(rest, " ");
    return !rest[0] && may_be_bare ? lw_unit_text(row->unit) : rest;
}

static bool is_bare(const char *text)
{
    double value;
    const char *rest;
    text += strspn(text, " ");
    return lw_decimal_read(text, &value, &rest) && rest[strspn(rest, " ")] == '\0';
}

// Puts a unit behind a part that has none.
static void add_unit(part text, const char *unit)
{
    if (unit[0] && is_bare(text)) lw_text_add(text, sizeof(part), " %s", unit);
}

static bool read_end(const lw_written *written, const char *text, const lw_quantity *row,
                     double *si, lw_faults *faults)
{
    lw_written one = *written;
    one.text = text;
    return lw_written_quantity(&one, row, si, faults);
}

static bool fill(lw_steps *steps, double from, double to, double step)
{
    const double count = step != 0.0 ? floor((to - from) / step + 1e-6) + 1.0 : 0.0;
    if (!(count >= 1.0) || !(count <= LW_STEPS_MOST)) return false;
    steps->count = (int)count;
    for (int i = 0; i < steps->count; i++) {
        const double value = from + i * step;
        steps->value[i] = fabs(value) < 1e-9 * fabs(step) ? 0.0 : value;
    }
    return true;
}

bool lw_steps_read(lw_steps *steps, const lw_written *written, const lw_quantity *row,
                   bool may_be_bare, lw_faults *faults)
{
    part parts[3];
    double from, to, step;
    const char *rest;
    const int count = cut(written->text, parts);
    if (count != 1 && count != 3) return refuse(written, "these are no steps", faults);
    const char *unit = unit_behind(parts[count - 1], row, may_be_bare);
    for (int i = 0; i < count; i++) add_unit(parts[i], unit);
    if (!read_end(written, parts[0], row, &from, faults)) return false;
    if (count == 1) return fill(steps, from, from, 1.0);
    if (!read_end(written, parts[1], row, &to, faults)) return false;
    if (!lw_decimal_read(parts[2] + strspn(parts[2], " "), &step, &rest))
        return refuse(written, "the step is not a number", faults);
    const lw_unit known = lw_unit_of(unit);
    const double in_si = lw_unit_in_si(known != LW_UNIT_COUNT ? known : row->unit);
    if (fill(steps, from, to, step * in_si)) return true;
    lw_fault *fault = lw_faults_add(faults, written);
    LW_FIT(fault->sentence, "the step leads away from the end, or takes too many values");
    LW_FIT(fault->expected, "at most %d values, the step from the first towards the last",
           LW_STEPS_MOST);
    return false;
}

bool lw_asked_steps(lw_steps *steps, const lw_options *options, const char *name, bool may_be_bare,
                    lw_refusal *refusal)
{
    char key[64];
    const char *text = lw_options_text(options, name);
    if (!text) return true;
    LW_FIT(key, "--%s", name);
    const lw_written written = {.file = "command line", .key = key, .text = text};
    return lw_steps_read(steps, &written, lw_option_named(name)->row, may_be_bare,
                         &refusal->faults);
}
