// test_command_modes.c - claims about `lullwise modes`.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "test/command_answers.h"

TEST_FUNCTION(modes_tell_that_a_boat_left_alone_falls_over)
{
    CHECK(lullwise("modes" DEMO "--pin B") == 0);
    CHECK(answer_has("Left alone she is") && answer_has("heel doubles in"));
    CHECK(answer_has("more gearing") && answer_has("a later wand"));
    CHECK(widest_line() <= 80);
    json_t *json = json_answer("modes" DEMO "--pin B");
    const json_t *alone = json_object_get(json, "left_alone");
    CHECK(json_is_false(json_object_get(alone, "is_steady")));
    const json_t *first = json_array_get(json_rows(alone, "modes"), 0);
    CHECK_TEXT(json_text(first, "mostly"), "heel");
    CHECK(json_number_value(json_object_get(first, "doubles")) < 2.0);
    CHECK(json_array_size(json_rows(alone, "unseen")) > 0);
    json_decref(json);
}

TEST_FUNCTION(modes_are_those_of_the_flight_that_fly_answers)
{
    json_t *flown = json_answer("fly" DEMO "--pin B --wind 14kn --heading 120deg");
    json_t *json = json_answer("modes" DEMO "--pin B --wind 14kn --heading 120deg");
    CHECK(json_equal(json_object_get(flown, "flight"), json_object_get(json, "flight")));
    CHECK(json_equal(json_object_get(flown, "forces"), json_object_get(json, "forces")));
    json_decref(flown);
    json_decref(json);
}

TEST_FUNCTION(modes_take_a_course_instead_of_a_heading)
{
    json_t *json = json_answer("modes" DEMO "--pin B --course downwind");
    CHECK(json_number(json, "flight", "heading") > 100.0);
    json_decref(json);
    CHECK(lullwise("modes" DEMO "--course sideways") == 2);
    CHECK(answer_has("upwind, reach or downwind"));
}

TEST_FUNCTION(modes_on_the_hull_tell_of_no_wand)
{
    CHECK(lullwise("modes" DEMO "--pin D --wind 5kn") == 0);
    CHECK(answer_has("Sails on the hull") && !answer_has("more gearing"));
}

TEST_FUNCTION(modes_end_with_one_where_there_is_no_balance)
{
    CHECK(lullwise("modes" DEMO "--pin A --wind 40kn --heading 30deg") == 1);
    CHECK(answer_has("No steady balance"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(modes_tell_that_a_boat_left_alone_falls_over),
        TEST(modes_are_those_of_the_flight_that_fly_answers),
        TEST(modes_take_a_course_instead_of_a_heading),
        TEST(modes_on_the_hull_tell_of_no_wand),
        TEST(modes_end_with_one_where_there_is_no_balance),
    };
    return RUN_TESTS(tests);
}
