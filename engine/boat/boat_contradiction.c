// boat_contradiction.c - faults of a boat that no single number shows.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "lullwise/boat.h"
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
        {hull->block < hull->waterplane, "hull",
         "the waterplane must be larger than the block: no hull is wider below than at the water"},
        {floats >= hull->mass + LIGHTEST_CREW, "hull",
         "length x beam x draft x block floats less than the boat and a light sailor: measure "
         "draft and beam with the sailor aboard"},
        {floats <= hull->mass + HEAVIEST_CREW, "hull",
         "length x beam x draft x block floats more than the boat and a heavy sailor: measure "
         "draft and beam with the sailor aboard"},
        {hull->centre_x < hull->length, "hull", "the centre of gravity lies ahead of the bow"},
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
    const lw_foil *foil = &boat->main_foil, *rudder = &boat->rudder_foil;
    const claim claims[] = {
        {foil->tip_chord <= foil->root_chord, "main_foil", "the tip chord is above the root chord"},
        {is_section(boat->main_section), "main_section",
         "no section has this designation: give one such as NACA 2412 or 63-412, or as measured"},
        {foil->flap_chord > 0.0 && foil->flap_span > 0.0, "main_foil",
         "the main foil has no flap for the wand to work: flap_chord and flap_span"},
        {rudder->tip_chord <= rudder->root_chord, "rudder_foil",
         "the tip chord is above the root chord"},
        {is_section(boat->rudder_section), "rudder_section",
         "no section has this designation: give one such as NACA 2412 or 63-412, or as measured"},
        {boat->main_strut.x < boat->hull.length, "main_strut", "the strut stands ahead of the bow"},
        {boat->rudder_strut.x < boat->main_strut.x, "rudder_strut",
         "the rudder stands ahead of the main strut"},
    };
    return first_false(claims, sizeof claims / sizeof claims[0], why);
}

static const char *of_linkage(const lw_boat *boat, const char **why)
{
    const lw_linkage *linkage = &boat->linkage;
    const lw_rudder *rudder = &boat->rudder;
    const claim claims[] = {
        {linkage->forward_stop < linkage->aft_stop, "linkage",
         "the wand's stops cross: forward_stop must be less than aft_stop"},
        {linkage->neutral_angle > linkage->forward_stop &&
             linkage->neutral_angle < linkage->aft_stop,
         "linkage", "the wand cannot reach its neutral_angle: it lies outside the stops"},
        {linkage->flap_up_stop < linkage->flap_down_stop, "linkage",
         "the flap has no travel: flap_up_stop must be less than flap_down_stop"},
        {linkage->wand_length > linkage->wand_height, "linkage",
         "the wand does not reach below the hull: wand_length must be more than wand_height"},
        {linkage->wand_x > boat->main_strut.x, "linkage", "the wand stands behind the main strut"},
        {rudder->least_turns < rudder->most_turns, "rudder",
         "the thread has no travel: least_turns must be less than most_turns"},
        {boat->place.aft_x < boat->place.forward_x, "place",
         "aft_x must be less than forward_x: both are measured from the transom"},
    };
    return first_false(claims, sizeof claims / sizeof claims[0], why);
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
        {falls, "pins",
         "the pins are out of order: write them from the most lift to the least, no two alike"},
    };
    return first_false(claims, sizeof claims / sizeof claims[0], why);
}

const char *lw_boat_contradiction(const lw_boat *boat, const char **why)
{
    const char *section = of_hull(boat, why);
    if (!section) section = of_foils(boat, why);
    if (!section) section = of_linkage(boat, why);
    if (!section) section = of_pins(boat, why);
    return section;
}
