// test_command_swims.c - claims about `lullwise swims`.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "test/command_answers.h"

TEST_FUNCTION(swims_are_told_for_every_course_with_how_surely_they_are_known)
{
    CHECK(lullwise("swims --pin B" DEMO "2>/dev/null") == 0);
    CHECK(answer_has("upwind, swims an hour") && answer_has("downwind, swims an hour"));
    CHECK(answer_has("held, puffs") && answer_has("less than a swim in five minutes") &&
          answer_has(" x1.") && answer_has("keeps her rudder turns"));
    CHECK(widest_line() <= 80);
}

TEST_FUNCTION(swims_in_json_grow_for_a_strong_pin_downwind_beyond_its_wind)
{
    json_t *json = json_answer("swims --pin A" DEMO);
    const json_t *list = json_object_get(json, "swims");
    CHECK(json_array_size(list) == 3);
    const json_t *at = json_object_get(json_array_get(list, 2), "at");
    const size_t last = json_array_size(at) - 1;  // 22.5 kn; 15 kn, which it still holds, is third
    CHECK(json_number_value(json_object_get(json_array_get(at, last), "swims")) >
          2.0 * json_number_value(json_object_get(json_array_get(at, 2), "swims")));
    json_decref(json);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(swims_are_told_for_every_course_with_how_surely_they_are_known),
        TEST(swims_in_json_grow_for_a_strong_pin_downwind_beyond_its_wind),
    };
    return RUN_TESTS(tests);
}
