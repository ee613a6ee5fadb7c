// wish.c - what a sailor wants in each wind of some seconds: course, heel and their effort.
// SPDX-License-Identifier: MIT

#include "motion/sailor/wish.h"

#include <math.h>
#include <string.h>

#include "lullwise/elementary.h"
#include "solve/within.h"

#define RESERVE      1.25             // effort wanted at least: power in hand for a lull   [judged]
#define RESERVE_COST 8.0              // [m/s] for each part of effort that is missing      [judged]
#define MARGIN_COST  4.0              // [m/s] as where the flight is trimmed (flight/trim.c)
#define TURN_COST    0.02             // [m/s] for a step of 5 deg between winds, squared   [judged]
#define LEAST_HEEL   (4.0 * LW_DEG)   // to windward                                        [judged]
#define COURSE_MOST  (30.0 * LW_DEG)  // off the flight's heading either way                [judged]
#define CLOSEST      (32.0 * LW_DEG)  // to the wind                                        [judged]
#define DEEPEST      (165.0 * LW_DEG)

// --- the best in one wind

typedef struct tried {
    lw_ask ask;
    lw_answer answer;
    double worth;
} tried;

// Which courses and heels are tried, and where to.
typedef struct bounds {
    const lw_craft *craft;
    double course, low, high;  // [rad] of the heading
} bounds;

static double worth_of(const bounds *b, const lw_answer *answer, const lw_flight *from)
{
    const lw_flight *f = &answer->flight;
    if (answer->outcome != LW_FLIES) return -1e9;
    lw_margins margins = answer->margins;
    margins.heel = fmax(margins.heel, 0.0);  // heel in hand: bounds have their own
    const double turn = (f->heading - from->heading) / (5.0 * LW_DEG);
    const double lean = (f->heel - from->heel) / (5.0 * LW_DEG);
    return f->speed * lw_cos(f->heading - b->course) -
           RESERVE_COST * fmax(RESERVE - f->effort, 0.0) -
           MARGIN_COST * lw_margins_overdrawn(&margins) - TURN_COST * (turn * turn + lean * lean);
}

#define SIDES 15  // tried at once, at most

// Moves to the best of some steps of course and heel about where it stands.
static void improve(const bounds *b, double turn, double lean, const lw_flight *from, tried *best)
{
    lw_ask asks[SIDES];
    lw_answer answers[SIDES];
    size_t n = 0;
    const double least = fmin(LEAST_HEEL, b->craft->most_heel);
    for (int i = -2; i <= 2; i++) {
        for (int j = -1; j <= 1; j++) {
            lw_ask *ask = &asks[n++];
            *ask = best->ask;
            ask->heading = lw_within(ask->heading + i * turn, b->low, b->high);
            ask->heel = lw_within(ask->heel + j * lean, least, b->craft->most_heel);
        }
    }
    lw_balance(b->craft, asks, answers, n);
    for (size_t i = 0; i < n; i++) {
        const double worth = worth_of(b, &answers[i], from);
        if (worth > best->worth) *best = (tried){asks[i], answers[i], worth};
    }
    lw_ask_follow(b->craft, &best->ask, &best->answer);
}

#define ROUNDS 4

// The best in a wind, from where a neighbour stands; its answer does not fly when there is none.
static tried best_in(const bounds *b, const tried *neighbour, double wind)
{
    tried best = *neighbour;
    best.ask.wind = wind;
    best.answer.outcome = LW_NO_BALANCE;
    best.worth = -1e9;
    double turn = 8.0 * LW_DEG, lean = 5.0 * LW_DEG;
    for (int i = 0; i < ROUNDS; i++) {
        improve(b, turn, lean, &neighbour->answer.flight, &best);
        if (best.answer.outcome != LW_FLIES) break;
        turn *= 0.5, lean *= 0.5;
    }
    return best;
}

// --- the course that a flight is the fastest on

#define ASIDE (3.0 * LW_DEG)

static double course_of(const lw_craft *craft, const lw_ask *ask, const lw_answer *answer)
{
    const lw_flight *f = &answer->flight;
    lw_ask asks[2] = {*ask, *ask};
    lw_answer answers[2];
    asks[0].heading = f->heading - ASIDE, asks[1].heading = f->heading + ASIDE;
    lw_balance(craft, asks, answers, 2);
    if (answers[0].outcome != LW_FLIES || answers[1].outcome != LW_FLIES) {
        const bool is_beat = f->heading<75.0 * LW_DEG, is_run = f->heading> 110.0 * LW_DEG;
        return is_beat ? 0.0 : is_run ? LW_PI : f->heading;
    }
    const double slope = (answers[1].flight.speed - answers[0].flight.speed) / (2.0 * ASIDE);
    return lw_within(f->heading - lw_atan2(slope, f->speed), 0.0, LW_PI);
}

