// test_command_ride.c - claims about `lullwise ride`.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <math.h>
#include <unistd.h>

#include "lullwise/ride.h"
#include "test/command_answers.h"

// A strong pin in too much wind: much happens.
#define WILD "ride" DEMO "--pin A --wind 17kn --course downwind --minutes 3 --every '3 s' "
#define MANY "ride" DEMO "--pin B --course reach --minutes 1 "

TEST_FUNCTION(the_same_seed_is_the_same_ride_and_another_seed_another)
{
    json_t *one = json_answer(WILD "--seed 7"), *same = json_answer(WILD "--seed 7");
    json_t *other = json_answer(WILD "--seed 8");
    CHECK(json_array_size(json_rows(one, "history")) == 61);
    CHECK(json_equal(json_rows(one, "history"), json_rows(same, "history")));
    CHECK(json_equal(json_rows(one, "events"), json_rows(same, "events")));
    CHECK(!json_equal(json_rows(one, "history"), json_rows(other, "history")));
    json_decref(one);
    json_decref(same);
    json_decref(other);
}

TEST_FUNCTION(a_ride_begins_in_the_steady_flight_of_the_mean_wind)
{
    json_t *fly = json_answer("fly" DEMO "--pin B --heading 100deg");
    json_t *ride = json_answer("ride" DEMO "--pin B --heading 100deg --minutes 0.1");
    const json_t *row = json_array_get(json_rows(ride, "history"), 0);
    static const char *const keys[] = {"ride_height", "heel", "turns", "flap"};
    for (size_t i = 0; i < sizeof keys / sizeof keys[0]; i++) {
        CHECK_NEAR(json_number_value(json_object_get(row, keys[i])),
                   json_number(fly, "flight", keys[i]), keys[i][0] == 'f' ? 3.0 : 1e-6);
    }  // the flap answers the first wave at once
    json_decref(fly);
    json_decref(ride);
}

TEST_FUNCTION(the_history_has_a_row_from_beginning_to_end_as_often_as_asked)
{
    json_t *json = json_answer("ride" DEMO "--minutes 1 --every '0.5 s'");
    const json_t *history = json_rows(json, "history");
    CHECK(json_array_size(history) == 121);
    for (size_t i = 0; i < json_array_size(history); i++) {
        const json_t *row = json_array_get(history, i);
        CHECK_NEAR(json_number_value(json_object_get(row, "time")), 0.5 * (double)i, 1e-9);
    }
    json_decref(json);
}

TEST_FUNCTION(csv_and_json_tell_the_same_history)
{
    char number[64];
    json_t *json = json_answer(WILD);
    const json_t *history = json_rows(json, "history");
    CHECK(lullwise(WILD "--csv /dev/stdout --force | sed -n '/^time \\[s\\]/,$p'") == 0);
    CHECK(answer_has("ride_height [cm]") && answer_has("pitch [deg]"));
    char *at = strchr(answer, '\n');
    for (size_t i = 0; i < json_array_size(history); i++, at = strchr(at + 1, '\n')) {
        CHECK(at != NULL);
        const json_t *row = json_array_get(history, i);
        snprintf(number, sizeof number, "%.7g,%.7g,",
                 json_number_value(json_object_get(row, "time")),
                 json_number_value(json_object_get(row, "wind")));
        CHECK(strncmp(at + 1, number, strlen(number)) == 0);
    }
    json_decref(json);
}

TEST_FUNCTION(events_come_in_order_and_their_number_is_the_rate)
{
    json_t *json = json_answer(WILD);
    const json_t *events = json_rows(json, "events");
    double last = 0.0, swims = 0.0;
    CHECK(json_array_size(events) > 0);
    for (size_t i = 0; i < json_array_size(events); i++) {
        const json_t *event = json_array_get(events, i);
        const double time = json_number_value(json_object_get(event, "time"));
        CHECK(time >= last && time <= 180.0);
        CHECK(json_text(event, "what")[0] && json_text(event, "says")[0]);
        if (json_is_true(json_object_get(event, "is_swim"))) swims += 1.0;
        last = time;
    }
    CHECK_NEAR(json_number(json, "rates", "swims"), 20.0 * swims, 1e-6);  // 3 minutes to the hour
    CHECK(json_text(json, "stands")[0]);
    json_decref(json);
}

