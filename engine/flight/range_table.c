// range_table.c - a set-up, and the winds that bound its range: units and meaning.
// SPDX-License-Identifier: MIT

#include "lullwise/range.h"

// clang-format off
static const lw_quantity setup_rows[] = {
    {LW_MEMBER(lw_setup, incidence),   .symbol = "i_m", .unit = LW_UNIT_DEG,  .min = -10.0,
     .max = 15.0, .decimals = 1, .doc = "main foil's chord line to the hull's bottom line, by the "
                                        "pin"},
    {LW_MEMBER(lw_setup, wand_length), .symbol = "l_w", .unit = LW_UNIT_M,    .min = 0.3,
     .max = 2.5,  .decimals = 2, .doc = "wand, pivot to tip"},
    {LW_MEMBER(lw_setup, gearing),     .symbol = "G",   .unit = LW_UNIT_NONE, .min = 0.05,
     .max = 2.0,  .decimals = 2, .doc = "flap degrees for each wand degree"},
    {LW_MEMBER(lw_setup, rod),         .symbol = "r",   .unit = LW_UNIT_DEG,  .min = -20.0,
     .max = 20.0, .decimals = 1, .doc = "flap added by the ride-height rod"},
};

static const lw_quantity range_rows[] = {
    {LW_MEMBER(lw_range, launches_at), .symbol = "", .unit = LW_UNIT_KN, .min = 0.0, .max = 60.0,
     .decimals = 1, .doc = "least wind that lifts her off the water on the course's middle "
                           "heading; 0: none up to 22 kn"},
    {LW_MEMBER(lw_range, stays_up_at), .symbol = "", .unit = LW_UNIT_KN, .min = 0.0, .max = 60.0,
     .decimals = 1, .doc = "least wind in which steady flight exists with the hull clear; 0: none"},
    {LW_MEMBER(lw_range, held_up_to),  .symbol = "", .unit = LW_UNIT_KN, .min = 0.0, .max = 60.0,
     .decimals = 1, .doc = "greatest wind that keeps all margins, also as a puff at an unchanged "
                           "rudder; 0: none"},
};
// clang-format on
LW_TABLE_COVERS(lw_setup, setup_rows);

const lw_table lw_setup_table = {.key = "setup",
                                 .title = "Set-up",
                                 .rows = setup_rows,
                                 .count = sizeof setup_rows / sizeof setup_rows[0],
                                 .doc = "What of the boat is fixed while sailing."};

const lw_table lw_range_table = {.key = "range",
                                 .title = "Range of a set-up",
                                 .rows = range_rows,
                                 .count = sizeof range_rows / sizeof range_rows[0],
                                 .doc =
                                     "From what wind a set-up flies on a course, and up to what "
                                     "wind it is held."};
