// blocks.c - rides of every pin on every course, in blocks that share gusts, waves and a draw.
// SPDX-License-Identifier: MIT

#include "choice/blocks.h"

#include <math.h>
#include <string.h>

#include "choice/drawn_trim.h"
#include "lullwise/elementary.h"

#define LYING 2.0  // [s] in the water after a swim, as rides count it; the day's cost comes on top
#define ROOM  16   // rides side by side

lw_effort lw_effort_usual(void)
{
    return (lw_effort){.seconds = 60.0, .drawn = 60.0, .more = 180.0, .first_seed = 1};
}

lw_effort lw_effort_thorough(void)
{
    return (lw_effort){.seconds = 150.0, .drawn = 60.0, .rides_all = true, .first_seed = 1};
}

double lw_outlook_wind(const lw_outlook *outlook, size_t k)
{
    return (LW_RIDE_LEAST + LW_RIDE_APART * (double)k) * outlook->gusts.mean;
}

// On the hull, or aloft, where after a swim she goes on so. Launching again is charged for (lap.c),
// not ridden: how often she swims in flight is known from fewer rides than how each launch goes.
static void put_start(lw_ride_plan *plan, bool is_aloft)
{
    plan->starts_aloft = plan->rests_aloft = is_aloft;
    *(is_aloft ? &plan->rest : &plan->start) = is_aloft ? plan->start : plan->rest;
}

// Whose rides in one wind: of a pin on a course, in the k-th wind.
typedef struct berth {
    size_t k, pin, course;
} berth;

// Aloft where the mean wind carries her, being as much as she is sailed for or more; else on the
// hull.
static bool put_plan(lw_outlook *outlook, berth b)
{
    const double wind = lw_outlook_wind(outlook, b.k);
    const lw_setup setup = lw_craft_setup(&outlook->craft, &outlook->boat, b.pin);
    const lw_range *range = &outlook->ranges[b.pin][b.course];
    const double puff = outlook->gusts.puff - outlook->gusts.mean;
    const lw_walk walk =
        lw_walk_again(&outlook->craft, &setup, outlook->courses[b.course], puff, range);
    const lw_trim trim = lw_walk_sailed(&walk, range, wind);
    if (!lw_trim_is_up(&trim)) return false;
    lw_motion motion = lw_motion_of(&outlook->craft);
    lw_weather_put(&outlook->weather, wind, &motion);
    lw_wishes *wishes = &outlook->wishes[b.k][b.pin][b.course];
    lw_ride_plan *plan = &outlook->plans[b.k][b.pin][b.course];
    *wishes = lw_wishes_of(&motion, &trim.ask, &trim.steady);
    *plan = lw_ride_plan_with(&motion, &trim.ask, &trim.steady, wishes);
    lw_ride_plan_wind(plan, &outlook->craft, range);
    put_start(plan, trim.ask.wind <= wind + LW_HALF_KNOT);
    return true;
}

// The plan of a pin as given: worked out once for all blocks. NULL: she never flies.
static const lw_ride_plan *plan_as_is(lw_outlook *outlook, berth b)
{
    signed char *has = &outlook->has_plan[b.k][b.pin][b.course];
    if (*has == 0) *has = put_plan(outlook, b) ? 1 : -1;
    return *has > 0 ? &outlook->plans[b.k][b.pin][b.course] : NULL;
}

