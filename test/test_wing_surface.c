// test_wing_surface.c - claims about wings under the surface, in it, and partly in the air.
// SPDX-License-Identifier: MIT

#include "test/wing_cases.h"

static lw_wing_lattice other;
static lw_wing_load second;

static bool lift_falls_towards_the_surface(const double *x)
{
    const lw_wing wing = straight_wing(x[1], x[2], 0.0, 2.0 * LW_PI);
    if (lw_wing_lay(&lattice, &wing, coarse, (lw_wing_place){x[0], 0.0}) != LW_WING_OK)
        return false;
    if (lw_wing_lay(&other, &wing, coarse, (lw_wing_place){x[0] + 0.1, 0.0}) != LW_WING_OK)
        return false;
    lw_wing_load_at(&lattice, (lw_wing_flow){.alpha = 0.1}, &load);
    lw_wing_load_at(&other, (lw_wing_flow){.alpha = 0.1}, &second);
    return load.lift < second.lift && load.efficiency < second.efficiency && load.lift > 0.0;
}

TEST_FUNCTION(nearer_the_surface_a_wing_lifts_less_and_drags_more_for_it)
{
    CHECK_HOLDS(lift_falls_towards_the_surface, 50, {0.05, 10.0}, {4.0, 14.0}, {0.2, 1.0});
}

// At the surface the image lies on the wing and doubles every downwash.
TEST_FUNCTION(wing_in_the_surface_has_half_of_its_lift)
{
    const lw_wing wing = straight_wing(8.0, 0.5, 0.0, 2.0 * LW_PI);
    const double whole = load_of(&wing, usual, deep, (lw_wing_flow){.alpha = 0.1}).lift;
    const double half =
        load_of(&wing, usual, (lw_wing_place){1e-6, 0.0}, (lw_wing_flow){.alpha = 0.1}).lift;
    CHECK_RELATIVE(half, 0.5 * whole, 1e-3);
}

// Munk: the drag that the downwash at the wing makes is the one found in the wake far behind.
TEST_FUNCTION(drag_at_the_wing_is_the_drag_in_its_wake)
{
    const lw_wing wing = straight_wing(8.0, 0.5, 0.0, 6.0);
    const lw_wing_mesh mesh = {LW_WING_LATTICE, LW_WING_COSINE, 64, 1};
    const lw_wing_place places[] = {deep, {1.0, 0.0}, {1.5, 0.3}, {1.5, -0.5}, {0.5, 0.3}};
    for (int i = 0; i < 5; i++) {
        load_of(&wing, mesh, places[i], (lw_wing_flow){.alpha = 0.1, .roll = 0.02});
        double drag = 0.0;
        for (int k = 0; k < mesh.strips; k++) {
            const lw_wing_strip *strip = &lattice.strip[k];
            const lw_wing_point at = {strip->middle.x, strip->y, 0.0};
            const double down = -lw_wing_wash(&lattice, &load, at).z;
            drag += 2.0 * load.circulation[k] * down * strip->width / lattice.area;
        }
        CHECK_RELATIVE(load.drag, drag, 5e-3);
    }
}

TEST_FUNCTION(heeled_wing_loses_lift_on_its_higher_side)
{
    const lw_wing wing = foil();
    load_of(&wing, usual, (lw_wing_place){0.2, 20.0 * LW_DEG}, (lw_wing_flow){.alpha = 0.05});
    CHECK(load.roll < 0.0 && load.centre < 0.0);  // port is up and lifts less
    CHECK_NEAR(lattice.depth_port, 0.2 - 0.5 * sin(20.0 * LW_DEG), 1e-12);
    CHECK_NEAR(lattice.depth_starboard, 0.2 + 0.5 * sin(20.0 * LW_DEG), 1e-12);
}

TEST_FUNCTION(part_in_the_air_carries_nothing_and_the_loss_is_smooth)
{
    const lw_wing wing = foil();
    const double heel = 20.0 * LW_DEG;
    double before = 0.0;
    for (double depth = -0.17; depth < 0.4; depth += 0.001) {
        CHECK(lw_wing_lay(&lattice, &wing, usual, (lw_wing_place){depth, heel}) == LW_WING_OK);
        lw_wing_load_at(&lattice, (lw_wing_flow){.alpha = 0.05}, &load);
        CHECK(load.lift - before > -1e-6 && load.lift - before < 0.01);
        before = load.lift;
        if (lattice.wet_from == lattice.wet_to) continue;
        for (int i = 0; i < usual.strips * usual.rows; i++) {
            CHECK(lattice.panel[i].port.z < 1e-12 && lattice.panel[i].starboard.z < 1e-12);
        }
    }
}

TEST_FUNCTION(wing_in_the_air_answers_with_nothing)
{
    const lw_wing wing = foil();
    load_of(&wing, usual, (lw_wing_place){-0.1, 0.0}, (lw_wing_flow){.alpha = 0.1, .flap = 0.1});
    CHECK(load.lift == 0.0 && load.drag == 0.0 && load.pitch == 0.0 && load.roll == 0.0);
    const lw_wing_point wash = lw_wing_wash(&lattice, &load, (lw_wing_point){-1.0, 0.0, 0.0});
    CHECK(wash.x == 0.0 && wash.y == 0.0 && wash.z == 0.0);
    CHECK(lattice.wet_from == lattice.wet_to && lattice.depth_port < 0.0);
}

