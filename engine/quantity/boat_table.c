// boat_table.c - rig, places and pins, and the sections that make up the record of a boat.
// SPDX-License-Identifier: MIT

#include "lullwise/boat.h"
#include "quantity/tables.h"

// clang-format off
static const lw_quantity rig_rows[] = {
    {LW_MEMBER(lw_rig, sail_area),     .symbol = "A",
     .unit = LW_UNIT_M2,   .min = 3.0,  .max = 12.0, .preset = 8.0, .error = 0.1,
     .usual_min = 6.0,     .usual_max = 8.5,  .decimals = 2,
     .doc = "Of the sail, with its sleeve. From the sailmaker, or squares counted on a sail laid "
            "out flat."},

    {LW_MEMBER(lw_rig, luff),          .symbol = "P",
     .unit = LW_UNIT_M,    .min = 3.0,  .max = 7.0,  .preset = 5.1, .error = 0.02,
     .usual_min = 4.3,     .usual_max = 5.6,  .decimals = 2,
     .doc = "Tack to head along the mast. Tape."},

    {LW_MEMBER(lw_rig, foot_height),   .symbol = "z_t",
     .unit = LW_UNIT_M,    .min = 0.1,  .max = 1.5,  .preset = 0.55, .error = 0.02,
     .usual_min = 0.3,     .usual_max = 0.9,  .decimals = 2,
     .doc = "Tack above the hull's bottom, hull level. Tape."},

    {LW_MEMBER(lw_rig, centre_x),      .symbol = "x_CE",
     .unit = LW_UNIT_M,    .min = 0.5,  .max = 3.0,  .preset = 1.45, .error = 0.05,
     .usual_min = 1.2,     .usual_max = 1.9,  .decimals = 2,
     .doc = "Centre of effort of the sail hauled in, forward of the transom. Mast at the boom less "
            "a third of the boom, with the mast's rake taken off. [common practice]"},

    {LW_MEMBER(lw_rig, centre_part),   .symbol = "P_CE/P",
     .unit = LW_UNIT_NONE, .min = 0.25, .max = 0.6,  .preset = 0.4, .error = 0.02,
     .usual_min = 0.35,    .usual_max = 0.48, .decimals = 2,
     .doc = "Centre of effort above the tack / luff, sail full. A triangle has 0.33, a fat head "
            "more. [judged]"},

    {LW_MEMBER(lw_rig, greatest_lift), .symbol = "C_Lmax",
     .unit = LW_UNIT_NONE, .min = 0.8,  .max = 2.2,  .preset = 1.5, .error = 0.1,
     .usual_min = 1.2,     .usual_max = 1.8,  .decimals = 2,
     .doc = "Greatest lift coefficient of the sail at its fullest trim. Leave the preset. "
            "[hazen-1980] [judged]"},

    {LW_MEMBER(lw_rig, flattest),      .symbol = "F",
     .unit = LW_UNIT_NONE, .min = 0.2,  .max = 1.0,  .preset = 0.5, .error = 0.1,
     .usual_min = 0.2,    .usual_max = 0.75, .decimals = 2,
     .doc = "Least lift by flattening alone / greatest lift: what downhaul and outhaul can take "
            "off. [hazen-1980] [judged]"},

    {LW_MEMBER(lw_rig, most_twist),    .symbol = "a_max",
     .unit = LW_UNIT_NONE, .min = 0.0,  .max = 1.0,  .preset = 0.5, .error = 0.1,
     .usual_min = 0.2,     .usual_max = 0.8,  .decimals = 2,
     .doc = "How far the head can be let off: second harmonic of the load along the luff / first. "
            "0: no twist; 0.5: the head carries about nothing. [judged]"},

    {LW_MEMBER(lw_rig, profile_drag),  .symbol = "C_D0",
     .unit = LW_UNIT_NONE, .min = 0.005, .max = 0.15, .preset = 0.035, .error = 0.01,
     .usual_min = 0.015,   .usual_max = 0.08, .decimals = 3,
     .doc = "Drag coefficient of mast and sail, on the sail's area. Leave the preset. [judged]"},
};

static const lw_quantity place_rows[] = {
    {LW_MEMBER(lw_place, forward_x),   .symbol = "x_s",
     .unit = LW_UNIT_M,    .min = 0.5,  .max = 3.5,  .preset = 2.0, .error = 0.05,
     .usual_min = 1.5,     .usual_max = 2.4,  .decimals = 2,
     .doc = "Furthest forward that the middle of your body can be while sailing, from the "
            "transom. Sit there ashore; tape."},

    {LW_MEMBER(lw_place, aft_x),       .symbol = "x_s",
     .unit = LW_UNIT_M,    .min = -0.5, .max = 2.5,  .preset = 0.3, .error = 0.05,
     .usual_min = 0.0,     .usual_max = 1.0,  .decimals = 2,
     .doc = "Furthest aft that the middle of your body can be while sailing. Tape."},

    {LW_MEMBER(lw_place, inboard),     .symbol = "y_s",
     .unit = LW_UNIT_M,    .min = -1.2, .max = 1.2,  .preset = 0.0, .error = 0.05,
     .usual_min = -0.7,    .usual_max = 0.7,  .decimals = 2,
     .doc = "Middle of the sailor off the centreline when sitting in, in a lull; to leeward "
            "negative. Tape."},
};

