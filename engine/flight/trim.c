// trim.c - heel, place, turns and heading chosen by a criterion.
// SPDX-License-Identifier: MIT

#include "lullwise/trim.h"

#include <math.h>
#include <stddef.h>
#include <string.h>

#include "lullwise/elementary.h"
#include "solve/ascent.h"

#define AS_TEXT(name, text, doc) text,
static const char *const texts[] = {LW_CRITERION_LIST(AS_TEXT)};
const char *lw_criterion_text(lw_criterion criterion) { return texts[criterion]; }

#define AS_DOC(name, text, doc) doc,
static const char *const docs[] = {LW_CRITERION_LIST(AS_DOC)};
const char *lw_criterion_doc(lw_criterion criterion) { return docs[criterion]; }

lw_criterion lw_criterion_of(const char *text)
{
    int by = 0;
    while (by < LW_CRITERION_COUNT && strcmp(text, texts[by]) != 0) by++;
    return (lw_criterion)by;
}

// --- what a trim is worth

#define OVERDRAWN 4.0    // [m/s] for a scale: more than any trim gains by it             [judged]
#define KEPT      0.25   // the same of a scale that is left: half a knot for a little [judged]
#define IN_PUFF   1.0    // the same in the puff, whose margins give way to the wind's    [judged]
#define EDGE      0.1    // of a scale, over which a margin's end is rounded              [judged]
#define SOFTEST   0.1    // of a scale, over which the least of several margins is rounded [judged]
#define AFLOAT    20.0   // [m/s] what a boat in the water is marked down: any flight goes before it
#define NO_PUFF   10.0   // [m/s] what a puff without a balance costs
#define TILTED    0.002  // [m/s] for the square of a degree of pitch: of equals the leveller
#define PULL      0.1    // of the weight: a little, of the rudder foil's pull down  [judged]
#define HURRY     0.02   // of a scale for a m/s, when most is to be held

#define ROW_OF(member) (offsetof(lw_margins, member) / sizeof(double))

static double at(const lw_margins *margins, size_t i) { return ((const double *)margins)[i]; }

// edge ln(1 + exp(-z / edge)): what is overdrawn, smooth
static double soft_lack(double z)
{
    const double x = z / EDGE;
    if (x > 20.0) return 0.0;
    return x < -20.0 ? -z : EDGE * lw_log(1.0 + lw_exp(-x));
}

static double scaled(const lw_margins *m, size_t i) { return at(m, i) / lw_margins_scale(i); }

static double lack_of(const lw_margins *margins)
{
    double sum = 0.0;
    for (size_t i = 0; i < LW_MARGIN_COUNT; i++) sum += soft_lack(scaled(margins, i));
    return sum;
}

// Those that waves and more wind use up; the last three are what holds the boat, while a main foil
// that nears the surface lets her sink back by itself.
static const size_t used_up[] = {ROW_OF(tip_depth), ROW_OF(rudder_tip), ROW_OF(flap_up),
                                 ROW_OF(wand_forward)};
enum { HOLDING = 1, USED_UP = sizeof used_up / sizeof used_up[0] };

// Adds exp(-z / softest) of each.
static void add_margins(const lw_margins *m, double *sum)
{
    for (size_t i = 0; i < USED_UP; i++) {
        *sum += lw_exp(-fmin(fmax(scaled(m, used_up[i]) / SOFTEST, -60.0), 60.0));
    }
}

// What is missing of a little of each that holds her: a flap that every trough sends to its stop,
// or a rudder tip that every trough bares, lets go for a moment long before steady flight ends.
static double unkept(const lw_margins *m)
{
    double sum = 0.0;
    for (size_t i = HOLDING; i < USED_UP; i++) sum += soft_lack(scaled(m, used_up[i]) - 1.0);
    return sum;
}

// What a margin is worth when some of it is forgiven.
static double forgiven(double margin, double room)
{
    return fmin(margin + room, fmax(margin, 0.0));
}

// A chord of tip depth and all of the heel in hand; not the wand's and the flap's travel, for she
// would leave the water.  [judged]
static lw_margins bold(const lw_margins *margins)
{
    lw_margins m = *margins;
    m.tip_depth = forgiven(m.tip_depth, 1.0);
    m.rudder_tip = forgiven(m.rudder_tip, 1.0);
    m.heel = fmax(m.heel, 0.0);
    return m;
}

