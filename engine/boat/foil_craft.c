// foil_craft.c - a foil as measured, with the polar of its section, made ready.
// SPDX-License-Identifier: MIT

#include "boat/foil_craft.h"

#include <math.h>
#include <string.h>

#include "foil/strut.h"
#include "foil/ventilation/face.h"
#include "lullwise/elementary.h"
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

// What its face lifts with its back in air.
static void face_curves(lw_foil_craft *craft, double flap_chord)
{
    lw_curve *const curves[] = {&craft->face, &craft->face_flap, &craft->face_drag,
                                &craft->face_centre, &craft->face_flap_centre};
    for (int k = 0; k < 5; k++) *curves[k] = (lw_curve){.step = LW_DEPTH_STEP};
    for (int i = 0; i < LW_CURVE_KNOTS; i++) {
        const lw_face face = lw_face_of(i * LW_DEPTH_STEP / craft->chord, flap_chord);
        const double at[] = {face.slope, face.flap_share, face.flap_drag, face.centre,
                             face.flap_centre};
        for (int k = 0; k < 5; k++) curves[k]->value[i] = at[k];
    }
    for (int k = 0; k < 5; k++) lw_curve_smooth(curves[k]);
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
    face_curves(&craft, foil->flap_chord);
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

lw_polar_shape lw_sections_shape(const lw_boat *boat, lw_section_name name)
{
    const bool is_main = name == LW_MAIN_SECTION;
    const lw_foil *foil = is_main ? &boat->main_foil : &boat->rudder_foil;
    const char *section = is_main ? boat->main_section : boat->rudder_section;
    const bool is_measured = strcmp(section, LW_SECTION_AS_MEASURED) == 0;
    return (lw_polar_shape){.designation = is_measured ? NULL : section,
                            .thickness = foil->thickness,
                            .zero_lift_angle = foil->zero_lift_angle,
                            .flap_chord = foil->flap_chord,
                            .flap_up = boat->linkage.flap_up_stop,
                            .flap_down = boat->linkage.flap_down_stop,
                            .smooth = foil->smooth,
                            .waves = foil->waves};
}

static bool is_alike(const lw_boat *a, const lw_boat *b, lw_section_name name)
{
    const lw_polar_shape of_a = lw_sections_shape(a, name), of_b = lw_sections_shape(b, name);
    return lw_polar_shapes_are_alike(&of_a, &of_b);
}

bool lw_sections_are_alike(const lw_boat *a, const lw_boat *b)
{
    return is_alike(a, b, LW_MAIN_SECTION) && is_alike(a, b, LW_RUDDER_SECTION);
}

lw_polar *lw_sections_polar(lw_sections *sections, lw_section_name name)
{
    return name == LW_MAIN_SECTION ? &sections->main_foil : &sections->rudder_foil;
}

static void prepare(lw_sections *sections, const lw_boat *boat, lw_section_name name,
                    lw_polar_room *room)
{
    const lw_polar_shape shape = lw_sections_shape(boat, name);
    lw_polar_prepare(lw_sections_polar(sections, name), &shape, room);
}

void lw_sections_prepare(lw_sections *sections, const lw_boat *boat, lw_polar_room *room)
{
    prepare(sections, boat, LW_MAIN_SECTION, room);
    prepare(sections, boat, LW_RUDDER_SECTION, room);
}

void lw_sections_renew(lw_sections *sections, const lw_boat *was, const lw_boat *boat,
                       lw_polar_room *room)
{
    for (lw_section_name name = LW_MAIN_SECTION; name < LW_SECTION_COUNT; name++) {
        if (!is_alike(was, boat, name)) prepare(sections, boat, name, room);
    }
}
