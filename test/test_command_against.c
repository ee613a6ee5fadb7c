// test_command_against.c - claims about two answers side by side, by `--against`.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "test/command_answers.h"

TEST_FUNCTION(against_gives_what_set_would_have_given)
{
    json_t *both = json_answer("pick" DEMO "--against person.mass='85 kg'");
    json_t *set = json_answer("pick" DEMO "--set person.mass='85 kg'");
    CHECK(json_equal(json_object_get(both, "changed"), set));
    CHECK(json_array_size(json_object_get(both, "changes")) == 1);
    json_decref(both);
    json_decref(set);
}

TEST_FUNCTION(against_puts_two_answers_side_by_side)
{
    CHECK(lullwise("pick" DEMO "--against sailor.person.mass='95 kg' --against rod='1 deg'") == 2);
    CHECK(answer_has("--against: fault"));
    CHECK(lullwise("pick" DEMO "--against sailor.person.mass='95 kg' "
                   "--against linkage.rod='1 deg'") == 0);
    CHECK(answer_has("as it is      changed  difference") && answer_has("linkage.rod=1 deg"));
    CHECK(widest_line() <= 80);
}

TEST_FUNCTION(the_change_is_told_in_sentences_from_either_side)
{
    CHECK(lullwise("pick" DEMO "--against person.mass='64 kg'") == 0);
    CHECK(answer_has("first either way") && answer_has("Round the course as long") &&
          answer_has("What ends it is the same"));
    CHECK(lullwise("pick" DEMO "--set person.mass='64 kg' --against person.mass='92 kg'") == 0);
    CHECK(answer_has(" later.") && !answer_has(" sooner."));
    CHECK(lullwise("pick" DEMO "--set person.mass='92 kg' --against person.mass='64 kg'") == 0);
    CHECK(answer_has(" sooner.") && !answer_has(" later."));
    CHECK(lullwise("pick" DEMO "--against wind.lull='4 kn' --against wind.mean='5 kn' --against "
                   "wind.puff='6 kn'") == 0);
    CHECK(answer_has("Changed, she does not fly in the day's winds."));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(against_gives_what_set_would_have_given),
        TEST(against_puts_two_answers_side_by_side),
        TEST(the_change_is_told_in_sentences_from_either_side),
    };
    return RUN_TESTS(tests);
}
