// margins_table.c - the margins of a flight: unit and meaning.
// SPDX-License-Identifier: MIT

#include "lullwise/flight.h"
#include "quantity/tables.h"

#define ROW(member, ...) LW_RESULT(lw_margins, member, __VA_ARGS__)

// clang-format off
static const lw_quantity rows[] = {
    ROW(flap_up,      "", DEG,   1, "flap travel left, trailing edge up"),
    ROW(flap_down,    "", DEG,   1, "flap travel left, trailing edge down"),
    ROW(wand_forward, "", DEG,   1, "wand travel left before its forward stop"),
    ROW(tip_depth,    "", CHORD, 2, "depth of the higher main-foil tip below the chop's trough, "
                                    "less half a chord"),
    ROW(rudder_tip,   "", CHORD, 2, "depth of the higher rudder-foil tip below the chop's trough, "
                                    "less half a chord"),
    ROW(clearance,    "", M,     2, "hull above the water"),
    ROW(pressure,     "", NONE,  2, "cavitation number above what the foils' lowest pressure "
                                    "needs"),
    ROW(main_stall,   "", DEG,   1, "main foil's angle left to stall"),
    ROW(rudder_stall, "", DEG,   1, "rudder foil's angle left to stall"),
    ROW(ventilation,  "", DEG,   1, "strut angle left to that at which air runs down, 14.5° "
                                    "when disturbed; slowly and undisturbed 20 to 25° "
                                    "[harwood-2016]"),
    ROW(helm,         "", DEG,   1, "rudder blade angle left"),
    ROW(thread,       "", TURN,  1, "turns left on the rudder's thread, either way"),
    ROW(heel,         "", DEG,   1, "windward heel above the least that the sailor wants in hand"),
    ROW(power,        "", NONE,  2, "part of the sail's power that can still be taken off"),
};
// clang-format on
LW_TABLE_COVERS(lw_margins, rows);

const lw_table lw_margins_table = {
    .key = "margins",
    .title = "Margins",
    .rows = rows,
    .count = sizeof rows / sizeof rows[0],
    .doc = "What is left before something gives; negative: it has given."};