static bounds bounds_about(const lw_craft *craft, const lw_ask *ask, const lw_answer *answer)
{
    const double heading = answer->flight.heading;
    return (bounds){.craft = craft,
                    .course = course_of(craft, ask, answer),
                    .low = fmin(fmax(heading - COURSE_MOST, CLOSEST), heading),
                    .high = fmax(fmin(heading + COURSE_MOST, DEEPEST), heading)};
}

// --- all winds

// From a wind that is found on to more, or to less: the last that flies.
static int as_far_as_flies(const bounds *b, double mean, tried found[LW_WISHES], int from, int by)
{
    int k = from;
    for (int next = k + by; next >= 0 && next < LW_WISHES; k = next, next += by) {
        found[next] = best_in(b, &found[k], lw_wish_wind(mean, next));
        if (found[next].answer.outcome != LW_FLIES) break;
    }
    return k;
}

#define MORE_WIND 6

// The flight asked for, or one on the same course in the least wind that has one.
static bool fly_near(const lw_craft *craft, lw_ask *ask, lw_answer *answer)
{
    lw_ask asks[MORE_WIND];
    lw_answer answers[MORE_WIND];
    if (answer->outcome == LW_FLIES) return true;
    for (int i = 0; i < MORE_WIND; i++) {
        asks[i] = lw_ask_of(craft, &ask->setup, ask->wind * (1.1 + 0.15 * i), ask->heading);
        asks[i].start.rudder = lw_ask_rudder(ask);
        asks[i].heel = ask->heel, asks[i].place = ask->place;
    }
    lw_balance(craft, asks, answers, MORE_WIND);
    for (int i = 0; i < MORE_WIND; i++) {
        if (answers[i].outcome != LW_FLIES) continue;
        *ask = asks[i], *answer = answers[i];
        return true;
    }
    return false;
}

static const lw_wishes none = {.first = LW_WISH_MEAN, .last = LW_WISH_MEAN - 1};

// At the rudder that a balance has.
static lw_ask held_as(const lw_craft *craft, const lw_ask *ask, const lw_answer *answer)
{
    lw_ask held = *ask;
    lw_ask_follow(craft, &held, answer);
    lw_ask_hold_rudder(&held);
    return held;
}

// Sought from wind to wind, from a flight in about one of them.
static lw_wishes sought_from(const lw_craft *craft, double mean, tried start)
{
    tried found[LW_WISHES];
    lw_wishes wishes;
    start.ask = held_as(craft, &start.ask, &start.answer);
    const bounds b = bounds_about(craft, &start.ask, &start.answer);
    const double at = (start.ask.wind / mean - LW_WISH_FIRST) / LW_WISH_STEP;
    const int from = (int)lw_within(floor(at + 0.5), 0.0, LW_WISHES - 1.0);
    found[from] = best_in(&b, &start, lw_wish_wind(mean, from));
    if (found[from].answer.outcome != LW_FLIES) found[from] = start;
    wishes.last = as_far_as_flies(&b, mean, found, from, 1);
    wishes.first = as_far_as_flies(&b, mean, found, from, -1);
    for (int k = wishes.first; k <= wishes.last; k++) {
        wishes.ask[k] = found[k].ask, wishes.answer[k] = found[k].answer;
    }
    return wishes;
}

lw_wishes lw_wishes_of(const lw_motion *motion, const lw_ask *ask, const lw_answer *answer)
{
    tried start = {*ask, *answer, -1e9};
    lw_wishes wishes = none;
    if (!fly_near(motion->craft, &start.ask, &start.answer)) return wishes;
    if (motion->is_gusty) return sought_from(motion->craft, ask->wind, start);
    wishes.last = wishes.first;
    wishes.ask[LW_WISH_MEAN] = start.ask, wishes.answer[LW_WISH_MEAN] = start.answer;
    return wishes;
}

// --- again, for a boat a little different

