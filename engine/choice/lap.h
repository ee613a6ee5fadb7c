// lap.h - one set-up round the course through the day's gusts.
// SPDX-License-Identifier: MIT

#ifndef LW_LAP_H
#define LW_LAP_H

#include "lullwise/choice.h"

lw_prospect lw_lap(const lw_outlook *outlook, size_t pin, lw_gusts gusts);

// One leg only: seconds without swims, and of them those flying and on the hull [s].
lw_prospect lw_lap_leg(const lw_outlook *outlook, size_t pin, size_t leg, lw_gusts gusts);

#endif
