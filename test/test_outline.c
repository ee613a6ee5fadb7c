// test_outline.c - claims about outlines of sections: designations, coordinates, what is refused.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "foil/section.h"
#include "lullwise/base.h"
#include "lullwise/boundary_layer.h"
#include "test/profile_cases.h"

// --- designations

static lw_profile_status named(const char *text) { return lw_outline_naca(text, &outline); }

TEST_FUNCTION(designations_that_exist_are_read)
{
    const char *const good[] = {"0012",      "NACA 2412",  "naca2412", "4415",
                                "23012",     "NACA 25112", "63-412",   "NACA 64-209 a=0.8",
                                "63(1)-412", "632-415",    "66,2-215", "65-010 A=1",
                                "22112",     "63412",      "65010"};
    for (size_t i = 0; i < sizeof good / sizeof good[0]; i++) {
        CHECK(named(good[i]) == LW_PROFILE_OK);
        CHECK(solved(no_flap, 100));
    }
}

TEST_FUNCTION(designations_that_do_not_exist_are_refused)
{
    const char *const bad[] = {
        "",          "NACA",       "12",
        "001",       "2012",       "0412",
        "99999",     "21112",      "23212",
        "60-412",    "68-412",     "63-41",
        "63-4120",   "63-412 a=2", "63-412 b",
        "63-412 a=", "0000",       "0030",
        "NACA 24x2", "2412.5",     "nonsense that is far too long for a name"};
    for (size_t i = 0; i < sizeof bad / sizeof bad[0]; i++) {
        if (named(bad[i]) != LW_PROFILE_UNKNOWN) printf("%s was read\n", bad[i]);
        CHECK(named(bad[i]) == LW_PROFILE_UNKNOWN && outline.count == 0);
    }
    CHECK(lw_outline_naca(NULL, &outline) == LW_PROFILE_UNKNOWN);
    CHECK(named("63A-012") == LW_PROFILE_MODIFIED && named("64A010") == LW_PROFILE_MODIFIED);
    CHECK(named("67-012") == LW_PROFILE_MODIFIED && named("0012-34") == LW_PROFILE_MODIFIED);
    CHECK(named("64-A010") == LW_PROFILE_MODIFIED && named("16-012") == LW_PROFILE_MODIFIED);
}

TEST_FUNCTION(every_status_has_its_sentence)
{
    for (int i = 0; i < LW_PROFILE_STATUS_COUNT; i++) {
        CHECK(strlen(lw_profile_status_text((lw_profile_status)i)) >= 2);
    }
    CHECK_TEXT(lw_profile_status_text((lw_profile_status)99), "?");
}

TEST_FUNCTION(five_digits_have_the_mean_line_of_theory)
{
    // 23001: nearly no thickness
    CHECK(named("23001") == LW_PROFILE_OK);
    const lw_mean_line line = lw_mean_line_five_digit(15.957, 0.2025);
    CHECK(solved(no_flap, 160));
    const double zero =
        -load_at(0.0).lift / (load_at(0.5).lift - load_at(-0.5).lift) * sin(1.0) / 0.9;
    CHECK(fabs(zero - line.zero_lift_angle) < 0.1 * fabs(line.zero_lift_angle));
}

// --- coordinates

static double section_x[401], section_y[401];

static int section_points(int count, bool is_open)
{
    for (int i = 0; i < count; i++) {
        const double turn = 2.0 * LW_PI * i / (count - 1), x = 0.5 + 0.5 * cos(turn);
        const double a_4 = is_open ? 0.1015 : 0.1036;
        const double half =
            0.6 * (0.2969 * sqrt(x) + x * (-0.126 + x * (-0.3516 + x * (0.2843 - a_4 * x))));
        section_x[i] = x;
        section_y[i] = turn < LW_PI ? half : -half;
    }
    return count;
}

static double lift_of_points(int count)
{
    if (lw_outline_of_points(section_x, section_y, count, &outline) != LW_PROFILE_OK) return NAN;
    return solved(no_flap, LW_PANELS_USUAL) ? load_at(0.1).lift : NAN;
}

