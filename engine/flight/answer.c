// answer.c - balances as answers: flights, how they end, their margins.
// SPDX-License-Identifier: MIT

#include "flight/balance.h"
#include "flight/margins.h"

#include <math.h>

#include "lullwise/elementary.h"

#define AS_OUTCOME_TEXT(name, text) text,
static const char *const outcome_texts[] = {LW_OUTCOME_LIST(AS_OUTCOME_TEXT)};
const char *lw_outcome_text(lw_outcome outcome) { return outcome_texts[outcome]; }

// Boats that were balanced, one in each lane.
typedef struct balanced {
    const lw_craft *craft;
    lw_pose pose;
    lw_loads loads;
    lw_limits limits;
} balanced;

static lw_flight flight_of(const balanced *b, const lw_ask *ask, const lw_strut_air *strut, int i)
{
    const lw_craft *craft = b->craft;
    const lw_pose *p = &b->pose;
    const lw_loads *l = &b->loads;
    const double V = p->speed[i], effort = p->effort[i];
    const double a_x = l->inflow.sail_wind.x[i], a_y = l->inflow.sail_wind.y[i];
    const lw_vector through = l->inflow.through;
    const double u[3] = {through.x[i] / V, through.y[i] / V, through.z[i] / V};
    const double sail_air = l->sail.along[i] * u[0] + l->sail.across[i] * u[1];
    const double air = l->air.x[i] * u[0] + l->air.y[i] * u[1] + l->air.z[i] * u[2];
    return (lw_flight){
        .wind = ask->wind,
        .heading = ask->heading,
        .speed = V,
        .vmg = V * p->cos_heading[i],
        .leeway = p->leeway[i],
        .ride_height = p->ride_height[i],
        .pitch = p->pitch[i],
        .heel = ask->heel,
        .place_x = ask->place - craft->transom_x,
        .turns = (p->rudder_incidence[i] - craft->rudder_mark) / craft->rudder_turn,
        .helm = p->helm[i],
        .effort = effort,
        .hiking = fmin(effort, 1.0),
        .sail_power = l->inflow.set.power[i],
        .twist = l->inflow.set.twist[i],
        .wand = l->inflow.wand[i],
        .flap = l->inflow.main.flap[i],
        .apparent_wind = sqrt(a_x * a_x + a_y * a_y),
        .apparent_angle = lw_atan2(a_y, -a_x),
        .main_lift = l->main.lift[i],
        .rudder_lift = l->rudder.lift[i],
        .main_side = l->main_strut.side[i],
        .rudder_side = l->rudder_strut.side[i],
        .buoyancy = l->hull.buoyancy[i] + l->racks[i],
        .drive = air,
        .sail_side = l->sail.across[i],
        .windage = air - sail_air,
        .foil_drag = l->main.drag[i] + l->rudder.drag[i],
        .strut_drag = l->main_strut.drag[i] + l->rudder_strut.drag[i],
        .hull_drag = l->hull.drag[i],
        .main_lift_coefficient = l->main.coefficient[i],
        .rudder_lift_coefficient = l->rudder.coefficient[i],
        .strut_angle = strut->angle,
        .air_stays = strut->limit.stays,
        .acceleration = p->acceleration[i],
    };
}

static double number_or_zero(double x) { return isfinite(x) ? x : 0.0; }

// What a solution says; where no balance was found, only the question and how near it came.
static lw_answer answer_of(const balanced *b, const lw_ask *ask, const lw_solution *solution, int i)
{
    lw_answer answer = {.outcome = LW_NO_BALANCE};
    answer.flight.wind = number_or_zero(ask->wind);
    answer.flight.heading = number_or_zero(ask->heading);
    if (solution->residual < LW_RESIDUAL) {
        answer.outcome = b->loads.hull.immersed[i] > 0.0 ? LW_FLOATS : LW_FLIES;
        answer.flight = flight_of(b, ask, &b->limits.air[i], i);
        answer.margins = lw_margins_of(b->craft, &b->pose, &b->loads, &b->limits, i);
    }
    answer.flight.residual = solution->residual < 1e9 ? solution->residual : 1e9;  // NaN too
    answer.flight.iterations = solution->iterations;
    return answer;
}

static void answer_some(const lw_craft *craft, const lw_ask *asks, const lw_solution *solutions,
                        lw_answer *answers, size_t n)
{
    balanced b;
    b.craft = craft;
    LW_EACH_LANE (i) {
        const size_t k = (size_t)i < n ? (size_t)i : n - 1;
        lw_pose_put(&b.pose, i, &asks[k]);
        lw_pose_settle(&b.pose, i, &asks[k], &solutions[k]);
    }
    lw_pose_all_loads(craft, &b.pose, &b.loads);
    lw_limits_of(craft, &b.pose, &b.loads, &b.limits);
    for (size_t i = 0; i < n; i++) answers[i] = answer_of(&b, &asks[i], &solutions[i], (int)i);
}

#define BATCH 64  // asks solved before their answers are written out

static void balance(const lw_craft *craft, const lw_ask *asks, bool are_akin, lw_answer *answers,
                    size_t n)
{
    lw_solution solutions[BATCH];
    for (size_t first = 0; first < n; first += BATCH) {
        const size_t some = n - first < BATCH ? n - first : BATCH;
        lw_solve(craft, asks + first, are_akin, solutions, some);
        for (size_t k = 0; k < some; k += LW_WIDTH) {
            const size_t few = some - k < LW_WIDTH ? some - k : LW_WIDTH;
            answer_some(craft, asks + first + k, solutions + k, answers + first + k, few);
        }
    }
}

void lw_balance(const lw_craft *craft, const lw_ask *asks, lw_answer *answers, size_t n)
{
    balance(craft, asks, false, answers, n);
}

void lw_balance_akin(const lw_craft *craft, const lw_ask *asks, lw_answer *answers, size_t n)
{
    balance(craft, asks, true, answers, n);
}

double lw_flight_made_good(const lw_flight *flight, double course)
{
    return flight->speed * lw_cos(flight->heading - course);
}

void lw_ask_follow(const lw_craft *craft, lw_ask *ask, const lw_answer *from)
{
    if (from->outcome == LW_NO_BALANCE) return;
    const lw_flight *f = &from->flight;
    const double rudder = lw_craft_rudder(craft, f->turns);
    ask->given = (lw_ask_given){.speed = f->speed, .pitch = f->pitch, .rudder = rudder};
    ask->start = (lw_ask_start){.speed = f->speed,
                                .leeway = f->leeway,
                                .ride_height = f->ride_height,
                                .pitch = f->pitch,
                                .rudder = rudder,
                                .helm = f->helm,
                                .effort = f->effort};
}

lw_ask lw_ask_as(const lw_craft *craft, const lw_setup *setup, const lw_answer *answer)
{
    const lw_flight *f = &answer->flight;
    lw_ask ask = lw_ask_of(craft, setup, f->wind, f->heading);
    lw_ask_follow(craft, &ask, answer);
    ask.heel = f->heel;
    ask.place = f->place_x + craft->transom_x;
    return ask;
}
