// section_tell.c - the flow about a foil section told and drawn.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/foil/foil.h"
#include "answer/words/number_text.h"
#include "answer/words/points.h"
#include "picture/section_picture.h"

_Static_assert(LW_STEPS_MOST <= LW_PICTURE_POINTS_MOST, "a picture has every angle");

// "3e6", "4.5e5".
static void reynolds_text(char text[24], double reynolds)
{
    int power = 0;
    double unit = 1.0;
    for (; reynolds >= 10.0 * unit * (1.0 - 1e-9); power++) unit *= 10.0;
    lw_text_fit(text, 24, "%.3ge%d", reynolds / unit, power);
}

// "flap of 30 % of the chord down 5.0°; Re 3e6, transition free".
static void say_flow(const lw_foil_section *a, char text[200])
{
    char flap[64] = "", number[24] = "";
    if (a->reynolds > 0.0) reynolds_text(number, a->reynolds);
    if (a->has_flap)
        LW_FIT(flap, "flap of %.0f %% of the chord %s %s; ", 100.0 * a->flap_chord,
               a->flap_angle < 0.0 ? "up" : "down", LW_ANGLE_TEXT(fabs(a->flap_angle), 1));
    if (a->reynolds == 0.0)
        lw_text_fit(text, 200, "%sperfect fluid: no friction, no stall", flap);
    else if (a->trip < 1.0)
        lw_text_fit(text, 200, "%sRe %s, turbulent from x/c %.3g", flap, number, a->trip);
    else
        lw_text_fit(text, 200, "%sRe %s, waves grow e^%.3g", flap, number, a->waves);
}

static bool has_stall(const lw_foil_section *a)
{
    return a->has_stall && (a->stall.cause == LW_STALL_TAIL || a->stall.cause == LW_STALL_NOSE);
}

static void tell_question(const lw_foil_section *a, lw_teller *t)
{
    char text[400], flow[200];
    say_flow(a, flow);
    LW_FIT(text, "%s, %.2f m deep; %s.", a->section.name, a->depth, flow);
    lw_tell_sentence(t, "question", text);
    lw_tell_name(t, "section", a->section.name);
    lw_tell_number(t, &(lw_item){.key = "depth", .unit = LW_UNIT_M}, a->depth);
    lw_tell_number(t, &(lw_item){.key = "reynolds"}, a->reynolds > 0.0 ? a->reynolds : NAN);
    lw_tell_number(t, &(lw_item){.key = "trip"}, a->trip < 1.0 ? a->trip : NAN);
    lw_tell_number(t, &(lw_item){.key = "waves"}, a->reynolds > 0.0 ? a->waves : NAN);
    lw_tell_number(t, &(lw_item){.key = "flap", .unit = LW_UNIT_DEG},
                   a->has_flap ? a->flap_angle : NAN);
    lw_tell_number(t, &(lw_item){.key = "flap_chord"}, a->has_flap ? a->flap_chord : NAN);
    lw_tell_list(t, "notes", "");
    for (int i = 0; i < a->section.note_count; i++) lw_tell_text(t, NULL, a->section.notes[i]);
    lw_tell_end(t);
}

static void tell_polar(const lw_foil_section *a, lw_teller *t)
{
    const char *shown = a->reynolds > 0.0
                            ? "alpha lift drag lift_to_drag moment least_pressure least_at "
                              "transition_above transition_below cavitates_at"
                            : "alpha lift moment least_pressure least_at cavitates_at";
    const lw_points points = {&lw_section_table, a->points, sizeof a->points[0], a->count, shown};
    lw_tell_points(t, "polar", "", points);
    lw_tell_symbols(t, "symbols", points);
}

static void tell_greatest(const lw_foil_section *a, lw_teller *t)
{
    static const char *const causes[] = {
        "it still rises there", "layers and outer flow find no agreement beyond",
        "the flow leaves the tail", "the nose's suction peak bursts"};
    static const char *const words[] = {"still rises", "no agreement", "tail", "nose"};
    const bool is_there = has_stall(a), is_asked = a->has_stall;
    char text[200];
    LW_FIT(text, "%s %.2f, at %s: %s.",
           is_there ? "Greatest lift" : "Greatest lift not found; the most that was,",
           a->stall.lift, LW_ANGLE_TEXT(a->stall.alpha, 1), causes[a->stall.cause]);
    lw_tell_object(t, "greatest_lift", "");
    lw_tell_sentence(t, "sentence", is_asked ? text : NULL);
    lw_tell_number(t, &(lw_item){.key = "lift"}, is_there ? a->stall.lift : NAN);
    lw_tell_number(t, &(lw_item){.key = "alpha", .unit = LW_UNIT_DEG},
                   is_there ? a->stall.alpha : NAN);
    lw_tell_name(t, "cause", is_asked ? words[a->stall.cause] : NULL);
    lw_tell_end(t);
}

