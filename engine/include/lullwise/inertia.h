// inertia.h - masses of a boat and of the water that her foils carry along, and how foils damp.
// SPDX-License-Identifier: MIT

#ifndef LW_INERTIA_H
#define LW_INERTIA_H

#include "lullwise/craft.h"

#define LW_MOVES 6  // surge, sway, heave; roll, pitch, yaw: along and about the boat's x, y, z

// Boat and carried water are symmetric about the boat's plane; the sailor's place is added to them
// as she moves (motion/inertia_lanes.h).
typedef struct lw_inertia {
    double mass[LW_MOVES][LW_MOVES];     // of the boat and of carried water
    double spin[3];                      // of the boat about its own middle [kg m^2]
    double body_spin;                    // of the sailor about the own middle, either way [kg m^2]
    double damping[LW_MOVES][LW_MOVES];  // by the grip of foils and struts, over speed
} lw_inertia;

lw_inertia lw_inertia_of(const lw_craft *craft);

#endif
