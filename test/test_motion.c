// test_motion.c - laws of the boat in time.
// SPDX-License-Identifier: MIT

#include "flight/balance.h"
#include "lullwise/ride.h"
#include "motion/fleet.h"
#include "test/check.h"
#include "test/integrator.h"
#include "test/random_boat.h"
#include "test/ride.h"

static bool is_place(size_t k) { return k == LW_STATE_AT(upwind) || k == LW_STATE_AT(port); }

// --- the forces

// Loads of a boat in motion as a pose has it, on plain water, her wake all come to the rudder foil.
static void moving_loads(const lw_craft *craft, const lw_ask *ask, const lw_pose *pose,
                         const lw_loads *steady, lw_loads *got)
{
    const lw_motion motion = lw_motion_of(craft);
    const lw_lanes up = steady->inflow.at.z.z;
    lw_ride_lanes ride;
    ride.setup = pose->setup, ride.place = pose->place;
    const lw_vector u = steady->inflow.through;
    const lw_state_lanes x = {.surge = u.x,
                              .sway = u.y,
                              .heave = u.z,
                              .heel = lw_all(ask->heel),
                              .pitch = pose->pitch,
                              .bow = lw_all(ask->heading) - pose->leeway,
                              .height = pose->ride_height - craft->main_strut.length * up,
                              .wand = steady->inflow.wand,
                              .downwash = steady->downwash,
                              .body = -lw_effort_hike(craft, pose->effort),
                              .taken = lw_effort_taken(pose->effort),
                              .helm = pose->helm,
                              .rudder = pose->rudder_incidence};
    const lw_turned t = lw_turned_of(&x);
    const lw_around around = lw_around_calm(pose->wind);
    const lw_worn worn = {steady->inflow.main.flap,
                          {lw_all(0.0), lw_all(0.0), lw_all(0.0), lw_all(0.0)}};
    const lw_instant now = {&ride, &x, &t, &around, &worn};
    lw_moving_loads(&motion, &now, lw_all(0.0), got);
}

// A moving boat without rates, on plain water, is a steady pose.
TEST_FUNCTION(boat_that_moves_steadily_has_the_loads_of_her_pose)
{
    const lw_craft craft = preset_craft();
    random_stream stream = {11};
    for (int run = 0; run < 500; run++) {
        lw_ask ask = random_flight(&craft, &stream);
        ask.start.leeway = random_between(&stream, -0.1, 0.1);
        ask.start.ride_height = random_between(&stream, -0.1, 0.8);
        lw_ask_give_pitch(&ask, random_between(&stream, -0.08, 0.08));
        ask.start.effort = random_between(&stream, 0.0, 2.0);
        lw_pose pose;
        for (int i = 0; i < LW_WIDTH; i++) lw_pose_put(&pose, i, &ask);
        const lw_loads steady = lw_pose_loads(&craft, &pose);

        lw_loads got;
        moving_loads(&craft, &ask, &pose, &steady, &got);
        const double per = craft.weight;
        CHECK_NEAR(got.force.x[0] / per, steady.force.x[0] / per, 1e-13);
        CHECK_NEAR(got.force.y[0] / per, steady.force.y[0] / per, 1e-13);
        CHECK_NEAR(got.force.z[0] / per, steady.force.z[0] / per, 1e-13);
        CHECK_NEAR(got.moment.x[0] / per, steady.moment.x[0] / per, 1e-13);
        CHECK_NEAR(got.moment.y[0] / per, steady.moment.y[0] / per, 1e-13);
        CHECK_NEAR(got.moment.z[0] / per, steady.moment.z[0] / per, 1e-13);
    }
}

// --- steady flight

TEST_FUNCTION(nothing_changes_at_a_balance)
{
    flown f;
    const double headings[] = {55.0, 100.0, 140.0};
    for (int i = 0; i < 3; i++) {
        flown_fill(&f, 1, 14.0, headings[i]);
        CHECK(f.answer.outcome == LW_FLIES);
        lw_ride_state rates;
        lw_motion_rates(&f.motion, &f.plan, &f.plan.start, &rates);
        for (size_t k = 0; k < LW_RIDE_STATES; k++) {
            if (!is_place(k)) CHECK_NEAR(rates.at[k], 0.0, 1e-7);
        }
    }
}

