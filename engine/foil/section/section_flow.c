// section_flow.c - a foil section in the water at an angle: loads, pressures, greatest lift.
// SPDX-License-Identifier: MIT

#include "lullwise/boundary_layer.h"

#include <math.h>

#include "foil/section.h"
#include "foil/section/outline.h"
#include "quantity/tables.h"

#define ROW(member, ...) LW_RESULT(lw_section_point, member, __VA_ARGS__)

// clang-format off
static const lw_quantity rows[] = {
    ROW(alpha,            "alpha", DEG,   2, "angle of attack"),
    ROW(lift,             "c_l",   NONE,  4, "lift"),
    ROW(drag,             "c_d",   NONE,  5, "drag of friction and pressure"),
    ROW(lift_to_drag,     "L/D",   NONE,  1, "lift over drag"),
    ROW(moment,           "c_m",   NONE,  4, "moment about the quarter chord, nose up"),
    ROW(least_pressure,   "C_p",   NONE,  3, "lowest pressure on the surface"),
    ROW(least_at,         "x/c",   NONE,  3, "where that is, in chords from the nose"),
    ROW(transition_above, "x_a",   NONE,  3, "where the layer above turns turbulent"),
    ROW(transition_below, "x_b",   NONE,  3, "where the layer below does"),
    ROW(separation_above, "x_s",   NONE,  3, "where the layer above leaves for good; 1: nowhere"),
    ROW(cavitates_at,     "V_c",   KN,    1, "speed from which the lowest pressure boils water"),
    ROW(left,             "",      NONE,  9, "greatest of what is left of all equations"),
};
// clang-format on
LW_TABLE_COVERS(lw_section_point, rows);

const lw_table lw_section_table = {.key = "polar",
                                   .title = "Section",
                                   .rows = rows,
                                   .count = sizeof rows / sizeof rows[0],
                                   .doc = "A foil section at one angle."};

// The flow with every second of the points given left out, where so many are left.
static bool has_coarse(lw_section_flow *flow, const lw_outline *outline, lw_profile_flap flap)
{
    lw_outline thin;
    return lw_outline_thin(outline, &thin) &&
           lw_profile_of(&thin, flap, LW_PANELS_USUAL, &flow->coarse) == LW_PROFILE_OK &&
           lw_profile_flow_of(&flow->coarse, &flow->room, &flow->about_it) == LW_PROFILE_OK;
}

lw_profile_status lw_section_flow_of(lw_section_flow *flow, const lw_outline *outline,
                                     lw_profile_flap flap)
{
    const lw_profile_status status = lw_profile_of(outline, flap, LW_PANELS_USUAL, &flow->profile);
    if (status != LW_PROFILE_OK) return status;
    flow->has_layer = false;
    flow->has_coarse = has_coarse(flow, outline, flap);
    return lw_profile_flow_of(&flow->profile, &flow->room, &flow->flow);
}

static lw_section_point perfect_at(const lw_section_flow *flow, double alpha)
{
    const lw_profile_load load = lw_profile_load_of(&flow->profile, &flow->flow, alpha);
    return (lw_section_point){.lift = load.lift,
                              .drag = NAN,
                              .moment = load.moment,
                              .least_pressure = load.least_pressure,
                              .least_at = load.least_at,
                              .transition_above = NAN,
                              .transition_below = NAN,
                              .separation_above = NAN,
                              .left = 0.0};
}

// Loads of the perfect fluid are no answer where the layers have none.
static lw_section_point no_answer(void)
{
    return (lw_section_point){NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN, NAN};
}

static lw_layer_conditions conditions_of(lw_section_water water, double alpha)
{
    return (lw_layer_conditions){
        water.reynolds, alpha, water.wave_growth, {water.trip, water.trip}};
}

static bool make_layer(lw_section_flow *flow)
{
    if (!flow->has_layer)
        flow->has_layer = lw_layer_of(&flow->profile, &flow->room, &flow->layer) == LW_PROFILE_OK;
    return flow->has_layer;
}

