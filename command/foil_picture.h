// foil_picture.h - a picture of a section: its pressures, and its lift at every angle.
// SPDX-License-Identifier: MIT

#ifndef LW_FOIL_PICTURE_H
#define LW_FOIL_PICTURE_H

#include "command/foil_section.h"

typedef struct lw_section_picture {
    const char *title, *subtitle;
    const lw_section_flow *flow;
    const lw_section_point *points;
    int count;
} lw_section_picture;

// Pressures over the chord at up to four of the angles, above the section itself; below, lift
// against the angle, and the lowest pressure against lift.
void lw_section_draw(FILE *out, const lw_section_picture *picture);

#endif
