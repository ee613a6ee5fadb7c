// test_command_pick.c - claims about `lullwise pick`.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "test/command_answers.h"

// A number of a row, which must be there.
static double of_row(const json_t *row, const char *key)
{
    const json_t *value = json_object_get(row, key);
    CHECK(json_is_number(value));
    return json_number_value(value);
}

TEST_FUNCTION(pick_ranks_every_pin_and_gives_the_reason_of_each_place)
{
    json_t *json = json_answer("pick" DEMO);
    const json_t *places = json_rows(json, "places"), *why = json_rows(json, "why");
    double before = 0.0;
    CHECK(json_array_size(places) == 4 && json_array_size(why) == 4);
    for (size_t i = 0; i < json_array_size(places); i++) {
        const json_t *place = json_array_get(places, i), *reason = json_array_get(why, i);
        CHECK(strcmp(json_text(place, "pin"), json_text(reason, "pin")) == 0);
        CHECK(strlen(json_text(reason, "sentence")) > 20);
        CHECK(of_row(place, "seconds") >= before);
        before = of_row(place, "seconds");
    }
    CHECK(json_array_size(json_object_get(json, "order_less_wind")) == 4);
    CHECK(json_array_size(json_object_get(json, "order_more_wind")) == 4);
    CHECK(json_array_size(json_rows(json, "less_lift")) == 3);
    json_decref(json);
}

TEST_FUNCTION(pick_says_aloud_what_the_ranking_rests_on)
{
    CHECK(lullwise("pick" DEMO) == 0);
    CHECK(answer_has("is best for this aim") && answer_has("2 kn less") && answer_has("2 kn more"));
    CHECK(answer_has("One pin with less lift") && answer_has("turns from the reference mark"));
    CHECK(answer_has("Local rules"));
}

#define FORECAST                                                            \
    "--set wind.lull='0 kn' --set wind.mean='0 kn' --set wind.puff='0 kn' " \
    "--set forecast.mean='14 kn' "

TEST_FUNCTION(a_forecast_says_how_lull_mean_and_puff_came_of_it)
{
    json_t *json = json_answer("pick" DEMO FORECAST);
    const char *const keys[] = {"lull", "mean", "puff"};
    const char *origin = json_text(json, "wind_origin");
    for (int i = 0; i < 3; i++) {
        char wind[24];
        snprintf(wind, sizeof wind, " %.1f kn", json_number(json, "wind", keys[i]));
        CHECK(strstr(origin, wind) != NULL);
    }
    CHECK(strstr(origin, "14.0 kn at 10 m, gusts by the exposure (off-land)") != NULL);
    json_decref(json);
    CHECK(lullwise("pick" DEMO FORECAST "--set forecast.gust='19 kn'") == 0);
    CHECK(answer_has("From a forecast of 14.0 kn at 10 m, gusts 19.0 kn"));
    CHECK(lullwise("pick" DEMO) == 0 && !answer_has("forecast"));
}

// Lines and numbers of the same thing: what counts is the lesser of two limits.
TEST_FUNCTION(swims_come_with_their_error_and_the_hold_with_both_its_limits)
{
    CHECK(lullwise("pick" DEMO) == 0);
    CHECK(answer_has(" ± ") && answer_has("Held to, in puffs: by margins and by rides"));
    json_t *json = json_answer("pick" DEMO);
    const json_t *places = json_rows(json, "places"), *holds = json_rows(json, "holds");
    for (size_t i = 0; i < json_array_size(places); i++) {
        const json_t *place = json_array_get(places, i), *hold = json_array_get(holds, i);
        const double held = of_row(place, "held_up_to");
        const double margins = of_row(hold, "margins_to"), rides = of_row(hold, "rides_to");
        CHECK(strcmp(json_text(place, "pin"), json_text(hold, "pin")) == 0);
        CHECK(of_row(place, "swims") >= 0.0 && of_row(place, "swims_error") > 0.0);
        CHECK(held <= margins + 1e-9 && held >= fmin(margins, rides) - 1e-9);
        if (json_is_true(json_object_get(hold, "ends_by_rides"))) CHECK_NEAR(held, rides, 1e-9);
    }
    CHECK(json_array_size(places) == 4 && json_array_size(holds) == 4);
    json_decref(json);
}

