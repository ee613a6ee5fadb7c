// test_craft.c - claims about a prepared craft: its curves against the lattice, its windage.
// SPDX-License-Identifier: MIT

#include <stdio.h>

#include "boat/foil_curves.h"
#include "flight/balance.h"
#include "lullwise/drawn.h"
#include "lullwise/prepared.h"
#include "solve/curve.h"
#include "test/check.h"
#include "test/preset.h"

static lw_wing foil(double width, double root, double tip)
{
    return (lw_wing){.count = 2,
                     .station = {{.chord = root, .slope = 5.85},
                                 {.y = 0.5 * width, .chord = tip, .slope = 5.85}},
                     .flap = {.outer = 0.45 * width, .angle_share = 0.66}};
}

static const lw_wing_point behind = {.x = -2.1, .z = -0.05};

typedef struct off {
    double slope, induced, downwash;
} off;

// Largest error of the curves against a lattice of the given mesh, over depths from `least` [m].
static off largest_off(lw_wing_mesh mesh, double least)
{
    static lw_wing_lattice lattice;
    const lw_wing main = foil(0.96, 0.104, 0.062), rudder = foil(0.72, 0.09, 0.055);
    lw_foil_craft craft = {.span = 0.96, .chord = 0.083};
    lw_foil_curves(&craft, &main, &rudder, behind);
    off most = {0};
    random_stream stream = {7};
    for (int run = 0; run < 60; run++) {
        const double depth = random_between(&stream, least, 1.4);
        CHECK(lw_wing_lay(&lattice, &main, mesh, (lw_wing_place){.depth = depth}) == LW_WING_OK);
        lw_wing_load load;
        lw_wing_load_at(&lattice, (lw_wing_flow){.alpha = 0.1}, &load);
        const double C_L = load.lift, a = lw_wing_slopes_of(&lattice).lift;
        const double k = load.drag / (C_L * C_L);
        const double e = -lw_wing_wash_over(&lattice, &load, &rudder, behind) / C_L;
        const lw_lanes h = lw_all(depth);
        most.slope = fmax(most.slope, fabs(lw_curve_at(&craft.slope, h)[0] / a - 1.0));
        most.induced = fmax(most.induced, fabs(lw_curve_at(&craft.induced, h)[0] / k - 1.0));
        most.downwash = fmax(most.downwash, fabs(lw_curve_at(&craft.downwash, h)[0] / e - 1.0));
    }
    return most;
}

TEST_FUNCTION(curves_keep_within_a_thousandth_of_the_lattice_they_came_from)
{
    const off most = largest_off(lw_foil_mesh(9.0), 0.2);
    printf("  curve against its own lattice:   slope %.4f %%, induced %.4f %%, downwash %.4f %%\n",
           100.0 * most.slope, 100.0 * most.induced, 100.0 * most.downwash);
    CHECK(most.slope < 1e-3 && most.induced < 1e-3 && most.downwash < 2e-3);
}

TEST_FUNCTION(curves_are_off_a_fine_lattice_by_what_is_told_and_not_by_more)
{
    const off most = largest_off(lw_wing_mesh_usual(), 0.1);
    printf(
        "  curve against a lattice of 32 x 4: slope %.2f %%, induced %.2f %%, downwash %.2f %%\n",
        100.0 * most.slope, 100.0 * most.induced, 100.0 * most.downwash);
    const double by[] = {most.slope, most.induced, most.downwash};
    for (int n = 0; n < 3; n++) {
        CHECK(100.0 * by[n] <= lw_prepared_foils().rows[n].error);
        CHECK(100.0 * by[n] > 0.5 * lw_prepared_foils().rows[n].error);
    }
}

typedef struct heeled_off {
    double lift, tip_out, share;
} heeled_off;

static void compare_heeled(const lw_foil_craft *craft, const lw_wing *wing, double heel,
                           double tip_depth, heeled_off *most)
{
    static lw_wing_lattice lattice;
    static lw_wing_load load;
    const double rise = 0.5 * craft->span * sin(heel), depth = tip_depth + rise;
    const lw_wing_place place = {.depth = depth, .heel = heel};
    if (depth < 0.03) return;
    CHECK(lw_wing_lay(&lattice, wing, lw_wing_mesh_usual(), place) == LW_WING_OK);
    lw_wing_load_at(&lattice, (lw_wing_flow){.alpha = 0.1}, &load);
    double crest = 0.0;
    for (int k = 0; k < lattice.mesh.strips; k++) crest = fmax(crest, load.section_lift[k]);
    const lw_lanes left = lw_foil_wetted(craft, lw_all(depth), lw_all(rise));
    const double a = left[0] * lw_curve_at(&craft->slope, lw_all(depth))[0];
    const double lift = fabs(0.1 * a / load.lift - 1.0);
    if (tip_depth >= 0.05) {
        most->lift = fmax(most->lift, lift);
        most->share = fmax(most->share, fabs(craft->span_share * crest / load.lift - 1.0));
    } else {
        most->tip_out = fmax(most->tip_out, lift);
    }
}

