// section_picture.h - a picture of a section: its pressures, and its lift at every angle.
// SPDX-License-Identifier: MIT

#ifndef LW_SECTION_PICTURE_H
#define LW_SECTION_PICTURE_H

#include <stdio.h>

#include "lullwise/boundary_layer.h"

#define LW_PICTURE_POINTS_MOST 201

typedef struct lw_section_picture {
    const char *title, *subtitle;
    const lw_profile *profile;
    const lw_section_point *points;
    const double (*pressures)[LW_NODES_MOST];  // of each point
    const double *speeds;                      // [m/s] of each, for the key; NULL: angles there
    lw_unit speed_unit;                        // of these
    bool has_drag;
    int count;
} lw_section_picture;

// Pressures over the chord at up to four of the angles, above the section itself; below, lift
// against the angle, against drag where there is friction, and against the lowest pressure.
void lw_section_draw(FILE *out, const lw_section_picture *picture);

#endif
