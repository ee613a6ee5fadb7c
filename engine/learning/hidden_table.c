// hidden_table.c - what nobody can measure of a boat, and what is thought of it before any day.
// SPDX-License-Identifier: MIT

#include "lullwise/learning.h"
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
};

// Errors: half a turn, because nobody winds to a hair; the speed of gusts that differ.  [judged]
#define TURNS(member, words)                                                                \
    {                                                                                       \
        LW_MEMBER(lw_lesson, member), .symbol = "n", .unit = LW_UNIT_TURN, .min = -50.0,    \
        .max = 50.0, .preset = 0.0, .error = 0.5, .decimals = 1, .doc = "Turns used " words \
    }
#define SPEED(member, words)                                                                    \
    {                                                                                           \
        LW_MEMBER(lw_lesson, member), .symbol = "V", .unit = LW_UNIT_KN, .min = 0.0,            \
        .max = 60.0, .preset = 0.0, .error = 0.6, .decimals = 1, .doc = "Speed flying " words \
    }
static const lw_quantity lesson_rows[] = {
    TURNS(upwind_turns, "upwind"), TURNS(reach_turns, "on a reach"),
    TURNS(downwind_turns, "downwind"),
    SPEED(upwind_speed, "upwind"), SPEED(reach_speed, "on a reach"),
    SPEED(downwind_speed, "downwind"),
};
// clang-format on
LW_TABLE_COVERS(lw_hidden, hidden_rows);
LW_TABLE_COVERS(lw_lesson, lesson_rows);

const lw_table lw_hidden_table = {"learned", "Learned", hidden_rows, LW_ROW_COUNT(hidden_rows),
                                  "What nobody can measure, as sailed days have it."};
const lw_table lw_lesson_table = {"lesson", "Lesson", lesson_rows, LW_ROW_COUNT(lesson_rows),
                                  "What a day tells, with the error of each number."};