// As a boat that is a little different is sailed, with as many turns more or less in every wind as
// in that of her trim. She stays on the hull when she does not fly.
static lw_ride_plan plan_anew(const lw_outlook *outlook, const lw_motion *motion,
                              const lw_setup *setup, berth b)
{
    const lw_craft *craft = motion->craft;
    const lw_range *range = &outlook->ranges[b.pin][b.course];
    const double wind = lw_outlook_wind(outlook, b.k);
    const lw_walk walk = {.craft = craft,
                          .setup = *setup,
                          .course = outlook->courses[b.course],
                          .puff = outlook->gusts.puff - outlook->gusts.mean};
    const lw_trim trim = lw_drawn_trim(&walk, range, wind);
    const lw_wishes *as_is = &outlook->wishes[b.k][b.pin][b.course];
    const bool flies = lw_trim_is_up(&trim);
    const lw_wishes wishes = lw_wishes_again(craft, &trim.ask, &trim.steady, as_is);
    lw_ride_plan plan = lw_ride_plan_with(motion, &trim.ask, &trim.steady, &wishes);
    lw_ride_plan_wind(&plan, craft, range);
    const double turns = lw_range_turns(range, trim.ask.wind);
    const double more = flies ? trim.steady.flight.turns - turns : 0.0;
    for (int k = 0; k < LW_WISHES; k++) plan.pilot.rudder[k] += more * craft->rudder_turn;
    put_start(&plan, flies && trim.ask.wind <= wind + LW_HALF_KNOT);
    return plan;
}

// One wind of a block.
typedef struct heat {
    size_t block, k;
    size_t draw;     // of the block
    size_t stretch;  // of gusts: the first is everybody's, each draw has one more of its own
} heat;

// The plan of a draw; in the mean wind it is kept for the rides that it may have to ride more.
static lw_ride_plan plan_drawn(lw_outlook *outlook, const lw_motion *motion, const lw_draw *draw,
                               const heat *h, berth b)
{
    lw_block *block = &outlook->blocks[h->block];
    bool *has = &block->has_plan[h->draw][b.pin][b.course];
    lw_ride_plan *kept = &block->plans[h->draw][b.pin][b.course];
    if (b.k == LW_RIDE_MEAN && *has) return *kept;
    const lw_setup setup = lw_craft_setup(motion->craft, &draw->boat, b.pin);
    lw_ride_plan plan = plan_anew(outlook, motion, &setup, b);
    lw_judged_put_pilot(&draw->judged, &plan.pilot);
    if (b.k == LW_RIDE_MEAN) *kept = plan, *has = true;
    return plan;
}

// Rides side by side in one wind, and whose they are.
typedef struct crowd {
    lw_motion motion;
    size_t steps, count;
    lw_ride rides[ROOM];
    lw_ride_sum *of[ROOM];
    double direction[ROOM];
} crowd;

// Sails them all, adds what they came to, and is empty again.
static void sail(crowd *c)
{
    lw_rides_advance(&c->motion, c->rides, c->count, c->steps);
    for (size_t i = 0; i < c->count; i++) {
        const lw_ride *ride = &c->rides[i];
        const lw_ride_state now = lw_ride_now(ride);
        const double up = now.upwind - ride->plan.start.upwind;
        const double port = now.port - ride->plan.start.port;
        const double along = up * lw_cos(c->direction[i]) + port * lw_sin(c->direction[i]);
        c->of[i]->seconds += ride->tally.seconds - ride->tally.swimming;
        c->of[i]->along += isfinite(along) ? along : 0.0;
        c->of[i]->flown += ride->tally.flying;
        c->of[i]->swims += lw_ride_tally_swims(&ride->tally);
    }
    c->count = 0;
}

static void enter(crowd *c, const lw_ride_plan *plan, double direction, lw_ride_sum *of)
{
    if (c->count == ROOM) sail(c);
    lw_ride *ride = &c->rides[c->count];
    ride->events = NULL, ride->event_room = 0;
    lw_ride_begin(ride, &c->motion, plan);
    c->direction[c->count] = direction;
    c->of[c->count++] = of;
}

static uint64_t seed_of(const lw_outlook *outlook, const heat *h)
{
    return outlook->effort.first_seed + 64 * (LW_RIDE_WINDS * h->block + h->k) + h->stretch;
}

static void ride_as_is(lw_outlook *outlook, const heat *h, crowd *c, lw_ride_sums to)
{
    lw_weather_put(&outlook->weather, lw_outlook_wind(outlook, h->k), &c->motion);
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        for (size_t course = 0; course < outlook->course_count; course++) {
            const lw_ride_plan *as_is = plan_as_is(outlook, (berth){h->k, pin, course});
            if (!as_is) continue;
            lw_ride_plan plan = *as_is;
            plan.seed = seed_of(outlook, h);
            enter(c, &plan, outlook->courses[course].direction, &to[h->k][pin][course]);
        }
    }
    sail(c);
}