static lw_section_point point_of(const lw_layer_load *load)
{
    if (load->outcome != LW_LAYER_SETTLED) return no_answer();
    return (lw_section_point){.lift = load->lift,
                              .drag = load->drag,
                              .moment = load->moment,
                              .least_pressure = load->least_pressure,
                              .least_at = load->least_at,
                              .transition_above = load->transition[1],
                              .transition_below = load->transition[0],
                              .separation_above = load->separation[1],
                              .left = load->left};
}

static lw_section_point with_friction(lw_section_flow *flow, lw_section_water water, double alpha)
{
    if (!make_layer(flow)) return no_answer();
    const lw_layer_conditions conditions = conditions_of(water, alpha);
    const lw_layer_load load = lw_layer_load_of(&flow->layer, &conditions);
    return point_of(&load);
}

// With what follows from the loads.
static lw_section_point whole(lw_section_point point, lw_section_water water, double alpha)
{
    point.alpha = alpha;
    point.lift_to_drag = point.lift / point.drag;
    point.cavitates_at = isfinite(point.least_pressure)
                             ? lw_cavitation_speed(water.medium, water.depth, point.least_pressure)
                             : NAN;
    return point;
}

lw_section_point lw_section_point_at(lw_section_flow *flow, lw_section_water water, double alpha)
{
    const lw_section_point point =
        water.reynolds > 0.0 ? with_friction(flow, water, alpha) : perfect_at(flow, alpha);
    return whole(point, water, alpha);
}

lw_section_point lw_section_other(lw_section_flow *flow, lw_section_water water,
                                  const lw_section_point *taken)
{
    if (!(water.reynolds > 0.0) || !isfinite(taken->lift) || !make_layer(flow)) return no_answer();
    const lw_layer_conditions conditions = conditions_of(water, taken->alpha);
    const lw_layer_load root = {.lift = taken->lift, .drag = taken->drag};
    const lw_layer_load load = lw_layer_load_other(&flow->layer, &conditions, &root);
    return whole(point_of(&load), water, taken->alpha);
}

lw_section_point lw_section_pressures(lw_section_flow *flow, lw_section_water water, double alpha,
                                      double pressures[LW_NODES_MOST])
{
    const int count = flow->profile.count;
    const lw_section_point point = lw_section_point_at(flow, water, alpha);
    for (int i = 0; i < count; i++) {
        const double speed = water.reynolds > 0.0 ? flow->layer.state.speed[i]
                                                  : lw_profile_speed(&flow->flow, i, alpha);
        pressures[i] = isfinite(point.lift) ? 1.0 - speed * speed : NAN;
    }
    return point;
}

double lw_section_unsure(const lw_section_flow *flow, double alpha)
{
    double unsure = NAN;
    for (int k = -2; flow->has_coarse && k <= 2; k++) {
        const double at = alpha + k * LW_DEG;
        const lw_profile_load load = lw_profile_load_of(&flow->profile, &flow->flow, at);
        const lw_profile_load other = lw_profile_load_of(&flow->coarse, &flow->about_it, at);
        unsure = fmax(unsure, fabs(other.least_pressure / load.least_pressure - 1.0));
    }
    return unsure;
}

double lw_section_angle(const lw_section_flow *flow, double lift)
{
    double low = -30.0 * LW_DEG, high = 30.0 * LW_DEG;
    for (int step = 0; step < 40; step++) {
        const double alpha = 0.5 * (low + high);
        const lw_profile_load load = lw_profile_load_of(&flow->profile, &flow->flow, alpha);
        *(load.lift > lift ? &high : &low) = alpha;
    }
    return 0.5 * (low + high);
}

lw_layer_stall lw_section_stall(lw_section_flow *flow, lw_section_water water)
{
    const lw_layer_conditions from = conditions_of(water, 0.0);
    if (!make_layer(flow)) return (lw_layer_stall){.cause = LW_STALL_LOST};
    return lw_layer_stall_of(&flow->layer, &from);
}
