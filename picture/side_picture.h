// side_picture.h - the boat from the side in flight, to scale, with the forces on her.
// SPDX-License-Identifier: MIT

#ifndef LW_SIDE_PICTURE_H
#define LW_SIDE_PICTURE_H

#include <stdio.h>

#include "lullwise/craft.h"
#include "lullwise/flight.h"
#include "records/svg.h"

// One flight; what it points to must outlive the drawing.
typedef struct lw_side_drawn {
    const lw_boat *boat;
    const lw_craft *craft;    // prepared from the boat
    size_t pin;               // that is in
    const lw_flight *flight;  // as it is balanced; NULL: there is none, nor anything but words
    const char *head;         // sentences above it
} lw_side_drawn;

// Some of them: before and after, or one.
typedef struct lw_sides_drawn {
    const lw_side_drawn *sides;
    size_t count;
    double width;       // [px] of the picture; 0: as it comes
    const char *title;  // for those who cannot see it
} lw_sides_drawn;

// Side by side where there is room, else one under another. Hull and rig are drawn plain about what
// is measured; foils, wand, water and the sailor's place are to scale. The sail is cut above its
// centre of effort.
void lw_sides_draw(FILE *out, const lw_sides_drawn *drawn);

// One without words around it.
void lw_side_draw_alone(FILE *out, const lw_side_drawn *side, double width);

// The same as part of a picture that is begun: so high for a width, and drawn from a corner.
double lw_side_height(const lw_side_drawn *side, double width);
void lw_side_draw_at(FILE *out, lw_svg_point corner, double width, const lw_side_drawn *side);

// The boat level and by herself, a centimetre a pixel, to be moved: hull's bottom and transom at
// 0, 0, the sailor there, the wand hanging straight, each part a group called by its name.
void lw_side_parts_draw(FILE *out, const lw_boat *boat, const lw_craft *craft);

#endif