// Off the balance in each state in turn, with the sailor at work, in calm water and steady wind.
TEST_FUNCTION(ride_settles_at_the_balance_it_was_pushed_off)
{
    static const double push[] = {1.0,  0.2, 0.2, 0.1, 0.05, 0.05, 0.05, 0.01, 0.05,
                                  0.05, 0.0, 0.0, 0.1, 0.0,  0.2,  0.0,  0.1,  0.02,
                                  0.0,  0.0, 0.0, 0.0, 0.0,  0.5,  0.5,  0.0};
    _Static_assert(sizeof push / sizeof *push == LW_RIDE_STATES, "a push for each state");
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    const lw_ride_state balance = f.plan.start;
    const lw_flight *flight = &f.answer.flight;
    for (size_t k = 0; k < LW_RIDE_STATES; k++) {
        if (push[k] == 0.0) continue;
        f.plan.start = balance;
        f.plan.start.at[k] += push[k];
        const lw_ride_state end = ridden(&f, 120.0);
        CHECK_RELATIVE(end.surge, balance.surge, 1e-3);
        CHECK_RELATIVE(end.height, balance.height, 1e-3);
        CHECK_NEAR(end.pitch, balance.pitch, 1e-3 * fabs(flight->heel));
        CHECK_RELATIVE(end.heel, balance.heel, 1e-3);
        CHECK_RELATIVE(end.bow, balance.bow, 1e-3);
        CHECK_RELATIVE(end.wand, balance.wand, 1e-3);
    }
}

// --- modes, with the sailor holding all as it is

// Growth of the strongest mode of the slopes, by many small steps of the linear equations alone.
static double strongest(double slopes[LW_RIDE_STATES][LW_RIDE_STATES], double dt, double start[])
{
    enum { N = LW_RIDE_STATES };
    double x[N], grown = 0.0;
    const int steps = (int)(30.0 / dt);
    for (int k = 0; k < N; k++) x[k] = start[k];
    for (int n = 0; n < steps; n++) {
        double k_1[N], half[N], size = 0.0;  // midpoint rule
        for (int i = 0; i < N; i++) {
            k_1[i] = 0.0;
            for (int j = 0; j < N; j++) k_1[i] += is_place((size_t)j) ? 0.0 : slopes[i][j] * x[j];
        }
        for (int i = 0; i < N; i++) half[i] = x[i] + 0.5 * dt * k_1[i];
        for (int i = 0; i < N; i++) {
            double k_2 = 0.0;
            for (int j = 0; j < N; j++) k_2 += is_place((size_t)j) ? 0.0 : slopes[i][j] * half[j];
            x[i] += is_place((size_t)i) ? 0.0 : dt * k_2;
            size += x[i] * x[i];
        }
        const double per = 1.0 / sqrt(size);
        for (int i = 0; i < N; i++) x[i] *= per;
        if (n >= steps / 2) grown -= log(per);
    }
    for (int k = 0; k < N; k++) start[k] = x[k];
    return grown / (0.5 * steps * dt);
}

// The boat alone falls over: the strongest mode of the slopes tells how fast, and the ride, started
// a little along that mode, does it as fast.
TEST_FUNCTION(ride_leaves_an_unstable_balance_along_its_mode_and_as_fast)
{
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    flown_let_go(&f);
    f.motion.rules.step = 0.005;
    double slopes[LW_RIDE_STATES][LW_RIDE_STATES], mode[LW_RIDE_STATES] = {0};
    lw_motion_slopes(&f.motion, &f.plan, &f.plan.start, slopes);
    mode[LW_STATE_AT(heel)] = 1.0;
    const double rate = strongest(slopes, 0.002, mode);
    CHECK(rate > 0.3 && rate < 3.0);

    const lw_ride_state balance = f.plan.start;
    for (size_t k = 0; k < LW_RIDE_STATES; k++) f.plan.start.at[k] += 1e-5 * mode[k];
    const double off_1 = ridden(&f, 1.0).heel - balance.heel;
    const double off_2 = ridden(&f, 3.0).heel - balance.heel;
    CHECK_RELATIVE(log(off_2 / off_1) / 2.0, rate, 0.02);
}

// --- energy

