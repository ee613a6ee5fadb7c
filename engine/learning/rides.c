// rides.c - rides through gusts and chop, and what a track of them would tell.
// SPDX-License-Identifier: MIT

#include "learning/rides.h"

#include <math.h>

#define LANES       LW_RIDDEN_LANES
#define BEFORE      10.0           // [s] that she is under way before
#define FIX         1.0            // [s] from fix to fix
#define SLOW        (2.0 * LW_KN)  // slower she is not under way, as a track has it
#define FLOWN_LEAST 60.0           // [s] on a course, to take its speed  [judged]

double lw_ridden_wind(int knot) { return LW_RIDDEN_FIRST + LW_RIDDEN_APART * (double)knot; }

static void begin(lw_ride rides[LANES], lw_ridden *ridden)
{
    const uint64_t first = 1 + LANES * (uint64_t)ridden->flown.course;
    lw_ridden_plan(ridden, first);
    for (size_t i = 0; i < LANES; i++) {
        ridden->plan.seed = first + i;
        rides[i].events = NULL, rides[i].event_room = 0;
        lw_ride_begin(&rides[i], &ridden->motion, &ridden->plan);
    }
    lw_rides_advance(&ridden->motion, rides, LANES, lw_ridden_steps(ridden, BEFORE));
}

static void add_fix(lw_rides_sum *sum, const lw_trace *at, bool *flies)
{
    if (at->speed >= LW_TRACK_UP) *flies = true;
    if (at->speed < LW_TRACK_DOWN) *flies = false;
    sum->seconds += FIX;
    if (at->speed >= SLOW) sum->under_way += FIX;
    if (!*flies) return;
    sum->flying += FIX;
    lw_flown_sum_add(sum->of, at->heading, at->speed, FIX);
}

void lw_rides_add(lw_rides_sum *sum, lw_ridden *ridden, double seconds)
{
    lw_ride rides[LANES];
    bool flies[LANES] = {false};
    begin(rides, ridden);
    const size_t steps = lw_ridden_steps(ridden, FIX);
    for (double t = 0.0; t < seconds; t += FIX) {
        lw_rides_advance(&ridden->motion, rides, LANES, steps);
        for (size_t i = 0; i < LANES; i++) {
            const lw_trace at = lw_ride_trace(&ridden->motion, &rides[i]);
            add_fix(sum, &at, &flies[i]);
        }
    }
    for (size_t i = 0; i < LANES; i++) sum->swims += lw_ride_tally_swims(&rides[i].tally);
}

static double where_flown(const lw_flown_sum *sum, double value)
{
    return sum->time >= FLOWN_LEAST ? value : NAN;
}

lw_lesson lw_rides_lesson(const lw_rides_sum *s)
{
    const lw_flown_sum *up = &s->of[LW_UPWIND], *across = &s->of[LW_REACH];
    const lw_flown_sum *down = &s->of[LW_DOWNWIND];
    return (lw_lesson){.upwind_turns = NAN,
                       .reach_turns = NAN,
                       .downwind_turns = NAN,
                       .upwind_speed = where_flown(up, lw_flown_sum_mean(up)),
                       .reach_speed = where_flown(across, lw_flown_sum_mean(across)),
                       .downwind_speed = where_flown(down, lw_flown_sum_mean(down)),
                       .upwind_scatter = where_flown(up, lw_flown_sum_scatter(up)),
                       .reach_scatter = where_flown(across, lw_flown_sum_scatter(across)),
                       .downwind_scatter = where_flown(down, lw_flown_sum_scatter(down)),
                       .flying = s->under_way > 0.0 ? s->flying / s->under_way : NAN,
                       .swims = s->seconds > 0.0 ? s->swims / s->seconds : NAN};
}
