// blocks.c - rides of every pin on every course, in blocks that share gusts, waves and a draw.
// SPDX-License-Identifier: MIT

#include "choice/blocks.h"

#include <math.h>
#include <string.h>

#include "lullwise/elementary.h"

#define LYING 2.0  // [s] in the water after a swim, as rides count it; the day's cost comes on top
#define ROOM  16   // rides side by side

lw_effort lw_effort_usual(void) { return (lw_effort){.seconds = 60.0, .more = 2, .first_seed = 1}; }

lw_effort lw_effort_thorough(void)
{
    return (lw_effort){.seconds = 150.0, .rides_all = true, .first_seed = 1};
}

double lw_outlook_wind(const lw_outlook *outlook, size_t k)
{
    return (LW_RIDE_LEAST + LW_RIDE_APART * (double)k) * outlook->gusts.mean;
}

// After a swim she goes on aloft. Launching again is charged for (lap.c), not ridden: how often she
// swims in flight is known from far fewer rides than how each launch goes.
static void go_on_aloft(lw_ride_plan *plan)
{
    plan->rest = plan->start;
    plan->rests_aloft = true;
}

// The flight that a pin is sailed with in a wind, balanced for a boat, and the knot of its range
// that it comes from: NULL when there is none.
typedef struct sailed {
    const lw_range_point *from;
    lw_ask ask;
    lw_answer answer;
} sailed;

static sailed sailed_in(const lw_craft *craft, const lw_setup *setup, const lw_range *range,
                        double wind)
{
    sailed s = {.from = lw_range_sailed(range, wind)};
    if (!s.from) return s;
    s.ask = lw_ask_as(craft, setup, &s.from->trimmed);
    if (fabs(s.from->wind - wind) <= 0.5 * LW_KN) s.ask.wind = wind;
    lw_balance(craft, &s.ask, &s.answer, 1);
    return s;
}

// Aloft where the mean wind carries her, being as much as she is sailed for or more; else on the
// hull.
static bool plan_of(const lw_motion *motion, const lw_setup *setup, const lw_range *range,
                    double wind, lw_ride_plan *plan)
{
    const sailed s = sailed_in(motion->craft, setup, range, wind);
    if (!s.from) return false;
    const bool flies = s.answer.outcome == LW_FLIES;
    *plan = lw_ride_plan_of(motion, &s.ask, flies ? &s.answer : &s.from->trimmed);
    lw_ride_plan_wind(plan, motion->craft, range);
    if (flies && s.from->wind <= wind + 0.5 * LW_KN) {
        go_on_aloft(plan);
        return true;
    }
    plan->starts_aloft = false;
    plan->start = plan->rest;
    return true;
}

// The rudder as it is wound for the same flight with a boat that is a little different: the sailor
// sees where the bow is.
static void wind_rudder(const lw_craft *craft, const lw_setup *setup, const lw_range *range,
                        double wind, lw_ride_plan *plan)
{
    const sailed s = sailed_in(craft, setup, range, wind);
    if (!s.from || s.answer.outcome != LW_FLIES) return;
    const double to = lw_craft_rudder(craft, s.answer.flight.turns);
    const double more = to - plan->pilot.rudder[LW_WISH_MEAN];
    plan->start.rudder += more, plan->rest.rudder += more;
    for (int k = 0; k < LW_WISHES; k++) plan->pilot.rudder[k] += more;
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

// The plan of a pin as given: worked out once for all blocks.
static const lw_ride_plan *plan_as_is(lw_outlook *outlook, size_t k, size_t pin, size_t course)
{
    lw_ride_plan *plan = &outlook->plans[k][pin][course];
    signed char *has = &outlook->has_plan[k][pin][course];
    const double wind = lw_outlook_wind(outlook, k);
    const lw_setup setup = lw_craft_setup(&outlook->craft, &outlook->boat, pin);
    if (*has == 0) {
        lw_motion motion = lw_motion_of(&outlook->craft);
        lw_weather_put(&outlook->weather, wind, &motion);
        *has = plan_of(&motion, &setup, &outlook->ranges[pin][course], wind, plan) ? 1 : -1;
    }
    return *has > 0 ? plan : NULL;
}

// One wind of a block: who rides there, and how often.
typedef struct heat {
    size_t block, k;
    size_t first, times;  // seeds of the wind
    bool again;           // only pins that ride more
} heat;

static uint64_t seed_of(const lw_outlook *outlook, const heat *h, size_t i)
{
    return outlook->effort.first_seed + 64 * (LW_RIDE_WINDS * h->block + h->k) + h->first + i;
}

static void ride_as_is(lw_outlook *outlook, const heat *h, crowd *c, lw_ride_sums to)
{
    lw_weather_put(&outlook->weather, lw_outlook_wind(outlook, h->k), &c->motion);
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        if (h->again && !outlook->rides_more[pin]) continue;
        for (size_t course = 0; course < outlook->course_count; course++) {
            const lw_ride_plan *as_is = plan_as_is(outlook, h->k, pin, course);
            for (size_t i = 0; as_is && i < h->times; i++) {
                lw_ride_plan plan = *as_is;
                plan.seed = seed_of(outlook, h, i);
                enter(c, &plan, outlook->courses[course].direction, &to[h->k][pin][course]);
            }
        }
    }
    sail(c);
}

