// flight_text.c - the numbers of a flight by the names that they have on the water.
// SPDX-License-Identifier: MIT

#include "answer/words/flight_text.h"

#include <string.h>

// In the order in which they are shown.
// clang-format off
typedef struct named { const char *key, *name; } named;
static const named state[] = {
    {"speed",          "speed"},
    {"vmg",            "VMG"},
    {"leeway",         "leeway"},
    {"ride_height",    "ride height"},
    {"pitch",          "bow up"},
    {"heel",           "windward heel"},
    {"apparent_wind",  "apparent wind"},
    {"apparent_angle", "apparent wind, angle"},
    {"turns",          "rudder lift on"},
    {"place_x",        "place, from the transom"},
    {"hiking",         "hiking"},
    {"sail_power",     "sail power"},
    {"helm",           "rudder blade"},
    {"wand",           "wand, aft of down"},
    {"flap",           "flap, trailing edge down"},
};
static const named forces[] = {
    {"main_lift",      "lift of main foil"},
    {"rudder_lift",    "lift of rudder foil"},
    {"buoyancy",       "buoyancy of hull"},
    {"main_side",      "side of main strut"},
    {"rudder_side",    "side of rudder strut"},
    {"sail_side",      "side of sail, leeward"},
    {"drive",          "drive, less windage"},
    {"foil_drag",      "drag of foils"},
    {"strut_drag",     "drag of struts"},
    {"hull_drag",      "drag of hull"},
    {"windage",        "windage"},
};
static const named moment[] = {
    {"made_good",   "made good to windward"},
    {"heel",        "windward heel"},
    {"pitch",       "bow up"},
    {"ride_height", "hull above the mean water"},
    {"clearance",   "hull above the water"},
    {"flap",        "flap down"},
    {"turns",       "rudder lift on"},
};
// clang-format on

static const char *name_in(const named *list, size_t count, const char *key)
{
    for (size_t i = 0; i < count; i++) {
        if (strcmp(list[i].key, key) == 0) return list[i].name;
    }
    return NULL;
}

const char *lw_flight_name(const char *key)
{
    const char *name = name_in(state, LW_COUNT_OF(state), key);
    if (!name) name = name_in(forces, LW_COUNT_OF(forces), key);
    return name ? name : key;
}

const char *lw_moment_name(const char *key)
{
    const char *name = name_in(moment, LW_COUNT_OF(moment), key);
    return name ? name : key;
}

static void tell_named(lw_teller *t, const named *list, size_t count, const lw_flight *flight)
{
    for (size_t i = 0; i < count; i++) {
        const lw_quantity *row = lw_table_find(&lw_flight_table, list[i].key);
        const lw_item item = lw_item_of(row, list[i].name);
        lw_tell_number(t, &item, lw_quantity_value(row, flight));
    }
}

// What has no name is for programs only.
static void tell_nameless(lw_teller *t, const lw_flight *flight)
{
    for (size_t i = 0; i < lw_flight_table.count; i++) {
        const lw_quantity *row = &lw_flight_table.rows[i];
        const lw_item item = lw_item_of(row, NULL);
        if (name_in(state, LW_COUNT_OF(state), row->key)) continue;
        if (name_in(forces, LW_COUNT_OF(forces), row->key)) continue;
        lw_tell_number(t, &item, lw_quantity_value(row, flight));
    }
}

void lw_tell_flight(lw_teller *t, const lw_flight *flight, bool is_shown)
{
    lw_tell_object(t, "flight", is_shown ? "" : NULL);
    tell_named(t, state, LW_COUNT_OF(state), flight);
    tell_nameless(t, flight);
    lw_tell_end(t);
    lw_tell_object(t, "forces", is_shown ? "Forces" : NULL);
    tell_named(t, forces, LW_COUNT_OF(forces), flight);
    lw_tell_end(t);
}
