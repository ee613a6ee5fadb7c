// foil_section.c - a foil section by name or file, and what the water does to it at an angle.
// SPDX-License-Identifier: MIT

#include "command/foil_section.h"

#include <string.h>

#include "command/columns.h"
#include "lullwise/section.h"
#include "records/section_file.h"

#define ROW(member, ...) LW_COLUMN(lw_section_point, member, __VA_ARGS__)

// clang-format off
static const lw_quantity rows[] = {
    ROW(alpha,          "alpha", DEG,   2, "angle of attack"),
    ROW(lift,           "c_l",   NONE,  4, "lift"),
    ROW(moment,         "c_m",   NONE,  4, "moment about the quarter chord, nose up"),
    ROW(least_pressure, "C_p",   NONE,  3, "lowest pressure on the surface"),
    ROW(least_at,       "x/c",   NONE,  3, "where that is, in chords from the nose"),
    ROW(cavitates_at,   "V_c",   KN,    1, "speed from which the lowest pressure boils the water"),
};
// clang-format on
LW_TABLE_COVERS(lw_section_point, rows);

const lw_table lw_section_table = {.key = "polar",
                                   .title = "Section",
                                   .rows = rows,
                                   .count = sizeof rows / sizeof rows[0],
                                   .doc = "A foil section at one angle."};

// --- which section

static bool begins_with_naca(const char *text)
{
    static const char word[] = "naca";
    text += strspn(text, " ");
    for (size_t i = 0; word[i]; i++) {
        if ((text[i] | 0x20) != word[i]) return false;
    }
    return true;
}

static bool refuse(const char *text, lw_profile_status status, lw_faults *faults)
{
    const lw_written written = {
        .file = "command line", .line = 0, .key = "--section", .text = text};
    lw_fault *fault = lw_faults_add(faults, &written);
    LW_FIT(fault->sentence, "%s", lw_profile_status_text(status));
    LW_FIT(fault->expected, "NACA 2412, 23012 or 63-412 or the like, or a file of x and y");
    return false;
}

static void add_note(lw_named_section *section, bool is_so, const char *note)
{
    if (is_so) section->notes[section->note_count++] = note;
}

// "NACA 2412" however it was written.
static void name_of(char name[LW_NAME_LENGTH], const char *text)
{
    text += strspn(text, " ");
    if (begins_with_naca(text)) text += 4;
    text += strspn(text, " ");
    lw_text_fit(name, LW_NAME_LENGTH, "NACA %s", text);
}

// The file's own title, or else the last part of its path.
static void title_of(char name[LW_NAME_LENGTH], const lw_section_file *file, const char *path)
{
    const char *slash = strrchr(path, '/');
    if (strcmp(path, "-") == 0) path = "standard input";
    lw_text_tame(name, LW_NAME_LENGTH, file->title[0] ? file->title : slash ? slash + 1 : path);
}

bool lw_named_section_read(lw_named_section *section, const char *text, lw_faults *faults)
{
    static lw_section_file file;
    section->note_count = 0;
    const lw_profile_status status = lw_outline_naca(text, &section->outline);
    if (status == LW_PROFILE_OK) {
        name_of(section->name, text);
        return true;
    }
    if (begins_with_naca(text) || status == LW_PROFILE_MODIFIED || !text[0])
        return refuse(text, status, faults);
    const size_t before = faults->count;
    if (!lw_section_file_read(&file, text, &section->outline, faults)) {
        const bool is_missing = faults->count == before + 1 && faults->list[before].line == 0 &&
                                strstr(faults->list[before].sentence, "no such file");
        if (is_missing)
            LW_FIT(faults->list[before].expected, "a file, or a designation as in NACA 2412");
        return false;
    }
    title_of(section->name, &file, text);
    add_note(section, section->outline.was_reversed,
             "Points were given from the nose on; they have been put once around from the tail.");
    add_note(section, file.is_lower_first,
             "Points run along the lower side first; they have been turned round.");
    add_note(section, section->outline.was_open,
             "The tail was open; it has been closed, half from either side.");
    add_note(section, section->outline.was_scaled,
             "Coordinates were not in chords; they have been brought to a chord of 1 from 0.");
    return true;
}

// --- what the water does

lw_profile_status lw_section_flow_of(lw_section_flow *flow, const lw_named_section *section,
                                     lw_profile_flap flap)
{
    const lw_profile_status status =
        lw_profile_of(&section->outline, flap, LW_PANELS_USUAL, &flow->profile);
    if (status != LW_PROFILE_OK) return status;
    return lw_profile_flow_of(&flow->profile, &flow->room, &flow->flow);
}

lw_section_point lw_section_point_at(lw_section_flow *flow, lw_section_water water, double alpha)
{
    const lw_profile_load load = lw_profile_load_of(&flow->profile, &flow->flow, alpha);
    return (lw_section_point){
        .alpha = alpha,
        .lift = load.lift,
        .moment = load.moment,
        .least_pressure = load.least_pressure,
        .least_at = load.least_at,
        .cavitates_at = lw_cavitation_speed(water.medium, water.depth, load.least_pressure)};
}

void lw_section_pressures(const lw_section_flow *flow, double alpha,
                          double pressures[LW_NODES_MOST])
{
    for (int i = 0; i < flow->profile.count; i++) {
        const double speed = lw_profile_speed(&flow->flow, i, alpha);
        pressures[i] = 1.0 - speed * speed;
    }
}
