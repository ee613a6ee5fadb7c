// lap.c - time round the course from rides: pace under way, swims at the day's cost, tacks and
// gybes.
// SPDX-License-Identifier: MIT

#include "choice/lap.h"

#include <math.h>

#include "choice/blocks.h"
#include "lullwise/choice_find.h"
#include "lullwise/elementary.h"

// --- a pin on a course

// Speed made good on the hull, as far as the steady model knows it: below the least wind of a range
// in proportion.
static double hull_speed(const lw_range *range, lw_course course, double wind)
{
    int k = lw_range_interval_of(wind).below;
    while (k > 0 && (range->on_hull[k].flies || range->on_hull[k].speed <= 0.0)) k--;
    const double heading = lw_course_middle(course);
    const double share = fmin(wind / (LW_RANGE_FIRST_KN * LW_KN), 1.0);
    return share * range->on_hull[k].speed * lw_cos(heading - course.direction);
}

// What one kind of rides came to in a wind; NULL: nobody rode there.
static const lw_ride_sum *sum_of(const lw_outlook *outlook, lw_source source, size_t k, size_t pin,
                                 size_t c)
{
    const size_t n = source.number;
    const lw_ride_sum *set = &outlook->sums[source.set][k][pin][c];
    if (source.kind == LW_OF_SET) return set->seconds > 0.0 ? set : NULL;
    const lw_block *block = &outlook->blocks[n / LW_BLOCK_DRAWS];
    const lw_ride_sum *drawn = &block->drawn[n % LW_BLOCK_DRAWS][k][pin][c];
    if (drawn->seconds <= 0.0) return NULL;
    return source.kind == LW_OF_DRAW ? drawn : &block->as_is[k][pin][c];
}

// The sailing that rides show. Swims are the rate that was fitted; of one block alone, which sees
// few, that rate and its own.
static lw_sailing shown_by(const lw_ride_sum *r, double rate, bool is_alone)
{
    const double own = rate * (r->swims + 1.0) / (rate * r->seconds + 1.0);
    return (lw_sailing){.speed = r->along / r->seconds,
                        .flying = fmin(r->flown / r->seconds, 1.0),  // more by a rounding
                        .swims = is_alone ? own : rate};
}

// Winds beside one that were ridden in: the same twice where it is one of them, or beyond all.
typedef struct ridden_beside {
    bool is_there;
    size_t below, above;
} ridden_beside;

static ridden_beside beside_of(const lw_outlook *outlook, lw_source source, size_t pin, size_t c,
                               double x)
{
    bool has_below = false, has_above = false;
    ridden_beside b = {0};
    for (size_t k = 0; k < LW_RIDE_WINDS; k++) {
        if (!sum_of(outlook, source, k, pin, c)) continue;
        if ((double)k <= x) b.below = k, has_below = true;
        if ((double)k >= x && !has_above) b.above = k, has_above = true;
    }
    if (!has_below) b.below = b.above;
    if (!has_above) b.above = b.below;
    b.is_there = has_below || has_above;
    return b;
}

static lw_sailing between(const lw_sailing *a, const lw_sailing *b, double part)
{
    return (lw_sailing){.speed = a->speed + part * (b->speed - a->speed),
                        .flying = a->flying + part * (b->flying - a->flying),
                        .swims = a->swims + part * (b->swims - a->swims)};
}

// In any wind, straight between the winds that were ridden in; beyond them, the nearer.
static lw_sailing ridden_at(const lw_outlook *outlook, lw_source source, size_t pin, size_t c,
                            double wind)
{
    const double x = (wind / outlook->gusts.mean - LW_RIDE_LEAST) / LW_RIDE_APART;
    const ridden_beside b = beside_of(outlook, source, pin, c, x);
    const size_t k[2] = {b.below, b.above};
    lw_sailing at[2];
    if (!b.is_there) return (lw_sailing){0};
    for (int i = 0; i < 2; i++) {
        const bool is_drawn = source.kind == LW_OF_DRAW;
        const double rate = outlook->rate[is_drawn][source.set][pin][c][k[i]];
        at[i] = shown_by(sum_of(outlook, source, k[i], pin, c), rate, source.kind != LW_OF_SET);
    }
    const double part = k[1] > k[0] ? (x - (double)k[0]) / (double)(k[1] - k[0]) : 0.0;
    lw_sailing ridden = between(&at[0], &at[1], part);
    ridden.speed *= outlook->pace[pin][c];
    return ridden;
}

#define FLIES_LEAST 0.005  // of the time under way: less is no flying  [judged]

lw_sailing lw_outlook_sailing(const lw_outlook *outlook, lw_source source, size_t pin,
                              size_t course, double wind)
{
    const lw_range *range = &outlook->ranges[pin][course];
    const double hull = hull_speed(range, outlook->courses[course], wind);
    lw_sailing ridden = {0};
    if (outlook->gusts.mean > 0.0) ridden = ridden_at(outlook, source, pin, course, wind);
    ridden.swim = outlook->cost.swim + outlook->relaunch[pin];
    const double lost = ridden.swims * ridden.swim;
    const double all_in = ridden.speed / (1.0 + lost);
    if (ridden.flying >= FLIES_LEAST && all_in >= LW_KN && lost < 1.0 &&
        !(source.for_time && hull > all_in)) {
        return ridden;
    }
    return (lw_sailing){.speed = fmax(hull, LW_KN), .on_hull = true, .is_stuck = hull < LW_KN};
}

