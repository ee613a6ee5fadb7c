// whole_foil.c - a whole foil of a boat: what it lifts and costs, and where its water boils.
// SPDX-License-Identifier: MIT

#include "lullwise/foil.h"

#include <math.h>

#include "foil/section.h"
#include "quantity/tables.h"

#define FASTEST (80.0 * LW_KN)

#define ROW(member, ...) LW_RESULT(lw_whole_point, member, __VA_ARGS__)

// clang-format off
static const lw_quantity rows[] = {
    ROW(speed,             "V",     KN,      1, "speed through the water"),
    ROW(alpha,             "alpha", DEG,     2, "angle of the chord line to the flow"),
    ROW(coefficient,       "C_L",   NONE,    3, "lift coefficient"),
    ROW(lift,              "L",     N,       0, "lift"),
    ROW(section,           "D_p",   N,       1, "drag of the section and its corner at the strut"),
    ROW(induced,           "D_i",   N,       1, "drag that the lift induces under the surface"),
    ROW(drag,              "D",     N,       1, "drag of both"),
    ROW(lift_to_drag,      "L/D",   NONE,    1, "lift over drag"),
    {LW_MEMBER(lw_whole_point, moment), .symbol = "M", .unit = LW_UNIT_NONE, .min = -1e9,
     .max = 1e9, .decimals = 1, .doc = "moment about the quarter chord in N m, bow up"},
    ROW(load_share,        "",      PERCENT, 0, "of the lift at the stall"),
    ROW(least_pressure,    "C_p",   NONE,    2, "lowest pressure, where the span is loaded most"),
    ROW(cavitation_number, "sigma", NONE,    2, "the water boils where -C_p reaches it"),
    ROW(cavitates_at,      "V_c",   KN,      1, "speed from which the water boils at this C_L"),
};
// clang-format on
LW_TABLE_COVERS(lw_whole_point, rows);

const lw_table lw_whole_table = {.key = "foil",
                                 .title = "Whole foil",
                                 .rows = rows,
                                 .count = sizeof rows / sizeof rows[0],
                                 .doc = "A foil of the boat at one speed."};

bool lw_whole_own_section(lw_outline *outline, const lw_polar_shape *shape)
{
    lw_polar_shape measured = *shape;
    measured.designation = NULL;
    if (shape->designation && lw_polar_outline(shape, outline)) return true;
    lw_polar_outline(&measured, outline);
    return false;
}

// The planform with a slope of 2 pi: here it only shares the lift out along the span.
static lw_wing wing_of(const lw_foil *foil)
{
    const double half = 0.5 * foil->span, slope = 2.0 * LW_PI;
    lw_wing wing = {.count = 2,
                    .station = {{.chord = foil->root_chord, .slope = slope},
                                {.y = half, .chord = foil->tip_chord, .slope = slope}}};
    if (foil->flap_chord > 0.0 && foil->flap_span > 0.0)
        wing.flap = (lw_wing_flap){.outer = half * foil->flap_span,
                                   .angle_share = lw_flap_of(foil->flap_chord).angle_share};
    return wing;
}

// Most loaded strip over the mean, at a middling angle.
static double steepest_of(const lw_whole_foil *whole)
{
    lw_wing_load load;
    double most = 0.0;
    lw_wing_load_at(&whole->lattice, (lw_wing_flow){.alpha = 0.08, .flap = whole->place.flap},
                    &load);
    for (int i = 0; i < whole->lattice.mesh.strips; i++) most = fmax(most, load.section_lift[i]);
    const double wet = (whole->lattice.wet_to - whole->lattice.wet_from) / whole->lattice.span;
    return load.lift > 0.0 && wet > 0.0 ? most * wet / load.lift : 1.0;
}

