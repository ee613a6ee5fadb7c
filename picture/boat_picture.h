// boat_picture.h - a boat drawn from its measurements, so that a wrong one is seen.
// SPDX-License-Identifier: MIT

#ifndef LW_BOAT_PICTURE_H
#define LW_BOAT_PICTURE_H

#include <stdio.h>

#include "lullwise/craft.h"

// To scale: from the side, afloat and level, the wand where the flap is in line; and both foils
// from above, the bow up.
void lw_boat_draw_side(FILE *out, const lw_boat *boat);
void lw_boat_draw_foils(FILE *out, const lw_boat *boat);

// Over the speed: what the hull resists afloat, and what the main foil drags with the whole weight
// on it, half a metre down.
void lw_boat_draw_drag(FILE *out, const lw_boat *boat, const lw_sections *sections,
                       const lw_person *person, const lw_medium *medium);

#endif
