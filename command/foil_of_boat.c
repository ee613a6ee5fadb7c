// foil_of_boat.c - `lullwise foil --part`: a whole foil of a boat at a depth.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "command/cell.h"
#include "command/columns.h"
#include "command/foil_picture.h"
#include "command/foil_ways.h"
#include "command/given.h"
#include "command/notes.h"
#include "command/steps.h"
#include "command/terminal/print.h"
#include "lullwise/whole_foil.h"
#include "records/json.h"

#define USUAL_SPEED (12.0 * LW_KN)  // for a row of angles

typedef struct asked {
    const lw_inputs *inputs;
    const char *part;
    const lw_foil *foil;
    lw_craft craft;
    lw_named_section section;  // whose pressures count
    lw_whole_foil whole;
    bool has_load, has_section, is_measured;
    double load;  // [N]
    bool is_by_angle;
    lw_steps speeds, angles;
    int count;
    lw_whole_point points[LW_STEPS_MOST];
    double takes_off, cavitates;               // [m/s]; NaN: none
    lw_section_point sections[LW_STEPS_MOST];  // where the span is loaded most
    double pressures[LW_STEPS_MOST][LW_NODES_MOST];
} asked;

static const lw_bounds unbounded = {0};

static bool find_part(asked *a, const lw_options *options)
{
    const char *word = lw_options_text(options, "part");
    const bool is_rudder = word && strcmp(word, "rudder") == 0;
    if (word && !is_rudder && strcmp(word, "main") != 0) {
        lw_print_complaint("foil",
                           "--part %s: the boat has a main and a rudder foil; main or "
                           "rudder is expected",
                           word);
        return false;
    }
    a->part = is_rudder ? "rudder" : "main";
    a->foil = is_rudder ? &a->inputs->boat.rudder_foil : &a->inputs->boat.main_foil;
    a->whole.foil = is_rudder ? &a->craft.rudder_foil : &a->craft.main_foil;
    return true;
}

static bool read_place(asked *a, const lw_options *options)
{
    lw_foil_place *place = &a->whole.place;
    place->depth = LW_FOIL_USUAL_DEPTH;
    if (!lw_given_number(options, "depth", unbounded, &place->depth) ||
        !lw_given_number(options, "heel", unbounded, &place->heel) ||
        !lw_given_number(options, "flap", unbounded, &place->flap))
        return false;
    if (place->flap == 0.0 || (a->foil->flap_chord > 0.0 && a->foil->flap_span > 0.0)) return true;
    lw_print_complaint("foil", "--flap: the %s foil has no flap", a->part);
    return false;
}

static void name_own_section(lw_named_section *section, const lw_polar_shape *own)
{
    section->note_count = 0;
    if (lw_whole_own_section(&section->outline, own))
        LW_FIT(section->name, "%s", own->designation);
    else
        LW_FIT(section->name, "a four-digit section, %.1f %% thick", 100.0 * own->thickness);
}

static bool read_section(asked *a, const lw_options *options)
{
    const lw_boat *boat = &a->inputs->boat;
    const lw_polar_shape own =
        lw_sections_shape(boat, a->part[0] == 'r' ? LW_RUDDER_SECTION : LW_MAIN_SECTION);
    a->has_section = lw_options_has(options, "section");
    a->is_measured = !a->has_section && !own.designation;
    a->whole.outline = &a->section.outline;
    if (a->has_section) return lw_foil_read_section(&a->section, options);
    name_own_section(&a->section, &own);
    return true;
}

// Speeds that carry a load, or angles at one speed. The rudder foil's load is not known by itself.
static bool read_rows(asked *a, const lw_options *options)
{
    a->has_load = lw_options_has(options, "load");
    a->load = a->craft.weight;
    a->is_by_angle = lw_options_has(options, "alpha") || (a->part[0] == 'r' && !a->has_load);
    if (a->is_by_angle && a->has_load) {
        lw_print_complaint("foil", "--alpha sets the lift, and so does --load; leave one out");
        return false;
    }
    a->speeds.count = a->is_by_angle ? 1 : 11;
    for (int i = 0; i < a->speeds.count; i++)
        a->speeds.value[i] = a->is_by_angle ? USUAL_SPEED : (8 + 2 * i) * LW_KN;
    a->angles.count = 13;
    for (int i = 0; i < a->angles.count; i++) a->angles.value[i] = (i - 4) * LW_DEG;
    if (!lw_given_number(options, "load", unbounded, &a->load) ||
        !lw_steps_given(&a->speeds, options, "speed", false) ||
        !lw_steps_given(&a->angles, options, "alpha", true))
        return false;
    if (!a->is_by_angle || a->speeds.count == 1) return true;
    lw_print_complaint("foil", "a row of angles is for one speed; --load goes with several");
    return false;
}

