// range_picture.h - wind across, pins down: from which wind each flies, up to which it is held.
// SPDX-License-Identifier: MIT

#ifndef LW_RANGE_PICTURE_H
#define LW_RANGE_PICTURE_H

#include <stdio.h>

#include "lullwise/boat.h"
#include "lullwise/flight.h"

// A pin's winds [m/s]; 0: none.
typedef struct lw_range_bar {
    const char *pin;
    double launches_at, stays_up_at, held_up_to;
    const char *end;  // what ends it; NULL: not told
} lw_range_bar;

// The pins on a heading.
typedef struct lw_range_panel {
    const char *heading;  // NULL: none
    lw_range_bar bars[LW_PINS_MOST];
    size_t count;
} lw_range_panel;

#define LW_RANGE_PANELS_MOST 8
typedef struct lw_range_drawn {
    const char *head;  // sentences above it; NULL: none
    lw_range_panel panels[LW_RANGE_PANELS_MOST];
    size_t panel_count;
    double lull, mean, puff;  // [m/s] of the day
    lw_unit unit;             // of winds
    double width;             // [px] of the picture; 0: as it comes
} lw_range_drawn;

// Each state along the wind has a pattern of its own, so that no colour is needed; the band from
// lull to puff goes through all.
void lw_range_draw(FILE *out, const lw_range_drawn *drawn);

#endif