// Behind by less than two errors, and no chance that is a certainty.
TEST_FUNCTION(places_nearer_than_two_errors_are_too_close_to_call)
{
    json_t *json = json_answer("pick" DEMO "--set cost.swim='90 s'");
    const json_t *places = json_rows(json, "places"), *why = json_rows(json, "why");
    const json_t *sure = json_rows(json, "order_sure");
    CHECK(json_array_size(sure) + 1 == json_array_size(places) && json_array_size(sure) > 0);
    for (size_t i = 0; i < json_array_size(sure); i++) {
        const json_t *row = json_array_get(sure, i), *ahead = json_array_get(places, i);
        const json_t *place = json_array_get(places, i + 1), *reason = json_array_get(why, i + 1);
        const double behind = of_row(row, "behind"), error = of_row(row, "behind_error");
        const double chance = of_row(row, "behind_chance");
        const bool is_close = json_is_true(json_object_get(row, "is_close"));
        CHECK_NEAR(behind, of_row(place, "seconds") - of_row(ahead, "seconds"), 1e-6);
        CHECK(error > 0.0 && is_close == (behind < 2.0 * error));
        CHECK(chance >= 50.0 && chance < 100.0);
        CHECK(is_close == (strstr(json_text(reason, "sentence"), "too close to call") != NULL));
    }
    json_decref(json);
    CHECK(lullwise("pick" DEMO) == 0);
    CHECK(answer_has("How sure the order is") && answer_has("by rides") && answer_has("not known"));
    CHECK(!answer_has("over 99 %") && !answer_has("behind: 100 %"));
}

// What there is none of is null in JSON and "none" in words.
TEST_FUNCTION(no_wind_and_no_time_are_null_and_none)
{
    CHECK(lullwise("pick" DEMO CALM "--set person.mass='120 kg' --json 2>/dev/null | cat") == 0);
    json_t *json = json_loads(answer, 0, NULL);
    const json_t *places = json_rows(json, "places");
    const double puff = json_number(json, "wind", "puff");
    CHECK(json_array_size(places) == 4 && json_array_size(json_rows(json, "turns")) == 0);
    for (size_t i = 0; i < json_array_size(places); i++) {
        const json_t *place = json_array_get(places, i);
        static const char *const winds[] = {"launches_at", "stays_up_at", "held_up_to"};
        for (size_t k = 0; k < 3; k++) {
            const json_t *wind = json_object_get(place, winds[k]);
            CHECK(json_is_null(wind) || json_number_value(wind) > 0.0);
        }
        const json_t *held = json_object_get(place, "held_up_to");
        const bool is_held = json_is_number(held) && json_number_value(held) >= puff;
        CHECK(is_held == json_is_true(json_object_get(place, "is_held")));
        CHECK(json_is_false(json_object_get(place, "flies")));
    }
    json_decref(json);
    CHECK(lullwise("pick" DEMO "--set main_foil.span='50 cm' --set wind.puff='16 kn'") >= 0);
    CHECK(!answer_has(" 0.0 kn") && answer_has("none"));
}

TEST_FUNCTION(the_risk_of_a_puff_is_no_key)
{
    CHECK(lullwise("pick" DEMO "--set cost.puff_risk='3 %'") == 2);
    CHECK(answer_has("(cost.puff_risk): there is no"));
}

TEST_FUNCTION(a_pin_that_cannot_be_held_is_told_with_both_winds)
{
    CHECK(lullwise("pick" DEMO "--set wind.puff='24 kn' --set wind.mean='18 kn' "
                   "--set wind.lull='14 kn'") == 0);
    CHECK(answer_has("cannot be held in the puffs: held to ") && answer_has("puffs 24.0 kn"));
    CHECK(answer_has("ends it:"));
}