// Kinetic energy changes by the work of all forces, weight among them; the sailor sits still.
TEST_FUNCTION(energy_changes_by_the_work_of_the_forces)
{
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    flown_let_go(&f);
    f.plan.start.heel += 0.05, f.plan.start.pitch += 0.01, f.plan.start.surge -= 0.5;
    double miss[2], moved = 0.0;
    for (int fine = 0; fine < 2; fine++) {
        const double dt = f.motion.rules.step = fine ? 0.001 : 0.002;
        const int steps = (int)(1.0 / dt + 0.5);
        lw_ride ride = {.events = NULL};
        lw_ride_begin(&ride, &f.motion, &f.plan);
        double work = 0.0, before = 0.0, first = 0.0, energy = 0.0, most = 0.0;
        for (int n = 0; n <= steps; n++) {
            const lw_ride_state now = lw_ride_now(&ride);
            lw_state_lanes x;
            for (size_t k = 0; k < LW_RIDE_STATES; k++) x.at[k] = lw_all(now.at[k]);
            lw_ride_lanes lanes;
            for (int i = 0; i < LW_WIDTH; i++) lw_ride_lanes_put(&lanes, i, &f.plan);
            const lw_turned t = lw_turned_of(&x);
            const lw_around around = lw_around_calm(lw_all(f.plan.wind));
            const lw_lanes zero = lw_all(0.0);
            const lw_worn worn = {zero, {zero, zero, zero, zero}};
            lw_state_lanes rates;
            lw_loads loads;
            const lw_instant at = {&lanes, &x, &t, &around, &worn};
            lw_rates_of(&f.motion, &at, &rates, &loads);
            const lw_vector F = loads.force, M = loads.moment, v = lw_velocity_of(&x),
                            w = lw_spin_of(&x);
            const double power =
                (F.x * v.x + F.y * v.y + F.z * v.z + M.x * w.x + M.y * w.y + M.z * w.z)[0];
            lw_moves mass;
            lw_mass_of(&f.motion.inertia, &f.craft, lanes.place, x.body, &mass);
            energy = 0.0;
            for (int i = 0; i < LW_MOVES; i++) {
                for (int j = 0; j < LW_MOVES; j++) {
                    energy += 0.5 * (*lw_moves_at(&mass, i, j))[0] * now.at[i] * now.at[j];
                }
            }
            if (n == 0) first = energy;
            if (n > 0) work += 0.5 * dt * (before + power);
            before = power;
            most = fmax(most, fabs(energy - first));
            lw_rides_advance(&f.motion, &ride, 1, 1);
        }
        miss[fine] = fabs(energy - first - work);
        moved = most;
    }
    CHECK(moved > 100.0);            // joules that came and went
    CHECK(miss[1] < 1e-5 * moved);   // and are accounted for,
    CHECK(miss[1] < 0.3 * miss[0]);  // the better the finer the step
}

// --- the method

static double distance_between(const lw_ride_state *a, const lw_ride_state *b)
{
    double sum = 0.0;
    for (size_t k = 0; k < LW_RIDE_STATES; k++) {
        sum += (a->at[k] - b->at[k]) * (a->at[k] - b->at[k]);
    }
    return sqrt(sum);
}

// Without corners on its way (the sailor holds still; no stop is met) the error goes with the cube
// of the step.
TEST_FUNCTION(half_the_step_leaves_an_eighth_of_the_error)
{
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    flown_let_go(&f);
    f.plan.start.heel += 0.03, f.plan.start.pitch += 0.005, f.plan.start.surge -= 0.3;
    lw_ride_state end[4];
    for (int i = 0; i < 4; i++) {
        f.motion.rules.step = lw_ride_rules_preset().step / (1 << i);
        end[i] = ridden(&f, 1.0);
    }
    const double d_1 = distance_between(&end[0], &end[1]), d_2 = distance_between(&end[1], &end[2]);
    const double d_3 = distance_between(&end[2], &end[3]);
    CHECK(d_1 / d_2 > 6.5 && d_1 / d_2 < 10.0);
    CHECK(d_2 / d_3 > 7.0 && d_2 / d_3 < 9.0);
}

#define CROWD 256

// Rides of 200 s in gusts of 30 %.
static lw_ride_sample crowd_of(flown *f, double step)
{
    static lw_ride rides[CROWD];
    f->motion.rules.step = step;
    flown_stir(f, 0.3);
    for (int i = 0; i < CROWD; i++) {
        f->plan.seed = (uint64_t)i;
        rides[i].events = NULL;
        lw_ride_begin(&rides[i], &f->motion, &f->plan);
    }
    lw_rides_advance(&f->motion, rides, CROWD, (size_t)(200.0 / step + 0.5));
    lw_ride_sample sample = {0};
    for (int i = 0; i < CROWD; i++) lw_ride_sample_add(&sample, &rides[i].tally);
    return sample;
}

