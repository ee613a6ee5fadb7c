// plan.c - a plan from a balance: where to begin, and a pilot who suits the boat there.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "flight/balance.h"
#include "lullwise/elementary.h"
#include "motion/fleet.h"
#include "motion/grip.h"

#define PATIENCE 2.0  // [s] in which a steady miss is worked off  [judged]

lw_motion lw_motion_of(const lw_craft *craft)
{
    lw_motion motion;
    memset(&motion, 0, sizeof motion);
    motion.craft = craft;
    motion.inertia = lw_inertia_of(craft);
    motion.rules = lw_ride_rules_preset();
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
    state.body = -lw_pose_hike(craft, lw_all(f->effort))[0];
    state.taken = lw_pose_taken(lw_all(f->effort))[0];
    state.helm = f->helm;
    state.rudder = craft->rudder_mark + f->turns * craft->rudder_turn;
    state.seen_heel = f->heel;
    state.seen_course = state.bow;
    state.seen_wind = ask->wind;
    const double depth =
        -(state.height +
          craft->pin_arm * (ask->setup.incidence - craft->pin_middle) * lw_sin(f->pitch));
    state.wash =
        f->main_lift_coefficient * lw_curve_at(&craft->main_foil.downwash, lw_all(depth))[0];
    return state;
}

// --- on the hull

#define REST_HEEL (8.0 * LW_DEG)  // to windward: a launch begins with it in hand          [judged]
#define REST_REACH \
    (85.0 * LW_DEG)             // heading of a launch, with power to hold the boat by   [judged]
#define REST_SPEED 1.5          // [m/s] under way on the hull, as a launch begins
#define RISE_LOAD  (2.0 / 3.0)  // of the weight on the main foil at C_L 1 as she rises  [judged]
#define RISE_SHARE 0.45         // of the speed of flight, at most                       [judged]

#define REST_TRIES 9

// On the hull at about a speed, towed if need be; false when no start leads there.
static bool afloat(const lw_motion *motion, const lw_ask *rest, double speed, double more,
                   lw_answer *answer)
{
    lw_ask asks[REST_TRIES];
    lw_answer answers[REST_TRIES];
    for (int i = 0; i < REST_TRIES; i++) {
        const double start[6] = {speed + more * (i / 3), 0.1, -0.12, 0.0, 0.0, 0.3 + 0.5 * (i % 3)};
        asks[i] = *rest;
        memcpy(asks[i].start, start, sizeof start);
    }
    lw_balance(motion->craft, asks, answers, REST_TRIES);
    for (int i = 0; i < REST_TRIES; i++) {
        if (answers[i].outcome == LW_NO_BALANCE) continue;
        *answer = answers[i];
        return true;
    }
    return false;
}

// What is asked of a launch: a reach, the rudder as for the flight.
static lw_ask launch_of(const lw_ask *ask, const lw_ride_plan *plan)
{
    lw_ask rest = *ask;
    rest.heading = REST_REACH;
    rest.towed = true, rest.level = false;
    rest.rudder = plan->pilot.rudder;
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
    answer.flight.turns = (rest->rudder - craft->rudder_mark) / craft->rudder_turn;
    afloat(motion, rest, REST_SPEED, 0.5, &answer);
    plan->rest = state_of(motion, rest, &answer);
    plan->pilot.heel_afloat = plan->rest.heel;
    plan->pilot.bow_afloat = plan->rest.bow;
    return answer.flight.effort;
}

// Just before the hull lifts off; the effort is left out.
static bool put_rising(const lw_motion *motion, const lw_ask *rest, const lw_ride_plan *still,
                       double speed, lw_grip *grip)
{
    lw_answer answer;
    if (!afloat(motion, rest, speed, 0.0, &answer)) return false;
    const lw_ride_state rising = state_of(motion, rest, &answer);
    *grip = lw_grip_of(motion, still, &rising, answer.flight.effort);
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
        asks[i].rudder = ask->rudder, asks[i].heel = ask->heel, asks[i].place = ask->place;
    }
    lw_balance(motion->craft, asks, answers, MORE_WIND);
    for (int i = 0; i < MORE_WIND; i++) {
        if (answers[i].outcome != LW_FLIES) continue;
        *ask = asks[i], *answer = answers[i];
        return true;
    }
    return false;
}

#define COURSE_STEP (6.0 * LW_DEG)