// The sailor wants what she would want of the boat as given: she knows no other.
static void ride_drawn(lw_outlook *outlook, const heat *h, const lw_draw *draw, crowd *c,
                       lw_ride_sums to)
{
    const lw_craft *craft = c->motion.craft;
    const double wind = lw_outlook_wind(outlook, h->k);
    lw_weather_put(&outlook->weather, wind, &c->motion);
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        const lw_setup setup = lw_craft_setup(craft, &draw->boat, pin);
        for (size_t course = 0; course < outlook->course_count; course++) {
            const lw_range *range = &outlook->ranges[pin][course];
            const lw_ride_plan *as_is = plan_as_is(outlook, h->k, pin, course);
            if (!as_is) continue;
            lw_ride_plan plan = *as_is;
            plan.setup = setup;
            wind_rudder(craft, &setup, range, wind, &plan);
            lw_judged_put_pilot(&draw->judged, &plan.pilot);
            plan.seed = seed_of(outlook, h, 0);
            enter(c, &plan, outlook->courses[course].direction, &to[h->k][pin][course]);
        }
    }
    sail(c);
}

static void begin_crowd(const lw_outlook *outlook, const lw_craft *craft, crowd *c)
{
    c->motion = lw_motion_of(craft);
    c->motion.parameters.swim = LYING;
    c->steps = (size_t)(outlook->effort.seconds / c->motion.parameters.step + 0.5);
    c->count = 0;
}

static bool rides_in(const lw_outlook *outlook, size_t block, size_t k)
{
    return k == LW_RIDE_MEAN || outlook->effort.rides_all || (k + block) % 2 == 0;
}

// The block's boat as drawn takes 17 ms to prepare.
static void ride_draw(lw_outlook *outlook, size_t block, crowd *c)
{
    lw_draw draw;
    lw_craft craft;
    lw_draw_of(&outlook->boat, &outlook->person, (unsigned)block, &draw);
    lw_craft_prepare(&craft, &draw.boat, &outlook->sections, &draw.person, &outlook->craft.medium);
    begin_crowd(outlook, &craft, c);
    lw_judged_put_parameters(&draw.judged, &c->motion.parameters);
    for (size_t k = 0; k < LW_RIDE_WINDS; k++) {
        if (k != LW_RIDE_MEAN && !outlook->effort.rides_all) continue;
        const heat h = {.block = block, .k = k, .times = 1};
        ride_drawn(outlook, &h, &draw, c, outlook->blocks[block].drawn);
    }
}

void lw_block_ride(lw_outlook *outlook, size_t block, bool again)
{
    crowd c;
    memset(again ? (void *)outlook->more[block] : &outlook->blocks[block], 0,
           again ? sizeof(lw_ride_sums) : sizeof(lw_block));
    if (outlook->gusts.mean <= 0.0) return;
    begin_crowd(outlook, &outlook->craft, &c);
    if (again) {
        const heat h = {block, LW_RIDE_MEAN, 1, outlook->effort.more, true};
        ride_as_is(outlook, &h, &c, outlook->more[block]);
        return;
    }
    for (size_t k = 0; k < LW_RIDE_WINDS; k++) {
        const heat h = {.block = block, .k = k, .times = 1};
        if (rides_in(outlook, block, k)) ride_as_is(outlook, &h, &c, outlook->blocks[block].as_is);
    }
    ride_draw(outlook, block, &c);
}

// --- sets

static void add(lw_ride_sum *to, const lw_ride_sum *from)
{
    to->seconds += from->seconds;
    to->along += from->along;
    to->flown += from->flown;
    to->swims += from->swims;
}

static lw_ride_sum ridden_in(const lw_outlook *outlook, size_t block, size_t k, size_t pin,
                             size_t c)
{
    lw_ride_sum sum = outlook->blocks[block].as_is[k][pin][c];
    add(&sum, &outlook->more[block][k][pin][c]);
    return sum;
}

#define COUNTS (LW_PINS_MOST * LW_RIDE_WINDS * LW_BLOCKS)
#define DRAWN  LW_SETS  // in place of a set: the rides drawn, of all blocks

// Counts of one course, block by block, but for the one that a set leaves out.
static size_t counts_of(const lw_outlook *outlook, size_t set, size_t course,
                        lw_rate_count counts[COUNTS])
{
    size_t n = 0;
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        for (size_t k = 0; k < LW_RIDE_WINDS; k++) {
            for (size_t b = 0; b < LW_BLOCKS; b++) {
                const lw_ride_sum r = set == DRAWN ? outlook->blocks[b].drawn[k][pin][course]
                                                   : ridden_in(outlook, b, k, pin, course);
                if (b + 1 == set || r.seconds <= 0.0) continue;
                counts[n++] = (lw_rate_count){(double)k, r.swims, r.seconds, pin};
            }
        }
    }
    return n;
}

static void fit_course(lw_outlook *outlook, size_t set, size_t course)
{
    lw_rate_count counts[COUNTS];
    lw_swims swims[LW_PINS_MOST];
    const size_t n = counts_of(outlook, set, course, counts);
    lw_swims_fit(&outlook->weather, counts, n, outlook->pin_count, swims);
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        if (set == 0) outlook->swims[pin][course] = swims[pin];
        for (size_t k = 0; k < LW_RIDE_WINDS; k++) {
            outlook->rate[set][pin][course][k] = lw_rate_at(&swims[pin].curve, (double)k);
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
                    const lw_ride_sum r = ridden_in(outlook, b, k, pin, c);
                    add(&outlook->sums[set][k][pin][c], &r);
                }
            }
        }
    }
}

void lw_blocks_sum(lw_outlook *outlook)
{
    for (size_t set = 0; set < LW_SETS; set++) sum_set(outlook, set);
    for (size_t set = 0; set <= DRAWN; set++) {
        for (size_t c = 0; c < outlook->course_count; c++) fit_course(outlook, set, c);
    }
}