// With a strong pin trimmed for 20 kn in far too much wind, where much happens. A step draws gusts of its own, so that the same seed
// is another wind: the counts agree as those of other seeds would.
TEST_FUNCTION(half_the_step_leaves_the_counts_within_their_standard_error)
{
    flown f;
    flown_fill(&f, 0, 20.0, 120.0);
    f.plan.wind = 26.0 * LW_KN;
    const double step = lw_ride_rules_preset().step;
    const lw_ride_sample usual = crowd_of(&f, step), fine = crowd_of(&f, 0.5 * step);
    const lw_ride_rates a = lw_ride_sample_error(&usual), b = lw_ride_sample_error(&fine);
    CHECK(usual.mean.swims > 5.0 * a.swims);  // many are counted
    for (size_t i = 0; i < LW_RIDE_RATES; i++) {
        const double off = ((const double *)&usual.mean)[i] - ((const double *)&fine.mean)[i];
        CHECK(fabs(off) < 2.0 * hypot(((const double *)&a)[i], ((const double *)&b)[i]));
    }
}

// The same right-hand side through SUNDIALS' CVODE: with the sailor at work, from off the balance, but for
// her place along the boat, which moves between steps.
TEST_FUNCTION(general_integrator_comes_to_the_same_place)
{
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    f.motion.rules.forward_pace = 0.0;
    f.plan.start.heel += 0.05, f.plan.start.pitch += 0.01, f.plan.start.surge -= 0.5;
    integrator_question q = {&f.motion, &f.plan, 0};
    lw_ride_state exact = f.plan.start;
    CHECK(integrator_go(&q, &exact, 3.0, 1e-10));
    const lw_ride_state usual = ridden(&f, 3.0);
    f.motion.rules.step = 0.003125;
    const lw_ride_state fine = ridden(&f, 3.0);
    const double far = distance_between(&exact, &f.plan.start);
    CHECK(distance_between(&usual, &exact) < 0.001 * far);
    CHECK(distance_between(&fine, &exact) < distance_between(&usual, &exact) / 20.0);
}

// --- lanes

TEST_FUNCTION(ride_depends_neither_on_its_neighbours_nor_on_how_steps_are_shared_out)
{
    enum { RIDES = 7 };
    static flown f;
    static lw_ride together[RIDES], alone;
    flown_fill(&f, 0, 16.0, 100.0);
    flown_stir(&f, 0.25);
    for (int i = 0; i < RIDES; i++) {
        f.plan.seed = (uint64_t)i + 1;
        lw_ride_begin(&together[i], &f.motion, &f.plan);
    }
    lw_rides_advance(&f.motion, together, RIDES, 3000);
    for (int i = 0; i < RIDES; i++) {
        f.plan.seed = (uint64_t)i + 1;
        lw_ride_begin(&alone, &f.motion, &f.plan);
        for (int part = 0; part < 30; part++) lw_rides_advance(&f.motion, &alone, 1, 100);
        CHECK(memcmp(alone.lane, together[i].lane, sizeof alone.lane) == 0);
        CHECK(memcmp(&alone.tally, &together[i].tally, sizeof alone.tally) == 0);
    }
}

// --- air

// How the boat speeds up at the balance with so much air on one foil or strut: 0 none, 1 all.
static lw_ride_state with_air(const flown *f, int place, double air)
{
    lw_ride_lanes lanes;
    for (int i = 0; i < LW_WIDTH; i++) lw_ride_lanes_put(&lanes, i, &f->plan);
    lw_state_lanes x, rates;
    for (size_t k = 0; k < LW_RIDE_STATES; k++) {
        x.at[k] = lw_all(f->plan.start.at[k]);
    }
    const lw_turned t = lw_turned_of(&x);
    const lw_around around = lw_around_calm(lw_all(f->plan.wind));
    lw_worn worn = {lw_all(0.0), {lw_all(0.0), lw_all(0.0), lw_all(0.0), lw_all(0.0)}};
    worn.air[place] = lw_all(air);
    lw_loads loads;
    const lw_instant now = {&lanes, &x, &t, &around, &worn};
    lw_rates_of(&f->motion, &now, &rates, &loads);
    lw_moves mass;
    lw_mass_of(&f->motion.inertia, &f->craft, lanes.place, x.body, &mass);
    lw_moves_solve(&mass, rates.at);
    lw_ride_state out = {0};
    for (size_t k = 0; k < LW_MOVES; k++) out.at[k] = rates.at[k][0];
    return out;
}

