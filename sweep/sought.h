// sought.h - a quantity of hardware that is sought within bounds, on a grid that holds the boat's.
// SPDX-License-Identifier: MIT

#ifndef LW_SOUGHT_H
#define LW_SOUGHT_H

#include "sweep/over.h"

#define LW_SOUGHT_MOST 4

typedef struct lw_sought {
    lw_over over;            // its values, an even step apart
    size_t own;              // the one that the boat has
    const lw_quantity *row;  // of the boat's tables
} lw_sought;

// Reads "main_foil.span=0.9:1.2:0.02 m". False: refused; to be released all the same.
bool lw_sought_read(lw_sought *sought, const char *text, const lw_boat *boat, lw_refusal *refusal);

// A candidate is one value of each, the last of which goes fastest.
size_t lw_sought_candidates(const lw_sought *sought, size_t count);
size_t lw_sought_at(const lw_sought *sought, size_t count, size_t candidate, size_t which);
size_t lw_sought_candidate(const lw_sought *sought, size_t count, const size_t at[LW_SOUGHT_MOST]);

// A value as it is shown: "1.04 m".
void lw_sought_text(const lw_sought *sought, size_t i, char text[LW_OVER_TEXT]);

#endif
