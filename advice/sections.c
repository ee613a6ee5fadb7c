// sections.c - the sections of a boat's foils, worked out when they are first asked for.
// SPDX-License-Identifier: MIT

#include "advice/sections.h"

typedef struct known {
    bool is_ready;
    lw_boat boat;
    lw_sections sections;
} known;

const lw_sections *lw_sections_of(const lw_boat *boat)
{
    static lw_polar_room room;
    static known first, other;
    if (!first.is_ready) {
        lw_sections_prepare(&first.sections, boat, &room);
        first.boat = *boat;
        first.is_ready = true;
    }
    if (lw_sections_are_alike(&first.boat, boat)) return &first.sections;
    if (other.is_ready && lw_sections_are_alike(&other.boat, boat)) return &other.sections;
    other = first;
    lw_sections_renew(&other.sections, &other.boat, boat, &room);
    other.boat = *boat;
    return &other.sections;
}
