// sections.h - the sections of a boat's foils, prepared before the boat is.
// SPDX-License-Identifier: MIT

#ifndef LW_SECTIONS_H
#define LW_SECTIONS_H

#include "lullwise/boat.h"
#include "lullwise/polar.h"

// The sections of a boat's foils as smooth functions: what takes longest to prepare, and stays the
// same while only other things change.
typedef struct lw_sections {
    lw_polar main_foil, rudder_foil;
} lw_sections;

typedef enum lw_section_name {
    LW_MAIN_SECTION,
    LW_RUDDER_SECTION,
    LW_SECTION_COUNT
} lw_section_name;

// What a foil's polar is worked out from; points into the boat.
lw_polar_shape lw_sections_shape(const lw_boat *boat, lw_section_name name);
lw_polar *lw_sections_polar(lw_sections *sections, lw_section_name name);

// 0.2 s on one core for a flapped foil and one without. A designation that is none counts as
// measured (boat.h finds it a fault).
void lw_sections_prepare(lw_sections *sections, const lw_boat *boat, lw_polar_room *room);

// Those of `was` made those of another boat: what is alike stays.
void lw_sections_renew(lw_sections *sections, const lw_boat *was, const lw_boat *boat,
                       lw_polar_room *room);

// Whether both boats have the same sections, so that those of one serve the other.
bool lw_sections_are_alike(const lw_boat *a, const lw_boat *b);

// Sections of the first boat asked for and of the last: they serve any boat that has the same, and
// where one foil differs the other is kept. Begins as zeros; 0.8 MB, the caller's.
typedef struct lw_stored_sections {
    bool is_ready;
    lw_boat boat;
    lw_sections sections;
} lw_stored_sections;

typedef struct lw_section_store {
    lw_stored_sections first, other;
    lw_polar_room room;
} lw_section_store;

// Those of a boat, worked out if need be; they stand until the next call.
const lw_sections *lw_section_store_of(lw_section_store *store, const lw_boat *boat);

// Those of a boat as worked out elsewhere, exactly: kept as if this were the first boat.
void lw_section_store_take(lw_section_store *store, const lw_boat *boat,
                           const lw_sections *sections);

#endif
