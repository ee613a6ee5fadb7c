// test_flight.c - claims about the forces of a pose and about the balances found from them.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "flight/balance.h"
#include "test/check.h"
#include "test/preset.h"

#define FLIGHTS 2000

static bool is_found(const lw_answer *answer) { return answer->outcome != LW_NO_BALANCE; }

static lw_answer balance_one(const lw_craft *craft, const lw_ask *ask)
{
    lw_answer answer;
    lw_balance(craft, ask, &answer, 1);
    return answer;
}

// A day that the preset boat flies in: 14 kn on a reach, third pin.
static lw_ask usual_ask(const lw_craft *craft)
{
    const lw_setup setup = preset_setup(craft, 2);
    return lw_ask_of(craft, &setup, 14.0 * LW_KN, 100.0 * LW_DEG);
}

// --- the balance

// The residual is worked out again from the solution, apart from the solver.
TEST_FUNCTION(nothing_is_left_over_at_a_balance)
{
    static lw_ask asks[FLIGHTS];
    static lw_solution solutions[FLIGHTS];
    const lw_craft craft = preset_craft();
    random_stream stream = {1};
    for (int i = 0; i < FLIGHTS; i++) asks[i] = random_flight(&craft, &stream);
    lw_solve(&craft, asks, false, solutions, FLIGHTS);
    int found = 0;
    for (int i = 0; i < FLIGHTS; i++) {
        if (!(solutions[i].residual < LW_RESIDUAL)) continue;
        lw_pose pose;
        lw_lanes residual[LW_UNKNOWNS];
        for (int k = 0; k < LW_WIDTH; k++) {
            lw_pose_put(&pose, k, &asks[i]);
            lw_pose_settle(&pose, k, &asks[i], &solutions[i]);
        }
        lw_pose_residual(&craft, &pose, residual);
        for (int e = 0; e < LW_UNKNOWNS; e++) CHECK_NEAR(residual[e][0], 0.0, 1e-9);
        found++;
    }
    CHECK(found > FLIGHTS * 3 / 4);  // of any wind, heel and place; the rest cannot fly so
}

// In steady level flight buoyancy and weight do no work: what the air gives, the water takes.
TEST_FUNCTION(power_from_the_air_is_power_into_the_water)
{
    const lw_craft craft = preset_craft();
    random_stream stream = {2};
    for (int i = 0; i < 300; i++) {
        const lw_ask ask = random_flight(&craft, &stream);
        lw_solution solution;
        lw_solve(&craft, &ask, false, &solution, 1);
        if (!(solution.residual < LW_RESIDUAL)) continue;
        lw_pose pose;
        lw_loads l;
        for (int k = 0; k < LW_WIDTH; k++) {
            lw_pose_put(&pose, k, &ask);
            lw_pose_settle(&pose, k, &ask, &solution);
        }
        lw_pose_all_loads(&craft, &pose, &l);
        const lw_vector v = l.inflow.through;
        const double air = (l.air.x * v.x + l.air.y * v.y + l.air.z * v.z)[0];
        const double water = (l.water.x * v.x + l.water.y * v.y + l.water.z * v.z)[0];
        CHECK(air > 0.0);
        CHECK_NEAR(air + water, 0.0, 2.0 * LW_RESIDUAL * craft.weight * pose.speed[0]);
    }
}

// --- port and starboard

// Any pose, wet or dry, in lane 0.
static lw_pose random_pose(random_stream *stream)
{
    lw_ask ask = {.start = {.speed = random_between(stream, 2.0, 12.0),
                            .leeway = random_between(stream, -0.1, 0.1),
                            .ride_height = random_between(stream, -0.1, 0.8),
                            .pitch = random_between(stream, -0.08, 0.08),
                            .helm = random_between(stream, -0.1, 0.1),
                            .effort = random_between(stream, 0.0, 2.0)},
                  .wind = random_between(stream, 2.0, 12.0),
                  .heading = random_between(stream, 0.5, 3.0),
                  .heel = random_between(stream, -0.3, 0.3),
                  .place = random_between(stream, -1.0, 0.3),
                  .given.rudder = random_between(stream, -0.05, 0.05),
                  .setup = {random_between(stream, 0.0, 0.06), 1.0, 0.5, 0.0}};
    lw_pose pose;
    for (int i = 0; i < LW_WIDTH; i++) lw_pose_put(&pose, i, &ask);
    return pose;
}

