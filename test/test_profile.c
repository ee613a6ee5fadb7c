// test_profile.c - claims about the perfect fluid around sections, with and without flaps.
// SPDX-License-Identifier: MIT

#include <complex.h>

#include "foil/section.h"
#include "lullwise/base.h"
#include "test/profile_cases.h"

// --- exact flows

// Karman-Trefftz: the circle around `centre` through 1, mapped so that the tail has the angle
// given.
typedef struct mapped {
    double complex centre;
    double tail;  // [rad]
    double chord, x_least;
} mapped;

static double complex map_of(const mapped *m, double complex z, double complex *slope)
{
    const double k = 2.0 - m->tail / LW_PI;
    const double complex q = cpow((z - 1.0) / (z + 1.0), k);
    *slope = 4.0 * k * k * q / ((1.0 - q) * (1.0 - q) * (z * z - 1.0));
    return k * (1.0 + q) / (1.0 - q);
}

// Points once around from the tail, anticlockwise; fills the chord.
static int mapped_points(mapped *m, double *x, double *y, int count)
{
    const double radius = cabs(1.0 - m->centre), start = carg(1.0 - m->centre);
    double x_most = -1e9;
    m->x_least = 1e9;
    for (int i = 0; i < count; i++) {
        const double turn = start + 2.0 * LW_PI * i / (count - 1);
        const bool at_tail = i == 0 || i == count - 1;
        double complex slope, w = 2.0 - m->tail / LW_PI;
        if (!at_tail) w = map_of(m, m->centre + radius * cexp(I * turn), &slope);
        x[i] = creal(w);
        y[i] = cimag(w);
    }
    for (int i = 0; i < 20000; i++) {  // the chord itself, finely
        double complex slope;
        const double turn = start + 2.0 * LW_PI * (i + 0.5) / 20000;
        const double at = creal(map_of(m, m->centre + radius * cexp(I * turn), &slope));
        m->x_least = fmin(m->x_least, at);
        x_most = fmax(x_most, at);
    }
    m->chord = x_most - m->x_least;
    return count;
}

static lw_profile_load mapped_load(const mapped *m, double alpha)
{
    const double radius = cabs(1.0 - m->centre), start = carg(1.0 - m->centre);
    const double beta = -start;
    lw_profile_load load = {.lift = 8.0 * LW_PI * radius / m->chord * sin(alpha + beta),
                            .least_pressure = 1.0};
    for (int i = 0; i < 20000; i++) {
        double complex slope;
        const double turn = start + 2.0 * LW_PI * (i + 0.5) / 20000;
        map_of(m, m->centre + radius * cexp(I * turn), &slope);
        const double speed = 2.0 * (sin(turn - alpha) + sin(alpha + beta)) / cabs(slope);
        load.least_pressure = fmin(load.least_pressure, 1.0 - speed * speed);
    }
    return load;
}

static bool flow_is_exact_for(mapped m, double alpha, double lift_off, double pressure_off)
{
    double x[301], y[301];
    const int count = mapped_points(&m, x, y, 301);
    if (lw_outline_of_points(x, y, count, &outline) != LW_PROFILE_OK) return false;
    if (!solved(no_flap, 140)) return false;
    const lw_profile_load want = mapped_load(&m, alpha), got = load_at(alpha);
    const bool holds =
        fabs(got.lift - want.lift) <= lift_off * fmax(fabs(want.lift), 0.2) &&
        fabs(got.least_pressure - want.least_pressure) <= pressure_off * fabs(want.least_pressure);
    if (!holds) {
        printf("lift %.5f of %.5f, lowest %.4f of %.4f\n", got.lift, want.lift, got.least_pressure,
               want.least_pressure);
    }
    return holds;
}

static bool mapped_flow_is_exact(const double *x)
{
    const mapped m = {.centre = x[0] + I * x[1], .tail = x[2] * LW_DEG};
    return flow_is_exact_for(m, x[3] * LW_DEG, 0.0025, 0.013);
}

TEST_FUNCTION(mapped_sections_have_their_exact_lift_and_lowest_pressure)
{
    CHECK_HOLDS(mapped_flow_is_exact, 40, {-0.15, -0.06}, {0.0, 0.12}, {0.0, 20.0}, {-4.0, 8.0});
}

// The catalogue's numbers for the same maps, so that the map above is checked too.
TEST_FUNCTION(mapped_sections_are_those_of_the_catalogue)
{
    double x[301], y[301];
    mapped m = {.centre = -0.1 + 0.1 * I, .tail = 10.0 * LW_DEG};
    mapped_points(&m, x, y, 301);
    CHECK_NEAR(mapped_load(&m, 5.0 * LW_DEG).lift, 1.251372, 1e-5);
    CHECK_NEAR(mapped_load(&m, 5.0 * LW_DEG).least_pressure, -1.66996, 1e-4);
    m = (mapped){.centre = -0.1, .tail = 0.0};
    mapped_points(&m, x, y, 301);
    CHECK_NEAR(m.chord, 4.03333, 1e-4);
    CHECK_NEAR(mapped_load(&m, 5.0 * LW_DEG).lift, 0.597399, 1e-5);
    CHECK_NEAR(mapped_load(&m, 5.0 * LW_DEG).least_pressure, -1.97954, 1e-4);
}

