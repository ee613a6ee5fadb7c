// range.c - walks a set-up up and down the wind on a course.
// SPDX-License-Identifier: MIT

#include "lullwise/range.h"

#include <math.h>

// The wind as a puff on a boat trimmed for less: it comes a knot at a time; rudder, place and
// heading stay, heel may follow.
static lw_answer puffed_from(const lw_craft *craft, const lw_ask *trimmed, double wind)
{
    lw_ask ask = *trimmed;
    lw_ask_hold_rudder(&ask);
    const int steps = (int)ceil((wind - trimmed->wind) / LW_KN);
    for (int i = 1; i < steps; i++) {
        lw_answer answer;
        ask.wind = trimmed->wind + i * (wind - trimmed->wind) / steps;
        lw_balance(craft, &ask, &answer, 1);
        lw_ask_follow(craft, &ask, &answer);
    }
    ask.wind = wind;
    const lw_freedom free = {.by = LW_BY_SPEED, .heel = true, .course = ask.heading};
    return lw_trim_of(craft, &ask, &free).steady;
}

// The flight of the wind trimmed for, or as the puff finds a boat trimmed for less.
static lw_answer as_puff(const lw_walk *w, double wind, lw_answer trimmed)
{
    lw_trim below;
    if (w->puff <= 0.0 || !lw_walk_between(w, wind - w->puff, &below)) return trimmed;
    return puffed_from(w->craft, &below.ask, wind);
}

static void puff_point(const lw_walk *w, lw_range_point *point)
{
    point->puffed = as_puff(w, point->wind, point->trimmed);
    point->is_held = lw_answer_is_kept(&point->trimmed) && lw_answer_rides_out(&point->puffed);
}

// What a limit is searched for, and what its claims look at.
typedef struct limit {
    const lw_walk *walk;
    lw_trim from;            // to start from
    double rudder, heading;  // of a launch [rad]
} limit;

typedef bool claim(limit *b, double wind);

// Halves between a wind where the claim is false and one where it is true, to 0.1 kn.
static double bisected(limit *b, claim *holds, double no, double yes)
{
    while (fabs(yes - no) > 0.1 * LW_KN) {
        const double mid = 0.5 * (yes + no);
        *(holds(b, mid) ? &yes : &no) = mid;
    }
    return yes;
}

// Each flight is sought from the last that was found.
static bool stays_up(limit *b, double wind)
{
    const lw_trim trim = lw_walk_trim(b->walk, wind, &b->from);
    const bool is_up = lw_trim_is_up(&trim);
    if (is_up) b->from = trim;
    return is_up;
}

static bool is_held(limit *b, double wind)
{
    const lw_trim trim = lw_walk_trim(b->walk, wind, &b->from);
    if (!lw_answer_is_kept(&trim.steady)) return false;
    const lw_answer puffed = as_puff(b->walk, wind, trim.steady);
    return lw_answer_rides_out(&puffed);
}

static bool launches(limit *b, double wind)
{
    return lw_launch_of(b->walk->craft, &b->walk->setup, b->rudder, wind, b->heading).flies;
}

// Down from a wind in which she flies, each flight sought from the one before, in steps that halve
// where it is lost.
static double least_on_way(limit *b, double wind)
{
    double step = 0.25 * LW_KN;
    while (step > 0.03 * LW_KN && wind > lw_range_wind(0)) {
        const double less = fmax(wind - step, lw_range_wind(0));
        if (stays_up(b, less))
            wind = less;
        else
            step *= 0.5;
    }
    return wind;
}

// Where a way of flying ends, on to others with the bow further up or down.
static double least_from(limit *b, double wind)
{
    double least = least_on_way(b, wind);
    for (int side = -1; side <= 1 && least > lw_range_wind(0); side += 2) {
        const double less = fmax(least - 0.06 * LW_KN, lw_range_wind(0));
        limit other = *b;
        other.from = lw_walk_tilted(b->walk, less, &b->from, side);
        if (!lw_trim_is_up(&other.from)) continue;
        least = least_on_way(&other, less);
        *b = other;
    }
    return least;
}

#define STAY_FROM 2  // knots to go down from: where two ways of flying end, one leads further