// All but the sail, whose table knows one tack only: foils, struts, hull, windage, weight, and the
// sailor, who crosses the boat with the mirrored reach.
TEST_FUNCTION(mirrored_pose_without_a_sail_has_the_mirrored_residual)
{
    lw_craft starboard = preset_craft();
    starboard.sail.area = 0.0;
    lw_craft port = starboard;
    port.body_inboard = -starboard.body_inboard;
    port.body_reach = -starboard.body_reach;
    random_stream stream = {3};
    for (int run = 0; run < 500; run++) {
        const lw_pose pose = random_pose(&stream);
        lw_pose mirror = pose;
        mirror.leeway = -pose.leeway;
        mirror.helm = -pose.helm;
        mirror.sin_heel = -pose.sin_heel;
        mirror.sin_heading = -pose.sin_heading;
        lw_lanes r[LW_UNKNOWNS], m[LW_UNKNOWNS];
        lw_pose_residual(&starboard, &pose, r);
        lw_pose_residual(&port, &mirror, m);
        for (int e = 0; e < LW_UNKNOWNS; e++) {
            const bool turns_over = e == 1 || e == 3 || e == 5;  // sway, roll, yaw
            CHECK_NEAR(m[e][0], turns_over ? -r[e][0] : r[e][0], 1e-13);
        }
    }
}

TEST_FUNCTION(upright_boat_head_to_wind_feels_no_side_force_roll_or_yaw)
{
    lw_craft craft = preset_craft();
    craft.body_inboard = craft.body_reach = 0.0;  // the sailor on the centreline
    random_stream stream = {4};
    for (int run = 0; run < 200; run++) {
        lw_pose pose = random_pose(&stream);
        const lw_lanes zero = lw_all(0.0), one = lw_all(1.0);
        pose.leeway = pose.helm = pose.sin_heel = pose.sin_heading = zero;
        pose.cos_heel = pose.cos_heading = one;
        lw_lanes r[LW_UNKNOWNS];
        lw_pose_residual(&craft, &pose, r);
        CHECK(r[1][0] == 0.0 && r[3][0] == 0.0 && r[5][0] == 0.0);
    }
}

// --- weight

// Speed at which she rides with the hull just clear when towed level and upright in no wind.
static double lift_off_speed(lw_craft craft, double heavier)
{
    craft.hull_mass *= heavier, craft.body_mass *= heavier, craft.weight *= heavier;
    craft.sail.area = craft.windage = craft.body_windage = 0.0;
    const double clear = 0.01;
    const lw_setup setup = preset_setup(&craft, 2);
    lw_ask ask = lw_ask_of(&craft, &setup, 0.0, 90.0 * LW_DEG);
    ask.heel = 0.0;
    ask.start = (lw_ask_start){.ride_height = 0.1, .rudder = craft.rudder_mark};
    double slow = 2.0, fast = 12.0;
    while (fast - slow > 1e-6) {
        const double speed = 0.5 * (slow + fast);
        lw_ask_give_speed(&ask, speed);
        const lw_answer answer = balance_one(&craft, &ask);
        if (is_found(&answer) && answer.flight.ride_height > clear) {  // none just as she touches
            fast = speed;
        } else {
            slow = speed;
        }
    }
    lw_ask_give_speed(&ask, fast);
    const lw_answer off = balance_one(&craft, &ask);
    CHECK(is_found(&off) && off.outcome == LW_FLIES);
    return fast;
}

static double weight_exponent(const lw_craft *craft)
{
    return log(lift_off_speed(*craft, 1.4) / lift_off_speed(*craft, 0.8)) / log(1.4 / 0.8);
}

static void freeze_curve(lw_curve *curve)
{
    const lw_curve was = *curve;
    for (int i = 0; i < LW_CURVE_KNOTS; i++) curve->value[i] = was.value[LW_CURVE_KNOTS / 2];
    lw_curve_smooth(curve);
}

static void freeze_foil(lw_foil_craft *foil)
{
    foil->polar.slope_growth = foil->polar.most_growth = 0.0;
    for (int i = 0; i < LW_POLAR_LIFTS; i++) foil->polar.growth[i] = (lw_polar_pair){0.0, 0.0};
    freeze_curve(&foil->profile);
}

// With the Reynolds number frozen in sections and struts every force goes with speed squared.
TEST_FUNCTION(lift_off_speed_goes_with_the_root_of_weight)
{
    lw_craft craft = preset_craft();
    freeze_foil(&craft.main_foil), freeze_foil(&craft.rudder_foil);
    freeze_curve(&craft.main_strut.profile), freeze_curve(&craft.rudder_strut.profile);
    CHECK_NEAR(weight_exponent(&craft), 0.5, 1e-4);
}

