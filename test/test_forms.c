// test_forms.c - claims about the closed forms of sections, wings, struts, hulls and sails.
// SPDX-License-Identifier: MIT

#include "foil/friction.h"
#include "foil/section.h"
#include "foil/strut.h"
#include "foil/strut_force.h"
#include "foil/ventilation/strut_limits.h"
#include "lullwise/hull_shape.h"
#include "rig/sail.h"
#include "test/check.h"
#include "test/planform.h"
#include "test/surface.h"

TEST_FUNCTION(symmetric_mean_line_lifts_nothing_at_no_angle)
{
    const lw_mean_line flat = lw_mean_line_four_digit(0.0, 0.4);
    CHECK(flat.zero_lift_angle == 0.0 && flat.moment == 0.0 && flat.ideal_lift == 0.0);
}

static bool mean_line_is_linear_in_its_camber(const double *x)
{
    const lw_mean_line one = lw_mean_line_four_digit(x[0], x[1]);
    const lw_mean_line two = lw_mean_line_four_digit(2.0 * x[0], x[1]);
    return fabs(two.zero_lift_angle - 2.0 * one.zero_lift_angle) < 1e-14 &&
           fabs(two.moment - 2.0 * one.moment) < 1e-14;
}

// Ideal lift is 2 pi (ideal angle - zero-lift angle): two ways to the same number.
static bool ideal_lift_agrees_with_the_angles(const double *x)
{
    const lw_mean_line line = lw_mean_line_a(x[0], x[1]);
    const double lift = 2.0 * LW_PI * (line.ideal_angle - line.zero_lift_angle);
    return fabs(lift - line.ideal_lift) < 1e-9 && fabs(line.ideal_lift - x[1]) < 1e-5;
}

TEST_FUNCTION(mean_lines_keep_their_laws)
{
    CHECK_HOLDS(mean_line_is_linear_in_its_camber, 100, {0.001, 0.06}, {0.1, 0.9});
    CHECK_HOLDS(ideal_lift_agrees_with_the_angles, 100, {0.0, 1.0}, {0.1, 1.0});
}

TEST_FUNCTION(flap_of_the_whole_chord_turns_the_whole_section)
{
    CHECK_NEAR(lw_flap_of(1.0).angle_share, 1.0, 1e-15);
    CHECK_NEAR(lw_flap_of(1.0).moment, 0.0, 1e-15);
    CHECK_NEAR(lw_flap_of(0.0).angle_share, 0.0, 1e-15);
}

static bool pressure_mirrors(const double *x)
{
    const double up = lw_section_least_pressure(x[0], x[1], x[2]);
    const double down = lw_section_least_pressure(x[0], -x[1], -x[2]);
    return fabs(up - down) < 1e-12 && up < 0.0;
}

TEST_FUNCTION(section_upside_down_has_the_same_lowest_pressure)
{
    CHECK_HOLDS(pressure_mirrors, 1000, {0.06, 0.14}, {0.0, 0.4}, {-1.0, 1.0});
}

TEST_FUNCTION(cavitation_starts_where_suction_meets_the_number)
{
    const lw_medium sea = {
        .water_density = 1025.0, .vapour_pressure = 1700.0, .air_pressure = 101325.0};
    const double V = lw_cavitation_speed(&sea, 0.4, -0.8);
    CHECK_RELATIVE(lw_cavitation_number(&sea, 0.4, V), 0.8, 1e-14);
    CHECK(lw_cavitation_speed(&sea, 0.4, 0.1) == 1000.0);
}

static bool lifting_line_agrees_with_its_factors(const double *x)
{
    const double A = x[0], a_0 = x[2];
    const lw_lifting_line line = lw_planform_lifting_line((lw_planform){A, x[1], a_0});
    const double a = a_0 / (1.0 + a_0 * (1.0 + line.lift) / (LW_PI * A));
    return fabs(a - line.slope) < 1e-12 && line.drag > 0.0 && line.lift > 0.0;
}

TEST_FUNCTION(no_straight_wing_beats_the_ellipse)
{
    CHECK_HOLDS(lifting_line_agrees_with_its_factors, 200, {4.0, 16.0}, {0.0, 1.0}, {5.0, 7.0});
}

static bool interference_falls_with_the_gap(const double *x)
{
    const double near = lw_planform_interference(x[0]);
    return near < 1.0 && near > lw_planform_interference(x[0] + 0.05);
}

TEST_FUNCTION(biplane_interference_falls_from_one_to_nothing)
{
    CHECK_HOLDS(interference_falls_with_the_gap, 20, {0.02, 3.0});
    CHECK_RELATIVE(lw_planform_interference(20.0), 1.0 / (8.0 * 400.0), 2e-3);  // two doublets
}

