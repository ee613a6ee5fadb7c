// fastest.c - heel, place and heading chosen to go fastest along a course.
// SPDX-License-Identifier: MIT
//
// Compass search [kolda-2003]: from the best pose so far try a step either way in each freedom, all
// side by side, move to the best, and halve the steps when none is better. It needs no slopes,
// so it does not mind the corners where a margin begins to bind.

#include <math.h>

#include "lullwise/elementary.h"
#include "lullwise/flight.h"

#define FREEDOMS 3
#define TRIALS   (2 * FREEDOMS)
#define STARTS   8

static const double step_first[FREEDOMS] = {6.0 * LW_DEG, 0.24, 6.0 * LW_DEG};
#define HALVINGS 4  // last steps: 0.4 deg, 15 mm, 0.4 deg

#define AFLOAT 20.0  // [m/s] what a pose in the water is marked down: any flight goes before it

// Speed made good along the course, less 4 m/s for each margin's scale overdrawn: more than any
// pose gains by it, so that margins are kept whenever they can be.
static double score(const lw_answer *answer, double course)
{
    if (answer->outcome == LW_NO_BALANCE) return -1e9;
    const double good = answer->flight.speed * lw_cos(answer->flight.heading - course);
    const double wet = answer->outcome == LW_FLOATS ? AFLOAT : 0.0;
    return good - wet - 4.0 * lw_margins_overdrawn(&answer->margins);
}

static double within(double x, double low, double high) { return fmin(fmax(x, low), high); }

// The ask one step along a freedom, inside its bounds.
static lw_ask stepped(const lw_craft *craft, const lw_ask *ask, const lw_freedom *free, int which,
                      double step)
{
    lw_ask moved = *ask;
    if (which == 0) moved.heel = within(ask->heel + step, 0.0, craft->most_heel);
    if (which == 1) {
        moved.place = within(ask->place + step, craft->place_aft, craft->place_forward);
    }
    if (which == 2) {
        moved.heading = within(ask->heading + step, free->heading_low, free->heading_high);
    }
    return moved;
}

static bool is_free(const lw_freedom *free, int which)
{
    const bool each[FREEDOMS] = {free->heel, free->place, free->heading};
    return each[which];
}

static size_t trials_of(const lw_craft *craft, const lw_ask *ask, const lw_freedom *free,
                        double part, lw_ask *trials)
{
    size_t n = 0;
    for (int which = 0; which < FREEDOMS; which++) {
        if (!is_free(free, which)) continue;
        trials[n++] = stepped(craft, ask, free, which, part * step_first[which]);
        trials[n++] = stepped(craft, ask, free, which, -part * step_first[which]);
    }
    return n;
}

// The best balance from a few speeds, heels and places to start from.
static lw_answer found(const lw_craft *craft, lw_ask *ask, double course)
{
    static const double speeds[STARTS] = {5.5, 5.5, 6.5, 6.5, 8.0, 8.0, 11.0, 13.0};
    lw_ask starts[STARTS];
    lw_answer answers[STARTS];
    for (int i = 0; i < STARTS; i++) {
        starts[i] = *ask;
        starts[i].start[0] = speeds[i];
        starts[i].start[2] = 0.3;
        starts[i].heel = i % 2 ? 0.8 * craft->most_heel : craft->least_heel;
        starts[i].place = i % 2 ? craft->place_aft : ask->place;
    }
    lw_balance(craft, starts, answers, STARTS);
    int top = 0;
    for (int i = 1; i < STARTS; i++) {
        if (score(&answers[i], course) > score(&answers[top], course)) top = i;
    }
    *ask = starts[top];
    return answers[top];
}

lw_answer lw_fastest(const lw_craft *craft, lw_ask *ask, const lw_freedom *free)
{
    lw_answer answers[TRIALS];
    lw_ask trials[TRIALS];
    lw_answer best;
    lw_balance(craft, ask, &best, 1);
    double part = 0.5;
    if (best.outcome != LW_FLIES) best = found(craft, ask, free->course), part = 1.0;
    for (int halvings = 0, moves = 0; halvings <= HALVINGS && moves < 60; moves++) {
        lw_ask_follow(craft, ask, &best);
        const size_t n = trials_of(craft, ask, free, part, trials);
        lw_balance(craft, trials, answers, n);
        size_t top = n;
        for (size_t i = 0; i < n; i++) {
            const double than = top < n ? score(&answers[top], free->course)
                                        : score(&best, free->course) + 1e-7;
            if (score(&answers[i], free->course) > than) top = i;
        }
        if (top < n) {
            *ask = trials[top], best = answers[top];
        } else {
            part *= 0.5, halvings++;
        }
    }
    lw_ask_follow(craft, ask, &best);
    return best;
}
