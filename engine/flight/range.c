// range.c - walks a set-up up and down the wind on a course.
// SPDX-License-Identifier: MIT

#include "lullwise/range.h"

#include <math.h>

#define AS_COURSE_TEXT(name, text, direction, low, high) text,
#define AS_COURSE(name, text, direction, low, high) \
    {direction * LW_DEG, low * LW_DEG, high * LW_DEG},
static const char *const course_texts[] = {LW_COURSE_LIST(AS_COURSE_TEXT)};
static const lw_course courses[] = {LW_COURSE_LIST(AS_COURSE)};

const char *lw_course_text(lw_course_kind kind) { return course_texts[kind]; }
lw_course lw_course_of(lw_course_kind kind) { return courses[kind]; }

lw_course lw_course_to(double direction)
{
    const lw_course up = courses[LW_UPWIND], down = courses[LW_DOWNWIND];
    if (direction < 60.0 * LW_DEG) return (lw_course){direction, up.low, up.high};
    if (direction > 130.0 * LW_DEG) return (lw_course){direction, down.low, down.high};
    return (lw_course){direction, direction, direction};
}

static lw_freedom freedom_on(lw_course course)
{
    return (lw_freedom){.heel = true,
                        .place = true,
                        .heading = course.high > course.low,
                        .heading_low = course.low,
                        .heading_high = course.high,
                        .course = course.direction};
}

static double middle(lw_course course) { return 0.5 * (course.low + course.high); }

// The wind as a puff on a boat trimmed for less: it comes a knot at a time; rudder, place and
// heading stay, heel may follow.
static lw_answer puffed_from(const lw_craft *craft, const lw_ask *trimmed, double wind)
{
    lw_ask ask = *trimmed;
    ask.level = false;
    const int steps = (int)ceil((wind - trimmed->wind) / LW_KN);
    for (int i = 1; i < steps; i++) {
        lw_answer answer;
        ask.wind = trimmed->wind + i * (wind - trimmed->wind) / steps;
        lw_balance(craft, &ask, &answer, 1);
        lw_ask_follow(craft, &ask, &answer);
    }
    ask.wind = wind;
    const lw_freedom free = {.heel = true, .course = ask.heading};
    return lw_fastest(craft, &ask, &free);
}

static bool is_up(const lw_answer *answer)
{
    return answer->outcome == LW_FLIES && answer->margins.clearance >= 0.0;
}

static bool keeps_margins(const lw_answer *answer)
{
    return is_up(answer) && lw_margins_hold(&answer->margins);
}

// A puff that sets her down on the hull costs time, but it is no breach: she is still held.
static bool rides_out(const lw_answer *answer)
{
    return answer->outcome == LW_FLOATS || keeps_margins(answer);
}

// One walk along the wind: every point starts from its neighbour's pose.
typedef struct walk {
    const lw_craft *craft;
    const lw_setup *setup;
    lw_course course;
    double puff;
    lw_ask asks[LW_RANGE_WINDS];  // as left by each point
} walk;

// Heading first, for speed alone, as one sails for a mark; then heel and place, with the margins
// kept if they can be. Bearing off to slow down is not counted as holding her.
static lw_answer trim_at(const walk *w, double wind, const lw_ask *from, lw_ask *left)
{
    lw_ask ask = from ? *from : lw_ask_of(w->craft, w->setup, wind, middle(w->course));
    ask.wind = wind;
    lw_freedom free = freedom_on(w->course);
    if (free.heading) {
        free.reckless = true;
        const lw_answer fast = lw_fastest(w->craft, &ask, &free);
        *left = ask;
        if (!is_up(&fast)) return fast;
        free.reckless = free.heading = false;
    }
    const lw_answer answer = lw_fastest(w->craft, &ask, &free);
    *left = ask;
    return answer;
}

static double wind_at(int i) { return (LW_RANGE_FIRST_KN + i) * LW_KN; }

// Trims at knot i, from a neighbour when it flies, else from scratch.
static void trim_point(walk *w, lw_range *range, int i, int neighbour)
{
    lw_range_point *point = &range->at[i];
    const bool follow = neighbour >= 0 && is_up(&range->at[neighbour].trimmed);
    point->trimmed = trim_at(w, point->wind, follow ? &w->asks[neighbour] : NULL, &w->asks[i]);
}

