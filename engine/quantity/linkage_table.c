// linkage_table.c - what each number of wand, flap and rudder lift is and how to measure it.
// SPDX-License-Identifier: MIT

#include "lullwise/boat.h"
#include "quantity/tables.h"

// clang-format off
static const lw_quantity linkage_rows[] = {
    {LW_MEMBER(lw_linkage, wand_x),           .symbol = "x_w",
     .unit = LW_UNIT_M,    .min = 2.0,   .max = 5.0,  .preset = 3.4, .error = 0.01,
     .usual_min = 3.1,     .usual_max = 4.0,   .decimals = 2,
     .doc = "The wand's pivot, forward of the transom; on a short bowsprit it lies beyond the "
            "hull's end. Tape."},

    {LW_MEMBER(lw_linkage, wand_height),      .symbol = "z_p",
     .unit = LW_UNIT_M,    .min = 0.0,   .max = 0.8,  .preset = 0.25, .error = 0.01,
     .usual_min = 0.1,     .usual_max = 0.45,  .decimals = 2,
     .doc = "The wand's pivot above the hull's bottom, hull level. Straight edge along the bottom, "
            "and tape."},

    {LW_MEMBER(lw_linkage, wand_length),      .symbol = "l_w",
     .unit = LW_UNIT_M,    .min = 0.5,   .max = 2.0,  .preset = 1.1, .error = 0.005,
     .usual_min = 0.8,     .usual_max = 1.4,   .decimals = 2,
     .doc = "Pivot to the tip of the paddle, as set today. Tape."},

    {LW_MEMBER(lw_linkage, forward_stop),     .symbol = "psi_min",
     .unit = LW_UNIT_DEG,  .min = -20.0, .max = 60.0, .preset = 15.0, .error = 2.0,
     .usual_min = 0.0,     .usual_max = 35.0,  .decimals = 0,
     .doc = "Wand against its forward stop, from straight down, swung aft positive, hull level. "
            "Phone level held along the wand."},

    {LW_MEMBER(lw_linkage, aft_stop),         .symbol = "psi_max",
     .unit = LW_UNIT_DEG,  .min = 40.0,  .max = 100.0, .preset = 80.0, .error = 2.0,
     .usual_min = 60.0,    .usual_max = 92.0,  .decimals = 0,
     .doc = "Wand swung aft as far as it goes, measured in the same way. Phone level."},

    {LW_MEMBER(lw_linkage, neutral_angle),    .symbol = "psi_0",
     .unit = LW_UNIT_DEG,  .min = 0.0,   .max = 90.0, .preset = 45.0, .error = 2.0,
     .usual_min = 25.0,    .usual_max = 65.0,  .decimals = 0,
     .doc = "Wand angle at which the flap is in line with the foil, ride-height rod at 0. "
            "Straight edge under the foil; then phone level along the wand."},

    {LW_MEMBER(lw_linkage, gearing),          .symbol = "G",
     .unit = LW_UNIT_NONE, .min = 0.05,  .max = 2.0,  .preset = 0.4, .error = 0.03,
     .usual_min = 0.2,     .usual_max = 0.8,   .decimals = 2,
     .doc = "Flap degrees for each wand degree, about the middle of the travel. Swing the wand "
            "20° by the phone level, read the flap by a protractor or trailing-edge travel / "
            "flap chord x 57.3, and divide."},

    {LW_MEMBER(lw_linkage, rod),              .symbol = "r",
     .unit = LW_UNIT_DEG,  .min = -6.0,  .max = 6.0,  .preset = 0.0, .error = 0.3,
     .usual_min = -4.0,    .usual_max = 4.0,   .decimals = 1,
     .doc = "Flap angle that the ride-height rod adds, trailing edge down positive: rides higher. "
            "0 at your own mark. Protractor on the flap, wand held still."},

    {LW_MEMBER(lw_linkage, flap_up_stop),     .symbol = "d_min",
     .unit = LW_UNIT_DEG,  .min = -30.0, .max = 0.0,  .preset = -10.0, .error = 1.0,
     .usual_min = -20.0,   .usual_max = -4.0,  .decimals = 0,
     .doc = "Flap as far up as it goes, trailing edge up negative. Protractor, or "
            "trailing-edge travel / flap chord x 57.3."},

    {LW_MEMBER(lw_linkage, flap_down_stop),   .symbol = "d_max",
     .unit = LW_UNIT_DEG,  .min = 0.0,   .max = 30.0, .preset = 12.0, .error = 1.0,
     .usual_min = 6.0,     .usual_max = 22.0,  .decimals = 0,
     .doc = "Flap as far down as it goes. Measured in the same way."},

    {LW_MEMBER(lw_linkage, pin_pivot_height), .symbol = "z_pp",
     .unit = LW_UNIT_M,    .min = -0.2,  .max = 0.6,  .preset = 0.1, .error = 0.01,
     .usual_min = 0.0,     .usual_max = 0.4,   .decimals = 2,
     .doc = "Height above the hull's bottom of the bearing about which a pin turns strut and "
            "foil. Tape."},
};

