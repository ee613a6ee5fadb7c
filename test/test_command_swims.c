// test_command_swims.c - claims about `lullwise swims`.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "test/command_answers.h"

TEST_FUNCTION(swims_are_told_for_every_course_with_how_surely_they_are_known)
{
    CHECK(lullwise("swims --pin B" DEMO "2>/dev/null") == 0);
    CHECK(answer_has("upwind, swims an hour") && answer_has("downwind, swims an hour"));
    CHECK(answer_has("held, puffs") && answer_has("less than a swim in five minutes") &&
          answer_has(" x1.") && answer_has("never tires"));
    CHECK(widest_line() <= 80);
}

// Each course, each wind that was ridden in, and puffs or null: no limit told where there is none.
TEST_FUNCTION(swims_in_json_have_every_course_and_wind_with_its_factor)
{
    json_t *json = json_answer("swims --pin A" DEMO);
    const json_t *list = json_object_get(json, "swims");
    CHECK(json_array_size(list) == 3);
    for (size_t i = 0; i < json_array_size(list); i++) {
        const json_t *course = json_array_get(list, i), *at = json_object_get(course, "at");
        const json_t *held = json_object_get(course, "rides_to");
        CHECK(json_array_size(at) == 6 && (json_is_null(held) || json_number_value(held) > 0.0));
        double before = 0.0;
        for (size_t k = 0; k < json_array_size(at); k++) {
            const json_t *one = json_array_get(at, k);
            const double wind = json_number_value(json_object_get(one, "wind"));
            CHECK(wind > before && json_number_value(json_object_get(one, "swims")) >= 0.0);
            CHECK(json_number_value(json_object_get(one, "factor")) > 1.0);
            before = wind;
        }
    }
    json_decref(json);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(swims_are_told_for_every_course_with_how_surely_they_are_known),
        TEST(swims_in_json_have_every_course_and_wind_with_its_factor),
    };
    return RUN_TESTS(tests);
}
