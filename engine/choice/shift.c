// shift.c - a day's outlook for a boat that is a little different, without a new search.
// SPDX-License-Identifier: MIT
//
// Where the sailor sails for speed, a little change of the boat moves the best speed as much as it
// moves the speed at unchanged heel, place and heading; so those stay, and one balance answers. The
// hold limit moves by what the margin that ends it has lost, over its slope in the wind; the least
// wind that keeps her up as that does in which one trim still flies.

#include "lullwise/sensitivity.h"

#include <math.h>

#include "lullwise/elementary.h"

#define WIND_STEP  (0.5 * LW_KN)
#define MOVED_MOST (3.0 * LW_KN)  // first order is worth nothing beyond

static double within(double x, double most) { return fmin(fmax(x, -most), most); }

// A boat, set up with one of her pins.
typedef struct set_boat {
    const lw_craft *craft;
    lw_setup setup;
} set_boat;

static lw_ask ask_as(const set_boat *boat, const lw_answer *answer)
{
    return lw_ask_as(boat->craft, &boat->setup, answer);
}

static lw_answer answer_to(const set_boat *boat, const lw_ask *ask)
{
    lw_answer answer;
    lw_balance(boat->craft, ask, &answer, 1);
    return answer;
}

// The margin that ends the hold, at the last held point in `more` wind; NAN when it is not known.
static double hold_margin(const set_boat *boat, const lw_range *range, int knot, double puff,
                          double more)
{
    const lw_range_point *point = &range->at[knot];
    lw_ask ask = ask_as(boat, &point->trimmed);
    if (range->ends_in_puff && puff > 0.0) {
        const lw_answer *before = &range->at[lw_range_nearest(point->wind - puff)].trimmed;
        lw_ask below = ask_as(boat, before);
        below.wind = point->wind - puff + more;
        const lw_answer trimmed = answer_to(boat, &below);
        if (trimmed.outcome != LW_FLIES) return NAN;
        ask = ask_as(boat, &point->puffed);
        lw_ask_give_rudder(&ask, lw_craft_rudder(boat->craft, trimmed.flight.turns));
    }
    ask.wind += more;
    const lw_answer answer = answer_to(boat, &ask);
    if (answer.outcome != LW_FLIES) return NAN;
    return lw_quantity_value(&lw_margins_table.rows[range->ends_by], &answer.margins);
}

static bool flies(const lw_answer *answer) { return answer->outcome == LW_FLIES; }

#define STAY_TRIED 24
#define STAY_BELOW (2.5 * LW_KN)  // tried, from the wind of a trim
#define STAY_ABOVE (0.5 * LW_KN)

// Least wind, down from a little more than its own, in which a flight's trim still flies; NAN:
// none. Tried in even steps, and again within one.
static double least_wind(const set_boat *boat, const lw_range_point *point)
{
    double from = point->wind - STAY_BELOW, to = point->wind + STAY_ABOVE;
    for (int round = 0; round < 2; round++) {
        lw_ask asks[STAY_TRIED];
        lw_answer answers[STAY_TRIED];
        const double step = (to - from) / (STAY_TRIED - 1);
        for (int i = 0; i < STAY_TRIED; i++) {
            asks[i] = ask_as(boat, &point->trimmed);
            asks[i].wind = from + i * step;
        }
        lw_balance(boat->craft, asks, answers, STAY_TRIED);
        int least = STAY_TRIED;
        while (least > 0 && flies(&answers[least - 1])) least--;
        if (least == STAY_TRIED) return NAN;
        if (least == 0) return from;
        to = from + least * step, from = to - step;
    }
    return to;
}

static lw_limit_slopes slopes_of(const set_boat *boat, const lw_range *range, double puff)
{
    lw_limit_slopes s = {.hold_knot = -1, .stay_knot = -1};
    if (range->has_hold && range->ends_by < LW_MARGIN_COUNT) {
        const int knot = lw_range_interval_of(range->held_up_to + 1e-9 * LW_KN).below;
        s.hold_margin = hold_margin(boat, range, knot, puff, 0.0);
        s.hold_slope =
            (hold_margin(boat, range, knot, puff, WIND_STEP) - s.hold_margin) / WIND_STEP;
        if (s.hold_slope < 0.0) s.hold_knot = knot;  // false for NAN
    }
    int first = 0;
    while (first < LW_RANGE_WINDS && !flies(&range->at[first].trimmed)) first++;
    if (first + 2 < LW_RANGE_WINDS && flies(&range->at[first + 1].trimmed)) {
        s.stay_least = least_wind(boat, &range->at[first + 1]);
        if (isfinite(s.stay_least)) s.stay_knot = first + 1;
    }
    return s;
}

