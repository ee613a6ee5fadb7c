// walk.c - trims of a set-up on a course, knot by knot along the wind.
// SPDX-License-Identifier: MIT

#include "lullwise/range.h"

#include <math.h>

static lw_freedom freedom_on(lw_course course, double puff)
{
    return (lw_freedom){.by = LW_BY_SPEED,
                        .heel = true,
                        .place = true,
                        .turns = true,
                        .heading = course.high > course.low,
                        .heading_low = course.low,
                        .heading_high = course.high,
                        .course = course.direction,
                        .puff = puff};
}

// Heading first, for speed alone, as one sails for a mark; then heel, place and turns, with the
// margins kept if they can be. Bearing off to slow down is not counted as holding her.
static lw_trim sought_from(const lw_walk *w, double wind, lw_trim trim)
{
    trim.ask.wind = wind;
    lw_freedom free = freedom_on(w->course, w->puff);
    if (free.heading) {
        free.by = LW_BY_BOLD, free.puff = 0.0;
        trim = lw_trim_from(w->craft, &trim, &free);
        if (!lw_trim_is_up(&trim)) return trim;
        free = freedom_on(w->course, w->puff);
        free.heading = false;
    }
    return lw_trim_from(w->craft, &trim, &free);
}

// From nothing: with the bow level and, as a strong pin wants it, down, the better of both; where
// neither flies, up, as a light sailor with a weak pin.
static lw_trim sought_anew(const lw_walk *w, double wind)
{
    const double bows[] = {0.0, -0.5 * w->craft->most_bow_down, 0.5 * w->craft->most_bow_up};
    lw_trim best = {.steady = {.outcome = LW_NO_BALANCE}};
    for (size_t i = 0; i < sizeof bows / sizeof bows[0]; i++) {
        if (bows[i] > 0.0 && lw_trim_is_up(&best)) break;
        lw_trim trim = {.ask = lw_ask_of(w->craft, &w->setup, wind, lw_course_middle(w->course))};
        trim.ask.given.pitch = bows[i];
        trim = sought_from(w, wind, trim);
        if (i == 0 || lw_trim_beats(&trim, &best)) best = trim;
    }
    return best;
}

lw_trim lw_walk_trim(const lw_walk *w, double wind, const lw_trim *from)
{
    return from ? sought_from(w, wind, *from) : sought_anew(w, wind);
}

#define TILT (2.0 * LW_DEG)

lw_trim lw_walk_tilted(const lw_walk *w, double wind, const lw_trim *from, int side)
{
    lw_trim tilted = *from;
    tilted.ask.given.pitch += side * TILT;
    return sought_from(w, wind, tilted);
}

// Trims at knot i, from a neighbour when it flies, else from nothing.
static void trim_point(lw_walk *w, int i, int neighbour)
{
    const bool follow = neighbour >= 0 && lw_trim_is_up(&w->trims[neighbour]);
    w->trims[i] = lw_walk_trim(w, lw_range_wind(i), follow ? &w->trims[neighbour] : NULL);
}

#define JUMP 0.7  // [m/s] from knot to knot: more is another way of flying  [judged]

static double made_good(const lw_walk *w, const lw_trim *trim)
{
    return lw_flight_made_good(&trim->steady.flight, w->course.direction);
}

// From a neighbour in quarters of the way; what is not up where that does not lead there.
static lw_trim walked(const lw_walk *w, int i, int neighbour)
{
    const double from = lw_range_wind(neighbour), way = lw_range_wind(i) - from;
    lw_trim trim = w->trims[neighbour];
    for (int step = 1; step <= 4 && lw_trim_is_up(&trim); step++) {
        trim = lw_walk_trim(w, from + 0.25 * step * way, &trim);
    }
    return trim;
}

#define ELSEWHERE (1.0 * LW_DEG)  // of pitch: trims that far apart are two ways to sail a wind

static bool is_elsewhere(const lw_trim *a, const lw_trim *b)
{
    return fabs(a->steady.flight.pitch - b->steady.flight.pitch) > ELSEWHERE;
}

static void take_better(lw_trim *here, lw_trim other)
{
    if (lw_trim_beats(&other, here)) *here = other;
}

