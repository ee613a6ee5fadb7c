// flight_text.c - one flight as a sailor reads it: attitude, forces, margins.
// SPDX-License-Identifier: MIT

#include "command/flight_text.h"

#include <string.h>

#include "advice/margin_text.h"
#include "command/cell.h"
#include "command/print.h"

// A number of lw_flight_table under the name that it has on the water.
typedef struct named {
    const char *name, *key;
} named;

// clang-format off
static const named left_lines[] = {
    {"speed",           "speed"},
    {"VMG",             "vmg"},
    {"leeway",          "leeway"},
    {"ride height",     "ride_height"},
    {"bow up",          "pitch"},
    {"windward heel",   "heel"},
    {"apparent wind",   "apparent_wind"},
    {"  off the bow",   "apparent_angle"},
};
static const named right_lines[] = {
    {"rudder lift on",  "turns"},
    {"place, from the transom", "place_x"},
    {"hiking",          "hiking"},
    {"sail power",      "sail_power"},
    {"rudder blade",    "helm"},
    {"wand, aft of down", "wand"},
    {"flap, trailing edge down", "flap"},
};
static const named force_lines[2][6] = {
    {{"lift of main foil",    "main_lift"},
     {"lift of rudder foil",  "rudder_lift"},
     {"buoyancy of hull",     "buoyancy"},
     {"side of main strut",   "main_side"},
     {"side of rudder strut", "rudder_side"},
     {"side of sail, leeward", "sail_side"}},
    {{"drive, less windage",  "drive"},
     {"drag of foils",        "foil_drag"},
     {"drag of struts",       "strut_drag"},
     {"drag of hull",         "hull_drag"},
     {"windage",              "windage"},
     {NULL, NULL}},
};
// clang-format on

static const lw_quantity *row_of(const char *key) { return lw_table_find(&lw_flight_table, key); }

static void print_cell(FILE *out, const named *line, const lw_flight *flight, size_t wide)
{
    char text[LW_CELL_LENGTH];
    if (!line || !line->name) return;
    lw_cell_value(text, row_of(line->key), flight);
    lw_cell_left(out, line->name, wide);
    lw_cell_right(out, text, 11);
}

static void print_columns(FILE *out, const named *left, size_t left_count, const named *right,
                          size_t right_count, const lw_flight *flight)
{
    for (size_t i = 0; i < left_count || i < right_count; i++) {
        fputs("  ", out);
        print_cell(out, i < left_count ? &left[i] : NULL, flight, 22);
        if (i < right_count && right[i].name) {
            fprintf(out, "%*s", i < left_count ? 4 : 37, "");
            print_cell(out, &right[i], flight, 25);
        }
        fputc('\n', out);
    }
}

#define COUNT(lines) (sizeof(lines) / sizeof(lines)[0])

void lw_flight_print(FILE *out, const lw_flight *flight)
{
    print_columns(out, left_lines, COUNT(left_lines), right_lines, COUNT(right_lines), flight);
    fputs("\nForces\n", out);
    print_columns(out, force_lines[0], 6, force_lines[1], 6, flight);
}

void lw_margins_print(FILE *out, const lw_margins *margins)
{
    size_t order[LW_MARGIN_COUNT];
    lw_margins_order(margins, order);
    fputs("\nMargins left, the first to run out on top\n", out);
    for (size_t i = 0; i < LW_MARGIN_COUNT; i++) {
        const lw_quantity *row = &lw_margins_table.rows[order[i]];
        char text[LW_CELL_LENGTH];
        lw_cell_value(text, row, margins);
        fputs("  ", out);
        lw_cell_left(out, lw_margin_name(order[i]), 26);
        lw_cell_right(out, text, 13);
        if (lw_quantity_value(row, margins) < 0.0) fprintf(out, "   %s", lw_margin_end(order[i]));
        fputc('\n', out);
    }
}