// At the surface nothing moves sideways or forward: the pressure there stays that of the air.
TEST_FUNCTION(surface_stays_at_the_pressure_of_the_air)
{
    const lw_wing wing = foil();
    load_of(&wing, usual, (lw_wing_place){0.3, 0.0}, (lw_wing_flow){.alpha = 0.05});
    for (double x = -2.0; x < 1.0; x += 0.31) {
        const lw_wing_point wash = lw_wing_wash(&lattice, &load, (lw_wing_point){x, 0.1, 0.3});
        CHECK_NEAR(wash.x, 0.0, 1e-12);
        CHECK_NEAR(wash.y, 0.0, 1e-12);
    }
}

// One horseshoe of span pi b / 4 stands for the wing in the force kernel.
TEST_FUNCTION(downwash_at_a_rudder_foil_is_near_that_of_one_horseshoe)
{
    const double A = 10.0, b = 1.0;
    const lw_wing wing = elliptic_wing(A, usual.strips);
    load_of(&wing, usual, deep, (lw_wing_flow){.alpha = 0.05});
    const double s = LW_PI * b / 8.0, x = 1.5;
    const double horseshoe =
        load.lift * lattice.area / (8.0 * LW_PI * s * s) * (1.0 + sqrt(x * x + s * s) / x);
    const double got = -lw_wing_wash(&lattice, &load, (lw_wing_point){-x, 0.0, 0.0}).z;
    CHECK(got > horseshoe && got < 1.35 * horseshoe);  // the sheet is not rolled up: stronger
}

TEST_FUNCTION(mean_downwash_over_a_foil_far_behind_is_that_of_theory)
{
    const double A = 10.0;
    const lw_wing wing = elliptic_wing(A, line.strips), rudder = straight_wing(0.7, 0.6, 0.0, 6.0);
    load_of(&wing, line, deep, (lw_wing_flow){.alpha = 0.1});
    const double want = -2.0 * load.lift * lattice.area / LW_PI;
    CHECK_RELATIVE(lw_wing_wash_over(&lattice, &load, &rudder, (lw_wing_point){-1e3, 0.0, 0.0}),
                   want, 1e-3);
}

TEST_FUNCTION(image_adds_to_the_downwash_at_a_rudder_foil)
{
    const lw_wing wing = foil(), rudder = straight_wing(0.7, 0.6, 0.0, 6.0);
    const lw_wing_point behind = {-1.3, 0.0, 0.05};
    double before = -1.0;
    for (double depth = 0.2; depth < 3.0; depth *= 1.5) {
        load_of(&wing, usual, (lw_wing_place){depth, 0.0}, (lw_wing_flow){.alpha = 0.05});
        const double wash = lw_wing_wash_over(&lattice, &load, &rudder, behind) / load.lift;
        CHECK(wash < 0.0 && wash > before);  // the deeper, the less of it
        before = wash;
    }
    const lw_wing_point above = {-1.3, 0.0, 5.0};
    CHECK(lw_wing_wash_over(&lattice, &load, &rudder, above) == 0.0);
}

// A wing on its side, half of it in the air, is a strut through the surface: the load ends there
// as at a tip. One chord deep it has less slope than the same plate without a surface, 1.46.
TEST_FUNCTION(wing_on_its_side_is_a_strut_through_the_surface)
{
    const lw_wing wing = straight_wing(2.0, 1.0, 0.0, 2.0 * LW_PI);
    load_of(&wing, usual, (lw_wing_place){0.0, 0.5 * LW_PI}, (lw_wing_flow){.alpha = 1.0});
    CHECK_NEAR(lattice.wet_from, -1.0, 1e-9);
    CHECK_NEAR(lattice.wet_to, 0.0, 1e-9);
    const double slope = 2.0 * load.lift;  // on the wet half
    CHECK(slope < 1.458 && slope > 1.2);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(nearer_the_surface_a_wing_lifts_less_and_drags_more_for_it),
        TEST(wing_in_the_surface_has_half_of_its_lift),
        TEST(drag_at_the_wing_is_the_drag_in_its_wake),
        TEST(heeled_wing_loses_lift_on_its_higher_side),
        TEST(part_in_the_air_carries_nothing_and_the_loss_is_smooth),
        TEST(wing_in_the_air_answers_with_nothing),
        TEST(surface_stays_at_the_pressure_of_the_air),
        TEST(downwash_at_a_rudder_foil_is_near_that_of_one_horseshoe),
        TEST(mean_downwash_over_a_foil_far_behind_is_that_of_theory),
        TEST(image_adds_to_the_downwash_at_a_rudder_foil),
        TEST(wing_on_its_side_is_a_strut_through_the_surface),
    };
    return RUN_TESTS(tests);
}