static const lw_quantity pin_rows[] = {
    {.key = "incidence", .offset = offsetof(lw_pin, incidence), .symbol = "i_m",
     .unit = LW_UNIT_DEG,  .min = -4.0, .max = 9.0,  .preset = 2.0, .error = 0.2,
     .usual_min = -2.0,    .usual_max = 6.0,  .decimals = 2,
     .doc = "Main foil's chord line to the hull's bottom line, nose up positive, with this pin in "
            "and the flap in line. Phone level on a board along the foil, then on the bottom; "
            "subtract. Push the strut forward and back: measure with the slack taken up as in "
            "sailing."},
};
// clang-format on
LW_TABLE_COVERS(lw_rig, rig_rows);
LW_TABLE_COVERS(lw_place, place_rows);

static const lw_table rig_table = {"rig", "Rig", rig_rows, LW_ROW_COUNT(rig_rows),
                                   "Mast and sail, as sailed today."};
static const lw_table place_table = {
    "place", "Places of the sailor", place_rows, LW_ROW_COUNT(place_rows),
    "Where the middle of the sailor's body can be. Lengths run forward from the transom."};
static const lw_table pin_table = {
    "pins", "Pins", pin_rows, LW_ROW_COUNT(pin_rows),
    "The holes that fix the main foil's incidence: your own label, and the angle measured with "
    "that pin in. Written in any order; told from the most lift to the least."};

#define SECTION_DOC                                                                               \
    "a designation such as NACA 2412, 23012 or 63-412. As measured: four digits with the foil's " \
    "thickness and zero-lift angle."

#define PLAIN(member, of)                                           \
    {                                                               \
        .table = &(of), .kind = LW_SECTION_PLAIN, .required = true, \
        .offset = offsetof(lw_boat, member)                         \
    }

// clang-format off
static const lw_section sections[] = {
    PLAIN(hull,         lw_hull_table),
    PLAIN(main_foil,    lw_main_foil_table),
    PLAIN(rudder_foil,  lw_rudder_foil_table),
    PLAIN(main_strut,   lw_main_strut_table),
    PLAIN(rudder_strut, lw_rudder_strut_table),
    PLAIN(linkage,      lw_linkage_table),
    PLAIN(rudder,       lw_rudder_table),
    PLAIN(rig,          rig_table),
    PLAIN(place,        place_table),
    {.table = &pin_table, .kind = LW_SECTION_LABELLED, .required = true,
     .offset = offsetof(lw_boat, pins), .stride = sizeof(lw_pin), .most = LW_PINS_MOST,
     .count_offset = offsetof(lw_boat, pin_count), .label_offset = offsetof(lw_pin, label)},
};

static const char *const grips[] = {"clockwise", "counter-clockwise", LW_GRIP_UNKNOWN, NULL};

static const lw_text texts[] = {
    {.key = "name", .offset = offsetof(lw_boat, name), .preset = "Unnamed boat",
     .doc = "What you call this boat, in this state."},
    {.key = "main_section", .offset = offsetof(lw_boat, main_section),
     .preset = LW_SECTION_AS_MEASURED, .doc = "Section of the main foil: " SECTION_DOC},
    {.key = "rudder_section", .offset = offsetof(lw_boat, rudder_section),
     .preset = LW_SECTION_AS_MEASURED, .doc = "Section of the rudder foil: " SECTION_DOC},
    {.key = "grip", .offset = offsetof(lw_boat, grip), .preset = LW_GRIP_UNKNOWN, .words = grips,
     .doc = "Which way the twist grip turns to add rudder lift, seen from where you sit, looking "
            "along the tiller. Ashore: turn it and see which way the rudder foil's nose goes up."},
};
// clang-format on

const lw_record lw_boat_record = {
    .name = "boat",
    .title = "Boat",
    .texts = texts,
    .text_count = LW_ROW_COUNT(texts),
    .sections = sections,
    .section_count = LW_ROW_COUNT(sections),
    .size = sizeof(lw_boat),
    .doc =
        "One boat as measured. Every number has its unit behind it; any unit of the same kind "
        "will do: 98 cm, 0.98 m. A number that you have not measured may stay at its preset, "
        "or the line may go. Measure with the hull level."};