// Where a neighbour's trim does better than the point's own, or the point is on another way of
// flying that is worse, or on none, it is sought anew from there. Returns whether it was walked to.
static bool mend_from(lw_walk *w, int i, int neighbour)
{
    const lw_freedom free = freedom_on(w->course, w->puff);
    lw_trim *here = &w->trims[i], there = w->trims[neighbour];
    if (!lw_trim_is_up(&there)) return false;
    if (!lw_trim_is_up(here) || made_good(w, &there) > made_good(w, here) + JUMP) {
        take_better(here, walked(w, i, neighbour));
        return true;
    }
    there.ask.wind = lw_range_wind(i);
    there = lw_trim_as(w->craft, &there, &free);
    if (there.score > here->score || is_elsewhere(&there, here))
        take_better(here, lw_walk_trim(w, lw_range_wind(i), &there));
    return false;
}

// Mends a point beside a neighbour; where that is held and the point still is not, there may be
// another way to sail her: step by step, from nothing, and with the bow further up or down.
static void mend_point(lw_walk *w, int i, int neighbour)
{
    const double wind = lw_range_wind(i);
    const lw_trim *there = &w->trims[neighbour];
    lw_trim *here = &w->trims[i];
    const bool is_walked = mend_from(w, i, neighbour);
    if (!lw_trim_is_held(there) || lw_trim_is_held(here)) return;
    if (!is_walked) take_better(here, walked(w, i, neighbour));
    if (!lw_trim_is_held(here)) take_better(here, lw_walk_trim(w, wind, NULL));
    for (int side = -1; side <= 1 && !lw_trim_is_held(here); side += 2) {
        take_better(here, lw_walk_tilted(w, wind, there, side));
    }
}

// The knot to begin from: the first of a few, from where most boats fly, in which she flies from
// nothing and keeps her margins; else the first in which she flies.
static int begin(lw_walk *w)
{
    static const int knots[] = {13, 10, 16, 8, 20, 25};
    const int count = sizeof knots / sizeof knots[0];
    int flies = -1;
    for (int i = 0; i < count; i++) {
        const int k = knots[i] - LW_RANGE_FIRST_KN;
        trim_point(w, k, -1);
        if (lw_answer_is_kept(&w->trims[k].steady)) return k;
        if (flies < 0 && lw_trim_is_up(&w->trims[k])) flies = k;
    }
    return flies < 0 ? knots[0] - LW_RANGE_FIRST_KN : flies;
}

#define LOST_MOST \
    4  // knots without margins in a row: beyond, nobody is held, and nothing is sought

// Knots from low to high, and those on the way to them from where it begins.
static void trim_knots(lw_walk *w, int low, int high)
{
    for (int i = 0; i < LW_RANGE_WINDS; i++) w->trims[i].steady.outcome = LW_NO_BALANCE;
    const int first = begin(w);
    if (first < low) low = first;
    if (first > high) high = first;
    int end = first + 1;
    for (int lost = 0; end <= high && lost < LOST_MOST; end++) {
        trim_point(w, end, end - 1);
        lost = lw_answer_is_kept(&w->trims[end].steady) ? 0 : lost + 1;
    }
    for (int i = first - 1; i >= low && lw_trim_is_up(&w->trims[i + 1]); i--) {
        trim_point(w, i, i + 1);  // where more wind does not lift her, less does not
    }
    for (int i = low + 1; i < end; i++) mend_point(w, i, i - 1);
    for (int i = end - 2; i >= low; i--) mend_point(w, i, i + 1);
}

lw_walk lw_walk_of(const lw_craft *craft, const lw_setup *setup, lw_course course, double puff)
{
    lw_walk walk = {.craft = craft, .setup = *setup, .course = course, .puff = puff};
    trim_knots(&walk, 0, LW_RANGE_WINDS - 1);
    return walk;
}

lw_walk lw_walk_beside(const lw_craft *craft, const lw_setup *setup, const lw_walk *other,
                       const bool sought[LW_RANGE_WINDS])
{
    lw_walk walk = *other;
    walk.craft = craft, walk.setup = *setup;
    for (int i = 0; i < LW_RANGE_WINDS; i++) {
        lw_trim *trim = &walk.trims[i];
        if (!sought[i] || !lw_trim_is_up(trim)) continue;
        trim->ask.setup = *setup;
        *trim = lw_walk_trim(&walk, lw_range_wind(i), trim);
    }
    return walk;
}

static double mixed(double a, double b, double u) { return a + u * (b - a); }