TEST_FUNCTION(one_of_many_rides_is_the_ride_of_its_seed)
{
    json_t *many = json_answer(MANY "--runs 11 --seed 5"),
           *one = json_answer(MANY "--every 9s --seed 15");
    const json_t *rides = json_rows(many, "rides"), *ride = json_array_get(rides, 10);
    CHECK(json_array_size(rides) == 11 && json_number_value(json_object_get(ride, "seed")) == 15.0);
    for (size_t i = 0; i < lw_ride_rates_table.count; i++) {
        const char *key = lw_ride_rates_table.rows[i].key;
        const json_t *rate = json_object_get(json_object_get(one, "rates"), key);
        CHECK(json_is_number(rate) && json_equal(json_object_get(ride, key), rate));
    }
    json_decref(many);
    json_decref(one);
}

static double speed_of(const json_t *rides, size_t i)
{
    const json_t *speed = json_object_get(json_array_get(rides, i), "speed");
    CHECK(json_is_number(speed));
    return json_number_value(speed);
}

TEST_FUNCTION(mean_and_standard_error_are_those_of_the_rides)
{
    json_t *many = json_answer(MANY "--runs 9");
    const json_t *rides = json_rows(many, "rides");
    double sum = 0.0, squares = 0.0;
    for (size_t i = 0; i < 9; i++) sum += speed_of(rides, i);
    for (size_t i = 0; i < 9; i++) {
        const double off = speed_of(rides, i) - sum / 9.0;
        squares += off * off;
    }
    CHECK_RELATIVE(json_number(many, "mean", "speed"), sum / 9.0, 1e-9);
    CHECK_RELATIVE(json_number(many, "error", "speed"), sqrt(squares / 8.0 / 9.0), 1e-6);
    json_decref(many);
}

TEST_FUNCTION(what_never_happened_has_the_error_of_one_event)
{
    lw_ride_sample sample = {0};
    const lw_ride_tally tally = {.seconds = 600.0, .flying = 600.0, .distance = 3600.0};
    for (int i = 0; i < 12; i++) lw_ride_sample_add(&sample, &tally);  // two hours
    const lw_ride_rates error = lw_ride_sample_error(&sample);
    CHECK_RELATIVE(3600.0 * error.swims, 0.5, 1e-12);
    CHECK_NEAR(error.speed, 0.0, 1e-12);
    CHECK(!lw_ride_sample_is_sure(&sample, 0.05) && lw_ride_sample_is_sure(&sample, 0.2));
}

TEST_FUNCTION(many_rides_end_early_when_all_is_known_and_on_the_same_ride)
{
    json_t *one = json_answer(MANY "--runs 2000 --error '100 %'");
    json_t *same = json_answer(MANY "--runs 2000 --error '100 %'");
    CHECK(json_is_true(json_object_get(one, "is_sure")));
    CHECK(json_array_size(json_rows(one, "rides")) < 2000);
    CHECK(json_equal(one, same));
    json_decref(one);
    json_decref(same);
}

TEST_FUNCTION(the_picture_names_every_kind_of_event_that_happened)
{
    json_t *json = json_answer(WILD);
    char path[] = "/tmp/lw-ride-XXXXXX", words[1000];
    const int file = mkstemp(path);
    CHECK(file >= 0);
    close(file);
    snprintf(words, sizeof words, WILD "--svg %s --force >/dev/null; cat %s", path, path);
    CHECK(lullwise(words) == 0);
    CHECK(answer_has("</svg>") && answer_has("wind [kn]") && answer_has("pitch, bow up [°]"));
    const json_t *events = json_rows(json, "events");
    for (size_t i = 0; i < json_array_size(events); i++) {
        char text[100];
        const char *says = json_text(json_array_get(events, i), "says");
        snprintf(text, sizeof text, "%s (", says);
        CHECK(answer_has(text));
    }
    unlink(path);
    json_decref(json);
}

