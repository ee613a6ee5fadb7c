// tell.c - which measurement is worth taking better, told.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/sensitivity/sensitivity.h"
#include "answer/words/number_text.h"
#include "records/fault.h"
#include "records/key_text.h"

#define SHOWN_LEAST 5

// clang-format off
static const lw_item columns[] = {
    {"key",            NULL,          LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"name",           "measurement", LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"error",          "error",       LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL},
    {"unit",           NULL,          LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"hold_change",    "held to",     LW_AS_SIGNED, LW_UNIT_KN,   1, NULL},
    {"seconds_change", "time",        LW_AS_SIGNED, LW_UNIT_S,    0, NULL},
    {"first_instead",  "first",       LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
};
// clang-format on

// Worth a line: it shows in the digits printed.
static bool is_felt(const lw_sensitivity_row *row)
{
    return fabs(row->hold) >= 0.05 * LW_KN || fabs(row->seconds) >= 0.5;
}

static bool is_shown(const lw_sensitivity_row *row, size_t place)
{
    return place < LW_SEARCHED_ANEW && (place < SHOWN_LEAST || is_felt(row));
}

static void tell_row(const lw_inputs *inputs, const lw_sensitivity_row *row, lw_teller *t)
{
    char text[80];
    LW_FIT(text, "± %g%s", row->row->error, lw_unit_behind(row->row->unit));
    lw_tell_text(t, NULL, row->key);
    lw_tell_text(t, NULL, LW_KEY_SPOKEN(row->key));
    lw_tell_number_as(t, NULL, row->row->error, text);
    lw_tell_text(t, NULL, lw_unit_sign(row->row->unit));
    lw_tell_number(t, NULL, row->hold);
    lw_tell_number(t, NULL, row->seconds);
    lw_tell_text(t, NULL,
                 row->first_instead < 0 ? NULL : inputs->boat.pins[row->first_instead].label);
}

static void tell_rows(const lw_inputs *inputs, const lw_sensitivity *s, lw_teller *t)
{
    lw_tell_table(t, "measurements", "", columns, LW_COUNT_OF(columns));
    for (size_t i = 0; i < s->count; i++) {
        if (is_shown(&s->rows[i], i))
            lw_tell_row(t);
        else
            lw_tell_hidden_row(t);
        tell_row(inputs, &s->rows[i], t);
    }
    lw_tell_end(t);
}

// Which errors alone put another pin first.
static void tell_firsts(const lw_inputs *inputs, const lw_sensitivity *s, lw_teller *t)
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
               count, s->count, best, LW_KEY_SPOKEN(row->key),
               inputs->boat.pins[row->first_instead].label);
    }
    lw_tell_sentence(t, "firsts", text);
}

static void tell_found(const lw_inputs *inputs, const lw_sensitivity *s, lw_teller *t)
{
    static const lw_item seconds = {.key = "seconds", .form = LW_AS_TIME, .unit = LW_UNIT_S};
    static const lw_item held_up_to = {.key = "held_up_to", .unit = LW_UNIT_KN, .digits = 1};
    char text[500], time[LW_CELL_LENGTH];
    lw_cell_time(time, s->seconds);
    LW_FIT(text,
           "Pin %s, %s, %s: held to %s, %s round the course. With the measurement one error "
           "larger, these change by:",
           inputs->boat.pins[s->pin].label, inputs->sailor.name, inputs->day.name,
           LW_SPEED_TEXT(s->held_up_to, 1, t->speed_unit), time);
    lw_tell_sentence(t, "question", text);
    lw_tell_name(t, "pin", inputs->boat.pins[s->pin].label);
    lw_tell_number(t, &held_up_to, s->held_up_to);
    lw_tell_number(t, &seconds, s->seconds);
    tell_rows(inputs, s, t);
    tell_firsts(inputs, s, t);
}

// Why there is no answer.
static const char *lack(const lw_sensed *sensed)
{
    if (!sensed->is_listed) return "Stopped before anything could be told.";
    return "What matters most cannot be told: nothing flies in the winds of this day. Give a day "
           "with more wind.";
}

void lw_sensed_tell(const void *it, lw_teller *t)
{
    const lw_sensed *sensed = it;
    const lw_sensitivity *found = &sensed->sensing.found;
    lw_tell_flag(t, "flies", found->flies);
    if (found->flies)
        tell_found(&sensed->inputs, found, t);
    else
        lw_tell_sentence(t, "question", lack(sensed));
}
