// sailor_table.c - what each number of the sailor is and how to measure it.
// SPDX-License-Identifier: MIT

#include "lullwise/boat.h"
#include "quantity/tables.h"

// clang-format off
static const lw_quantity rows[] = {
    {LW_MEMBER(lw_person, mass),        .symbol = "m_s",
     .unit = LW_UNIT_KG,  .min = 25.0, .max = 150.0, .preset = 75.0, .error = 0.5,
     .usual_min = 45.0,   .usual_max = 105.0, .decimals = 1, .required = true,
     .doc = "The sailor in swimming things. Bathroom scale."},

    {LW_MEMBER(lw_person, gear),        .symbol = "m_g",
     .unit = LW_UNIT_KG,  .min = 0.0,  .max = 20.0,  .preset = 5.0, .error = 0.5,
     .usual_min = 1.0,    .usual_max = 11.0,  .decimals = 1,
     .doc = "What is worn, wet: suit, buoyancy aid, shoes, helmet. Scale with all of it on after "
            "sailing, less the sailor."},

    {LW_MEMBER(lw_person, hike),        .symbol = "y_h",
     .unit = LW_UNIT_M,   .min = 0.0,  .max = 0.8,   .preset = 0.35, .error = 0.05,
     .usual_min = 0.15,   .usual_max = 0.55,  .decimals = 2,
     .doc = "Middle of the body outside the rack's edge, fully hiked, as held for a whole leg: at "
            "the navel, about. Hike ashore on the racks; plumb line and tape."},

    {LW_MEMBER(lw_person, body_height), .symbol = "z_b",
     .unit = LW_UNIT_M,   .min = -0.2, .max = 0.8,   .preset = 0.15, .error = 0.05,
     .usual_min = 0.0,    .usual_max = 0.4,   .decimals = 2,
     .doc = "Middle of the body above the rack when hiked. Tape."},

    {LW_MEMBER(lw_person, drag_area),   .symbol = "C_D A",
     .unit = LW_UNIT_M2,  .min = 0.1,  .max = 1.0,   .preset = 0.35, .error = 0.07,
     .usual_min = 0.2,    .usual_max = 0.55,  .decimals = 2,
     .doc = "Drag area of the body to the wind, hiked. About a fifth of height squared, in m, "
            "times 0.6; a loose jacket adds a third. [judged]"},

    {LW_MEMBER(lw_person, least_heel),   .symbol = "phi_0",
     .unit = LW_UNIT_DEG,  .min = 0.0,  .max = 20.0, .preset = 8.0, .error = 2.0,
     .usual_min = 3.0,     .usual_max = 12.0, .decimals = 0,
     .doc = "Windward heel that this sailor wants in hand while flying: with less, a gust throws "
            "the boat to leeward before the sheet is out. Phone level on a thwart, on video. "
            "[common practice]"},

    {LW_MEMBER(lw_person, most_heel),   .symbol = "phi_m",
     .unit = LW_UNIT_DEG, .min = 0.0,  .max = 45.0,  .preset = 25.0, .error = 3.0,
     .usual_min = 5.0,    .usual_max = 32.0,  .decimals = 0,
     .doc = "Greatest windward heel that this sailor holds for a leg. From a photo or a phone "
            "fixed in the boat. A beginner: 10."},

    {LW_MEMBER(lw_person, most_bow_down), .symbol = "theta_d",
     .unit = LW_UNIT_DEG, .min = 0.0,  .max = 10.0,  .preset = 3.0, .error = 1.0,
     .usual_min = 1.0,    .usual_max = 5.0,   .decimals = 1,
     .doc = "Furthest down that this sailor lets the bow fly, to hold a strong pin by winding "
            "rudder lift on. From a video abeam, against the horizon. [judged]"},

    {LW_MEMBER(lw_person, most_bow_up), .symbol = "theta_u",
     .unit = LW_UNIT_DEG, .min = 0.0,  .max = 10.0,  .preset = 3.0, .error = 1.0,
     .usual_min = 1.0,    .usual_max = 5.0,   .decimals = 1,
     .doc = "Furthest up that this sailor lets the bow fly. From a video abeam, against the "
            "horizon. [judged]"},
    {LW_MEMBER(lw_person, skill),       .symbol = "s",
     .unit = LW_UNIT_NONE, .min = 0.0, .max = 2.0,   .preset = 1.0, .error = 0.25,
     .usual_min = 0.0,     .usual_max = 2.0,  .decimals = 1,
     .doc = "How quick and far-sighted the sailor of the rides is: 0 a beginner on foils, 1 "
            "practised "
            "(races, and mostly finishes dry), 2 an expert; anything between. Each step: eye and "
            "hands "
            "half as slow again, or as quick. [judged]"},

    {LW_MEMBER(lw_person, puff_known),  .symbol = "U_k",
     .unit = LW_UNIT_KN,  .min = 0.0,  .max = 60.0,  .preset = 0.0,
     .usual_min = 0.0,    .usual_max = 35.0,  .decimals = 0,
     .doc = "Strongest puffs in which this sailor has sailed such a boat for half an hour, and "
            "come home without help and not worn out. From the log, with the gusts of a wind "
            "station near by on that day. 0: not said. Only the cautions ask for it. [judged]"},
};
// clang-format on
LW_TABLE_COVERS(lw_person, rows);

static const lw_table table = {"person", "Sailor", rows, LW_ROW_COUNT(rows),
                               "Who sails, with what is worn."};

// clang-format off
static const lw_section sections[] = {
    {.table = &table, .kind = LW_SECTION_PLAIN, .required = true,
     .offset = offsetof(lw_sailor, person)},
};

static const lw_text texts[] = {
    {.key = "name", .offset = offsetof(lw_sailor, name), .preset = "Unnamed sailor",
     .doc = "What this sailor is called on the card."},
};
// clang-format on

const lw_record lw_sailor_record = {
    .name = "sailor",
    .title = "Sailor",
    .texts = texts,
    .text_count = LW_ROW_COUNT(texts),
    .sections = sections,
    .section_count = LW_ROW_COUNT(sections),
    .size = sizeof(lw_sailor),
    .doc = "One sailor. Weight decides more than any other number here: weigh in."};
