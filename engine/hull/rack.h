// rack.h - what floats beside the hull: racks and flare, as they go under when she heels.
// SPDX-License-Identifier: MIT
//
// Upright, afloat or in flight, the racks are dry and do nothing. Heeled on the hull they hold her
// up: without them a boat so narrow has nothing but her sailor.

#ifndef LW_RACK_H
#define LW_RACK_H

#include "lullwise/craft.h"
#include "solve/lanes.h"

// Volume of one side under water, its middle so deep in the water [m]; it goes under evenly about
// its middle, without a corner. V: of the whole side; t: from its lowest to its highest edge.
//
//     V_wet = V (1/2 + s (3/2 - 2 s^2)),   s = depth / t, within 1/2 either way
//
// It is borne up by the weight of that water.
// Leaves out   drag of a rack in the water; that the outer edge goes under before the inner.
LW_INLINE lw_lanes lw_rack_wet(const lw_rack_craft *rack, lw_lanes depth)
{
    const lw_lanes s = lw_lanes_clamp(depth * (1.0 / rack->thickness), lw_all(-0.5), lw_all(0.5));
    return rack->volume * (0.5 + s * (1.5 - 2.0 * (s * s)));
}

#endif
