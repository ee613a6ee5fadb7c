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
    static const char *const courses[] = {"upwind", "reach", "downwind"};
    json_t *json = json_answer("swims --pin A" DEMO);
    const json_t *winds = json_rows(json, "winds");
    CHECK(json_array_size(winds) == 6);
    for (size_t k = 1; k < 6; k++) {
        const json_t *before = json_object_get(json_array_get(winds, k - 1), "mean");
        const json_t *wind = json_object_get(json_array_get(winds, k), "mean");
        CHECK(json_number_value(wind) > json_number_value(before));
    }
    for (size_t i = 0; i < 3; i++) {
        const json_t *rows = json_rows(json, courses[i]), *row = json_array_get(rows, 0);
        const json_t *held = json_object_get(row, "rides_to");
        CHECK(json_array_size(rows) == 1 && strcmp(json_text(row, "pin"), "A") == 0);
        CHECK(json_is_null(held) || json_number_value(held) > 0.0);
        for (size_t k = 1; k <= 6; k++) {
            char swims[20], factor[20];
            snprintf(swims, sizeof swims, "swims_%zu", k);
            snprintf(factor, sizeof factor, "factor_%zu", k);
            CHECK(json_is_number(json_object_get(row, swims)));
            CHECK(json_number_value(json_object_get(row, swims)) >= 0.0);
            CHECK(json_number_value(json_object_get(row, factor)) > 1.0);
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