static bool interference_fit_holds(const double *x)
{
    const double fit = lw_surface_interference(lw_all(x[0]))[0];
    return fabs(fit - lw_planform_interference(x[0])) < 0.005;
}

TEST_FUNCTION(biplane_fit_of_the_kernel_follows_the_integral)
{
    CHECK_HOLDS(interference_fit_holds, 100, {0.03, 4.0});
}

static bool friction_lines_fall(const double *x)
{
    const lw_lanes low = lw_all(x[0]), high = lw_all(x[0] + 0.01);
    return lw_friction_ittc57(high)[0] < lw_friction_ittc57(low)[0] &&
           lw_friction_hughes(high)[0] < lw_friction_hughes(low)[0] &&
           lw_friction_schoenherr(high)[0] < lw_friction_schoenherr(low)[0] &&
           lw_friction_schlichting(high)[0] < lw_friction_schlichting(low)[0] &&
           lw_friction_foil(low)[0] <= lw_friction_schlichting(low)[0];
}

TEST_FUNCTION(friction_falls_with_the_reynolds_number)
{
    CHECK_HOLDS(friction_lines_fall, 1000, {11.0, 20.0});  // Re 6e4 to 5e8
}

TEST_FUNCTION(friction_at_rest_is_finite)
{
    const lw_lanes rest = lw_all(-INFINITY);
    CHECK(isfinite(lw_friction_foil(rest)[0]) && isfinite(lw_friction_ittc57(rest)[0]));
    CHECK(isfinite(lw_friction_schoenherr(rest)[0]));
}

TEST_FUNCTION(thin_junctions_have_no_drag)
{
    CHECK(lw_strut_junction_area(0.01, 0.05) == 0.0);
    CHECK(lw_strut_wall_area(0.01, 0.05) == 0.0);
    CHECK(lw_strut_wall_area(0.01, 0.0) == 0.0);
}

// Depth / chord, cavitation number, angle.
static bool ventilated_is_a_part(const double *x)
{
    const double side = lw_ventilated_side(x[0], x[1], x[2]);
    const double wetted = lw_strut_slope(lw_all(x[0]))[0] * x[2];
    const double more = lw_ventilated_side(x[0], x[1], x[2] + 0.01);
    return side > 0.0 && side <= wetted && more > side &&
           lw_ventilated_side(x[0], x[1], -x[2]) == -side;
}

TEST_FUNCTION(ventilated_strut_keeps_a_part_of_its_force_that_grows_with_the_angle)
{
    CHECK_HOLDS(ventilated_is_a_part, 1000, {0.3, 10.0}, {0.0, 2.0}, {0.001, 0.5});
    CHECK(lw_ventilated_side(6.0, 0.1, 0.0) == 0.0);
}

static bool air_leaves_at_washout(const double *x)
{
    const lw_ventilation v = lw_ventilation_of(x[0], x[1]);
    const double side = lw_ventilated_side(x[0], x[1], v.stays);
    const double washout = lw_ventilation_washout(x[0], x[1]);
    return v.stays > 89.0 * LW_DEG ? side < washout : fabs(side - washout) < 1e-4;
}

TEST_FUNCTION(air_leaves_a_strut_at_the_force_of_washout)
{
    CHECK_HOLDS(air_leaves_at_washout, 1000, {0.5, 10.0}, {0.02, 2.0});
}

// An older boundary, 5 / Fn^2, lay above all data [breslin-skalak-1959].
static bool washout_is_below_the_older_boundary(const double *x)
{
    return lw_ventilation_washout(x[0], x[1]) < 2.5 * x[1];
}

TEST_FUNCTION(washout_lies_below_the_older_boundary)
{
    CHECK_HOLDS(washout_is_below_the_older_boundary, 1000, {0.5, 10.0}, {0.02, 2.0});
}

static bool limits_are_in_order(const double *x)
{
    const lw_ventilation slow = lw_ventilation_of(x[0], x[1]);
    const lw_ventilation fast = lw_ventilation_of(x[0], 0.8 * x[1]);
    return slow.stays_least < slow.stays && slow.stays < slow.stays_most &&
           slow.forms_least <= slow.forms && slow.forms <= slow.forms_most &&
           slow.stays <= slow.forms && fast.stays <= slow.stays;
}

TEST_FUNCTION(air_stays_at_smaller_angles_than_it_forms_and_the_smaller_the_faster)
{
    CHECK_HOLDS(limits_are_in_order, 1000, {0.5, 10.0}, {0.02, 2.0});
}