TEST_FUNCTION(order_and_size_of_the_points_do_not_matter)
{
    CHECK(named("0012") == LW_PROFILE_OK && solved(no_flap, LW_PANELS_USUAL));
    const double want = load_at(0.1).lift;
    const int n = section_points(121, false);
    CHECK_RELATIVE(lift_of_points(n), want, 1e-4);
    CHECK(!outline.was_open && !outline.was_scaled && !outline.was_reversed);

    for (int i = 0; i < n; i++) section_y[i] = -section_y[i];  // the other way round
    CHECK_RELATIVE(lift_of_points(n), want, 1e-4);

    for (int i = 0; i < n; i++) section_x[i] = 3.0 + 250.0 * section_x[i], section_y[i] *= 250.0;
    CHECK_RELATIVE(lift_of_points(n), want, 1e-4);
    CHECK(outline.was_scaled);

    // both sides from the nose
    section_points(121, false);
    double x[122], y[122];
    for (int i = 0; i <= 60; i++) {
        x[i] = section_x[60 - i], y[i] = section_y[60 - i];
        x[61 + i] = section_x[60 + i], y[61 + i] = section_y[60 + i];
    }
    memcpy(section_x, x, sizeof x);
    memcpy(section_y, y, sizeof y);
    CHECK_RELATIVE(lift_of_points(122), want, 1e-4);
    CHECK(outline.was_reversed);

    // from the nose once around
    section_points(121, false);
    for (int i = 0; i < 121; i++) {
        x[i] = section_x[(i + 60) % 120], y[i] = section_y[(i + 60) % 120];
    }
    memcpy(section_x, x, sizeof x);
    memcpy(section_y, y, sizeof y);
    CHECK_RELATIVE(lift_of_points(121), want, 1e-4);

    // the tail named at one end only: no open tail
    section_points(121, false);
    CHECK_RELATIVE(lift_of_points(120), want, 1e-4);
    CHECK(!outline.was_open && outline.given == 121);
    memmove(section_x, section_x + 1, 120 * sizeof *section_x);
    memmove(section_y, section_y + 1, 120 * sizeof *section_y);
    CHECK_RELATIVE(lift_of_points(120), want, 1e-4);
    CHECK(!outline.was_open && outline.given == 121);
    CHECK_NEAR(load_at(0.0).lift, 0.0, 1e-4);

    // an open tail
    section_points(121, true);
    CHECK_RELATIVE(lift_of_points(121), want, 2e-3);
    CHECK(outline.was_open);
}

// Of a section by its designation: x at `count` places of one side, evenly on a circle.
static int coarse_points(const char *text, int count)
{
    const lw_outline *o = &outline;
    CHECK(named(text) == LW_PROFILE_OK);
    const int middle = o->count / 2;  // the nose of the table of points
    for (int i = 0; i < 2 * count - 1; i++) {
        const int k = i < count ? i : 2 * count - 2 - i, step = middle / (count - 1);
        section_x[i] = o->x[i < count ? k * step : o->count - 1 - k * step];
        section_y[i] = o->y[i < count ? k * step : o->count - 1 - k * step];
    }
    return 2 * count - 1;
}

// 201 points of each, and of these every second, fourth and fifth.
TEST_FUNCTION(few_points_have_the_lowest_pressure_of_many)
{
    const char *const names[] = {"0006", "0012", "2412", "65-010", "63-006"};
    const struct {
        int count;
        double most;
    } of[] = {{51, 0.01}, {26, 0.025}, {21, 0.03}};
    for (int n = 0; n < 3; n++) {
        double most = 0.0;
        for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
            double want[5], off;
            CHECK(named(names[i]) == LW_PROFILE_OK && solved(no_flap, LW_PANELS_USUAL));
            for (int k = 0; k < 5; k++) want[k] = load_at(0.035 * k).least_pressure;
            const int count = coarse_points(names[i], of[n].count);
            CHECK(lw_outline_of_points(section_x, section_y, count, &outline) == LW_PROFILE_OK);
            CHECK(outline.given == count && solved(no_flap, LW_PANELS_USUAL));
            for (int k = 0; k < 5; k++) {
                off = fabs(load_at(0.035 * k).least_pressure / want[k] - 1.0);
                most = fmax(most, off);
            }
        }
        printf("  %3d points: within %.1f %%\n", 2 * of[n].count - 1, 100.0 * most);
        CHECK(most < of[n].most);
    }
}

