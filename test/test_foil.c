// test_foil.c - claims about one foil of a prepared craft by itself.
// SPDX-License-Identifier: MIT

#include "lullwise/foil.h"
#include "test/check.h"
#include "test/preset.h"

static lw_craft craft;

static lw_foil_place usual_place(void)
{
    return (lw_foil_place){.speed = 6.0, .incidence = 0.05, .depth = 0.5};
}

TEST_FUNCTION(a_foil_has_no_lift_and_no_induced_drag_at_its_zero_lift_angle)
{
    lw_foil_place place = usual_place();
    place.incidence = craft.main_foil.zero_lift_angle;
    const lw_foil_forces f = lw_foil_at(&craft.main_foil, 1000.0, place);
    CHECK_NEAR(f.lift, 0.0, 1e-9);
    CHECK_NEAR(f.induced, 0.0, 1e-9);
    CHECK(f.section > 0.0 && f.junction > 0.0);
}

TEST_FUNCTION(the_incidence_found_lifts_the_load)
{
    lw_foil_place place = usual_place();
    for (double load = 100.0; load < 1000.0; load += 100.0) {
        place.incidence = lw_foil_incidence(&craft.main_foil, 1000.0, place, load);
        CHECK_RELATIVE(lw_foil_at(&craft.main_foil, 1000.0, place).lift, load, 1e-9);
    }
}

TEST_FUNCTION(a_load_beyond_the_stall_is_met_with_the_stalls_incidence)
{
    lw_foil_place place = usual_place();
    place.incidence = lw_foil_incidence(&craft.main_foil, 1000.0, place, 1e6);
    const lw_foil_forces f = lw_foil_at(&craft.main_foil, 1000.0, place);
    CHECK_NEAR(f.load_share, 1.0, 1e-9);
    CHECK(f.lift < 1e5);
}

TEST_FUNCTION(at_the_least_speed_the_load_takes_all_the_lift_there_is)
{
    lw_foil_place place = usual_place();
    place.speed = lw_foil_least_speed(&craft.main_foil, 1000.0, place, 900.0);
    place.incidence = lw_foil_incidence(&craft.main_foil, 1000.0, place, 900.0);
    const lw_foil_forces f = lw_foil_at(&craft.main_foil, 1000.0, place);
    CHECK_RELATIVE(f.lift, 900.0, 1e-9);
    CHECK_NEAR(f.load_share, 1.0, 1e-6);
}

TEST_FUNCTION(a_foil_heeled_one_way_is_as_one_heeled_the_other_and_none_is_wet_in_the_air)
{
    lw_foil_place place = usual_place();
    place.depth = 0.1;
    place.heel = 0.3;
    const double lift = lw_foil_at(&craft.main_foil, 1000.0, place).lift;
    place.heel = -0.3;
    CHECK(lift == lw_foil_at(&craft.main_foil, 1000.0, place).lift);
    place.depth = -1.0;
    CHECK(lw_foil_at(&craft.main_foil, 1000.0, place).wetted == 0.0);
    CHECK(lw_foil_least_speed(&craft.main_foil, 1000.0, place, 900.0) == 0.0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_foil_has_no_lift_and_no_induced_drag_at_its_zero_lift_angle),
        TEST(the_incidence_found_lifts_the_load),
        TEST(a_load_beyond_the_stall_is_met_with_the_stalls_incidence),
        TEST(at_the_least_speed_the_load_takes_all_the_lift_there_is),
        TEST(a_foil_heeled_one_way_is_as_one_heeled_the_other_and_none_is_wet_in_the_air),
    };
    craft = preset_craft();
    return RUN_TESTS(tests);
}
