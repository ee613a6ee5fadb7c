// ride_picture.h - a ride as curves over time: wind, ride height, pitch, flap, and what happened.
// SPDX-License-Identifier: MIT

#ifndef LW_RIDE_PICTURE_H
#define LW_RIDE_PICTURE_H

#include <stdio.h>

#include "lullwise/motion.h"

typedef struct lw_ride_drawn {
    const char *scene, *trim, *sum;  // sentences above it
    const lw_ride *ride;             // as it ended, with its events
    const lw_trace *rows;            // its history
    size_t row_count;
    lw_wind wind;               // lull, mean and puff
    const lw_linkage *linkage;  // for the flap's stops
} lw_ride_drawn;

void lw_ride_draw(FILE *out, const lw_ride_drawn *drawn);

#endif
