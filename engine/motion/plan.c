// plan.c - a plan from a balance: where to begin, and a pilot who suits the boat there.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "flight/balance.h"
#include "lullwise/elementary.h"
#include "motion/fleet.h"
#include "motion/gains.h"
#include "motion/wish.h"

#define PATIENCE 2.0  // [s] in which a steady miss is worked off  [judged]

lw_motion lw_motion_of(const lw_craft *craft)
{
    lw_motion motion;
    memset(&motion, 0, sizeof motion);
    motion.craft = craft;
    motion.inertia = lw_inertia_of(craft);
    motion.rules = lw_ride_rules_of(craft->skill);
    return motion;
}

// Way through the water along level axes, turned into the boat's.
static void put_velocity(lw_ride_state *state, double speed, double leeway)
{
    const double s = lw_sin(state->pitch), c = lw_cos(state->pitch);
    const double sh = lw_sin(state->heel), ch = lw_cos(state->heel);
    const double along = speed * lw_cos(leeway), across = speed * lw_sin(leeway);
    state->surge = along * c;
    state->sway = -along * s * sh + across * ch;
    state->heave = -along * s * ch - across * sh;
}

// The state of a balance, the sailor having noticed all of it.
static lw_ride_state state_of(const lw_motion *motion, const lw_ask *ask, const lw_answer *answer)
{
    const lw_craft *craft = motion->craft;
    const lw_flight *f = &answer->flight;
    lw_ride_state state = {
        .heel = f->heel, .pitch = f->pitch, .bow = f->heading - f->leeway, .wand = f->wand};
    put_velocity(&state, f->speed, f->leeway);
    state.height = f->ride_height - craft->main_strut.length * lw_cos(f->pitch) * lw_cos(f->heel);
    state.body = -lw_effort_hike(craft, lw_all(f->effort))[0];
    state.taken = lw_effort_taken(lw_all(f->effort))[0];
    state.helm = f->helm;
    state.rudder = lw_craft_rudder(craft, f->turns);
    state.seen_heel = f->heel;
    state.seen_course = state.bow;
    state.seen_wind = state.felt_wind = state.mean_wind = ask->wind;
    const double depth =
        -(state.height +
          craft->pin_arm * (ask->setup.incidence - craft->pin_middle) * lw_sin(f->pitch));
    state.downwash =
        f->main_lift_coefficient * lw_curve_at(&craft->main_foil.downwash, lw_all(depth))[0];
    return state;
}

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
    plan->rest = state_of(motion, rest, &answer);
    plan->pilot.bow_afloat = plan->rest.bow;
    for (int k = 0; k < LW_WISHES; k++) plan->pilot.wish[k].afloat = plan->rest.heel;
    return answer.flight.effort;
}

// Heel with the windward rack half in the water, as a sailor waits in a lull: upright on her slim hull
// she does not stand by herself. Without racks as a launch begins.
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
    const lw_ride_state rising = state_of(motion, rest, &answer);
    *gains = lw_gains_of(motion, still, &rising, answer.flight.effort);
    return true;
}

// --- in flight

#define MORE_WIND 6

// The flight asked for, or one on the same course in the least wind that has one.
static bool fly_near(const lw_motion *motion, lw_ask *ask, lw_answer *answer)
{
    lw_ask asks[MORE_WIND];
    lw_answer answers[MORE_WIND];
    if (answer->outcome == LW_FLIES) return true;
    for (int i = 0; i < MORE_WIND; i++) {
        asks[i] = lw_ask_of(motion->craft, &ask->setup, ask->wind * (1.1 + 0.15 * i), ask->heading);
        asks[i].start.rudder = lw_ask_rudder(ask);
        asks[i].heel = ask->heel, asks[i].place = ask->place;
    }
    lw_balance(motion->craft, asks, answers, MORE_WIND);
    for (int i = 0; i < MORE_WIND; i++) {
        if (answers[i].outcome != LW_FLIES) continue;
        *ask = asks[i], *answer = answers[i];
        return true;
    }
    return false;
}

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
    const lw_ride_state flying = state_of(motion, ask, answer);
    lw_ride_plan there = *still;
    there.wind = ask->wind;
    return (lw_wish){.heel = flying.heel,
                     .bow = flying.bow,
                     .helm = flying.helm,
                     .pitch = flying.pitch,
                     .afloat = still->rest.heel,
                     .gains = lw_gains_of(motion, &there, &flying, answer->flight.effort)};
}

// In flight: by the wind of some seconds where it is gusty, else as asked. False when no wind has a
// flight.
static bool put_aloft(const lw_motion *motion, const lw_ask *ask, const lw_answer *answer,
                      const lw_ride_plan *still, lw_pilot *pilot)
{
    lw_ask aloft = *ask;
    lw_answer near = *answer;
    if (!fly_near(motion, &aloft, &near)) return false;
    if (motion->is_gusty) {
        const lw_wishes wishes = lw_wishes_by_wind(motion->craft, pilot, &aloft, &near);
        for (int k = wishes.first; k <= wishes.last; k++) {
            pilot->wish[k] = wish_of(motion, still, &wishes.ask[k], &wishes.answer[k]);
        }
        lw_wishes_let_down(pilot, &wishes, waiting_heel(motion->craft, &still->rest));
    } else {
        const lw_wish wish = wish_of(motion, still, &aloft, &near);
        for (int k = 0; k < LW_WISHES; k++) pilot->wish[k] = wish;
    }
    return true;
}

// Grips from the hull to flight. Effort goes evenly with the speed: it must not jump with it.
static void put_gains(const lw_motion *motion, const lw_ask *ask, const lw_answer *answer,
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
    if (!put_aloft(motion, ask, answer, &still, &plan->pilot)) return;

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

lw_ride_plan lw_ride_plan_of(const lw_motion *motion, const lw_ask *ask, const lw_answer *answer)
{
    lw_ride_plan plan;
    memset(&plan, 0, sizeof plan);
    plan.setup = ask->setup;
    plan.wind = ask->wind;
    plan.place = ask->place;
    plan.starts_aloft = answer->outcome == LW_FLIES;
    plan.start = state_of(motion, ask, answer);
    plan.pilot = (lw_pilot){.wind = ask->wind, .patience = 1.0 / PATIENCE};
    for (int k = 0; k < LW_WISHES; k++) plan.pilot.rudder[k] = plan.start.rudder;
    for (int k = 0; k < LW_WISHES; k++) {
        plan.pilot.wish[k] = (lw_wish){.heel = plan.start.heel,
                                       .bow = plan.start.bow,
                                       .helm = plan.start.helm,
                                       .pitch = plan.start.pitch};
    }
    put_gains(motion, ask, answer, &plan);
    if (answer->outcome == LW_NO_BALANCE) plan.start = plan.rest;
    return plan;
}

void lw_ride_plan_wind(lw_ride_plan *plan, const lw_craft *craft, const lw_range *range)
{
    for (int k = 0; k < LW_WISHES; k++) {
        const double turns = lw_range_turns(range, lw_wish_wind(&plan->pilot, k));
        plan->pilot.rudder[k] = lw_craft_rudder(craft, turns);
    }
}
