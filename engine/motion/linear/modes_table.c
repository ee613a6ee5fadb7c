// modes_table.c - numbers of a mode and of the wand's margin: unit and meaning.
// SPDX-License-Identifier: MIT

#include "lullwise/modes.h"
#include "quantity/tables.h"

#define SWING(member, ...)  LW_RESULT(lw_swing, member, __VA_ARGS__)
#define MARGIN(member, ...) LW_RESULT(lw_wand_margin, member, __VA_ARGS__)

// clang-format off
static const lw_quantity swing_rows[] = {
    SWING(growth,  "sigma",   PERS, 3, "how fast it grows; negative: it dies away"),
    SWING(period,  "T",       S,    2, "of its swing; none: it does not swing"),
    SWING(natural, "f_n",     HZ,   3, "its frequency without damping"),
    SWING(damping, "zeta",    NONE, 2, "damping ratio: 1 it does not swing, below 0 it grows"),
    SWING(halves,  "T_1/2",   S,    2, "to half its size; none: it does not"),
    SWING(doubles, "T_2",     S,    2, "to twice its size; none: it does not"),
    SWING(speed,   "V",       KN,   1, "how far the speed goes when what is noticed first is just "
                                       "noticed"),
    SWING(height,  "h",       CM,   1, "how far the ride height goes"),
    SWING(pitch,   "theta",   DEG,  1, "how far the pitch goes"),
    SWING(heel,    "phi",     DEG,  1, "how far the heel goes"),
    SWING(course,  "",        DEG,  1, "how far the bow goes"),
    SWING(wand,    "psi",     DEG,  1, "how far the wand goes"),
    SWING(helm,    "delta_r", DEG,  1, "how far the rudder blade goes"),
};
static const lw_quantity margin_rows[] = {
    MARGIN(gearing,        "", NONE, 2, "times the gearing from which ride height and pitch swing "
                                        "by themselves; 1: they do already"),
    MARGIN(gearing_period, "", S,    2, "of that swing"),
    MARGIN(least_gearing,  "", NONE, 2, "times the gearing below which ride height is not held; 0: "
                                        "it always is"),
    MARGIN(lag,            "", S,    3, "lag of the wand from which ride height and pitch swing by "
                                        "themselves"),
    MARGIN(lag_period,     "", S,    2, "of that swing"),
    MARGIN(lag_now,        "", S,    3, "lag of the wand as it is"),
};
// clang-format on
LW_TABLE_COVERS(lw_swing, swing_rows);
LW_TABLE_COVERS(lw_wand_margin, margin_rows);

const lw_table lw_swing_table = {.key = "swing",
                                 .title = "Swing",
                                 .rows = swing_rows,
                                 .count = LW_ROW_COUNT(swing_rows),
                                 .doc = "One motion near a balance."};
const lw_table lw_wand_margin_table = {.key = "wand_margin",
                                       .title = "Wand",
                                       .rows = margin_rows,
                                       .count = LW_ROW_COUNT(margin_rows),
                                       .doc = "How near the wand's loop is to swinging."};
