// test_layer.c - claims about boundary layers of foil sections.
// SPDX-License-Identifier: MIT

#include "foil/section/lay.h"
#include "foil/section/system.h"
#include "lullwise/base.h"
#include "lullwise/boundary_layer.h"
#include "lullwise/elementary.h"
#include "solve/four.h"
#include "test/check.h"

static lw_profile_room room;
static lw_outline outline;
static lw_profile profile;
static lw_layer layer;

static void prepare(const char *name, double hinge, double angle, int panels)
{
    const lw_profile_flap flap = {hinge, angle * LW_DEG};
    CHECK(lw_outline_naca(name, &outline) == LW_PROFILE_OK);
    CHECK(lw_profile_of(&outline, flap, panels, &profile) == LW_PROFILE_OK);
    CHECK(lw_layer_of(&profile, &room, &layer) == LW_PROFILE_OK);
}

static lw_layer_load load_at(double alpha, double reynolds, double trip)
{
    lw_layer_conditions at = lw_layer_free(reynolds, alpha * LW_DEG);
    at.trip[0] = at.trip[1] = trip;
    return lw_layer_load_of(&layer, &at);
}

// --- the exponentials and logarithms of the closures, against the machine's own

TEST_FUNCTION(four_exponentials_and_logarithms_have_their_twelve_digits)
{
    random_stream stream = {5};
    for (int run = 0; run < 20000; run++) {
        double x[4], off_exp = 0.0, off_log = 0.0;
        for (int i = 0; i < 4; i++) x[i] = random_between(&stream, -700.0, 700.0);
        if (run % 2) x[run / 2 % 4] *= 1e-4;  // about 1 the logarithm is small
        const lw_four exps = lw_four_exp((lw_four){x[0], x[1], x[2], x[3]});
        const lw_four logs = lw_four_log((lw_four){exp(x[0]), exp(x[1]), exp(x[2]), exp(x[3])});
        for (int i = 0; i < 4; i++) {
            const double log_x = log(exp(x[i]));
            off_exp = fmax(off_exp, fabs(exps[i] / exp(x[i]) - 1.0));
            off_log = fmax(off_log, fabs(logs[i] - log_x) / fmax(1.0, fabs(log_x)));
        }
        CHECK(off_exp < 3e-13 && off_log < 3e-13);
    }
}

// --- plates: the speed at the edge is 1, whatever is pushed aside

static lw_station along_plate(lw_layer_kind kind, lw_layer_place from, int steps, double reynolds)
{
    const double log_reynolds = log(reynolds), ratio = pow(1e3, 1.0 / steps);
    lw_station a = {.x = 1e-3, .at = from}, b;
    lw_closure_of(kind, log_reynolds, &a.at, &a.closure);
    for (int i = 0; i < steps; i++, a = b) {
        b = a;
        b.x = a.x * ratio;
        lw_lay_station(&(lw_laid){.log_reynolds = log_reynolds, .kind = kind, .a = &a, .b = &b},
                       4.0);
        CHECK(b.at.log_speed == 0.0);
    }
    return a;
}

TEST_FUNCTION(laminar_plate_is_that_of_blasius)
{
    const double R = 1e6;
    const lw_layer_place from = {.log_theta = log(0.66 * sqrt(1e-3 / R)), .shape = 2.58};
    const lw_station end = along_plate(LW_LAMINAR, from, 60, R);
    CHECK_RELATIVE(exp(end.at.log_theta), 0.6641 / sqrt(R), 0.01);  // the fit's plate has H = 2.59
    CHECK_RELATIVE(end.at.shape, 2.591, 0.01);
}

// Drag of one side is 2 theta; Schoenherr's line has 0.00293 at Re 1e7.
TEST_FUNCTION(turbulent_plate_has_the_friction_of_a_plate)
{
    const double R = 1e7;
    const lw_layer_place from = {.log_theta = log(1.2e-5), .shape = 1.58, .third = log(0.04)};
    const lw_station end = along_plate(LW_TURBULENT, from, 80, R);
    CHECK_RELATIVE(2.0 * exp(end.at.log_theta), 0.00293, 0.05);
    CHECK(end.at.shape > 1.25 && end.at.shape < 1.4);
}

