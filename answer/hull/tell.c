// tell.c - the answer of `lullwise hull` told.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/hull/hull.h"
#include "answer/words/points.h"
#include "records/source_text.h"

static const char *name_of(const lw_hull_answer *a)
{
    return a->is_wigley ? "Wigley's hull" : a->inputs->boat.name;
}

static void tell_question(const lw_hull_answer *a, lw_teller *t)
{
    char text[400], lines[300];
    const char *how = a->has_place ? "trimmed by where the sailor sits" : "level";
    if (a->is_wigley)
        LW_FIT(text, "Wigley's hull, B = L/10, T = L/16, %.2f m long.", a->length);
    else if (a->offsets)
        LW_FIT(text, "Lines of %s with the weights of %s and %s aboard, %s.",
               lw_source_name(a->offsets), name_of(a), a->inputs->sailor.name, how);
    else
        LW_FIT(text, "%s with %s aboard, %s.", name_of(a), a->inputs->sailor.name, how);
    lw_text_tame(lines, sizeof lines, text);
    lw_tell_sentence(t, "question", lines);
    lw_tell_name(t, "hull", name_of(a));
    lw_tell_name(t, "sailor", a->is_wigley ? NULL : a->inputs->sailor.name);
    lw_tell_number(t, &(lw_item){.key = "water_density", .unit = LW_UNIT_KGPM3},
                   a->medium.water_density);
    lw_tell_number(t, &(lw_item){.key = "form_factor", .digits = 2}, a->form_factor);
}

static void tell_afloat(const lw_hull_answer *a, lw_teller *t)
{
    lw_tell_object(t, "afloat", "Afloat");
    lw_tell_members(t, &lw_hull_afloat_table, &a->afloat);
    lw_tell_end(t);
}

static void tell_resistance(const lw_hull_answer *a, lw_teller *t)
{
    char text[200];
    const lw_points points = {
        &lw_hull_drive_table, a->at, sizeof a->at[0], a->count,
        "froude speed friction waves total of_weight friction_coefficient wave_coefficient "
        "total_coefficient"};
    LW_FIT(text,
           "Friction by the line of the towing tanks, form factor %.2f; waves by thin-ship theory.",
           a->form_factor);
    lw_tell_points(t, "curve", "Resistance", points);
    lw_tell_sentence(t, "method", text);
    lw_tell_symbols(t, "symbols", points);
}

// Where the theory leaves its grounds.
typedef struct doubts {
    bool has_judged_lines, is_wide, is_beyond;
} doubts;

static doubts doubts_of(const lw_hull_answer *a)
{
    const double first = a->at[0].froude, last = a->at[a->count - 1].froude;
    return (doubts){.has_judged_lines = !a->is_wigley && !a->offsets,
                    .is_wide = a->afloat.beam / a->afloat.length > 0.15,
                    .is_beyond = fmin(first, last) < 0.15 || fmax(first, last) > 1.5};
}

static void tell_trust(const lw_hull_answer *a, lw_teller *t)
{
    char text[200];
    const doubts d = doubts_of(a);
    const bool is_any = d.has_judged_lines || d.is_wide || d.is_beyond;
    lw_tell_list(t, "trust", is_any ? "How far to trust it" : "");
    if (d.has_judged_lines)
        lw_tell_text(t, NULL,
                     "The lines between the measured dimensions are our own: the dimensions are "
                     "known, the shape is judged.");
    if (d.is_wide) {
        LW_FIT(text, "The hull is %.2f of its length wide; thin-ship theory holds to 0.15.",
               a->afloat.beam / a->afloat.length);
        lw_tell_text(t, NULL, text);
    }
    if (d.is_beyond)
        lw_tell_text(t, NULL,
                     "Wave resistance holds for Froude numbers from 0.15 to 1.5; below 0.1 its "
                     "coefficient is that at 0.1.");
    lw_tell_end(t);
}

void lw_hull_answer_tell(const void *it, lw_teller *t)
{
    const lw_hull_answer *a = it;
    char text[200];
    tell_question(a, t);
    if (a->status != LW_HULL_OK) {
        LW_FIT(text, "No answer: %s.", lw_hull_status_text(a->status));
        lw_tell_sentence(t, "answer", text);
        return;
    }
    tell_afloat(a, t);
    if (a->count == 0) return;
    tell_resistance(a, t);
    tell_trust(a, t);
}
