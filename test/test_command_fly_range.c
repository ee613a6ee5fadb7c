// test_command_fly_range.c - claims about `lullwise fly` and `lullwise range`.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <string.h>

#include "test/command_answers.h"

TEST_FUNCTION(fly_names_what_runs_out_first)
{
    CHECK(lullwise("fly" DEMO "--pin B --heading '100 deg'") == 0);
    CHECK(answer_has("First to run out") && answer_has("cm above the water"));
    json_t *json = json_answer("fly" DEMO "--pin B --heading '100 deg'");
    CHECK_TEXT(json_text(json, "outcome"), "flies");
    CHECK_TEXT(json_text(json, "pin"), "B");
    const json_t *first = json_array_get(json_rows(json, "margins"), 0);
    CHECK_TEXT(json_text(json_object_get(json, "answer"), "first_to_run_out"),
               json_text(first, "margin"));
    CHECK(json_number(json, "flight", "residual") < 1e-9);
    json_decref(json);
}

TEST_FUNCTION(fly_winds_the_rudder_for_speed_or_as_asked)
{
    json_t *level = json_answer("fly" DEMO "--pin B --heading 100deg --trim level");
    json_t *speed = json_answer("fly" DEMO "--pin B --heading 100deg");
    json_t *hold = json_answer("fly" DEMO "--pin B --heading 100deg --trim hold");
    CHECK_NEAR(json_number(level, "flight", "pitch"), 0.0, 1e-9);
    CHECK(json_number(speed, "flight", "speed") >= json_number(level, "flight", "speed") - 0.01);
    CHECK_NEAR(json_number(hold, "flight", "turns"),
               json_number(speed, "answer", "turns_that_hold_most"), 1e-9);
    CHECK_TEXT(json_text(json_object_get(hold, "answer"), "trim"), "hold");
    CHECK(lullwise("fly" DEMO "--trim sideways") == 2 && answer_has("speed, hold or level"));

    char words[900];
    snprintf(words, sizeof words, "fly" DEMO "--pin B --heading 100deg --turns '%.3f turns'",
             json_number(level, "flight", "turns") + 0.5);
    json_t *wound = json_answer(words);  // rudder lift on puts the bow down
    CHECK(json_number(wound, "flight", "pitch") < -0.05);
    json_decref(level);
    json_decref(speed);
    json_decref(hold);
    json_decref(wound);
}

TEST_FUNCTION(fly_and_range_tell_turns_for_speed_and_turns_that_hold_most)
{
    CHECK(lullwise("fly" DEMO "--pin B --heading 100deg") == 0 && answer_has("hold most"));
    CHECK(lullwise("range" DEMO "--pin B") == 0 && answer_has("most") && answer_has("speed"));
}

// What fly tells of a wind is what range tells of it, for every pin and course.
TEST_FUNCTION(fly_finds_the_flights_of_range)
{
    json_t *range = json_answer("range" DEMO);
    const json_t *one;
    size_t i;
    int compared = 0;
    json_array_foreach(json_rows(range, "flights"), i, one)
    {
        const int kn = (int)i % 31 + 4;
        char words[900];
        CHECK_NEAR(json_number_value(json_object_get(one, "wind")), kn, 1e-9);
        if (kn < 9 || kn > 21 || (kn - 9) % 4 != 0) continue;
        if (!json_is_true(json_object_get(one, "flies"))) continue;
        snprintf(words, sizeof words, "fly" DEMO "--pin %s --course %s --wind %dkn",
                 json_text(one, "pin"), json_text(one, "course"), kn);
        json_t *flown = json_answer(words);
        CHECK_NEAR(json_number(flown, "flight", "speed"),
                   json_number_value(json_object_get(one, "speed")), 1e-9);
        json_decref(flown);
        compared++;
    }
    CHECK(compared > 40);
    json_decref(range);
}

