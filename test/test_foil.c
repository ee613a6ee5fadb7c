// test_foil.c - claims about one foil of a prepared craft by itself.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/foil.h"
#include "test/check.h"
#include "test/preset.h"

static lw_craft craft;
static lw_boat boat;
static lw_medium medium;
static lw_outline outline;
static lw_whole_foil whole;

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

// --- a whole foil and the section where its span is loaded most

static void prepare_whole(double depth)
{
    const char *why;
    const lw_polar_shape own = lw_sections_shape(&boat, LW_MAIN_SECTION);
    lw_whole_own_section(&outline, &own);
    whole.foil = &craft.main_foil, whole.medium = &medium, whole.outline = &outline;
    whole.place = (lw_foil_place){.depth = depth};
    CHECK(lw_whole_prepare(&whole, &boat.main_foil, &why));
}

TEST_FUNCTION(a_whole_foil_carries_what_it_is_asked_or_has_no_answer)
{
    prepare_whole(0.5);
    const double least = lw_whole_takes_off(&whole, 900.0);
    const lw_whole_point slow = lw_whole_carrying(&whole, 0.95 * least, 900.0);
    CHECK(slow.speed == 0.95 * least && isnan(slow.lift) && isnan(slow.alpha));
    for (double speed = 1.05 * least; speed < 4.0 * least; speed *= 1.2) {
        const lw_whole_point point = lw_whole_carrying(&whole, speed, 900.0);
        CHECK_RELATIVE(point.lift, 900.0, 1e-6);
        CHECK_RELATIVE(point.drag, point.section + point.induced, 1e-12);
    }
}

// Tip loss: the middle of a foil works harder than its mean.
TEST_FUNCTION(the_middle_of_the_span_is_loaded_more_than_the_mean)
{
    prepare_whole(0.5);
    CHECK(whole.steepest > 1.0 && whole.steepest < 2.0);
    const double lift = whole.steepest * 0.4;
    double pressures[LW_NODES_MOST];
    CHECK_NEAR(lw_whole_pressures(&whole, 0.4, pressures).lift, lift, 1e-9);
    CHECK(isnan(lw_whole_pressures(&whole, NAN, pressures).lift) && isnan(pressures[0]));
}

// From there on, and not before, the cavitation number is less than the suction.
TEST_FUNCTION(the_water_boils_from_the_speed_that_is_told)
{
    prepare_whole(0.5);
    const double from = lw_whole_cavitates(&whole, 900.0);
    const lw_whole_point before = lw_whole_carrying(&whole, 0.99 * from, 900.0);
    const lw_whole_point after = lw_whole_carrying(&whole, 1.01 * from, 900.0);
    CHECK(from > lw_whole_takes_off(&whole, 900.0));
    CHECK(-before.least_pressure < before.cavitation_number);
    CHECK(-after.least_pressure > after.cavitation_number);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_foil_has_no_lift_and_no_induced_drag_at_its_zero_lift_angle),
        TEST(the_incidence_found_lifts_the_load),
        TEST(a_load_beyond_the_stall_is_met_with_the_stalls_incidence),
        TEST(at_the_least_speed_the_load_takes_all_the_lift_there_is),
        TEST(a_foil_heeled_one_way_is_as_one_heeled_the_other_and_none_is_wet_in_the_air),
        TEST(a_whole_foil_carries_what_it_is_asked_or_has_no_answer),
        TEST(the_middle_of_the_span_is_loaded_more_than_the_mean),
        TEST(the_water_boils_from_the_speed_that_is_told),
    };
    craft = preset_craft();
    boat = preset_boat();
    medium = preset_medium();
    return RUN_TESTS(tests);
}
