// labels.c - words in a picture, set where nothing else stands.
// SPDX-License-Identifier: MIT

#include "picture/labels.h"

#include <math.h>
#include <string.h>

#include "picture/letter_width.h"
#include "records/fault.h"

#define GAP       2.0   // [px] between words and what else stands there
#define FAR       16.0  // from here on a line leads to the words
#define RINGS     40
#define RING_STEP 8.0   // so far apart
#define STATIONS  12    // of a line to words that are looked at
#define PIECE     6.0   // [px] of a line that is kept off
#define LEADING   1.35  // from line to line [sizes]

// Those first that read best: beside, above, below, then the corners.
static const double ways[][2] = {{1.0, 0.0},  {-1.0, 0.0}, {0.0, -1.0},  {0.0, 1.0},
                                 {1.0, -1.0}, {1.0, 1.0},  {-1.0, -1.0}, {-1.0, 1.0}};
#define WAYS (sizeof ways / sizeof ways[0])

void lw_labels_keep_off(lw_labels *labels, lw_box box)
{
    if (labels->count < LW_LABELS_MOST) labels->taken[labels->count++] = box;
}

void lw_labels_keep_off_words(lw_labels *labels, lw_box box)
{
    if (labels->word_count < LW_WORDS_MOST) labels->words[labels->word_count++] = box;
}

// A slanting line is kept off piece by piece, an upright or level one as a whole.
void lw_labels_keep_off_line(lw_labels *labels, lw_svg_point from, lw_svg_point to, double beside)
{
    const double wide = to.x - from.x, high = to.y - from.y;
    const int pieces = 1 + (int)(fmin(fabs(wide), fabs(high)) / PIECE);
    const double dx = wide / pieces, dy = high / pieces;
    for (int i = 0; i < pieces; i++) {
        const double x = from.x + i * dx, y = from.y + i * dy;
        lw_labels_keep_off(labels, (lw_box){fmin(x, x + dx) - beside, fmin(y, y + dy) - beside,
                                            fmax(x, x + dx) + beside, fmax(y, y + dy) + beside});
    }
}

// Area that two have in common.
static double common(lw_box a, lw_box b)
{
    const double wide = fmin(a.right, b.right) - fmax(a.left, b.left);
    const double high = fmin(a.bottom, b.bottom) - fmax(a.top, b.top);
    return wide > 0.0 && high > 0.0 ? wide * high : 0.0;
}

static double area(lw_box box) { return (box.right - box.left) * (box.bottom - box.top); }

static double common_with(lw_box box, const lw_box *boxes, size_t count)
{
    const lw_box wider = {box.left - GAP, box.top - GAP, box.right + GAP, box.bottom + GAP};
    double sum = 0.0;
    for (size_t i = 0; i < count; i++) sum += common(wider, boxes[i]);
    return sum;
}

// The point of a box that is nearest to another.
static lw_svg_point edge_of(lw_box box, lw_svg_point near)
{
    return (lw_svg_point){fmin(fmax(near.x, box.left), box.right),
                          fmin(fmax(near.y, box.top), box.bottom)};
}

// Of the line to words there, what it would run through of other words.
static double crossed(const lw_labels *labels, lw_svg_point near, lw_box box)
{
    const lw_svg_point edge = edge_of(box, near);
    double sum = 0.0;
    for (int i = 0; i < STATIONS; i++) {
        const double part = (double)i / STATIONS, x = near.x + part * (edge.x - near.x);
        const double y = near.y + part * (edge.y - near.y);
        const lw_box at = {x - 1.0, y - 1.0, x + 1.0, y + 1.0};
        sum += common_with(at, labels->words, labels->word_count);
    }
    return sum;
}

// What words there would cover or leave: other words and the edge by far the worst.
#define WORSE 20.0
static double covered(const lw_labels *labels, lw_svg_point near, lw_box box)
{
    const double worst = area(box) - common(box, labels->bounds) +
                         common_with(box, labels->words, labels->word_count);
    return WORSE * worst + crossed(labels, near, box) +
           common_with(box, labels->taken, labels->count);
}

// Words so wide and high, so far from a point along one of the ways.
static lw_box box_at(lw_svg_point near, const double way[2], double far, lw_svg_point size)
{
    const double x = near.x + way[0] * (far + 0.5 * size.x);
    const double y = near.y + way[1] * (far + 0.5 * size.y);
    return (lw_box){x - 0.5 * size.x, y - 0.5 * size.y, x + 0.5 * size.x, y + 0.5 * size.y};
}

typedef struct place {
    lw_box box;
    double far, cost;
} place;

// Far away is worse than upon a line or two.
#define FAR_COST 6.0  // [px] of area for each px
static place place_of(const lw_labels *labels, lw_svg_point near, lw_svg_point size)
{
    place best = {.cost = INFINITY};
    for (int ring = 0; ring < RINGS; ring++) {
        const double far = 4.0 + ring * RING_STEP;
        for (size_t i = 0; i < WAYS && FAR_COST * far < best.cost; i++) {
            const lw_box box = box_at(near, ways[i], far, size);
            const double cost = FAR_COST * far + covered(labels, near, box);
            if (cost < best.cost) best = (place){box, far, cost};
        }
    }
    return best;
}

// From the point to the edge of the words.
static void lead(const lw_labels *labels, lw_svg_point near, lw_box box)
{
    lw_svg_line(labels->out, near, edge_of(box, near),
                (lw_svg_stroke){.width = 0.6, .colour = "#555"});
}

void lw_labels_put(lw_labels *labels, lw_svg_point near, double size, const char *text)
{
    const double wide = size * lw_letters_width(text, strlen(text), false);
    const double high = size * (LW_LETTER_RISE + LW_LETTER_DROP);
    const place at = place_of(labels, near, (lw_svg_point){wide, high});
    const lw_svg_point middle = {0.5 * (at.box.left + at.box.right),
                                 at.box.top + size * LW_LETTER_RISE};
    if (at.far > FAR) lead(labels, near, at.box);
    lw_svg_text(labels->out, middle,
                (lw_svg_words){.size = size, .anchor = "middle", .colour = "#000"}, text);
    lw_labels_keep_off_words(labels, at.box);
}

// How many bytes of it stand in a line.
static size_t fitting(const char *text, lw_svg_words how)
{
    size_t fits = 0;
    for (size_t i = 1; i <= strlen(text); i++) {
        if (text[i] != ' ' && text[i] != '\0') continue;
        if (fits > 0 && how.size * lw_letters_width(text, i, false) > how.room) break;
        fits = i;
    }
    return fits;
}

double lw_words_wrapped(FILE *out, lw_svg_point at, lw_svg_words how, const char *text)
{
    char line[400];
    double height = 0.0;
    lw_svg_words as_they_are = how;
    as_they_are.room = 0.0;
    while (*text) {
        const size_t length = fitting(text, how);
        lw_text_fit(line, sizeof line, "%.*s", (int)length, text);
        height += LEADING * how.size;
        if (out) lw_svg_text(out, (lw_svg_point){at.x, at.y + height}, as_they_are, line);
        text += length + strspn(text + length, " ");
    }
    return height;
}