TEST_FUNCTION(the_turns_heel_and_place_found_give_the_same_flight)
{
    json_t *found = json_answer("fly" DEMO "--pin B --heading 100deg");
    char words[900];
    snprintf(words, sizeof words,
             "fly" DEMO
             "--pin B --heading 100deg --turns '%.9f turns' --heel '%.9f deg' "
             "--place '%.9f m'",
             json_number(found, "flight", "turns"), json_number(found, "flight", "heel"),
             json_number(found, "flight", "place_x"));
    json_t *again = json_answer(words);
    static const char *const keys[][2] = {{"flight", "speed"},
                                          {"flight", "ride_height"},
                                          {"flight", "flap"},
                                          {"forces", "main_lift"}};
    for (size_t i = 0; i < sizeof keys / sizeof keys[0]; i++) {
        CHECK_RELATIVE(json_number(again, keys[i][0], keys[i][1]),
                       json_number(found, keys[i][0], keys[i][1]), 1e-5);
    }
    json_decref(found);
    json_decref(again);
}

TEST_FUNCTION(port_tack_mirrors_starboard_tack)
{
    json_t *one = json_answer("fly" DEMO "--pin B --heading 100deg");
    json_t *other = json_answer("fly" DEMO "--pin B --heading=-100deg");
    CHECK(strstr(json_text(other, "question"), "port is its mirror") != NULL);
    json_object_del(one, "question");
    json_object_del(other, "question");
    CHECK(json_equal(one, other));
    json_decref(one);
    json_decref(other);
}

// A margin that is used up is on top, and what happens then stands beside it.
TEST_FUNCTION(fly_tells_margins_in_their_order_and_what_ends_a_flight)
{
    json_t *json = json_answer("fly" DEMO "--pin A --wind 18kn --heading 100deg --turns 0turns");
    const json_t *rows = json_rows(json, "margins"), *row;
    double before = -1e9;
    size_t i;
    CHECK(json_is_false(json_object_get(json_object_get(json, "answer"), "keeps_margins")));
    json_array_foreach(rows, i, row)
    {
        const double scales = json_number_value(json_object_get(row, "scales"));
        CHECK(scales >= before);
        CHECK(json_is_string(json_object_get(row, "end")) == (scales < 0.0));
        before = scales;
    }
    CHECK(i == 14);
    json_decref(json);
}

TEST_FUNCTION(fly_on_the_hull_says_what_to_try)
{
    json_t *json = json_answer("fly" DEMO "--wind 5kn");
    CHECK(strstr(json_text(json_object_get(json, "answer"), "advice"), "Steady flight") != NULL);
    CHECK(json_number(json, "answer", "stays_up_at") > 5.0);
    CHECK(lullwise("fly" DEMO "--wind 5kn") == 0);
    CHECK(answer_has("buoyancy of hull") && !answer_has("Margins left"));
    json_decref(json);
}

TEST_FUNCTION(fly_without_a_balance_ends_with_one_and_says_what_to_try)
{
    CHECK(lullwise("fly" DEMO "--heading 5deg") == 1);
    CHECK(answer_has("No steady balance") && answer_has("bear away"));
}

TEST_FUNCTION(wrong_input_ends_with_two_and_says_what_is_allowed)
{
    CHECK(lullwise("fly" DEMO "--pin Z") == 2 && answer_has("it has A"));
    CHECK(lullwise("fly" DEMO "--turns '20 turns'") == 2 && answer_has("thread"));
    CHECK(lullwise("fly" DEMO "--place '4 m'") == 2 && answer_has("the boat"));
    CHECK(lullwise("fly" DEMO "--wind 12") == 2 && answer_has("kn"));
    CHECK(lullwise("range" DEMO "--puff '3 kg'") == 2 && answer_has("kn"));
    CHECK(lullwise("range --boat nowhere.yaml") == 2 && answer_has("nowhere.yaml"));
}

static const char *const courses[] = {"upwind", "reach", "downwind"};