static const lw_quantity rudder_rows[] = {
    {LW_MEMBER(lw_rudder, mark_incidence), .symbol = "i_r0",
     .unit = LW_UNIT_DEG,     .min = -6.0,  .max = 6.0,  .preset = 0.0, .error = 0.3,
     .usual_min = -3.0,       .usual_max = 3.0,  .decimals = 1,
     .doc = "Chord line of the rudder foil to the hull's bottom with the twist grip at your "
            "reference mark, nose up positive. Phone level on a board along the foil, then on "
            "the bottom; subtract."},

    {LW_MEMBER(lw_rudder, turn),           .symbol = "k_t",
     .unit = LW_UNIT_DEGPTURN, .min = 0.05, .max = 3.0,  .preset = 0.7, .error = 0.05,
     .usual_min = 0.2,        .usual_max = 1.5,  .decimals = 2,
     .doc = "Degrees of incidence for each turn of the grip, rudder lift on. Wind on five turns, "
            "phone level before and after, divide by five."},

    {LW_MEMBER(lw_rudder, least_turns),    .symbol = "n_min",
     .unit = LW_UNIT_TURN,    .min = -30.0, .max = 0.0,  .preset = -6.0, .error = 0.25,
     .usual_min = -15.0,      .usual_max = -1.0, .decimals = 1,
     .doc = "End of the thread, rudder lift off. Count turns from the mark."},

    {LW_MEMBER(lw_rudder, most_turns),     .symbol = "n_max",
     .unit = LW_UNIT_TURN,    .min = 0.0,   .max = 30.0, .preset = 6.0, .error = 0.25,
     .usual_min = 1.0,        .usual_max = 15.0, .decimals = 1,
     .doc = "End of the thread, rudder lift on. Count turns from the mark."},

    {LW_MEMBER(lw_rudder, helm_limit),     .symbol = "d_rmax",
     .unit = LW_UNIT_DEG,     .min = 5.0,   .max = 60.0, .preset = 25.0, .error = 2.0,
     .usual_min = 15.0,       .usual_max = 45.0, .decimals = 0,
     .doc = "How far the rudder turns each way. Protractor at the tiller, or by eye."},
};
// clang-format on
LW_TABLE_COVERS(lw_linkage, linkage_rows);
LW_TABLE_COVERS(lw_rudder, rudder_rows);

const lw_table lw_linkage_table = {
    "linkage", "Wand and flap", linkage_rows, LW_ROW_COUNT(linkage_rows),
    "What holds the ride height: the wand on the water works the flap of the main foil."};
const lw_table lw_rudder_table = {
    "rudder", "Rudder lift", rudder_rows, LW_ROW_COUNT(rudder_rows),
    "The twist grip that winds rudder lift on and off. Choose a mark that you find again."};
