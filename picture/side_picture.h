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

// A picture of some flights side by side: before and after, or one alone. Hull and rig are drawn
// plain about what is measured; foils, wand, water and the sailor's place are to scale. The sail is
// cut above its centre of effort. Title: for those who cannot see it.
#define LW_SIDES_MOST 3
void lw_sides_draw(FILE *out, const lw_side_drawn *sides, size_t count, const char *title);

// The same as part of a picture that is begun: so high for a width, and drawn from a corner.
double lw_side_height(const lw_side_drawn *side, double width);
void lw_side_draw_at(FILE *out, lw_svg_point corner, double width, const lw_side_drawn *side);

#endif
