// set_up.c - pilot set-up: a pilot who suits the boat in a flight, from the hull on.
// SPDX-License-Identifier: MIT

#include "motion/sailor/set_up.h"

#include <math.h>

#include "lullwise/elementary.h"
#include "motion/initial.h"
#include "motion/sailor/gains.h"
#include "motion/sailor/wish.h"

// --- on the hull

#define REST_HEEL (4.0 * LW_DEG)  // to windward: a launch begins with it in hand          [judged]
#define REST_REACH \
    (80.0 * LW_DEG)       // heading of a launch, with power to hold the boat by   [judged]
#define REST_SPEED   1.5  // [m/s] under way on the hull, as a launch begins
#define WAITING_MOST (20.0 * LW_DEG)  // heel                                             [judged]
#define RISE_LOAD    (2.0 / 3.0)  // of the weight on the main foil at C_L 1 as she rises  [judged]
#define RISE_SHARE   0.45         // of the speed of flight, at most                       [judged]

// What is asked of a launch: a reach, the rudder as for the flight.
static lw_ask launch_of(const lw_ask *ask, const lw_ride_plan *plan)
{
    lw_ask rest = *ask;
    rest.heading = REST_REACH;
    lw_ask_give_speed(&rest, REST_SPEED);
    lw_ask_give_rudder(&rest, plan->pilot.rudder[LW_WISH_MEAN]);
    rest.heel = REST_HEEL;
    return rest;
}

// With a little way on. Returns the effort there.
static double put_rest(const lw_motion *motion, const lw_ask *rest, lw_ride_plan *plan)
{
    const lw_craft *craft = motion->craft;
    lw_answer answer = {.flight = {.speed = REST_SPEED,
                                   .heading = rest->heading,
                                   .ride_height = -0.12,
                                   .heel = rest->heel,
                                   .effort = 1.2,
                                   .wand = craft->linkage.aft_stop}};
    answer.flight.turns = (rest->given.rudder - craft->rudder_mark) / craft->rudder_turn;
    const lw_answer found = lw_afloat(craft, rest, REST_SPEED, REST_SPEED + 1.0);
    if (found.outcome != LW_NO_BALANCE) answer = found;
    plan->rest = lw_initial_state(motion, rest, &answer);
    plan->pilot.bow_afloat = plan->rest.bow;
    for (int k = 0; k < LW_WISHES; k++) plan->pilot.wish[k].afloat = plan->rest.heel;
    return answer.flight.effort;
}

// Heel with the windward rack half in the water, as a sailor waits in a lull: upright on her slim
// hull she does not stand by herself. Without racks as a launch begins.
static double waiting_heel(const lw_craft *craft, const lw_ride_state *rest)
{
    const lw_rack_craft *rack = &craft->rack;
    if (rack->volume <= 0.0) return rest->heel;
    const double above = rest->height + rack->z;
    return fmin(fmax(lw_atan2(above, rack->y), rest->heel), WAITING_MOST);
}

// Just before the hull lifts off; the effort is left out.
static bool put_rising(const lw_motion *motion, const lw_ask *rest, const lw_ride_plan *still,
                       double speed, lw_gains *gains)
{
    const lw_answer answer = lw_afloat(motion->craft, rest, speed, speed);
    if (answer.outcome == LW_NO_BALANCE) return false;
    const lw_ride_state rising = lw_initial_state(motion, rest, &answer);
    *gains = lw_gains_of(motion, still, &rising, answer.flight.effort);
    return true;
}

// --- in flight

static lw_gains gains_between(const lw_gains *a, const lw_gains *b, double part)
{
    lw_gains gains;
    for (int i = 0; i < LW_GAINS; i++) {
        gains.at[i] = a->at[i] + part * (b->at[i] - a->at[i]);
    }
    return gains;
}

// What is wanted in a flight, and how it is held.
static lw_wish wish_of(const lw_motion *motion, const lw_ride_plan *still, const lw_ask *ask,
                       const lw_answer *answer)
{
    const lw_ride_state flying = lw_initial_state(motion, ask, answer);
    lw_ride_plan there = *still;
    there.wind = ask->wind;
    return (lw_wish){.heel = flying.heel,
                     .bow = flying.bow,
                     .helm = flying.helm,
                     .pitch = flying.pitch,
                     .afloat = still->rest.heel,
                     .gains = lw_gains_of(motion, &there, &flying, answer->flight.effort)};
}

// In flight: by the wind of some seconds where it is gusty, else as in the one flight. False when
// no wind has a flight.
static bool put_aloft(const lw_motion *motion, const lw_wishes *wishes, const lw_ride_plan *still,
                      lw_pilot *pilot)
{
    if (wishes->last < wishes->first) return false;
    for (int k = wishes->first; k <= wishes->last; k++) {
        pilot->wish[k] = wish_of(motion, still, &wishes->ask[k], &wishes->answer[k]);
    }
    if (motion->is_gusty) {
        lw_wishes_let_down(pilot, wishes, waiting_heel(motion->craft, &still->rest));
    } else {
        for (int k = 0; k < LW_WISHES; k++) pilot->wish[k] = pilot->wish[wishes->first];
    }
    return true;
}

void lw_pilot_set_up(const lw_motion *motion, const lw_ask *ask, const lw_wishes *wishes,
                     lw_ride_plan *plan)
{
    const lw_craft *craft = motion->craft;
    const lw_gains loose = {.speed = 1.0};
    const lw_ask rest = launch_of(ask, plan);
    const double rest_effort = put_rest(motion, &rest, plan);
    lw_ride_plan still = *plan;  // with a pilot who holds all as it is
    lw_gains_everywhere(&still.pilot, &loose);
    const lw_gains slow = lw_gains_of(motion, &still, &plan->rest, rest_effort);
    lw_gains_everywhere(&plan->pilot, &slow);
    if (!put_aloft(motion, wishes, &still, &plan->pilot)) return;

    const lw_gains *flight = &plan->pilot.wish[LW_WISH_MEAN].gains;
    const double lift = craft->medium.water_density * craft->main_foil.area;
    const double speed =
        fmin(sqrt(2.0 * RISE_LOAD * craft->weight / lift), RISE_SHARE * flight->speed);
    const double part = (speed - slow.speed) / fmax(flight->speed - slow.speed, 0.1);
    const lw_gains even = gains_between(&slow, flight, fmin(fmax(part, 0.0), 1.0));
    lw_gains *rising = &plan->pilot.rising;
    *rising = even;
    if (put_rising(motion, &rest, &still, speed, rising)) {
        rising->speed = even.speed, rising->effort = even.effort;
    }
    plan->pilot.flight = flight->speed;
}