static double growth_of(double shape, double R)
{
    lw_closure c;
    const lw_layer_place at = {.log_theta = log(1e-3), .shape = shape};
    lw_closure_of(LW_LAMINAR, log(R / 1e-3), &at, &c);
    return c.growth.at;
}

TEST_FUNCTION(waves_grow_past_the_critical_number_only)
{
    CHECK(growth_of(2.59, 100.0) == 0.0);
    CHECK(growth_of(2.59, 500.0) > 0.0);
    // an adverse gradient brings it forward
    CHECK(growth_of(3.5, 300.0) > growth_of(2.59, 300.0));
}

// --- what mass does to the outer flow

// Mass 0.01 x^2 on either side of a thin section is a source 0.04 x along its chord, and by thin
// theory u = 0.04 / (2 pi) (x ln(x / (1 - x)) - 1).
TEST_FUNCTION(mass_speeds_the_flow_as_sources_on_the_chord)
{
    prepare("0003", 0.0, 0.0, 140);
    const int n = layer.nodes;
    double mass[LW_FLOW_NODES];
    for (int i = 0; i < n; i++) {
        const double x = profile.x[i];
        mass[i] = (i < n / 2 ? -0.01 : 0.01) * x * x;
    }
    for (int i = n; i < layer.all; i++) mass[i] = 0.02;
    for (int i = n / 2 + 20; i < n - 20; i++) {
        const double x = profile.x[i];
        double got = 0.0;
        for (int j = 0; j < layer.all; j++) got += layer.response[i * LW_FLOW_ROW + j] * mass[j];
        const double want = 0.04 / (2.0 * LW_PI) * (x * log(x / (1.0 - x)) - 1.0);
        CHECK_NEAR(got, want, 4e-4);
    }
}

// --- sections

TEST_FUNCTION(section_upside_down_has_the_same_drag)
{
    prepare("0012", 0.0, 0.0, 120);
    const lw_layer_load up = load_at(3.0, 3e6, 0.05);
    const lw_layer_load down = load_at(-3.0, 3e6, 0.05);
    CHECK(up.outcome == LW_LAYER_SETTLED && down.outcome == LW_LAYER_SETTLED);
    CHECK_NEAR(up.lift, -down.lift, 2e-3);
    CHECK_RELATIVE(up.drag, down.drag, 2e-3);
    CHECK_NEAR(up.transition[1], down.transition[0], 2e-3);
}

TEST_FUNCTION(answer_does_not_hang_on_where_it_started)
{
    prepare("2412", 0.0, 0.0, 120);
    const lw_layer_load cold = load_at(5.0, 3e6, 0.05);
    load_at(9.0, 3e6, 0.05);
    load_at(1.0, 3e6, 0.05);
    const lw_layer_load warm = load_at(5.0, 3e6, 0.05);
    CHECK(warm.lift == cold.lift && warm.drag == cold.drag);
    CHECK(cold.outcome == LW_LAYER_SETTLED && cold.left < 1e-8);
}

// From its last root or from a start of its own: the same root, bubbles and all.
// NACA 0009, flap 5 degrees down, Re 2e5, 11 degrees: the bubble at the nose holds, or has burst.
TEST_FUNCTION(where_two_roots_hold_the_other_is_found_from_beside)
{
    prepare("0009", 0.7, 5.0, 140);
    lw_layer_conditions at = lw_layer_free(2e5, 11.0 * LW_DEG);
    const lw_layer_load taken = lw_layer_load_of(&layer, &at);
    const lw_layer_load other = lw_layer_load_other(&layer, &at, &taken);
    printf("  lift %.4f, drag %.5f, or %.4f, %.5f\n", taken.lift, taken.drag, other.lift,
           other.drag);
    CHECK(taken.outcome == LW_LAYER_SETTLED && other.outcome == LW_LAYER_SETTLED);
    CHECK(taken.left < 1e-8 && other.left < 1e-8 && fabs(other.lift - taken.lift) > 0.05);
    // and where the flow is attached there is one
    at.alpha = 2.0 * LW_DEG;
    const lw_layer_load only = lw_layer_load_of(&layer, &at);
    CHECK(lw_layer_load_other(&layer, &at, &only).outcome == LW_LAYER_NO_ANSWER);
}

