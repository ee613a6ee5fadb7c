// blocks.h - rides of a day in blocks, and what sets of blocks come to.
// SPDX-License-Identifier: MIT

#ifndef LW_BLOCKS_H
#define LW_BLOCKS_H

#include "lullwise/outlook.h"

// Plans of a pin on a course whose range is there, in all winds of rides: blocks that are ridden at
// the same time only read them.
void lw_block_plan(lw_outlook *outlook, size_t pin, size_t course);

// Rides one block of an outlook whose ranges are there: every pin in its winds, or, `again`, those
// that ride more in the day's own wind.
void lw_block_ride(lw_outlook *outlook, size_t block, bool again);

// Sums and rates of all sets, from the blocks that are there.
void lw_blocks_sum(lw_outlook *outlook);

#endif
