// foil_craft.h - a foil as measured, with the polar of its section, made ready.
// SPDX-License-Identifier: MIT

#ifndef LW_FOIL_CRAFT_H
#define LW_FOIL_CRAFT_H

#include "lullwise/craft.h"
#include "lullwise/wing.h"

// All but what foil_curves.h fills.
lw_foil_craft lw_foil_craft_of(const lw_foil *foil, const lw_strut *strut, const lw_polar *polar,
                               double nu);

// The foil's planform with the lift slope of its section; a flap counts as an angle of the section,
// so that the lattice tells which part of it the whole foil has.
lw_wing lw_foil_wing(const lw_foil *foil, const lw_polar *polar);

#endif
