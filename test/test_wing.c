// test_wing.c - claims about wings of any planform far from the surface, and about what is refused.
// SPDX-License-Identifier: MIT

#include "lullwise/elementary.h"
#include "test/planform.h"
#include "test/wing_cases.h"

static lw_wing_lattice other;
static lw_wing_load second;

TEST_FUNCTION(elliptic_wing_has_the_lift_and_drag_of_theory)
{
    for (double A = 4.0; A <= 10.0; A += 2.0) {
        const lw_wing wing = elliptic_wing(A, line.strips);
        const lw_wing_load got = load_of(&wing, line, deep, (lw_wing_flow){.alpha = 0.1});
        const double ratio = lattice.area * A;  // of the table's area to the ellipse's
        CHECK_RELATIVE(got.lift * ratio, 0.1 * 2.0 * LW_PI / (1.0 + 2.0 / A), 1e-4);
        CHECK_NEAR(got.efficiency, 1.0, 1e-12);
    }
}

// A_2 = mu p / (2 (1 + 2 mu)), mu = 2/A, and C_l = -pi A/4 A_2, in Glauert's series.
TEST_FUNCTION(elliptic_wing_damps_roll_as_theory_has_it)
{
    const double A = 10.0;
    const lw_wing wing = elliptic_wing(A, line.strips);
    CHECK(lw_wing_lay(&lattice, &wing, line, deep) == LW_WING_OK);
    const double ratio = lattice.area * A;
    CHECK_RELATIVE(lw_wing_slopes_of(&lattice).damping * ratio, -LW_PI / 4.0 * A / (A + 4.0), 1e-3);
}

TEST_FUNCTION(far_behind_an_elliptic_wing_the_downwash_is_twice_that_at_it)
{
    const double A = 10.0;
    const lw_wing wing = elliptic_wing(A, line.strips);
    load_of(&wing, line, deep, (lw_wing_flow){.alpha = 0.1});
    const double want = -2.0 * load.lift / (LW_PI * 1.0 / lattice.area);
    for (double y = -0.45; y < 0.46; y += 0.09) {
        CHECK_RELATIVE(lw_wing_wash(&lattice, &load, (lw_wing_point){-1e3, y, 0.0}).z, want, 1e-3);
    }
    CHECK_NEAR(lw_wing_wash(&lattice, &load, (lw_wing_point){1e3, 0.0, 0.0}).z, 0.0, 1e-6);
}

TEST_FUNCTION(line_agrees_with_the_series_of_the_closed_form)
{
    for (double taper = 0.2; taper < 1.05; taper += 0.2) {
        const lw_wing wing = straight_wing(8.0, taper, 0.0, 5.9);
        const lw_wing_load got = load_of(&wing, line, deep, (lw_wing_flow){.alpha = 1.0});
        const lw_lifting_line want = lw_planform_lifting_line((lw_planform){8.0, taper, 5.9});
        CHECK_RELATIVE(got.lift, want.slope, 1e-3);
        CHECK_NEAR(1.0 / got.efficiency - 1.0, want.drag, 5e-4);
    }
}

TEST_FUNCTION(slender_strip_of_a_long_wing_has_the_slope_of_its_section)
{
    for (double a_0 = 4.0; a_0 < 7.0; a_0 += 0.5) {
        const lw_wing wing = straight_wing(1e5, 1.0, 0.0, a_0);
        load_of(&wing, coarse, deep, (lw_wing_flow){.alpha = 0.1});
        CHECK_RELATIVE(load.section_lift[8], 0.1 * a_0, 1e-4);
        CHECK_NEAR(load.pitch / load.lift, 0.0, 1e-4);  // the lift acts at the quarter chord
    }
}

TEST_FUNCTION(fewer_panels_change_little)
{
    const lw_wing wing = foil();
    const lw_wing_place place = {0.15, 15.0 * LW_DEG};
    const lw_wing_load few =
        load_of(&wing, usual, place, (lw_wing_flow){.alpha = 0.05, .flap = 0.05});
    const lw_wing_load many = load_of(&wing, (lw_wing_mesh){LW_WING_LATTICE, LW_WING_COSINE, 64, 4},
                                      place, (lw_wing_flow){.alpha = 0.05, .flap = 0.05});
    CHECK_RELATIVE(few.lift, many.lift, 2e-3);
    CHECK_RELATIVE(few.drag, many.drag, 5e-3);
}

