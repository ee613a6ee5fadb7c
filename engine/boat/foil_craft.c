// foil_craft.c - a foil as measured, with the polar of its section, made ready.
// SPDX-License-Identifier: MIT

#include "boat/foil_craft.h"

#include <math.h>
#include <string.h>

#include "lullwise/elementary.h"
#include "lullwise/strut.h"
#include "solve/curve.h"

static double area_of(const lw_foil *foil)
{
    return 0.5 * foil->span * (foil->root_chord + foil->tip_chord);
}

// Least drag of the section over ln V.
static void speed_curve(lw_foil_craft *craft, const lw_polar *polar, double nu)
{
    craft->profile = (lw_curve){.first = LW_SPEED_FIRST, .step = LW_SPEED_STEP};
    for (int i = 0; i < LW_CURVE_KNOTS; i++) {
        const double V = lw_exp(LW_SPEED_FIRST + i * LW_SPEED_STEP);
        const double reynolds = V * craft->chord / nu;
        craft->profile.value[i] = lw_polar_least_drag(polar, reynolds);
    }
    lw_curve_smooth(&craft->profile);
}

// The strut that carries a foil meets it crosswise: the thicknesses' mean counts [hoerner-fdd].
lw_foil_craft lw_foil_craft_of(const lw_foil *foil, const lw_strut *strut, const lw_polar *polar,
                               double nu)
{
    const double S = area_of(foil);
    const double thickness =
        0.5 * (foil->thickness * foil->root_chord + strut->thickness * strut->chord);
    lw_foil_craft craft = {
        .span = foil->span,
        .area = S,
        .chord = S / foil->span,
        .polar = *polar,
        .log_re = lw_log(S / foil->span / nu),
        .zero_lift_angle = foil->zero_lift_angle,
        .junction_drag = lw_strut_junction_area(
            thickness, thickness / (0.5 * (foil->root_chord + strut->chord))),
    };
    speed_curve(&craft, polar, nu);
    return craft;
}

lw_wing lw_foil_wing(const lw_foil *foil, const lw_polar *polar)
{
    const double half = 0.5 * foil->span, a_0 = polar->slope;
    return (lw_wing){
        .count = 2,
        .station = {{.chord = foil->root_chord, .slope = a_0},
                    {.y = half, .chord = foil->tip_chord, .slope = a_0}},
        .flap = {.outer = half * foil->flap_span,
                 .angle_share = foil->flap_chord > 0.0 ? 1.0 : 0.0},
    };
}

static lw_polar_shape shape_of(const lw_foil *foil, const char *section, const lw_linkage *linkage)
{
    const bool is_measured = strcmp(section, LW_SECTION_AS_MEASURED) == 0;
    return (lw_polar_shape){.designation = is_measured ? NULL : section,
                            .thickness = foil->thickness,
                            .zero_lift_angle = foil->zero_lift_angle,
                            .flap_chord = foil->flap_chord,
                            .flap_up = linkage->flap_up_stop,
                            .flap_down = linkage->flap_down_stop,
                            .smooth = foil->smooth};
}

lw_polar_shape lw_main_foil_shape(const lw_boat *boat)
{
    return shape_of(&boat->main_foil, boat->main_section, &boat->linkage);
}

lw_polar_shape lw_rudder_foil_shape(const lw_boat *boat)
{
    return shape_of(&boat->rudder_foil, boat->rudder_section, &boat->linkage);
}

static bool foils_are_alike(const lw_foil *a, const lw_foil *b)
{
    return a->thickness == b->thickness && a->zero_lift_angle == b->zero_lift_angle &&
           a->flap_chord == b->flap_chord && a->smooth == b->smooth;
}

// Polars go a little beyond the flap's stops: other stops, other polars, if only by a little. An
// answer must not depend on the boat that was asked about before.
static bool flaps_are_alike(const lw_foil *foil, const lw_boat *a, const lw_boat *b)
{
    return foil->flap_chord == 0.0 || (a->linkage.flap_up_stop == b->linkage.flap_up_stop &&
                                       a->linkage.flap_down_stop == b->linkage.flap_down_stop);
}

static bool main_is_alike(const lw_boat *a, const lw_boat *b)
{
    return strcmp(a->main_section, b->main_section) == 0 &&
           foils_are_alike(&a->main_foil, &b->main_foil) && flaps_are_alike(&a->main_foil, a, b);
}

static bool rudder_is_alike(const lw_boat *a, const lw_boat *b)
{
    return strcmp(a->rudder_section, b->rudder_section) == 0 &&
           foils_are_alike(&a->rudder_foil, &b->rudder_foil) &&
           flaps_are_alike(&a->rudder_foil, a, b);
}

bool lw_sections_are_alike(const lw_boat *a, const lw_boat *b)
{
    return main_is_alike(a, b) && rudder_is_alike(a, b);
}

static void prepare_main(lw_sections *sections, const lw_boat *boat, lw_polar_room *room)
{
    const lw_polar_shape shape = lw_main_foil_shape(boat);
    lw_polar_prepare(&sections->main_foil, &shape, room);
}

static void prepare_rudder(lw_sections *sections, const lw_boat *boat, lw_polar_room *room)
{
    const lw_polar_shape shape = lw_rudder_foil_shape(boat);
    lw_polar_prepare(&sections->rudder_foil, &shape, room);
}

void lw_sections_prepare(lw_sections *sections, const lw_boat *boat, lw_polar_room *room)
{
    prepare_main(sections, boat, room);
    prepare_rudder(sections, boat, room);
}

void lw_sections_renew(lw_sections *sections, const lw_boat *was, const lw_boat *boat,
                       lw_polar_room *room)
{
    if (!main_is_alike(was, boat)) prepare_main(sections, boat, room);
    if (!rudder_is_alike(was, boat)) prepare_rudder(sections, boat, room);
}