// A rudder foil that holds the stern down keeps the bow up: let go by air or a trough, it lets her
// dive. So a sailor sits no further forward than it lifts [common practice]: what it pulls, as far
// as sitting further aft would take it off.
static double too_far_forward(const lw_craft *craft, const lw_trim *t)
{
    const double way = craft->place_forward - craft->place_aft;
    const double forward = way > 0.0 ? (t->ask.place - craft->place_aft) / way : 0.0;
    return soft_lack(t->steady.flight.rudder_lift / (PULL * craft->weight)) * forward;
}

static double hold_score(const lw_trim *t, double course)
{
    double sum = 0.0;
    add_margins(&t->steady.margins, &sum);
    if (t->puffed.outcome == LW_FLIES) add_margins(&t->puffed.margins, &sum);
    const double wet = t->steady.outcome == LW_FLOATS ? AFLOAT : 0.0;
    const double lost = t->puffed.outcome == LW_NO_BALANCE ? NO_PUFF : 0.0;
    const double lack = lack_of(&t->steady.margins);
    return HURRY * lw_flight_made_good(&t->steady.flight, course) - SOFTEST * lw_log(sum) -
           OVERDRAWN * lack - wet - lost;
}

static double speed_score(const lw_craft *craft, const lw_trim *t, const lw_freedom *free)
{
    const lw_margins eased = free->by == LW_BY_BOLD ? bold(&t->steady.margins) : t->steady.margins;
    const double tilt = t->steady.flight.pitch / LW_DEG;
    double score =
        lw_flight_made_good(&t->steady.flight, free->course) - OVERDRAWN * lack_of(&eased);
    if (free->turns) score -= TILTED * tilt * tilt;
    if (free->place) score -= OVERDRAWN * too_far_forward(craft, t);
    if (free->by != LW_BY_BOLD) score -= KEPT * unkept(&t->steady.margins);
    if (t->steady.outcome == LW_FLOATS) score -= AFLOAT;
    if (free->puff <= 0.0) return score;
    if (t->puffed.outcome == LW_NO_BALANCE) return score - NO_PUFF;
    if (t->puffed.outcome == LW_FLIES) score -= IN_PUFF * lack_of(&t->puffed.margins);
    return score;
}

static double score_of(const lw_craft *craft, const lw_trim *t, const lw_freedom *free)
{
    if (t->steady.outcome == LW_NO_BALANCE) return -1e9;
    return free->by == LW_BY_HOLD ? hold_score(t, free->course) : speed_score(craft, t, free);
}

bool lw_trim_is_up(const lw_trim *trim) { return lw_answer_is_up(&trim->steady); }

bool lw_trim_beats(const lw_trim *trim, const lw_trim *other)
{
    return lw_trim_is_up(trim) && (!lw_trim_is_up(other) || trim->score > other->score);
}

bool lw_trim_is_held(const lw_trim *trim)
{
    return lw_answer_is_kept(&trim->steady) && lw_answer_rides_out(&trim->puffed);
}

// --- trims side by side

#define SIDE_BY_SIDE 24

// Answers of trims, in the puff sought from where a flight in it was found before.
static void answer_all(const lw_craft *craft, const lw_freedom *free, lw_answer in_puff,
                       lw_trim *trims, size_t n)
{
    lw_ask asks[SIDE_BY_SIDE] = {{0}};
    lw_answer answers[SIDE_BY_SIDE];
    for (size_t i = 0; i < n; i++) asks[i] = trims[i].ask;
    lw_balance_akin(craft, asks, answers, n);
    for (size_t i = 0; i < n; i++) {
        trims[i].steady = trims[i].puffed = answers[i];
        if (free->puff <= 0.0) continue;
        lw_ask_follow(craft, &asks[i], &answers[i]);
        const double rudder = lw_ask_rudder(&asks[i]);
        lw_ask_follow(craft, &asks[i], &in_puff);
        lw_ask_give_rudder(&asks[i], rudder);
        asks[i].wind += free->puff;
        asks[i].heel = fmin(fmax(asks[i].heel + trims[i].heel_in_puff, 0.0), craft->most_heel);
    }
    if (free->puff <= 0.0) return;
    lw_balance_akin(craft, asks, answers, n);
    for (size_t i = 0; i < n; i++) trims[i].puffed = answers[i];
}

