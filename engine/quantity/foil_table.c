// foil_table.c - what each number of the two foils and their struts is and how to measure it.
// SPDX-License-Identifier: MIT

#include "lullwise/boat.h"
#include "quantity/tables.h"

#define SPAN_DOC "Tip to tip, straight across. Tape."
#define ROOT_DOC                                                                             \
    "Chord beside the strut, nose to trailing edge with the flap in line. Calliper, or two " \
    "set squares and a ruler."
#define TIP_DOC "Chord where the tip begins to round off. Ruler."
#define THICKNESS_DOC                                                                       \
    "Greatest thickness / chord, both taken halfway out. Calliper, or the gap between two " \
    "rulers."
#define ZERO_LIFT_DOC                                                                             \
    "Angle of the chord line to the flow at which the section lifts nothing, flap in line. Find " \
    "the camber: a straight edge from nose to trailing edge, the gap under it less half the "     \
    "thickness; each 1 % of the chord is worth -1.15°. [glauert-1926]"
#define SMOOTH_DOC                                                                               \
    "How far back from the nose foil and strut are smooth, / chord: to the first nick, scratch " \
    "across, tape step or weed, where the layer turns turbulent. Run a nail from the nose. "     \
    "[judged]"
#define WAVES_DOC                                                                                  \
    "How often waves in the layer grow e times before it turns turbulent: 4 in rough water, 9 in " \
    "a quiet tunnel. Nobody can tape it, and draws leave it: leave the preset. [judged]"
#define STRUT_X_DOC                                                                    \
    "Quarter of the foil's chord behind its nose, forward of the transom; behind it: " \
    "negative. Tape and plumb line, hull level, middle pin in."
#define STRUT_CHORD_DOC     "Chord of the strut at the water when flying. Ruler."
#define STRUT_THICKNESS_DOC "Greatest thickness of the strut / chord. Calliper."

// clang-format off
static const lw_quantity main_rows[] = {
    {LW_MEMBER(lw_foil, span),            .symbol = "b",
     .unit = LW_UNIT_M,    .min = 0.4,  .max = 1.6,  .preset = 0.98, .error = 0.003,
     .usual_min = 0.75,    .usual_max = 1.25, .decimals = 3,  .doc = SPAN_DOC},

    {LW_MEMBER(lw_foil, root_chord),      .symbol = "c_r",
     .unit = LW_UNIT_M,    .min = 0.05, .max = 0.25, .preset = 0.12, .error = 0.001,
     .usual_min = 0.08,    .usual_max = 0.16, .decimals = 3,  .doc = ROOT_DOC},

    {LW_MEMBER(lw_foil, tip_chord),       .symbol = "c_t",
     .unit = LW_UNIT_M,    .min = 0.02, .max = 0.25, .preset = 0.07, .error = 0.002,
     .usual_min = 0.03,    .usual_max = 0.13, .decimals = 3,  .doc = TIP_DOC},

    {LW_MEMBER(lw_foil, thickness),       .symbol = "t/c",
     .unit = LW_UNIT_NONE, .min = 0.06, .max = 0.2,  .preset = 0.12, .error = 0.005,
     .usual_min = 0.09,    .usual_max = 0.15, .decimals = 3,  .doc = THICKNESS_DOC},

    {LW_MEMBER(lw_foil, zero_lift_angle), .symbol = "alpha_0",
     .unit = LW_UNIT_DEG,  .min = -7.0, .max = 0.5,  .preset = -2.5, .error = 0.5,
     .usual_min = -4.5,    .usual_max = -0.5, .decimals = 1,  .doc = ZERO_LIFT_DOC},

    {LW_MEMBER(lw_foil, smooth),          .symbol = "x_t/c",
     .unit = LW_UNIT_PERCENT, .min = 1.0, .max = 100.0, .preset = 20.0, .error = 10.0,
     .usual_min = 1.0,     .usual_max = 60.0, .decimals = 0,  .doc = SMOOTH_DOC},

    {LW_MEMBER(lw_foil, waves),           .symbol = "n",
     .unit = LW_UNIT_NONE, .min = 1.0,  .max = 14.0, .preset = 4.0, .error = 0.0,
     .usual_min = 2.0,     .usual_max = 9.0,  .decimals = 1,  .is_late = true, .doc = WAVES_DOC},

    {LW_MEMBER(lw_foil, flap_chord),      .symbol = "E",
     .unit = LW_UNIT_NONE, .min = 0.0,  .max = 0.5,  .preset = 0.3, .error = 0.01,
     .usual_min = 0.2,     .usual_max = 0.42, .decimals = 2,
     .doc = "Flap chord, hinge to trailing edge, / foil chord at the same place. Ruler. 0: no "
            "flap."},

    {LW_MEMBER(lw_foil, flap_span),       .symbol = "b_f/b",
     .unit = LW_UNIT_NONE, .min = 0.0,  .max = 1.0,  .preset = 0.95, .error = 0.01,
     .usual_min = 0.6,     .usual_max = 1.0,  .decimals = 2,
     .doc = "Length of the flap, both sides together, / span. Tape."},
};

