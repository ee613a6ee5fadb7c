// hidden_table.c - what nobody can measure of a boat, and what is thought of it before any day.
// SPDX-License-Identifier: MIT

#include "lullwise/learned.h"
#include "quantity/tables.h"

// clang-format off
// Presets and errors: the tape's error and what bends, twists and is built unevenly.  [judged] all
static const lw_quantity hidden_rows[] = {
    {LW_MEMBER(lw_hidden, main_incidence),   .symbol = "di_m",
     .unit = LW_UNIT_DEG,  .min = -2.0, .max = 2.0, .preset = 0.0, .error = 0.5, .decimals = 2,
     .doc = "Incidence of the main foil, more at every pin than was measured."},

    {LW_MEMBER(lw_hidden, rudder_incidence), .symbol = "di_r",
     .unit = LW_UNIT_DEG,  .min = -2.0, .max = 2.0, .preset = 0.0, .error = 0.5, .decimals = 2,
     .doc = "Incidence of the rudder foil, more at the reference mark than was measured."},

    {LW_MEMBER(lw_hidden, main_chord),       .symbol = "f_c",
     .unit = LW_UNIT_NONE, .min = 0.75, .max = 1.25, .preset = 1.0, .error = 0.06, .decimals = 3,
     .doc = "Lift scale: chords of the main foil as it lifts / as measured."},

    {LW_MEMBER(lw_hidden, drag_area),        .symbol = "dA",
     .unit = LW_UNIT_M2,   .min = -0.4, .max = 0.8, .preset = 0.0, .error = 0.15, .decimals = 2,
     .doc = "Drag area of the windage, more than was given, head to wind and abeam."},

    {LW_MEMBER(lw_hidden, sail_power),       .symbol = "f_s",
     .unit = LW_UNIT_NONE, .min = 0.6,  .max = 1.4, .preset = 1.0, .error = 0.1, .decimals = 3,
     .doc = "Sail power: greatest lift of the sail as it is set / as given."},

    {LW_MEMBER(lw_hidden, chop),             .symbol = "f_h",
     .unit = LW_UNIT_NONE, .min = 0.4,  .max = 2.0, .preset = 1.0, .error = 0.2,  .decimals = 2,
     .doc = "Chop: height of the waves as they shake her / as given."},

    {LW_MEMBER(lw_hidden, skill),            .symbol = "ds",
     .unit = LW_UNIT_NONE, .min = -2.0, .max = 2.0, .preset = 0.0, .error = 0.25, .decimals = 2,
     .doc = "Skill of the sailor, more than was given."},
};

#define ERROR(member, u, most, digits)                                                         \
    {                                                                                          \
        LW_MEMBER(lw_hidden, member), .symbol = "e", .unit = LW_UNIT_##u, .min = 0.0,          \
        .max = most, .preset = most, .decimals = digits, .doc = "One standard error of it."    \
    }
static const lw_quantity error_rows[] = {
    ERROR(main_incidence, DEG, 2.0, 2), ERROR(rudder_incidence, DEG, 2.0, 2),
    ERROR(main_chord, NONE, 0.25, 3),   ERROR(drag_area, M2, 0.8, 2),
    ERROR(sail_power, NONE, 0.4, 3),    ERROR(chop, NONE, 1.0, 2),
    ERROR(skill, NONE, 2.0, 2),
};

static const lw_quantity taught_rows[] = {
    {LW_MEMBER(lw_taught, days),    .symbol = "N", .unit = LW_UNIT_NONE, .min = 0.0,
     .max = 1e6, .preset = 0.0, .doc = "Days that it was learned from."},
    {LW_MEMBER(lw_taught, numbers), .symbol = "n", .unit = LW_UNIT_NONE, .min = 0.0,
     .max = 1e7, .preset = 0.0, .doc = "Numbers that they told."},
};