// Effort that another course takes in a steady wind [1/rad]; 0 where either is no flight.
static double effort_by_course(const lw_motion *motion, const lw_ask *ask, const lw_flight *f)
{
    lw_ask asks[2];
    lw_answer answers[2];
    const double start[6] = {f->speed, f->leeway, f->ride_height, f->pitch, f->helm, f->effort};
    for (int i = 0; i < 2; i++) {
        asks[i] = *ask;
        asks[i].heading = f->heading + (i ? COURSE_STEP : -COURSE_STEP);
        asks[i].heel = f->heel;
        memcpy(asks[i].start, start, sizeof start);
    }
    lw_balance(motion->craft, asks, answers, 2);
    if (answers[0].outcome != LW_FLIES || answers[1].outcome != LW_FLIES) return 0.0;
    return (answers[1].flight.effort - answers[0].flight.effort) / (2.0 * COURSE_STEP);
}

#define YIELD_FREE   4.0              // power that the course gives back for one that effort does,
#define YIELD_CLOSE  1.0              // off the wind and close to it                       [judged]
#define YIELD_LEAST  6.0              // [1/rad] a course that changes less is not steered by
#define YIELD_COURSE (23.0 * LW_DEG)  // at most, either way                                [judged]

// Up in the lull and down in the puff where that takes power away, else the other way round.
static void steer_for_power(lw_pilot *pilot, double effort_by)
{
    const double part = effort_by > 0.0 ? YIELD_CLOSE : YIELD_FREE;
    pilot->yield = -part * effort_by / (effort_by * effort_by + YIELD_LEAST * YIELD_LEAST);
    pilot->most_yield = YIELD_COURSE;
}

static lw_grip grip_between(const lw_grip *a, const lw_grip *b, double part)
{
    lw_grip grip;
    for (size_t i = 0; i < sizeof grip / sizeof(double); i++) {
        const double from = ((const double *)a)[i], to = ((const double *)b)[i];
        ((double *)&grip)[i] = from + part * (to - from);
    }
    return grip;
}

// Grips from the hull to flight. Effort goes evenly with the speed: it must not jump with it.
static void put_grips(const lw_motion *motion, const lw_ask *ask, const lw_answer *answer,
                      lw_ride_plan *plan)
{
    const lw_craft *craft = motion->craft;
    const lw_grip loose = {.speed = 1.0};
    const lw_ask rest = launch_of(ask, plan);
    const double rest_effort = put_rest(motion, &rest, plan);
    lw_ride_plan still = *plan;  // with a pilot who holds all as it is
    lw_grip_everywhere(&still.pilot, &loose);
    const lw_grip slow = lw_grip_of(motion, &still, &plan->rest, rest_effort);
    lw_grip_everywhere(&plan->pilot, &slow);

    lw_ask aloft = *ask;
    lw_answer near = *answer;
    if (!fly_near(motion, &aloft, &near)) return;
    const lw_ride_state flying = state_of(motion, &aloft, &near);
    const double lift = craft->medium.water_density * craft->main_foil.area;
    const double speed =
        fmin(sqrt(2.0 * RISE_LOAD * craft->weight / lift), RISE_SHARE * flying.surge);
    lw_grip *grip = plan->pilot.grip;
    still.wind = aloft.wind;
    grip[2] = lw_grip_of(motion, &still, &flying, near.flight.effort);
    still.wind = plan->wind;
    const double part = (speed - slow.speed) / fmax(flying.surge - slow.speed, 0.1);
    grip[1] = grip_between(&slow, &grip[2], fmin(fmax(part, 0.0), 1.0));
    const lw_grip even = grip[1];
    if (put_rising(motion, &rest, &still, speed, &grip[1])) {
        grip[1].speed = even.speed, grip[1].effort = even.effort;
    }
    plan->pilot.flight = flying.surge;
    plan->pilot.wind = aloft.wind;
    steer_for_power(&plan->pilot, effort_by_course(motion, &aloft, &near.flight));
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
    plan.pilot = (lw_pilot){.heel = plan.start.heel,
                            .bow = plan.start.bow,
                            .helm = plan.start.helm,
                            .rudder = plan.start.rudder,
                            .wind = ask->wind,
                            .patience = 1.0 / PATIENCE};
    put_grips(motion, ask, answer, &plan);
    if (answer->outcome == LW_NO_BALANCE) plan.start = plan.rest;
    return plan;
}