// Angles that are not to be trusted.
typedef struct doubts {
    int missing, beyond;
} doubts;

static doubts count_doubts(const lw_foil_section *a)
{
    doubts d = {0};
    for (size_t i = 0; a->reynolds > 0.0 && i < a->count; i++) {
        const bool is_there = isfinite(a->points[i].lift);
        d.missing += !is_there;
        d.beyond += is_there && has_stall(a) && a->points[i].alpha > a->stall.alpha + 1e-6;
    }
    return d;
}

static bool leaps(double before, double after) { return fabs(after - before) > 0.05; }

// Why an angle has no answer, by the nearest that have one.
static const char *why_missing(const lw_foil_section *a, size_t i)
{
    const lw_section_point *b = NULL, *c = NULL;
    for (size_t k = i; k-- > 0 && !b;) b = isfinite(a->points[k].lift) ? &a->points[k] : NULL;
    for (size_t k = i + 1; k < a->count && !c; k++)
        c = isfinite(a->points[k].lift) ? &a->points[k] : NULL;
    if (has_stall(a) && a->points[i].alpha > a->stall.alpha) return "beyond the greatest lift";
    if (b && c && leaps(b->transition_below, c->transition_below))
        return "transition below leaps there";
    if (b && c && leaps(b->transition_above, c->transition_above))
        return "transition above leaps there";
    return "layers and outer flow found no agreement";
}

static void tell_sureness(const lw_foil_section *a, lw_teller *t)
{
    char text[160];
    if (a->section.outline.given == 0) return;
    if (isnan(a->unsure))
        LW_FIT(text,
               "How sure the lowest pressure is cannot be told of %d points: give %d or more.",
               a->section.outline.given, 2 * LW_OUTLINE_LEAST);
    else
        LW_FIT(text,
               "Lowest pressure: sure to about %s, by which every second point left out "
               "moves it.",
               LW_MEASURE_TEXT(a->unsure, a->unsure < 0.1, LW_UNIT_PERCENT));
    lw_tell_text(t, NULL, text);
}

static bool has_others(const lw_foil_section *a)
{
    for (size_t i = 0; i < a->count; i++) {
        if (isfinite(a->others[i].lift)) return true;
    }
    return false;
}

static void tell_others(const lw_foil_section *a, lw_teller *t)
{
    char text[160];
    for (size_t i = 0; i < a->count; i++) {
        const lw_section_point *taken = &a->points[i], *other = &a->others[i];
        if (!isfinite(other->lift)) continue;
        LW_FIT(text,
               "At %s two flows hold: lift %.3f and drag %.4f, which is told, or %.3f and %.4f.",
               LW_ANGLE_TEXT(taken->alpha, 2), taken->lift, taken->drag, other->lift, other->drag);
        lw_tell_text(t, NULL, text);
    }
}

static void tell_trust(const lw_foil_section *a, lw_teller *t)
{
    char text[160];
    const doubts d = count_doubts(a);
    const bool is_any = d.beyond || d.missing || a->section.outline.given > 0 || has_others(a);
    lw_tell_list(t, "trust", is_any ? "How far to trust it" : "");
    tell_sureness(a, t);
    tell_others(a, t);
    if (d.beyond) {
        LW_FIT(text, "%d angle%s beyond the greatest lift: do not rely on %s.", d.beyond,
               d.beyond == 1 ? " lies" : "s lie", d.beyond == 1 ? "it" : "them");
        lw_tell_text(t, NULL, text);
    }
    for (size_t i = 0; d.missing && i < a->count; i++) {
        if (isfinite(a->points[i].lift)) continue;
        LW_FIT(text, "At %s there is no answer: %s.", LW_ANGLE_TEXT(a->points[i].alpha, 2),
               why_missing(a, i));
        lw_tell_text(t, NULL, text);
    }
    lw_tell_end(t);
}

void lw_foil_section_tell(const void *it, lw_teller *t)
{
    const lw_foil_section *a = it;
    tell_question(a, t);
    if (a->status != LW_PROFILE_OK) {
        lw_tell_sentence(t, "answer", lw_profile_status_text(a->status));
        return;
    }
    tell_polar(a, t);
    tell_greatest(a, t);
    tell_trust(a, t);
}

void lw_foil_section_draw(const void *it, FILE *out)
{
    const lw_foil_section *a = it;
    char flow[200];
    say_flow(a, flow);
    const lw_section_picture picture = {.title = a->section.name,
                                        .subtitle = flow,
                                        .profile = &a->flow.profile,
                                        .points = a->points,
                                        .pressures = a->pressures,
                                        .has_drag = a->reynolds > 0.0,
                                        .count = (int)a->count};
    lw_section_draw(out, &picture);
}
