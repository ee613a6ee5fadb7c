// tell.c - what was learned, told.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/learn/learn.h"
#include "answer/learned.h"
#include "records/source_text.h"

// As people say them, in the order of the table.
static const char *const names[LW_HIDDEN_COUNT] = {
    "incidence of the main foil, more than measured",
    "incidence of the rudder foil, more than measured at the mark",
    "lift scale: chord of the main foil as it lifts / measured",
    "drag area of the windage, more than given",
    "sail power: greatest lift / given",
    "chop: waves as they shake her / given",
    "skill of the sailor, more than given"};

static void tell_head(const lw_taking *t, lw_teller *teller)
{
    char text[700], path[300];
    lw_text_tame(path, sizeof path, t->path);
    LW_FIT(text, "%s: %zu of %zu logged days count, with %zu numbers.", t->inputs->boat.name,
           t->season.count, t->entries.count, t->told);
    if (t->of_others)
        lw_text_add(text, sizeof text,
                    " %zu are of another boat, or of this one measured otherwise.", t->of_others);
    if (t->of_weights)
        lw_text_add(text, sizeof text, " %zu are of a sailor of another weight.", t->of_weights);
    lw_tell_sentence(teller, "question", text);
    lw_tell_name(teller, "boat", t->inputs->boat.name);
    lw_tell_name(teller, "logbook", path);
}

// --- values

static void tell_values(const lw_taking *t, lw_teller *teller)
{
    static const lw_item columns[] = {
        {"key", NULL, LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
        {"value", "learned", LW_AS_NUMBER, LW_UNIT_NONE, 3, NULL},
        {"error", "", LW_AS_NUMBER, LW_UNIT_NONE, 3, NULL},
        {"before", "before", LW_AS_NUMBER, LW_UNIT_NONE, 3, NULL},
        {"before_error", "", LW_AS_NUMBER, LW_UNIT_NONE, 3, NULL},
        {"unit", NULL, LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
        {"what", "what", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
    };
    const lw_learning *l = &t->learning;
    lw_tell_table(teller, "learned", "Learned, with one standard error", columns,
                  LW_COUNT_OF(columns));
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) {
        const lw_quantity *row = &lw_hidden_table.rows[k];
        lw_tell_row(teller);
        lw_tell_text(teller, NULL, row->key);
        lw_learned_tell_value(teller, row, lw_quantity_value(row, &t->learned.values), "");
        lw_learned_tell_value(teller, row, lw_quantity_value(row, &t->learned.errors), "± ");
        lw_learned_tell_value(teller, row, lw_quantity_value(row, &l->before), "");
        lw_learned_tell_value(teller, row, lw_quantity_value(row, &l->errors), "± ");
        lw_tell_text(teller, NULL, lw_unit_sign(row->unit));
        lw_tell_text(teller, NULL, names[k]);
    }
    lw_tell_end(teller);
}

// --- what the days do not tell

static double likeness(const lw_learned *learned, size_t a, size_t b)
{
    return learned->covariance[a][b] / sqrt(learned->covariance[a][a] * learned->covariance[b][b]);
}

static void say_open(const lw_learned *learned, lw_teller *teller)
{
    char text[300];
    for (size_t a = 0; a < LW_HIDDEN_COUNT; a++) {
        if (sqrt(learned->covariance[a][a]) > LW_AS_BEFORE) {
            LW_FIT(text, "The days hardly tell of this: %s.", names[a]);
            lw_tell_text(teller, NULL, text);
        }
        for (size_t b = 0; b < a; b++) {
            if (fabs(likeness(learned, a, b)) <= LW_ALIKE) continue;
            LW_FIT(text, "The days cannot tell these two apart: %s; %s.", names[b], names[a]);
            lw_tell_text(teller, NULL, text);
        }
    }
}

static void tell_left_out(const lw_taking *t, lw_teller *teller)
{
    static const lw_item columns[] = {
        {"told", "off by, root mean square", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
        {"as_measured", "as measured", LW_AS_NUMBER, LW_UNIT_NONE, 2, NULL},
        {"learned", "learned", LW_AS_NUMBER, LW_UNIT_NONE, 2, NULL},
        {"unit", NULL, LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
    };
    static const char *const kinds[LW_LESSON_KINDS] = {"turns used", "speed flying", "its scatter",
                                                       "part flown", "swims"};
    lw_tell_table(teller, "left_out", "Days foreseen without having been learned from", columns,
                  LW_COUNT_OF(columns));
    for (size_t kind = 0; kind < LW_LESSON_KINDS; kind++) {
        lw_quantity row = lw_lesson_table.rows[lw_lesson_first((lw_lesson_kind)kind)];
        row.decimals = 2;
        lw_tell_row(teller);
        lw_tell_text(teller, NULL, kinds[kind]);
        if (isnan(t->left_out.learned[kind])) {
            lw_tell_number(teller, NULL, NAN);
            lw_tell_number(teller, NULL, NAN);
        } else {
            lw_learned_tell_value(teller, &row, t->left_out.as_measured[kind], "");
            lw_learned_tell_value(teller, &row, t->left_out.learned[kind], "");
        }
        lw_tell_text(teller, NULL, lw_unit_sign(row.unit));
    }
    lw_tell_end(teller);
}

// --- too little

static void tell_lack(const lw_taking *t, lw_teller *teller)
{
    char text[400];
    if (t->told >= LW_LEARNED_LEAST && !t->is_whole)
        LW_FIT(text, "Stopped before anything was learned.");
    else if (t->told >= LW_LEARNED_LEAST)
        LW_FIT(text,
               "Too little: on most of these days the boat as measured does not fly or is "
               "not held with that pin. Look at the files with `lullwise check`.");
    else
        LW_FIT(text,
               "Too little to learn from: %zu numbers, and it takes %d. Log days of this boat with "
               "the turns used (--set turns.upwind='4 turns') and a track (--track FILE), three "
               "days or more.",
               t->told, LW_LEARNED_LEAST);
    lw_tell_sentence(teller, "lacks", text);
}

static void tell_trust(const lw_taking *t, lw_teller *teller)
{
    lw_tell_list(teller, "trust", "How far to trust it");
    say_open(&t->learned, teller);
    lw_tell_text(teller, NULL,
                 "Errors hold if turns are good to half a turn, speeds to 0.3 kn and the wind as "
                 "read to 0.7 kn, which is judged, and if the rudder was wound for speed.");
    lw_tell_text(teller, NULL,
                 "Days left out are foreseen in the wind that fits their numbers best, within its "
                 "error, with the files as measured and with what is learned alike.");
    lw_tell_text(teller, NULL, "Verdicts and signs are not learned from.");
    lw_tell_end(teller);
}

void lw_taking_tell(const void *it, lw_teller *teller)
{
    const lw_taking *t = it;
    const bool is_learned = lw_taking_is_answered(t);
    tell_head(t, teller);
    lw_tell_flag(teller, "is_learned", is_learned);
    if (!is_learned) {
        tell_lack(t, teller);
        return;
    }
    tell_values(t, teller);
    tell_left_out(t, teller);
    if (t->asks_day) lw_taking_tell_next(t, teller);
    tell_trust(t, teller);
}