static void ride_drawn(lw_outlook *outlook, const heat *h, const lw_draw *draw, crowd *c,
                       lw_ride_sums to)
{
    lw_weather_put(&outlook->weather, lw_outlook_wind(outlook, h->k), &c->motion);
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        if (h->stretch > 0 && !outlook->rides_more[pin]) continue;
        for (size_t course = 0; course < outlook->course_count; course++) {
            const berth b = {h->k, pin, course};
            if (!plan_as_is(outlook, b)) continue;
            lw_ride_plan plan = plan_drawn(outlook, &c->motion, draw, h, b);
            plan.seed = seed_of(outlook, h);
            enter(c, &plan, outlook->courses[course].direction, &to[h->k][pin][course]);
        }
    }
    sail(c);
}

static void begin_crowd(const lw_craft *craft, double seconds, crowd *c)
{
    c->motion = lw_motion_of(craft);
    c->motion.parameters.swim = LYING;
    c->steps = (size_t)(seconds / c->motion.parameters.step + 0.5);
    c->count = 0;
}

static bool rides_in(const lw_outlook *outlook, size_t block, size_t k)
{
    return k == LW_RIDE_MEAN || outlook->effort.rides_all || (k + block) % 2 == 0;
}

#define DRAWN_WINDS 4  // of the least, that draws ride in where not all are ridden in

// Both of a pair in the same winds: the mean, and every other one that the block rides in.
static bool draws_ride_in(const lw_outlook *outlook, size_t block, size_t k, size_t number)
{
    const size_t pair = number / 2;
    if (k == LW_RIDE_MEAN) return true;
    if (outlook->effort.rides_all) return (k + pair) % 2 == 0;
    return k < DRAWN_WINDS && rides_in(outlook, block, k) && (k / 2 + pair) % 2 == 0;
}

// Of a draw: prepared when it is asked for first.
static const lw_craft *craft_of(lw_outlook *outlook, size_t number, const lw_draw *draw)
{
    lw_craft *craft = &outlook->drawn[number];
    if (!outlook->has_drawn[number])
        lw_craft_vary(craft, &outlook->craft, &draw->boat, &outlook->sections, &draw->person);
    outlook->has_drawn[number] = true;
    return craft;
}

// Again: in the mean wind alone, and only pins that ride more.
static void ride_draw(lw_outlook *outlook, size_t block, size_t of_block, bool again, crowd *c)
{
    const lw_effort *effort = &outlook->effort;
    const size_t number = block * LW_BLOCK_DRAWS + of_block;
    lw_draw draw;
    lw_draw_of(&outlook->boat, &outlook->person, effort->first_draw + (unsigned)number, &draw);
    begin_crowd(craft_of(outlook, number, &draw), again ? effort->more : effort->drawn, c);
    lw_judged_put_parameters(&draw.judged, &c->motion.parameters);
    for (size_t k = 0; k < LW_RIDE_WINDS; k++) {
        const heat h = {block, k, of_block, again ? 1 + of_block : 0};
        if (again ? k == LW_RIDE_MEAN : draws_ride_in(outlook, block, k, number))
            ride_drawn(outlook, &h, &draw, c, outlook->blocks[block].drawn[of_block]);
    }
}

void lw_block_plan(lw_outlook *outlook, size_t pin, size_t course)
{
    if (outlook->gusts.mean <= 0.0) return;
    for (size_t k = 0; k < LW_RIDE_WINDS; k++) plan_as_is(outlook, (berth){k, pin, course});
}

// The boat as given.
static void ride_given(lw_outlook *outlook, size_t block, crowd *c)
{
    begin_crowd(&outlook->craft, outlook->effort.seconds, c);
    for (size_t k = 0; k < LW_RIDE_WINDS; k++) {
        const heat h = {.block = block, .k = k};
        if (rides_in(outlook, block, k)) ride_as_is(outlook, &h, c, outlook->blocks[block].as_is);
    }
}