// The Reynolds number takes 0.0076 off, so the heavier boat is off a little sooner. Frozen one at a
// time: 0.0034 from the lift slope, which grows as d ln a_0 = 0.014 d ln Re, so 1/(2 + 0.014);
// 0.0016 from the foils' drag and 0.0010 from the struts', by way of its couple on the pitch; and
// 0.0015 from the greatest lift.
TEST_FUNCTION(lift_off_speed_loses_to_the_reynolds_number_what_the_slope_and_friction_make)
{
    lw_craft craft = preset_craft();
    const double all = weight_exponent(&craft);
    CHECK_NEAR(all, 0.4924, 5e-4);
    craft.main_foil.polar.slope_growth = craft.rudder_foil.polar.slope_growth = 0.0;
    CHECK_NEAR(weight_exponent(&craft) - all,
               0.5 - 1.0 / (2.0 + preset_craft().main_foil.polar.slope_growth), 5e-4);
}

// --- pitch

// Lift of the rudder foil when one more turn is wound on and the boat has not yet answered.
static double lift_of_one_turn(const lw_craft *craft, const lw_ask *ask)
{
    lw_lanes lift[2];
    for (int more = 0; more < 2; more++) {
        lw_pose pose;
        lw_loads loads;
        for (int i = 0; i < LW_WIDTH; i++) lw_pose_put(&pose, i, ask);
        pose.rudder_incidence += more * craft->rudder_turn;
        lw_pose_all_loads(craft, &pose, &loads);
        lift[more] = loads.rudder.lift;
    }
    return lift[1][0] - lift[0][0];
}

// The pitch equation alone fixes how the foils share the load. The couples that do change with the
// attitude (drag higher or lower, the foils' own moments, a little more speed) stay within 2 % of
// the weight while the rudder goes through two turns, each of which lifts more than 15 % of it
// before the boat answers.
TEST_FUNCTION(rudder_turns_do_not_change_the_share_of_load)
{
    const lw_craft craft = preset_craft();
    lw_ask ask = usual_ask(&craft);
    const lw_answer level = balance_one(&craft, &ask);
    CHECK(level.outcome == LW_FLIES);
    lw_ask_follow(&craft, &ask, &level);
    lw_ask_hold_rudder(&ask);
    const double rudder = ask.given.rudder;
    CHECK(lift_of_one_turn(&craft, &ask) > 0.15 * craft.weight);
    double pitch_before = 1.0;
    for (int i = 0; i <= 4; i++) {
        ask.given.rudder = rudder + (0.5 * i - 1.0) * craft.rudder_turn;
        const lw_answer wound = balance_one(&craft, &ask);
        CHECK(wound.outcome == LW_FLIES);
        const double more = wound.flight.rudder_lift - level.flight.rudder_lift;
        CHECK_NEAR(more / craft.weight, 0.0, 0.02);
        CHECK(wound.flight.pitch < pitch_before);  // more turns: bow down
        pitch_before = wound.flight.pitch;
    }
}

// The bow kept level by the rudder: a weaker pin asks for more flap, so she rides lower, the wand
// is further aft, and has further to go to its forward stop.
TEST_FUNCTION(weaker_pin_rides_lower_with_the_wand_further_aft)
{
    const lw_craft craft = preset_craft();
    lw_answer stronger = {0};
    for (int pin = 0; pin < PRESET_PINS; pin++) {
        lw_ask ask = usual_ask(&craft);
        ask.setup = preset_setup(&craft, pin);
        const lw_answer answer = balance_one(&craft, &ask);
        CHECK(answer.outcome == LW_FLIES);
        if (pin > 0) {
            CHECK(answer.flight.ride_height < stronger.flight.ride_height);
            CHECK(answer.flight.wand > stronger.flight.wand);
            CHECK(answer.margins.wand_forward > stronger.margins.wand_forward);
        }
        stronger = answer;
    }
}

// --- smoothness

