// section_store.c - sections of boats, worked out when they are first asked for.
// SPDX-License-Identifier: MIT

#include "lullwise/polar.h"

static const lw_sections *found(const lw_section_store *store, const lw_boat *boat)
{
    const lw_stored_sections *first = &store->first, *other = &store->other;
    if (first->is_ready && lw_sections_are_alike(&first->boat, boat)) return &first->sections;
    if (other->is_ready && lw_sections_are_alike(&other->boat, boat)) return &other->sections;
    return NULL;
}

const lw_sections *lw_section_store_of(lw_section_store *store, const lw_boat *boat)
{
    const lw_sections *ready = found(store, boat);
    lw_stored_sections *first = &store->first, *other = &store->other;
    if (ready) return ready;
    if (!first->is_ready) {
        lw_sections_prepare(&first->sections, boat, &store->room);
        first->boat = *boat;
        first->is_ready = true;
        return &first->sections;
    }
    *other = *first;
    lw_sections_renew(&other->sections, &other->boat, boat, &store->room);
    other->boat = *boat;
    return &other->sections;
}

void lw_section_store_take(lw_section_store *store, const lw_boat *boat,
                           const lw_sections *sections)
{
    if (found(store, boat)) return;
    store->other = store->first;
    store->first = (lw_stored_sections){true, *boat, *sections};
}
