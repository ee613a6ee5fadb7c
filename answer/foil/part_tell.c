// part_tell.c - a whole foil of a boat told and drawn.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/foil/foil.h"
#include "answer/words/number_text.h"
#include "answer/words/points.h"
#include "picture/section_picture.h"

#define FASTEST (80.0 * LW_KN)  // that the engine looks at

// "Grey Heron, main foil, NACA 63-412" and "0.50 m deep, heeled 10°, flap +5.0°".
typedef struct heading {
    char what[200], where[100];
} heading;

static heading heading_of(const lw_foil_part *a)
{
    heading h = {0};
    char flap[40] = "", heel[40] = "";
    const lw_foil_place *place = &a->whole.place;
    if (place->flap != 0.0)
        LW_FIT(flap, ", flap %+.1f%s", place->flap / LW_DEG, lw_unit_behind(LW_UNIT_DEG));
    if (place->heel != 0.0) LW_FIT(heel, ", heeled %s", LW_ANGLE_TEXT(place->heel, 0));
    LW_FIT(h.what, "%s, %s foil, %s", a->inputs->boat.name, lw_foil_part_word(a), a->section.name);
    LW_FIT(h.where, "%.2f m deep%s%s", place->depth, heel, flap);
    return h;
}

static void tell_question(const lw_foil_part *a, lw_teller *t)
{
    char text[310];
    const heading h = heading_of(a);
    const lw_foil_place *place = &a->whole.place;
    LW_FIT(text, "%s, %s.", h.what, h.where);
    lw_tell_sentence(t, "question", text);
    lw_tell_name(t, "boat", a->inputs->boat.name);
    lw_tell_name(t, "part", lw_foil_part_word(a));
    lw_tell_name(t, "section", a->section.name);
    lw_tell_number(t, &(lw_item){.key = "depth", .unit = LW_UNIT_M}, place->depth);
    lw_tell_number(t, &(lw_item){.key = "heel", .unit = LW_UNIT_DEG}, place->heel);
    lw_tell_number(t, &(lw_item){.key = "flap", .unit = LW_UNIT_DEG}, place->flap);
    lw_tell_number(t, &(lw_item){.key = "tip_depth", .unit = LW_UNIT_M}, a->whole.tip_depth);
    lw_tell_number(t, &(lw_item){.key = "load", .unit = LW_UNIT_N}, a->is_by_angle ? NAN : a->load);
    lw_tell_number(t, &(lw_item){.key = "takes_off_at", .unit = LW_UNIT_KN}, a->takes_off);
    lw_tell_number(t, &(lw_item){.key = "cavitates_at", .unit = LW_UNIT_KN}, a->cavitates);
}

// From where on it carries the load, and from where on that boils the water.
static void tell_answer(const lw_foil_part *a, lw_teller *t)
{
    char text[300];
    const lw_unit unit = t->speed_unit;
    const char *whole = a->has_load ? "" : ", the whole weight,";
    if (!isfinite(a->takes_off))
        LW_FIT(text, "No speed up to %s carries %.0f N.", LW_SPEED_TEXT(FASTEST, 0, unit), a->load);
    else if (isfinite(a->cavitates))
        LW_FIT(text, "Carries %.0f N%s from %s on; from %s on that boils the water.", a->load,
               whole, LW_SPEED_TEXT(a->takes_off, 1, unit), LW_SPEED_TEXT(a->cavitates, 1, unit));
    else
        LW_FIT(text, "Carries %.0f N%s from %s on, and boils no water up to %s.", a->load, whole,
               LW_SPEED_TEXT(a->takes_off, 1, unit), LW_SPEED_TEXT(FASTEST, 0, unit));
    lw_tell_sentence(t, "answer", a->is_by_angle ? NULL : text);
}

static void tell_points(const lw_foil_part *a, lw_teller *t)
{
    const lw_points points = {
        &lw_whole_table, a->points, sizeof a->points[0], a->count,
        "speed alpha coefficient lift section induced drag lift_to_drag moment least_pressure "
        "cavitates_at"};
    lw_tell_points(t, "foil", "", points);
    lw_tell_symbols(t, "symbols", points);
}

static void tell_section(const lw_foil_part *a, lw_teller *t)
{
    char text[300];
    if (a->is_measured) {
        LW_FIT(text,
               "The section is not known by name: pressures are those of a four-digit section of "
               "the measured thickness and zero-lift angle. %s_section in the boat's file says "
               "which it really is.",
               lw_foil_part_word(a));
        lw_tell_text(t, NULL, text);
    }
    if (a->has_section) {
        LW_FIT(text, "Pressures are those of %s; all else is the boat's own section.",
               a->section.name);
        lw_tell_text(t, NULL, text);
    }
}

static void tell_surface(const lw_foil_part *a, double slow, lw_teller *t)
{
    char text[200];
    const double waves = lw_whole_waves_below(&a->whole);
    if (slow < waves) {
        LW_FIT(text,
               "Below %s the surface at this depth makes waves of its own, which are left out.",
               LW_SPEED_TEXT(waves, 1, t->speed_unit));
        lw_tell_text(t, NULL, text);
    }
    if (a->whole.tip_depth < 0.0) {
        LW_FIT(text, "The higher tip is %.0f cm out of the water.", -100.0 * a->whole.tip_depth);
        lw_tell_text(t, NULL, text);
    }
}

static void tell_trust(const lw_foil_part *a, lw_teller *t)
{
    const double slow = fmin(a->speeds.value[0], a->speeds.value[a->speeds.count - 1]);
    lw_tell_list(t, "trust", "How far to trust it");
    tell_section(a, t);
    tell_surface(a, slow, t);
    if (a->takes_off > slow) lw_tell_text(t, NULL, "\"-\": too slow to carry it.");
    if (a->is_rudder)
        lw_tell_text(t, NULL,
                     "The main foil's downwash is left out: the angle is to the flow there.");
    lw_tell_text(t, NULL, "Struts are not counted, but for the corner where one meets the foil.");
    lw_tell_end(t);
}

void lw_foil_part_tell(const void *it, lw_teller *t)
{
    const lw_foil_part *a = it;
    tell_question(a, t);
    tell_answer(a, t);
    tell_points(a, t);
    tell_trust(a, t);
}

void lw_foil_part_draw(const void *it, FILE *out)
{
    const lw_foil_part *a = it;
    char with[40], subtitle[200];
    const heading h = heading_of(a);
    if (a->is_by_angle)
        LW_FIT(with, "at %.3g%s", a->speeds.value[0] / lw_unit_in_si(a->speed_unit),
               lw_unit_behind(a->speed_unit));
    else
        LW_FIT(with, "carrying %.0f N", a->load);
    LW_FIT(subtitle, "%s, %s; where the span is loaded most, perfect fluid", h.where, with);
    const lw_section_picture picture = {.title = h.what,
                                        .subtitle = subtitle,
                                        .profile = &a->whole.flow.profile,
                                        .points = a->sections,
                                        .pressures = a->pressures,
                                        .speeds = a->is_by_angle ? NULL : a->speeds.value,
                                        .speed_unit = a->speed_unit,
                                        .count = (int)a->count};
    lw_section_draw(out, &picture);
}