// --- a lap

static double turns_cost(const lw_outlook *outlook, lw_course course, double length)
{
    if (course.high <= course.low) return 0.0;
    const bool up = course.direction < LW_PI / 2.0;
    const double each = up ? outlook->cost.tack : outlook->cost.gybe;
    const double off = 0.5 * (course.low + course.high) - course.direction;
    const double sailed = length / fmax(lw_cos(off), 0.2);
    return floor(sailed / outlook->cost.tack_every) * each;
}

lw_lap lw_lap_of(const lw_outlook *outlook, lw_source source, size_t pin, double wind)
{
    lw_lap lap = {0};
    for (size_t leg = 0; leg < outlook->leg_count; leg++) {
        const size_t c = outlook->leg_course[leg];
        const double length = outlook->leg_length[leg];
        const lw_sailing s = lw_outlook_sailing(outlook, source, pin, c, wind);
        const double sailing = length / s.speed;
        lap.under_way += sailing;
        lap.flown += sailing * s.flying;
        lap.on_hull += sailing * (1.0 - s.flying);
        lap.swims += sailing * s.swims;
        lap.swimming += sailing * s.swims * s.swim;
        lap.seconds += sailing + turns_cost(outlook, outlook->courses[c], length);
        lap.is_stuck |= s.is_stuck;
    }
    lap.seconds += lap.swimming;
    return lap;
}

static void add_lap(lw_lap *sum, const lw_lap *lap)
{
    sum->under_way += lap->under_way;
    sum->flown += lap->flown;
    sum->swims += lap->swims;
    sum->swimming += lap->swimming;
}

static double share_flown(const lw_lap *lap) { return lap->flown / lap->under_way; }

lw_lap lw_lap_expected(const lw_outlook *outlook, lw_source of, size_t pin, double wind)
{
    const lw_lap as_is = lw_lap_of(outlook, of, pin, wind);
    const size_t left_out = of.set - 1;  // a block
    lw_lap drawn = {0}, beside = {0}, lap = as_is;
    double draws = 0.0;
    if (as_is.flown <= 0.0) return as_is;  // nobody flies her, as far as she is known
    for (size_t d = 0; d < LW_DRAWS; d++) {
        lw_source one = {LW_OF_DRAW, of.set, d, of.for_time}, by = one;
        by.kind = LW_BESIDE_DRAW;
        if (of.set > 0 && d / LW_BLOCK_DRAWS == left_out) continue;
        const lw_lap of_draw = lw_lap_of(outlook, one, pin, wind);
        const lw_lap of_block = lw_lap_of(outlook, by, pin, wind);
        add_lap(&drawn, &of_draw), add_lap(&beside, &of_block);
        draws += 1.0;
    }
    const double more_flown = share_flown(&drawn) - share_flown(&beside);
    const double share = fmin(fmax(share_flown(&as_is) + more_flown, 0.0), 1.0);
    lap.under_way *= drawn.under_way / beside.under_way;
    lap.flown = share * lap.under_way;
    lap.on_hull = lap.under_way - lap.flown;
    if (share > 0.0) {
        lap.swims = fmax(as_is.swims + (drawn.swims - beside.swims) / draws, 0.0);
        lap.swimming = fmax(as_is.swimming + (drawn.swimming - beside.swimming) / draws, 0.0);
    } else {
        lap.swims = lap.swimming = 0.0;  // drawn, nobody flies her
    }
    lap.seconds += lap.under_way - as_is.under_way + lap.swimming - as_is.swimming;
    return lap;
}

// What has not happened yet may still: half an event in all the time that a pin rode on a course.
// Two pins differ by a part of that.
double lw_lap_unseen(const lw_outlook *outlook, size_t pin, size_t other, double wind)
{
    const lw_source all = {LW_OF_SET, 0, 0, true};
    double square = 0.0;
    for (size_t leg = 0; leg < outlook->leg_count; leg++) {
        const size_t c = outlook->leg_course[leg];
        const lw_sailing s = lw_outlook_sailing(outlook, all, pin, c, wind);
        double ridden = 0.0;
        for (size_t k = 0; k < LW_RIDE_WINDS; k++) {
            ridden += outlook->sums[0][k][pin][c].seconds;
            if (other != pin) ridden += outlook->sums[0][k][other][c].seconds;
        }
        if (s.on_hull || ridden <= 0.0) continue;
        const double may = 0.5 * outlook->leg_length[leg] / s.speed / ridden;
        square += may * may;
    }
    return (other == pin ? 1.0 : LW_SWIMS_APART) * sqrt(square);
}