TEST_FUNCTION(roots_found_on_the_way_are_those_found_alone)
{
    prepare("63-412", 0.0, 0.0, 140);
    for (int k = -3; k <= 5; k++) {
        const lw_layer_conditions at = lw_layer_free(3e5, k * LW_DEG);
        const lw_layer_load next = lw_layer_load_next(&layer, &at);
        const lw_layer_state state = layer.state;
        const lw_layer_load alone = lw_layer_load_of(&layer, &at);
        CHECK(next.outcome == LW_LAYER_SETTLED && alone.outcome == LW_LAYER_SETTLED);
        CHECK_NEAR(next.lift, alone.lift, 1e-6);
        CHECK_RELATIVE(next.drag, alone.drag, 1e-6);
        layer.state = state;
    }
}

// What is left after one step from near a root is of the square of how near it was.
TEST_FUNCTION(slopes_are_those_of_the_equations)
{
    static lw_system system;
    prepare("2412", 0.7, 5.0, 100);
    const lw_layer_conditions at = lw_layer_free(5e5, 2.0 * LW_DEG);
    CHECK(lw_layer_load_of(&layer, &at).outcome == LW_LAYER_SETTLED);
    const lw_layer_state root = layer.state;
    lw_system_begin(&system, &layer, &at);
    for (int node = 3; node < layer.all; node += 7) {
        layer.state = root;
        layer.state.mass[node] *= 1.0 + 1e-6;
        layer.state.log_theta[node] += 1e-6;
        CHECK(lw_system_flow(&system));
        lw_system_assemble(&system);
        const double before = system.left;
        CHECK(before > 1e-8 && lw_system_solve(&system));
        for (int i = 0; i < layer.all; i++) {
            layer.state.mass[i] += system.step.mass[i];
            layer.state.speed[i] += system.step.speed[i];
            layer.state.log_theta[i] += system.step.theta[i];
            layer.state.third[i] += system.step.third[i];
        }
        CHECK(lw_system_flow(&system));
        lw_system_assemble(&system);
        CHECK(system.left < 1e-8 + 1e-2 * before);
    }
}

TEST_FUNCTION(friction_takes_lift_and_gives_drag)
{
    prepare("2412", 0.0, 0.0, 120);
    const lw_profile_load perfect = lw_profile_load_of(&profile, &layer.flow, 4.0 * LW_DEG);
    const lw_layer_load load = load_at(4.0, 1e6, 0.05);
    CHECK(load.outcome == LW_LAYER_SETTLED);
    CHECK(load.lift < perfect.lift && load.lift > 0.85 * perfect.lift);
    CHECK(load.drag > 0.005 && load.drag < 0.02);
    CHECK(load.least_pressure > perfect.least_pressure);
}

TEST_FUNCTION(more_speed_means_less_drag_and_a_trip_more)
{
    prepare("0010", 0.0, 0.0, 120);
    double before = 1.0;
    for (double R = 1e6; R < 1.1e7; R *= 2.0) {
        const lw_layer_load tripped = load_at(2.0, R, 0.02), natural = load_at(2.0, R, 1.0);
        CHECK(tripped.outcome == LW_LAYER_SETTLED && natural.drag < tripped.drag);
        CHECK(tripped.drag < before);
        before = tripped.drag;
    }
}

TEST_FUNCTION(trip_is_where_it_was_put)
{
    prepare("0012", 0.0, 0.0, 120);
    lw_layer_conditions at = lw_layer_free(3e6, 0.0);
    at.trip[0] = 0.3;
    at.trip[1] = 0.1;
    const lw_layer_load load = lw_layer_load_of(&layer, &at);
    CHECK(load.outcome == LW_LAYER_SETTLED);
    CHECK_NEAR(load.transition[0], 0.3, 1e-3);
    CHECK_NEAR(load.transition[1], 0.1, 1e-3);
    CHECK(load.lift < 0.0);  // the thicker layer is above
}