// --- the search

enum { HEEL, PLACE, BOW, HEADING, HEEL_IN_PUFF, VARIABLES };
_Static_assert(VARIABLES <= LW_ASCENT_MOST, "the search has room for all that is free");

static const double unit[VARIABLES] = {6.0 * LW_DEG, 0.24, 1.5 * LW_DEG, 6.0 * LW_DEG,
                                       6.0 * LW_DEG};

typedef struct search {
    const lw_craft *craft;
    const lw_freedom *free;
    lw_trim best;
    int variable[VARIABLES];  // that are free
    size_t count;
} search;

// Heel in the puff is sought as it is, not as more heel: what she cannot heel more would be a
// plateau, on which a search stands still.
static double value_of(const lw_trim *trim, int variable)
{
    const lw_ask *ask = &trim->ask;
    const double values[VARIABLES] = {ask->heel, ask->place, ask->given.pitch, ask->heading,
                                      ask->heel + trim->heel_in_puff};
    return values[variable];
}

// In the order of the variables: heel before heel in the puff.
static void put_value(lw_trim *trim, int variable, double value)
{
    lw_ask *ask = &trim->ask;
    double *const members[VARIABLES] = {&ask->heel, &ask->place, &ask->given.pitch, &ask->heading,
                                        &trim->heel_in_puff};
    *members[variable] = variable == HEEL_IN_PUFF ? value - ask->heel : value;
}

static void evaluate(void *of, const lw_point *points, double *values, size_t n)
{
    search *s = of;
    lw_trim trims[SIDE_BY_SIDE];
    for (size_t i = 0; i < n; i++) {
        trims[i] = s->best;
        for (size_t k = 0; k < s->count; k++) {
            const int v = s->variable[k];
            put_value(&trims[i], v, points[i].x[k] * unit[v]);
        }
    }
    answer_all(s->craft, s->free, s->best.puffed, trims, n);
    size_t top = n;
    for (size_t i = 0; i < n; i++) {
        values[i] = trims[i].score = score_of(s->craft, &trims[i], s->free);
        const double than = top < n ? trims[top].score : s->best.score;
        if (trims[i].score > than) top = i;
    }
    if (top == n) return;
    s->best = trims[top];
    lw_ask_follow(s->craft, &s->best.ask, &s->best.steady);
}

static void bounds_of(const lw_craft *craft, const lw_freedom *free, int variable, double *low,
                      double *high)
{
    const double lows[VARIABLES] = {0.0, craft->place_aft, -craft->most_bow_down, free->heading_low,
                                    0.0};
    const double highs[VARIABLES] = {craft->most_heel, craft->place_forward, craft->most_bow_up,
                                     free->heading_high, craft->most_heel};
    *low = lows[variable], *high = highs[variable];
}

static bool is_free(const lw_freedom *free, int variable)
{
    const bool frees[VARIABLES] = {free->heel, free->place, free->turns && free->by != LW_BY_LEVEL,
                                   free->heading, free->heel && free->puff > 0.0};
    return frees[variable];
}

#define GAIN       2e-4  // [m/s] of a round, below which the search ends
#define GAIN_BOLD  2e-3  // the same where the heading is sought: flat about its best
#define ROUNDS     24
#define ROUNDS_OFF 6    // where she is not held: what is best there is of little use
#define OFF        0.5  // of a scale that is overdrawn
#define APART      0.03

static int rounds_of(const search *s)
{
    return lack_of(&s->best.steady.margins) > OFF ? ROUNDS_OFF : ROUNDS;
}

static void climb(search *s)
{
    lw_ascent ascent = {.evaluate = evaluate,
                        .of = s,
                        .apart = APART,
                        .gain = s->free->heading ? GAIN_BOLD : GAIN,
                        .rounds = rounds_of(s)};
    lw_point x;
    s->count = 0;
    for (int v = 0; v < VARIABLES; v++) {
        double low, high;
        if (!is_free(s->free, v)) continue;
        bounds_of(s->craft, s->free, v, &low, &high);
        const double value = fmin(fmax(value_of(&s->best, v), low), high);
        put_value(&s->best, v, value);
        x.x[s->count] = value / unit[v];
        ascent.low.x[s->count] = low / unit[v], ascent.high.x[s->count] = high / unit[v];
        s->variable[s->count++] = v;
    }
    ascent.count = s->count;
    s->best.score = -INFINITY;
    lw_ascent_from(&ascent, &x);
}

