// flight_text.c - one flight as a sailor reads it: attitude, forces, margins.
// SPDX-License-Identifier: MIT

#include "command/flight_text.h"

#include <string.h>

#include "answer/words/flight_text.h"
#include "answer/words/margin_text.h"
#include "command/cell.h"
#include "command/terminal/print.h"

// Rows of lw_flight_table, in the order in which they are printed.
// clang-format off
static const char *const left_lines[] = {
    "speed", "vmg", "leeway", "ride_height", "pitch", "heel", "apparent_wind", "apparent_angle",
};
static const char *const right_lines[] = {
    "turns", "place_x", "hiking", "sail_power", "helm", "wand", "flap",
};
static const char *const left_forces[] = {
    "main_lift", "rudder_lift", "buoyancy", "main_side", "rudder_side", "sail_side",
};
static const char *const right_forces[] = {
    "drive", "foil_drag", "strut_drag", "hull_drag", "windage",
};
// clang-format on

static const lw_quantity *row_of(const char *key) { return lw_table_find(&lw_flight_table, key); }

static void print_cell(FILE *out, const char *key, const lw_flight *flight, size_t wide)
{
    char text[LW_CELL_LENGTH];
    lw_cell_value(text, row_of(key), flight);
    lw_cell_left(out, lw_flight_name(key), wide);
    lw_cell_right(out, text, 11);
}

// The left column is the longer.
static void print_columns(FILE *out, const char *const *left, size_t left_count,
                          const char *const *right, size_t right_count, const lw_flight *flight)
{
    for (size_t i = 0; i < left_count; i++) {
        fputs("  ", out);
        print_cell(out, left[i], flight, 22);
        if (i < right_count) {
            fputs("    ", out);
            print_cell(out, right[i], flight, 25);
        }
        fputc('\n', out);
    }
}

#define COUNT(lines) (sizeof(lines) / sizeof(lines)[0])

void lw_flight_print(FILE *out, const lw_flight *flight)
{
    print_columns(out, left_lines, COUNT(left_lines), right_lines, COUNT(right_lines), flight);
    fputs("\nForces\n", out);
    print_columns(out, left_forces, COUNT(left_forces), right_forces, COUNT(right_forces), flight);
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