// Slopes over ride height, in steps of 0.1 mm so that no corner is stepped over, from the hull in
// the water to the wand off it. One corner is there by nature: a flat bottom that touches the water
// wets its whole area at once and shortens the strut.
TEST_FUNCTION(slopes_do_not_jump_from_wet_to_dry_but_where_the_hull_touches)
{
    const lw_craft craft = preset_craft();
    const lw_ask ask = usual_ask(&craft);
    const double step = 1e-4;
    lw_lanes before[LW_UNKNOWNS], here[LW_UNKNOWNS];
    double slope[LW_UNKNOWNS] = {0};
    lw_pose pose;
    for (int i = 0; i < LW_WIDTH; i++) lw_pose_put(&pose, i, &ask);
    for (int k = -2000; k < 10000; k++) {
        pose.ride_height = lw_all(step * k);
        lw_pose_residual(&craft, &pose, here);
        for (int e = 0; e < LW_UNKNOWNS; e++) {
            const double now = k > -2000 ? (here[e][0] - before[e][0]) / step : 0.0;
            const bool touches = k == 0 || k == 1;
            if (k > -1999) CHECK_NEAR(now, slope[e], touches ? 5.0 : 0.3);  // weights a metre
            slope[e] = now, before[e] = here[e];
        }
    }
}

// Central differences over the other unknowns, ten times apart in their step.
static bool derivatives_agree(const lw_craft *craft, const lw_pose *pose)
{
    for (int j = 0; j < 5; j++) {
        double slope[2][LW_UNKNOWNS];
        for (int k = 0; k < 2; k++) {
            const double d = k ? 1e-5 : 1e-6;
            lw_lanes r[2][LW_UNKNOWNS];
            for (int side = 0; side < 2; side++) {
                lw_pose moved = *pose;
                lw_lanes *const x[] = {&moved.speed, &moved.leeway, &moved.pitch, &moved.helm,
                                       &moved.effort};
                *x[j] += side ? d : -d;
                lw_pose_residual(craft, &moved, r[side]);
            }
            for (int e = 0; e < LW_UNKNOWNS; e++) {
                slope[k][e] = (r[1][e][0] - r[0][e][0]) / (2.0 * d);
            }
        }
        for (int e = 0; e < LW_UNKNOWNS; e++) {
            if (fabs(slope[0][e] - slope[1][e]) > 1e-4 * (1.0 + fabs(slope[1][e]))) {
                print_error("unknown %d, equation %d: %g or %g\n", j, e, slope[0][e], slope[1][e]);
                return false;
            }
        }
    }
    return true;
}

TEST_FUNCTION(derivatives_of_random_poses_do_not_depend_on_the_step)
{
    const lw_craft craft = preset_craft();
    random_stream stream = {5};
    for (int run = 0; run < 300; run++) {
        lw_pose pose = random_pose(&stream);
        CHECK(derivatives_agree(&craft, &pose));
    }
}

// --- batches

#define ASKS 203  // no multiple of any width

// Every kind of question: pitch or rudder given, speed given or sought, sensible or not.
static void mixed_asks(const lw_craft *craft, lw_ask asks[ASKS])
{
    random_stream stream = {6};
    for (int i = 0; i < ASKS; i++) {
        asks[i] = random_flight(craft, &stream);
        if (random_bits(&stream) & 1) lw_ask_hold_rudder(&asks[i]);
        if (random_bits(&stream) & 1) lw_ask_give_speed(&asks[i], asks[i].start.speed);
    }
}

// Bit by bit; lw_answer has no NaN, and its padding is left out.
static bool are_same(const lw_answer *a, const lw_answer *b)
{
    return a->outcome == b->outcome && memcmp(&a->flight, &b->flight, sizeof a->flight) == 0 &&
           memcmp(&a->margins, &b->margins, sizeof a->margins) == 0;
}

// That it does not depend on LW_WIDTH either is shown by test/same_bits.sh.
TEST_FUNCTION(answer_does_not_depend_on_its_neighbours_or_their_order)
{
    static lw_ask asks[ASKS], backwards[ASKS];
    static lw_answer together[ASKS], reversed[ASKS];
    const lw_craft craft = preset_craft();
    mixed_asks(&craft, asks);
    for (int i = 0; i < ASKS; i++) backwards[ASKS - 1 - i] = asks[i];
    lw_balance(&craft, asks, together, ASKS);
    lw_balance(&craft, backwards, reversed, ASKS);
    for (int i = 0; i < ASKS; i++) {
        const lw_answer alone = balance_one(&craft, &asks[i]);
        CHECK(are_same(&alone, &together[i]));
        CHECK(are_same(&alone, &reversed[ASKS - 1 - i]));
    }
}