// Errors: half a turn, because nobody winds to a hair; of speeds what weed, trim and the waves of
// others do to them; a receiver's noise is in their scatter; tacks and rests are in what is flown,
// and in the swims.  [judged] all
#define TURNS(member, words)                                                                \
    {                                                                                       \
        LW_MEMBER(lw_lesson, member), .symbol = "n", .unit = LW_UNIT_TURN, .min = -50.0,    \
        .max = 50.0, .preset = 0.0, .error = 0.5, .decimals = 1, .doc = "Turns used " words \
    }
#define SPEED(member, words)                                                                    \
    {                                                                                           \
        LW_MEMBER(lw_lesson, member), .symbol = "V", .unit = LW_UNIT_KN, .min = 0.0,            \
        .max = 60.0, .preset = 0.0, .error = 0.3, .decimals = 1, .doc = "Speed flying " words \
    }
#define SCATTER(member, words)                                                              \
    {                                                                                       \
        LW_MEMBER(lw_lesson, member), .symbol = "s_V", .unit = LW_UNIT_KN, .min = 0.0,      \
        .max = 60.0, .preset = 0.0, .error = 0.1, .decimals = 1, .doc = "Scatter of that, " words \
    }
static const lw_quantity lesson_rows[] = {
    TURNS(upwind_turns, "upwind"), TURNS(reach_turns, "on a reach"),
    TURNS(downwind_turns, "downwind"),
    SPEED(upwind_speed, "upwind"), SPEED(reach_speed, "on a reach"),
    SPEED(downwind_speed, "downwind"),
    SCATTER(upwind_scatter, "upwind"), SCATTER(reach_scatter, "on a reach"),
    SCATTER(downwind_scatter, "downwind"),
    {LW_MEMBER(lw_lesson, flying), .symbol = "f", .unit = LW_UNIT_NONE, .min = 0.0, .max = 1.0,
     .preset = 0.0, .error = 0.05, .decimals = 2, .doc = "Part of the time under way, flying."},
    {LW_MEMBER(lw_lesson, swims), .symbol = "n_s", .unit = LW_UNIT_PERH, .min = 0.0,
     .max = 3600.0, .preset = 0.0, .error = 0.5, .decimals = 1, .doc = "Swims an hour afloat."},
};
// clang-format on
LW_TABLE_COVERS(lw_hidden, hidden_rows);
LW_TABLE_COVERS(lw_hidden, error_rows);
LW_TABLE_COVERS(lw_taught, taught_rows);
LW_TABLE_COVERS(lw_lesson, lesson_rows);

const lw_table lw_hidden_table = {"learned", "Learned", hidden_rows, LW_ROW_COUNT(hidden_rows),
                                  "What nobody can measure, as sailed days have it."};
const lw_table lw_lesson_table = {"lesson", "Lesson", lesson_rows, LW_ROW_COUNT(lesson_rows),
                                  "What a day tells, with the error of each number."};

static const lw_table error_table = {"errors", "Errors", error_rows, LW_ROW_COUNT(error_rows),
                                     "How surely it is known."};
static const lw_table taught_table = {"from", "From", taught_rows, LW_ROW_COUNT(taught_rows),
                                      "What it was learned from."};

#define PLAIN(member, of)                                           \
    {                                                               \
        .table = &(of), .kind = LW_SECTION_PLAIN, .required = true, \
        .offset = offsetof(lw_learned_boat, member)                 \
    }
static const lw_section sections[] = {PLAIN(values, lw_hidden_table), PLAIN(errors, error_table),
                                      PLAIN(from, taught_table)};

// clang-format off
static const lw_text texts[] = {
    {.key = "boat", .offset = offsetof(lw_learned_boat, boat), .preset = "",
     .doc = "Name of the boat."},
    {.key = "hash", .offset = offsetof(lw_learned_boat, hash), .preset = "",
     .doc = "Hash of the boat as she was measured: what is learned belongs to her alone."},
};
// clang-format on

const lw_record lw_learned_record = {.name = "learned",
                                     .title = "What was learned of a boat",
                                     .texts = texts,
                                     .text_count = LW_ROW_COUNT(texts),
                                     .sections = sections,
                                     .section_count = LW_ROW_COUNT(sections),
                                     .size = sizeof(lw_learned_boat),
                                     .doc = "Written by `lullwise learn`, taken with --learned."};
