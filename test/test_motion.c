// test_motion.c - laws of the boat in time.
// SPDX-License-Identifier: MIT

#include "flight/balance.h"
#include "lullwise/ride.h"
#include "motion/ride/fleet.h"
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
    const lw_environment around = lw_environment_calm(pose->wind);
    const lw_hysteresis memory = {.flap = steady->inflow.main.flap};
    const lw_instant now = {&ride, &x, &t, &around, &memory, NULL};
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

// Growth of the strongest mode of the Jacobian, by many small steps of the linear equations alone.
static double strongest(lw_jacobian jacobian, double dt, double start[])
{
    enum { N = LW_RIDE_STATES };
    double x[N], grown = 0.0;
    const int steps = (int)(30.0 / dt);
    for (int k = 0; k < N; k++) x[k] = start[k];
    for (int n = 0; n < steps; n++) {
        double k_1[N], half[N], size = 0.0;  // midpoint rule
        for (int i = 0; i < N; i++) {
            k_1[i] = 0.0;
            for (int j = 0; j < N; j++) k_1[i] += is_place((size_t)j) ? 0.0 : jacobian[i][j] * x[j];
        }
        for (int i = 0; i < N; i++) half[i] = x[i] + 0.5 * dt * k_1[i];
        for (int i = 0; i < N; i++) {
            double k_2 = 0.0;
            for (int j = 0; j < N; j++) k_2 += is_place((size_t)j) ? 0.0 : jacobian[i][j] * half[j];
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

// The boat alone falls over: the strongest mode of the Jacobian tells how fast, and the ride,
// started a little along that mode, does it as fast.
TEST_FUNCTION(ride_leaves_an_unstable_balance_along_its_mode_and_as_fast)
{
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    flown_let_go(&f);
    f.motion.parameters.step = 0.005;
    lw_jacobian jacobian;
    double mode[LW_RIDE_STATES] = {0};
    lw_motion_jacobian(&f.motion, &f.plan, &f.plan.start, jacobian);
    mode[LW_STATE_AT(heel)] = 1.0;
    const double rate = strongest(jacobian, 0.002, mode);
    CHECK(rate > 0.3 && rate < 3.0);

    const lw_ride_state balance = f.plan.start;
    for (size_t k = 0; k < LW_RIDE_STATES; k++) f.plan.start.at[k] += 1e-5 * mode[k];
    const double off_1 = ridden(&f, 1.0).heel - balance.heel;
    const double off_2 = ridden(&f, 3.0).heel - balance.heel;
    CHECK_RELATIVE(log(off_2 / off_1) / 2.0, rate, 0.02);
}

// --- energy

// Kinetic energy changes by the work of all forces, weight among them; the sailor sits still. What
// is missed crosses zero on its way down, so that the steps are far apart.
TEST_FUNCTION(energy_changes_by_the_work_of_the_forces)
{
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    flown_let_go(&f);
    f.plan.start.heel += 0.05, f.plan.start.pitch += 0.01, f.plan.start.surge -= 0.5;
    double miss[2], moved = 0.0;
    for (int fine = 0; fine < 2; fine++) {
        const double dt = f.motion.parameters.step = fine ? 0.001 : 0.008;
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
            const lw_environment around = lw_environment_calm(lw_all(f.plan.wind));
            const lw_hysteresis none = {.flap = lw_all(0.0)};
            lw_state_lanes rates;
            lw_loads loads;
            const lw_wish_lanes wish = lw_wished(&lanes.pilot, x.felt_wind);
            const lw_instant at = {&lanes, &x, &t, &around, &none, &wish};
            lw_dynamic_rates(&f.motion, &at, &rates, &loads);
            const lw_vector F = loads.force, M = loads.moment, v = lw_velocity_of(&x),
                            w = lw_spin_of(&x);
            const double power =
                (F.x * v.x + F.y * v.y + F.z * v.z + M.x * w.x + M.y * w.y + M.z * w.z)[0];
            lw_mass_matrix mass;
            lw_mass_matrix_of(&f.motion.inertia, &f.craft, lanes.place, x.body, &mass);
            energy = 0.0;
            for (int i = 0; i < LW_DOF; i++) {
                for (int j = 0; j < LW_DOF; j++) {
                    energy += 0.5 * (*lw_mass_matrix_at(&mass, i, j))[0] * now.at[i] * now.at[j];
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
    CHECK(moved > 100.0);              // joules that came and went
    CHECK(miss[1] < 1e-5 * moved);     // and are accounted for,
    CHECK(miss[1] < 0.027 * miss[0]);  // the better the finer the step: 0.3 for half of it
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
        f.motion.parameters.step = lw_ride_parameters_preset().step / (1 << i);
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
    f->motion.parameters.step = step;
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

// With a strong pin trimmed for 20 kn in far too much wind, where much happens. A step draws gusts
// of its own, so that the same seed is another wind: the counts agree as those of other seeds
// would.
TEST_FUNCTION(half_the_step_leaves_the_counts_within_their_standard_error)
{
    flown f;
    flown_fill(&f, 0, 20.0, 120.0);
    f.plan.wind = 26.0 * LW_KN;
    const double step = lw_ride_parameters_preset().step;
    const lw_ride_sample usual = crowd_of(&f, step), fine = crowd_of(&f, 0.5 * step);
    const lw_ride_rates a = lw_ride_sample_error(&usual), b = lw_ride_sample_error(&fine);
    CHECK(usual.mean.swims > 5.0 * a.swims);  // many are counted
    for (size_t i = 0; i < LW_RIDE_RATES; i++) {
        const double off = ((const double *)&usual.mean)[i] - ((const double *)&fine.mean)[i];
        CHECK(fabs(off) < 2.0 * hypot(((const double *)&a)[i], ((const double *)&b)[i]));
    }
}

// The same right-hand side through SUNDIALS' CVODE: with the sailor at work, from off the balance,
// but for her place along the boat, which moves between steps.
TEST_FUNCTION(general_integrator_comes_to_the_same_place)
{
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    f.motion.parameters.forward_pace = 0.0;
    f.plan.start.heel += 0.05, f.plan.start.pitch += 0.01, f.plan.start.surge -= 0.5;
    integrator_question q = {&f.motion, &f.plan, 0};
    lw_ride_state exact = f.plan.start;
    CHECK(integrator_go(&q, &exact, 3.0, 1e-10));
    const lw_ride_state usual = ridden(&f, 3.0);
    f.motion.parameters.step = 0.003125;
    const lw_ride_state fine = ridden(&f, 3.0);
    const double far = distance_between(&exact, &f.plan.start);
    CHECK(distance_between(&usual, &exact) < 0.001 * far);
    CHECK(distance_between(&fine, &exact) < distance_between(&usual, &exact) / 20.0);
}

// --- air

// How the boat speeds up at the balance with air on foils and struts.
static lw_ride_state with_air(const flown *f, const lw_hysteresis *air)
{
    lw_ride_lanes lanes;
    for (int i = 0; i < LW_WIDTH; i++) lw_ride_lanes_put(&lanes, i, &f->plan);
    lw_state_lanes x, rates;
    for (size_t k = 0; k < LW_RIDE_STATES; k++) {
        x.at[k] = lw_all(f->plan.start.at[k]);
    }
    const lw_turned t = lw_turned_of(&x);
    const lw_environment around = lw_environment_calm(lw_all(f->plan.wind));
    lw_loads loads;
    const lw_wish_lanes wish = lw_wished(&lanes.pilot, x.felt_wind);
    const lw_instant now = {&lanes, &x, &t, &around, air, &wish};
    lw_dynamic_rates(&f->motion, &now, &rates, &loads);
    lw_mass_matrix mass;
    lw_mass_matrix_of(&f->motion.inertia, &f->craft, lanes.place, x.body, &mass);
    lw_mass_matrix_solve(&mass, rates.at);
    lw_ride_state out = {0};
    for (size_t k = 0; k < LW_DOF; k++) out.at[k] = rates.at[k][0];
    return out;
}

TEST_FUNCTION(air_on_the_main_foil_drops_the_boat_and_her_bow)
{
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    const lw_hysteresis air = {.main = {.foil = {.part = lw_all(1.0)}}};
    const lw_ride_state change = with_air(&f, &air);
    CHECK(change.heave < -2.0);      // most of the weight has lost its hold
    CHECK(change.pitch_rate > 0.5);  // bow down
}

TEST_FUNCTION(air_on_the_rudder_foil_drops_the_stern)
{
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    f.plan.start.rudder += 2.0 * f.craft.rudder_turn;  // that it carries something
    const lw_hysteresis none = {.flap = lw_all(0.0)};
    const lw_hysteresis air = {.rudder = {.foil = {.part = lw_all(1.0)}}};
    CHECK(with_air(&f, &air).pitch_rate < with_air(&f, &none).pitch_rate);
}

// With air on the blade the helm is weak: nobody steers her out of a turn.
TEST_FUNCTION(air_on_the_rudder_blade_leaves_the_helm_weak)
{
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    double turn[2];
    for (int part = 0; part < 2; part++) {
        const lw_hysteresis air = {.rudder = {.strut = {.part = lw_all(part)}}};
        double at[2];
        for (int side = 0; side < 2; side++) {
            flown moved = f;
            moved.motion.craft = &moved.craft;
            moved.plan.start.helm += side ? LW_DEG : -LW_DEG;
            at[side] = with_air(&moved, &air).yaw_rate;
        }
        turn[part] = at[1] - at[0];
    }
    CHECK(fabs(turn[1]) < 0.6 * fabs(turn[0]));
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
        TEST(air_on_the_main_foil_drops_the_boat_and_her_bow),
        TEST(air_on_the_rudder_foil_drops_the_stern),
        TEST(air_on_the_rudder_blade_leaves_the_helm_weak),
    };
    return RUN_TESTS(tests);
}