// --- laws of symmetry and of sums

static bool heel_mirrors(const double *x)
{
    const lw_wing wing = foil();
    const lw_wing_flow flow = {.alpha = x[2], .flap = x[3]};
    if (lw_wing_lay(&lattice, &wing, coarse, (lw_wing_place){x[0], x[1]}) != LW_WING_OK)
        return false;
    if (lw_wing_lay(&other, &wing, coarse, (lw_wing_place){x[0], -x[1]}) != LW_WING_OK)
        return false;
    lw_wing_load_at(&lattice, flow, &load);
    lw_wing_load_at(&other, flow, &second);
    bool holds = fabs(load.lift - second.lift) < 1e-9 && fabs(load.roll + second.roll) < 1e-9 &&
                 fabs(load.drag - second.drag) < 1e-9 && fabs(load.pitch - second.pitch) < 1e-9 &&
                 fabs(lattice.depth_port - other.depth_starboard) < 1e-12;
    for (int k = 0; k < coarse.strips; k++) {
        const double there = second.section_lift[coarse.strips - 1 - k];
        holds = holds && fabs(load.section_lift[k] - there) < 1e-8;
    }
    const lw_wing_point port = lw_wing_wash(&lattice, &load, (lw_wing_point){-1.2, 0.21, 0.1});
    const lw_wing_point starboard =
        lw_wing_wash(&other, &second, (lw_wing_point){-1.2, -0.21, 0.1});
    return holds && fabs(port.z - starboard.z) < 1e-9 && fabs(port.y + starboard.y) < 1e-9;
}

TEST_FUNCTION(port_and_starboard_mirror_when_heeled_the_other_way)
{
    CHECK_HOLDS(heel_mirrors, 100, {0.02, 1.0}, {-0.5, 0.5}, {-0.05, 0.1}, {-0.1, 0.2});
}

static bool heel_far_below_is_not_felt(const double *x)
{
    const lw_wing wing = foil();
    if (lw_wing_lay(&lattice, &wing, coarse, (lw_wing_place){LW_WING_DEEP, x[0]}) != LW_WING_OK)
        return false;
    if (lw_wing_lay(&other, &wing, coarse, deep) != LW_WING_OK) return false;
    lw_wing_load_at(&lattice, (lw_wing_flow){.alpha = 0.05}, &load);
    lw_wing_load_at(&other, (lw_wing_flow){.alpha = 0.05}, &second);
    return fabs(load.lift - second.lift) < 1e-12 && fabs(load.roll) < 1e-12 &&
           fabs(load.drag - second.drag) < 1e-12;
}

TEST_FUNCTION(without_a_surface_heel_changes_nothing)
{
    CHECK_HOLDS(heel_far_below_is_not_felt, 20, {-1.0, 1.0});
}

static bool loads_add(const double *x)
{
    const lw_wing wing = foil();
    const lw_wing_place place = {x[0], x[1]};
    if (lw_wing_lay(&lattice, &wing, coarse, place) != LW_WING_OK) return false;
    lw_wing_load_at(&lattice, (lw_wing_flow){0}, &load);
    const double none = load.lift;
    lw_wing_load_at(&lattice, (lw_wing_flow){.alpha = x[2], .flap = x[3], .roll = x[4]}, &load);
    const lw_wing_slopes slopes = lw_wing_slopes_of(&lattice);
    if (lattice.wet_from == lattice.wet_to) return load.lift == 0.0 && slopes.lift == 0.0;
    lw_wing_load_at(&lattice, (lw_wing_flow){.roll = x[4]}, &second);
    const double sum = slopes.lift * x[2] + slopes.flap * x[3] + second.lift;
    return fabs(load.lift - sum) < 1e-10 && slopes.damping < 0.0 && slopes.flap > 0.0 &&
           fabs(none + slopes.lift * slopes.zero_lift) < 1e-10 && load.drag > -1e-12;
}

TEST_FUNCTION(lift_is_the_sum_of_what_angle_flap_and_roll_make)
{
    CHECK_HOLDS(loads_add, 100, {-0.2, 1.0}, {-0.6, 0.6}, {-0.1, 0.1}, {-0.2, 0.2}, {-0.1, 0.1});
}