// --- a start that flies

#define STARTS 8

// Freer: where a boat flies soonest, nearer to a reach and well heeled.
static void make_freer(const lw_craft *craft, const lw_freedom *free, lw_ask *ask)
{
    const double reach = 100.0 * LW_DEG, most = 8.0 * LW_DEG;
    if (free->heel) ask->heel = craft->most_heel;
    if (!free->heading) return;
    const double bear = fmin(fmax(reach - ask->heading, -most), most);
    ask->heading = fmin(fmax(ask->heading + bear, free->heading_low), free->heading_high);
}

// The best from a few speeds, as asked and freer; a boat afloat stays so where none of them flies.
static void find_start(search *s)
{
    static const double speeds[STARTS] = {5.5, 5.5, 6.5, 6.5, 8.0, 8.0, 11.0, 11.0};
    lw_trim starts[STARTS];
    for (int i = 0; i < STARTS; i++) {
        starts[i] = s->best;
        starts[i].ask.start.speed = speeds[i];
        starts[i].ask.start.ride_height = 0.3;
        if (i % 2) make_freer(s->craft, s->free, &starts[i].ask);
    }
    const lw_freedom calm = {.by = LW_BY_SPEED, .course = s->free->course};
    answer_all(s->craft, &calm, s->best.puffed, starts, STARTS);
    int top = 0;
    for (int i = 0; i < STARTS; i++) {
        starts[i].score = score_of(s->craft, &starts[i], &calm);
        if (starts[i].score > starts[top].score) top = i;
    }
    const bool flies = starts[top].steady.outcome == LW_FLIES;
    if (s->best.steady.outcome == LW_FLOATS && !flies) return;
    s->best = starts[top];
    lw_ask_follow(s->craft, &s->best.ask, &s->best.steady);
}

// The puff comes a knot at a time, as far as there is a balance.
static void find_puff(search *s)
{
    const double puff = s->free->puff;
    const int steps = (int)ceil(puff / LW_KN);
    lw_freedom part = *s->free;
    lw_answer reached = s->best.steady;
    for (int i = 1; i <= steps; i++) {
        part.puff = puff * i / steps;
        answer_all(s->craft, &part, reached, &s->best, 1);
        if (s->best.puffed.outcome != LW_NO_BALANCE) reached = s->best.puffed;
    }
    s->best.puffed = reached;
}

// The trim as it stands, in the wind and in the puff.
static search search_of(const lw_craft *craft, const lw_trim *start, const lw_freedom *free)
{
    search s = {.craft = craft, .free = free, .best = *start};
    const lw_freedom calm = {.puff = 0.0};
    lw_ask *ask = &s.best.ask;
    if (free->turns && !ask->gives_pitch) lw_ask_give_pitch(ask, ask->start.pitch);
    if (free->by == LW_BY_LEVEL) ask->given.pitch = ask->start.pitch = 0.0;
    answer_all(craft, &calm, s.best.puffed, &s.best, 1);
    if (s.best.steady.outcome != LW_FLIES && free->heel) find_start(&s);
    lw_ask_follow(craft, ask, &s.best.steady);
    if (free->puff > 0.0) find_puff(&s);
    s.best.score = score_of(craft, &s.best, free);
    return s;
}

lw_trim lw_trim_as(const lw_craft *craft, const lw_trim *start, const lw_freedom *free)
{
    lw_freedom none = *free;
    none.heel = none.heading = false;
    return search_of(craft, start, &none).best;
}

lw_trim lw_trim_from(const lw_craft *craft, const lw_trim *start, const lw_freedom *free)
{
    search s = search_of(craft, start, free);
    climb(&s);
    return s.best;
}

lw_trim lw_trim_again(const lw_craft *craft, const lw_setup *setup, const lw_answer *answer)
{
    return (lw_trim){.ask = lw_ask_as(craft, setup, answer), .steady = *answer, .puffed = *answer};
}

lw_trim lw_trim_of(const lw_craft *craft, const lw_ask *start, const lw_freedom *free)
{
    const lw_trim from = {.ask = *start};
    return lw_trim_from(craft, &from, free);
}
