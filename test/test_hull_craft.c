// test_hull_craft.c - claims about the prepared hull: what the force kernel reads, beside the cut
// hull it was made from.
// SPDX-License-Identifier: MIT

#include <stdio.h>
#include <string.h>

#include "hull/hull_craft.h"
#include "hull/hull_force.h"
#include "lullwise/elementary.h"
#include "lullwise/prepared.h"
#include "solve/elementary.h"
#include "test/check.h"
#include "test/preset.h"

#define DENSITY   1000.0
#define VISCOSITY 1.1e-6

static lw_hull_craft craft;
static lw_hull_shape shape;
static double strut_x;

static lw_hull preset_hull(void)
{
    const lw_boat boat = preset_boat();
    strut_x = boat.main_strut.x;
    return boat.hull;
}

static double volume_of(const lw_hull *hull)
{
    return hull->length * hull->beam * hull->draft * hull->block;
}

static lw_hull prepare(lw_hull hull)
{
    lw_hull_prepare(&craft, &hull, strut_x, VISCOSITY);
    lw_hull_shape_of_craft(&shape, &hull, strut_x);
    return hull;
}

static lw_hull_load load_at(double water, double slope, double speed)
{
    const lw_lanes log_speed = lw_lanes_log(lw_all(speed));
    return lw_hull_force(
        &craft, DENSITY,
        (lw_hull_in_water){.water = lw_all(water),
                           .slope = lw_all(slope),
                           .speed = lw_all(speed),
                           .log_speed = log_speed,
                           .at_speed = lw_interval_of(LW_SPEED_FIRST, LW_SPEED_STEP, log_speed)});
}

// --- the prepared functions beside the direct computation

enum { VOLUME, MIDDLE, HEIGHT, ACROSS, FRICTION, WAVES, FUNCTIONS };

typedef struct errors {
    double most[FUNCTIONS];
    double water[FUNCTIONS], pitch_deg[FUNCTIONS], speed[FUNCTIONS];
} errors;

typedef struct attitude {
    double water, slope, speed;
} attitude;

static void keep_most(errors *off, int n, double error, attitude at)
{
    if (fabs(error) <= off->most[n]) return;
    off->most[n] = fabs(error), off->water[n] = at.water;
    off->pitch_deg[n] = lw_atan(at.slope) / LW_DEG, off->speed[n] = at.speed;
}

static void compare(errors *off, const lw_hull *hull, attitude at)
{
    static lw_hull_cut cut;
    const lw_hull_attitude direct = {at.water, lw_atan(at.slope)};
    double wave = 0.0, friction = 0.0;
    memset(&cut, 0, sizeof cut);
    if (lw_hull_cut_at(&cut, &shape, direct) == LW_HULL_OK) {
        wave = lw_hull_wave_area(&cut, at.speed);
        friction = lw_hull_friction_area(&cut, at.speed, VISCOSITY, hull->form_factor);
    }
    const lw_hull_floating *f = &cut.floating;
    const double rho_g = DENSITY * LW_GRAVITY, whole = volume_of(hull);
    const double q = 0.5 * DENSITY * at.speed * at.speed, weight = rho_g * whole;
    const lw_hull_load load = load_at(at.water, at.slope, at.speed);
    keep_most(off, VOLUME, 100.0 * (load.immersed[0] - f->volume) / whole, at);
    const double ahead = load.moment_ahead[0] / rho_g - f->volume * f->centre_x;
    keep_most(off, MIDDLE, 1000.0 * ahead / whole, at);
    const double above = load.moment_above[0] / rho_g - f->volume * f->centre_z;
    keep_most(off, HEIGHT, 1000.0 * above / whole, at);
    keep_most(off, ACROSS, 1000.0 * (load.roll_moment[0] / rho_g - f->across) / whole, at);
    keep_most(off, FRICTION, 100.0 * (load.friction[0] - q * friction) / weight, at);
    keep_most(off, WAVES, 100.0 * (load.waves[0] - q * wave) / weight, at);
}

// Height of the water that touches the hull, by halving.
static double touch_at(double slope)
{
    double low = -0.6, high = 0.2;
    for (int k = 0; k < 30; k++) {
        const double middle = 0.5 * (low + high);
        *(load_at(middle, slope, 1.0).immersed[0] > 0.0 ? &high : &low) = middle;
    }
    return low;
}

static errors largest_off(const lw_hull *hull, int runs)
{
    static const double most = 8.0 * LW_DEG;
    errors off = {.most = {0.0}};
    random_stream stream = {11};
    for (int i = 0; i < runs; i++) {
        const double slope = lw_tan(random_between(&stream, -most, most));
        const double speed = lw_exp(random_between(&stream, lw_log(1.2), lw_log(9.0)));
        const double sunk = random_between(&stream, -0.01, 1.3 * hull->draft);
        compare(&off, hull, (attitude){touch_at(slope) + sunk, slope, speed});
    }
    return off;
}

