// flight_picture.c - boat, foils, wand and water from the side, in letters and to scale.
// SPDX-License-Identifier: MIT

#include "command/terminal/flight_picture.h"

#include <math.h>
#include <string.h>

#include "answer/fly/fly.h"
#include "lullwise/elementary.h"

#define COLUMNS 46
#define ROWS    14
#define COLUMN  0.10    // [m] wide
#define ROW     0.15    // [m] high
#define LEFT    (-0.8)  // [m] x of column 0, from the transom
#define TOP     0.9     // [m] height of row 0 above the water

typedef struct picture {
    char at[ROWS][COLUMNS + 1];
} picture;

static void dot(picture *p, double x, double height, char letter)
{
    const long column = lround((x - LEFT) / COLUMN), row = lround((TOP - height) / ROW);
    if (column >= 0 && column < COLUMNS && row >= 0 && row < ROWS) p->at[row][column] = letter;
}

static void foil(picture *p, const lw_strut *strut, double bottom)
{
    for (double down = ROW; down < strut->length - 0.5 * ROW; down += 0.5 * ROW) {
        dot(p, strut->x, bottom - down, '|');
    }
    for (int i = -1; i <= 1; i++) dot(p, strut->x + i * COLUMN, bottom - strut->length, '=');
}

// One stroke in each row that it passes.
static void wand(picture *p, const lw_linkage *linkage, const lw_flight *f, double bottom)
{
    const double pivot = bottom + linkage->wand_height, slope = lw_tan(f->wand);
    for (double down = ROW; down < linkage->wand_length * lw_cos(f->wand); down += ROW) {
        if (pivot - down < 0.5 * ROW) break;
        dot(p, linkage->wand_x - down * slope, pivot - down, '/');
    }
}

static void hull(picture *p, const lw_boat *boat, double bottom)
{
    for (double x = 0.0; x <= boat->hull.length; x += 0.5 * COLUMN) {
        dot(p, x, bottom + 2.0 * ROW, '_');
        if (x < boat->hull.length - 2.5 * COLUMN) dot(p, x, bottom + ROW, '_');
    }
    dot(p, 0.0, bottom + ROW, '|');
    dot(p, boat->hull.length - 2.0 * COLUMN, bottom + ROW, '/');
    dot(p, boat->hull.length - COLUMN, bottom + ROW, ' ');
}

static void fill(picture *p, const lw_boat *boat, const lw_flight *flight)
{
    const double bottom = flight->ride_height;
    for (int row = 0; row < ROWS; row++) {
        memset(p->at[row], ' ', COLUMNS), p->at[row][COLUMNS] = '\0';
    }
    for (int i = 0; i < COLUMNS; i++) dot(p, LEFT + i * COLUMN, 0.0, '~');
    hull(p, boat, bottom);
    wand(p, &boat->linkage, flight, bottom);
    foil(p, &boat->main_strut, bottom);
    foil(p, &boat->rudder_strut, bottom);
}

void lw_flight_picture(FILE *out, const void *it)
{
    picture p = {0};
    const lw_flown *flown = &((const lw_fly *)it)->flown;
    const double bottom = flown->answer.flight.ride_height;
    const double depth = flown->inputs->boat.main_strut.length - bottom;
    fill(&p, &flown->inputs->boat, &flown->answer.flight);
    const long hull_row = lround((TOP - bottom) / ROW), foil_row = lround((TOP + depth) / ROW);
    for (int row = 0; row < ROWS && row <= foil_row; row++) {
        if (strspn(p.at[row], " ") == COLUMNS) continue;
        const bool has_label = row == hull_row || row == foil_row;
        int end = COLUMNS;
        while (!has_label && p.at[row][end - 1] == ' ') end--;
        fprintf(out, "  %.*s", end, p.at[row]);
        if (row == hull_row) fprintf(out, "  hull %.0f cm above the water", 100.0 * bottom);
        if (row == foil_row) fprintf(out, "  main foil %.0f cm down", 100.0 * depth);
        fputc('\n', out);
    }
}

bool lw_flight_has_picture(const void *it)
{
    return ((const lw_fly *)it)->flown.answer.outcome == LW_FLIES;
}
