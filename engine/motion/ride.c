// ride.c - rides between calls, and side by side during one.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "flight/balance.h"
#include "motion/stride.h"
#include "motion/trace.h"

#define LANES (sizeof(lw_fleet) / sizeof(lw_lanes))
_Static_assert(LANES <= LW_RIDE_LANES, "a ride has room for a lane of everything");

// --- lanes in and out

static void copy_in(lw_fleet *fleet, int i, const lw_ride *ride)
{
    char *to = (char *)fleet + sizeof(double) * i;
    for (size_t k = 0; k < LANES; k++) memcpy(to + k * sizeof(lw_lanes), &ride->lane[k], 8);
}

static void copy_out(const lw_fleet *fleet, int i, lw_ride *ride)
{
    const char *from = (const char *)fleet + sizeof(double) * i;
    for (size_t k = 0; k < LANES; k++) memcpy(&ride->lane[k], from + k * sizeof(lw_lanes), 8);
    ride->tally.seconds = fleet->watch.time[i];
    ride->tally.flying = fleet->flying[i];
    ride->tally.swimming = fleet->swimming[i];
    ride->tally.distance = fleet->distance[i];
    ride->tally.made_good = fleet->made_good[i];
}

// --- begin

static void gains_put(lw_gains_lanes *lanes, int i, const lw_gains *gains)
{
    for (int k = 0; k < LW_GAINS; k++) lanes->at[k][i] = gains->at[k];
}

static void wish_put(lw_wish_lanes *lanes, int i, const lw_wish *wish)
{
    for (int k = 0; k < LW_WISH_MEMBERS; k++) lanes->at[k][i] = wish->at[k];
}

static void pilot_put(lw_pilot_lanes *lanes, int i, const lw_pilot *pilot)
{
    gains_put(&lanes->rest, i, &pilot->rest);
    gains_put(&lanes->rising, i, &pilot->rising);
    for (int k = 0; k < LW_WISHES; k++) {
        wish_put(&lanes->wish[k], i, &pilot->wish[k]);
        lanes->rudder[k][i] = pilot->rudder[k];
    }
    lanes->bow_afloat[i] = pilot->bow_afloat;
    lanes->wind[i] = pilot->wind, lanes->patience[i] = pilot->patience;
    lanes->per_wind[i] = 1.0 / (LW_WISH_STEP * fmax(pilot->wind, LW_LEAST_WAY));
    lanes->per_flight[i] = pilot->flight > 0.0 ? 1.0 / pilot->flight : 0.0;
}

void lw_ride_lanes_put(lw_ride_lanes *lanes, int i, const lw_ride_plan *plan)
{
    lanes->setup.incidence[i] = plan->setup.incidence;
    lanes->setup.wand_length[i] = plan->setup.wand_length;
    lanes->setup.gearing[i] = plan->setup.gearing;
    lanes->setup.rod[i] = plan->setup.rod;
    lanes->place[i] = lanes->pilot.place[i] = plan->place;
    pilot_put(&lanes->pilot, i, &plan->pilot);
    const lw_wish *usual = &plan->pilot.wish[LW_WISH_MEAN];
    lanes->pilot.heel[i] = usual->heel, lanes->pilot.bow[i] = usual->bow;
}

static void put_zero(void *lanes, size_t size, int i)
{
    for (size_t k = 0; k < size; k += sizeof(lw_lanes)) memset((char *)lanes + k + 8 * i, 0, 8);
}

// Lane i stands still at a state, with no past and no air.
static void stand(lw_fleet *fleet, int i, const lw_ride_state *at, bool flies)
{
    lw_state_put(&fleet->now, i, at);
    lw_state_put(&fleet->past.state, i, at);
    lw_state_put(&fleet->older.state, i, at);
    fleet->fresh[i] = -1;
    put_zero(&fleet->memory, sizeof fleet->memory, i);
    fleet->ride.place[i] = fleet->ride.pilot.place[i];
    lw_watch *watch = &fleet->watch;
    watch->flies[i] = flies ? -1 : 0;
    watch->clear[i] = watch->wet[i] = watch->tip_in[i] = watch->rudder_tip_in[i] = 0.0;
    watch->slips[i] = watch->slid[i] = 0.0;
    lw_pilot_lanes *pilot = &fleet->ride.pilot;
    const lw_wish_lanes *usual = &pilot->wish[LW_WISH_MEAN];
    pilot->heel[i] = flies ? usual->heel[i] : usual->afloat[i];
    pilot->bow[i] = flies ? usual->bow[i] : pilot->bow_afloat[i];
}

static void start_world(const lw_motion *motion, lw_world *world, uint64_t seed)
{
    const double step = motion->rules.step;
    if (motion->is_choppy) {
        const lw_sea_waves sea = lw_sea_of(motion->sea, lw_seed_of(seed, LW_SEED_SEA));
        lw_sea_lanes_put(&world->sea, 0, &sea, step);
    }
    if (motion->is_gusty) lw_gust_lanes_put(&world->gust, 0, lw_seed_of(seed, LW_SEED_GUST));
}

