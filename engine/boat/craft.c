// craft.c - from what was measured to the coefficients that the forces need.
// SPDX-License-Identifier: MIT

#include "lullwise/craft.h"

#include <math.h>

#include "boat/foil_craft.h"
#include "boat/foil_curves.h"
#include "foil/friction.h"
#include "foil/section.h"
#include "foil/strut.h"
#include "hull/hull_craft.h"
#include "lullwise/elementary.h"
#include "medium/wind.h"
#include "rig/sail.h"
#include "solve/curve.h"

// Height that counts in the sail's aspect ratio / luff: the deck seals part of the gap
// [hazen-1980].
#define EFFECTIVE_LUFF 1.1

static double knot_speed(int i) { return lw_exp(LW_SPEED_FIRST + i * LW_SPEED_STEP); }

// Drag coefficient of a strut over ln V: two plates with the form of its section, turbulent from
// where they are no longer smooth, or from Re 5e5 on.
//
//     C_f = C_t(Re) - Re_t / Re (C_t(Re_t) - C_l(Re_t))            [schlichting]
static lw_curve strut_curve(double chord, double form, double smooth, double nu)
{
    lw_curve curve = {.first = LW_SPEED_FIRST, .step = LW_SPEED_STEP};
    for (int i = 0; i < LW_CURVE_KNOTS; i++) {
        const double reynolds = knot_speed(i) * chord / nu, turns = fmin(smooth * reynolds, 5e5);
        const lw_lanes log_re = lw_all(lw_log(reynolds)), log_turns = lw_all(lw_log(turns));
        const double saved =
            (lw_friction_schlichting(log_turns) - lw_friction_blasius(log_turns))[0];
        const double friction = lw_friction_schlichting(log_re)[0] - turns / reynolds * saved;
        curve.value[i] = 2.0 * form * friction;
    }
    lw_curve_smooth(&curve);
    return curve;
}

static lw_strut_craft strut_craft(const lw_strut *strut, const lw_foil *foil, double nu)
{
    const double t = strut->thickness * strut->chord;
    return (lw_strut_craft){
        .chord = strut->chord,
        .length = strut->length,
        .profile =
            strut_curve(strut->chord, lw_section_form_strut(strut->thickness), foil->smooth, nu),
        .spray_drag = lw_strut_spray_area(t),
        .foil_span = foil->span};
}

static lw_linkage_craft linkage_craft(const lw_linkage *linkage)
{
    return (lw_linkage_craft){.forward_stop = linkage->forward_stop,
                              .aft_stop = linkage->aft_stop,
                              .neutral_angle = linkage->neutral_angle,
                              .flap_up_stop = linkage->flap_up_stop,
                              .flap_down_stop = linkage->flap_down_stop};
}

static lw_sail_craft sail_craft(const lw_rig *rig, double origin_x, double up)
{
    const double height = EFFECTIVE_LUFF * rig->luff, aspect = height * height / rig->sail_area;
    const double most = lw_sail_coefficients_at(LW_SAIL_HIGH_LIFT, 28.0 * LW_DEG).lift;
    lw_sail_craft sail = {
        .area = rig->sail_area,
        .luff = rig->luff,
        .centre_height = up + rig->foot_height + rig->centre_part * rig->luff,
        .centre_x = rig->centre_x - origin_x,
        .induced = lw_sail_induced_drag(1.0, aspect),
        .profile_drag = rig->profile_drag,
        .flattest = rig->flattest,
        .most_twist = rig->most_twist,
    };
    sail.lift.step = sail.drag.step = LW_PI / (LW_CURVE_KNOTS - 1);
    for (int i = 0; i < LW_CURVE_KNOTS; i++) {
        const double angle = i * sail.lift.step;
        const lw_sail_coefficients c = lw_sail_coefficients_at(LW_SAIL_HIGH_LIFT, angle);
        sail.lift.value[i] = rig->greatest_lift / most * c.lift;
        sail.drag.value[i] = c.drag;
    }
    lw_curve_smooth(&sail.lift);
    lw_curve_smooth(&sail.drag);
    return sail;
}

// Troughs that one wave in a hundred exceeds: a = H_s sqrt(ln 100 / 8) [longuet-higgins-1952].
static void sea_trough(lw_curve *trough, const lw_medium *medium)
{
    trough->step = 0.5;
    for (int i = 0; i < LW_CURVE_KNOTS; i++) {
        const lw_wave sea = lw_medium_wave(medium, i * trough->step);
        trough->value[i] = sea.height * sqrt(lw_log(100.0) / 8.0);
    }
    lw_curve_smooth(trough);
}

static double middle_pin(const lw_boat *boat)
{
    double sum = 0.0;
    for (size_t i = 0; i < boat->pin_count; i++) sum += boat->pins[i].incidence;
    return boat->pin_count ? sum / (double)boat->pin_count : 0.0;
}

// Its middle four fifths of the way out, where sailors sit along the boat; it goes under over 0.3
// m, the rise of a rack and of the hull's side from edge to edge.  [judged]
static lw_rack_craft rack_craft(const lw_boat *boat)
{
    const double sit = 0.5 * (boat->place.aft_x + boat->place.forward_x);
    return (lw_rack_craft){.volume = boat->hull.rack_volume,
                           .thickness = 0.3,
                           .x = sit - boat->main_strut.x,
                           .y = 0.4 * boat->hull.rack_width,
                           .z = boat->main_strut.length + boat->hull.rack_height};
}

