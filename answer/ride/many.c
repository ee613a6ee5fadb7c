// many.c - many rides, a seed each, in rounds: the end is the same wherever it is worked out.
// SPDX-License-Identifier: MIT

#include <stdlib.h>

#include "answer/ride/ride.h"

#define TEAM    8    // rides of a step, sailed side by side
#define ROUND   64   // rides before the error is looked at again; later a quarter more
#define ADVANCE 500  // steps of the motion between two looks whether to end

static size_t teams_in(const lw_ride_many *many)
{
    return (many->end - many->first + TEAM - 1) / TEAM;
}

// The next round, from the end of the last; none when that was the last.
static void open_round(lw_ride_many *many)
{
    const size_t sailed = many->end, more = sailed / 4 > ROUND ? sailed / 4 : ROUND;
    many->first = sailed;
    many->end = sailed + more < many->most ? sailed + more : many->most;
}

bool lw_rode_many_begin(lw_rode *rode)
{
    lw_ride_many *many = &rode->many;
    many->tallies = calloc(many->most, sizeof *many->tallies);
    open_round(many);
    return many->tallies != NULL;
}

// Rides first to before end; their tallies are kept when they came to their end.
static void sail(lw_rode *rode, size_t first, size_t end)
{
    const lw_motion *motion = &rode->ridden.motion;
    lw_ride rides[TEAM];
    const size_t count = end - first;
    for (size_t i = 0; i < count; i++) {
        lw_ride_plan plan = rode->ridden.plan;
        plan.seed += first + i;
        rides[i].events = NULL, rides[i].event_room = 0;
        lw_ride_begin(&rides[i], motion, &plan);
    }
    size_t left = lw_ridden_steps(&rode->ridden, rode->seconds);
    while (left > 0) {
        const size_t steps = left < ADVANCE ? left : ADVANCE;
        if (rode->wants_end && rode->wants_end()) return;
        lw_rides_advance(motion, rides, count, steps);
        left -= steps;
    }
    for (size_t i = 0; i < count; i++) rode->many.tallies[first + i] = rides[i].tally;
}

void lw_rode_many_step(lw_rode *rode, size_t step)
{
    const lw_ride_many *many = &rode->many;
    const size_t first = many->first + TEAM * (step - many->steps_before);
    sail(rode, first, first + TEAM < many->end ? first + TEAM : many->end);
}

static bool is_round_sailed(const lw_ride_many *many)
{
    for (size_t i = many->first; i < many->end; i++) {
        if (!(many->tallies[i].seconds > 0.0)) return false;
    }
    return true;
}

// What was sailed of the round counts.
static void close_round(lw_ride_many *many)
{
    for (size_t i = many->first; i < many->end; i++) {
        if (many->tallies[i].seconds > 0.0) lw_ride_sample_add(&many->sample, &many->tallies[i]);
    }
    many->is_sure = lw_ride_sample_is_sure(&many->sample, many->error);
}

size_t lw_rode_many_steps(lw_rode *rode)
{
    lw_ride_many *many = &rode->many;
    const size_t steps = many->steps_before + teams_in(many);
    if (many->is_over || !is_round_sailed(many)) return steps;
    close_round(many);
    many->is_over = many->is_sure || many->end == many->most;
    if (many->is_over) return steps;
    many->steps_before = steps;
    open_round(many);
    return steps + teams_in(many);
}

void lw_rode_many_end(lw_rode *rode)
{
    rode->is_stopped = !rode->many.is_over;
    if (rode->is_stopped) close_round(&rode->many);
}