void lw_shift_base_prepare(lw_shift_base *base, const lw_outlook *outlook)
{
    *base = (lw_shift_base){.outlook = outlook, .puff = outlook->gusts.puff - outlook->gusts.mean};
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        const lw_setup setup = lw_craft_setup(&outlook->craft, &outlook->boat, pin);
        const set_boat boat = {&outlook->craft, setup};
        for (size_t c = 0; c < outlook->course_count; c++) {
            base->slopes[pin][c] = slopes_of(&boat, &outlook->ranges[pin][c], base->puff);
        }
    }
}

// Speeds at the winds of the day, from the gust's lowest to its highest.
static void shift_speeds(const set_boat *boat, lw_gusts gusts, lw_range *range)
{
    lw_ask asks[LW_RANGE_WINDS];
    lw_answer answers[LW_RANGE_WINDS];
    int knots[LW_RANGE_WINDS];
    size_t n = 0;
    const int last = lw_range_nearest(gusts.puff + 1.5 * LW_KN);
    for (int k = lw_range_nearest(gusts.lull - 1.5 * LW_KN); k <= last; k++) {
        if (!flies(&range->at[k].trimmed)) continue;
        knots[n] = k;
        asks[n++] = ask_as(boat, &range->at[k].trimmed);
    }
    if (n == 0) return;
    lw_balance(boat->craft, asks, answers, n);
    for (size_t i = 0; i < n; i++) {
        if (flies(&answers[i])) range->at[knots[i]].trimmed = answers[i];
    }
}

static void shift_limits(const set_boat *boat, const lw_limit_slopes *s, double puff,
                         const lw_range *before, lw_range *range)
{
    if (s->hold_knot >= 0) {
        const double margin = hold_margin(boat, before, s->hold_knot, puff, 0.0);
        const double moved = -(margin - s->hold_margin) / s->hold_slope;
        if (isfinite(moved)) range->held_up_to += within(moved, MOVED_MOST);
    }
    if (s->stay_knot >= 0) {
        const double moved = least_wind(boat, &before->at[s->stay_knot]) - s->stay_least;
        if (isfinite(moved)) range->stays_up_at += within(moved, MOVED_MOST);
    }
}

// Speed made good, summed over the knots of the day's winds in which both fly.
static double sum_good(const lw_range *range, const lw_range *other, lw_gusts gusts,
                       lw_course course)
{
    double sum = 0.0;
    for (int k = lw_range_nearest(gusts.lull); k <= lw_range_nearest(gusts.puff); k++) {
        if (!flies(&range->at[k].trimmed) || !flies(&other->at[k].trimmed)) continue;
        sum += lw_flight_made_good(&range->at[k].trimmed.flight, course.direction);
    }
    return sum;
}

// Rides are carried over by what steady flight gains or loses.
void lw_shift_pace(const lw_outlook *from, size_t pin, lw_outlook *to)
{
    for (size_t c = 0; c < from->course_count; c++) {
        const lw_range *was = &from->ranges[pin][c], *is = &to->ranges[pin][c];
        const double before = sum_good(was, is, from->gusts, from->courses[c]);
        const double after = sum_good(is, was, from->gusts, from->courses[c]);
        to->pace[pin][c] = before > 0.0 && after > 0.0 ? after / before : 1.0;
    }
}

void lw_shifted(const lw_shift_base *base, const lw_boat *boat, const lw_sections *sections,
                const lw_person *person, lw_outlook *to)
{
    const lw_outlook *from = base->outlook;
    *to = *from;
    lw_craft_prepare(&to->craft, boat, sections, person, &from->craft.medium);
    for (size_t pin = 0; pin < from->pin_count; pin++) {
        const set_boat set = {&to->craft, lw_craft_setup(&to->craft, boat, pin)};
        for (size_t c = 0; c < from->course_count; c++) {
            lw_range *range = &to->ranges[pin][c];
            shift_speeds(&set, from->gusts, range);
            shift_limits(&set, &base->slopes[pin][c], base->puff, &from->ranges[pin][c], range);
        }
        lw_shift_pace(from, pin, to);
    }
}