TEST_FUNCTION(heeled_foil_lifts_as_the_lattice_has_it_within_what_is_told)
{
    const lw_wing wings[] = {foil(0.96, 0.104, 0.062), foil(0.72, 0.09, 0.055)};
    heeled_off most = {0};
    for (int n = 0; n < 2; n++) {
        lw_foil_craft craft = {.span = n ? 0.72 : 0.96, .chord = n ? 0.0725 : 0.083};
        lw_foil_curves(&craft, &wings[n], NULL, (lw_wing_point){0});
        for (double heel = 10.0; heel <= 30.0; heel += 5.0)
            for (double tip = -0.15; tip < 0.3; tip += 0.0125)
                compare_heeled(&craft, &wings[n], heel * LW_DEG, tip, &most);
    }
    printf("  heeled: lift %.2f %%, with a tip out %.2f %%, most loaded part %.2f %%\n",
           100.0 * most.lift, 100.0 * most.tip_out, 100.0 * most.share);
    const double by[] = {most.lift, most.tip_out, most.share};
    for (int n = 0; n < 3; n++) {
        CHECK(100.0 * by[n] <= lw_prepared_foils().rows[3 + n].error);
        CHECK(100.0 * by[n] > 0.5 * lw_prepared_foils().rows[3 + n].error);
    }
}

TEST_FUNCTION(flap_is_worth_the_same_angle_at_every_depth)
{
    const lw_wing main = foil(0.96, 0.104, 0.062);
    lw_foil_craft craft = {.span = 0.96, .chord = 0.083};
    lw_foil_curves(&craft, &main, NULL, (lw_wing_point){0});
    CHECK_RELATIVE(craft.flap_lift, 0.66 * 0.97, 0.03);  // more than 0.9: its load spreads outboard
    CHECK(craft.downwash.value[10] == 0.0);
}

static lw_loads loads_at(const lw_craft *craft, double heading)
{
    const lw_setup setup = preset_setup(craft, 2);
    const lw_ask ask = lw_ask_of(craft, &setup, 7.0, heading);
    lw_pose pose;
    lw_loads loads;
    for (int i = 0; i < LW_WIDTH; i++) lw_pose_put(&pose, i, &ask);
    pose.leeway = lw_all(0.0);
    lw_pose_all_loads(craft, &pose, &loads);
    return loads;
}

// A square metre more abeam: 1/2 rho |U| U_y across, and nothing along or head to wind.
TEST_FUNCTION(windage_of_the_side_is_felt_across_only)
{
    const lw_craft craft = preset_craft();
    lw_craft wide = craft;
    wide.windage_side += 1.0;
    const lw_loads on = loads_at(&craft, 60.0 * LW_DEG), more = loads_at(&wide, 60.0 * LW_DEG);
    const double part = craft.wind_at_body / craft.wind_at_sail;  // both winds differ by height
    const double across = more.air.y[0] - on.air.y[0];
    CHECK_NEAR(more.air.x[0], on.air.x[0], 1e-9);
    CHECK(across > 0.0);
    CHECK_RELATIVE(across,
                   0.5 * craft.medium.air_density * part * on.inflow.sail_wind.y[0] *
                       sqrt(on.inflow.sail_wind.x[0] * on.inflow.sail_wind.x[0] +
                            on.inflow.sail_wind.y[0] * on.inflow.sail_wind.y[0]),
                   0.06);
    const lw_loads ahead = loads_at(&craft, 0.0), still = loads_at(&wide, 0.0);
    CHECK_NEAR(still.air.y[0], ahead.air.y[0], 1e-9);
}

TEST_FUNCTION(what_is_drawn_of_the_sailor_goes_with_her_place)
{
    const lw_craft craft = preset_craft();
    const lw_craft_drawn over = lw_craft_drawn_of(&craft, 0.0, craft.hull_x, 6.0);
    const lw_craft_drawn ahead = lw_craft_drawn_of(&craft, 0.0, craft.hull_x + 0.5, 6.0);
    CHECK_NEAR(over.place_x, craft.hull_x - craft.transom_x, 1e-12);
    CHECK_NEAR(ahead.place_x - over.place_x, 0.5, 1e-12);
    CHECK(ahead.sail_x == over.sail_x && ahead.body_height == over.body_height);
}

TEST_FUNCTION(the_trough_drawn_is_that_of_flight)
{
    const lw_craft craft = preset_craft();
    for (int i = 1; i < LW_CURVE_KNOTS - 1; i += 5) {
        const lw_craft_drawn at = lw_craft_drawn_of(&craft, 0.0, 0.0, i * craft.trough.step);
        CHECK_NEAR(at.trough, craft.trough.value[i], 1e-12);
    }
}

// Why she flies: slowly the hull alone can carry her, fast the foil does it for less.
TEST_FUNCTION(slowly_the_hull_carries_her_and_fast_the_foil_does_for_less)
{
    const lw_craft craft = preset_craft();
    const lw_boat boat = preset_boat();
    const double speeds[] = {1.0, 6.0, 20.0};
    lw_drag drag[3];
    lw_drag_curve(&boat, &craft, speeds, drag, 3);
    CHECK(drag[0].hull > 0.0 && isnan(drag[0].foil));
    CHECK(drag[1].foil > 0.0 && drag[1].foil < drag[1].hull);
    CHECK(isnan(drag[2].hull) && drag[2].foil > 0.0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(curves_keep_within_a_thousandth_of_the_lattice_they_came_from),
        TEST(curves_are_off_a_fine_lattice_by_what_is_told_and_not_by_more),
        TEST(heeled_foil_lifts_as_the_lattice_has_it_within_what_is_told),
        TEST(flap_is_worth_the_same_angle_at_every_depth),
        TEST(windage_of_the_side_is_felt_across_only),
        TEST(what_is_drawn_of_the_sailor_goes_with_her_place),
        TEST(the_trough_drawn_is_that_of_flight),
        TEST(slowly_the_hull_carries_her_and_fast_the_foil_does_for_less),
    };
    return RUN_TESTS(tests);
}