static void find_stay(const lw_walk *w, lw_range *range)
{
    int first = 0;
    while (first < LW_RANGE_WINDS && !lw_trim_is_up(&w->trims[first])) first++;
    if (first == LW_RANGE_WINDS) return;
    lw_walk calm = *w;
    calm.puff = 0.0;
    range->has_flight = true;
    range->stays_up_at = lw_range_wind(first);
    for (int i = first; i < first + STAY_FROM && i < LW_RANGE_WINDS; i++) {
        limit b = {.walk = &calm, .from = w->trims[i]};
        if (!lw_trim_is_up(&b.from)) continue;
        range->stays_up_at = fmin(range->stays_up_at, least_from(&b, lw_range_wind(i)));
    }
}

static void name_end(lw_range *range, const lw_range_point *point)
{
    range->ends_in_puff = lw_answer_is_kept(&point->trimmed);
    const lw_answer *answer = range->ends_in_puff ? &point->puffed : &point->trimmed;
    range->ends_by =
        answer->outcome == LW_NO_BALANCE ? LW_MARGIN_COUNT : lw_margins_first(&answer->margins);
}

// The longest run of held winds; of equal ones the last.
static int longest_held(const lw_range *range, int *first)
{
    int longest = 0;
    for (int i = 0, run = 0; i < LW_RANGE_WINDS; i++) {
        run = range->at[i].is_held ? run + 1 : 0;
        if (run > 0 && run >= longest) longest = run, *first = i + 1 - run;
    }
    return longest;
}

static void find_hold(const lw_walk *w, lw_range *range)
{
    int first = 0;
    const int run = longest_held(range, &first), last = first + run - 1;
    if (run == 0) return;
    range->has_hold = true;
    range->held_up_to = lw_range_wind(last);
    range->ends_by = LW_MARGIN_COUNT;
    if (last + 1 == LW_RANGE_WINDS) return;
    limit b = {.walk = w, .from = w->trims[last]};
    range->held_up_to = bisected(&b, is_held, lw_range_wind(last + 1), lw_range_wind(last));
    name_end(range, &range->at[last + 1]);
}

#define LAUNCH_MOST (22.0 * LW_KN)  // no launch is looked for in more wind

// Least wind that launches on a heading, to 0.1 kn; keeps what was found on the hull on the way.
static double launch_on(const lw_walk *w, const lw_range *range, double heading,
                        lw_launch on_hull[LW_RANGE_WINDS])
{
    for (int i = 0; lw_range_wind(i) <= LAUNCH_MOST; i++) {
        const double turns = lw_range_turns(range, lw_range_wind(i));
        const double rudder = lw_craft_rudder(w->craft, turns);
        on_hull[i] = lw_launch_of(w->craft, &w->setup, rudder, lw_range_wind(i), heading);
        if (!on_hull[i].flies) continue;
        limit b = {.walk = w, .rudder = rudder, .heading = heading};
        return i ? bisected(&b, launches, lw_range_wind(i - 1), lw_range_wind(i))
                 : lw_range_wind(0);
    }
    return 0.0;
}

double lw_range_launch(const lw_craft *craft, const lw_setup *setup, const lw_range *range,
                       double heading)
{
    const lw_walk w = {.craft = craft, .setup = *setup};
    lw_launch on_hull[LW_RANGE_WINDS];
    return launch_on(&w, range, heading, on_hull);
}

void lw_range_trims(const lw_walk *walk, lw_range *range)
{
    *range = (lw_range){.ends_by = LW_MARGIN_COUNT};
    for (int i = 0; i < LW_RANGE_WINDS; i++) {
        range->at[i].wind = lw_range_wind(i);
        range->at[i].trimmed = range->at[i].puffed = walk->trims[i].steady;
    }
}

void lw_range_of(const lw_craft *craft, const lw_setup *setup, lw_course course, double puff,
                 lw_range *range)
{
    const lw_walk w = lw_walk_of(craft, setup, course, puff);
    lw_range_trims(&w, range);
    for (int i = 0; i < LW_RANGE_WINDS; i++) puff_point(&w, &range->at[i]);
    find_stay(&w, range);
    find_hold(&w, range);
    range->launches_at = launch_on(&w, range, lw_course_middle(course), range->on_hull);
    range->has_launch = range->launches_at > 0.0;
}