static const lw_quantity rudder_rows[] = {
    {LW_MEMBER(lw_foil, span),            .symbol = "b",
     .unit = LW_UNIT_M,    .min = 0.3,  .max = 1.2,  .preset = 0.76, .error = 0.003,
     .usual_min = 0.55,    .usual_max = 0.95, .decimals = 3,  .doc = SPAN_DOC},

    {LW_MEMBER(lw_foil, root_chord),      .symbol = "c_r",
     .unit = LW_UNIT_M,    .min = 0.04, .max = 0.25, .preset = 0.11, .error = 0.001,
     .usual_min = 0.07,    .usual_max = 0.15, .decimals = 3,  .doc = ROOT_DOC},

    {LW_MEMBER(lw_foil, tip_chord),       .symbol = "c_t",
     .unit = LW_UNIT_M,    .min = 0.02, .max = 0.25, .preset = 0.07, .error = 0.002,
     .usual_min = 0.03,    .usual_max = 0.13, .decimals = 3,  .doc = TIP_DOC},

    {LW_MEMBER(lw_foil, thickness),       .symbol = "t/c",
     .unit = LW_UNIT_NONE, .min = 0.06, .max = 0.2,  .preset = 0.11, .error = 0.005,
     .usual_min = 0.08,    .usual_max = 0.15, .decimals = 3,  .doc = THICKNESS_DOC},

    {LW_MEMBER(lw_foil, zero_lift_angle), .symbol = "alpha_0",
     .unit = LW_UNIT_DEG,  .min = -7.0, .max = 0.5,  .preset = -1.5, .error = 0.5,
     .usual_min = -4.5,    .usual_max = 0.5,  .decimals = 1,  .doc = ZERO_LIFT_DOC},

    {LW_MEMBER(lw_foil, smooth),          .symbol = "x_t/c",
     .unit = LW_UNIT_PERCENT, .min = 1.0, .max = 100.0, .preset = 20.0, .error = 10.0,
     .usual_min = 1.0,     .usual_max = 60.0, .decimals = 0,  .doc = SMOOTH_DOC},

    {LW_MEMBER(lw_foil, waves),           .symbol = "n",
     .unit = LW_UNIT_NONE, .min = 1.0,  .max = 14.0, .preset = 4.0, .error = 0.0,
     .usual_min = 2.0,     .usual_max = 9.0,  .decimals = 1,  .is_late = true, .doc = WAVES_DOC},

    {LW_MEMBER(lw_foil, flap_chord),      .symbol = "E",
     .unit = LW_UNIT_NONE, .min = 0.0,  .max = 0.0,  .preset = 0.0, .error = 0.0,
     .decimals = 0,
     .doc = "0: the rudder foil has no flap; it turns as a whole."},

    {LW_MEMBER(lw_foil, flap_span),       .symbol = "b_f/b",
     .unit = LW_UNIT_NONE, .min = 0.0,  .max = 0.0,  .preset = 0.0, .error = 0.0,
     .decimals = 0,
     .doc = "0: the rudder foil has no flap."},
};

