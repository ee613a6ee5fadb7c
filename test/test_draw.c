// test_draw.c - claims about boats, sailors and judged numbers drawn within their errors.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "lullwise/draw.h"
#include "test/check.h"
#include "test/preset.h"

#define DRAWS (6 * LW_DRAWS)

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

// A Latin hypercube has the variance of what it samples, but for pairs moved by less because they
// would contradict themselves: one in thirty.
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
    CHECK_NEAR(sqrt(of_mass), 0.985, 0.02);
    CHECK_NEAR(sqrt(of_delay), 0.985, 0.02);
    CHECK_NEAR(sqrt(of_pin), 0.985, 0.02);
}

static void sort_moves(double moves[LW_DRAW_PAIRS])
{
    for (int i = 1; i < LW_DRAW_PAIRS; i++) {
        for (int k = i; k > 0 && moves[k - 1] > moves[k]; k--) {
            const double move = moves[k];
            moves[k] = moves[k - 1], moves[k - 1] = move;
        }
    }
}

// How far each pair of a hypercube is from what was measured, least first.
typedef struct moves {
    double of_mass[LW_DRAW_PAIRS], of_delay[LW_DRAW_PAIRS];
} moves;

static moves moves_of(unsigned set)
{
    const lw_boat boat = preset_boat();
    const lw_person person = preset_person();
    const lw_quantity *mass = lw_table_find(lw_sailor_record.sections[0].table, "mass");
    const lw_quantity *delay = lw_table_find(&lw_judged_table, "delay");
    moves m;
    for (unsigned k = 0; k < LW_DRAW_PAIRS; k++) {
        lw_draw draw;
        lw_draw_of(&boat, &person, 2 * (LW_DRAW_PAIRS * set + k), &draw);
        m.of_mass[k] = fabs(draw.person.mass - person.mass) / mass->error;
        m.of_delay[k] = fabs(draw.judged.delay - 1.0) / delay->error;
    }
    sort_moves(m.of_mass), sort_moves(m.of_delay);
    return m;
}

// The same numbers for each quantity, all different, where no pair was moved by less.
TEST_FUNCTION(every_quantity_meets_every_part_of_a_hypercube_once)
{
    int whole = 0;
    for (unsigned set = 0; set < 20; set++) {
        const moves m = moves_of(set);
        double square = 0.0;
        for (int k = 0; k < LW_DRAW_PAIRS; k++) square += m.of_mass[k] * m.of_mass[k];
        if (square < LW_DRAW_PAIRS - 0.0035) continue;  // the table has three digits
        whole++;
        for (int k = 1; k < LW_DRAW_PAIRS; k++) CHECK(m.of_mass[k] > m.of_mass[k - 1] + 0.05);
        for (int k = 0; k < LW_DRAW_PAIRS; k++) CHECK_NEAR(m.of_mass[k], m.of_delay[k], 1e-9);
    }
    CHECK(whole >= 10);
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
        TEST(every_quantity_meets_every_part_of_a_hypercube_once),
        TEST(no_draw_leaves_its_range_or_contradicts_itself),
        TEST(a_judged_factor_of_one_leaves_rules_and_pilot_as_they_are),
    };
    return RUN_TESTS(tests);
}