void lw_ride_begin(lw_ride *ride, const lw_motion *motion, const lw_ride_plan *plan)
{
    lw_fleet fleet;
    memset(&fleet, 0, sizeof fleet);
    ride->plan = *plan;
    ride->tally = (lw_ride_tally){0};
    ride->event_count = 0;
    lw_ride_lanes_put(&fleet.ride, 0, plan);
    stand(&fleet, 0, &plan->start, plan->starts_aloft);
    fleet.wind[0] = plan->wind;
    start_world(motion, &fleet.world, plan->seed);
    copy_out(&fleet, 0, ride);
}

lw_ride_state lw_ride_now(const lw_ride *ride)
{
    lw_fleet fleet;
    copy_in(&fleet, 0, ride);
    return lw_state_lane(&fleet.now, 0);
}

#define AS_STAND(name, text) text,
static const char *const stands[] = {LW_RIDE_STAND_LIST(AS_STAND)};
const char *lw_ride_stand_text(lw_ride_stand stand) { return stands[stand]; }

lw_ride_stand lw_ride_stands(const lw_ride *ride)
{
    lw_fleet fleet;
    copy_in(&fleet, 0, ride);
    if (fleet.watch.swims[0]) return LW_STANDS_SWIMMING;
    return fleet.watch.flies[0] ? LW_STANDS_FLYING : LW_STANDS_AFLOAT;
}

// --- events

static void note(lw_ride *ride, lw_ride_what what, const lw_trace *at)
{
    ride->tally.count[what] += 1.0;
    if (ride->events && ride->event_count < ride->event_room) {
        ride->events[ride->event_count++] = (lw_ride_event){what, *at};
    }
}

// What a group of rides is doing this step, for its slow path.
typedef struct group {
    const lw_motion *motion;
    lw_ride *rides;
    int count;
    lw_fleet fleet;
    lw_around around;
    lw_loads loads;
    lw_happened happened;
} group;

// Writes down what happened at the step's start; who fell, lies in the water where it was.
static void report(group *g)
{
    for (int i = 0; i < g->count; i++) {
        if (!g->happened.any[i]) continue;
        lw_fleet *fleet = &g->fleet;
        lw_ride *ride = &g->rides[i];
        lw_trace at;
        lw_trace_lane(&at, g->motion, fleet, &g->around, &g->loads, i);
        for (int what = 0; what < LW_RIDE_AGAIN; what++) {
            if (!g->happened.what[what][i]) continue;
            note(ride, (lw_ride_what)what, &at);
            if (!lw_ride_event_is_swim((lw_ride_what)what)) continue;
            fleet->watch.swims[i] = -1;
            fleet->watch.swum[i] = 0.0;
        }
    }
}

// At rest on the hull, sitting to the wind that blows there now.
static lw_ride_state rest_in_this_wind(const group *g, int i)
{
    const lw_pilot *pilot = &g->rides[i].plan.pilot;
    lw_ride_state rest = g->rides[i].plan.rest;
    const double wind =
        sqrt(g->around.wind.x[i] * g->around.wind.x[i] + g->around.wind.y[i] * g->around.wind.y[i]);
    const lw_lanes effort =
        lw_effort_held(lw_all(pilot->rest.effort + pilot->rest.wind * (wind - pilot->wind)));
    rest.seen_wind = rest.felt_wind = wind;
    rest.body = -lw_effort_hike(g->motion->craft, effort)[0];
    rest.taken = lw_effort_taken(effort)[0];
    return rest;
}

// Lies where a ride fell: at rest in all but the place.
static void lie(group *g, int i)
{
    const lw_ride_plan *plan = &g->rides[i].plan;
    lw_ride_state rest = plan->rests_aloft ? plan->rest : rest_in_this_wind(g, i);
    const lw_state_lanes *fell = &g->fleet.past.state;
    const double x = fell->upwind[i], y = fell->port[i];
    const bool is_sound = x == x && y == y;  // false for no number
    rest.upwind = is_sound ? x : 0.0;
    rest.port = is_sound ? y : 0.0;
    stand(&g->fleet, i, &rest, plan->rests_aloft);
}

static void swim(group *g)
{
    lw_watch *watch = &g->fleet.watch;
    for (int i = 0; i < g->count; i++) {
        if (!watch->swims[i]) continue;
        lie(g, i);
        watch->swum[i] += g->motion->rules.step;
        if (watch->swum[i] < g->motion->rules.swim) continue;
        watch->swims[i] = 0;
        lw_trace at;
        lw_trace_lane(&at, g->motion, &g->fleet, &g->around, &g->loads, i);
        note(&g->rides[i], LW_RIDE_AGAIN, &at);
    }
}