// Where a neighbour's pose does better than the point's own, the search starts anew from there; a
// point that does not fly beside one that does is walked to in quarters of the way.
static void mend_point(walk *w, lw_range *range, int i, int neighbour)
{
    lw_range_point *point = &range->at[i];
    if (!is_up(&range->at[neighbour].trimmed)) return;
    const double course = w->course.direction, from = wind_at(neighbour);
    lw_ask ask = w->asks[neighbour];
    lw_answer there = range->at[neighbour].trimmed;
    if (!is_up(&point->trimmed)) {
        for (int step = 1; step <= 4 && is_up(&there); step++) {
            there = trim_at(w, from + 0.25 * step * (point->wind - from), &ask, &ask);
        }
    } else {
        ask.wind = point->wind;
        lw_balance(w->craft, &ask, &there, 1);
        if (lw_answer_score(&there, course) <= lw_answer_score(&point->trimmed, course)) return;
        there = trim_at(w, point->wind, &w->asks[neighbour], &ask);
    }
    if (lw_answer_score(&there, course) <= lw_answer_score(&point->trimmed, course)) return;
    point->trimmed = there, w->asks[i] = ask;
}

static void trim_all(walk *w, lw_range *range)
{
    const int middle_wind = 13 - LW_RANGE_FIRST_KN;
    trim_point(w, range, middle_wind, -1);
    for (int i = middle_wind + 1; i < LW_RANGE_WINDS; i++) trim_point(w, range, i, i - 1);
    for (int i = middle_wind - 1; i >= 0 && is_up(&range->at[i + 1].trimmed); i--) {
        trim_point(w, range, i, i + 1);  // where more wind does not lift her, less does not
    }
    for (int i = 1; i < LW_RANGE_WINDS; i++) mend_point(w, range, i, i - 1);
    for (int i = LW_RANGE_WINDS - 2; i >= 0; i--) mend_point(w, range, i, i + 1);
}

// The pose trimmed for a wind, straight between the knots; false when either does not fly.
static bool trimmed_for(const walk *w, const lw_range *range, double wind, lw_ask *ask)
{
    const double knots = wind / LW_KN - LW_RANGE_FIRST_KN;
    const int k = (int)fmin(fmax(floor(knots), 0.0), LW_RANGE_WINDS - 2.0);
    if (!is_up(&range->at[k].trimmed) || !is_up(&range->at[k + 1].trimmed)) return false;
    const lw_ask *a = &w->asks[k], *b = &w->asks[k + 1];
    const double u = fmin(fmax(knots - k, 0.0), 1.0);
    *ask = *a;
    ask->wind = wind;
    ask->rudder += u * (b->rudder - a->rudder);
    ask->place += u * (b->place - a->place);
    ask->heel += u * (b->heel - a->heel);
    ask->heading += u * (b->heading - a->heading);
    return true;
}

static void puff_point(const walk *w, lw_range *range, int i)
{
    lw_range_point *point = &range->at[i];
    lw_ask below;
    point->puffed = point->trimmed;
    if (w->puff > 0.0 && trimmed_for(w, range, point->wind - w->puff, &below)) {
        point->puffed = puffed_from(w->craft, &below, point->wind);
    }
    point->is_held = keeps_margins(&point->trimmed) && rides_out(&point->puffed);
}

// What a border is sought for, and what its claims look at.
typedef struct border {
    const walk *walk;
    const lw_range *range;
    const lw_ask *from;      // pose to start from
    double rudder, heading;  // of a launch [rad]
} border;

typedef bool claim(const border *b, double wind);

// Halves between a wind where the claim is false and one where it is true, to 0.1 kn.
static double between(const border *b, claim *holds, double no, double yes)
{
    while (fabs(yes - no) > 0.1 * LW_KN) {
        const double mid = 0.5 * (yes + no);
        *(holds(b, mid) ? &yes : &no) = mid;
    }
    return yes;
}

static bool stays_up(const border *b, double wind)
{
    lw_ask left;
    const lw_answer answer = trim_at(b->walk, wind, b->from, &left);
    return is_up(&answer);
}

static bool is_held(const border *b, double wind)
{
    const walk *w = b->walk;
    lw_ask left, below;
    const lw_answer trimmed = trim_at(w, wind, b->from, &left);
    if (!keeps_margins(&trimmed)) return false;
    if (w->puff <= 0.0 || !trimmed_for(w, b->range, wind - w->puff, &below)) return true;
    const lw_answer puffed = puffed_from(w->craft, &below, wind);
    return rides_out(&puffed);
}