static lw_ask_start mixed_start(const lw_ask_start *a, const lw_ask_start *b, double u)
{
    return (lw_ask_start){.speed = mixed(a->speed, b->speed, u),
                          .leeway = mixed(a->leeway, b->leeway, u),
                          .ride_height = mixed(a->ride_height, b->ride_height, u),
                          .pitch = mixed(a->pitch, b->pitch, u),
                          .rudder = mixed(a->rudder, b->rudder, u),
                          .helm = mixed(a->helm, b->helm, u),
                          .effort = mixed(a->effort, b->effort, u)};
}

// Controls of a trim, and where its flight is sought from, straight between those of two others:
// u = 0 a's, 1 b's; beyond, carried on.
static void mix_controls(const lw_trim *a, const lw_trim *b, double u, lw_trim *to)
{
    to->ask.start = mixed_start(&a->ask.start, &b->ask.start, u);
    to->ask.place = mixed(a->ask.place, b->ask.place, u);
    to->ask.heel = mixed(a->ask.heel, b->ask.heel, u);
    to->ask.heading = mixed(a->ask.heading, b->ask.heading, u);
    to->ask.given.pitch = mixed(a->ask.given.pitch, b->ask.given.pitch, u);
    to->heel_in_puff = mixed(a->heel_in_puff, b->heel_in_puff, u);
}

bool lw_walk_between(const lw_walk *w, double wind, lw_trim *trim)
{
    const lw_range_interval in = lw_range_interval_of(wind);
    const lw_trim *a = &w->trims[in.below], *b = &w->trims[in.below + 1];
    const bool flies_a = lw_trim_is_up(a), flies_b = lw_trim_is_up(b);
    *trim = flies_b && (!flies_a || in.part > 0.5) ? *b : *a;
    trim->ask.wind = wind;
    if (!flies_a || !flies_b) return flies_a || flies_b;
    mix_controls(a, b, in.part, trim);
    return true;
}

lw_trim lw_walk_flight(const lw_walk *w, double wind)
{
    const double knots = wind / LW_KN - LW_RANGE_FIRST_KN, k = floor(knots + 0.5);
    const lw_freedom free = freedom_on(w->course, w->puff);
    lw_trim from;
    if (fabs(knots - k) < 1e-9 && k >= 0.0 && k < LW_RANGE_WINDS) return w->trims[(int)k];
    if (!lw_walk_between(w, wind, &from)) return lw_walk_trim(w, wind, NULL);
    const lw_trim there = lw_trim_as(w->craft, &from, &free);
    return lw_trim_is_up(&there) ? there : lw_walk_trim(w, wind, &from);
}

lw_trim lw_walk_to(lw_walk *w, double wind)
{
    const int below = lw_range_interval_of(wind).below;
    const int low = below > 0 ? below - 1 : 0;
    trim_knots(w, low, below + 2 < LW_RANGE_WINDS ? below + 2 : LW_RANGE_WINDS - 1);
    return lw_walk_flight(w, wind);
}

lw_walk lw_walk_again(const lw_craft *craft, const lw_setup *setup, lw_course course, double puff,
                      const lw_range *range)
{
    lw_walk walk = {.craft = craft, .setup = *setup, .course = course, .puff = puff};
    for (int i = 0; i < LW_RANGE_WINDS; i++) {
        walk.trims[i] = lw_trim_again(craft, setup, &range->at[i].trimmed);
    }
    return walk;
}

lw_trim lw_walk_sailed(const lw_walk *w, const lw_range *range, double wind)
{
    const lw_range_point *knot = lw_range_sailed(range, wind);
    if (!knot) return (lw_trim){.steady = {.outcome = LW_NO_BALANCE}};
    if (fabs(knot->wind - wind) < LW_KN) {
        const lw_trim flight = lw_walk_flight(w, wind);
        if (lw_trim_is_up(&flight)) return flight;
    }
    return lw_trim_again(w->craft, &w->setup, &knot->trimmed);
}

lw_trim lw_walk_holding(const lw_walk *w, const lw_trim *flight)
{
    lw_freedom free = freedom_on(w->course, w->puff);
    free.by = LW_BY_HOLD, free.heading = free.heel = free.place = false;
    return lw_trim_from(w->craft, flight, &free);
}

double lw_range_most_turns(const lw_craft *craft, const lw_setup *setup, lw_course course,
                           double puff, const lw_answer *flight)
{
    const lw_walk walk = {.craft = craft, .setup = *setup, .course = course, .puff = puff};
    const lw_trim trim = lw_trim_again(craft, setup, flight);
    return lw_walk_holding(&walk, &trim).steady.flight.turns;
}
