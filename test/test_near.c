// test_near.c - claims about the days that `lullwise log near` finds.
// SPDX-License-Identifier: MIT

#define _DEFAULT_SOURCE

#include "answer/log/log.h"
#include "test/logged_days.h"

#define DAYS 300

static lw_entries days;

static int begin(void **state)
{
    random_stream stream = {17};
    if (enter_folder(state) != 0) return -1;
    for (int i = 0; i < DAYS; i++) *lw_entries_add(&days) = made_day(&stream);
    return 0;
}

static int end(void **state)
{
    lw_entries_free(&days);
    return leave_folder(state);
}

// The day asked for is one that was logged, a little changed.
static lw_near found_for(lw_inputs *inputs, double more)
{
    const lw_logged *day = &days.list[DAYS / 2].day;
    lw_record_example(&lw_day_record, &inputs->day);
    lw_record_example(&lw_sailor_record, &inputs->sailor);
    inputs->day.wind = day->wind, inputs->day.sea = day->sea;
    inputs->day.wind.mean += more;
    lw_near near = {.inputs = inputs, .days = &days};
    lw_near_find(&near);
    return near;
}

TEST_FUNCTION(a_day_that_was_logged_is_nearest_to_itself)
{
    static lw_inputs inputs;
    const lw_near near = found_for(&inputs, 0.0);
    CHECK(near.count == LW_NEAR_MOST && near.found[0].apart == 0.0);
    CHECK(near.found[0].entry == &days.list[DAYS / 2]);
}

// All others are as far away as the last of those found, or further.
TEST_FUNCTION(no_day_that_is_left_out_is_nearer)
{
    static lw_inputs inputs;
    const lw_near near = found_for(&inputs, 2.0);
    for (size_t i = 1; i < near.count; i++) CHECK(near.found[i].apart >= near.found[i - 1].apart);
    size_t nearer = 0;
    for (size_t i = 0; i < days.count; i++) {
        const lw_logged *day = &days.list[i].day;
        const lw_conditions was = lw_conditions_of(&day->wind, &day->sea, day->outing.mass);
        nearer += lw_conditions_apart(&was, &near.asked) < near.found[near.count - 1].apart;
    }
    assert_int_equal(nearer, LW_NEAR_MOST - 1);
}

TEST_FUNCTION(of_days_that_are_alike_the_later_comes_first)
{
    static lw_inputs inputs;
    lw_entry again[2] = {days.list[DAYS / 2], days.list[DAYS / 2]};
    const lw_entries two = {.list = again, .count = 2};
    lw_near near = found_for(&inputs, 0.0);
    near.days = &two, near.count = 0;
    lw_near_find(&near);
    CHECK(near.count == 2 && near.found[0].entry == &again[1]);
}

TEST_FUNCTION(of_no_days_none_is_near)
{
    static lw_inputs inputs;
    const lw_entries none = {0};
    lw_near near = found_for(&inputs, 0.0);
    near.days = &none, near.count = 0;
    lw_near_find(&near);
    CHECK(near.count == 0);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_day_that_was_logged_is_nearest_to_itself),
        TEST(no_day_that_is_left_out_is_nearer),
        TEST(of_days_that_are_alike_the_later_comes_first),
        TEST(of_no_days_none_is_near),
    };
    return cmocka_run_group_tests(tests, begin, end);
}