TEST_FUNCTION(air_on_the_main_foil_drops_the_boat_and_her_bow)
{
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    const lw_ride_state change = with_air(&f, LW_MAIN_FOIL, 1.0);
    CHECK(change.heave < -2.0);      // most of the weight has lost its hold
    CHECK(change.pitch_rate > 0.5);  // bow down
}

TEST_FUNCTION(air_on_the_rudder_foil_drops_the_stern)
{
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    f.plan.start.rudder += 2.0 * f.craft.rudder_turn;  // that it carries something
    const lw_ride_state wet = with_air(&f, LW_RUDDER_FOIL, 0.0),
                        airy = with_air(&f, LW_RUDDER_FOIL, 1.0);
    CHECK(airy.pitch_rate < wet.pitch_rate);
}

// With air on the blade the helm is weak: nobody steers her out of a turn.
TEST_FUNCTION(air_on_the_rudder_blade_leaves_the_helm_weak)
{
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    double turn[2];
    for (int is_airy = 0; is_airy < 2; is_airy++) {
        double at[2];
        for (int side = 0; side < 2; side++) {
            flown moved = f;
            moved.motion.craft = &moved.craft;
            moved.plan.start.helm += side ? LW_DEG : -LW_DEG;
            at[side] = with_air(&moved, LW_BLADE, is_airy).yaw_rate;
        }
        turn[is_airy] = at[1] - at[0];
    }
    CHECK(fabs(turn[1]) < 0.6 * fabs(turn[0]));
}

// --- events and ends

// What the half second after an event of a kind brings, over rides in far too much wind until the
// first swim; and how far she turns in any half second before.
typedef struct after {
    double events, pitch, turned;  // counted; bow up, and turned either way [rad], summed
    double halves, usually;
} after;

static void ride_on(const flown *f, lw_ride *ride, int steps, after *sum, bool happened)
{
    const lw_ride_state was = lw_ride_now(ride);
    lw_rides_advance(&f->motion, ride, 1, (size_t)steps);
    const lw_ride_state is = lw_ride_now(ride);
    if (lw_ride_tally_swims(&ride->tally) > 0.0) return;
    const double turned = fabs(is.bow - was.bow);
    if (happened) {
        sum->events += 1.0, sum->pitch += is.pitch - was.pitch, sum->turned += turned;
    } else {
        sum->halves += 1.0, sum->usually += turned;
    }
}

static after after_all(lw_ride_what what)
{
    static flown f;
    after sum = {0};
    flown_fill(&f, 0, 14.0, 100.0);
    f.plan.wind = 30.0 * LW_KN;
    flown_stir(&f, 0.2);
    for (uint64_t seed = 1; seed <= 60; seed++) {
        lw_ride ride = {.events = NULL};
        f.plan.seed = seed;
        lw_ride_begin(&ride, &f.motion, &f.plan);
        while (lw_ride_tally_swims(&ride.tally) == 0.0 && ride.tally.seconds < 60.0) {
            const double count = ride.tally.count[what];
            const bool is_early = ride.tally.seconds < 1.0;  // all is as usual yet
            if (is_early) ride_on(&f, &ride, 25, &sum, false);
            if (!is_early) lw_rides_advance(&f.motion, &ride, 1, 1);
            if (ride.tally.count[what] > count) ride_on(&f, &ride, 25, &sum, true);
        }
    }
    return sum;
}

// Air on the main foil drops the bow, air on the rudder's blade spins her: seen from the events.
TEST_FUNCTION(bow_drops_after_air_on_the_main_foil_and_air_on_the_blade_turns_her)
{
    const after foil = after_all(LW_RIDE_FOIL_AIR), blade = after_all(LW_RIDE_BLADE_AIR);
    printf(
        "  in half a second: bow %+.1f deg after air on the main foil (%.0f times); turned by "
        "%.1f deg after air on the blade (%.0f times), %.1f deg before\n",
        foil.pitch / foil.events / LW_DEG, foil.events, blade.turned / blade.events / LW_DEG,
        blade.events, blade.usually / blade.halves / LW_DEG);
    CHECK(foil.events >= 10.0 && blade.events >= 10.0);
    CHECK(foil.pitch / foil.events < -5.0 * LW_DEG);
    CHECK(blade.turned / blade.events > 1.5 * blade.usually / blade.halves);
}

