// made_states.h - boats with one thing wrong, ridden through gusts and chop, and what is seen of
// them.
// SPDX-License-Identifier: MIT
//
// The invented demo boat, sailors of 50 to 95 kg, 9 to 19 kn with lulls a fifth below and puffs a
// quarter above the mean, three courses. The sailor does not know of what is wrong: she sails by
// the heel and the course that suit the boat as it should be, and stays where she sits.

#ifndef LW_TEST_MADE_STATES_H
#define LW_TEST_MADE_STATES_H

#include <math.h>
#include <string.h>

#include "lullwise/diagnosis.h"
#include "lullwise/swims.h"
#include "solve/curve.h"
#include "test/demo.h"
#include "test/random.h"

#define SAILORS 10
static lw_craft crafts[SAILORS], fuller;

static void prepare_crafts(void)
{
    const lw_medium medium = lw_medium_of(&demo.day);
    for (int i = 0; i < SAILORS; i++) {
        lw_person person = demo.sailor.person;
        person.mass = 50.0 + 5.0 * i;
        lw_craft_prepare(&crafts[i], &demo.boat, &demo.sections, &person, &medium);
    }
}

static lw_wind wind_of(double knots)
{
    lw_wind wind = demo.day.wind;
    wind.lull = 0.8 * knots * LW_KN;
    wind.mean = knots * LW_KN;
    wind.puff = 1.24 * knots * LW_KN;
    return wind;
}

// --- what is measured on a ride

#define SECONDS 60.0
#define LOOK    0.2  // [s]
#define SETTLES 6.0  // [s] not looked at
#define BAND    0.6  // of the way from the mean to lull or puff: beyond it is one

typedef struct measured {
    double pitch, height, wand, speed;     // means in flight
    lw_seen seen;                          // sums, then means, of what lull and puff show
    double flying, lulls, puffs, in_lull;  // looks
    double count[LW_RIDE_EVENTS];
} measured;

static double margin_of(const lw_foil_craft *foil, double tip, double trough)
{
    return (tip - trough) / foil->chord - 0.5;
}

static void look_in_puff(measured *m, const lw_craft *craft, double gearing, const lw_trace *x)
{
    const double trough = lw_curve_at(&craft->trough, lw_all(x->wind))[0];
    const double forward = x->wand - craft->linkage.forward_stop;
    const double up = (x->flap - craft->linkage.flap_up_stop) / gearing;
    m->puffs++;
    m->seen.travel += fmin(forward, up);
    m->seen.tip += margin_of(&craft->main_foil, x->tip_depth, trough);
    m->seen.stern_tip += margin_of(&craft->rudder_foil, x->rudder_tip, trough);
}

static void look_in_lull(measured *m, const lw_craft *craft, const lw_trace *x)
{
    const double ends = fmin(craft->transom_x * x->pitch, craft->bow_x * x->pitch);
    m->lulls++;
    m->seen.clearance += x->ride_height + ends;
    m->seen.lift_left += craft->linkage.flap_down_stop - x->flap;
    m->seen.sitting += x->hiking;
}

static void look_at(measured *m, const lw_motion *motion, const lw_ride *ride, const lw_wind *wind)
{
    const lw_trace x = lw_ride_trace(motion, ride);
    const bool flies = lw_ride_stands(ride) == LW_STANDS_FLYING;
    const bool is_lull = x.wind < wind->mean - BAND * (wind->mean - wind->lull);
    const bool is_puff = x.wind > wind->mean + BAND * (wind->puff - wind->mean);
    m->in_lull += is_lull;
    if (!flies) return;
    m->flying++;
    m->pitch += x.pitch, m->height += x.ride_height, m->wand += x.wand, m->speed += x.speed;
    if (is_lull) look_in_lull(m, motion->craft, &x);
    if (!is_puff) return;
    look_in_puff(m, motion->craft, ride->plan.setup.gearing, &x);
    m->seen.power_left += 1.0 - lw_ride_now(ride).taken;
}

static void mean_of(measured *m)
{
    const double n = fmax(m->flying, 1.0), puffs = fmax(m->puffs, 1.0), lulls = fmax(m->lulls, 1.0);
    m->pitch /= n, m->height /= n, m->wand /= n, m->speed /= n;
    m->seen.travel /= puffs, m->seen.tip /= puffs, m->seen.stern_tip /= puffs;
    m->seen.power_left /= puffs;
    m->seen.clearance /= lulls, m->seen.lift_left /= lulls, m->seen.sitting /= lulls;
    if (m->in_lull > 0.0 && m->lulls == 0.0) m->seen.lift_left = -0.2;  // down in each of them
    m->seen.hump = m->seen.damping = NAN;
}

// --- a ride with a stance, by a sailor who thinks that she has her pin's own

