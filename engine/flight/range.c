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

// The wind as a puff on a boat trimmed for less: rudder, place and heading stay, heel may follow.
static lw_answer puffed_from(const lw_craft *craft, const lw_ask *trimmed, double wind)
{
    lw_ask ask = *trimmed;
    ask.wind = wind;
    ask.level = false;
    const lw_freedom free = {.heel = true, .course = ask.heading};
    return lw_fastest(craft, &ask, &free);
}

static bool is_up(const lw_answer *answer)
{
    return answer->outcome == LW_FLIES && answer->margins.clearance >= 0.0;
}

static bool keeps_margins(const lw_answer *answer)
{
    return is_up(answer) && lw_margins_overdrawn(&answer->margins) <= 0.0;
}

// One walk along the wind: every point starts from its neighbour's pose.
typedef struct walk {
    const lw_craft *craft;
    const lw_setup *setup;
    lw_course course;
    double puff;
    lw_ask asks[LW_RANGE_WINDS];  // as left by each point
} walk;

static lw_answer trim_at(const walk *w, double wind, const lw_ask *from, lw_ask *left)
{
    lw_ask ask = from ? *from : lw_ask_of(w->craft, w->setup, wind, middle(w->course));
    ask.wind = wind;
    const lw_freedom free = freedom_on(w->course);
    const lw_answer answer = lw_fastest(w->craft, &ask, &free);
    *left = ask;
    return answer;
}

static double wind_at(int i) { return (LW_RANGE_FIRST_KN + i) * LW_KN; }

// Trims at knot i, from a neighbour when it flies, else from scratch.
static void trim_point(walk *w, lw_range *range, int i, int neighbour)
{
    lw_range_point *point = &range->at[i];
    point->wind = wind_at(i);
    const bool follow = neighbour >= 0 && is_up(&range->at[neighbour].trimmed);
    point->trimmed = trim_at(w, point->wind, follow ? &w->asks[neighbour] : NULL, &w->asks[i]);
}

// Where a neighbour flies and the point does not, the neighbour's pose may lead to a flight.
static void mend_point(walk *w, lw_range *range, int i, int neighbour)
{
    if (neighbour < 0 || neighbour >= LW_RANGE_WINDS) return;
    if (!is_up(&range->at[neighbour].trimmed) || keeps_margins(&range->at[i].trimmed)) return;
    lw_ask left;
    const lw_answer again = trim_at(w, wind_at(i), &w->asks[neighbour], &left);
    const lw_answer *had = &range->at[i].trimmed;
    const bool better = !is_up(had) || lw_margins_overdrawn(&again.margins) <
                                           lw_margins_overdrawn(&had->margins);
    if (is_up(&again) && better) range->at[i].trimmed = again, w->asks[i] = left;
}

static void trim_all(walk *w, lw_range *range)
{
    const int middle_wind = 13 - LW_RANGE_FIRST_KN;
    trim_point(w, range, middle_wind, -1);
    for (int i = middle_wind + 1; i < LW_RANGE_WINDS; i++) trim_point(w, range, i, i - 1);
    for (int i = middle_wind - 1; i >= 0; i--) trim_point(w, range, i, i + 1);
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
    point->is_held = keeps_margins(&point->trimmed) && keeps_margins(&point->puffed);
}

// Halves between a wind where the claim is false and one where it is true, to 0.1 kn.
typedef bool claim(const walk *w, const lw_range *range, double wind, const lw_ask *from);

static double border(const walk *w, const lw_range *range, claim *holds, double no, double yes,
                     const lw_ask *from)
{
    while (fabs(yes - no) > 0.1 * LW_KN) {
        const double mid = 0.5 * (yes + no);
        if (holds(w, range, mid, from)) {
            yes = mid;
        } else {
            no = mid;
        }
    }
    return yes;
}

static bool stays_up(const walk *w, const lw_range *range, double wind, const lw_ask *from)
{
    (void)range;
    lw_ask left;
    const lw_answer answer = trim_at(w, wind, from, &left);
    return is_up(&answer);
}

static bool is_held(const walk *w, const lw_range *range, double wind, const lw_ask *from)
{
    lw_ask left, below;
    const lw_answer trimmed = trim_at(w, wind, from, &left);
    if (!keeps_margins(&trimmed)) return false;
    if (w->puff <= 0.0 || !trimmed_for(w, range, wind - w->puff, &below)) return true;
    const lw_answer puffed = puffed_from(w->craft, &below, wind);
    return keeps_margins(&puffed);
}

static bool launches(const walk *w, const lw_range *range, double wind, const lw_ask *from)
{
    (void)range, (void)from;
    return lw_launch_of(w->craft, w->setup, wind, middle(w->course)).flies;
}

static void find_stay(const walk *w, lw_range *range)
{
    for (int i = 0; i < LW_RANGE_WINDS; i++) {
        if (!is_up(&range->at[i].trimmed)) continue;
        range->has_flight = true;
        range->stays_up_at = i ? border(w, range, stays_up, wind_at(i - 1), wind_at(i), &w->asks[i])
                               : wind_at(0);
        return;
    }
}

static void name_end(lw_range *range, const lw_range_point *point)
{
    range->ends_in_puff = keeps_margins(&point->trimmed);
    const lw_answer *answer = range->ends_in_puff ? &point->puffed : &point->trimmed;
    range->ends_by = answer->outcome == LW_NO_BALANCE ? LW_MARGIN_COUNT
                                                      : lw_margins_first(&answer->margins);
}

// The first run of held winds counts: beyond its end a sailor would have swum.
static void find_hold(const walk *w, lw_range *range)
{
    int first = 0;
    while (first < LW_RANGE_WINDS && !range->at[first].is_held) first++;
    if (first == LW_RANGE_WINDS) return;
    int last = first;
    while (last + 1 < LW_RANGE_WINDS && range->at[last + 1].is_held) last++;
    range->has_hold = true;
    range->held_up_to = wind_at(last);
    range->ends_by = LW_MARGIN_COUNT;
    if (last + 1 == LW_RANGE_WINDS) return;
    range->held_up_to = border(w, range, is_held, wind_at(last + 1), wind_at(last), &w->asks[last]);
    name_end(range, &range->at[last + 1]);
}

static double find_launch(const walk *w, lw_launch on_hull[LW_RANGE_WINDS])
{
    for (int i = 0; i < LW_RANGE_WINDS; i++) {
        on_hull[i] = lw_launch_of(w->craft, w->setup, wind_at(i), middle(w->course));
        if (!on_hull[i].flies) continue;
        return i ? border(w, NULL, launches, wind_at(i - 1), wind_at(i), NULL) : wind_at(0);
    }
    return 0.0;
}

double lw_range_launch(const lw_craft *craft, const lw_setup *setup, lw_course course)
{
    const walk w = {.craft = craft, .setup = setup, .course = course};
    lw_launch on_hull[LW_RANGE_WINDS];
    return find_launch(&w, on_hull);
}

void lw_range_of(const lw_craft *craft, const lw_setup *setup, lw_course course, double puff,
                 lw_range *range)
{
    walk w = {.craft = craft, .setup = setup, .course = course, .puff = puff};
    *range = (lw_range){.ends_by = LW_MARGIN_COUNT};
    trim_all(&w, range);
    for (int i = 0; i < LW_RANGE_WINDS; i++) puff_point(&w, range, i);
    find_stay(&w, range);
    find_hold(&w, range);
    range->launches_at = find_launch(&w, range->on_hull);
    range->has_launch = range->launches_at > 0.0;
}
