// sensitivity_print.c - which measurement is worth taking better, on the terminal and as JSON.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "command/cell.h"
#include "command/sensitivity.h"
#include "command/terminal/print.h"
#include "records/json.h"

#define SHOWN_MOST  LW_SEARCHED_ANEW
#define SHOWN_LEAST 5

// Worth a line: it shows in the digits printed.
static bool is_felt(const lw_sensitivity_row *row)
{
    return fabs(row->hold) >= 0.05 * LW_KN || fabs(row->seconds) >= 0.5;
}

static void print_row(FILE *out, const lw_sensitivity_row *row)
{
    char text[LW_CELL_LENGTH], number[LW_CELL_LENGTH];
    const char *unit = lw_unit_text(row->row->unit);
    fputs("  ", out);
    lw_cell_left(out, row->key, 30);
    LW_FIT(text, "± %g%s%s", row->row->error, unit[0] ? " " : "", unit);
    lw_cell_left(out, text, 16);
    lw_cell_number(number, row->hold / LW_KN, 1, true);
    LW_FIT(text, "%s kn", number);
    lw_cell_right(out, text, 12);
    lw_cell_number(number, row->seconds, 0, true);
    LW_FIT(text, "%s s", number);
    lw_cell_right(out, text, 12);
    fputc('\n', out);
}

static void print_firsts(FILE *out, const lw_inputs *inputs, const lw_sensitivity *s)
{
    char text[600];
    const char *best = inputs->boat.pins[s->pin].label;
    size_t count = 0, most = s->count;
    for (size_t i = s->count; i-- > 0;) {
        if (s->rows[i].first_instead >= 0) count++, most = i;
    }
    if (count == 0) {
        LW_FIT(text, "None of these errors alone takes the first place from pin %s.", best);
    } else {
        const lw_sensitivity_row *row = &s->rows[most];
        LW_FIT(text,
               "%zu of the %zu measurements, wrong by one error alone, would take the first place "
               "from pin %s; of these %s matters most: pin %s would be first.",
               count, s->count, best, row->key, inputs->boat.pins[row->first_instead].label);
    }
    lw_print_wrapped(out, text, 0, 2);
}

void lw_sensitivity_print(FILE *out, const lw_inputs *inputs, const lw_sensitivity *s)
{
    char text[500];
    if (!s->flies) {
        lw_print_wrapped(out,
                         "What matters most cannot be told: nothing flies in the winds of this "
                         "day. Give a day with more wind.",
                         0, 0);
        return;
    }
    LW_FIT(text,
           "What matters most to measure better. Pin %s, %s, %s: held to %.1f kn, %.0f s round "
           "the course. With the measurement one error larger, these change by:",
           inputs->boat.pins[s->pin].label, inputs->sailor.name, inputs->day.name,
           s->held_up_to / LW_KN, s->seconds);
    lw_print_wrapped(out, text, 0, 0);
    fprintf(out, "\n  %-30s%-16s%12s%12s\n", "measurement", "error", "held to", "time");
    for (size_t i = 0; i < s->count && i < SHOWN_MOST; i++) {
        if (i < SHOWN_LEAST || is_felt(&s->rows[i])) print_row(out, &s->rows[i]);
    }
    fputc('\n', out);
    print_firsts(out, inputs, s);
}

json_t *lw_sensitivity_json(const lw_inputs *inputs, const lw_sensitivity *s)
{
    const lw_pin *pins = inputs->boat.pins;
    json_t *list = json_array();
    for (size_t i = 0; i < s->count; i++) {
        const lw_sensitivity_row *row = &s->rows[i];
        json_array_append_new(
            list, json_pack("{s:s, s:f, s:s, s:f, s:f, s:s?}", "key", row->key, "error",
                            row->row->error, "unit", lw_unit_text(row->row->unit), "hold_change",
                            row->hold / LW_KN, "seconds_change", row->seconds, "first_instead",
                            row->first_instead >= 0 ? pins[row->first_instead].label : NULL));
    }
    return json_pack("{s:b, s:s?, s:o, s:{s:s, s:s}}", "flies", s->flies, "pin",
                     s->flies ? pins[s->pin].label : NULL, "measurements", list, "units",
                     "hold_change", "kn", "seconds_change", "s");
}
