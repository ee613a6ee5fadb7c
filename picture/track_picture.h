// track_picture.h - a track as pictures: its map by speed, speed over time, speed by angle.
// SPDX-License-Identifier: MIT

#ifndef LW_TRACK_PICTURE_H
#define LW_TRACK_PICTURE_H

#include <stdio.h>

#include "lullwise/track_events.h"

typedef struct lw_track_drawn {
    const char *head, *wind;  // sentences above it
    const lw_track *track;
    const lw_track_events *events;
    double from;                   // [rad] where the wind comes from; NAN: not known
    const lw_track_angle *angles;  // where the wind is known
    const double *model;           // [m/s] by angle; NAN where there is none
    bool has_model;
    lw_track_limits limits;
    lw_unit unit;  // of speeds
} lw_track_drawn;

void lw_track_draw(FILE *out, const lw_track_drawn *drawn);

#endif