static const lw_quantity main_strut_rows[] = {
    {LW_MEMBER(lw_strut, x),              .symbol = "x_f",
     .unit = LW_UNIT_M,    .min = 0.8,  .max = 2.5,  .preset = 1.55, .error = 0.01,
     .usual_min = 1.3,     .usual_max = 1.8,  .decimals = 2,  .doc = STRUT_X_DOC},

    {LW_MEMBER(lw_strut, length),         .symbol = "l",
     .unit = LW_UNIT_M,    .min = 0.5,  .max = 1.5,  .preset = 1.0, .error = 0.01,
     .usual_min = 0.85,    .usual_max = 1.2,  .decimals = 2,
     .doc = "Hull's bottom down to the middle of the foil, strut fully down. Tape."},

    {LW_MEMBER(lw_strut, chord),          .symbol = "c_s",
     .unit = LW_UNIT_M,    .min = 0.05, .max = 0.25, .preset = 0.115, .error = 0.001,
     .usual_min = 0.09,    .usual_max = 0.15, .decimals = 3,  .doc = STRUT_CHORD_DOC},

    {LW_MEMBER(lw_strut, thickness),      .symbol = "t/c",
     .unit = LW_UNIT_NONE, .min = 0.06, .max = 0.25, .preset = 0.13, .error = 0.005,
     .usual_min = 0.1,     .usual_max = 0.17, .decimals = 3,  .doc = STRUT_THICKNESS_DOC},
};

static const lw_quantity rudder_strut_rows[] = {
    {LW_MEMBER(lw_strut, x),              .symbol = "x_r",
     .unit = LW_UNIT_M,    .min = -1.2, .max = 0.5,  .preset = -0.35, .error = 0.01,
     .usual_min = -0.7,    .usual_max = 0.1,  .decimals = 2,  .doc = STRUT_X_DOC},

    {LW_MEMBER(lw_strut, length),         .symbol = "l_r",
     .unit = LW_UNIT_M,    .min = 0.5,  .max = 1.5,  .preset = 0.9, .error = 0.01,
     .usual_min = 0.75,    .usual_max = 1.1,  .decimals = 2,
     .doc = "From the height of the hull's bottom at the main strut down to the middle of the "
            "rudder foil, rudder fully down. Straight edge along the bottom, and tape."},

    {LW_MEMBER(lw_strut, chord),          .symbol = "c_s",
     .unit = LW_UNIT_M,    .min = 0.05, .max = 0.25, .preset = 0.11, .error = 0.001,
     .usual_min = 0.08,    .usual_max = 0.15, .decimals = 3,  .doc = STRUT_CHORD_DOC},

    {LW_MEMBER(lw_strut, thickness),      .symbol = "t/c",
     .unit = LW_UNIT_NONE, .min = 0.06, .max = 0.25, .preset = 0.12, .error = 0.005,
     .usual_min = 0.09,    .usual_max = 0.17, .decimals = 3,  .doc = STRUT_THICKNESS_DOC},
};
// clang-format on
LW_TABLE_COVERS(lw_foil, main_rows);
LW_TABLE_COVERS(lw_foil, rudder_rows);
LW_TABLE_COVERS(lw_strut, main_strut_rows);
LW_TABLE_COVERS(lw_strut, rudder_strut_rows);

const lw_table lw_main_foil_table = {
    "main_foil", "Main foil", main_rows, LW_ROW_COUNT(main_rows),
    "The lifting foil under the daggerboard. Take it out and lay it on a table."};
const lw_table lw_rudder_foil_table = {"rudder_foil", "Rudder foil", rudder_rows,
                                       LW_ROW_COUNT(rudder_rows),
                                       "The lifting foil under the rudder."};
const lw_table lw_main_strut_table = {
    "main_strut", "Main strut", main_strut_rows, LW_ROW_COUNT(main_strut_rows),
    "The vertical part that carries the main foil: the daggerboard."};
const lw_table lw_rudder_strut_table = {
    "rudder_strut", "Rudder strut", rudder_strut_rows, LW_ROW_COUNT(rudder_strut_rows),
    "The vertical part that carries the rudder foil: the rudder blade."};