static void ellipse(double thickness)
{
    double x[301], y[301];
    for (int i = 0; i < 301; i++) {
        x[i] = 0.5 + 0.5 * cos(2.0 * LW_PI * i / 300);
        y[i] = 0.5 * thickness * sin(2.0 * LW_PI * i / 300);
    }
    CHECK(lw_outline_of_points(x, y, 301, &outline) == LW_PROFILE_OK);
    CHECK(solved(no_flap, LW_PANELS_USUAL));
}

TEST_FUNCTION(circle_has_four_times_the_head_of_suction_at_its_sides)
{
    ellipse(1.0);
    CHECK_NEAR(load_at(0.0).lift, 0.0, 1e-9);
    CHECK_NEAR(load_at(0.0).least_pressure, -3.0, 0.01);
    for (int i = 0; i < profile.count; i++) {
        const double sine = 2.0 * profile.y[i];
        CHECK_NEAR(lw_profile_speed(&flow, i, 0.0), copysign(2.0 * fabs(sine), sine), 0.01);
    }
    // with circulation: stagnation stays at the tail, so Gamma / (4 pi R V) = sin(alpha)
    const lw_profile_load turned = load_at(30.0 * LW_DEG);
    CHECK_RELATIVE(turned.lift, 2.0 * LW_PI, 0.005);
    CHECK_RELATIVE(turned.least_pressure, -8.0, 0.005);
}

TEST_FUNCTION(ellipse_speeds_the_flow_up_by_its_thickness)
{
    ellipse(0.12);
    CHECK_NEAR(load_at(0.0).least_pressure, 1.0 - 1.12 * 1.12, 1e-3);
    CHECK_RELATIVE(load_at(5.0 * LW_DEG).lift, 2.0 * LW_PI * 1.12 * sin(5.0 * LW_DEG), 0.005);
}

// --- laws

static bool flow_mirrors(const double *x)
{
    const double up = load_at(x[0]).lift, down = load_at(-x[0]).lift;
    return fabs(up + down) < 1e-6 && fabs(load_at(x[0]).moment + load_at(-x[0]).moment) < 1e-6;
}

TEST_FUNCTION(symmetrical_section_upside_down_lifts_down)
{
    CHECK(lw_outline_naca("0010", &outline) == LW_PROFILE_OK && solved(no_flap, 120));
    CHECK_HOLDS(flow_mirrors, 50, {-0.3, 0.3});
}

TEST_FUNCTION(perfect_fluid_has_no_drag)
{
    const char *const names[] = {"0012", "2412", "23012", "63-412", "65-209"};
    for (int i = 0; i < 5; i++) {
        CHECK(lw_outline_naca(names[i], &outline) == LW_PROFILE_OK);
        CHECK(solved((lw_profile_flap){0.7, 5.0 * LW_DEG}, LW_PANELS_USUAL));
        const double alpha = 4.0 * LW_DEG, along = load_at(alpha).lift;
        // drag is the lift seen from a flow a quarter turn away, with the same speeds
        double drag = 0.0;
        for (int j = 0; j < profile.count - 1; j++) {
            const double dx = profile.x[j + 1] - profile.x[j], dy = profile.y[j + 1] - profile.y[j];
            const double one = lw_profile_speed(&flow, j, alpha);
            const double two = lw_profile_speed(&flow, j + 1, alpha);
            const double c_p = 1.0 - (one * one + one * two + two * two) / 3.0;
            drag += c_p * (dy * cos(alpha) - dx * sin(alpha));
        }
        CHECK_NEAR(drag, 0.0, 0.006 * along);  // 0.4 % at the worst, by the nose's suction
    }
}

TEST_FUNCTION(twice_the_panels_leave_less_than_half_the_error)
{
    CHECK(lw_outline_naca("2412", &outline) == LW_PROFILE_OK);
    double lift[3];
    for (int i = 0; i < 3; i++) {
        CHECK(solved(no_flap, 40 << i));
        lift[i] = load_at(0.1).lift;
    }
    const double first = lift[1] - lift[0], second = lift[2] - lift[1];
    CHECK(fabs(second) < 0.45 * fabs(first));
}

// --- flaps

// Lift and moment per flap angle of a section without thickness: those of thin ones, brought to no
// thickness by a parabola through 1, 2 and 4 %, and to endless panels through 80 and 160.
typedef struct flap_slopes {
    double share, moment;
} flap_slopes;

