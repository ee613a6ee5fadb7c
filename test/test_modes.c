// test_modes.c - claims about small motions near a balance, beside rides and published modes.
// SPDX-License-Identifier: MIT

#include "motion/linear/system.h"
#include "test/check.h"
#include "test/preset.h"

// A flight with its motion and plan, filled in place: the motion points to the craft.
typedef struct sailed {
    lw_craft craft;
    lw_motion motion;
    lw_ride_plan plan;
    double effort;
} sailed;

static void sail(sailed *s, int pin, double wind_kn, double heading_deg)
{
    s->craft = preset_craft();
    const lw_setup setup = preset_setup(&s->craft, pin);
    lw_ask ask = lw_ask_of(&s->craft, &setup, wind_kn * LW_KN, heading_deg * LW_DEG);
    ask.heel = 10.0 * LW_DEG;
    lw_answer answer;
    lw_balance(&s->craft, &ask, &answer, 1);
    CHECK(answer.outcome == LW_FLIES);
    s->motion = lw_motion_of(&s->craft);
    s->motion.parameters.step = 0.0025;
    s->plan = lw_ride_plan_of(&s->motion, &ask, &answer);
    s->effort = answer.flight.effort;
}

// The sailor holds all as it is.
static void leave_alone(sailed *s)
{
    const lw_gains none = {.speed = 1.0, .effort = s->effort};
    lw_gains_everywhere(&s->plan.pilot, &none);
    s->motion.parameters.forward_pace = 0.0;
}

// Two rides, one of them pushed off.
typedef struct pair {
    lw_ride rides[2];
} pair;

static void begin(pair *p, const sailed *s, const double push[LW_RIDE_STATES])
{
    lw_ride_plan plan = s->plan;
    for (int i = 0; i < 2; i++) {
        p->rides[i] = (lw_ride){.events = NULL};
        lw_ride_begin(&p->rides[i], &s->motion, &plan);
        for (size_t k = 0; k < LW_RIDE_STATES; k++) plan.start.at[k] += push[k];
    }
}

// How far they are apart after some more steps.
static void go_on(pair *p, const sailed *s, size_t steps, double off[LW_RIDE_STATES])
{
    lw_rides_advance(&s->motion, p->rides, 2, steps);
    const lw_ride_state still = lw_ride_now(&p->rides[0]), moved = lw_ride_now(&p->rides[1]);
    for (size_t i = 0; i < LW_RIDE_STATES; i++) {
        off[i] = moved.at[i] - still.at[i];
    }
}

#define AT LW_STATE_AT

// How much of a motion is in a state: the product with its left vector, which is blind to all
// others.
static double part_in(const lw_linear_system *linear, const lw_complex *left,
                      const double off[LW_RIDE_STATES])
{
    lw_complex sum = {0.0, 0.0};
    for (int i = 0; i < linear->count; i++) {
        sum.re += left[i].re * off[linear->state[i]];
        sum.im += left[i].im * off[linear->state[i]];
    }
    return hypot(sum.re, sum.im);
}

// Growth of one mode over a second of a ride that begins along its vector.
static double ridden_growth(const sailed *s, lw_hands hands, const lw_swing *swing)
{
    static lw_linear_system linear;
    lw_complex values[LW_EIGEN_MOST], right[LW_EIGEN_MOST], left[LW_EIGEN_MOST];
    double turned[LW_EIGEN_MOST * LW_EIGEN_MOST];
    double push[LW_RIDE_STATES] = {0.0}, first[LW_RIDE_STATES], last[LW_RIDE_STATES];
    CHECK(lw_linear_system_values(&s->motion, &s->plan, hands, &linear, values));
    const int n = linear.count;
    for (int i = 0; i < n * n; i++) turned[i] = linear.a[i % n * n + i / n];
    const double omega = isfinite(swing->period) ? 2.0 * LW_PI / swing->period : 0.0;
    const lw_complex value = {swing->growth, omega};
    CHECK(lw_eigen_vector(linear.a, n, value, right) && lw_eigen_vector(turned, n, value, left));
    for (int i = 0; i < n; i++) push[linear.state[i]] = 1e-4 * right[i].re;
    const size_t lead = 40;  // steps in which a two-step method finds its way
    const size_t steps = (size_t)(1.0 / s->motion.parameters.step);
    static pair p;
    begin(&p, s, push);
    go_on(&p, s, lead, first);
    go_on(&p, s, steps, last);
    return log(part_in(&linear, left, last) / part_in(&linear, left, first));
}

static const lw_mode *mode_of(const lw_modes *modes, lw_part part, bool swings)
{
    for (size_t i = 0; i < modes->count; i++) {
        const lw_mode *mode = &modes->mode[i];
        const bool is_it = mode->first == part || mode->second == part;
        if (is_it && (mode->swing.period < 1e9) == swings) return mode;
    }
    return NULL;
}

