// hull.c - `lullwise hull`: a hull afloat, and the resistance that it meets at each speed.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdlib.h>

#include "command/columns.h"
#include "command/command.h"
#include "command/given.h"
#include "command/notes.h"
#include "command/steps.h"
#include "command/terminal/print.h"
#include "lullwise/hull_afloat.h"
#include "records/json.h"
#include "records/offsets_file.h"

typedef struct asked {
    lw_inputs inputs;
    lw_medium medium;
    lw_hull_shape shape;
    lw_hull_cut cut;
    lw_hull_afloat afloat;
    const char *offsets;  // NULL: the boat's dimensions
    bool is_wigley, has_place;
    double length, place;
    double form_factor;
    lw_steps speeds;
    lw_hull_drive at[LW_STEPS_MOST];
} asked;

static const lw_bounds unbounded = {0};

// The boat's hull from its dimensions or the lines of a file, with boat and sailor aboard; level
// unless the sailor's place was given, by which it then trims.
static lw_hull_status measured(asked *a)
{
    const lw_hull *hull = &a->inputs.boat.hull;
    const lw_hull_status status = a->offsets ? LW_HULL_OK : lw_hull_shape_of_boat(&a->shape, hull);
    if (status != LW_HULL_OK) return status;
    a->form_factor = hull->form_factor;
    const lw_hull_load load =
        lw_hull_load_of(hull, &a->inputs.sailor.person, a->has_place ? a->place : NAN);
    return lw_hull_float_load(&a->cut, &a->shape, load, a->medium.water_density);
}

// Speeds as given, from Froude numbers where those were; without either a usual row of them.
static bool read_speeds(asked *a, const lw_options *options)
{
    const bool has_froude = lw_options_has(options, "froude");
    if (has_froude && lw_options_has(options, "speed")) {
        lw_print_complaint("hull", "--froude and --speed both give the speeds; leave one out");
        return false;
    }
    if (lw_options_has(options, "speed"))
        return lw_steps_given(&a->speeds, options, "speed", false);
    a->speeds.count = 17;
    for (int i = 0; i < a->speeds.count; i++) a->speeds.value[i] = 0.2 + 0.05 * i;
    if (!lw_steps_given(&a->speeds, options, "froude", true)) return false;
    for (int i = 0; i < a->speeds.count; i++)
        a->speeds.value[i] = lw_hull_speed_at(&a->cut, a->speeds.value[i]);
    return true;
}

// Sentences on where the theory leaves its grounds.
static lw_notes notes_of(const asked *a)
{
    lw_notes notes = {0};
    const double slender = a->afloat.beam / a->afloat.length;
    const double slowest = fmin(a->at[0].froude, a->at[a->speeds.count - 1].froude);
    const double fastest = fmax(a->at[0].froude, a->at[a->speeds.count - 1].froude);
    if (!a->is_wigley && !a->offsets)
        lw_note(&notes,
                "The lines between the measured dimensions are our own: the dimensions are "
                "known, the shape is judged.");
    if (slender > 0.15)
        lw_note(&notes, "The hull is %.2f of its length wide; thin-ship theory holds to 0.15.",
                slender);
    if (slowest < 0.15 || fastest > 1.5)
        lw_note(&notes,
                "Wave resistance holds for Froude numbers from 0.15 to 1.5; below 0.1 its "
                "coefficient is that at 0.1.");
    return notes;
}

static lw_list curve_of(const asked *a)
{
    return (lw_list){&lw_hull_drive_table, a->at, sizeof a->at[0], a->speeds.count};
}

static const char *name_of(const asked *a)
{
    return a->is_wigley ? "Wigley's hull" : a->inputs.boat.name;
}

static json_t *answer_json(const asked *a)
{
    const lw_notes notes = notes_of(a);
    return json_pack("{s:s, s:f, s:f, s:o, s:o, s:o, s:{s:o, s:o, s:s, s:s}}", "hull", name_of(a),
                     "water_density", a->medium.water_density, "form_factor", a->form_factor,
                     "afloat", lw_table_json(&lw_hull_afloat_table, &a->afloat), "curve",
                     lw_list_json(curve_of(a)), "notes", lw_notes_json(&notes), "units", "afloat",
                     lw_table_units_json(&lw_hull_afloat_table), "curve",
                     lw_table_units_json(&lw_hull_drive_table), "water_density", "kg/m3",
                     "form_factor", "");
}

