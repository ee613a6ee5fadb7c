// hull_table.c - what each number of the hull is, how to measure it, and between which limits.
// SPDX-License-Identifier: MIT

#include "lullwise/boat.h"
#include "quantity/tables.h"

// clang-format off
static const lw_quantity rows[] = {
    {LW_MEMBER(lw_hull, length),         .symbol = "L",
     .unit = LW_UNIT_M,    .min = 2.5,  .max = 4.5,  .preset = 3.35, .error = 0.01,
     .usual_min = 3.2,     .usual_max = 3.5,  .decimals = 2,
     .doc = "Waterline, floating upright. Tape along the hull from the transom to where the stem "
            "meets the water."},

    {LW_MEMBER(lw_hull, beam),           .symbol = "B",
     .unit = LW_UNIT_M,    .min = 0.15, .max = 1.2,  .preset = 0.34, .error = 0.01,
     .usual_min = 0.28,    .usual_max = 0.7,  .decimals = 2,
     .doc = "Greatest beam at the waterline, racks not counted. Float the boat with the sailor "
            "aboard, mark the water on both sides with tape, lift it out and measure across."},

    {LW_MEMBER(lw_hull, transom_beam),   .symbol = "B_t",
     .unit = LW_UNIT_M,    .min = 0.0,  .max = 1.0,  .preset = 0.2, .error = 0.01,
     .usual_min = 0.05,    .usual_max = 0.5,  .decimals = 2,
     .doc = "Beam of the transom at the height of the waterline marks. Tape. 0: the hull ends in "
            "an edge."},

    {LW_MEMBER(lw_hull, draft),          .symbol = "T",
     .unit = LW_UNIT_M,    .min = 0.05, .max = 0.4,  .preset = 0.157, .error = 0.01,
     .usual_min = 0.1,     .usual_max = 0.2,  .decimals = 3,
     .doc = "Of the bare hull with the sailor aboard: the same marks down to the hull's bottom "
            "at the main strut. Straight edge and tape."},

    {LW_MEMBER(lw_hull, block),          .symbol = "C_B",
     .unit = LW_UNIT_NONE, .min = 0.3,  .max = 0.8,  .preset = 0.6, .error = 0.05,
     .usual_min = 0.45,    .usual_max = 0.72, .decimals = 2,
     .doc = "How full the hull is: volume below the waterline / (length x beam x draft). Boat and "
            "sailor in kg, divided by 1000 x length x beam x draft in m. A box would be 1."},

    {LW_MEMBER(lw_hull, waterplane),     .symbol = "C_WP",
     .unit = LW_UNIT_NONE, .min = 0.5,  .max = 0.95, .preset = 0.73, .error = 0.03,
     .usual_min = 0.65,    .usual_max = 0.85, .decimals = 2,
     .doc = "How full the waterline is seen from above: its area / (length x beam). Average of "
            "the beam at ten even places along the waterline, divided by the greatest. Larger "
            "than the block."},

    {LW_MEMBER(lw_hull, form_factor),    .symbol = "k",
     .unit = LW_UNIT_NONE, .min = 0.0,  .max = 0.5,  .preset = 0.15, .error = 0.05,
     .usual_min = 0.05,    .usual_max = 0.3,  .decimals = 2,
     .doc = "Viscous drag of the hull over that of a flat plate of its wetted area, less one. "
            "Nobody can tape it: leave the preset. [judged]"},

    {LW_MEMBER(lw_hull, mass),           .symbol = "m_b",
     .unit = LW_UNIT_KG,   .min = 15.0, .max = 80.0, .preset = 38.0, .error = 0.5,
     .usual_min = 28.0,    .usual_max = 50.0, .decimals = 1,
     .doc = "Boat ready to sail, with foils, rig and sail, without the sailor. Bathroom scale: "
            "weigh yourself carrying it, or bow and transom one after the other and add."},

    {LW_MEMBER(lw_hull, centre_x),       .symbol = "x_G",
     .unit = LW_UNIT_M,    .min = 0.8,  .max = 2.5,  .preset = 1.45, .error = 0.03,
     .usual_min = 1.2,     .usual_max = 1.75, .decimals = 2,
     .doc = "Centre of gravity without the sailor, forward of the transom. Balance the rigged "
            "boat, foils in, across a pole; tape from the transom to the pole."},

    {LW_MEMBER(lw_hull, centre_height),  .symbol = "z_G",
     .unit = LW_UNIT_M,    .min = -0.2, .max = 1.2,  .preset = 0.35, .error = 0.05,
     .usual_min = 0.1,     .usual_max = 0.7,  .decimals = 2,
     .doc = "Centre of gravity without the sailor, above the hull's bottom. Lay the rigged boat "
            "on its side over a pole that runs fore and aft, foils in, and find where it "
            "balances between keel and masthead."},

    {LW_MEMBER(lw_hull, rack_width),     .symbol = "b_r",
     .unit = LW_UNIT_M,    .min = 0.8,  .max = 3.0,  .preset = 2.25, .error = 0.01,
     .usual_min = 1.9,     .usual_max = 2.4,  .decimals = 2,
     .doc = "Over both racks, outer edge to outer edge. Tape."},

    {LW_MEMBER(lw_hull, rack_height),    .symbol = "z_r",
     .unit = LW_UNIT_M,    .min = 0.0,  .max = 0.8,  .preset = 0.35, .error = 0.01,
     .usual_min = 0.2,     .usual_max = 0.55, .decimals = 2,
     .doc = "Outer edge of the racks above the hull's bottom, hull level. Plumb line and tape."},

    {LW_MEMBER(lw_hull, rack_volume),    .symbol = "V_r",
     .unit = LW_UNIT_L,    .min = 0.0,  .max = 300.0, .preset = 80.0, .error = 20.0,
     .usual_min = 20.0,    .usual_max = 150.0, .decimals = 0,
     .doc = "What floats on one side when she heels: rack with its tubes and padding, and the "
            "flare "
            "of the hull's side above the waterline. Length x width x thickness of each; or "
            "afloat, "
            "tied upright at the mast, canisters of water on one rack until it is just under: a kg "
            "is a litre. [judged]"},

    {LW_MEMBER(lw_hull, windage_area),   .symbol = "C_D A",
     .unit = LW_UNIT_M2,   .min = 0.1,  .max = 1.5,  .preset = 0.45, .error = 0.1,
     .usual_min = 0.3,     .usual_max = 0.8,  .decimals = 2,
     .doc = "Drag area of hull, racks and stays, head to wind, without mast, sail and sailor. "
            "Tubes and wires: length x thickness; hull: beam x height x 0.3. One of the numbers "
            "that matter most and are known least. [judged]"},

    {LW_MEMBER(lw_hull, windage_side),   .symbol = "C_D A_s",
     .unit = LW_UNIT_M2,   .min = 0.2,  .max = 4.0,  .preset = 1.2, .error = 0.3,
     .usual_min = 0.8,     .usual_max = 1.8,  .decimals = 2,
     .doc = "The same with the wind abeam. Tubes and wires: length x thickness; hull: length x "
            "height of its side x 0.9, keel to deck, as it is out of the water. [judged]"},

    {LW_MEMBER(lw_hull, windage_height), .symbol = "z_w",
     .unit = LW_UNIT_M,    .min = 0.1,  .max = 2.0,  .preset = 0.6, .error = 0.1,
     .usual_min = 0.3,     .usual_max = 1.0,  .decimals = 2,
     .doc = "Middle of those areas above the hull's bottom. By eye from ahead. [judged]"},
};
// clang-format on
LW_TABLE_COVERS(lw_hull, rows);

const lw_table lw_hull_table = {
    "hull", "Hull", rows, LW_ROW_COUNT(rows),
    "Hull level: put a phone with a level on the bottom at the main strut. Lengths run forward "
    "from the transom, heights up from the hull's bottom at the main strut."};