TEST_FUNCTION(between_its_two_angles_a_strut_is_as_it_was)
{
    const lw_ventilation v = lw_ventilation_of(6.0, 0.1);
    const double between = 0.5 * (v.stays + v.forms);
    CHECK(lw_ventilated_next(&v, true, between) && !lw_ventilated_next(&v, false, between));
    CHECK(lw_ventilated_next(&v, true, -between) && !lw_ventilated_next(&v, false, -between));
    CHECK(lw_ventilated_next(&v, false, -v.forms - 0.01) && lw_ventilated_next(&v, false, 0.3));
    CHECK(!lw_ventilated_next(&v, true, 0.9 * v.stays));
}

// Twice the boat at the same Froude number: four times the drag area. Twice the beam: four times.
TEST_FUNCTION(wave_drag_scales_with_size_and_beam)
{
    const lw_hull_form small = {3.3, 0.34, 0.12}, large = {6.6, 0.68, 0.24},
                       wide = {3.3, 0.68, 0.12};
    const double V = 2.5, area = lw_hull_form_wave_area(small, V);
    CHECK_RELATIVE(lw_hull_form_wave_area(large, V * sqrt(2.0)), 4.0 * area, 1e-12);
    CHECK_RELATIVE(lw_hull_form_wave_area(wide, V), 4.0 * area, 1e-12);
}

static bool wave_drag_is_sound(const double *x)
{
    const double area = lw_hull_form_wave_area((lw_hull_form){3.3, 0.34, 0.12}, x[0]);
    return isfinite(area) && area >= 0.0;
}

TEST_FUNCTION(wave_drag_is_finite_from_rest_to_any_speed)
{
    CHECK_HOLDS(wave_drag_is_sound, 500, {0.0, 20.0});
}

static bool sail_has_no_jump(const double *x)
{
    const double step = 1e-6;
    for (int kind = 0; kind <= LW_SAIL_HIGH_LIFT; kind++) {
        const lw_sail_coefficients a = lw_sail_coefficients_at((lw_sail_kind)kind, x[0]);
        const lw_sail_coefficients b = lw_sail_coefficients_at((lw_sail_kind)kind, x[0] + step);
        if (fabs(b.lift - a.lift) > 12.0 * step || fabs(b.drag - a.drag) > 4.0 * step) return false;
    }
    return true;
}

TEST_FUNCTION(sail_coefficients_are_smooth_between_their_angles)
{
    CHECK_HOLDS(sail_has_no_jump, 5000, {-0.1, 3.3});
}

// The slope on both sides of each published angle, by differences.
TEST_FUNCTION(sail_slopes_meet_at_the_published_angles)
{
    const double angles[] = {7.0, 9.0, 12.0, 28.0, 60.0, 90.0, 120.0, 150.0}, h = 1e-5;
    for (int i = 0; i < 8; i++) {
        const double x = angles[i] * LW_DEG;
        const double before = lw_sail_coefficients_at(LW_SAIL_HIGH_LIFT, x - h).lift;
        const double at = lw_sail_coefficients_at(LW_SAIL_HIGH_LIFT, x).lift;
        const double after = lw_sail_coefficients_at(LW_SAIL_HIGH_LIFT, x + h).lift;
        CHECK_NEAR((at - before) / h, (after - at) / h, 0.01);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(symmetric_mean_line_lifts_nothing_at_no_angle),
        TEST(mean_lines_keep_their_laws),
        TEST(flap_of_the_whole_chord_turns_the_whole_section),
        TEST(section_upside_down_has_the_same_lowest_pressure),
        TEST(cavitation_starts_where_suction_meets_the_number),
        TEST(no_straight_wing_beats_the_ellipse),
        TEST(biplane_interference_falls_from_one_to_nothing),
        TEST(biplane_fit_of_the_kernel_follows_the_integral),
        TEST(friction_falls_with_the_reynolds_number),
        TEST(friction_at_rest_is_finite),
        TEST(thin_junctions_have_no_drag),
        TEST(ventilated_strut_keeps_a_part_of_its_force_that_grows_with_the_angle),
        TEST(air_leaves_a_strut_at_the_force_of_washout),
        TEST(washout_lies_below_the_older_boundary),
        TEST(air_stays_at_smaller_angles_than_it_forms_and_the_smaller_the_faster),
        TEST(between_its_two_angles_a_strut_is_as_it_was),
        TEST(wave_drag_scales_with_size_and_beam),
        TEST(wave_drag_is_finite_from_rest_to_any_speed),
        TEST(sail_coefficients_are_smooth_between_their_angles),
        TEST(sail_slopes_meet_at_the_published_angles),
    };
    return RUN_TESTS(tests);
}