// Before any table, with the pin that holds most.
TEST_FUNCTION(in_a_wind_that_no_pin_holds_pick_says_so_first_and_what_would)
{
    CHECK(lullwise("pick" DEMO GALE) == 0);
    const char *first = strstr(answer, "No pin holds this wind");
    CHECK(first && first < strstr(answer, "takes off") && answer_has("holds most"));
    json_t *json = json_answer("pick" DEMO GALE);
    CHECK_TEXT(json_text(json, "headline"), "No pin holds this wind");
    CHECK(json_is_false(json_object_get(json, "any_holds")));
    CHECK(strstr(json_text(json, "would"), "What ends it"));
    json_decref(json);
    json = json_answer("pick" DEMO);
    CHECK(strncmp(json_text(json, "headline"), "Pin ", 4) == 0);
    CHECK(json_text(json, "would")[0] == '\0' && strstr(json_text(json, "line"), "turns: lull"));
    json_decref(json);
}

TEST_FUNCTION(when_nothing_flies_pick_ends_with_one_and_says_how_much_wind_it_takes)
{
    CHECK(lullwise("pick" DEMO CALM) == 1);
    CHECK(answer_has("Nothing flies in puffs of 5.0 kn") && answer_has("would have to"));
}

TEST_FUNCTION(text_keeps_within_a_narrow_terminal)
{
    CHECK(lullwise("--version; COLUMNS=50 '" LW_PROGRAM "' pick" DEMO "| sed -n '/^Why/,/^How/p' | "
                   "awk 'length > 50 { exit 1 }'") == 0);
}

TEST_FUNCTION(a_wrong_aim_or_key_ends_with_two)
{
    CHECK(lullwise("pick" DEMO "--aim rase") == 2 && answer_has("race"));
    CHECK(lullwise("pick" DEMO "--against mian_foil.span='1 m'") == 2 && answer_has("main_foil"));
    CHECK(lullwise("pick" DEMO "--set main_foil.span=1") == 2);
}

TEST_FUNCTION(cold_water_is_cautioned_against_and_warm_water_is_not)
{
    CHECK(lullwise("pick" DEMO "--set water.temperature='8 degC' --set air.temperature='6 degC'") ==
          0);
    CHECK(answer_has("takes your breath") && answer_has("chills"));
    CHECK(lullwise("pick" DEMO "--set water.temperature='24 degC' --set air.temperature='25 "
                   "degC'") == 0);
    CHECK(!answer_has("takes your breath") && !answer_has("chills"));
}

TEST_FUNCTION(the_text_fits_eighty_columns_and_has_no_colour_in_a_pipe)
{
    static const char *const runs[] = {"pick" DEMO, "pick" DEMO "--aim easy", "pick" DEMO CALM,
                                       "pick --help", "pick --against pins.A=9deg"};
    for (size_t i = 0; i < sizeof runs / sizeof runs[0]; i++) {
        CHECK(lullwise(runs[i]) >= 0);
        CHECK(widest_line() <= 80);
        CHECK(!answer_has("\033"));
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(pick_ranks_every_pin_and_gives_the_reason_of_each_place),
        TEST(pick_says_aloud_what_the_ranking_rests_on),
        TEST(a_forecast_says_how_lull_mean_and_puff_came_of_it),
        TEST(swims_come_with_their_error_and_the_hold_with_both_its_limits),
        TEST(places_nearer_than_two_errors_are_too_close_to_call),
        TEST(no_wind_and_no_time_are_null_and_none),
        TEST(the_risk_of_a_puff_is_no_key),
        TEST(a_pin_that_cannot_be_held_is_told_with_both_winds),
        TEST(in_a_wind_that_no_pin_holds_pick_says_so_first_and_what_would),
        TEST(when_nothing_flies_pick_ends_with_one_and_says_how_much_wind_it_takes),
        TEST(text_keeps_within_a_narrow_terminal),
        TEST(a_wrong_aim_or_key_ends_with_two),
        TEST(cold_water_is_cautioned_against_and_warm_water_is_not),
        TEST(the_text_fits_eighty_columns_and_has_no_colour_in_a_pipe),
    };
    return RUN_TESTS(tests);
}
