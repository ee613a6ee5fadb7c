// cells_picture.c - a map of cells over two axes.
// SPDX-License-Identifier: MIT

#include "picture/cells_picture.h"

#include <stdlib.h>
#include <string.h>

#include "records/fault.h"
#include "records/svg.h"

#define CELL_WIDTH  44.0  // [px]
#define CELL_HEIGHT 26.0
#define LEFT        90.0
#define TOP         56.0
#define BELOW       64.0
#define LETTERS     12.0
#define WIDTH_LEAST 420.0  // for the title

#define WORDS_MOST 8
#define SHADES     6
#define NOTHING    "#ffffff"

// Light enough for dark letters; the word stands in each cell too.
static const char *const word_colours[WORDS_MOST] = {
    "#9fd3f2", "#f6cf7d", "#8fd6b9", "#f0a58a", "#e3b8d3", "#f4ee9a", "#a9bfe6", "#cfcfcf",
};
static const char *const number_colours[SHADES] = {
    "#f7fbff", "#e3eef8", "#cfe1f2", "#b5d4e9", "#93c3df", "#6daed5",
};

typedef struct colours {
    char words[WORDS_MOST][LW_CELLS_TEXT];
    size_t count;
    double low, high;
    bool has_range;
} colours;

static void cell_text(const lw_cells *cells, size_t x, size_t y, char text[LW_CELLS_TEXT])
{
    text[0] = '\0';
    cells->cell(cells->it, x, y, text);
}

static size_t word_of(const colours *c, const char *text)
{
    size_t i = 0;
    while (i < c->count && strcmp(c->words[i], text) != 0) i++;
    return i;
}

static void learn(colours *c, const lw_cells *cells, const char *text)
{
    if (!text[0]) return;
    if (cells->are_words) {
        const size_t word = word_of(c, text);
        if (word < c->count || word == WORDS_MOST) return;
        LW_FIT(c->words[word], "%s", text);
        c->count++;
        return;
    }
    const double value = strtod(text, NULL);
    if (!c->has_range || value < c->low) c->low = value;
    if (!c->has_range || value > c->high) c->high = value;
    c->has_range = true;
}

static const char *colour_of(const colours *c, const lw_cells *cells, const char *text)
{
    if (!text[0]) return NOTHING;
    if (cells->are_words) {
        const size_t word = word_of(c, text);
        return word_colours[word < WORDS_MOST ? word : WORDS_MOST - 1];
    }
    const double part = c->high > c->low ? (strtod(text, NULL) - c->low) / (c->high - c->low) : 0.0;
    const size_t shade = (size_t)(part * (double)SHADES);
    return number_colours[shade < SHADES ? shade : SHADES - 1];
}

static lw_svg_point corner_of(const lw_cells *cells, size_t x, size_t y)
{
    return (lw_svg_point){LEFT + (double)x * CELL_WIDTH,
                          TOP + (double)(cells->rows - 1 - y) * CELL_HEIGHT};
}

static void draw_cell(FILE *out, const lw_cells *cells, const colours *c, lw_svg_point at,
                      const char *text)
{
    const lw_svg_point around[] = {at,
                                   {at.x + CELL_WIDTH, at.y},
                                   {at.x + CELL_WIDTH, at.y + CELL_HEIGHT},
                                   {at.x, at.y + CELL_HEIGHT},
                                   at};
    const lw_svg_words words = {
        .size = LETTERS, .anchor = "middle", .colour = "#222222", .room = CELL_WIDTH - 4.0};
    lw_svg_path(
        out, around, 5,
        (lw_svg_stroke){.width = 0.6, .colour = "#888888", .fill = colour_of(c, cells, text)});
    lw_svg_text(out, (lw_svg_point){at.x + CELL_WIDTH / 2, at.y + CELL_HEIGHT / 2 + 4}, words,
                text[0] ? text : "-");
}

static void draw_along(FILE *out, const lw_cells *cells)
{
    char text[LW_CELLS_TEXT];
    lw_svg_words words = {
        .size = LETTERS, .anchor = "middle", .colour = "#222222", .room = CELL_WIDTH - 4.0};
    for (size_t x = 0; x < cells->columns; x++) {
        const lw_svg_point at = corner_of(cells, x, 0);
        cells->along(cells->it, 0, x, text);
        lw_svg_text(out, (lw_svg_point){at.x + CELL_WIDTH / 2, at.y + CELL_HEIGHT + 16}, words,
                    text);
    }
    words.anchor = "end";
    for (size_t y = 0; y < cells->rows; y++) {
        const lw_svg_point at = corner_of(cells, 0, y);
        cells->along(cells->it, 1, y, text);
        lw_svg_text(out, (lw_svg_point){LEFT - 6, at.y + CELL_HEIGHT / 2 + 4}, words, text);
    }
}

void lw_cells_draw(FILE *out, const lw_cells *cells)
{
    colours c = {.count = 0};
    char text[LW_CELLS_TEXT];
    const double across = (double)cells->columns * CELL_WIDTH;
    const double down = (double)cells->rows * CELL_HEIGHT;
    const double width = LEFT + across + 24 > WIDTH_LEAST ? LEFT + across + 24 : WIDTH_LEAST;
    lw_svg_words words = {
        .size = LETTERS + 2, .anchor = "start", .colour = "#222222", .is_bold = true};
    for (size_t x = 0; x < cells->columns; x++) {
        for (size_t y = 0; y < cells->rows; y++) {
            cell_text(cells, x, y, text);
            learn(&c, cells, text);
        }
    }
    lw_svg_begin(out, width, TOP + down + BELOW, cells->title);
    lw_svg_text(out, (lw_svg_point){16, 24}, words, cells->title);
    for (size_t x = 0; x < cells->columns; x++) {
        for (size_t y = 0; y < cells->rows; y++) {
            cell_text(cells, x, y, text);
            draw_cell(out, cells, &c, corner_of(cells, x, y), text);
        }
    }
    draw_along(out, cells);
    words.is_bold = false, words.size = LETTERS;
    lw_svg_text(out, (lw_svg_point){16, TOP - 12}, words, cells->y_label);
    words.anchor = "middle";
    lw_svg_text(out, (lw_svg_point){LEFT + across / 2, TOP + down + 44}, words, cells->x_label);
    lw_svg_end(out);
}
