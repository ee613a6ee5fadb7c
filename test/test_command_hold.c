// test_command_hold.c - claims about `lullwise hold`.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <math.h>
#include <string.h>

#include "test/command_answers.h"

TEST_FUNCTION(hold_answers_in_words_before_its_table)
{
    CHECK(lullwise("hold --pin A --left '3 nmi' --builds-to '18 kn'" DEMO "2>/dev/null") == 0);
    CHECK(answer_has("Stop and go to ") || answer_has("Hold A"));
    CHECK(answer_has("break-even") && answer_has("Why") && answer_has("Take care"));
    CHECK(widest_line() <= 80);
}

static double of_pin(const json_t *pin, const char *key)
{
    return json_number_value(json_object_get(pin, key));
}

TEST_FUNCTION(hold_in_json_is_sound_and_a_dearer_stop_saves_less_by_its_cost)
{
    json_t *brief = json_answer("hold --pin B --left '3 nmi' --stop '60 s'" DEMO);
    json_t *dear = json_answer("hold --pin B --left '3 nmi' --stop '300 s'" DEMO);
    CHECK(strcmp(json_text(json_object_get(brief, "answer"), "held"), "B") == 0);
    const json_t *a = json_rows(brief, "pins"), *b = json_rows(dear, "pins");
    CHECK(json_array_size(a) > 1 && json_array_size(a) == json_array_size(b));
    for (size_t i = 0; i < json_array_size(a); i++) {
        const json_t *p = json_array_get(a, i), *q = json_array_get(b, i);
        CHECK(of_pin(p, "to_finish") > 0.0 && of_pin(p, "swims") >= 0.0);
        if (json_is_true(json_object_get(p, "is_held"))) continue;
        CHECK_NEAR(of_pin(p, "saves") - of_pin(q, "saves"), 240.0, 1e-6);
        CHECK(of_pin(p, "chance") >= of_pin(q, "chance"));
    }
    json_decref(brief);
    json_decref(dear);
}

// Rudder lift goes on as the wind builds, and more of it holds more (common practice, no source).
TEST_FUNCTION(what_is_wound_goes_on_as_the_wind_builds)
{
    json_t *json = json_answer("hold --pin A --left '5 nmi' --builds-to '17 kn'" DEMO);
    const json_t *turns = json_rows(json, "turns");
    CHECK(json_array_size(turns) == 4);
    for (size_t i = 0; i < json_array_size(turns); i++) {
        const json_t *row = json_array_get(turns, i);
        CHECK(of_pin(row, "finish") > of_pin(row, "now"));
        CHECK(of_pin(row, "holds_most") > of_pin(row, "finish"));
    }
    json_decref(json);
}

// The same flight asked by itself, in a wind of whole knots.
TEST_FUNCTION(turns_that_hold_most_are_those_of_the_flight)
{
    json_t *flight = json_answer("fly --pin B --wind '12 kn'" DEMO);
    json_t *pick =
        json_answer("pick --set wind.mean=12kn --set wind.lull=9.6kn --set wind.puff=15kn" DEMO);
    const double alone = json_number(flight, "answer", "turns_that_hold_most");
    const json_t *turns = json_rows(pick, "turns");
    for (size_t i = 0; i < json_array_size(turns); i++) {
        const json_t *row = json_array_get(turns, i);
        if (strcmp(json_text(row, "pin"), "B") != 0) continue;
        CHECK_NEAR(of_pin(row, "holds_most"), alone, 0.1);
        CHECK(of_pin(row, "holds_most") > of_pin(row, "mean"));
    }
    json_decref(flight);
    json_decref(pick);
}

TEST_FUNCTION(faults_of_hold_say_what_to_do)
{
    CHECK(lullwise("hold" DEMO "2>&1") == 2);
    CHECK(answer_has("--pin LABEL"));
    CHECK(lullwise("hold --pin Z" DEMO "2>&1") == 2);
    CHECK(answer_has("it has A"));
    CHECK(lullwise("hold --pin B --left '0 nmi'" DEMO "2>&1") == 2);
    CHECK(answer_has("left"));
    CHECK(lullwise("hold --pin B --builds-to '3 nmi'" DEMO "2>&1") == 2);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(hold_answers_in_words_before_its_table),
        TEST(hold_in_json_is_sound_and_a_dearer_stop_saves_less_by_its_cost),
        TEST(what_is_wound_goes_on_as_the_wind_builds),
        TEST(turns_that_hold_most_are_those_of_the_flight),
        TEST(faults_of_hold_say_what_to_do),
    };
    return RUN_TESTS(tests);
}