// Rides and eigenvalues agree within 2 %.
TEST_FUNCTION(a_boat_left_alone_falls_over_at_the_rate_of_her_mode)
{
    static sailed s;
    static lw_modes modes;
    sail(&s, 1, 14.0, 60.0);
    leave_alone(&s);
    lw_modes_of(&s.motion, &s.plan, LW_HANDS_STILL, &modes);
    CHECK(!modes.is_steady);
    const lw_swing *swing = &modes.mode[0].swing;
    CHECK(modes.mode[0].first == LW_PART_HEEL && swing->growth > 0.1);
    CHECK_RELATIVE(ridden_growth(&s, LW_HANDS_STILL, swing), swing->growth, 0.02);
}

TEST_FUNCTION(ride_height_and_pitch_die_away_at_the_rate_of_their_mode)
{
    static sailed s;
    static lw_modes modes;
    sail(&s, 1, 16.0, 120.0);
    leave_alone(&s);
    lw_modes_of(&s.motion, &s.plan, LW_HANDS_STILL, &modes);
    const lw_mode *mode = mode_of(&modes, LW_PART_PITCH, true);
    CHECK(mode && mode->swing.growth < -0.5);
    CHECK_RELATIVE(ridden_growth(&s, LW_HANDS_STILL, &mode->swing), mode->swing.growth, 0.02);
}

TEST_FUNCTION(heel_as_sailed_dies_away_at_the_rate_of_its_mode)
{
    static sailed s;
    static lw_modes modes;
    sail(&s, 1, 16.0, 120.0);
    lw_gains gains = s.plan.pilot.wish[LW_WISH_MEAN].gains;
    gains.speed = 1.0;  // does not change with her speed
    lw_gains_everywhere(&s.plan.pilot, &gains);
    s.plan.pilot.flight = 0.0;
    lw_modes_of(&s.motion, &s.plan, LW_HANDS_SAILING, &modes);
    const lw_mode *mode = mode_of(&modes, LW_PART_HEEL, true);
    CHECK(mode && mode->swing.damping < 0.7);
    CHECK_RELATIVE(ridden_growth(&s, LW_HANDS_SAILING, &mode->swing), mode->swing.growth, 0.02);
}

// Greatest offset of the ride height in the two seconds from `from` [s] over that from 3 `from`.
static double calming(const sailed *s, double from)
{
    static pair p;
    double push[LW_RIDE_STATES] = {0.0}, off[LW_RIDE_STATES], most[2] = {0.0, 0.0};
    const double per_second = 1.0 / s->motion.parameters.step;
    push[AT(pitch)] = 1e-4;
    begin(&p, s, push);
    for (int k = 0; k < 2; k++) {
        go_on(&p, s, (size_t)((k == 0 ? from : 2.0 * from - 2.0) * per_second), off);
        for (int i = 0; i < 40; i++) {
            go_on(&p, s, (size_t)(0.05 * per_second), off);
            most[k] = fmax(most[k], fabs(off[AT(height)]));
        }
    }
    return most[0] / most[1];
}

// Rides with a little less and a little more than the limit: one calms down, the other does not.
TEST_FUNCTION(a_wand_later_than_its_limit_swings_and_one_earlier_does_not)
{
    static sailed s;
    sail(&s, 1, 16.0, 120.0);
    const lw_wand_margin margin = lw_wand_margin_of(&s.motion, &s.plan, LW_HANDS_SAILING);
    CHECK(margin.lag > margin.lag_now && margin.lag < 10.0 * margin.lag_now);
    s.motion.parameters.wand_lag = 0.85 * margin.lag;
    CHECK(calming(&s, 5.0) > 1.4);
    s.motion.parameters.wand_lag = 1.15 * margin.lag;
    CHECK(calming(&s, 5.0) < 0.7);
}

TEST_FUNCTION(more_gearing_than_its_limit_swings_and_less_does_not)
{
    static sailed s;
    sail(&s, 1, 16.0, 120.0);
    const lw_wand_margin margin = lw_wand_margin_of(&s.motion, &s.plan, LW_HANDS_SAILING);
    CHECK(margin.gearing > 1.0 && margin.gearing < 10.0);
    const lw_setup setup = s.plan.setup;
    const double from = s.plan.start.wand - s.craft.linkage.neutral_angle;
    for (int i = 0; i < 2; i++) {
        const double factor = margin.gearing * (i == 0 ? 0.9 : 1.1);
        s.plan.setup.gearing = factor * setup.gearing;
        s.plan.setup.rod = setup.rod + (1.0 - factor) * setup.gearing * from;
        const lw_wand_margin again = lw_wand_margin_of(&s.motion, &s.plan, LW_HANDS_SAILING);
        CHECK((again.gearing > 1.0) == (i == 0));
        CHECK((calming(&s, 2.0) > 1.0) == (i == 0));
    }
}