TEST_FUNCTION(prepared_functions_are_off_by_what_is_told_and_not_by_more)
{
    const lw_hull hull = prepare(preset_hull());
    const lw_prepared_list list = lw_prepared_hull();
    const errors off = largest_off(&hull, 1500);
    CHECK(list.count == FUNCTIONS);
    for (int n = 0; n < FUNCTIONS; n++) {
        const lw_prepared *row = &list.rows[n];
        printf("  %-26s %6.3f, told %5.2f %-24s at %+.3f m, %+5.1f deg, %.1f m/s\n", row->function,
               off.most[n], row->error, row->unit, off.water[n], off.pitch_deg[n], off.speed[n]);
    }
    for (int n = 0; n < FUNCTIONS; n++) {
        CHECK(off.most[n] <= list.rows[n].error);
        CHECK(off.most[n] > 0.5 * list.rows[n].error);
    }
}

static bool any_hull_is_near(const double *x)
{
    lw_hull hull = preset_hull();
    hull.length = x[0], hull.beam = x[1], hull.draft = x[2];
    hull.transom_beam = x[3] * x[1], hull.waterplane = x[4], hull.block = x[5] * x[4];
    prepare(hull);
    const errors off = largest_off(&hull, 20);
    static const double most[FUNCTIONS] = {2.0, 15.0, 4.0, 25.0, 1.5, 1.2};
    for (int n = 0; n < FUNCTIONS; n++) {
        if (off.most[n] > most[n]) printf("  function %d off by %.2f\n", n, off.most[n]);
        if (off.most[n] > most[n]) return false;
    }
    return true;
}

TEST_FUNCTION(any_usual_hull_is_prepared_within_a_few_parts_in_a_hundred)
{
    CHECK_HOLDS(any_hull_is_near, 12, {3.0, 3.6}, {0.28, 0.6}, {0.1, 0.2}, {0.15, 0.75},
                {0.65, 0.85}, {0.72, 0.9});
}

// --- laws

static bool forces_come_from_one_potential(const double *x)
{
    const double step = 1e-6;
    const double V_s =
        (load_at(x[0], x[1] + step, 2.0).immersed[0] - load_at(x[0], x[1] - step, 2.0).immersed[0]);
    const double M_w = (load_at(x[0] + step, x[1], 2.0).moment_ahead[0] -
                        load_at(x[0] - step, x[1], 2.0).moment_ahead[0]) /
                       (DENSITY * LW_GRAVITY);
    return fabs(V_s + M_w) < 2.0 * step * 1e-5;
}

TEST_FUNCTION(buoyancy_and_its_moment_come_from_one_potential)
{
    prepare(preset_hull());
    CHECK_HOLDS(forces_come_from_one_potential, 200, {-0.1, 0.25}, {-0.15, 0.15});
}

// The middle's height by the potential: volume x height = w V - s M - int V dw.
static bool height_follows_from_the_potential(const double *x)
{
    double sum = 0.0;
    const int steps = 400;
    const double low = -0.4, run = (x[0] - low) / steps;
    for (int i = 0; i < steps; i++)
        sum += run * load_at(low + run * (i + 0.5), x[1], 2.0).immersed[0];
    const lw_hull_load load = load_at(x[0], x[1], 2.0);
    const double rho_g = DENSITY * LW_GRAVITY;
    const double want = x[0] * load.immersed[0] - x[1] * load.moment_ahead[0] / rho_g - sum;
    const lw_hull hull = preset_hull();
    return fabs(load.moment_above[0] / rho_g - want) < 0.002 * volume_of(&hull);
}

TEST_FUNCTION(height_of_the_buoyancy_follows_from_the_same_potential)
{
    prepare(preset_hull());
    CHECK_HOLDS(height_follows_from_the_potential, 50, {0.0, 0.2}, {-0.14, 0.14});
}

TEST_FUNCTION(hull_floats_at_the_draft_that_was_measured)
{
    const lw_hull hull = prepare(preset_hull());
    CHECK_RELATIVE(load_at(hull.draft, 0.0, 1.0).immersed[0], volume_of(&hull), 0.005);
}

TEST_FUNCTION(hull_clear_of_the_water_feels_nothing)
{
    prepare(preset_hull());
    for (double slope = -0.15; slope < 0.16; slope += 0.01) {
        const lw_hull_load load = load_at(-0.002 - craft.reach * fabs(slope), slope, 6.0);
        CHECK(load.buoyancy[0] == 0.0 && load.drag[0] == 0.0 && load.immersed[0] == 0.0);
        CHECK(load.moment_ahead[0] == 0.0 && load.roll_moment[0] == 0.0);
    }
}

