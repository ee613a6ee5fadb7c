// prospect_table.c - what is expected of one set-up on the day: units and meaning.
// SPDX-License-Identifier: MIT

#include "lullwise/choice.h"
#include "quantity/tables.h"

#define ROW(member, ...) LW_RESULT(lw_prospect, member, __VA_ARGS__)

// clang-format off
static const lw_quantity rows[] = {
    ROW(seconds,      "", S,       0, "expected time round the course, swims counted"),
    ROW(flying,       "", PERCENT, 0, "share of the time flying"),
    ROW(unheld,       "", PERCENT, 0, "share of the time in more wind than can be held"),
    ROW(swims,        "", NONE,    2, "swims expected round the course"),
    ROW(swims_error,  "", NONE,    2, "standard error of that, as far as the number of rides goes"),
    ROW(swim_seconds, "", S,       0, "time that the swims cost"),
    ROW(hull_seconds, "", S,       0, "time sailed on the hull"),
    ROW(launches_at,  "", KN,      1, "least wind that launches her, bearing away if need be; 0: none"),
    ROW(stays_up_at,  "", KN,      1, "least wind in which she stays up on every leg; 0: on some leg never"),
    ROW(held_up_to,   "", KN,      1, "greatest wind held on every leg, by margins and by rides"),
    ROW(margins_to,   "", KN,      1, "greatest wind that keeps all margins on every leg; 0: none"),
    ROW(rides_to,     "", KN,      1, "greatest mean wind in which rides do not swim too often on any leg; 0: they do so in none that was tried"),
    ROW(speed,        "", KN,      1, "made good round the course in the mean wind; 0: does not fly in it"),
    ROW(turns_lull,   "", TURN,    1, "rudder turns in the lull on the longest leg; if she does not fly, of the lightest wind in which she does"),
    ROW(turns_mean,   "", TURN,    1, "rudder turns in the mean wind"),
    ROW(turns_puff,   "", TURN,    1, "rudder turns in the puff"),
    ROW(score,        "", NONE,    1, "what the ranking sorts by: least first"),
};
// clang-format on
LW_TABLE_COVERS(lw_prospect, rows);

const lw_table lw_prospect_table = {.key = "prospect",
                                    .title = "Prospect of a set-up on the day",
                                    .rows = rows,
                                    .count = sizeof rows / sizeof rows[0],
                                    .doc = "What is expected of one set-up round the course."};