TEST_FUNCTION(flaps_of_two_parts_of_the_span_add_to_that_of_both)
{
    lw_wing wing = foil();
    double lift[3], pitch[3];
    const double ends[3][2] = {{0.05, 0.21}, {0.21, 0.45}, {0.05, 0.45}};
    for (int i = 0; i < 3; i++) {
        wing.flap.inner = ends[i][0], wing.flap.outer = ends[i][1];
        load_of(&wing, usual, (lw_wing_place){0.2, 0.3}, (lw_wing_flow){0});
        lift[i] = -load.lift, pitch[i] = -load.pitch;
        lw_wing_load_at(&lattice, (lw_wing_flow){.flap = 0.1}, &load);
        lift[i] += load.lift, pitch[i] += load.pitch;
    }
    CHECK_NEAR(lift[0] + lift[1], lift[2], 1e-12);
    CHECK_NEAR(pitch[0] + pitch[1], pitch[2], 1e-12);
    CHECK(lift[0] > 0.0 && lift[1] > 0.0);
}

TEST_FUNCTION(flap_over_the_whole_span_is_worth_its_share_of_the_angle)
{
    lw_wing wing = foil();
    wing.flap.inner = 0.0, wing.flap.outer = 0.5;
    CHECK(lw_wing_lay(&lattice, &wing, usual, (lw_wing_place){0.3, 0.2}) == LW_WING_OK);
    const lw_wing_slopes slopes = lw_wing_slopes_of(&lattice);
    CHECK_RELATIVE(slopes.flap, wing.flap.angle_share * slopes.lift, 1e-12);
}

TEST_FUNCTION(moment_of_the_sections_is_theirs_weighted_by_chord_squared)
{
    lw_wing wing = straight_wing(6.0, 1.0, 0.0, 6.0);
    wing.station[0].moment = wing.station[1].moment = -0.05;
    load_of(&wing, usual, deep, (lw_wing_flow){0});
    CHECK_NEAR(load.pitch, -0.05, 1e-12);
    CHECK_NEAR(load.lift, 0.0, 1e-15);
}

TEST_FUNCTION(dihedral_turns_part_of_the_lift_sideways_on_each_half)
{
    lw_wing wing = straight_wing(6.0, 1.0, 0.0, 6.0);
    wing.station[1].z = 3.0 * lw_tan(20.0 * LW_DEG);
    load_of(&wing, usual, deep, (lw_wing_flow){.alpha = 0.1});
    const double lift = load.lift;
    CHECK_NEAR(load.side, 0.0, 1e-12);
    CHECK_NEAR(load.roll, 0.0, 1e-12);
    wing.station[1].z = -wing.station[1].z;
    load_of(&wing, usual, deep, (lw_wing_flow){.alpha = 0.1});
    CHECK_RELATIVE(load.lift, lift, 1e-12);
}

// --- what is refused

static lw_wing_status status_of(lw_wing wing) { return lw_wing_lay(&lattice, &wing, usual, deep); }

TEST_FUNCTION(wrong_wings_are_refused_and_nothing_is_laid)
{
    lw_wing wing = foil();
    CHECK(status_of(wing) == LW_WING_OK);
    const double area = lattice.area;

    wing = foil(), wing.count = 1;
    CHECK(status_of(wing) == LW_WING_COUNT);
    wing = foil(), wing.count = LW_WING_STATIONS + 1;
    CHECK(status_of(wing) == LW_WING_COUNT);
    wing = foil(), wing.station[1].chord = NAN;
    CHECK(status_of(wing) == LW_WING_NOT_A_NUMBER);
    wing = foil(), wing.station[2].twist = INFINITY;
    CHECK(status_of(wing) == LW_WING_NOT_A_NUMBER);
    wing = foil(), wing.flap.outer = NAN;
    CHECK(status_of(wing) == LW_WING_NOT_A_NUMBER);
    wing = foil(), wing.station[1].y = 0.6;
    CHECK(status_of(wing) == LW_WING_ORDER);
    wing = foil(), wing.station[0].y = 0.1;
    CHECK(status_of(wing) == LW_WING_ORDER);
    wing = foil(), wing.station[1].chord = 0.0;
    CHECK(status_of(wing) == LW_WING_CHORD);
    wing = foil(), wing.station[2].chord = -0.01;
    CHECK(status_of(wing) == LW_WING_CHORD);
    wing = foil(), wing.station[1].slope = 0.0;
    CHECK(status_of(wing) == LW_WING_SLOPE);
    wing = foil(), wing.flap.outer = 0.7;
    CHECK(status_of(wing) == LW_WING_FLAP);
    wing = foil(), wing.flap.inner = 0.5;
    CHECK(status_of(wing) == LW_WING_FLAP);
    CHECK(lattice.area == area);
}

