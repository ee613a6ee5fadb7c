// next.c - what to try next, told.
// SPDX-License-Identifier: MIT

#include "answer/learn/learn.h"
#include "answer/words/number_text.h"
#include "records/fault.h"

#define SHOWN 5  // trials that people are told

static const char *label_of(const lw_taking *t, size_t pin)
{
    return t->inputs->boat.pins[pin].label;
}

static void tell_choice(const lw_taking *t, lw_teller *teller)
{
    static const lw_item seconds = {"seconds", NULL, LW_AS_NUMBER, LW_UNIT_S, 1, NULL};
    static const lw_item error = {"error", NULL, LW_AS_NUMBER, LW_UNIT_S, 1, NULL};
    const lw_next *next = &t->next;
    char text[400];
    LW_FIT(text,
           "%s: by steady flight in the mean wind pin %s is %s s faster round the course than %s, "
           "± %s s by what is learned.",
           t->inputs->day.name, label_of(t, next->first),
           LW_MEASURE_TEXT(next->seconds, 1, LW_UNIT_NONE), label_of(t, next->second),
           LW_MEASURE_TEXT(next->error, 1, LW_UNIT_NONE));
    lw_tell_sentence(teller, "sentence", text);
    lw_tell_name(teller, "first", label_of(t, next->first));
    lw_tell_name(teller, "second", label_of(t, next->second));
    lw_tell_number(teller, &seconds, next->seconds);
    lw_tell_number(teller, &error, next->error);
}

// NULL: alone.
static const char *against(const lw_taking *t, const lw_trial *trial)
{
    if (trial->is_of_turn) return "a turn more, a turn less";
    return trial->other == trial->pin ? NULL : label_of(t, trial->other);
}

static void tell_trials(const lw_taking *t, lw_teller *teller)
{
    static const lw_item columns[] = {
        {"pin", "pin", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
        {"other", "against", LW_AS_TEXT, LW_UNIT_NONE, 0, "alone"},
        {"course", "course", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
        {"error", "then", LW_AS_ERROR, LW_UNIT_S, 2, NULL},
    };
    lw_tell_table(teller, "trials", "", columns, LW_COUNT_OF(columns));
    for (size_t i = 0; i < t->next.count; i++) {
        const lw_trial *trial = &t->next.trials[i];
        if (i < SHOWN)
            lw_tell_row(teller);
        else
            lw_tell_hidden_row(teller);
        lw_tell_text(teller, NULL, label_of(t, trial->pin));
        lw_tell_text(teller, NULL, against(t, trial));
        lw_tell_text(teller, NULL, lw_course_text(trial->course));
        lw_tell_number(teller, NULL, trial->error);
    }
    lw_tell_end(teller);
}

void lw_taking_tell_next(const lw_taking *t, lw_teller *teller)
{
    lw_tell_object(teller, "next", "What to try next");
    if (t->next.is_known) {
        tell_choice(t, teller);
        lw_tell_sentence(teller, "how",
                         "Sail one of these until turns and speed are found, in a wind as the "
                         "day's mean, or with a turn more and a turn less for ten minutes each to "
                         "compare the speeds; the first tells most:");
        tell_trials(t, teller);
    } else {
        lw_tell_sentence(teller, "sentence",
                         "No two pins fly round this day's course in its mean wind, so that there "
                         "is nothing to choose. Give a day with more wind.");
    }
    lw_tell_end(teller);
}
