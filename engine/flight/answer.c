// answer.c - asks into lanes, lanes into answers: the public face of the balance.
// SPDX-License-Identifier: MIT

#include "flight/balance.h"
#include "flight/margins.h"

#include <math.h>

#include "lullwise/elementary.h"

#define AS_OUTCOME_TEXT(name, text) text,
static const char *const outcome_texts[] = {LW_OUTCOME_LIST(AS_OUTCOME_TEXT)};
const char *lw_outcome_text(lw_outcome outcome) { return outcome_texts[outcome]; }

lw_ask lw_ask_of(const lw_craft *craft, const lw_setup *setup, double wind, double heading)
{
    const double going = fmin(fmax(1.3 * wind, 4.5), 10.0);  // a flying boat's usual speed
    return (lw_ask){.wind = wind,
                    .heading = heading,
                    .setup = *setup,
                    .heel = 0.2,
                    .place = 0.5 * (craft->place_aft + craft->place_forward),
                    .level = true,
                    .start = {going, 0.04, 0.35, 0.0, 0.01, 0.8},
                    .rudder = craft->rudder_mark};
}

// Index of a lane's ask: the last ask fills the lanes left over.
static size_t lane_of(size_t first, int lane, size_t n)
{
    const size_t i = first + (size_t)lane;
    return i < n ? i : n - 1;
}

static void pack(const lw_ask *ask, lw_balance_state *state, int i)
{
    lw_pose *p = &state->pose;
    p->speed[i] = ask->start[0];
    p->acceleration[i] = 0.0;
    p->leeway[i] = ask->start[1];
    p->ride_height[i] = ask->start[2];
    p->pitch[i] = ask->start[3];
    p->helm[i] = ask->start[4];
    p->effort[i] = ask->start[5];
    p->rudder_incidence[i] = ask->rudder;
    p->sin_heel[i] = lw_sin(ask->heel);
    p->cos_heel[i] = lw_cos(ask->heel);
    p->place[i] = ask->place;
    p->wind[i] = ask->wind;
    p->sin_heading[i] = lw_sin(ask->heading);
    p->cos_heading[i] = lw_cos(ask->heading);
    p->incidence[i] = ask->setup.incidence;
    p->wand_length[i] = ask->setup.wand_length;
    p->gearing[i] = ask->setup.gearing;
    p->rod[i] = ask->setup.rod;
    state->level[i] = ask->level ? -1 : 0;
    state->towed[i] = ask->towed ? -1 : 0;
}

static lw_flight flight_of(const lw_craft *craft, const lw_ask *ask, const lw_balance_state *s, int i)
{
    const lw_pose *p = &s->pose;
    const lw_loads *l = &s->loads;
    const double V = p->speed[i], effort = p->effort[i];
    const double a_x = l->apparent_x[i], a_y = l->apparent_y[i];
    const double u[3] = {l->through.x[i] / V, l->through.y[i] / V, l->through.z[i] / V};
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
        .sail_power = l->set.power[i],
        .twist = l->set.twist[i],
        .wand = l->linkage.wand[i],
        .flap = l->linkage.flap[i],
        .apparent_wind = sqrt(a_x * a_x + a_y * a_y),
        .apparent_angle = lw_atan2(a_y, -a_x),
        .main_lift = l->main.lift[i],
        .rudder_lift = l->rudder.lift[i],
        .main_side = l->main_strut.side[i],
        .rudder_side = l->rudder_strut.side[i],
        .buoyancy = l->hull.buoyancy[i],
        .drive = air,
        .sail_side = l->sail.across[i],
        .windage = air - sail_air,
        .foil_drag = l->main.drag[i] + l->rudder.drag[i],
        .strut_drag = l->main_strut.drag[i] + l->rudder_strut.drag[i],
        .hull_drag = l->hull.drag[i],
        .main_lift_coefficient = l->main.coefficient[i],
        .rudder_lift_coefficient = l->rudder.coefficient[i],
        .acceleration = p->acceleration[i],
        .residual = s->residual[i],
        .iterations = s->rounds[i],
    };
}

static lw_answer answer_of(const lw_craft *craft, const lw_ask *ask, const lw_balance_state *s, int i)
{
    lw_answer answer = {.outcome = LW_NO_BALANCE};
    if (!(s->residual[i] < LW_RESIDUAL)) {
        answer.flight.wind = ask->wind;
        answer.flight.heading = ask->heading;
        answer.flight.residual = fmin(fabs(s->residual[i]), 1e9);
        answer.flight.iterations = s->rounds[i];
        return answer;
    }
    answer.outcome = s->loads.hull.immersed[i] > 0.0 ? LW_FLOATS : LW_FLIES;
    answer.flight = flight_of(craft, ask, s, i);
    answer.margins = lw_margins_of(craft, s, i);
    return answer;
}

void lw_balance(const lw_craft *craft, const lw_ask *asks, lw_answer *answers, size_t n)
{
    lw_balance_state state;
    for (size_t first = 0; first < n; first += LW_WIDTH) {
        for (int i = 0; i < LW_WIDTH; i++) pack(&asks[lane_of(first, i, n)], &state, i);
        lw_balance_lanes(craft, &state);
        for (int i = 0; i < LW_WIDTH && first + (size_t)i < n; i++) {
            answers[first + (size_t)i] = answer_of(craft, &asks[first + (size_t)i], &state, i);
        }
    }
}

void lw_ask_follow(const lw_craft *craft, lw_ask *ask, const lw_answer *from)
{
    if (from->outcome == LW_NO_BALANCE) return;
    const lw_flight *f = &from->flight;
    const double start[6] = {f->speed, f->leeway, f->ride_height, f->pitch, f->helm, f->effort};
    for (int i = 0; i < 6; i++) ask->start[i] = start[i];
    ask->rudder = craft->rudder_mark + f->turns * craft->rudder_turn;
}