// A boat trimmed for 14 kn comes to grief in gusts about 28 kn, and each time
// the story has its parts: she was flying or afloat, fell, lay for the cost of a swim, went on.
TEST_FUNCTION(swim_costs_its_time_and_is_followed_by_going_on)
{
    static flown f;
    static lw_ride_event events[400];
    flown_fill(&f, 1, 14.0, 100.0);
    f.plan.wind = 28.0 * LW_KN;
    flown_stir(&f, 0.2);
    lw_ride ride = {.events = events, .event_room = 400};
    lw_ride_begin(&ride, &f.motion, &f.plan);
    lw_rides_advance(&f.motion, &ride, 1, 30000);
    CHECK(lw_ride_tally_swims(&ride.tally) >= 2.0);
    double fell = -1.0, lain = 0.0;
    for (size_t i = 0; i < ride.event_count; i++) {
        const lw_ride_event *event = &events[i];
        CHECK(lw_ride_event_text(event->what)[0] != '\0');
        if (lw_ride_event_is_swim(event->what)) {
            CHECK(fell < 0.0);  // nobody falls while swimming
            fell = event->at.time;
        } else if (event->what == LW_RIDE_AGAIN) {
            CHECK_NEAR(event->at.time - fell, f.motion.rules.swim, 3.0 * f.motion.rules.step);
            lain += event->at.time - fell;
            fell = -1.0;
        } else {
            CHECK(fell < 0.0);  // and nothing else happens meanwhile
        }
    }
    CHECK(ride.tally.swimming >= lain - 1.0);
}

// From rest on the hull in a good wind she gathers way, launches, turns to her course and flies as
// the balance does.
TEST_FUNCTION(boat_at_rest_launches_and_comes_to_her_balance)
{
    static lw_ride_event events[100];
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    const lw_ride_state balance = f.plan.start;
    f.plan.start = f.plan.rest, f.plan.starts_aloft = false;
    lw_ride ride = {.events = events, .event_room = 100};
    lw_ride_begin(&ride, &f.motion, &f.plan);
    CHECK(lw_ride_stands(&ride) == LW_STANDS_AFLOAT);
    lw_rides_advance(&f.motion, &ride, 1, 6000);
    CHECK(ride.tally.count[LW_RIDE_LAUNCH] == 1.0);
    CHECK(lw_ride_tally_swims(&ride.tally) == 0.0);
    CHECK(lw_ride_stands(&ride) == LW_STANDS_FLYING);
    const lw_ride_state end = lw_ride_now(&ride);
    CHECK_RELATIVE(end.surge, balance.surge, 2e-3);
    CHECK_RELATIVE(end.heel, balance.heel, 2e-2);
}

TEST_FUNCTION(sailor_holds_an_ordinary_wind_and_loses_far_too_much)
{
    enum { RIDES = 8 };
    static flown f;
    static lw_ride rides[RIDES];
    double swims[2];
    for (int strong = 0; strong < 2; strong++) {
        flown_fill(&f, 1, 14.0, 100.0);
        if (strong) f.plan.wind = 28.0 * LW_KN;
        flown_stir(&f, 0.2);
        for (int i = 0; i < RIDES; i++) {
            f.plan.seed = (uint64_t)i + 1;
            lw_ride_begin(&rides[i], &f.motion, &f.plan);
        }
        lw_rides_advance(&f.motion, rides, RIDES, 15000);  // five minutes
        swims[strong] = 0.0;
        for (int i = 0; i < RIDES; i++) swims[strong] += lw_ride_tally_swims(&rides[i].tally);
    }
    printf("  swims: %.0f in an ordinary wind, %.0f in far too much\n", swims[0], swims[1]);
    CHECK(swims[0] <= 1.0);
    CHECK(swims[1] >= 2.0 * RIDES);
}

