// labels.h - words in a picture, set where nothing else stands.
// SPDX-License-Identifier: MIT

#ifndef LW_LABELS_H
#define LW_LABELS_H

#include <stddef.h>

#include "records/svg.h"

typedef struct lw_box {
    double left, top, right, bottom;
} lw_box;

#define LW_LABELS_MOST 400
#define LW_WORDS_MOST  60
typedef struct lw_labels {
    FILE *out;
    lw_box bounds;
    lw_box taken[LW_LABELS_MOST], words[LW_WORDS_MOST];
    size_t count, word_count;
} lw_labels;

// Keeps words off a box; off a line, and so far beside it.
void lw_labels_keep_off(lw_labels *labels, lw_box box);
void lw_labels_keep_off_line(lw_labels *labels, lw_svg_point from, lw_svg_point to, double beside);

// Keeps words off other words, written by somebody else: the more so.
void lw_labels_keep_off_words(lw_labels *labels, lw_box box);

// Writes words as near to a point as they stand free and within the bounds, with a line to the
// point where that is far. Where no place is free it is the one that covers least.
void lw_labels_put(lw_labels *labels, lw_svg_point near, double size, const char *text);

// Words from a point to the right, in as many lines as the room needs; returns the height of the
// lines. No `out`: only measures.
double lw_words_wrapped(FILE *out, lw_svg_point at, lw_svg_words how, const char *text);

#endif