static flap_slopes slopes_of(double thickness, double hinge, int panels)
{
    double x[401], y[401];
    for (int i = 0; i <= 400; i++) {  // an ellipse's nose on a wedge: thin, sharp behind
        const double at = 0.5 * (1.0 + cos(LW_PI * i / 200.0)), side = i < 200 ? 1.0 : -1.0;
        x[i] = at;
        y[i] = side * thickness * 1.2990381 * sqrt(at) * (1.0 - at);
    }
    CHECK(lw_outline_of_points(x, y, 401, &outline) == LW_PROFILE_OK);
    const double step = 1.0 * LW_DEG;
    double lift[2], moment[2];
    for (int i = 0; i < 2; i++) {
        CHECK(solved((lw_profile_flap){hinge, i == 0 ? step : -step}, panels));
        lift[i] = load_at(0.0).lift;
        moment[i] = load_at(0.0).moment;
    }
    CHECK(solved(no_flap, panels));
    const double slope = (load_at(step).lift - load_at(-step).lift) / (2.0 * step);
    return (flap_slopes){(lift[0] - lift[1]) / (2.0 * step) / slope,
                         (moment[0] - moment[1]) / (2.0 * step)};
}

static flap_slopes of_endless_panels(double thickness, double hinge)
{
    const flap_slopes few = slopes_of(thickness, hinge, 80);
    const flap_slopes many = slopes_of(thickness, hinge, 160);
    return (flap_slopes){many.share + (many.share - few.share) / 3.0,
                         many.moment + (many.moment - few.moment) / 3.0};
}

TEST_FUNCTION(flap_of_a_thin_section_is_that_of_theory)
{
    for (double part = 0.2; part < 0.35; part += 0.1) {
        const lw_flap theory = lw_flap_of(part);
        const flap_slopes a = of_endless_panels(0.01, 1.0 - part);
        const flap_slopes b = of_endless_panels(0.02, 1.0 - part);
        const flap_slopes c = of_endless_panels(0.04, 1.0 - part);
        const double share = (8.0 * a.share - 6.0 * b.share + c.share) / 3.0;
        const double moment = (8.0 * a.moment - 6.0 * b.moment + c.moment) / 3.0;
        printf("flap %.1f: share %.5f %.5f %.5f to %.5f, theory %.5f; moment %.5f, theory %.5f\n",
               part, c.share, b.share, a.share, share, theory.angle_share, moment, theory.moment);
        CHECK_NEAR(share, theory.angle_share, 1e-3);
        CHECK_NEAR(moment, theory.moment, 3e-3);
    }
}

TEST_FUNCTION(flap_at_no_angle_is_no_flap)
{
    CHECK(lw_outline_naca("2412", &outline) == LW_PROFILE_OK && solved(no_flap, 100));
    const double lift = load_at(0.1).lift;
    CHECK(solved((lw_profile_flap){0.7, 0.0}, 100));
    CHECK_RELATIVE(load_at(0.1).lift, lift, 1e-3);  // the nodes lie elsewhere
}

TEST_FUNCTION(flap_keeps_the_thickness_behind_it)
{
    static lw_profile straight;
    const double angle = 10.0 * LW_DEG;
    CHECK(lw_outline_naca("0012", &outline) == LW_PROFILE_OK);
    CHECK(lw_profile_of(&outline, (lw_profile_flap){0.7, angle}, 160, &profile) == 0);
    CHECK(lw_profile_of(&outline, (lw_profile_flap){0.7, 0.0}, 160, &straight) == 0);
    CHECK_NEAR(profile.x[0], 0.7 + 0.3 * cos(angle), 1e-3);
    CHECK_NEAR(profile.y[0], -0.3 * sin(angle), 1e-3);
    for (int i = 0; i < 80; i++) {
        const int other = 160 - i;
        const double across =
            hypot(profile.x[i] - profile.x[other], profile.y[i] - profile.y[other]);
        CHECK_NEAR(across, straight.y[other] - straight.y[i], 1e-9);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(mapped_sections_have_their_exact_lift_and_lowest_pressure),
        TEST(mapped_sections_are_those_of_the_catalogue),
        TEST(circle_has_four_times_the_head_of_suction_at_its_sides),
        TEST(ellipse_speeds_the_flow_up_by_its_thickness),
        TEST(symmetrical_section_upside_down_lifts_down),
        TEST(perfect_fluid_has_no_drag),
        TEST(twice_the_panels_leave_less_than_half_the_error),
        TEST(flap_of_a_thin_section_is_that_of_theory),
        TEST(flap_at_no_angle_is_no_flap),
        TEST(flap_keeps_the_thickness_behind_it),
    };
    return RUN_TESTS(tests);
}