// The winds about the mean, next to each other, in which she flies: of what there is.
static void keep_flying(lw_wishes *w)
{
    const int first = w->first, last = w->last;
    int from = first;
    for (int k = first; k <= last; k++) {
        const bool is_nearer =
            (k - LW_WISH_MEAN) * (k - LW_WISH_MEAN) < (from - LW_WISH_MEAN) * (from - LW_WISH_MEAN);
        if (w->answer[k].outcome != LW_FLIES) continue;
        if (w->answer[from].outcome != LW_FLIES || is_nearer) from = k;
    }
    w->first = w->last = from;
    while (w->last < last && w->answer[w->last + 1].outcome == LW_FLIES) w->last++;
    while (w->first > first && w->answer[w->first - 1].outcome == LW_FLIES) w->first--;
    if (w->answer[from].outcome != LW_FLIES) w->last = w->first - 1;
}

#define LOOKED_AT 1  // winds either way of the mean in which courses and heels are sought anew

// Course and heel a little further, in the winds about the mean.
static void seek_again(const bounds *b, lw_wishes *w)
{
    for (int k = LW_WISH_MEAN - LOOKED_AT; k <= LW_WISH_MEAN + LOOKED_AT; k++) {
        if (k < w->first || k > w->last) continue;
        const lw_flight from = w->answer[k].flight;
        tried best = {w->ask[k], w->answer[k], worth_of(b, &w->answer[k], &from)};
        improve(b, 4.0 * LW_DEG, 3.0 * LW_DEG, &from, &best);
        improve(b, 2.0 * LW_DEG, 1.5 * LW_DEG, &from, &best);
        w->ask[k] = best.ask, w->answer[k] = best.answer;
    }
}

// Course and heel as others wish them, in each wind, at the rudder and place that are held.
static void wish_as_others(const bounds *b, const lw_ask *held, const lw_wishes *others,
                           lw_wishes *w)
{
    for (int k = others->first; k <= others->last; k++) {
        lw_ask *it = &w->ask[k];
        *it = *held;
        it->wind = lw_wish_wind(held->wind, k);
        it->heading = others->ask[k].heading;
        it->heel = fmin(others->ask[k].heel, b->craft->most_heel);
    }
}

// Flights sought from where others fly, and from the one that is held: the better of both, for
// there may be two, and one of them with the foil half out.
static void fly_as_wished(const bounds *b, const lw_flight *held, const lw_wishes *others,
                          lw_wishes *w)
{
    const size_t first = (size_t)others->first, n = (size_t)others->last + 1 - first;
    lw_ask asks[LW_WISHES];
    lw_answer answers[LW_WISHES];
    memcpy(asks, &w->ask[first], n * sizeof asks[0]);
    lw_balance(b->craft, &w->ask[first], &w->answer[first], n);
    for (size_t i = 0; i < n; i++) {
        const double rudder = lw_ask_rudder(&asks[i]);
        lw_ask_follow(b->craft, &asks[i], &others->answer[first + i]);
        lw_ask_give_rudder(&asks[i], rudder);
    }
    lw_balance(b->craft, asks, answers, n);
    for (size_t i = 0; i < n; i++) {
        const bool is_better =
            worth_of(b, &answers[i], held) > worth_of(b, &w->answer[first + i], held);
        if (is_better) w->ask[first + i] = asks[i], w->answer[first + i] = answers[i];
    }
}

lw_wishes lw_wishes_again(const lw_craft *craft, const lw_ask *ask, const lw_answer *answer,
                          const lw_wishes *others)
{
    lw_wishes wishes = *others;
    if (others->last < others->first || !lw_answer_is_up(answer)) return none;
    const lw_ask held = held_as(craft, ask, answer);
    const bounds b = bounds_about(craft, &held, answer);
    wish_as_others(&b, &held, others, &wishes);
    fly_as_wished(&b, &answer->flight, others, &wishes);
    keep_flying(&wishes);
    seek_again(&b, &wishes);
    return wishes;
}

void lw_wishes_let_down(lw_pilot *pilot, const lw_wishes *wishes, double resting)
{
    for (int k = wishes->last + 1; k < LW_WISHES; k++) pilot->wish[k] = pilot->wish[wishes->last];
    for (int k = 0; k < wishes->first; k++) {
        const double share = lw_wish_wind(1.0, k) / lw_wish_wind(1.0, wishes->first);
        lw_wish *wish = &pilot->wish[k];
        *wish = pilot->wish[wishes->first];
        wish->gains.effort *= share * share;
        wish->heel = fmin(wish->heel, LEAST_HEEL + (wish->heel - LEAST_HEEL) * share * share);
    }
    for (int k = 0; k <= wishes->first && k < LW_WISH_MEAN; k++) pilot->wish[k].afloat = resting;
}
