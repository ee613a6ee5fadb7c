// ride.c - rides between calls, and side by side during one.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "boat/effort.h"
#include "motion/ride/fleet.h"
#include "motion/ride/trace.h"

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
    ride->tally.seconds = fleet->detection.time[i];
    ride->tally.flying = fleet->flying[i];
    ride->tally.swimming = fleet->swimming[i];
    ride->tally.distance = fleet->distance[i];
    ride->tally.made_good = fleet->made_good[i];
}

// --- begin

static void put_zero(void *lanes, size_t size, int i)
{
    for (size_t k = 0; k < size; k += sizeof(lw_lanes))
        memset((char *)lanes + k + sizeof(double) * i, 0, 8);
}

// Lane i stands still at a state, with no past and no air.
static void stand(lw_fleet *fleet, int i, const lw_ride_state *at, bool flies)
{
    lw_state_put(&fleet->boats.now, i, at);
    lw_state_put(&fleet->boats.history[0].state, i, at);
    lw_state_put(&fleet->boats.history[1].state, i, at);
    fleet->boats.restarts[i] = -1;
    put_zero(&fleet->boats.memory, sizeof fleet->boats.memory, i);
    fleet->boats.ride.place[i] = fleet->boats.ride.pilot.place[i];
    lw_detection *detection = &fleet->detection;
    detection->flies[i] = flies ? -1 : 0;
    detection->clear[i] = detection->wet[i] = detection->tip_in[i] = detection->rudder_tip_in[i] =
        0.0;
    detection->slips[i] = detection->slid[i] = 0.0;
    lw_pilot_lanes *pilot = &fleet->boats.ride.pilot;
    const lw_wish_lanes *usual = &pilot->wish[LW_WISH_MEAN];
    pilot->heel[i] = flies ? usual->heel[i] : usual->afloat[i];
    pilot->bow[i] = flies ? usual->bow[i] : pilot->bow_afloat[i];
}

static void start_environment(const lw_motion *motion, lw_environment_state *state, uint64_t seed)
{
    const double step = motion->parameters.step;
    if (motion->is_choppy) {
        const lw_sea_waves sea = lw_sea_of(motion->sea, lw_seed_of(seed, LW_SEED_SEA));
        lw_sea_lanes_put(&state->sea, 0, &sea, step);
    }
    if (motion->is_gusty) lw_gust_lanes_put(&state->gust, 0, lw_seed_of(seed, LW_SEED_GUST));
}

void lw_ride_begin(lw_ride *ride, const lw_motion *motion, const lw_ride_plan *plan)
{
    lw_fleet fleet;
    memset(&fleet, 0, sizeof fleet);
    ride->plan = *plan;
    ride->tally = (lw_ride_tally){0};
    ride->event_count = 0;
    lw_ride_lanes_put(&fleet.boats.ride, 0, plan);
    stand(&fleet, 0, &plan->start, plan->starts_aloft);
    fleet.wind[0] = plan->wind;
    start_environment(motion, &fleet.environment, plan->seed);
    copy_out(&fleet, 0, ride);
}

lw_ride_state lw_ride_now(const lw_ride *ride)
{
    lw_fleet fleet;
    copy_in(&fleet, 0, ride);
    return lw_state_lane(&fleet.boats.now, 0);
}

#define AS_STAND(name, text) text,
static const char *const stands[] = {LW_RIDE_STAND_LIST(AS_STAND)};
const char *lw_ride_stand_text(lw_ride_stand stand) { return stands[stand]; }

lw_ride_stand lw_ride_stands(const lw_ride *ride)
{
    lw_fleet fleet;
    copy_in(&fleet, 0, ride);
    if (fleet.detection.swims[0]) return LW_STANDS_SWIMMING;
    return fleet.detection.flies[0] ? LW_STANDS_FLYING : LW_STANDS_AFLOAT;
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
    lw_environment around;
    lw_loads loads;
    lw_events events;
} group;

