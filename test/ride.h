// ride.h - rides of the preset boat for tests.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_RIDE_H
#define LW_TEST_RIDE_H

#include <string.h>

#include "lullwise/motion.h"
#include "lullwise/trim.h"
#include "test/preset.h"

// A balance in flight that all rides of a test start from or come back to.
typedef struct flown {
    lw_craft craft;
    lw_motion motion;
    lw_ask ask;
    lw_answer answer;
    lw_ride_plan plan;
} flown;

// The preset boat with a pin in a wind [kn] on a heading [deg], trimmed with the bow level. Filled
// in place, as the motion points at the craft beside it.
static inline void flown_fill(flown *f, int pin, double wind_kn, double heading_deg)
{
    f->craft = preset_craft();
    const lw_setup setup = preset_setup(&f->craft, pin);
    const double course = heading_deg * LW_DEG;
    f->ask = lw_ask_of(&f->craft, &setup, wind_kn * LW_KN, course);
    const lw_freedom free = {
        .by = LW_BY_LEVEL, .heel = true, .place = true, .turns = true, .course = course};
    const lw_trim trim = lw_trim_of(&f->craft, &f->ask, &free);
    f->ask = trim.ask, f->answer = trim.steady;
    f->motion = lw_motion_of(&f->craft);
    f->plan = lw_ride_plan_of(&f->motion, &f->ask, &f->answer);
}

// Gusts about the plan's wind, and the chop they raise.
static inline void flown_stir(flown *f, double swing)
{
    lw_day day;
    lw_record_preset(&lw_day_record, &day);
    lw_gust_kind gust = lw_gust_kind_of(&day, f->craft.sail.centre_height);
    gust.mean = f->plan.wind;
    gust.lull = (1.0 - swing) * gust.mean, gust.puff = (1.0 + swing) * gust.mean;
    f->motion.is_gusty = f->motion.is_choppy = true;
    f->motion.gust = lw_gust_filter_of(gust, f->motion.parameters.step);
    f->motion.sea = lw_sea_kind_of(&f->craft.medium, gust.mean);
}

// The sailor holds all as it is.
static inline void flown_let_go(flown *f)
{
    const lw_gains none = {.speed = 1.0, .effort = f->answer.flight.effort};
    lw_gains_everywhere(&f->plan.pilot, &none);
    f->motion.parameters.forward_pace = 0.0;
}

static inline lw_ride_state ridden(const flown *f, double seconds)
{
    lw_ride ride = {.events = NULL};
    lw_ride_begin(&ride, &f->motion, &f->plan);
    lw_rides_advance(&f->motion, &ride, 1, (size_t)(seconds / f->motion.parameters.step + 0.5));
    return lw_ride_now(&ride);
}

#endif