// It need not bound every error, but bounds these to two per cent of the pressure.
TEST_FUNCTION(how_sure_the_lowest_pressure_is_is_told)
{
    static lw_section_flow about;
    const lw_medium medium = {.water_density = 1000.0};
    const lw_section_water water = {.medium = &medium, .depth = 0.5};
    const char *const names[] = {"0006", "0012", "64-209", "63-006"};
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        CHECK(named(names[i]) == LW_PROFILE_OK && solved(no_flap, LW_PANELS_USUAL));
        const double want = load_at(0.1).least_pressure;
        CHECK(lw_section_flow_of(&about, &outline, no_flap) == LW_PROFILE_OK);
        CHECK(isnan(lw_section_unsure(&about, 0.1)));
        const int count = coarse_points(names[i], 26);
        CHECK(lw_outline_of_points(section_x, section_y, count, &outline) == LW_PROFILE_OK);
        CHECK(lw_section_flow_of(&about, &outline, no_flap) == LW_PROFILE_OK);
        const double unsure = lw_section_unsure(&about, 0.1);
        const double got = lw_section_point_at(&about, water, 0.1).least_pressure;
        printf("  %-7s sure to %.1f %%, off by %.1f %%\n", names[i], 100.0 * unsure,
               100.0 * fabs(got / want - 1.0));
        CHECK(fabs(got / want - 1.0) < unsure + 0.02 && unsure < 0.15);
    }
}

TEST_FUNCTION(faulty_points_are_refused_with_their_reason)
{
    lw_outline *o = &outline;
    section_points(121, false);
    CHECK(lw_outline_of_points(section_x, section_y, 0, o) == LW_PROFILE_TOO_FEW);
    CHECK(lw_outline_of_points(section_x, section_y, 19, o) == LW_PROFILE_TOO_FEW);
    CHECK(lw_outline_of_points(section_x, section_y, 402, o) == LW_PROFILE_TOO_MANY);

    section_y[17] = NAN;
    CHECK(lw_outline_of_points(section_x, section_y, 121, o) == LW_PROFILE_NOT_A_NUMBER);
    section_points(121, false);
    section_x[3] = INFINITY;
    CHECK(lw_outline_of_points(section_x, section_y, 121, o) == LW_PROFILE_NOT_A_NUMBER);

    section_points(121, false);
    for (int i = 70; i < 90; i++) section_y[i] = 0.2;  // the lower side comes out above
    CHECK(lw_outline_of_points(section_x, section_y, 121, o) == LW_PROFILE_CROSSED);

    section_points(121, false);
    for (int i = 0; i < 121; i++) section_y[i] = 0.0;
    CHECK(lw_outline_of_points(section_x, section_y, 121, o) == LW_PROFILE_FLAT);
    for (int i = 0; i < 121; i++) section_x[i] = 0.3, section_y[i] = 0.1;
    CHECK(lw_outline_of_points(section_x, section_y, 121, o) == LW_PROFILE_FLAT);

    section_points(121, false);
    for (int i = 10; i < 119; i++) section_x[i] = section_x[10], section_y[i] = section_y[10];
    CHECK(lw_outline_of_points(section_x, section_y, 121, o) != LW_PROFILE_OK);
}

TEST_FUNCTION(faulty_flaps_and_panels_are_refused)
{
    CHECK(named("2412") == LW_PROFILE_OK);
    const double bad_hinges[] = {-0.1, 0.1, 0.96, 1.5, NAN};
    for (int i = 0; i < 5; i++) {
        const lw_profile_flap flap = {bad_hinges[i], 0.1};
        CHECK(lw_profile_of(&outline, flap, 100, &profile) == LW_PROFILE_BAD_HINGE);
    }
    CHECK(lw_profile_of(&outline, (lw_profile_flap){0.7, 0.6}, 100, &profile) ==
          LW_PROFILE_BAD_FLAP);
    CHECK(lw_profile_of(&outline, (lw_profile_flap){0.7, NAN}, 100, &profile) ==
          LW_PROFILE_BAD_FLAP);
    CHECK(lw_profile_of(&outline, no_flap, 18, &profile) == LW_PROFILE_BAD_PANELS);
    CHECK(lw_profile_of(&outline, no_flap, 101, &profile) == LW_PROFILE_BAD_PANELS);
    CHECK(lw_profile_of(&outline, no_flap, 162, &profile) == LW_PROFILE_BAD_PANELS);
    CHECK(profile.count == 0);
    CHECK(lw_profile_flow_of(&profile, &room, &flow) == LW_PROFILE_NO_SOLUTION);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(designations_that_exist_are_read),
        TEST(designations_that_do_not_exist_are_refused),
        TEST(every_status_has_its_sentence),
        TEST(five_digits_have_the_mean_line_of_theory),
        TEST(order_and_size_of_the_points_do_not_matter),
        TEST(few_points_have_the_lowest_pressure_of_many),
        TEST(how_sure_the_lowest_pressure_is_is_told),
        TEST(faulty_points_are_refused_with_their_reason),
        TEST(faulty_flaps_and_panels_are_refused),
    };
    return RUN_TESTS(tests);
}
