// prospect_table.c - what is expected of one set-up on the day: units and meaning.
// SPDX-License-Identifier: MIT

#include "lullwise/choice.h"
#include "quantity/tables.h"

#define ROW(member, ...) LW_RESULT(lw_prospect, member, __VA_ARGS__)

// clang-format off
static const lw_quantity rows[] = {
    ROW(seconds,      "", S,       0, "expected time round the course, swims counted; none: cannot "
                                      "be sailed, less than a knot made good on some leg"),
    ROW(flying,       "", PERCENT, 0, "share of the time under way that rides fly"),
    ROW(swims,        "", NONE,    2, "swims expected round the course"),
    ROW(swims_error,  "", NONE,    2, "standard error of that"),
    ROW(swim_seconds, "", S,       0, "time that the swims cost"),
    ROW(hull_seconds, "", S,       0, "time sailed on the hull"),
    ROW(speed,        "", KN,      1, "made good round the course under way, in lulls and puffs "
                                      "and all"),
    ROW(launches_at,  "", KN,      1, "least steady wind in which she takes off, bearing away if "
                                      "need be"),
    ROW(stays_up_at,  "", KN,      1, "least steady wind in which she stays up on every leg; none: "
                                      "on some leg never"),
    ROW(held_up_to,   "", KN,      1, "greatest puffs held on every leg, by margins and by rides; "
                                      "none: on some leg in no wind, or in less than she stays up "
                                      "in"),
    ROW(margins_to,   "", KN,      1, "greatest puffs that leave all margins of steady flight on "
                                      "every leg"),
    ROW(rides_to,     "", KN,      1, "puffs of the greatest wind in which rides swim less than "
                                      "once in five minutes on every leg, or of the greatest that "
                                      "was ridden in"),
    ROW(turns_lull,   "", TURN,    1, "rudder turns in the lull on the longest leg; if she does "
                                      "not fly, of the lightest wind in which she does"),
    ROW(turns_mean,   "", TURN,    1, "rudder turns in the mean wind"),
    ROW(turns_puff,   "", TURN,    1, "rudder turns in the puff"),
};
// clang-format on
LW_TABLE_COVERS(lw_prospect, rows);

#define ROW_OF(member) (offsetof(lw_prospect, member) / sizeof(double))

bool lw_prospect_may_lack(size_t row)
{
    return row == ROW_OF(seconds) || row == ROW_OF(speed) ||
           (row >= ROW_OF(launches_at) && row <= ROW_OF(rides_to));
}

const lw_table lw_prospect_table = {.key = "prospect",
                                    .title = "Prospect of a set-up on the day",
                                    .rows = rows,
                                    .count = sizeof rows / sizeof rows[0],
                                    .doc = "What is expected of one set-up round the course."};