void lw_block_ride(lw_outlook *outlook, size_t block, bool again)
{
    crowd c;
    if (!again) outlook->blocks[block] = (lw_block){0};
    if (outlook->gusts.mean <= 0.0) return;
    if (!again) ride_given(outlook, block, &c);
    for (size_t d = 0; d < LW_BLOCK_DRAWS; d++) ride_draw(outlook, block, d, again, &c);
}

// --- sets

static void add(lw_ride_sum *to, const lw_ride_sum *from)
{
    to->seconds += from->seconds;
    to->along += from->along;
    to->flown += from->flown;
    to->swims += from->swims;
}

// Of a draw, for the curves of all: one that swims so often that nobody would fly her (lap.c)
// counts as just so, for how much more often says nothing of the others.
static lw_ride_sum drawn_in(const lw_outlook *outlook, size_t draw, size_t k, size_t pin, size_t c)
{
    const lw_block *block = &outlook->blocks[draw / LW_BLOCK_DRAWS];
    lw_ride_sum sum = block->drawn[draw % LW_BLOCK_DRAWS][k][pin][c];
    const double costs = outlook->cost.swim + outlook->relaunch[pin];
    sum.swims = fmin(sum.swims, 1.0 + sum.seconds / fmax(costs, 1.0));
    return sum;
}

#define COUNTS (LW_PINS_MOST * LW_RIDE_WINDS * LW_DRAWS)
// Counts of one course, block by block or draw by draw, but for the block that a set leaves out.
static size_t counts_of(const lw_outlook *outlook, bool drawn, size_t set, size_t course,
                        lw_rate_count counts[COUNTS])
{
    const size_t each = drawn ? LW_BLOCK_DRAWS : 1;
    size_t n = 0;
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        for (size_t k = 0; k < LW_RIDE_WINDS; k++) {
            for (size_t i = 0; i < each * LW_BLOCKS; i++) {
                const lw_ride_sum r = drawn ? drawn_in(outlook, i, k, pin, course)
                                            : outlook->blocks[i].as_is[k][pin][course];
                if (i / each + 1 == set || r.seconds <= 0.0) continue;
                counts[n++] = (lw_rate_count){(double)k, r.swims, r.seconds, pin};
            }
        }
    }
    return n;
}

static void fit_course(lw_outlook *outlook, bool drawn, size_t set, size_t course)
{
    lw_rate_count counts[COUNTS];
    lw_swims swims[LW_PINS_MOST];
    const size_t n = counts_of(outlook, drawn, set, course, counts);
    lw_swims_fit(&outlook->weather, counts, n, outlook->pin_count, swims);
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        if (set == 0 && !drawn) outlook->swims[pin][course] = swims[pin];
        for (size_t k = 0; k < LW_RIDE_WINDS; k++) {
            outlook->rate[drawn][set][pin][course][k] = lw_rate_at(&swims[pin].curve, (double)k);
        }
    }
}

static void sum_set(lw_outlook *outlook, size_t set)
{
    memset(outlook->sums[set], 0, sizeof outlook->sums[set]);
    for (size_t b = 0; b < LW_BLOCKS; b++) {
        if (b + 1 == set) continue;
        for (size_t k = 0; k < LW_RIDE_WINDS; k++) {
            for (size_t pin = 0; pin < outlook->pin_count; pin++) {
                for (size_t c = 0; c < outlook->course_count; c++) {
                    add(&outlook->sums[set][k][pin][c], &outlook->blocks[b].as_is[k][pin][c]);
                }
            }
        }
    }
}

void lw_blocks_sum(lw_outlook *outlook)
{
    for (size_t set = 0; set < LW_SETS; set++) sum_set(outlook, set);
    for (size_t set = 0; set < LW_SETS; set++) {
        for (size_t c = 0; c < outlook->course_count; c++) {
            fit_course(outlook, false, set, c);
            fit_course(outlook, true, set, c);
        }
    }
}