TEST_FUNCTION(range_answers_every_pin_on_every_course)
{
    json_t *json = json_answer("range" DEMO);
    const json_t *row;
    size_t i;
    for (int course = 0; course < 3; course++) {
        const json_t *rows = json_rows(json_object_get(json, "ranges"), courses[course]);
        CHECK(json_array_size(rows) == 4);  // pins
        json_array_foreach(rows, i, row)
        {
            const json_t *up = json_object_get(row, "stays_up_at");
            const json_t *held = json_object_get(row, "held_up_to");
            CHECK(json_is_null(held) || json_number_value(up) <= json_number_value(held));
        }
    }
    CHECK(json_array_size(json_rows(json, "flights")) == 4 * 3 * 31);
    json_decref(json);
}

// Of the same pin, in the tables of all and of one.
static void check_rows(const json_t *all, const json_t *one, const char *key, size_t a_pin)
{
    for (int course = 0; course < 3; course++) {
        const json_t *rows = json_rows(json_object_get(all, key), courses[course]);
        const json_t *some = json_rows(json_object_get(one, key), courses[course]);
        CHECK(json_array_size(some) == a_pin);
        for (size_t i = 0; i < a_pin; i++) {
            CHECK(json_equal(json_array_get(some, i), json_array_get(rows, a_pin + i)));
        }
    }
}

TEST_FUNCTION(range_of_one_pin_is_that_of_all)
{
    json_t *all = json_answer("range" DEMO), *one = json_answer("range" DEMO "--pin B");
    const json_t *some = json_rows(one, "flights"), *flights = json_rows(all, "flights");
    check_rows(all, one, "ranges", 1);
    check_rows(all, one, "turns", 2);
    CHECK(json_array_size(some) == 3 * 31);
    for (size_t i = 0; i < 3 * 31; i++) {
        CHECK(json_equal(json_array_get(some, i), json_array_get(flights, 3 * 31 + i)));
    }
    json_decref(all);
    json_decref(one);
}

// The turns told for speed are those of the flights.
TEST_FUNCTION(range_tells_the_turns_of_its_flights)
{
    json_t *json = json_answer("range" DEMO "--pin B");
    const json_t *speed = json_array_get(json_rows(json_object_get(json, "turns"), "reach"), 0);
    CHECK_TEXT(json_text(speed, "wound_for"), "speed");
    const json_t *flight = json_array_get(json_rows(json, "flights"), 31 + 12 - 4);
    CHECK_NEAR(json_number_value(json_object_get(speed, "at_12_kn")),
               json_number_value(json_object_get(flight, "turns")), 1e-12);
    json_decref(json);
}

TEST_FUNCTION(the_text_fits_eighty_columns_and_has_no_colour_in_a_pipe)
{
    static const char *const runs[] = {"range" DEMO,
                                       "fly" DEMO,
                                       "fly" DEMO "--heading 5deg",
                                       "fly" DEMO "--wind 5kn",
                                       "fly" DEMO "--wind 30kn --heading 150deg --pin A",
                                       "fly --help",
                                       "range --help"};
    for (size_t i = 0; i < sizeof runs / sizeof runs[0]; i++) {
        CHECK(lullwise(runs[i]) != 2);
        CHECK(widest_line() <= 80);
        CHECK(!answer_has("\033"));
    }
}

// Significant digits of the longest number in the last answer.
static int most_digits(void)
{
    int most = 0, digits = 0;
    for (const char *at = answer; *at; at++) {
        if (*at >= '0' && *at <= '9')
            digits += digits > 0 || *at != '0';
        else if (*at != '.')
            digits = 0;
        if (digits > most) most = digits;
    }
    return most;
}

