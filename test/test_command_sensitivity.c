// test_command_sensitivity.c - claims about `lullwise sensitivity`, alone and after check.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "test/command_answers.h"

#define FILES " " LW_DEMO_DIR "/heron.yaml " LW_DEMO_DIR "/light.yaml " LW_DEMO_DIR "/breeze.yaml"

TEST_FUNCTION(sensitivity_answers_what_check_tells_at_its_end)
{
    json_t *check = json_answer("check --sensitivity" FILES);
    json_t *alone = json_answer("sensitivity" DEMO);
    const json_t *rows = json_rows(alone, "measurements");
    CHECK(json_is_true(json_object_get(alone, "flies")) && json_array_size(rows) > 50);
    CHECK(json_is_number(json_object_get(json_array_get(rows, 0), "hold_change")));
    CHECK(json_equal(json_object_get(check, "sensitivity"), alone));
    json_decref(check);
    json_decref(alone);
}

TEST_FUNCTION(check_tells_which_measurements_matter_most)
{
    CHECK(lullwise("check --sensitivity" FILES) == 0 && widest_line() <= 80);
    CHECK(answer_has("What matters most"));
    CHECK(answer_has("Main foil: smooth") && !answer_has("main_foil.smooth"));
}

TEST_FUNCTION(sensitivity_has_no_answer_where_nothing_flies)
{
    CHECK(lullwise("sensitivity" DEMO CALM) == 1);
    CHECK(answer_has("nothing flies"));
    CHECK(!answer_has("measurement "));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(sensitivity_answers_what_check_tells_at_its_end),
        TEST(check_tells_which_measurements_matter_most),
        TEST(sensitivity_has_no_answer_where_nothing_flies),
    };
    return RUN_TESTS(tests);
}
