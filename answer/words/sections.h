// sections.h - the sections of a boat's foils, kept for all who ask in this process.
// SPDX-License-Identifier: MIT

#ifndef LW_WORDS_SECTIONS_H
#define LW_WORDS_SECTIONS_H

#include "lullwise/craft.h"

// One store for all; what it hands out stands until it is asked again.
lw_section_store *lw_sections_kept(void);
const lw_sections *lw_sections_of(const lw_boat *boat);
void lw_sections_take(const lw_boat *boat, const lw_sections *sections);

#endif
