// sections.h - the sections of a boat's foils, worked out when they are first asked for.
// SPDX-License-Identifier: MIT

#ifndef LW_WORDS_SECTIONS_H
#define LW_WORDS_SECTIONS_H

#include "lullwise/craft.h"

// Those of the first boat asked for and of the last are kept, and serve for any boat that has the
// same; where one foil differs the other is kept. They stand until the next call.
const lw_sections *lw_sections_of(const lw_boat *boat);

// Those of a boat as worked out elsewhere, exactly: they are kept as if this were the first boat.
void lw_sections_take(const lw_boat *boat, const lw_sections *sections);

#endif
