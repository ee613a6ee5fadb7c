// fastest.c - heel, place and heading chosen to go fastest along a course.
// SPDX-License-Identifier: MIT
//
// Compass search [kolda-2003]: from the best pose so far try a step either way in each freedom, all
// side by side, and move to the best; where none is better try two freedoms at once, which follows
// a margin that binds; where that fails too, halve the steps. It needs no slopes, so it does not
// mind the corners.

#include <math.h>

#include "lullwise/elementary.h"
#include "lullwise/flight.h"

#define FREEDOMS 3
#define AXES     6
#define CORNERS  12
#define STARTS   8
#define HALVINGS 4  // last steps: 0.4 deg, 15 mm, 0.4 deg
#define HALVINGS_RECKLESS \
    2  // where only the heading is wanted, and the speed is flat about its best

static const double step_first[FREEDOMS] = {6.0 * LW_DEG, 0.24, 6.0 * LW_DEG};

// Steps of heel, place and heading.
typedef signed char direction[FREEDOMS];
static const direction axes[AXES] = {{1, 0, 0},  {-1, 0, 0}, {0, 1, 0},
                                     {0, -1, 0}, {0, 0, 1},  {0, 0, -1}};
static const direction corners[CORNERS] = {{1, 1, 0}, {1, -1, 0}, {-1, 1, 0}, {-1, -1, 0},
                                           {1, 0, 1}, {1, 0, -1}, {-1, 0, 1}, {-1, 0, -1},
                                           {0, 1, 1}, {0, 1, -1}, {0, -1, 1}, {0, -1, -1}};

#define AFLOAT 20.0  // [m/s] what a pose in the water is marked down: any flight goes before it

// 4 m/s for each margin's scale overdrawn is more than any pose gains by it, so that margins are
// kept whenever they can be.
double lw_answer_score(const lw_answer *answer, double course)
{
    if (answer->outcome == LW_NO_BALANCE) return -1e9;
    const double good = answer->flight.speed * lw_cos(answer->flight.heading - course);
    const double wet = answer->outcome == LW_FLOATS ? AFLOAT : 0.0;
    return good - wet - 4.0 * lw_margins_overdrawn(&answer->margins);
}

// What a margin is worth when some of it is forgiven.
static double forgiven(double margin, double room)
{
    return fmin(margin + room, fmax(margin, 0.0));
}

// Reckless: a chord of tip depth and all of the heel in hand are forgiven; not the wand's and the
// flap's travel, for she would leave the water.  [judged]
static double score(const lw_answer *answer, const lw_freedom *free)
{
    if (!free->reckless || answer->outcome == LW_NO_BALANCE) {
        return lw_answer_score(answer, free->course);
    }
    lw_answer eased = *answer;
    lw_margins *m = &eased.margins;
    m->tip_depth = forgiven(m->tip_depth, 1.0);
    m->rudder_tip = forgiven(m->rudder_tip, 1.0);
    m->heel = fmax(m->heel, 0.0);
    return lw_answer_score(&eased, free->course);
}

static double within(double x, double low, double high) { return fmin(fmax(x, low), high); }

// The ask some steps along, inside its bounds.
static lw_ask stepped(const lw_craft *craft, const lw_ask *ask, const lw_freedom *free,
                      const direction along, double part)
{
    lw_ask to = *ask;
    to.heel = within(ask->heel + part * along[0] * step_first[0], 0.0, craft->most_heel);
    to.place = within(ask->place + part * along[1] * step_first[1], craft->place_aft,
                      craft->place_forward);
    if (free->heading) {
        to.heading = within(ask->heading + part * along[2] * step_first[2], free->heading_low,
                            free->heading_high);
    }
    return to;
}

static bool is_free(const lw_freedom *free, const direction along)
{
    return (free->heel || !along[0]) && (free->place || !along[1]) && (free->heading || !along[2]);
}

// Moves to the best of the directions when that gains; tells whether it did.
static bool improve(const lw_craft *craft, lw_ask *ask, lw_answer *best, const lw_freedom *free,
                    const direction *directions, size_t count, double part)
{
    lw_ask trials[CORNERS] = {{0}};
    lw_answer answers[CORNERS];
    size_t n = 0;
    for (size_t i = 0; i < count; i++) {
        if (is_free(free, directions[i]))
            trials[n++] = stepped(craft, ask, free, directions[i], part);
    }
    lw_balance(craft, trials, answers, n);
    bool gains = false;
    for (size_t i = 0; i < n; i++) {
        const double than = score(best, free) + (gains ? 0.0 : 1e-7);
        if (score(&answers[i], free) <= than) continue;
        *ask = trials[i], *best = answers[i], gains = true;
    }
    lw_ask_follow(craft, ask, best);
    return gains;
}

// Freer: where a boat flies soonest, nearer to a reach and well heeled.
static void make_freer(const lw_craft *craft, const lw_freedom *free, lw_ask *ask)
{
    const double reach = 100.0 * LW_DEG, most = 8.0 * LW_DEG;
    if (free->heel) ask->heel = craft->most_heel;
    if (!free->heading) return;
    const double bear = within(reach - ask->heading, -most, most);
    ask->heading = within(ask->heading + bear, free->heading_low, free->heading_high);
}

// The best balance from a few speeds, as asked and freer.
static lw_answer found(const lw_craft *craft, lw_ask *ask, const lw_freedom *free)
{
    static const double speeds[STARTS] = {5.5, 5.5, 6.5, 6.5, 8.0, 8.0, 11.0, 11.0};
    lw_ask starts[STARTS];
    lw_answer answers[STARTS];
    for (int i = 0; i < STARTS; i++) {
        starts[i] = *ask;
        starts[i].start[0] = speeds[i];
        starts[i].start[2] = 0.3;
        if (i % 2) make_freer(craft, free, &starts[i]);
    }
    lw_balance(craft, starts, answers, STARTS);
    int top = 0;
    for (int i = 1; i < STARTS; i++) {
        if (score(&answers[i], free) > score(&answers[top], free)) top = i;
    }
    *ask = starts[top];
    return answers[top];
}

lw_answer lw_fastest(const lw_craft *craft, lw_ask *ask, const lw_freedom *free)
{
    lw_answer best;
    double part = 0.5;
    lw_balance(craft, ask, &best, 1);
    if (best.outcome != LW_FLIES) best = found(craft, ask, free), part = 1.0;
    lw_ask_follow(craft, ask, &best);
    const int most = free->reckless ? HALVINGS_RECKLESS : HALVINGS;
    for (int halvings = 0, moves = 0; halvings <= most && moves < 60; moves++) {
        if (improve(craft, ask, &best, free, axes, AXES, part)) continue;
        if (!free->reckless && improve(craft, ask, &best, free, corners, CORNERS, part)) continue;
        part *= 0.5, halvings++;
    }
    return best;
}