// Where a trim looks about: each ends where it does alone, as far as the residual tells them apart;
// and some that are far from the first, in other winds.
TEST_FUNCTION(balances_that_begin_together_end_where_each_does_alone)
{
    enum { NEAR = 60 };
    const lw_craft craft = preset_craft();
    random_stream stream = {9};
    lw_ask asks[NEAR];
    lw_answer akin[NEAR];
    lw_ask base = usual_ask(&craft);
    const lw_answer flight = balance_one(&craft, &base);
    lw_ask_follow(&craft, &base, &flight);
    for (int i = 0; i < NEAR; i++) {
        asks[i] = base;
        asks[i].heel += random_between(&stream, -2.0, 2.0) * LW_DEG;
        asks[i].place += random_between(&stream, -0.05, 0.05);
        asks[i].heading += random_between(&stream, -3.0, 3.0) * LW_DEG;
        if (i % 6 == 5) asks[i].wind *= random_between(&stream, 0.9, 1.3);
    }
    lw_balance_akin(&craft, asks, akin, NEAR);
    for (int i = 0; i < NEAR; i++) {
        const lw_answer alone = balance_one(&craft, &asks[i]);
        CHECK(alone.outcome == akin[i].outcome && alone.outcome == LW_FLIES);
        CHECK(akin[i].flight.residual < LW_RESIDUAL);
        CHECK_NEAR(akin[i].flight.speed, alone.flight.speed, 1e-6);
        CHECK_NEAR(akin[i].flight.ride_height, alone.flight.ride_height, 1e-6);
        CHECK_NEAR(akin[i].flight.turns, alone.flight.turns, 1e-5);
    }
}

static bool has_nan(const lw_answer *answer)
{
    const double *flight = (const double *)&answer->flight;
    const double *margins = (const double *)&answer->margins;
    for (size_t i = 0; i < sizeof(lw_flight) / sizeof(double); i++) {
        if (!isfinite(flight[i])) return true;
    }
    for (size_t i = 0; i < LW_MARGIN_COUNT; i++) {
        if (!isfinite(margins[i])) return true;
    }
    return false;
}

// Members of an ask that are doubles; the first nine are given, the last six to start from.
static double *member(lw_ask *ask, int i)
{
    double *const members[] = {&ask->wind,          &ask->heading,         &ask->heel,
                               &ask->place,         &ask->setup.incidence, &ask->setup.wand_length,
                               &ask->setup.gearing, &ask->setup.rod,       &ask->given.pitch,
                               &ask->start.speed,   &ask->start.leeway,    &ask->start.ride_height,
                               &ask->start.rudder,  &ask->start.helm,      &ask->start.effort};
    return members[i];
}

TEST_FUNCTION(number_that_is_none_gives_no_balance_and_harms_no_neighbour)
{
    const lw_craft craft = preset_craft();
    const lw_ask sound = usual_ask(&craft);
    const lw_answer alone = balance_one(&craft, &sound);
    const double bad[] = {NAN, INFINITY, -INFINITY};
    for (int i = 0; i < 15 * 3; i++) {
        lw_ask asks[70];
        lw_answer answers[70];
        for (int k = 0; k < 70; k++) {
            asks[k] = sound;
            if (k % 2 == 0) *member(&asks[k], i / 3) = bad[i % 3];
        }
        lw_balance_akin(&craft, asks, answers, 70);  // the first is none itself
        for (int k = 0; k < 70; k++) CHECK(!has_nan(&answers[k]));
        lw_balance(&craft, asks, answers, 70);
        for (int k = 0; k < 70; k++) {
            CHECK(!has_nan(&answers[k]));
            if (k % 2 == 1) CHECK(are_same(&answers[k], &alone));
            if (k % 2 == 0 && i / 3 < 9) CHECK(answers[k].outcome == LW_NO_BALANCE);
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(nothing_is_left_over_at_a_balance),
        TEST(power_from_the_air_is_power_into_the_water),
        TEST(mirrored_pose_without_a_sail_has_the_mirrored_residual),
        TEST(upright_boat_head_to_wind_feels_no_side_force_roll_or_yaw),
        TEST(lift_off_speed_goes_with_the_root_of_weight),
        TEST(lift_off_speed_loses_to_the_reynolds_number_what_the_slope_and_friction_make),
        TEST(rudder_turns_do_not_change_the_share_of_load),
        TEST(weaker_pin_rides_lower_with_the_wand_further_aft),
        TEST(slopes_do_not_jump_from_wet_to_dry_but_where_the_hull_touches),
        TEST(derivatives_of_random_poses_do_not_depend_on_the_step),
        TEST(answer_does_not_depend_on_its_neighbours_or_their_order),
        TEST(balances_that_begin_together_end_where_each_does_alone),
        TEST(number_that_is_none_gives_no_balance_and_harms_no_neighbour),
    };
    return RUN_TESTS(tests);
}