static void work_out(asked *a)
{
    a->count = a->is_by_angle ? a->angles.count : a->speeds.count;
    for (int i = 0; i < a->count; i++)
        a->points[i] = a->is_by_angle
                           ? lw_whole_at(&a->whole, a->speeds.value[0], a->angles.value[i])
                           : lw_whole_carrying(&a->whole, a->speeds.value[i], a->load);
    a->takes_off = a->cavitates = NAN;
    if (a->is_by_angle) return;
    a->takes_off = lw_whole_takes_off(&a->whole, a->load);
    if (isfinite(a->takes_off)) a->cavitates = lw_whole_cavitates(&a->whole, a->load);
}

// --- how far to trust it

static lw_notes notes_of(const asked *a)
{
    lw_notes notes = {0};
    const double waves = lw_whole_waves_below(&a->whole);
    const double slow = fmin(a->speeds.value[0], a->speeds.value[a->speeds.count - 1]);
    if (a->is_measured)
        lw_note(&notes,
                "The section is not known by name: pressures are those of a four-digit section of "
                "the measured thickness and zero-lift angle. %s_section in the boat's file says "
                "which it really is.",
                a->part);
    if (a->has_section)
        lw_note(&notes, "Pressures are those of %s; all else is the boat's own section.",
                a->section.name);
    if (slow < waves)
        lw_note(
            &notes,
            "Below %.1f kn the surface at this depth makes waves of its own, which are left out.",
            waves / LW_KN);
    if (a->whole.tip_depth < 0.0)
        lw_note(&notes, "The higher tip is %.0f cm out of the water.", -100.0 * a->whole.tip_depth);
    if (a->takes_off > slow) lw_note(&notes, "\"-\": too slow to carry it.");
    if (a->part[0] == 'r')
        lw_note(&notes, "The main foil's downwash is left out: the angle is to the flow there.");
    lw_note(&notes, "Struts are not counted, but for the corner where one meets the foil.");
    return notes;
}

static lw_list list_of(const asked *a)
{
    return (lw_list){&lw_whole_table, a->points, sizeof a->points[0], a->count};
}

static json_t *speed_or_null(double speed)
{
    return isfinite(speed) ? json_real(speed / LW_KN) : json_null();
}

static json_t *answer_json(const asked *a)
{
    const lw_notes notes = notes_of(a);
    const lw_foil_place *place = &a->whole.place;
    json_t *json = json_pack(
        "{s:s, s:s, s:s, s:f, s:f, s:f, s:f, s:o, s:o, s:o, s:o, s:o}", "boat",
        a->inputs->boat.name, "part", a->part, "section", a->section.name, "depth", place->depth,
        "heel", place->heel / LW_DEG, "flap", place->flap / LW_DEG, "tip_depth", a->whole.tip_depth,
        "load", a->is_by_angle ? json_null() : json_real(a->load), "takes_off_at",
        speed_or_null(a->takes_off), "cavitates_at", speed_or_null(a->cavitates), "foil",
        lw_list_json(list_of(a)), "notes", lw_notes_json(&notes));
    json_object_set_new(
        json, "units",
        json_pack("{s:o, s:s, s:s, s:s, s:s, s:s, s:s, s:s}", "foil",
                  lw_table_units_json(&lw_whole_table), "depth", "m", "heel", "deg", "flap", "deg",
                  "tip_depth", "m", "load", "N", "takes_off_at", "kn", "cavitates_at", "kn"));
    return json;
}

static void print_summary(const asked *a)
{
    char text[300];
    if (!isfinite(a->takes_off))
        LW_FIT(text, "No speed up to 80 kn carries %.0f N.", a->load);
    else if (isfinite(a->cavitates))
        LW_FIT(text, "Carries %.0f N%s from %.1f kn on; from %.1f kn on that boils the water.",
               a->load, a->has_load ? "" : ", the whole weight,", a->takes_off / LW_KN,
               a->cavitates / LW_KN);
    else
        LW_FIT(text, "Carries %.0f N%s from %.1f kn on, and boils no water up to 80 kn.", a->load,
               a->has_load ? "" : ", the whole weight,", a->takes_off / LW_KN);
    lw_print_wrapped(stdout, text, 0, 0);
}