static bool launches(const border *b, double wind)
{
    return lw_launch_of(b->walk->craft, b->walk->setup, b->rudder, wind, b->heading).flies;
}

static void find_stay(const walk *w, lw_range *range)
{
    for (int i = 0; i < LW_RANGE_WINDS; i++) {
        if (!is_up(&range->at[i].trimmed)) continue;
        range->has_flight = true;
        const border b = {.walk = w, .from = &w->asks[i]};
        range->stays_up_at = i ? between(&b, stays_up, wind_at(i - 1), wind_at(i)) : wind_at(0);
        return;
    }
}

static void name_end(lw_range *range, const lw_range_point *point)
{
    range->ends_in_puff = keeps_margins(&point->trimmed);
    const lw_answer *answer = range->ends_in_puff ? &point->puffed : &point->trimmed;
    range->ends_by =
        answer->outcome == LW_NO_BALANCE ? LW_MARGIN_COUNT : lw_margins_first(&answer->margins);
}

// The longest run of held winds.
static int longest_held(const lw_range *range, int *first)
{
    int longest = 0;
    for (int i = 0, run = 0; i < LW_RANGE_WINDS; i++) {
        run = range->at[i].is_held ? run + 1 : 0;
        if (run > longest) longest = run, *first = i + 1 - run;
    }
    return longest;
}

static void find_hold(const walk *w, lw_range *range)
{
    int first = 0;
    const int run = longest_held(range, &first), last = first + run - 1;
    if (run == 0) return;
    range->has_hold = true;
    range->held_up_to = wind_at(last);
    range->ends_by = LW_MARGIN_COUNT;
    if (last + 1 == LW_RANGE_WINDS) return;
    const border b = {.walk = w, .range = range, .from = &w->asks[last]};
    range->held_up_to = between(&b, is_held, wind_at(last + 1), wind_at(last));
    name_end(range, &range->at[last + 1]);
}

// Rudder incidence wound for flight in a wind: of the nearest wind in which she flies.
static double wound_for(const lw_craft *craft, const lw_range *range, int i)
{
    for (int away = 0; away < LW_RANGE_WINDS; away++) {
        for (int k = i - away; k <= i + away; k += away ? 2 * away : 1) {
            if (k < 0 || k >= LW_RANGE_WINDS || !is_up(&range->at[k].trimmed)) continue;
            return craft->rudder_mark + craft->rudder_turn * range->at[k].trimmed.flight.turns;
        }
    }
    return craft->rudder_mark;
}

#define LAUNCH_MOST (22.0 * LW_KN)  // no launch is looked for in more wind

// Least wind that launches on a heading, to 0.1 kn; keeps what was found on the hull on the way.
static double launch_on(const walk *w, const lw_range *range, double heading,
                        lw_launch on_hull[LW_RANGE_WINDS])
{
    for (int i = 0; wind_at(i) <= LAUNCH_MOST; i++) {
        const double rudder = wound_for(w->craft, range, i);
        on_hull[i] = lw_launch_of(w->craft, w->setup, rudder, wind_at(i), heading);
        if (!on_hull[i].flies) continue;
        const border b = {.walk = w, .rudder = rudder, .heading = heading};
        return i ? between(&b, launches, wind_at(i - 1), wind_at(i)) : wind_at(0);
    }
    return 0.0;
}

double lw_range_launch(const lw_craft *craft, const lw_setup *setup, const lw_range *range,
                       double heading)
{
    const walk w = {.craft = craft, .setup = setup};
    lw_launch on_hull[LW_RANGE_WINDS];
    return launch_on(&w, range, heading, on_hull);
}

void lw_range_of(const lw_craft *craft, const lw_setup *setup, lw_course course, double puff,
                 lw_range *range)
{
    walk w = {.craft = craft, .setup = setup, .course = course, .puff = puff};
    *range = (lw_range){.ends_by = LW_MARGIN_COUNT};
    for (int i = 0; i < LW_RANGE_WINDS; i++) {
        range->at[i].wind = wind_at(i);
        range->at[i].trimmed.outcome = range->at[i].puffed.outcome = LW_NO_BALANCE;
    }
    trim_all(&w, range);
    for (int i = 0; i < LW_RANGE_WINDS; i++) puff_point(&w, range, i);
    find_stay(&w, range);
    find_hold(&w, range);
    range->launches_at = launch_on(&w, range, middle(course), range->on_hull);
    range->has_launch = range->launches_at > 0.0;
}
