// sections.c - the sections of a boat's foils, worked out when they are first asked for.
// SPDX-License-Identifier: MIT

#include "answer/words/sections.h"

lw_section_store *lw_sections_kept(void)
{
    static lw_section_store store;
    return &store;
}

const lw_sections *lw_sections_of(const lw_boat *boat)
{
    return lw_section_store_of(lw_sections_kept(), boat);
}

void lw_sections_take(const lw_boat *boat, const lw_sections *sections)
{
    lw_section_store_take(lw_sections_kept(), boat, sections);
}