static lw_motion motion_for(const lw_craft *craft, const lw_wind *wind)
{
    lw_day day = demo.day;
    lw_motion motion = lw_motion_of(craft);
    day.wind = *wind;
    const lw_weather weather = lw_weather_of(craft, &day);
    lw_weather_put(&weather, wind->mean, &motion);
    motion.parameters.forward_pace = 0.0;
    return motion;
}

static lw_ride_plan plan_for_stance(const lw_scene *scene, const lw_motion *motion,
                                    const lw_stance *stance)
{
    const lw_craft *craft = motion->craft;
    const lw_stance *own = &scene->own[stance->pin];
    const lw_levers *is = &stance->levers;
    const double more = (is->turns - own->levers.turns) * craft->rudder_turn;
    lw_ride_plan plan =
        lw_ride_plan_of(motion, &scene->asks[stance->pin][LW_IN_MEAN], &own->at[LW_IN_MEAN]);
    plan.setup = lw_levers_setup(is);
    plan.place = is->place + craft->transom_x;
    plan.start.rudder += more;
    for (int k = 0; k < LW_WISHES; k++) plan.pilot.rudder[k] += more;
    return plan;
}

static measured ridden(const lw_scene *scene, const lw_stance *stance, uint64_t seed)
{
    static lw_ride ride;
    measured m = {0};
    const lw_craft *craft = lw_levers_craft(&stance->levers, scene->craft, &fuller);
    const lw_motion motion = motion_for(craft, &scene->wind);
    lw_ride_plan plan = plan_for_stance(scene, &motion, stance);
    plan.seed = seed;
    lw_ride_begin(&ride, &motion, &plan);
    for (double t = 0.0; t < SECONDS; t += LOOK) {
        lw_rides_advance(&motion, &ride, 1, (size_t)(LOOK / motion.parameters.step + 0.5));
        if (t > SETTLES) look_at(&m, &motion, &ride, &scene->wind);
    }
    memcpy(m.count, ride.tally.count, sizeof m.count);
    mean_of(&m);
    return m;
}

// --- what a sailor tells of it

// What happens more often than to the boat beside her.
static lw_sign_set events_told(const double count[LW_RIDE_EVENTS],
                               const double beside[LW_RIDE_EVENTS])
{
    static const struct {
        lw_ride_what what;
        lw_sign sign;
    } list[] = {{LW_RIDE_BREACH, LW_SIGN_BREACHES},  {LW_RIDE_FOIL_AIR, LW_SIGN_BOW_DROPS},
                {LW_RIDE_RUDDER_AIR, LW_SIGN_SPINS}, {LW_RIDE_BLADE_AIR, LW_SIGN_SPINS},
                {LW_RIDE_SPIN, LW_SIGN_SPINS},       {LW_RIDE_TOUCH, LW_SIGN_TOUCHES},
                {LW_RIDE_DROP, LW_SIGN_DROPS},       {LW_RIDE_LEEWARD, LW_SIGN_LEEWARD},
                {LW_RIDE_WINDWARD, LW_SIGN_WINDWARD}};
    lw_sign_set set = 0;
    for (size_t i = 0; i < sizeof list / sizeof list[0]; i++) {
        if (count[list[i].what] > beside[list[i].what]) set |= LW_SIGN_BIT(list[i].sign);
    }
    return set;
}

static lw_sign_set shown_by(const lw_seen *seen)
{
    lw_sign_set set = 0;
    for (int s = 0; s < LW_SIGNS; s++) {
        if (lw_sign_chance((lw_sign)s, seen) > 0.5) set |= LW_SIGN_BIT(s);
    }
    return set;
}

// Beside a boat with her pin's own trim, and one with the pin that fits the wind best, both in the
// same gusts.
static lw_sign_set told_of(const measured *m, const measured *own, const measured *fair)
{
    lw_seen seen = m->seen;
    seen.bow = m->pitch - own->pitch;
    seen.level = m->pitch;
    seen.height = m->height - fair->height;
    seen.speed = m->speed / fair->speed - 1.0;
    return shown_by(&seen) | events_told(m->count, fair->count);
}

static double normal_draw(random_stream *stream)
{
    double sum = -6.0;
    for (int i = 0; i < 12; i++) sum += random_between(stream, 0.0, 1.0);
    return sum;
}

// What a photo reads of it, as well as the engine says that one does.
static void read_photo(const measured *m, random_stream *stream, lw_signs_seen *seen)
{
    const lw_flight mean = {.pitch = m->pitch, .ride_height = m->height, .wand = m->wand};
    for (int eye = LW_EYE_BOW; eye <= LW_EYE_WAND; eye++) {
        const double error = lw_eye_error((lw_eye)eye);
        seen->has[eye] = true;
        seen->read[eye] = lw_eye_of((lw_eye)eye, &mean) + error * normal_draw(stream);
    }
}

#endif