// "Grey Heron, main foil, NACA 63-412" and "0.50 m deep, heeled 10 deg, flap +5.0 deg".
typedef struct heading {
    char what[200], where[100];
} heading;

static heading heading_of(const asked *a)
{
    heading h;
    char flap[40] = "", heel[40] = "";
    const lw_foil_place *place = &a->whole.place;
    if (place->flap != 0.0) LW_FIT(flap, ", flap %+.1f deg", place->flap / LW_DEG);
    if (place->heel != 0.0) LW_FIT(heel, ", heeled %.0f deg", place->heel / LW_DEG);
    LW_FIT(h.what, "%s, %s foil, %s", a->inputs->boat.name, a->part, a->section.name);
    LW_FIT(h.where, "%.2f m deep%s%s", place->depth, heel, flap);
    return h;
}

static void print_text(const asked *a)
{
    char text[310];
    const heading h = heading_of(a);
    LW_FIT(text, "%s, %s.", h.what, h.where);
    lw_print_wrapped(stdout, text, 0, 0);
    if (!a->is_by_angle) print_summary(a);
    putchar('\n');
    lw_columns_print(stdout, list_of(a),
                     "speed alpha coefficient lift section induced drag lift_to_drag moment "
                     "least_pressure cavitates_at");
    putchar('\n');
    lw_print_wrapped(stdout,
                     "D_p: drag of the section and its corner, D_i: induced, M: N m about the "
                     "quarter chord, C_p: lowest pressure where the span is loaded most, V_c: from "
                     "this speed on it boils the water at this lift coefficient.",
                     0, 0);
    const lw_notes notes = notes_of(a);
    lw_notes_print(stdout, &notes);
}

static bool write_picture(asked *a, const char *path, bool may_replace)
{
    char with[40], subtitle[200];
    const heading h = heading_of(a);
    for (int i = 0; i < a->count; i++)
        a->sections[i] = lw_whole_pressures(&a->whole, a->points[i].coefficient, a->pressures[i]);
    if (a->is_by_angle)
        LW_FIT(with, "at %.3g kn", a->speeds.value[0] / LW_KN);
    else
        LW_FIT(with, "carrying %.0f N", a->load);
    LW_FIT(subtitle, "%s, %s; where the span is loaded most, perfect fluid", h.where, with);
    const lw_section_picture picture = {.title = h.what,
                                        .subtitle = subtitle,
                                        .profile = &a->whole.flow.profile,
                                        .points = a->sections,
                                        .pressures = (const double(*)[LW_NODES_MOST])a->pressures,
                                        .speeds = a->is_by_angle ? NULL : a->speeds.value,
                                        .count = a->count};
    return lw_section_picture_write(&picture, path, may_replace);
}

static lw_exit answer(asked *a, const lw_options *options)
{
    const char *why, *picture = lw_options_text(options, "svg");
    if (!lw_whole_prepare(&a->whole, a->foil, &why)) {
        lw_print_complaint("foil", "%s foil: %s", a->part, why);
        return LW_EXIT_WRONG_INPUT;
    }
    work_out(a);
    if (picture && !write_picture(a, picture, lw_options_has(options, "force")))
        return LW_EXIT_WRONG_INPUT;
    if (lw_options_has(options, "json"))
        lw_json_write(answer_json(a), stdout);
    else if (!picture || strcmp(picture, "-") != 0)
        print_text(a);
    return a->is_by_angle || isfinite(a->takes_off) ? LW_EXIT_FINE : LW_EXIT_NO_ANSWER;
}

lw_exit lw_foil_of_boat(const lw_options *options, const lw_inputs *inputs)
{
    lw_exit ended = LW_EXIT_WRONG_INPUT;
    asked *a = calloc(1, sizeof *a);
    if (!a) {
        lw_print_complaint("foil", "there is not enough memory");
        return LW_EXIT_NO_ANSWER;
    }
    a->inputs = inputs;
    a->craft = lw_given_craft(inputs);
    a->whole.medium = &a->craft.medium;
    if (find_part(a, options) && read_place(a, options) && read_section(a, options) &&
        read_rows(a, options))
        ended = answer(a, options);
    free(a);
    return ended;
}
