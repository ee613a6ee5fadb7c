// test_command_caution.c - claims about the cautions: they stand wherever a set-up is recommended.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <string.h>

#include "test/command_answers.h"

#define KNOWN(wind) " --set person.puff_known='" wind "' "

// What every one of them must say, whatever the day.
static const char *const always[] = {
    "helmet",      "buoyancy aid",         "Foils cut",        "Do not sail alone", "power line",
    "Local rules", "organising authority", "qualified people",
};

// Whether a caution of a told answer has these words.
static bool cautions_have(const json_t *json, const char *words)
{
    const json_t *line;
    size_t i;
    json_array_foreach(json_object_get(json, "cautions"), i, line)
    {
        if (strstr(json_string_value(line), words)) return true;
    }
    return false;
}

TEST_FUNCTION(cautions_stand_wherever_a_set_up_is_recommended)
{
    static const char *const asked[] = {
        "pick" DEMO,
        "pick --against main_foil.span='1.0 m'" DEMO,
        "hold --pin A --left '3 nmi'" DEMO,
        "range --pin B" DEMO,
        "swims --pin B" DEMO,
    };
    for (size_t i = 0; i < sizeof asked / sizeof asked[0]; i++) {
        json_t *json = json_answer(asked[i]);
        for (size_t k = 0; k < sizeof always / sizeof always[0]; k++) {
            CHECK(cautions_have(json, always[k]));
        }
        json_decref(json);
    }
}

TEST_FUNCTION(cautions_are_shown_in_text_too)
{
    static const char *const asked[] = {
        "pick --against main_foil.span='1.0 m'" DEMO,
        "range --pin B" DEMO,
        "swims --pin B" DEMO,
    };
    for (size_t i = 0; i < sizeof asked / sizeof asked[0]; i++) {
        CHECK(lullwise(asked[i]) == 0);
        CHECK(answer_has("Take care") && answer_has("Foils cut") && widest_line() <= 80);
    }
}

// The demo day's puffs are 15.5 kn.
TEST_FUNCTION(puffs_above_those_that_the_sailor_knows_are_cautioned_against)
{
    json_t *json = json_answer("range --pin B" KNOWN("12 kn") DEMO);
    CHECK(cautions_have(json, "Puffs of 15.5 kn are 3.5 kn more than this sailor"));
    CHECK(cautions_have(json, "(12.0 kn)"));
    json_decref(json);
}

TEST_FUNCTION(puffs_that_the_sailor_knows_are_not)
{
    json_t *json = json_answer("range --pin B" KNOWN("15.5 kn") DEMO);
    CHECK(!cautions_have(json, "come home well") && !cautions_have(json, "puff_known"));
    json_decref(json);
}

TEST_FUNCTION(a_sailor_who_does_not_say_what_she_knows_is_asked)
{
    json_t *json = json_answer("range --pin B" KNOWN("0 kn") DEMO);
    CHECK(cautions_have(json, "Has this sailor come home well from puffs of 15.5 kn"));
    CHECK(cautions_have(json, "person.puff_known"));
    json_decref(json);
}

// From 12.5 kn to 18: the demo's puffs of 15.5 kn become 22.3 kn.
TEST_FUNCTION(hold_asks_about_the_puffs_at_the_finish)
{
    json_t *json =
        json_answer("hold --pin A --left '3 nmi' --builds-to '18 kn'" KNOWN("18 kn") DEMO);
    CHECK(cautions_have(json, "Puffs of 22.3 kn are 4.3 kn more"));
    json_decref(json);
}

TEST_FUNCTION(range_asks_about_the_puff_that_it_is_asked_with)
{
    json_t *json = json_answer("range --pin B --puff '6 kn'" KNOWN("18 kn") DEMO);
    CHECK(cautions_have(json, "Puffs of 18.5 kn are 0.5 kn more"));
    json_decref(json);
}

TEST_FUNCTION(of_two_what_counts_for_one_alone_says_for_which)
{
    json_t *json = json_answer("pick --against person.puff_known='12 kn'" DEMO);
    CHECK(cautions_have(json, "Changed: Puffs of 15.5 kn are 3.5 kn more"));
    CHECK(!cautions_have(json, "As it is: ") && !cautions_have(json, "Changed: Foils cut"));
    json_decref(json);
}

TEST_FUNCTION(only_water_near_to_freezing_has_ten_minutes_and_an_hour)
{
    json_t *icy = json_answer("range --pin B --set water.temperature='3 degC'" DEMO);
    json_t *cold = json_answer("range --pin B --set water.temperature='5 degC'" DEMO);
    CHECK(cautions_have(icy, "about 10 minutes") && cautions_have(icy, "about 1 hour"));
    CHECK(!cautions_have(cold, "about 10 minutes") && cautions_have(cold, "takes your breath"));
    CHECK(cautions_have(icy, "for 15 to 30 minutes") && cautions_have(cold, "for 30 to 60 min"));
    json_decref(icy);
    json_decref(cold);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(cautions_stand_wherever_a_set_up_is_recommended),
        TEST(cautions_are_shown_in_text_too),
        TEST(puffs_above_those_that_the_sailor_knows_are_cautioned_against),
        TEST(puffs_that_the_sailor_knows_are_not),
        TEST(a_sailor_who_does_not_say_what_she_knows_is_asked),
        TEST(hold_asks_about_the_puffs_at_the_finish),
        TEST(range_asks_about_the_puff_that_it_is_asked_with),
        TEST(of_two_what_counts_for_one_alone_says_for_which),
        TEST(only_water_near_to_freezing_has_ten_minutes_and_an_hour),
    };
    return RUN_TESTS(tests);
}