TEST_FUNCTION(a_ride_that_cannot_be_kept_is_not_sailed)
{
    CHECK(lullwise("ride" DEMO "--csv " LW_DEMO_DIR "/light.yaml") == 2);
    CHECK(answer_has("there already") && !answer_has("Flew"));
    CHECK(lullwise("ride" DEMO "--svg /nowhere/ride.svg") == 2 && !answer_has("Flew"));
}

TEST_FUNCTION(seeds_below_none_are_refused)
{
    CHECK(lullwise("ride" DEMO "--seed -1") == 2 && answer_has("--seed"));
    CHECK(lullwise("ride" DEMO "--seed -1e-300") == 2);
}

TEST_FUNCTION(many_rides_stopped_before_the_first_say_that_nothing_was_sailed)
{
    char line[1000];
    snprintf(line, sizeof line,
             "--version >/dev/null; timeout --foreground --preserve-status -s INT 1 '%s' ride" DEMO
             "--minutes 1440 --runs 1000",
             LW_PROGRAM);
    CHECK(lullwise(line) == 1);
    CHECK(answer_has("nothing was sailed"));
}

TEST_FUNCTION(an_interrupted_ride_ends_with_what_there_is)
{
    char line[1000];
    snprintf(line, sizeof line,
             "--version >/dev/null; timeout --foreground --preserve-status -s INT 2 '%s' ride" DEMO
             "--minutes 1440",
             LW_PROGRAM);
    CHECK(lullwise(line) == 0);
    CHECK(answer_has("Stopped at ") && answer_has("made good"));
}

TEST_FUNCTION(wrong_input_ends_with_two_and_says_what_is_allowed)
{
    CHECK(lullwise("ride" DEMO "--course sideways") == 2 && answer_has("downwind"));
    CHECK(lullwise("ride" DEMO "--seed 1.5") == 2 && answer_has("whole"));
    CHECK(lullwise("ride" DEMO "--runs 5 --csv x.csv") == 2 && answer_has("one ride"));
    CHECK(lullwise("ride" DEMO "--minutes 0") == 2);
    CHECK(lullwise("ride" DEMO "--pin Z") == 2 && answer_has("it has A"));
}

TEST_FUNCTION(the_text_fits_eighty_columns_and_has_no_colour_in_a_pipe)
{
    static const char *const runs[] = {WILD,
                                       MANY,
                                       MANY "--runs 8",
                                       "ride --help",
                                       "ride" DEMO "--wind 5kn --minutes 1",
                                       "ride" DEMO "--heading 5deg --minutes 1"};
    for (size_t i = 0; i < sizeof runs / sizeof runs[0]; i++) {
        CHECK(lullwise(runs[i]) == 0);
        CHECK(widest_line() <= 80);
        CHECK(!answer_has("\033"));
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(the_same_seed_is_the_same_ride_and_another_seed_another),
        TEST(a_ride_begins_in_the_steady_flight_of_the_mean_wind),
        TEST(the_history_has_a_row_from_beginning_to_end_as_often_as_asked),
        TEST(csv_and_json_tell_the_same_history),
        TEST(events_come_in_order_and_their_number_is_the_rate),
        TEST(one_of_many_rides_is_the_ride_of_its_seed),
        TEST(mean_and_standard_error_are_those_of_the_rides),
        TEST(what_never_happened_has_the_error_of_one_event),
        TEST(many_rides_end_early_when_all_is_known_and_on_the_same_ride),
        TEST(the_picture_names_every_kind_of_event_that_happened),
        TEST(a_ride_that_cannot_be_kept_is_not_sailed),
        TEST(seeds_below_none_are_refused),
        TEST(many_rides_stopped_before_the_first_say_that_nothing_was_sailed),
        TEST(an_interrupted_ride_ends_with_what_there_is),
        TEST(wrong_input_ends_with_two_and_says_what_is_allowed),
        TEST(the_text_fits_eighty_columns_and_has_no_colour_in_a_pipe),
    };
    return RUN_TESTS(tests);
}
