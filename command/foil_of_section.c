// foil_of_section.c - `lullwise foil --section`: a section by its designation or coordinates.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "command/columns.h"
#include "command/foil_picture.h"
#include "command/foil_ways.h"
#include "command/given.h"
#include "command/notes.h"
#include "command/steps.h"
#include "command/terminal/print.h"
#include "lullwise/section_flow.h"
#include "records/json.h"

#define USUAL_FLAP_CHORD 0.3

typedef struct asked {
    lw_medium medium;
    lw_named_section section;
    lw_section_flow flow;
    double depth, flap_angle, flap_chord, reynolds, trip;
    bool has_flap;
    lw_layer_stall stall;  // with friction
    lw_steps angles;
    lw_section_point points[LW_STEPS_MOST];
    double pressures[LW_STEPS_MOST][LW_NODES_MOST];
    char subtitle[200];
} asked;

static const lw_bounds unbounded = {0};

static bool read_options(asked *a, const lw_options *options)
{
    a->depth = LW_FOIL_USUAL_DEPTH;
    a->flap_chord = USUAL_FLAP_CHORD;
    a->trip = 1.0;
    a->has_flap = lw_options_has(options, "flap");
    if (!a->has_flap && lw_options_has(options, "flap-chord")) {
        lw_print_complaint("foil", "--flap-chord goes with --flap, as in --flap '5 deg'");
        return false;
    }
    if (!lw_options_has(options, "re") && lw_options_has(options, "trip")) {
        lw_print_complaint("foil", "--trip goes with --re: without it there is no friction");
        return false;
    }
    a->angles.count = 17;
    for (int i = 0; i < a->angles.count; i++) a->angles.value[i] = (i - 4) * LW_DEG;
    return lw_given_number(options, "depth", unbounded, &a->depth) &&
           lw_given_number(options, "re", unbounded, &a->reynolds) &&
           lw_given_number(options, "trip", unbounded, &a->trip) &&
           lw_given_number(options, "flap", unbounded, &a->flap_angle) &&
           lw_given_number(options, "flap-chord", unbounded, &a->flap_chord) &&
           lw_steps_given(&a->angles, options, "alpha", true);
}

static lw_list polar_of(const asked *a)
{
    return (lw_list){&lw_section_table, a->points, sizeof a->points[0], a->angles.count};
}

// "3e6", "4.5e5".
static void reynolds_text(char text[24], double reynolds)
{
    const double power = floor(log10(reynolds) + 1e-9);
    lw_text_fit(text, 24, "%.3ge%.0f", reynolds / pow(10.0, power), power);
}

static void write_subtitle(asked *a)
{
    char flap[64] = "", number[24] = "";
    if (a->reynolds > 0.0) reynolds_text(number, a->reynolds);
    if (a->has_flap)
        LW_FIT(flap, "flap of %.0f %% of the chord %s %.1f deg; ", 100.0 * a->flap_chord,
               a->flap_angle < 0.0 ? "up" : "down", fabs(a->flap_angle) / LW_DEG);
    if (a->reynolds == 0.0)
        LW_FIT(a->subtitle, "%sperfect fluid: no friction, no stall", flap);
    else if (a->trip < 1.0)
        LW_FIT(a->subtitle, "%sRe %s, turbulent from x/c %.3g", flap, number, a->trip);
    else
        LW_FIT(a->subtitle, "%sRe %s, transition free", flap, number);
}

// Sentences on the greatest lift, and on where the numbers are not to be trusted.
static void add_notes(lw_notes *notes, const asked *a)
{
    static const char *const causes[] = {"", "the flow leaves the tail",
                                         "the nose's suction peak bursts"};
    int missing = 0, swinging = 0, beyond = 0;
    if (a->reynolds == 0.0) return;
    const bool has_stall = a->stall.cause != LW_STALL_NOT_FOUND;
    for (int i = 0; i < a->angles.count; i++) {
        const bool is_there = isfinite(a->points[i].lift);
        missing += !is_there;
        swinging += is_there && a->points[i].settled == 0.0;
        beyond += is_there && has_stall && a->points[i].alpha > a->stall.alpha + 1e-6;
    }
    if (has_stall)
        lw_note(notes, "Greatest lift %.2f, at %.1f deg: %s.", a->stall.lift,
                a->stall.alpha / LW_DEG, causes[a->stall.cause]);
    if (beyond)
        lw_note(notes, "%d angle%s beyond that: do not rely on %s.", beyond,
                beyond == 1 ? " lies" : "s lie", beyond == 1 ? "it" : "them");
    if (swinging)
        lw_note(notes, "At %d angle%s the layers swing: good to some per cent only.", swinging,
                swinging == 1 ? "" : "s");
    if (missing)
        lw_note(notes,
                "At %d angle%s there is no answer: layers and outer flow found no agreement.",
                missing, missing == 1 ? "" : "s");
}

static json_t *greatest_json(const asked *a)
{
    if (a->reynolds == 0.0 || a->stall.cause == LW_STALL_NOT_FOUND) return json_null();
    return json_pack("{s:f, s:f, s:s}", "lift", a->stall.lift, "alpha", a->stall.alpha / LW_DEG,
                     "cause", a->stall.cause == LW_STALL_TAIL ? "tail" : "nose");
}

