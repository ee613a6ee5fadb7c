// drawn_words.h - the words of a picture, and the room that each takes.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_DRAWN_WORDS_H
#define LW_TEST_DRAWN_WORDS_H

#include <stdio.h>
#include <string.h>

#include "picture/labels.h"
#include "picture/letter_width.h"
#include "test/check.h"

#define DRAWN_MOST 200

typedef struct drawn_words {
    double width, height;  // of the picture
    size_t count;
    lw_box boxes[DRAWN_MOST];
    char texts[DRAWN_MOST][400];
} drawn_words;

static inline lw_box drawn_box(double x, double y, double size, const char *anchor,
                               const char *text)
{
    const double wide = size * lw_letters_width(text, strlen(text), false);
    const double left = *anchor == 'm' ? x - 0.5 * wide : *anchor == 'e' ? x - wide : x;
    return (lw_box){left, y - size * LW_LETTER_RISE, left + wide, y + size * LW_LETTER_DROP};
}

// Of a picture whose words stand upright.
static inline void read_words(const char *svg, drawn_words *drawn)
{
    char anchor[8];
    double x, y, size;
    drawn->count = 0;
    CHECK(strncmp(svg, "<svg", 4) == 0 && strstr(svg, "</svg>") && !strstr(svg, "nan"));
    CHECK(sscanf(strstr(svg, "viewBox"), "viewBox=\"0 0 %lf %lf", &drawn->width, &drawn->height) ==
          2);
    for (const char *at = svg; (at = strstr(at, "<text ")); at++) {
        char *text = drawn->texts[drawn->count];
        CHECK(drawn->count < DRAWN_MOST);
        CHECK(sscanf(at, "<text x=\"%lf\" y=\"%lf\" font-size=\"%lf\" text-anchor=\"%7[a-z]", &x,
                     &y, &size, anchor) == 4);
        CHECK(sscanf(strchr(at, '>'), ">%399[^<]", text) == 1);
        drawn->boxes[drawn->count++] = drawn_box(x, y, size, anchor, text);
    }
}

// How many pairs of words stand on one another by more than a pixel, and how many leave the page.
static inline size_t words_that_collide(const drawn_words *drawn)
{
    size_t count = 0;
    for (size_t i = 0; i < drawn->count; i++) {
        const lw_box a = drawn->boxes[i];
        for (size_t k = 0; k < i; k++) {
            const lw_box b = drawn->boxes[k];
            const double wide = fmin(a.right, b.right) - fmax(a.left, b.left);
            count += wide > 1.0 && fmin(a.bottom, b.bottom) - fmax(a.top, b.top) > 1.0;
        }
    }
    return count;
}

static inline size_t words_that_leave(const drawn_words *drawn)
{
    size_t count = 0;
    for (size_t i = 0; i < drawn->count; i++) {
        const lw_box a = drawn->boxes[i];
        count += a.left < 0.0 || a.top < 0.0 || a.right > drawn->width || a.bottom > drawn->height;
    }
    return count;
}

static inline bool words_have(const drawn_words *drawn, const char *text)
{
    for (size_t i = 0; i < drawn->count; i++) {
        if (strstr(drawn->texts[i], text)) return true;
    }
    return false;
}

#endif
