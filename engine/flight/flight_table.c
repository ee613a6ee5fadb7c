// flight_table.c - what a balance tells: units and meaning.
// SPDX-License-Identifier: MIT

#include "lullwise/flight.h"
#include "quantity/tables.h"

#define ROW(member, ...) LW_RESULT(lw_flight, member, __VA_ARGS__)

// clang-format off
static const lw_quantity rows[] = {
    ROW(wind,           "U",       KN,   1, "true wind at the height where it was read"),
    ROW(heading,        "gamma",   DEG,  0, "track from the true wind"),
    ROW(speed,          "V",       KN,   1, "through the water"),
    ROW(vmg,            "",        KN,   1, "made good to windward; negative: to leeward"),
    ROW(leeway,         "lambda",  DEG,  1, "track to leeward of the bow"),
    ROW(ride_height,    "h",       CM,   0, "hull's bottom at the main strut above the water"),
    ROW(pitch,          "theta",   DEG,  1, "bow up"),
    ROW(heel,           "phi",     DEG,  0, "to windward"),
    ROW(place_x,        "x_s",     M,    2, "sailor's middle forward of the transom"),
    ROW(turns,          "n",       TURN, 1, "rudder lift on from the reference mark"),
    ROW(helm,           "delta_r", DEG,  1, "rudder blade; positive pushes the stern to windward"),
    ROW(effort,         "p",       NONE, 2, "0 sitting in, 1 hiked; beyond, power taken off the "
                                            "sail"),
    ROW(hiking,         "",        PERCENT, 0, "of the way out"),
    ROW(sail_power,     "",        PERCENT, 0, "sail lift of what the fullest trim gives"),
    ROW(twist,          "a",       NONE, 2, "second harmonic of the sail's span load over the "
                                            "first"),
    ROW(wand,           "psi",     DEG,  0, "wand aft of straight down"),
    ROW(flap,           "delta",   DEG,  1, "trailing edge down"),
    ROW(apparent_wind,  "",        KN,   1, "at the sail"),
    ROW(apparent_angle, "",        DEG,  0, "from the bow"),
    ROW(main_lift,      "",        N,    0, "of the main foil, square to the flow"),
    ROW(rudder_lift,    "",        N,    0, "of the rudder foil"),
    ROW(main_side,      "",        N,    0, "of the main strut, to windward"),
    ROW(rudder_side,    "",        N,    0, "of the rudder strut, to windward"),
    ROW(buoyancy,       "",        N,    0, "of the hull"),
    ROW(drive,          "",        N,    0, "of sail and windage together, along the track"),
    ROW(sail_side,      "",        N,    0, "of the sail, to leeward in the boat"),
    ROW(windage,        "",        N,    0, "of boat and sailor, along the track"),
    ROW(foil_drag,      "",        N,    0, "of both foils"),
    ROW(strut_drag,     "",        N,    0, "of both struts"),
    ROW(hull_drag,      "",        N,    0, "of the hull"),
    ROW(main_lift_coefficient,   "C_L", NONE, 2, "of the main foil"),
    ROW(rudder_lift_coefficient, "C_L", NONE, 2, "of the rudder foil"),
    ROW(strut_angle,    "",        DEG,  1, "of the strut nearer to ventilating, to the flow"),
    ROW(air_stays,      "",        DEG,  1, "strut angle above which air, once down the strut, "
                                            "stays; -20, +30 %"),
    {LW_MEMBER(lw_flight, acceleration), .symbol = "dV/dt", .unit = LW_UNIT_NONE, .min = -1e9,
     .max = 1e9, .decimals = 2, .doc = "along the track in m/s2; 0 in a steady state"},
    ROW(residual,       "",        NONE, 12, "greatest force left over, in weights of the crewed "
                                             "boat"),
    ROW(iterations,     "",        NONE, 0, "rounds of the solver"),
};
// clang-format on
LW_TABLE_COVERS(lw_flight, rows);

const lw_table lw_flight_table = {.key = "flight",
                                  .title = "Flight",
                                  .rows = rows,
                                  .count = sizeof rows / sizeof rows[0],
                                  .doc = "One steady state of the boat."};
