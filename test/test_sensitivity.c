// test_sensitivity.c - claims about a boat a little different, to first order, and what errors do.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "lullwise/sensitivity.h"
#include "test/demo.h"

static lw_outlook outlook, scratch;
static lw_shift_base base;
static lw_section_store store;
static lw_sensing sensing;

static void prepare(void)
{
    const char *why;
    read_demo();
    CHECK(lw_day_settle(&demo.day, &why));
    lw_outlook_prepare(&outlook, &demo.boat, &demo.sections, &demo.sailor.person, &demo.day);
    lw_section_store_take(&store, &demo.boat, &demo.sections);
}

TEST_FUNCTION(a_boat_that_is_no_other_is_shifted_nowhere)
{
    lw_shift_base_prepare(&base, &outlook);
    lw_shifted(&base, &demo.boat, &demo.sections, &demo.sailor.person, &scratch);
    for (size_t pin = 0; pin < outlook.pin_count; pin++) {
        for (size_t c = 0; c < outlook.course_count; c++) {
            const lw_range *was = &outlook.ranges[pin][c], *is = &scratch.ranges[pin][c];
            CHECK_NEAR(is->held_up_to, was->held_up_to, 1e-6);
            CHECK_NEAR(is->stays_up_at, was->stays_up_at, 1e-6);
            CHECK_NEAR(scratch.pace[pin][c], 1.0, 1e-6);
        }
    }
}

// By a fresh search, as a mean over a kilogram either way: one search ends within a fifth of a knot
// of the next.
static double more_by_search(size_t pin, double mass)
{
    double sum = 0.0;
    for (int off = -1; off <= 1; off++) {
        lw_person person = demo.sailor.person;
        person.mass += mass + off;
        lw_shifted(&base, &demo.boat, &demo.sections, &person, &scratch);
        const lw_setup setup = lw_craft_setup(&scratch.craft, &demo.boat, pin);
        static lw_range sought;
        lw_range_of(&scratch.craft, &setup, outlook.courses[0], base.puff, &sought);
        sum += sought.stays_up_at - outlook.ranges[pin][0].stays_up_at;
    }
    return sum / 3.0;
}

// Five kilograms: to first order the least wind that keeps her up is that of a fresh search.
TEST_FUNCTION(to_first_order_a_heavier_sailor_needs_the_wind_that_a_search_finds)
{
    lw_person heavier = demo.sailor.person;
    heavier.mass += 5.0;
    lw_shift_base_prepare(&base, &outlook);
    for (size_t pin = 0; pin < outlook.pin_count; pin++) {
        const double more = more_by_search(pin, 5.0);
        lw_shifted(&base, &demo.boat, &demo.sections, &heavier, &scratch);
        const double first = scratch.ranges[pin][0].stays_up_at;
        CHECK(more > 0.0);
        CHECK_NEAR(first - outlook.ranges[pin][0].stays_up_at, more, 0.3 * more + 0.05 * LW_KN);
    }
}

// More drag takes longer.
TEST_FUNCTION(rows_name_their_quantity_and_leave_it_as_it_was)
{
    lw_sensing_begin(&sensing, &outlook, &scratch, &store);
    const lw_sensitivity *found = &sensing.found;
    CHECK(found->flies && found->count > 50 && found->count < LW_SENSITIVITIES_MOST);
    for (size_t i = 0; i < found->count; i++) {
        const lw_sensitivity_row *row = &found->rows[i];
        const char *dot = strchr(row->key, '.');
        CHECK(dot && dot[1] && row->row->error > 0.0 && row->weight < 0.0);
        if (strcmp(row->key, "person.drag_area") != 0) continue;
        lw_sensing_row(&sensing, i, false);
        CHECK(sensing.person.drag_area == demo.sailor.person.drag_area);
        CHECK(row->weight > 0.0 && row->seconds > 0.0);
    }
}

TEST_FUNCTION(rows_are_put_in_the_order_of_their_weight_and_those_without_are_left_out)
{
    static lw_sensitivity found = {.count = 5};
    const double weights[] = {0.5, -1.0, 2.0, 0.5, 7.0};
    for (size_t i = 0; i < 5; i++) {
        found.rows[i].weight = weights[i];
        found.rows[i].key[0] = (char)('a' + i);
    }
    lw_sensitivity_sort(&found);
    CHECK(found.count == 4);
    for (size_t i = 0; i < 4; i++) CHECK(found.rows[i].key[0] == "ecad"[i]);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_boat_that_is_no_other_is_shifted_nowhere),
        TEST(to_first_order_a_heavier_sailor_needs_the_wind_that_a_search_finds),
        TEST(rows_name_their_quantity_and_leave_it_as_it_was),
        TEST(rows_are_put_in_the_order_of_their_weight_and_those_without_are_left_out),
    };
    prepare();
    return RUN_TESTS(tests);
}
