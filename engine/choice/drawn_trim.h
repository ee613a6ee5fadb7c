// drawn_trim.h - a boat that is a little different, trimmed from how the boat as given is.
// SPDX-License-Identifier: MIT

#ifndef LW_DRAWN_TRIM_H
#define LW_DRAWN_TRIM_H

#include "lullwise/range.h"

#define LW_HALF_KNOT \
    (0.501 * LW_KN)  // from a wind to the knot nearest to it, however it is rounded

// Trimmed as her sailor would be in a wind [m/s], from the range of the boat as given; in more wind
// than that is held in as in the last of it. From elsewhere, too, where its flight leads to none or
// to one far behind it. Where she does not fly, in the least wind above, within a few knots.
lw_trim lw_drawn_trim(const lw_walk *walk, const lw_range *range, double wind);

#endif
