// boat_contradiction.c - faults of a boat that no single number shows.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "lullwise/boat.h"
#include "lullwise/order.h"
#include "lullwise/profile.h"

#define FRESH_WATER   1000.0  // [kg/m^3]
#define LIGHTEST_CREW 40.0    // [kg] with gear  [judged]
#define HEAVIEST_CREW 160.0   // [kg] with gear  [judged]

// A claim about the boat; the sentence to say when it is false.
typedef struct claim {
    bool holds;
    const char *section, *why;
} claim;

int lw_boat_pin(const lw_boat *boat, const char *label)
{
    for (size_t i = 0; i < boat->pin_count; i++) {
        if (strcmp(boat->pins[i].label, label) == 0) return (int)i;
    }
    return -1;
}

static const char *first_false(const claim *claims, size_t count, const char **why)
{
    for (size_t i = 0; i < count; i++) {
        if (claims[i].holds) continue;
        *why = claims[i].why;
        return claims[i].section;
    }
    return NULL;
}

static const char *of_hull(const lw_boat *boat, const char **why)
{
    const lw_hull *hull = &boat->hull;
    const double floats = FRESH_WATER * hull->length * hull->beam * hull->draft * hull->block;
    const claim claims[] = {
        {floats >= hull->mass + LIGHTEST_CREW, "hull",
         "length x beam x draft x block floats less than the boat and a light sailor: measure "
         "draft and beam with the sailor aboard"},
        {floats <= hull->mass + HEAVIEST_CREW, "hull",
         "length x beam x draft x block floats more than the boat and a heavy sailor: measure "
         "draft and beam with the sailor aboard"},
    };
    return first_false(claims, sizeof claims / sizeof claims[0], why);
}

static bool is_section(const char *designation)
{
    lw_outline outline;
    return strcmp(designation, LW_SECTION_AS_MEASURED) == 0 ||
           lw_outline_naca(designation, &outline) == LW_PROFILE_OK;
}

static const char *of_foils(const lw_boat *boat, const char **why)
{
    static const char no_section[] =
        "no section has this designation: give one such as NACA 2412 or 63-412, or as measured";
    const lw_foil *foil = &boat->main_foil;
    const claim claims[] = {
        {is_section(boat->main_section), "main_section", no_section},
        {foil->flap_chord > 0.0 && foil->flap_span > 0.0, "main_foil",
         "the main foil has no flap for the wand to work: flap_chord and flap_span"},
        {is_section(boat->rudder_section), "rudder_section", no_section},
    };
    return first_false(claims, sizeof claims / sizeof claims[0], why);
}

static const char *of_order(const lw_boat *boat, const char **why)
{
    const lw_order *failing = lw_order_failing(&lw_boat_record, boat);
    if (!failing) return NULL;
    *why = failing->why;
    return failing->section;
}

static const char *of_pins(const lw_boat *boat, const char **why)
{
    bool falls = true, has_labels = true;
    for (size_t i = 0; i < boat->pin_count; i++) {
        const lw_pin *pin = &boat->pins[i];
        if (pin->label[0] == '\0' || lw_boat_pin(boat, pin->label) != (int)i) has_labels = false;
        if (i > 0 && !(pin->incidence < boat->pins[i - 1].incidence)) falls = false;
    }
    const claim claims[] = {
        {boat->pin_count > 0, "pins", "the boat has no pin: even one hole needs its angle"},
        {has_labels, "pins", "each pin needs a label of its own"},
        {falls, "pins", "the pins must fall in lift, no two with the same angle"},
    };
    return first_false(claims, sizeof claims / sizeof claims[0], why);
}

const char *lw_boat_contradiction(const lw_boat *boat, const char **why)
{
    const char *section = of_hull(boat, why);
    if (!section) section = of_foils(boat, why);
    if (!section) section = of_order(boat, why);
    if (!section) section = of_pins(boat, why);
    return section;
}
