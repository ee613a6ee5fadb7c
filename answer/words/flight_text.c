// flight_text.c - the numbers of a flight by the names that they have on the water.
// SPDX-License-Identifier: MIT

#include "answer/words/flight_text.h"

#include <string.h>

// clang-format off
static const struct { const char *key, *name; } names[] = {
    {"vmg",            "VMG"},
    {"ride_height",    "ride height"},
    {"pitch",          "bow up"},
    {"heel",           "windward heel"},
    {"place_x",        "place, from the transom"},
    {"turns",          "rudder lift on"},
    {"helm",           "rudder blade"},
    {"sail_power",     "sail power"},
    {"wand",           "wand, aft of down"},
    {"flap",           "flap, trailing edge down"},
    {"apparent_wind",  "apparent wind"},
    {"apparent_angle", "apparent wind, angle"},
    {"main_lift",      "lift of main foil"},
    {"rudder_lift",    "lift of rudder foil"},
    {"main_side",      "side of main strut"},
    {"rudder_side",    "side of rudder strut"},
    {"buoyancy",       "buoyancy of hull"},
    {"drive",          "drive, less windage"},
    {"sail_side",      "side of sail, leeward"},
    {"foil_drag",      "drag of foils"},
    {"strut_drag",     "drag of struts"},
    {"hull_drag",      "drag of hull"},
};
// clang-format on

const char *lw_flight_name(const char *key)
{
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        if (strcmp(names[i].key, key) == 0) return names[i].name;
    }
    return key;
}