// Writes down what happened at the step's start; who fell, lies in the water where it was.
static void report(group *g)
{
    for (int i = 0; i < g->count; i++) {
        if (!g->events.any[i]) continue;
        lw_fleet *fleet = &g->fleet;
        lw_ride *ride = &g->rides[i];
        const lw_trace at = lw_trace_lane(g->motion, fleet, &g->around, &g->loads, i);
        for (int what = 0; what < LW_RIDE_AGAIN; what++) {
            if (!g->events.what[what][i]) continue;
            note(ride, (lw_ride_what)what, &at);
            if (!lw_ride_event_is_swim((lw_ride_what)what)) continue;
            fleet->detection.swims[i] = -1;
            fleet->detection.swum[i] = 0.0;
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
    const lw_state_lanes *fell = &g->fleet.boats.history[0].state;
    const double x = fell->upwind[i], y = fell->port[i];
    const bool is_sound = x == x && y == y;  // false for no number
    rest.upwind = is_sound ? x : 0.0;
    rest.port = is_sound ? y : 0.0;
    stand(&g->fleet, i, &rest, plan->rests_aloft);
}

static void swim(group *g)
{
    lw_detection *detection = &g->fleet.detection;
    for (int i = 0; i < g->count; i++) {
        if (!detection->swims[i]) continue;
        lie(g, i);
        detection->swum[i] += g->motion->parameters.step;
        if (detection->swum[i] < g->motion->parameters.swim) continue;
        detection->swims[i] = 0;
        const lw_trace at = lw_trace_lane(g->motion, &g->fleet, &g->around, &g->loads, i);
        note(&g->rides[i], LW_RIDE_AGAIN, &at);
    }
}

// --- advance

LW_INLINE lw_lanes one_where(lw_mask where) { return lw_select(where, lw_all(1.0), lw_all(0.0)); }

LW_INLINE void count(const lw_motion *motion, lw_fleet *fleet, const lw_loads *loads)
{
    const double dt = motion->parameters.step;
    const lw_mask under_way = ~fleet->detection.swims;
    const lw_state_lanes *was = &fleet->boats.history[0].state;
    const lw_lanes clear =
        one_where(under_way & fleet->detection.flies & ~(loads->hull.immersed > 0.0));
    const lw_lanes speed = lw_lanes_sqrt(was->surge * was->surge + was->sway * was->sway);
    fleet->detection.time += dt;
    fleet->flying += dt * clear;
    fleet->swimming += dt * one_where(fleet->detection.swims);
    fleet->distance += lw_select(under_way, dt * speed, lw_all(0.0));
    fleet->made_good += lw_select(under_way, fleet->boats.now.upwind - was->upwind, lw_all(0.0));
}

LW_INLINE void step(group *g, lw_turns *turns)
{
    const lw_motion *motion = g->motion;
    lw_fleet *fleet = &g->fleet;
    lw_detection *detection = &fleet->detection;
    const double dt = motion->parameters.step;
    g->around =
        lw_environment_of(motion, &fleet->environment, fleet->wind, &fleet->boats.now, &turns->now);
    lw_moving_step(motion, &fleet->boats, &g->around, turns, &g->loads);

    g->events.any = (lw_mask){0};
    const lw_state_lanes *was = &fleet->boats.history[0].state;
    lw_detect_hull(detection, &g->loads, dt, &g->events);
    lw_detect_tips(detection, &g->loads.inflow, dt, &g->events);
    lw_detect_ventilation(motion, &g->loads, was, &fleet->boats.memory, &g->events);
    const lw_mask thrown = lw_detect_stop(motion->craft, was, &g->loads, dt, detection);
    lw_detect_falls(was, &g->loads, &fleet->boats.ride.pilot, thrown, &g->events);
    g->events.any &= ~detection->swims;
    lw_ride_lanes *ride = &fleet->boats.ride;
    turns->wish = lw_wished(&ride->pilot, fleet->boats.now.felt_wind);
    lw_pilot_turn(&ride->pilot, &turns->wish, detection->flies, dt);
    const lw_lanes off = lw_pitch_off(&turns->wish, detection->flies, fleet->boats.now.pitch);
    ride->place = lw_pilot_place(motion, &ride->pilot, off, ride->place);
    if (lw_any(g->events.any)) report(g);
    count(motion, fleet, &g->loads);
    if (lw_any(detection->swims)) {
        swim(g);
        *turns = lw_turns_of(&fleet->boats);
    }
    const lw_lanes a_x = g->loads.inflow.sail_wind.x, a_y = g->loads.inflow.sail_wind.y;
    lw_environment_step(motion, &fleet->environment, lw_lanes_sqrt(a_x * a_x + a_y * a_y));
}

LW_CLONES
static void advance(group *g, size_t steps)
{
    lw_turns turns = lw_turns_of(&g->fleet.boats);
    for (size_t k = 0; k < steps; k++) step(g, &turns);
}

void lw_rides_advance(const lw_motion *motion, lw_ride *rides, size_t n, size_t steps)
{
    group g;
    lw_motion seen = *motion;
    lw_gust_look_ahead(&seen.gust, motion->parameters.preview);
    g.motion = &seen;
    for (size_t first = 0; first < n; first += LW_WIDTH) {
        g.count = n - first < LW_WIDTH ? (int)(n - first) : LW_WIDTH;
        g.rides = rides + first;
        LW_EACH_LANE (i) copy_in(&g.fleet, i, &g.rides[i < g.count ? i : 0]);
        advance(&g, steps);
        for (int i = 0; i < g.count; i++) copy_out(&g.fleet, i, &g.rides[i]);
    }
}

// --- one moment

LW_CLONES
static void look(group *g)
{
    const lw_turned t = lw_turned_of(&g->fleet.boats.now);
    lw_state_lanes rates;
    g->around =
        lw_environment_of(g->motion, &g->fleet.environment, g->fleet.wind, &g->fleet.boats.now, &t);
    const lw_ride_lanes *ride = &g->fleet.boats.ride;
    const lw_wish_lanes wish = lw_wished(&ride->pilot, g->fleet.boats.now.felt_wind);
    const lw_instant now = {ride,       &g->fleet.boats.now,    &t,
                            &g->around, &g->fleet.boats.memory, &wish};
    lw_dynamic_rates(g->motion, &now, &rates, &g->loads);
    g->fleet.boats.history[0].state = g->fleet.boats.now;  // what a trace tells
}

lw_trace lw_ride_trace(const lw_motion *motion, const lw_ride *ride)
{
    group g;
    g.motion = motion;
    LW_EACH_LANE (i) copy_in(&g.fleet, i, ride);
    look(&g);
    return lw_trace_lane(motion, &g.fleet, &g.around, &g.loads, 0);
}