// A millimetre of height changes no load by more than a fifth of a hundredth of the weight and the
// hull's own stiffness, 0.83 m2 of waterplane: 8.2 N.
TEST_FUNCTION(hull_leaves_the_water_without_a_jump)
{
    prepare(preset_hull());
    for (double slope = -0.12; slope < 0.13; slope += 0.02) {
        lw_hull_load before = load_at(-0.5, slope, 6.0);
        for (double water = -0.3; water < 0.1; water += 0.0005) {
            const lw_hull_load now = load_at(water, slope, 6.0);
            CHECK(fabs(now.buoyancy[0] - before.buoyancy[0]) < 5.0);
            CHECK(fabs(now.drag[0] - before.drag[0]) < 2.0);
            CHECK(now.immersed[0] >= before.immersed[0]);
            before = now;
        }
    }
}

TEST_FUNCTION(lane_in_the_air_does_not_feel_its_neighbour_in_the_water)
{
    prepare(preset_hull());
    const lw_lanes log_speed = lw_lanes_log(lw_all(5.0));
    lw_hull_in_water in = {.water = lw_all(-0.1),
                           .slope = lw_all(0.01),
                           .speed = lw_all(5.0),
                           .log_speed = log_speed,
                           .at_speed = lw_interval_of(LW_SPEED_FIRST, LW_SPEED_STEP, log_speed)};
    in.water[LW_WIDTH - 1] = 0.1;
    const lw_hull_load both = lw_hull_force(&craft, DENSITY, in), wet = load_at(0.1, 0.01, 5.0);
    CHECK(both.drag[LW_WIDTH - 1] == wet.drag[0]);
    CHECK(both.moment_above[LW_WIDTH - 1] == wet.moment_above[0]);
    if (LW_WIDTH > 1) CHECK(both.drag[0] == 0.0 && both.immersed[0] == 0.0);
}

static bool every_load_is_finite(const double *x)
{
    lw_hull hull = preset_hull();
    hull.length = x[0], hull.beam = x[1], hull.draft = x[2];
    hull.transom_beam = x[3], hull.waterplane = x[4], hull.block = x[5];
    prepare(hull);
    random_stream stream = {5};
    for (int i = 0; i < 50; i++) {
        const double water = random_between(&stream, -1.0, 2.0);
        const lw_hull_load l =
            load_at(water, random_between(&stream, -1.0, 1.0), random_between(&stream, 0.01, 40.0));
        const double sum = l.buoyancy[0] + l.moment_ahead[0] + l.moment_above[0] + l.drag[0];
        if (!isfinite(sum + l.roll_moment[0]) || l.drag[0] < 0.0) return false;
    }
    return true;
}

TEST_FUNCTION(every_hull_that_a_boat_may_have_gives_finite_loads)
{
    CHECK_HOLDS(every_load_is_finite, 25, {2.5, 4.5}, {0.15, 1.2}, {0.05, 0.4}, {0.0, 1.0},
                {0.5, 0.95}, {0.3, 0.8});
}

// x^3 - 2 x + 1 on seven knots.
TEST_FUNCTION(spline_is_exact_for_a_cubic)
{
    double row[9] = {0};
    for (int i = 0; i < 7; i++) row[i + 1] = i * i * i - 2.0 * i + 1.0;
    lw_bspline_fit(row, 7, 1);
    for (double x = 0.0; x < 6.01; x += 0.13) {
        const lw_bspline_interval knot = lw_bspline_interval_of(7, lw_all(x));
        double value = 0.0;
        for (int k = 0; k < 4; k++) value += knot.value[k][0] * row[knot.first[0] + k];
        const double at = fmin(x, 6.0);
        CHECK_NEAR(value, at * at * at - 2.0 * at + 1.0, 1e-11);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(prepared_functions_are_off_by_what_is_told_and_not_by_more),
        TEST(any_usual_hull_is_prepared_within_a_few_parts_in_a_hundred),
        TEST(buoyancy_and_its_moment_come_from_one_potential),
        TEST(height_of_the_buoyancy_follows_from_the_same_potential),
        TEST(hull_floats_at_the_draft_that_was_measured),
        TEST(hull_clear_of_the_water_feels_nothing),
        TEST(hull_leaves_the_water_without_a_jump),
        TEST(lane_in_the_air_does_not_feel_its_neighbour_in_the_water),
        TEST(every_hull_that_a_boat_may_have_gives_finite_loads),
        TEST(spline_is_exact_for_a_cubic),
    };
    return RUN_TESTS(tests);
}