// The aeroplane of test_eigen.c [etkin-reid]: its slow swing trades speed for height with hardly
// any change of incidence, its quick one turns and sinks at a nearly even speed.
TEST_FUNCTION(the_parts_of_published_modes_are_those_of_the_book)
{
    static lw_linear_system linear = {.count = 4,
                                      .state = {AT(surge), AT(heave), AT(pitch_rate), AT(pitch)}};
    const double a[16] = {-0.006868, 0.01395,   0.0,     -32.2,  //
                          -0.09055,  -0.3151,   773.98,  0.0,    //
                          0.0001187, -0.001026, -0.4285, 0.0,    //
                          0.0,       0.0,       1.0,     0.0};
    double size[LW_RIDE_STATES], share[LW_PARTS];
    lw_complex values[4];
    for (int i = 0; i < 16; i++) linear.a[i] = a[i];
    CHECK(lw_eigen_values(linear.a, 4, values));
    for (int i = 0; i < 4; i += 2) {
        CHECK(lw_linear_system_shares(&linear, values[i], size, share));
        const bool is_slow = values[i].im < 0.5;
        CHECK(is_slow ? share[LW_PART_SPEED] > 0.4 : share[LW_PART_SPEED] < 0.05);
        CHECK(is_slow ? share[LW_PART_HEIGHT] < 0.1 : share[LW_PART_HEIGHT] > 0.4);
    }
}

// Two springs that know nothing of each other, one in roll and one in ride height, in any units.
TEST_FUNCTION(parts_that_are_not_coupled_have_no_share_in_each_other)
{
    static lw_linear_system linear = {.count = 4,
                                      .state = {AT(roll_rate), AT(heel), AT(heave), AT(height)},
                                      .a = {-0.4, -4.0, 0.0, 0.0,  //
                                            1.0, 0.0, 0.0, 0.0,    //
                                            0.0, 0.0, -1.0, -9e3,  //
                                            0.0, 0.0, 1e-3, 0.0}};
    double size[LW_RIDE_STATES], share[LW_PARTS];
    lw_complex values[4];
    CHECK(lw_eigen_values(linear.a, 4, values));
    for (int i = 0; i < 4; i++) {
        CHECK(lw_linear_system_shares(&linear, values[i], size, share));
        const lw_part part = fabs(values[i].im) < 2.5 ? LW_PART_HEEL : LW_PART_HEIGHT;
        CHECK_NEAR(share[part], 1.0, 1e-8);
    }
}

static bool every_balance_has_its_modes(const double *x)
{
    static sailed s;
    static lw_modes modes;
    random_stream stream = {(uint64_t)(x[0] * 1e9)};
    s.craft = preset_craft();
    const lw_ask ask = random_flight(&s.craft, &stream);
    lw_answer answer;
    lw_balance(&s.craft, &ask, &answer, 1);
    s.motion = lw_motion_of(&s.craft);
    s.plan = lw_ride_plan_of(&s.motion, &ask, &answer);
    for (int hands = 0; hands < 2; hands++) {
        lw_modes_of(&s.motion, &s.plan, (lw_hands)hands, &modes);
        size_t states = 0;
        for (size_t i = 0; i < modes.count; i++) {
            const lw_mode *mode = &modes.mode[i];
            double sum = 0.0;
            for (int k = 0; k < LW_PARTS; k++) sum += mode->share[k];
            states += mode->swing.period < 1e9 ? 2 : 1;
            if (!(fabs(sum - 1.0) < 1e-9) || mode->first == mode->second) return false;
            if (i > 0 && mode->swing.growth > modes.mode[i - 1].swing.growth) return false;
        }
        if (states != (hands == LW_HANDS_SAILING ? 20 : 12)) return false;
    }
    const lw_wand_margin margin = lw_wand_margin_of(&s.motion, &s.plan, LW_HANDS_SAILING);
    return margin.gearing >= 1.0 && margin.least_gearing >= 0.0 && margin.lag >= margin.lag_now;
}

TEST_FUNCTION(every_balance_has_as_many_modes_as_states_and_a_margin)
{
    CHECK_HOLDS(every_balance_has_its_modes, 60, {0.0, 1.0});
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_boat_left_alone_falls_over_at_the_rate_of_her_mode),
        TEST(ride_height_and_pitch_die_away_at_the_rate_of_their_mode),
        TEST(heel_as_sailed_dies_away_at_the_rate_of_its_mode),
        TEST(a_wand_later_than_its_limit_swings_and_one_earlier_does_not),
        TEST(more_gearing_than_its_limit_swings_and_less_does_not),
        TEST(the_parts_of_published_modes_are_those_of_the_book),
        TEST(parts_that_are_not_coupled_have_no_share_in_each_other),
        TEST(every_balance_has_as_many_modes_as_states_and_a_margin),
    };
    return RUN_TESTS(tests);
}
