// levers_table.c - what is moved afloat and set ashore: units, and how often and far it is off.
// SPDX-License-Identifier: MIT

#include "lullwise/levers.h"
#include "quantity/tables.h"

#define ROW(member, ...) LW_RESULT(lw_levers, member, __VA_ARGS__)

// clang-format off
static const lw_quantity rows[] = {
    ROW(turns,   "n",     TURN, 1, "rudder lift on from the mark"),
    ROW(place,   "x_s",   M,    2, "sailor's middle, forward of the transom"),
    ROW(heel,    "phi",   DEG,  0, "windward, in the mean wind"),
    ROW(sail,    "",      NONE, 2, "lift that the sail can give, over the measured sail's"),
    ROW(pin,     "i_m",   DEG,  1, "main foil's incidence"),
    ROW(rod,     "r",     DEG,  1, "flap that the ride-height rod adds"),
    ROW(wand,    "l_w",   M,    2, "wand, pivot to tip"),
    ROW(gearing, "G",     NONE, 2, "flap degrees for each wand degree"),
    ROW(wind,    "",      NONE, 2, "true wind over the wind that is told"),
};
// clang-format on
LW_TABLE_COVERS(lw_levers, rows);
_Static_assert(sizeof(lw_levers) == LW_LEVERS * sizeof(double), "a member for each lever");

const lw_table lw_levers_table = {.key = "levers",
                                  .title = "Levers",
                                  .rows = rows,
                                  .count = sizeof rows / sizeof rows[0],
                                  .doc = "What is moved afloat, and what is set ashore."};

#define DEG LW_DEG

// clang-format off
// often usual doubt step  most  trouble afloat
static const lw_lever_row levers[LW_LEVERS] = {
    [LW_LEVER_TURNS] = {0.30, 1.5, 0.10, 0.5, 4.0, 0.4, true,
        "too much rudder lift is on", "too little rudder lift is on",
        "wind rudder lift on", "wind rudder lift off",
        "wind the grip back to its mark and count"},
    [LW_LEVER_PLACE] = {0.15, 0.25, 0.10, 0.10, 0.8, 1.0, true,
        "the sailor sits too far forward", "the sailor sits too far aft",
        "go forward", "go aft",
        "see by a mark on the rack where you sit"},
    [LW_LEVER_HEEL] = {0.05, 6.0 * DEG, 0.50, 2.0 * DEG, 12.0 * DEG, 1.5, true,
        "she is heeled too far to windward", "she is sailed too upright",
        "heel her further to windward", "let her come more upright",
        "a phone level in the boat, or a photo from astern"},
    [LW_LEVER_SAIL] = {0.10, 0.12, 0.50, 0.05, 0.2, 1.0, false,
        "the sail is too full", "the sail is too flat",
        "let the sail be fuller", "flatten the sail",
        "look up at the draft and at what the controls are set to"},
    [LW_LEVER_PIN] = {0.25, 1.2 * DEG, 0.02, 1.0 * DEG, 4.0 * DEG, 0.4, false,
        "the pin has too much lift for this wind", "the pin has too little lift for this wind",
        "take a pin with more lift", "take a pin with less lift",
        "see which hole the pin is in"},
    [LW_LEVER_ROD] = {0.10, 1.5 * DEG, 0.20, 0.5 * DEG, 3.0 * DEG, 1.2, false,
        "the ride-height rod is set too high", "the ride-height rod is set too low",
        "set the ride-height rod higher", "set the ride-height rod lower",
        "see where the rod stands beside its mark"},
    [LW_LEVER_WAND] = {0.08, 0.08, 0.20, 0.05, 0.25, 1.3, false,
        "the wand is too long", "the wand is too short",
        "lengthen the wand", "shorten the wand",
        "tape the wand, pivot to tip of the paddle"},
    [LW_LEVER_GEARING] = {0.04, 0.08, 0.50, 0.05, 0.2, 3.0, false,
        "the gearing is too quick", "the gearing is too slow",
        "gear the flap up", "gear the flap down",
        "swing the wand 20 degrees and measure the flap"},
    [LW_LEVER_WIND] = {0.08, 0.12, 1.0, 0.0, 0.0, 0.0, true,
        "there is more wind than told", "there is less wind than told",
        "wait for more wind", "wait for less wind",
        "read the wind again, in lull and puff"},
};
// clang-format on

const lw_lever_row *lw_lever_of(lw_lever lever) { return &levers[lever]; }

double lw_lever_get(const lw_levers *all, lw_lever lever)
{
    return lw_quantity_value(&rows[lever], all);
}

void lw_lever_put(lw_levers *all, lw_lever lever, double si)
{
    lw_quantity_put(&rows[lever], all, si);
}