static json_t *answer_json(const asked *a)
{
    lw_notes notes = {0};
    for (int i = 0; i < a->section.note_count; i++) lw_note(&notes, "%s", a->section.notes[i]);
    add_notes(&notes, a);
    json_t *json = json_pack(
        "{s:s, s:f, s:o, s:o, s:o, s:o, s:o, s:o, s:o}", "section", a->section.name, "depth",
        a->depth, "reynolds", a->reynolds > 0.0 ? json_real(a->reynolds) : json_null(), "trip",
        a->trip < 1.0 ? json_real(a->trip) : json_null(), "flap",
        a->has_flap ? json_real(a->flap_angle / LW_DEG) : json_null(), "flap_chord",
        a->has_flap ? json_real(a->flap_chord) : json_null(), "polar", lw_list_json(polar_of(a)),
        "greatest_lift", greatest_json(a), "notes", lw_notes_json(&notes));
    json_object_set_new(
        json, "units",
        json_pack("{s:o, s:s, s:s, s:{s:s}}", "polar", lw_table_units_json(&lw_section_table),
                  "depth", "m", "flap", "deg", "greatest_lift", "alpha", "deg"));
    return json;
}

static void print_text(const asked *a)
{
    char text[400];
    const bool has_drag = a->reynolds > 0.0;
    LW_FIT(text, "%s: %s.", a->section.name, a->subtitle);
    lw_print_wrapped(stdout, text, 0, 0);
    for (int i = 0; i < a->section.note_count; i++)
        lw_print_wrapped(stdout, a->section.notes[i], 0, 2);
    putchar('\n');
    lw_columns_print(stdout, polar_of(a),
                     has_drag ? "alpha lift drag lift_to_drag moment least_pressure least_at "
                                "transition_above transition_below cavitates_at"
                              : "alpha lift moment least_pressure least_at cavitates_at");
    putchar('\n');
    lw_notes notes = {0};
    add_notes(&notes, a);
    lw_notes_print(stdout, &notes);
    if (notes.count) putchar('\n');
    LW_FIT(text,
           "c_m about the quarter chord, nose up. C_p: lowest on the surface, at x/c. %sV_c: from "
           "this speed on it boils the water, %.2f m deep.",
           has_drag ? "x_a, x_b: where the layers above and below turn turbulent. " : "", a->depth);
    lw_print_wrapped(stdout, text, 0, 0);
}

static lw_section_water water_of(const asked *a)
{
    return (lw_section_water){&a->medium, a->depth, a->reynolds, a->trip};
}

static bool write_picture(const asked *a, const char *path, bool may_replace)
{
    const lw_section_picture picture = {.title = a->section.name,
                                        .subtitle = a->subtitle,
                                        .profile = &a->flow.profile,
                                        .points = a->points,
                                        .pressures = (const double(*)[LW_NODES_MOST])a->pressures,
                                        .has_drag = a->reynolds > 0.0,
                                        .count = a->angles.count};
    return lw_section_picture_write(&picture, path, may_replace);
}

static lw_exit answer(asked *a, const lw_options *options)
{
    const lw_profile_flap flap = {a->has_flap ? 1.0 - a->flap_chord : 0.0, a->flap_angle};
    const lw_profile_status status = lw_section_flow_of(&a->flow, &a->section.outline, flap);
    if (status != LW_PROFILE_OK) {
        lw_print_complaint("foil", "%s: %s", a->section.name, lw_profile_status_text(status));
        return status == LW_PROFILE_NO_SOLUTION ? LW_EXIT_NO_ANSWER : LW_EXIT_WRONG_INPUT;
    }
    for (int i = 0; i < a->angles.count; i++)
        a->points[i] =
            lw_section_pressures(&a->flow, water_of(a), a->angles.value[i], a->pressures[i]);
    if (a->reynolds > 0.0 && a->angles.count > 1)  // it takes seconds
        a->stall = lw_section_stall(&a->flow, water_of(a));
    write_subtitle(a);
    const char *picture = lw_options_text(options, "svg");
    if (picture && !write_picture(a, picture, lw_options_has(options, "force")))
        return LW_EXIT_WRONG_INPUT;
    if (lw_options_has(options, "json"))
        lw_json_write(answer_json(a), stdout);
    else if (!picture || strcmp(picture, "-") != 0)
        print_text(a);
    return LW_EXIT_FINE;
}

lw_exit lw_foil_of_section(const lw_options *options, const lw_inputs *inputs)
{
    lw_exit ended = LW_EXIT_WRONG_INPUT;
    asked *a = calloc(1, sizeof *a);
    if (!a) {
        lw_print_complaint("foil", "there is not enough memory");
        return LW_EXIT_NO_ANSWER;
    }
    if (lw_foil_read_section(&a->section, options) && read_options(a, options)) {
        a->medium = lw_medium_of(&inputs->day);
        ended = answer(a, options);
    }
    free(a);
    return ended;
}
