// foil_of_section.c - `lullwise foil --section`: a section by its designation or coordinates.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "command/columns.h"
#include "command/foil_picture.h"
#include "command/foil_ways.h"
#include "command/given.h"
#include "command/print.h"
#include "records/json.h"
#include "records/output_file.h"

#define USUAL_FLAP_CHORD 0.3

typedef struct asked {
    lw_medium medium;
    lw_named_section section;
    lw_section_flow flow;
    double depth, flap_angle, flap_chord;
    bool has_flap;
    lw_steps angles;
    lw_section_point points[LW_STEPS_MOST];
    char subtitle[200];
} asked;

static const lw_bounds unbounded = {0};

static bool read_options(asked *a, const lw_options *options)
{
    a->depth = LW_FOIL_USUAL_DEPTH;
    a->flap_chord = USUAL_FLAP_CHORD;
    a->has_flap = lw_options_has(options, "flap");
    if (!a->has_flap && lw_options_has(options, "flap-chord")) {
        lw_print_complaint("foil", "--flap-chord goes with --flap, as in --flap '5 deg'");
        return false;
    }
    a->angles.count = 17;
    for (int i = 0; i < a->angles.count; i++) a->angles.value[i] = (i - 4) * LW_DEG;
    return lw_given_number(options, "depth", unbounded, &a->depth) &&
           lw_given_number(options, "flap", unbounded, &a->flap_angle) &&
           lw_given_number(options, "flap-chord", unbounded, &a->flap_chord) &&
           lw_steps_given(&a->angles, options, "alpha", true);
}

static lw_list polar_of(const asked *a)
{
    return (lw_list){&lw_section_table, a->points, sizeof a->points[0], a->angles.count};
}

static void write_subtitle(asked *a)
{
    char flap[64] = "";
    if (a->has_flap)
        LW_FIT(flap, "flap of %.0f %% of the chord %s %.1f deg; ", 100.0 * a->flap_chord,
               a->flap_angle < 0.0 ? "up" : "down", fabs(a->flap_angle) / LW_DEG);
    LW_FIT(a->subtitle, "%sperfect fluid: no friction, no stall", flap);
}

static json_t *answer_json(const asked *a)
{
    json_t *notes = json_array();
    for (int i = 0; i < a->section.note_count; i++)
        json_array_append_new(notes, json_string(a->section.notes[i]));
    return json_pack("{s:s, s:f, s:o, s:o, s:o, s:o, s:{s:o, s:s, s:s}}", "section",
                     a->section.name, "depth", a->depth, "flap",
                     a->has_flap ? json_real(a->flap_angle / LW_DEG) : json_null(), "flap_chord",
                     a->has_flap ? json_real(a->flap_chord) : json_null(), "polar",
                     lw_list_json(polar_of(a)), "notes", notes, "units", "polar",
                     lw_table_units_json(&lw_section_table), "depth", "m", "flap", "deg");
}

static void print_text(const asked *a)
{
    char text[300];
    LW_FIT(text, "%s: %s.", a->section.name, a->subtitle);
    lw_print_wrapped(stdout, text, 0, 0);
    for (int i = 0; i < a->section.note_count; i++)
        lw_print_wrapped(stdout, a->section.notes[i], 0, 2);
    putchar('\n');
    lw_columns_print(stdout, polar_of(a), "alpha lift moment least_pressure least_at cavitates_at");
    LW_FIT(text,
           "c_m about the quarter chord, nose up. C_p: lowest on the surface, at x/c. V_c: from "
           "this speed on it boils the water, %.2f m deep.",
           a->depth);
    putchar('\n');
    lw_print_wrapped(stdout, text, 0, 0);
}

static bool write_picture(const asked *a, const char *path, bool may_replace)
{
    const char *why = "there is not enough memory";
    const lw_section_picture picture = {a->section.name, a->subtitle, &a->flow, a->points,
                                        a->angles.count};
    lw_output output;
    bool is_written = lw_output_open(&output);
    if (is_written) {
        lw_section_draw(output.stream, &picture);
        is_written = lw_output_commit(&output, path, may_replace, &why);
    }
    if (!is_written) lw_print_complaint("foil", "%s: %s", path, why);
    return is_written;
}

static lw_exit answer(asked *a, const lw_options *options)
{
    const lw_profile_flap flap = {a->has_flap ? 1.0 - a->flap_chord : 0.0, a->flap_angle};
    const lw_profile_status status = lw_section_flow_of(&a->flow, &a->section, flap);
    if (status != LW_PROFILE_OK) {
        lw_print_complaint("foil", "%s: %s", a->section.name, lw_profile_status_text(status));
        return status == LW_PROFILE_NO_SOLUTION ? LW_EXIT_NO_ANSWER : LW_EXIT_WRONG_INPUT;
    }
    const lw_section_water water = {&a->medium, a->depth};
    for (int i = 0; i < a->angles.count; i++)
        a->points[i] = lw_section_point_at(&a->flow, water, a->angles.value[i]);
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
