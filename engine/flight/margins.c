// margins.c - what is left before something gives, in natural units, and what gives first.
// SPDX-License-Identifier: MIT

#include "flight/margins.h"

#include <math.h>

#include "foil/section.h"
#include "lullwise/elementary.h"

#define STOP_EDGE (0.5 * LW_DEG)  // a stop's rounding stands this far out (linkage.h)

// How much of each margin counts as one: what a sailor would call "a little".  [judged]
static const lw_margins scale = {.flap_up = 2.0 * LW_DEG,
                                 .flap_down = 2.0 * LW_DEG,
                                 .wand_forward = 4.0 * LW_DEG,
                                 .tip_depth = 0.5,
                                 .rudder_tip = 0.5,
                                 .clearance = 0.05,
                                 .pressure = 0.2,
                                 .main_stall = 2.0 * LW_DEG,
                                 .rudder_stall = 2.0 * LW_DEG,
                                 .ventilation = 3.0 * LW_DEG,
                                 .helm = 5.0 * LW_DEG,
                                 .thread = 0.5,
                                 .heel = 2.0 * LW_DEG,
                                 .power = 0.2};

static double at(const lw_margins *margins, size_t i) { return ((const double *)margins)[i]; }

// Depth of the higher tip below the chop's trough, less the half chord in which lift turns
// abrupt [benson-land-1942].
static double tip_depth(const lw_foil_craft *foil, double depth, double rise, double trough)
{
    return (depth - rise - trough) / foil->chord - 0.5;
}

// Angle between now and the stall, either way.
static double stall_left(lw_foil_load load, int i)
{
    const double share = fabs(load.load_share[i]), angle = fabs(load.angle[i]);
    return share > 1e-6 ? angle / share - angle : LW_PI / 2.0;
}

// The angles between which struts stay ventilated, so deep at so much speed.
static void stays_of(const lw_strut_craft *strut, const lw_lanes *depth, const lw_lanes *speed,
                     lw_lanes *stays)
{
    lw_lanes aspect, number;
    LW_EACH_LANE (i) {
        const double h = fmin(fmax((*depth)[i], 0.02), strut->length);
        aspect[i] = h / strut->chord;
        number[i] = lw_ventilation_number(h, (*speed)[i]);
    }
    lw_ventilation_stays(&aspect, &number, stays);
}

static void air_of(const lw_craft *craft, const lw_pose *p, const lw_loads *l,
                   lw_strut_air air[LW_WIDTH])
{
    lw_lanes at_main, at_rudder;
    stays_of(&craft->main_strut, &l->inflow.main.depth, &p->speed, &at_main);
    stays_of(&craft->rudder_strut, &l->inflow.rudder.depth, &p->speed, &at_rudder);
    LW_EACH_LANE (i) {
        const lw_strut_air main = {fabs(l->main_strut.angle[i]), lw_ventilation_at(at_main[i])};
        const lw_strut_air rudder = {fabs(l->rudder_strut.angle[i]),
                                     lw_ventilation_at(at_rudder[i])};
        const bool is_main = main.limit.forms - main.angle < rudder.limit.forms - rudder.angle;
        air[i] = is_main ? main : rudder;
    }
}

LW_CLONES
void lw_limits_of(const lw_craft *craft, const lw_pose *p, const lw_loads *l, lw_limits *limits)
{
    const lw_foil_craft *main = &craft->main_foil, *rudder = &craft->rudder_foil;
    limits->main_pressure = lw_foil_least_pressure(main, l->main.coefficient, l->inflow.main.flap);
    limits->rudder_pressure = lw_foil_least_pressure(rudder, l->rudder.coefficient, lw_all(0.0));
    air_of(craft, p, l, limits->air);
}

// Cavitation number above the lowest pressure.
static double pressure_left(const lw_craft *craft, double depth, double speed, double lowest)
{
    return lw_cavitation_number(&craft->medium, depth, speed) + lowest;
}

lw_margins lw_margins_of(const lw_craft *craft, const lw_pose *p, const lw_loads *l,
                         const lw_limits *limits, int i)
{
    const lw_strut_air *air = &limits->air[i];
    const lw_linkage_craft *k = &craft->linkage;
    const double flap = l->inflow.main.flap[i], V = p->speed[i], pitch = p->pitch[i];
    const double trough = lw_curve_at(&craft->trough, lw_all(p->wind[i]))[0];
    const double main_depth = l->inflow.main.depth[i], rudder_depth = l->inflow.rudder.depth[i];
    const double turns = (p->rudder_incidence[i] - craft->rudder_mark) / craft->rudder_turn;
    const double ends = fmin(craft->transom_x * pitch, craft->bow_x * pitch);
    return (lw_margins){
        .flap_up = flap - k->flap_up_stop - STOP_EDGE,
        .flap_down = k->flap_down_stop - flap - STOP_EDGE,
        .wand_forward = l->inflow.wand[i] - k->forward_stop - STOP_EDGE,
        .tip_depth = tip_depth(&craft->main_foil, main_depth, l->inflow.main.tip_rise[i], trough),
        .rudder_tip =
            tip_depth(&craft->rudder_foil, rudder_depth, l->inflow.rudder.tip_rise[i], trough),
        .clearance = p->ride_height[i] + ends,
        .pressure = fmin(pressure_left(craft, main_depth, V, limits->main_pressure[i]),
                         pressure_left(craft, rudder_depth, V, limits->rudder_pressure[i])),
        .main_stall = stall_left(l->main, i),
        .rudder_stall = stall_left(l->rudder, i),
        .ventilation = air->limit.forms - air->angle,
        .thread = fmin(turns - craft->least_turns, craft->most_turns - turns),
        .heel = lw_asin(p->sin_heel[i]) - craft->least_heel,
        .helm = craft->helm_limit - fabs(p->helm[i]),
        .power = fmin(1.0, 2.0 - p->effort[i]),
    };
}

double lw_margins_scale(size_t row) { return at(&scale, row); }

size_t lw_margins_first(const lw_margins *margins)
{
    size_t first = 0;
    for (size_t i = 1; i < LW_MARGIN_COUNT; i++) {
        if (at(margins, i) / at(&scale, i) < at(margins, first) / at(&scale, first)) first = i;
    }
    return first;
}

double lw_margins_overdrawn(const lw_margins *margins)
{
    double sum = 0.0;
    for (size_t i = 0; i < LW_MARGIN_COUNT; i++) {
        sum += fmax(0.0, -at(margins, i) / at(&scale, i));
    }
    return sum;
}

#define GRAIN 0.05  // of a scale  [judged]

bool lw_margins_hold(const lw_margins *margins) { return lw_margins_overdrawn(margins) <= GRAIN; }

bool lw_answer_is_up(const lw_answer *answer)
{
    return answer->outcome == LW_FLIES && answer->margins.clearance >= 0.0;
}

bool lw_answer_is_kept(const lw_answer *answer)
{
    return lw_answer_is_up(answer) && lw_margins_hold(&answer->margins);
}

bool lw_answer_rides_out(const lw_answer *answer)
{
    return answer->outcome == LW_FLOATS || lw_answer_is_kept(answer);
}