TEST_FUNCTION(rough_water_brings_transition_forward)
{
    prepare("0012", 0.0, 0.0, 120);
    lw_layer_conditions at = lw_layer_free(1e6, 2.0 * LW_DEG);
    const double quiet = lw_layer_load_of(&layer, &at).transition[1];
    at.wave_growth = 3.0;
    CHECK(lw_layer_load_of(&layer, &at).transition[1] < quiet - 0.05);
}

TEST_FUNCTION(flap_down_lifts_and_its_tail_separates_first)
{
    prepare("0010", 0.7, 10.0, 120);
    const lw_layer_load down = load_at(0.0, 1e6, 0.05);
    CHECK(down.outcome == LW_LAYER_SETTLED && down.lift > 0.5 && down.moment < -0.05);
    prepare("0010", 0.7, 15.0, 120);
    const lw_layer_load more = load_at(2.0, 5e5, 0.05);
    CHECK(more.outcome == LW_LAYER_SETTLED);
    CHECK(more.separation[1] < 1.0 && more.separation[1] > 0.7);
}

TEST_FUNCTION(thick_nose_stalls_by_its_tail_later_than_a_thin_one)
{
    prepare("0012", 0.0, 0.0, 120);
    const lw_layer_conditions from = lw_layer_free(3e6, 6.0 * LW_DEG);
    const lw_layer_stall thick = lw_layer_stall_of(&layer, &from);
    prepare("0006", 0.0, 0.0, 120);
    const lw_layer_conditions low = lw_layer_free(3e6, 2.0 * LW_DEG);
    const lw_layer_stall thin = lw_layer_stall_of(&layer, &low);
    CHECK(thin.cause == LW_STALL_NOSE && thick.cause >= LW_STALL_TAIL);
    CHECK(thick.lift > thin.lift + 0.3 && thick.alpha > thin.alpha);
}

// One of the angles on the way has no root, another two: the curve goes on past both.
TEST_FUNCTION(greatest_lift_hangs_on_no_angle_that_the_search_begins_at)
{
    const struct {
        const char *name;
        double flap, reynolds;
    } of[] = {{"0006", 5.0, 3e6}, {"66-209", 5.0, 1e6}, {"23012", 0.0, 3e5}};
    for (int i = 0; i < 3; i++) {
        prepare(of[i].name, of[i].flap > 0.0 ? 0.7 : 0.0, of[i].flap, 100);
        lw_layer_stall top[2];
        for (int k = 0; k < 2; k++) {
            const lw_layer_conditions from = lw_layer_free(of[i].reynolds, 3.3 * k * LW_DEG);
            top[k] = lw_layer_stall_of(&layer, &from);
        }
        CHECK(top[0].cause >= LW_STALL_TAIL && top[1].cause == top[0].cause);
        CHECK_RELATIVE(top[1].lift, top[0].lift, 0.01);
        CHECK_NEAR(top[1].alpha, top[0].alpha, 0.3 * LW_DEG);
    }
}

TEST_FUNCTION(conditions_outside_their_range_have_no_loads)
{
    prepare("0012", 0.0, 0.0, 60);
    const lw_layer_conditions bad[] = {
        {1e3, 0.0, 9.0, {1.0, 1.0}}, {NAN, 0.0, 9.0, {1.0, 1.0}}, {1e6, NAN, 9.0, {1.0, 1.0}},
        {1e6, 1.0, 9.0, {1.0, 1.0}}, {1e6, 0.0, 0.0, {1.0, 1.0}}, {1e6, 0.0, 9.0, {-0.1, 1.0}},
        {1e6, 0.0, 9.0, {1.0, NAN}}, {1e9, 0.0, 9.0, {1.0, 1.0}},
    };
    for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
        const lw_layer_load load = lw_layer_load_of(&layer, &bad[i]);
        CHECK(load.outcome == LW_LAYER_OUTSIDE && load.lift == 0.0 && load.drag == 0.0);
    }
}