static bool is_finite(const double *x, size_t n)
{
    for (size_t k = 0; k < n; k++) {
        if (!isfinite(x[k])) return false;
    }
    return true;
}

// Any boat a file may describe, on any day: some cannot sail at all, but each ride says how it stands
// and none holds what is no number. The polars are those of the preset's sections.
// 10,000 rides, and under `make soak` more: 250 boats and days, four pins, ten seeds each.
TEST_FUNCTION(ride_of_any_boat_on_any_day_ends_with_a_name_and_in_numbers)
{
    enum { PLANS = 4, SEEDS = 10, RIDES = PLANS * SEEDS, STEPS = 400 };
    static lw_craft craft;
    static lw_ride rides[RIDES];
    random_stream stream = {17};
    long again = 0;
    for (int run = 0; run < 250 * soak_times(); run++) {
        const boat_kind kind = run % 2 ? BOAT_ANY : BOAT_USUAL;
        const lw_boat boat = random_boat(kind, &stream, &again);
        const lw_person person = random_person(kind, &stream);
        const lw_day day = random_day(kind, &stream);
        const lw_medium medium = lw_medium_of(&day);
        lw_craft_prepare(&craft, &boat, preset_sections(), &person, &medium);
        lw_motion motion = lw_motion_of(&craft);
        motion.is_gusty = motion.is_choppy = true;
        motion.gust =
            lw_gust_filter_of(lw_gust_kind_of(&day, craft.sail.centre_height), motion.rules.step);
        motion.sea = lw_sea_kind_of(&medium, day.wind.mean);
        for (int i = 0; i < PLANS; i++) {
            lw_setup setup = craft.setup;
            setup.incidence = boat.pins[i].incidence;
            const double heading = random_between(&stream, 30.0, 170.0) * LW_DEG;
            const lw_ask ask = lw_ask_of(&craft, &setup, day.wind.mean, heading);
            lw_answer answer;
            lw_balance(&craft, &ask, &answer, 1);
            lw_ride_plan plan = lw_ride_plan_of(&motion, &ask, &answer);
            for (int k = SEEDS * i; k < SEEDS * (i + 1); k++) {
                plan.seed = random_bits(&stream);
                rides[k].events = NULL;
                lw_ride_begin(&rides[k], &motion, &plan);
            }
        }
        lw_rides_advance(&motion, rides, RIDES, STEPS);
        for (int i = 0; i < RIDES; i++) {
            const lw_ride_state now = lw_ride_now(&rides[i]);
            const lw_trace at = lw_ride_trace(&motion, &rides[i]);
            CHECK(is_finite(now.at, LW_RIDE_STATES));
            CHECK(is_finite((const double *)&at, sizeof at / sizeof(double)));
            CHECK(
                is_finite((const double *)&rides[i].tally, sizeof rides[i].tally / sizeof(double)));
            CHECK_NEAR(rides[i].tally.seconds, STEPS * motion.rules.step, 1e-9);
            CHECK(lw_ride_stand_text(lw_ride_stands(&rides[i]))[0] != '\0');
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(boat_that_moves_steadily_has_the_loads_of_her_pose),
        TEST(nothing_changes_at_a_balance),
        TEST(ride_settles_at_the_balance_it_was_pushed_off),
        TEST(ride_leaves_an_unstable_balance_along_its_mode_and_as_fast),
        TEST(energy_changes_by_the_work_of_the_forces),
        TEST(half_the_step_leaves_an_eighth_of_the_error),
        TEST(half_the_step_leaves_the_counts_within_their_standard_error),
        TEST(general_integrator_comes_to_the_same_place),
        TEST(ride_depends_neither_on_its_neighbours_nor_on_how_steps_are_shared_out),
        TEST(air_on_the_main_foil_drops_the_boat_and_her_bow),
        TEST(air_on_the_rudder_foil_drops_the_stern),
        TEST(air_on_the_rudder_blade_leaves_the_helm_weak),
        TEST(bow_drops_after_air_on_the_main_foil_and_air_on_the_blade_turns_her),
        TEST(swim_costs_its_time_and_is_followed_by_going_on),
        TEST(boat_at_rest_launches_and_comes_to_her_balance),
        TEST(sailor_holds_an_ordinary_wind_and_loses_far_too_much),
        TEST(ride_of_any_boat_on_any_day_ends_with_a_name_and_in_numbers),
    };
    return RUN_TESTS(tests);
}