static void print_text(const asked *a)
{
    char text[300];
    if (a->is_wigley)
        LW_FIT(text, "Wigley's hull, B = L/10, T = L/16, %.2f m long.", a->length);
    else if (a->offsets)
        LW_FIT(text, "Lines of %s with the weights of %s and %s aboard, %s.",
               lw_print_file_name(a->offsets), name_of(a), a->inputs.sailor.name,
               a->has_place ? "trimmed by where the sailor sits" : "level");
    else
        LW_FIT(text, "%s with %s aboard, %s.", name_of(a), a->inputs.sailor.name,
               a->has_place ? "trimmed by where the sailor sits" : "level");
    lw_print_wrapped(stdout, text, 0, 0);
    puts("\nAfloat");
    lw_members_print(stdout, &lw_hull_afloat_table, &a->afloat);
    LW_FIT(text,
           "Resistance: friction by the line of the towing tanks, form factor %.2f; waves by "
           "thin-ship theory",
           a->form_factor);
    putchar('\n');
    lw_print_wrapped(stdout, text, 0, 2);
    lw_columns_print(stdout, curve_of(a),
                     "froude speed friction waves total of_weight friction_coefficient "
                     "wave_coefficient total_coefficient");
    const lw_notes notes = notes_of(a);
    if (notes.count) putchar('\n');
    lw_notes_print(stdout, &notes);
}

static bool read_options(asked *a, const lw_options *options)
{
    const lw_boat *boat = &a->inputs.boat;
    const lw_bounds along = {boat->place.aft_x, boat->place.forward_x, "the boat"};
    a->is_wigley = lw_options_has(options, "wigley");
    a->offsets = lw_options_text(options, "offsets");
    a->has_place = lw_options_has(options, "place");
    a->length = 3.0;
    if (a->is_wigley && (lw_options_has(options, "boat") || a->has_place)) {
        lw_print_complaint("hull", "--wigley is a hull of its own: leave out --%s",
                           a->has_place ? "place" : "boat");
        return false;
    }
    if (a->is_wigley && a->offsets) {
        lw_print_complaint("hull", "--wigley and --offsets both give the hull; leave one out");
        return false;
    }
    if (!a->is_wigley && lw_options_has(options, "length")) {
        lw_print_complaint("hull",
                           "--length goes with --wigley; a boat's is set by "
                           "--set hull.length='3.4 m'");
        return false;
    }
    return lw_given_number(options, "length", unbounded, &a->length) &&
           lw_given_number(options, "place", along, &a->place);
}

// The table of offsets, when one was named; false after its faults were printed.
static bool read_offsets(asked *a)
{
    lw_faults faults = {0};
    const bool is_read = !a->offsets || lw_offsets_file_read(&a->shape, a->offsets, &faults);
    if (!is_read) lw_print_faults(stderr, &faults);
    lw_faults_free(&faults);
    return is_read;
}

static lw_exit run(const lw_options *options)
{
    int pin;
    lw_exit ended = LW_EXIT_WRONG_INPUT;
    asked *a = calloc(1, sizeof *a);
    if (!a) {
        lw_print_complaint("hull", "there is not enough memory");
        return LW_EXIT_NO_ANSWER;
    }
    if (lw_given(&a->inputs, &pin, options) && read_options(a, options) && read_offsets(a)) {
        a->medium = lw_medium_of(&a->inputs.day);
        const lw_hull_status status =
            a->is_wigley ? lw_hull_float_wigley(&a->cut, &a->shape, a->length) : measured(a);
        if (status != LW_HULL_OK) {
            lw_print_complaint("hull", "%s: %s", name_of(a), lw_hull_status_text(status));
            ended = LW_EXIT_NO_ANSWER;
        } else if (read_speeds(a, options)) {
            const lw_hull_water water = {a->medium.water_density, a->medium.water_viscosity,
                                         a->form_factor};
            a->afloat = lw_hull_afloat_of(&a->cut, water.density);
            for (int i = 0; i < a->speeds.count; i++)
                a->at[i] = lw_hull_drive_at(&a->cut, water, a->speeds.value[i]);
            if (lw_options_has(options, "json"))
                lw_json_write(answer_json(a), stdout);
            else
                print_text(a);
            ended = LW_EXIT_FINE;
        }
    }
    free(a);
    return ended;
}

const lw_command lw_command_hull = {
    .name = "hull",
    .summary = "A hull afloat, and its resistance at each speed: friction and waves.",
    .operands = "",
    .takes = "boat sailor day set place offsets wigley length speed froude json",
    .doc =
        "Floats the boat's hull with the sailor aboard, level or with --place as that trims it, "
        "and works out friction and wave resistance over the speeds of --speed, as in --speed "
        "'1:8:0.5 kn', or of --froude, as in --froude 0.25:1.0:0.05. --offsets takes the lines "
        "from a file, and the weights from boat and sailor; --wigley takes a mathematical hull, "
        "for checks. Ends with 1 when the hull does not float so.",
    .run = run,
};