static bool loads_are_numbers(const double *x)
{
    const lw_layer_load load = load_at(x[0], pow(10.0, x[1]), x[2] < 0.5 ? 0.05 : 1.0);
    return load.outcome != LW_LAYER_OUTSIDE && fabs(load.lift) < 5.0 && load.drag >= 0.0 &&
           load.drag < 1.0 && fabs(load.moment) < 2.0 && load.least_pressure < 1.0;
}

TEST_FUNCTION(loads_are_numbers_whatever_is_asked)
{
    prepare("2410", 0.7, 8.0, 60);
    CHECK_HOLDS(loads_are_numbers, 25, {-12.0, 25.0}, {5.0, 7.0}, {0.0, 1.0});
}

#define SECTIONS 400

// Any of four digits, not tabulated ones alone, prepared and loaded at any angle it may meet.
static lw_layer_load any_section(random_stream *stream)
{
    const double camber = random_between(stream, 0.0, 0.08);
    const double place = random_between(stream, 0.2, 0.7);
    const double thickness = random_between(stream, 0.04, 0.24);
    const lw_layer_conditions at = {pow(10.0, random_between(stream, 5.0, 7.0)),
                                    random_between(stream, -6.0, 16.0) * LW_DEG,
                                    random_between(stream, 2.0, 10.0),
                                    {1.0, random_bits(stream) % 4 ? 1.0 : 0.05}};
    CHECK(lw_outline_four_digit(camber, place, thickness, &outline) == LW_PROFILE_OK);
    CHECK(lw_profile_of(&outline, (lw_profile_flap){0}, 60, &profile) == LW_PROFILE_OK);
    CHECK(lw_layer_of(&profile, &room, &layer) == LW_PROFILE_OK);
    return lw_layer_load_of(&layer, &at);
}

static bool has_numbers(const lw_layer_load *load)
{
    const double *x = &load->lift;
    bool all = true;
    for (size_t i = 0; i < offsetof(lw_layer_load, steps) / sizeof(double); i++)
        all &= isfinite(x[i]) != 0;
    return all;
}

// The root of the equations, or none is said to be found.
TEST_FUNCTION(any_four_digit_section_has_numbers_or_says_that_none_was_found)
{
    random_stream stream = {19};
    const int sections = SECTIONS * soak_times();
    int without = 0;
    for (int run = 0; run < sections; run++) {
        const lw_layer_load load = any_section(&stream);
        CHECK(load.outcome != LW_LAYER_OUTSIDE && has_numbers(&load));
        const bool is_root = load.outcome == LW_LAYER_SETTLED;
        if (is_root) CHECK(load.left <= 1e-8 && load.drag > 0.0);
        without += !is_root;
    }
    print_message("of %d sections %d have no answer\n", sections, without);
    CHECK(without < sections / 50);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(four_exponentials_and_logarithms_have_their_twelve_digits),
        TEST(laminar_plate_is_that_of_blasius),
        TEST(turbulent_plate_has_the_friction_of_a_plate),
        TEST(waves_grow_past_the_critical_number_only),
        TEST(mass_speeds_the_flow_as_sources_on_the_chord),
        TEST(section_upside_down_has_the_same_drag),
        TEST(answer_does_not_hang_on_where_it_started),
        TEST(where_two_roots_hold_the_other_is_found_from_beside),
        TEST(roots_found_on_the_way_are_those_found_alone),
        TEST(slopes_are_those_of_the_equations),
        TEST(friction_takes_lift_and_gives_drag),
        TEST(more_speed_means_less_drag_and_a_trip_more),
        TEST(trip_is_where_it_was_put),
        TEST(rough_water_brings_transition_forward),
        TEST(flap_down_lifts_and_its_tail_separates_first),
        TEST(thick_nose_stalls_by_its_tail_later_than_a_thin_one),
        TEST(greatest_lift_hangs_on_no_angle_that_the_search_begins_at),
        TEST(conditions_outside_their_range_have_no_loads),
        TEST(loads_are_numbers_whatever_is_asked),
        TEST(any_four_digit_section_has_numbers_or_says_that_none_was_found),
    };
    return RUN_TESTS(tests);
}