bool lw_whole_prepare(lw_whole_foil *whole, const lw_foil *foil, const char **why)
{
    const lw_wing wing = wing_of(foil);
    const lw_wing_place place = {.depth = whole->place.depth, .heel = whole->place.heel};
    const lw_wing_status laid = lw_wing_lay(&whole->lattice, &wing, lw_wing_mesh_usual(), place);
    *why = lw_wing_status_text(laid);
    if (laid != LW_WING_OK) return false;
    whole->steepest = steepest_of(whole);
    whole->tip_depth = fmin(whole->lattice.depth_port, whole->lattice.depth_starboard);
    const bool has_flap = whole->place.flap != 0.0;
    const lw_profile_flap flap = {has_flap ? 1.0 - foil->flap_chord : 0.0, whole->place.flap};
    const lw_profile_status status = lw_section_flow_of(&whole->flow, whole->outline, flap);
    *why = lw_profile_status_text(status);
    return status == LW_PROFILE_OK;
}

static double least_pressure_of(const lw_whole_foil *whole, double lift)
{
    const double alpha = lw_section_angle(&whole->flow, lift);
    return lw_profile_load_of(&whole->flow.profile, &whole->flow.flow, alpha).least_pressure;
}

lw_section_point lw_whole_pressures(lw_whole_foil *whole, double coefficient,
                                    double pressures[LW_NODES_MOST])
{
    const lw_section_water water = {.medium = whole->medium, .depth = whole->place.depth};
    const double alpha =
        isfinite(coefficient) ? lw_section_angle(&whole->flow, whole->steepest * coefficient) : NAN;
    return lw_section_pressures(&whole->flow, water, alpha, pressures);
}

lw_whole_point lw_whole_at(lw_whole_foil *whole, double speed, double alpha)
{
    lw_foil_place place = whole->place;
    place.speed = speed;
    place.incidence = alpha;
    const lw_medium *medium = whole->medium;
    const lw_foil_forces f = lw_foil_at(whole->foil, medium->water_density, place);
    const double least = least_pressure_of(whole, whole->steepest * f.coefficient);
    const double drag = f.section + f.junction + f.induced;
    return (lw_whole_point){
        .speed = speed,
        .alpha = alpha,
        .coefficient = f.coefficient,
        .lift = f.lift,
        .section = f.section + f.junction,
        .induced = f.induced,
        .drag = drag,
        .lift_to_drag = f.lift / drag,
        .moment = f.moment,
        .load_share = f.load_share,
        .least_pressure = least,
        .cavitation_number = lw_cavitation_number(medium, place.depth, speed),
        .cavitates_at = lw_cavitation_speed(medium, place.depth, least),
    };
}

lw_whole_point lw_whole_carrying(lw_whole_foil *whole, double speed, double load)
{
    lw_foil_place place = whole->place;
    place.speed = speed;
    const double density = whole->medium->water_density;
    const double alpha = lw_foil_incidence(whole->foil, density, place, load);
    lw_whole_point point = lw_whole_at(whole, speed, alpha);
    if (point.lift >= load * (1.0 - 1e-6)) return point;
    for (size_t i = 0; i < lw_whole_table.count; i++)
        lw_quantity_put(&lw_whole_table.rows[i], &point, NAN);
    point.speed = speed;
    return point;
}

double lw_whole_takes_off(const lw_whole_foil *whole, double load)
{
    const double speed =
        lw_foil_least_speed(whole->foil, whole->medium->water_density, whole->place, load);
    return speed > 0.0 && speed < FASTEST ? speed : NAN;
}

double lw_whole_cavitates(lw_whole_foil *whole, double load)
{
    const double from = lw_whole_takes_off(whole, load);
    double low = 1.0001 * from, high = low;
    for (; high < FASTEST; low = high, high *= 1.02) {
        const lw_whole_point point = lw_whole_carrying(whole, high, load);
        if (point.speed > point.cavitates_at) break;
    }
    if (!(high < FASTEST)) return NAN;
    for (int step = 0; step < 20; step++) {
        const double middle = 0.5 * (low + high);
        const lw_whole_point point = lw_whole_carrying(whole, middle, load);
        *(point.speed > point.cavitates_at ? &high : &low) = middle;
    }
    return high;
}

double lw_whole_waves_below(const lw_whole_foil *whole)
{
    return 3.0 * sqrt(LW_GRAVITY * whole->place.depth);
}
