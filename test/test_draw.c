// test_draw.c - claims about boats, sailors and judged numbers drawn within their errors.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "lullwise/draw.h"
#include "test/check.h"
#include "test/preset.h"

#define DRAWS 400

// The preset boat is far from every bound and contradiction, so that each pair evens out.
TEST_FUNCTION(a_pair_of_draws_evens_out_to_what_was_measured)
{
    const lw_boat boat = preset_boat();
    const lw_person person = preset_person();
    for (unsigned pair = 0; pair < 20; pair++) {
        lw_draw a, b;
        lw_draw_of(&boat, &person, 2 * pair, &a);
        lw_draw_of(&boat, &person, 2 * pair + 1, &b);
        CHECK_RELATIVE(0.5 * (a.person.mass + b.person.mass), person.mass, 1e-12);
        CHECK_RELATIVE(0.5 * (a.boat.main_foil.span + b.boat.main_foil.span), boat.main_foil.span,
                       1e-12);
        CHECK_RELATIVE(0.5 * (a.judged.delay + b.judged.delay), 1.0, 1e-12);
        CHECK_NEAR(0.5 * (a.boat.pins[2].incidence + b.boat.pins[2].incidence),
                   boat.pins[2].incidence, 1e-12);
        CHECK(a.person.mass != b.person.mass);
    }
}

// Root mean square of 200 normal numbers: within four of its own errors, 1 / sqrt(400), less what
// is held within 2.5 deviations.
TEST_FUNCTION(draws_scatter_by_the_errors_of_their_rows)
{
    const lw_boat boat = preset_boat();
    const lw_person person = preset_person();
    const lw_quantity *mass = lw_table_find(lw_sailor_record.sections[0].table, "mass");
    const lw_quantity *delay = lw_table_find(&lw_judged_table, "delay");
    double of_mass = 0.0, of_delay = 0.0, of_pin = 0.0;
    for (unsigned i = 0; i < DRAWS; i++) {
        lw_draw draw;
        lw_draw_of(&boat, &person, i, &draw);
        of_mass += pow((draw.person.mass - person.mass) / mass->error, 2.0) / DRAWS;
        of_delay += pow((draw.judged.delay - 1.0) / delay->error, 2.0) / DRAWS;
        of_pin +=
            pow((draw.boat.pins[1].incidence - boat.pins[1].incidence) / (0.2 * LW_DEG), 2.0) /
            DRAWS;
    }
    CHECK_NEAR(sqrt(of_mass), 0.98, 0.2);
    CHECK_NEAR(sqrt(of_delay), 0.98, 0.2);
    CHECK_NEAR(sqrt(of_pin), 0.98, 0.2);
}

TEST_FUNCTION(no_draw_leaves_its_range_or_contradicts_itself)
{
    const lw_person person = preset_person();
    lw_boat boat = preset_boat();
    boat.pins[1].incidence =
        boat.pins[0].incidence - 0.01 * LW_DEG;  // nearer than they are measured
    boat.main_foil.smooth = 0.01;
    const char *why;
    for (unsigned i = 0; i < DRAWS; i++) {
        lw_draw draw;
        lw_draw_of(&boat, &person, i, &draw);
        CHECK(lw_boat_contradiction(&draw.boat, &why) == NULL);
        CHECK(lw_table_check(lw_sailor_record.sections[0].table, &draw.person) == NULL);
        CHECK(lw_table_check(&lw_judged_table, &draw.judged) == NULL);
        CHECK(draw.boat.main_foil.smooth >= 0.01 - 1e-12);
    }
}

TEST_FUNCTION(a_judged_factor_of_one_leaves_rules_and_pilot_as_they_are)
{
    const lw_judged as_is = lw_judged_preset();
    const lw_ride_parameters preset = lw_ride_parameters_preset();
    lw_ride_parameters parameters = preset;
    lw_pilot pilot = {0}, before;
    lw_gains_everywhere(&pilot, &(lw_gains){{1.0, 2.0, 0.5, 0.8, 0.1, 0.4, 0.2}});
    before = pilot;
    lw_judged_put_parameters(&as_is, &parameters);
    lw_judged_put_pilot(&as_is, &pilot);
    CHECK(memcmp(&parameters, &preset, sizeof parameters) == 0);
    CHECK(memcmp(&pilot, &before, sizeof pilot) == 0);
    lw_judged late = as_is;
    late.delay = 1.5, late.heel = 0.5;
    lw_judged_put_parameters(&late, &parameters);
    lw_judged_put_pilot(&late, &pilot);
    CHECK_RELATIVE(parameters.delay, 1.5 * preset.delay, 1e-15);
    CHECK_RELATIVE(pilot.wish[2].gains.heel, 0.5 * before.wish[2].gains.heel, 1e-15);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_pair_of_draws_evens_out_to_what_was_measured),
        TEST(draws_scatter_by_the_errors_of_their_rows),
        TEST(no_draw_leaves_its_range_or_contradicts_itself),
        TEST(a_judged_factor_of_one_leaves_rules_and_pilot_as_they_are),
    };
    return RUN_TESTS(tests);
}
