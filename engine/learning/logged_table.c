// logged_table.c - what each number and text of a logged day is.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/logged.h"
#include "lullwise/range.h"
#include "quantity/tables.h"

// clang-format off
static const lw_quantity used_rows[] = {
    {LW_MEMBER(lw_used, upwind),   .symbol = "n",
     .unit = LW_UNIT_TURN, .min = -50.0, .max = 50.0, .preset = NAN, .error = 0.25,
     .usual_min = -10.0,   .usual_max = 15.0, .decimals = 1,
     .doc = "Rudder lift on from the reference mark, as most used upwind. Count the turns back to "
            "the mark ashore."},

    {LW_MEMBER(lw_used, reach),    .symbol = "n",
     .unit = LW_UNIT_TURN, .min = -50.0, .max = 50.0, .preset = NAN, .error = 0.5,
     .usual_min = -10.0,   .usual_max = 15.0, .decimals = 1,
     .doc = "The same on a reach."},

    {LW_MEMBER(lw_used, downwind), .symbol = "n",
     .unit = LW_UNIT_TURN, .min = -50.0, .max = 50.0, .preset = NAN, .error = 0.5,
     .usual_min = -10.0,   .usual_max = 15.0, .decimals = 1,
     .doc = "The same downwind."},
};

static const lw_quantity outing_rows[] = {
    {LW_MEMBER(lw_outing, mass),   .symbol = "m",
     .unit = LW_UNIT_KG,   .min = 25.0,  .max = 180.0, .preset = NAN, .error = 1.0,
     .usual_min = 40.0,    .usual_max = 130.0, .decimals = 0,
     .doc = "The sailor with what is worn, as the sailor's file has it on that day."},

    {LW_MEMBER(lw_outing, afloat), .symbol = "t",
     .unit = LW_UNIT_MIN,  .min = 1.0,   .max = 1440.0, .preset = NAN, .error = 5.0,
     .usual_min = 10.0,    .usual_max = 480.0, .decimals = 0,
     .doc = "How long she was sailed, ashore and towed not counted. A watch, or the track."},

    {LW_MEMBER(lw_outing, swims),  .symbol = "N",
     .unit = LW_UNIT_NONE, .min = 0.0,   .max = 1000.0, .preset = NAN, .error = 1.0,
     .usual_min = 0.0,     .usual_max = 60.0, .decimals = 0,
     .doc = "Swims, counted: a whole number. None is 0."},
};

// Errors: a receiver's speed is far better than how even the wind was.  [judged]
#define SAILED(member, sym, u, most, off, digits, words)                                      \
    {                                                                                         \
        LW_MEMBER(lw_sailed, member), .symbol = sym, .unit = LW_UNIT_##u, .min = 0.0,         \
        .max = most, .preset = NAN, .error = off, .decimals = digits, .doc = words            \
    }
static const lw_quantity sailed_rows[] = {
    SAILED(upwind_speed, "V", KN, 60.0, 0.5, 1, "Mean speed while she flew upwind. The track."),
    SAILED(reach_speed, "V", KN, 60.0, 0.5, 1, "The same on a reach."),
    SAILED(downwind_speed, "V", KN, 60.0, 0.5, 1, "The same downwind."),
    SAILED(upwind_scatter, "s", KN, 30.0, 0.5, 1, "Standard deviation of that speed upwind. The "
                                                  "track."),
    SAILED(reach_scatter, "s", KN, 30.0, 0.5, 1, "The same on a reach."),
    SAILED(downwind_scatter, "s", KN, 30.0, 0.5, 1, "The same downwind."),
    SAILED(upwind_time, "t", MIN, 1440.0, 0.5, 1, "How long she flew upwind. The track."),
    SAILED(reach_time, "t", MIN, 1440.0, 0.5, 1, "The same on a reach."),
    SAILED(downwind_time, "t", MIN, 1440.0, 0.5, 1, "The same downwind."),
    SAILED(flying, "", PERCENT, 100.0, 2.0, 0, "Part of the time under way that she flew. The "
                                               "track."),
    SAILED(take_offs, "N", NONE, 10000.0, 1.0, 0, "Take-offs, counted. The track."),
    SAILED(stops, "N", NONE, 1000.0, 1.0, 0, "Stops that look like swims, counted. The track."),
};

static const lw_quantity conditions_rows[] = {
    LW_RESULT(lw_conditions, lull, "U_l", KN, 1, "lull, carried to 3 m above the water"),
    LW_RESULT(lw_conditions, mean, "U",   KN, 1, "mean wind, likewise"),
    LW_RESULT(lw_conditions, puff, "U_p", KN, 1, "puff, likewise"),
    LW_RESULT(lw_conditions, chop, "H_s", CM, 0, "significant wave height, given or by the fetch"),
    LW_RESULT(lw_conditions, mass, "m",   KG, 0, "the sailor with what is worn"),
};
// clang-format on
LW_TABLE_COVERS(lw_used, used_rows);
LW_TABLE_COVERS(lw_outing, outing_rows);
LW_TABLE_COVERS(lw_sailed, sailed_rows);
LW_TABLE_COVERS(lw_conditions, conditions_rows);

static const lw_table used_table = {"turns", "Turns", used_rows, LW_ROW_COUNT(used_rows),
                                    "Rudder turns used, by course."};
static const lw_table outing_table = {"outing", "Outing", outing_rows, LW_ROW_COUNT(outing_rows),
                                      "Who sailed, how long, and how often she swam."};

static const lw_table sailed_table = {"sailed", "Sailed", sailed_rows, LW_ROW_COUNT(sailed_rows),
                                      "What a track of the day tells."};

const lw_table lw_conditions_table = {"conditions", "Conditions", conditions_rows,
                                      LW_ROW_COUNT(conditions_rows), "What makes days alike."};

#define PLAIN(member, of)                                                               \
    {                                                                                   \
        .table = &(of), .kind = LW_SECTION_PLAIN, .offset = offsetof(lw_logged, member) \
    }

static const lw_section sections[] = {
    PLAIN(wind, lw_wind_table),  PLAIN(sea, lw_sea_table),     PLAIN(water, lw_water_table),
    PLAIN(air, lw_air_table),    PLAIN(setup, lw_setup_table), PLAIN(used, used_table),
    PLAIN(outing, outing_table), PLAIN(sailed, sailed_table),
};

const char *const lw_verdicts[] = {"much-too-weak", "too-weak",        "right",
                                   "too-strong",    "much-too-strong", NULL};

// clang-format off
static const lw_text texts[] = {
    {.key = "date", .offset = offsetof(lw_logged, date), .preset = "",
     .doc = "The day, as in 2030-05-17."},
    {.key = "waters", .offset = offsetof(lw_logged, waters), .preset = "",
     .doc = "Where, in words."},
    {.key = "pin", .offset = offsetof(lw_logged, pin), .preset = "",
     .doc = "Label of the pin that was sailed longest."},
    {.key = "verdict", .offset = offsetof(lw_logged, verdict), .preset = "", .words = lw_verdicts,
     .doc = "How much lift the set-up had for the wind: much-too-weak, too-weak, right, "
            "too-strong or much-too-strong."},
};
// clang-format on

const lw_record lw_logged_record = {
    .name = "log",
    .title = "Logged day",
    .texts = texts,
    .text_count = LW_ROW_COUNT(texts),
    .sections = sections,
    .section_count = LW_ROW_COUNT(sections),
    .size = sizeof(lw_logged),
    .doc = "A day as it was sailed: kept in the logbook, not in a file of its own."};