TEST_FUNCTION(json_ends_with_a_newline_and_has_twelve_digits_at_most)
{
    CHECK(lullwise("fly --pin B --json" DEMO "2>/dev/null") == 0);
    CHECK(strcmp(answer + strlen(answer) - 2, "}\n") == 0);
    CHECK(most_digits() == 12);
    CHECK(answer_has("null") && !answer_has("nan") && !answer_has("inf"));
}

// The picture's numbers are those of the answer, rounded to whole newtons.
TEST_FUNCTION(fly_draws_the_flight_that_it_tells)
{
    char text[60];
    json_t *json = json_answer("fly" DEMO "--pin B --heading '100 deg'");
    CHECK(lullwise("fly" DEMO "--pin B --heading '100 deg' --svg -") == 0);
    CHECK(strncmp(answer, "<svg", 4) == 0 && answer_has("</svg>") && !answer_has("nan"));
    snprintf(text, sizeof text, "lift %.0f N", json_number(json, "forces", "main_lift"));
    CHECK(answer_has(text));
    snprintf(text, sizeof text, "drive %.0f N", json_number(json, "forces", "drive"));
    CHECK(answer_has(text) && answer_has("Pin B"));
    json_decref(json);
}

TEST_FUNCTION(fly_without_a_balance_draws_its_words)
{
    CHECK(lullwise("fly --pin A --course downwind --wind '22 kn' --svg -" DEMO) == 1);
    CHECK(strncmp(answer, "<svg", 4) == 0 && answer_has("No steady balance was found."));
}

TEST_FUNCTION(range_draws_the_winds_that_it_tells)
{
    char text[60];
    json_t *json = json_answer("range --pin C" DEMO);
    const json_t *reach = json_object_get(json_object_get(json, "ranges"), "reach");
    const json_t *row = json_array_get(json_object_get(reach, "rows"), 0);
    CHECK(lullwise("range --pin C --svg -" DEMO) == 0);
    CHECK(strncmp(answer, "<svg", 4) == 0 && answer_has("</svg>") && !answer_has("nan"));
    CHECK(answer_has(">upwind<") && answer_has(">downwind<") && answer_has(json_text(row, "end")));
    snprintf(text, sizeof text, ">%.1f<", json_number_value(json_object_get(row, "held_up_to")));
    CHECK(answer_has(text));
    json_decref(json);
}

TEST_FUNCTION(a_picture_that_cannot_be_kept_is_refused_before_the_work)
{
    CHECK(lullwise("range --svg /nowhere/winds.svg" DEMO) == 2 && !answer_has("stays up"));
    CHECK(lullwise("fly --svg /nowhere/side.svg" DEMO) == 2 && !answer_has("Steady flight"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(fly_names_what_runs_out_first),
        TEST(fly_winds_the_rudder_for_speed_or_as_asked),
        TEST(fly_finds_the_flights_of_range),
        TEST(fly_and_range_tell_turns_for_speed_and_turns_that_hold_most),
        TEST(the_turns_heel_and_place_found_give_the_same_flight),
        TEST(port_tack_mirrors_starboard_tack),
        TEST(fly_tells_margins_in_their_order_and_what_ends_a_flight),
        TEST(fly_on_the_hull_says_what_to_try),
        TEST(fly_without_a_balance_ends_with_one_and_says_what_to_try),
        TEST(wrong_input_ends_with_two_and_says_what_is_allowed),
        TEST(range_answers_every_pin_on_every_course),
        TEST(range_of_one_pin_is_that_of_all),
        TEST(range_tells_the_turns_of_its_flights),
        TEST(the_text_fits_eighty_columns_and_has_no_colour_in_a_pipe),
        TEST(json_ends_with_a_newline_and_has_twelve_digits_at_most),
        TEST(fly_draws_the_flight_that_it_tells),
        TEST(fly_without_a_balance_draws_its_words),
        TEST(range_draws_the_winds_that_it_tells),
        TEST(a_picture_that_cannot_be_kept_is_refused_before_the_work),
    };
    return RUN_TESTS(tests);
}