TEST_FUNCTION(wrong_meshes_and_places_are_refused)
{
    const lw_wing wing = foil();
    const lw_wing_mesh meshes[] = {{LW_WING_LATTICE, LW_WING_COSINE, 1, 1},
                                   {LW_WING_LATTICE, LW_WING_COSINE, 65, 1},
                                   {LW_WING_LATTICE, LW_WING_COSINE, 64, 8},
                                   {LW_WING_LINE, LW_WING_COSINE, 32, 2}};
    for (int i = 0; i < 4; i++)
        CHECK(lw_wing_lay(&lattice, &wing, meshes[i], deep) == LW_WING_MESH);
    CHECK(lw_wing_lay(&lattice, &wing, usual, (lw_wing_place){NAN, 0.0}) == LW_WING_NOT_A_NUMBER);
    CHECK(lw_wing_lay(&lattice, &wing, usual, (lw_wing_place){0.3, NAN}) == LW_WING_NOT_A_NUMBER);
    CHECK(lw_wing_lay(&lattice, &wing, usual, (lw_wing_place){0.3, 2.0}) == LW_WING_HEEL);
    for (int i = 0; i < LW_WING_STATUS_COUNT; i++) CHECK(lw_wing_status_text(i)[0] != '\0');
}

static bool nothing_is_nan(const double *x)
{
    const lw_wing wing = foil();
    if (lw_wing_lay(&lattice, &wing, coarse, (lw_wing_place){x[0], x[1]}) != LW_WING_OK)
        return false;
    lw_wing_load_at(&lattice, (lw_wing_flow){.alpha = x[2], .flap = x[3]}, &load);
    const lw_wing_point wash = lw_wing_wash(&lattice, &load, (lw_wing_point){x[4], x[5], x[6]});
    return fabs(load.lift + load.drag + load.pitch + load.roll + load.efficiency + load.centre) <
               1e6 &&
           fabs(wash.x + wash.y + wash.z) < 1e6;
}

TEST_FUNCTION(every_place_has_a_finite_answer)
{
    CHECK_HOLDS(nothing_is_nan, 1000, {-0.7, 2.0}, {-1.5, 1.5}, {-0.2, 0.2}, {-0.3, 0.3},
                {-3.0, 1.0}, {-1.0, 1.0}, {-0.5, 0.5});
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(elliptic_wing_has_the_lift_and_drag_of_theory),
        TEST(elliptic_wing_damps_roll_as_theory_has_it),
        TEST(far_behind_an_elliptic_wing_the_downwash_is_twice_that_at_it),
        TEST(line_agrees_with_the_series_of_the_closed_form),
        TEST(slender_strip_of_a_long_wing_has_the_slope_of_its_section),
        TEST(fewer_panels_change_little),
        TEST(port_and_starboard_mirror_when_heeled_the_other_way),
        TEST(without_a_surface_heel_changes_nothing),
        TEST(lift_is_the_sum_of_what_angle_flap_and_roll_make),
        TEST(flaps_of_two_parts_of_the_span_add_to_that_of_both),
        TEST(flap_over_the_whole_span_is_worth_its_share_of_the_angle),
        TEST(moment_of_the_sections_is_theirs_weighted_by_chord_squared),
        TEST(dihedral_turns_part_of_the_lift_sideways_on_each_half),
        TEST(wrong_wings_are_refused_and_nothing_is_laid),
        TEST(wrong_meshes_and_places_are_refused),
        TEST(every_place_has_a_finite_answer),
    };
    return RUN_TESTS(tests);
}