// --- advance

LW_INLINE lw_lanes one_where(lw_mask where) { return lw_select(where, lw_all(1.0), lw_all(0.0)); }

LW_INLINE void count(const lw_motion *motion, lw_fleet *fleet, const lw_loads *loads)
{
    const double dt = motion->rules.step;
    const lw_mask under_way = ~fleet->watch.swims;
    const lw_state_lanes *was = &fleet->past.state;
    const lw_lanes clear =
        one_where(under_way & fleet->watch.flies & ~(loads->hull.immersed > 0.0));
    const lw_lanes speed = lw_lanes_sqrt(was->surge * was->surge + was->sway * was->sway);
    fleet->watch.time += dt;
    fleet->flying += dt * clear;
    fleet->swimming += dt * one_where(fleet->watch.swims);
    fleet->distance += lw_select(under_way, dt * speed, lw_all(0.0));
    fleet->made_good += lw_select(under_way, fleet->now.upwind - was->upwind, lw_all(0.0));
}

LW_INLINE void step(group *g, lw_turns *turns)
{
    const lw_motion *motion = g->motion;
    lw_fleet *fleet = &g->fleet;
    lw_watch *watch = &fleet->watch;
    const double dt = motion->rules.step;
    g->around = lw_around_of(motion, &fleet->world, fleet->wind, &fleet->now, &turns->now);
    lw_fleet_step(motion, fleet, &g->around, turns, &g->loads);

    g->happened.any = (lw_mask){0};
    const lw_state_lanes *was = &fleet->past.state;
    lw_watch_hull(watch, &g->loads, dt, &g->happened);
    lw_watch_tips(watch, &g->loads.inflow, dt, &g->happened);
    lw_watch_air(motion, &g->loads, was, &fleet->memory, &g->happened);
    const lw_mask thrown = lw_watch_stop(motion->craft, was, &g->loads, dt, watch);
    lw_watch_falls(was, &g->loads, &fleet->ride.pilot, thrown, &g->happened);
    g->happened.any &= ~watch->swims;
    lw_ride_lanes *ride = &fleet->ride;
    const lw_wish_lanes wish = lw_wished(&ride->pilot, fleet->now.felt_wind);
    lw_pilot_turn(&ride->pilot, &wish, watch->flies, dt);
    ride->place =
        lw_pilot_place(motion, &ride->pilot, &wish, watch->flies, fleet->now.pitch, ride->place);
    if (lw_any(g->happened.any)) report(g);
    count(motion, fleet, &g->loads);
    if (lw_any(watch->swims)) {
        swim(g);
        *turns = lw_turns_of(fleet);
    }
    const lw_lanes a_x = g->loads.inflow.sail_wind.x, a_y = g->loads.inflow.sail_wind.y;
    lw_world_step(motion, &fleet->world, lw_lanes_sqrt(a_x * a_x + a_y * a_y));
}

LW_CLONES
static void advance(group *g, size_t steps)
{
    lw_turns turns = lw_turns_of(&g->fleet);
    for (size_t k = 0; k < steps; k++) step(g, &turns);
}

void lw_rides_advance(const lw_motion *motion, lw_ride *rides, size_t n, size_t steps)
{
    group g;
    lw_motion seen = *motion;
    lw_gust_look_ahead(&seen.gust, motion->rules.preview);
    g.motion = &seen;
    for (size_t first = 0; first < n; first += LW_WIDTH) {
        g.count = n - first < LW_WIDTH ? (int)(n - first) : LW_WIDTH;
        g.rides = rides + first;
        for (int i = 0; i < LW_WIDTH; i++) copy_in(&g.fleet, i, &g.rides[i < g.count ? i : 0]);
        advance(&g, steps);
        for (int i = 0; i < g.count; i++) copy_out(&g.fleet, i, &g.rides[i]);
    }
}

// --- one moment

LW_CLONES
static void look(group *g)
{
    const lw_turned t = lw_turned_of(&g->fleet.now);
    lw_state_lanes rates;
    g->around = lw_around_of(g->motion, &g->fleet.world, g->fleet.wind, &g->fleet.now, &t);
    const lw_instant now = {&g->fleet.ride, &g->fleet.now, &t, &g->around, &g->fleet.memory};
    lw_rates_of(g->motion, &now, &rates, &g->loads);
    g->fleet.past.state = g->fleet.now;  // what a trace tells
}

lw_trace lw_ride_trace(const lw_motion *motion, const lw_ride *ride)
{
    group g;
    g.motion = motion;
    for (int i = 0; i < LW_WIDTH; i++) copy_in(&g.fleet, i, ride);
    look(&g);
    lw_trace at;
    lw_trace_lane(&at, motion, &g.fleet, &g.around, &g.loads, 0);
    return at;
}