// Whether rides flew on any course.
static bool could_fly(const lw_outlook *outlook, size_t pin)
{
    double seconds = 0.0, flown = 0.0;
    for (size_t c = 0; c < outlook->course_count; c++) {
        const lw_ride_sum *r = &outlook->sums[0][LW_RIDE_MEAN][pin][c];
        seconds += r->seconds;
        flown += r->flown;
    }
    return flown > FLIES_LEAST * seconds;
}

// --- what is told of a pin

// Least wind that gets her flying for a leg: on its own headings, or bearing away to a reach.
static double launch_for(const lw_outlook *outlook, const lw_range *range, size_t pin)
{
    const double reach = outlook->reach_launch[pin];
    if (!range->has_launch) return reach;
    return reach > 0.0 ? fmin(range->launches_at, reach) : range->launches_at;
}

// The limits of the hardest leg. Puffs that hold her there are no hold where she does not stay up.
static void add_limits(const lw_outlook *outlook, lw_placing *to)
{
    lw_prospect *sum = &to->prospect;
    const size_t pin = to->pin;
    bool always = true;
    sum->held_up_to = sum->margins_to = sum->rides_to = INFINITY;
    for (size_t c = 0; c < outlook->course_count; c++) {
        const lw_range *range = &outlook->ranges[pin][c];
        const lw_ride_hold rides = lw_swims_hold(&outlook->swims[pin][c], &outlook->weather);
        const double launch = launch_for(outlook, range, pin);
        if (launch > 0.0 && (sum->launches_at == 0.0 || launch < sum->launches_at)) {
            sum->launches_at = launch;
        }
        always = always && range->has_flight;
        sum->stays_up_at = fmax(sum->stays_up_at, range->stays_up_at);
        sum->held_up_to = fmin(sum->held_up_to, lw_outlook_hold(outlook, pin, c));
        sum->margins_to = fmin(sum->margins_to, range->has_hold ? range->held_up_to : 0.0);
        sum->rides_to = fmin(sum->rides_to, rides.puff);
        to->rides_end |= rides.has_end;
    }
    if (!always) sum->stays_up_at = 0.0;
    if (!always || sum->held_up_to < sum->stays_up_at) sum->held_up_to = 0.0;
    if (sum->rides_to == INFINITY) sum->rides_to = 0.0;
}

size_t lw_outlook_longest(const lw_outlook *outlook)
{
    size_t longest = 0;
    for (size_t i = 1; i < outlook->leg_count; i++) {
        if (outlook->leg_length[i] > outlook->leg_length[longest]) longest = i;
    }
    return outlook->leg_course[longest];
}

static double swims_error(const lw_outlook *outlook, size_t pin, double wind, bool for_time)
{
    double swims[LW_SETS];
    for (size_t set = 0; set < LW_SETS; set++) {
        const lw_source of = {LW_OF_SET, set, 0, for_time};
        swims[set] = lw_lap_expected(outlook, of, pin, wind).swims;
    }
    const double seen = lw_jackknife(swims), unseen = lw_lap_unseen(outlook, pin, pin, wind);
    return sqrt(seen * seen + unseen * unseen);
}

double lw_lap_length(const lw_outlook *outlook)
{
    double length = 0.0;
    for (size_t i = 0; i < outlook->leg_count; i++) length += outlook->leg_length[i];
    return length;
}

lw_placing lw_lap_placing(const lw_outlook *outlook, size_t pin, lw_gusts gusts, bool for_time)
{
    lw_placing to = {.pin = pin};
    lw_prospect *p = &to.prospect;
    const lw_source all = {LW_OF_SET, 0, 0, for_time};
    const lw_lap lap = lw_lap_expected(outlook, all, pin, gusts.mean);
    to.can_be_sailed = !lap.is_stuck;
    to.flies = lap.flown > 0.0;
    to.could_fly = could_fly(outlook, pin);
    if (lap.under_way > 0.0) p->flying = lap.flown / lap.under_way;
    if (to.can_be_sailed && lap.under_way > 0.0) {
        p->seconds = lap.seconds;
        p->speed = lw_lap_length(outlook) / lap.under_way;
        p->hull_seconds = lap.on_hull;
        p->swims = lap.swims;
        p->swim_seconds = lap.swimming;
        if (to.flies) p->swims_error = swims_error(outlook, pin, gusts.mean, for_time);
    }
    add_limits(outlook, &to);

    const lw_range *range = &outlook->ranges[pin][lw_outlook_longest(outlook)];
    p->turns_lull = lw_range_turns(range, gusts.lull);
    p->turns_mean = lw_range_turns(range, gusts.mean);
    p->turns_puff = lw_range_turns(range, gusts.puff);
    to.flies_in_lull = lw_placing_stays_up(&to, gusts.lull);
    to.flies_in_mean = lw_placing_stays_up(&to, gusts.mean);
    to.flies_in_puff = lw_placing_stays_up(&to, gusts.puff);
    const size_t hardest = lw_outlook_hardest(outlook, pin);
    to.ends_by = outlook->ranges[pin][hardest].ends_by;
    to.ends_by_rides = lw_outlook_hold_ends_by_rides(outlook, pin, hardest);
    return to;
}
