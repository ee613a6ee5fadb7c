// side.h - a flight from the side that is being drawn: where things are on the page.
// SPDX-License-Identifier: MIT

#ifndef LW_SIDE_H
#define LW_SIDE_H

#include "lullwise/drawn.h"
#include "picture/labels.h"
#include "picture/side_picture.h"

#define LW_SIDE_LETTERS    13.0
#define LW_SIDE_WORDS_MOST 16
#define LW_SIDE_INK        "#111"
#define LW_SIDE_GREY       "#777"

// In the boat x is forward from the transom and z up from the hull's bottom at the main strut; on
// the page x the same and z up from the water.
typedef struct lw_side_view {
    FILE *out;
    const lw_side_drawn *of;
    lw_craft_drawn at;
    double left, right, top, bottom;  // [m] of the page
    double scale;                     // [px/m]
    lw_svg_point corner;              // [px]
    lw_labels labels;
    size_t word_count;
    struct lw_side_words {
        lw_svg_point near;
        char text[60];
    } words[LW_SIDE_WORDS_MOST];  // to be set once all else is drawn
} lw_side_view;

// A point in metres, z up.
typedef lw_svg_point lw_side_point;

// Of a point of the boat on the page: heights shortened by heel, turned by pitch.
lw_side_point lw_side_posed(const lw_side_view *s, lw_side_point p);

// In pixels: of a point on the page, and of one of the boat.
lw_svg_point lw_side_pixel(const lw_side_view *s, lw_side_point p);
lw_svg_point lw_side_on(const lw_side_view *s, double x, double z);

// The boat with her sailor; each keeps words off itself.
void lw_side_boat(lw_side_view *s);

// Arrows as long as forces, and how long a force is drawn in the upper right corner.
void lw_side_forces(lw_side_view *s);
void lw_side_key(lw_side_view *s);
double lw_side_per_newton(const lw_side_view *s);  // [m/N] of forces up and down

// Words near a point, set once all else is drawn.
void lw_side_say(lw_side_view *s, lw_svg_point near, const char *text);
void lw_side_set_words(lw_side_view *s);

// Ride height as a measure, how she is trimmed in the upper left corner; depths, the wand's angle.
void lw_side_tell_height(lw_side_view *s);
void lw_side_tell_trim(lw_side_view *s);
void lw_side_tell_rest(lw_side_view *s);

#endif