static void place_people(lw_craft *craft, const lw_boat *boat, const lw_person *person, double up)
{
    const lw_hull *hull = &boat->hull;
    craft->body_mass = person->mass + person->gear;
    craft->body_z = up + hull->rack_height + person->body_height;
    craft->body_inboard = boat->place.inboard;
    craft->body_reach = 0.5 * hull->rack_width + person->hike;
    craft->body_windage = person->drag_area;
    craft->least_heel = person->least_heel;
    craft->most_heel = person->most_heel;
    craft->most_bow_down = person->most_bow_down;
    craft->most_bow_up = person->most_bow_up;
    craft->skill = person->skill;
    craft->place_aft = boat->place.aft_x - boat->main_strut.x;
    craft->place_forward = boat->place.forward_x - boat->main_strut.x;
}

// Heights of sail and windage over the water in flight, the hull 0.3 m up.
static void wind_heights(lw_craft *craft, const lw_boat *boat, const lw_medium *medium)
{
    const double ride = 0.3, read = medium->wind_height;
    const lw_rig *rig = &boat->rig;
    const double sail = ride + rig->foot_height + rig->centre_part * rig->luff;
    craft->wind_at_sail = lw_wind_at(1.0, read, sail);
    craft->wind_at_body = lw_wind_at(1.0, read, ride + boat->hull.windage_height);
}

// All but the hull's form under water.
static void prepare(lw_craft *craft, const lw_boat *boat, const lw_sections *sections,
                    const lw_person *person, const lw_medium *medium)
{
    const double nu = medium->water_viscosity, up = boat->main_strut.length;
    const double x = boat->main_strut.x;
    const lw_hull *hull = &boat->hull;
    *craft = (lw_craft){
        .main_foil =
            lw_foil_craft_of(&boat->main_foil, &boat->main_strut, &sections->main_foil, nu),
        .rudder_foil =
            lw_foil_craft_of(&boat->rudder_foil, &boat->rudder_strut, &sections->rudder_foil, nu),
        .main_strut = strut_craft(&boat->main_strut, &boat->main_foil, nu),
        .rudder_strut = strut_craft(&boat->rudder_strut, &boat->rudder_foil, nu),
        .linkage = linkage_craft(&boat->linkage),
        .sail = sail_craft(&boat->rig, x, up),
        .rack = rack_craft(boat),
        .hull_mass = hull->mass,
        .hull_x = hull->centre_x - x,
        .hull_z = up + hull->centre_height,
        .pin_middle = middle_pin(boat),
        .pin_arm = up + boat->linkage.pin_pivot_height,
        .rudder_x = boat->rudder_strut.x - x,
        .rudder_z = up - boat->rudder_strut.length,
        .wand_x = boat->linkage.wand_x - x,
        .wand_z = up + boat->linkage.wand_height,
        .windage = hull->windage_area,
        .windage_side = hull->windage_side,
        .windage_z = up + hull->windage_height,
        .transom_x = -x,
        .bow_x = hull->length - x,
        .rudder_mark = boat->rudder.mark_incidence,
        .rudder_turn = boat->rudder.turn,
        .least_turns = boat->rudder.least_turns,
        .most_turns = boat->rudder.most_turns,
        .helm_limit = boat->rudder.helm_limit,
        .setup = {.incidence = boat->pin_count ? boat->pins[0].incidence : 0.0,
                  .wand_length = boat->linkage.wand_length,
                  .gearing = boat->linkage.gearing,
                  .rod = boat->linkage.rod},
        .medium = *medium,
    };
    const lw_wing main = lw_foil_wing(&boat->main_foil, &sections->main_foil);
    const lw_wing rudder = lw_foil_wing(&boat->rudder_foil, &sections->rudder_foil);
    lw_foil_curves(&craft->main_foil, &main, &rudder,
                   (lw_wing_point){.x = craft->rudder_x, .z = craft->rudder_z});
    lw_foil_curves(&craft->rudder_foil, &rudder, NULL, (lw_wing_point){0});
    place_people(craft, boat, person, up);
    craft->weight = LW_GRAVITY * (craft->hull_mass + craft->body_mass);
    wind_heights(craft, boat, medium);
    sea_trough(&craft->trough, medium);
}

void lw_craft_prepare(lw_craft *craft, const lw_boat *boat, const lw_sections *sections,
                      const lw_person *person, const lw_medium *medium)
{
    prepare(craft, boat, sections, person, medium);
    lw_hull_prepare(&craft->hull, &boat->hull, boat->main_strut.x, medium->water_viscosity);
}

void lw_craft_vary(lw_craft *craft, const lw_craft *from, const lw_boat *boat,
                   const lw_sections *sections, const lw_person *person)
{
    prepare(craft, boat, sections, person, &from->medium);
    craft->hull = from->hull;
}

lw_setup lw_craft_setup(const lw_craft *craft, const lw_boat *boat, size_t pin)
{
    lw_setup setup = craft->setup;
    setup.incidence = boat->pins[pin].incidence;
    return setup;
}

double lw_craft_rudder(const lw_craft *craft, double turns)
{
    return craft->rudder_mark + turns * craft->rudder_turn;
}
