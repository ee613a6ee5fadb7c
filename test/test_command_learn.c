// test_command_learn.c - claims about `lullwise learn`, `invent` and --learned.
// SPDX-License-Identifier: MIT

#define _DEFAULT_SOURCE

#include "lullwise/learned.h"
#include "records/record_file.h"
#include "test/command_answers.h"
#include "test/log_folder.h"

#define BOAT " --boat " LW_DEMO_DIR "/heron.yaml --sailor " LW_DEMO_DIR "/light.yaml "
#define DAY  " --day " LW_DEMO_DIR "/breeze.yaml "

TEST_FUNCTION(an_invented_season_is_the_same_from_the_same_seed_and_is_logged_and_tracked)
{
    CHECK(lullwise("invent one --days 1 --seed 3" BOAT DAY) == 0 && answer_has("Nobody sailed"));
    CHECK(lullwise("invent two --days 1 --seed 3" BOAT DAY) == 0);
    CHECK(system("cmp -s one/days.csv two/days.csv && cmp -s one/truth.yaml two/truth.yaml") == 0);
    CHECK(lullwise("invent one --days 1 --seed 3" BOAT DAY) == 1 && answer_has("there already"));
    CHECK(lullwise("log import one/days.csv --logbook one.db") == 0 && answer_has("1 day added"));
    CHECK(lullwise("log show last --logbook one.db") == 0 && answer_has("Invented"));
    CHECK(answer_has("upwind speed"));
    CHECK(lullwise("track one/invented-001.csv") == 0 && answer_has("Wind from"));
}

TEST_FUNCTION(too_little_is_refused_with_what_is_missing)
{
    CHECK(lullwise("log add --logbook few.db --pin B --date 2024-05-17 --set turns.upwind='2 "
                   "turns'" BOAT DAY) == 0);
    CHECK(lullwise("learn --logbook few.db" BOAT) == 1);
    CHECK(answer_has("Too little to learn from: 1 numbers") && answer_has("--track FILE"));
    CHECK(lullwise("learn --logbook few.db --boat " LW_DEMO_DIR "/heron.yaml --sailor " LW_DEMO_DIR
                   "/heavy.yaml") == 1);
    CHECK(answer_has("another weight"));
    CHECK(lullwise("learn --logbook gone.db" BOAT) == 2 && answer_has("log add"));
    CHECK(lullwise("learn --logbook few.db") == 2 && answer_has("of which boat"));
}

static void write_learned(const char *chop)
{
    static const char head[] =
        "boat: Grey Heron (invented)\nhash: 4e5e45fdf2a21f3e\n"
        "learned:\n  main_incidence: 0.5 deg\n  rudder_incidence: 0 deg\n  main_chord: 1\n"
        "  drag_area: 0 m2\n  sail_power: 1\n  skill: 0\n";
    static const char errors[] =
        "errors:\n  main_incidence: 0.1 deg\n  rudder_incidence: 0.1 deg\n  main_chord: 0.01\n"
        "  drag_area: 0.1 m2\n  sail_power: 0.1\n  chop: 0.1\n  skill: 0.1\n"
        "from:\n  days: 6\n  numbers: 18\n";
    FILE *file = fopen("learned.yaml", "w");
    CHECK(file && fprintf(file, "%s  chop: %s\n%s", head, chop, errors) > 0 && fclose(file) == 0);
}

TEST_FUNCTION(what_was_learned_is_put_into_its_boat_and_into_no_other)
{
    write_learned("1");
    CHECK(lullwise("fly --wind '12 kn' --pin B --learned learned.yaml" BOAT) == 0);
    CHECK(answer_has("4.1"));  // 3.6 deg as measured
    CHECK(lullwise("fly --wind '12 kn' --pin B --learned learned.yaml") == 2);
    CHECK(answer_has("another boat"));
}

TEST_FUNCTION(a_file_that_lacks_a_part_is_refused_and_no_command_named_that_is_none)
{
    FILE *file = fopen("part.yaml", "w");
    CHECK(file && fputs("boat: x\nhash: 1\n", file) >= 0 && fclose(file) == 0);
    CHECK(lullwise("fly --wind '12 kn' --learned part.yaml" BOAT) == 2);
    CHECK(answer_has("learned: and its values") && !answer_has("lullwise new"));
}

#define RIDE "ride --pin B --minutes 5 --learned learned.yaml" BOAT DAY

TEST_FUNCTION(chop_that_was_learned_is_that_of_the_rides)
{
    static char calm[sizeof answer];
    write_learned("0.5");
    CHECK(lullwise(RIDE) == 0);
    memcpy(calm, answer, sizeof calm);
    write_learned("0.5");
    CHECK(lullwise(RIDE) == 0 && strcmp(calm, answer) == 0);
    write_learned("1.5");
    CHECK(lullwise(RIDE) == 0 && strcmp(calm, answer) != 0);
}

// --- an invented season, learned from

static void read_kept(const char *path, lw_learned_boat *kept)
{
    lw_faults faults = {0};
    CHECK(lw_record_read_file(&lw_learned_record, path, kept, &faults));
    lw_faults_free(&faults);
}

#define LEARN "learn --logbook season.db" BOAT

// What is learned of it, told once; kept.yaml has it too. The caller drops it.
static json_t *told_of_season(void)
{
    if (access("kept.yaml", R_OK) != 0) {
        CHECK(lullwise("invent season --days 3 --seed 5" BOAT DAY) == 0);
        CHECK(lullwise("log import season/days.csv --logbook season.db") == 0);
        json_t *told = json_answer(LEARN DAY "-o kept.yaml");
        CHECK(json_dump_file(told, "told.json", 0) == 0);
        json_decref(told);
    }
    return json_load_file("told.json", 0, NULL);
}

// Each is known at least as surely as before the days; three standard errors are a chance of one
// in fifty for the seven of them.
static void check_told(const json_t *row, const lw_quantity *quantity, const lw_learned_boat *kept,
                       const lw_learned_boat *truth)
{
    const double unit = lw_unit_in_si(quantity->unit);
    const double error = json_number_value(json_object_get(row, "error")) * unit;
    const double value = json_number_value(json_object_get(row, "value")) * unit;
    CHECK(strcmp(json_text(row, "what"), "") != 0);
    CHECK(error > 0.0 &&
          error <= json_number_value(json_object_get(row, "before_error")) * unit + 1e-9);
    CHECK(fabs(value - lw_quantity_value(quantity, &kept->values)) < 1e-9);
    CHECK(fabs(error - lw_quantity_value(quantity, &kept->errors)) < 1e-9);
    CHECK(fabs(value - lw_quantity_value(quantity, &truth->values)) < 3.0 * error);
}

TEST_FUNCTION(what_a_season_tells_is_told_as_it_is_kept_and_near_what_was_hidden)
{
    lw_learned_boat kept, truth;
    json_t *told = told_of_season();
    read_kept("kept.yaml", &kept);
    read_kept("season/truth.yaml", &truth);
    const json_t *rows = json_rows(told, "learned");
    CHECK(json_is_true(json_object_get(told, "is_learned")) && kept.from.days == 3.0);
    CHECK(json_array_size(rows) == LW_HIDDEN_COUNT);
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++)
        check_told(json_array_get(rows, k), &lw_hidden_table.rows[k], &kept, &truth);
    CHECK(lullwise("fly --wind '12 kn' --pin B --learned kept.yaml" BOAT) == 0);
    json_decref(told);
}

static void write_calm(void)
{
    CHECK(system("sed 's/ lull:.*/ lull: 3 kn/; s/ mean:.*/ mean: 4 kn/; s/ puff:.*/ puff: 5 kn/' "
                 "<" LW_DEMO_DIR "/breeze.yaml >calm.yaml") == 0);
}

// Of each trial, the error that it leaves of what the choice hangs on: the one that tells most
// first, and none that leaves more than there is.
TEST_FUNCTION(with_a_day_it_tells_which_trial_makes_the_choice_most_sure)
{
    json_t *told = told_of_season();
    write_calm();
    const json_t *next = json_object_get(told, "next"), *trials = json_rows(next, "trials");
    double least = 0.0;
    CHECK(strcmp(json_text(next, "first"), json_text(next, "second")) != 0);
    CHECK(json_number(told, "next", "seconds") >= 0.0 && json_array_size(trials) > 5);
    for (size_t i = 0; i < json_array_size(trials); i++) {
        const double error = json_number_value(json_object_get(json_array_get(trials, i), "error"));
        CHECK(error >= least && error <= json_number(told, "next", "error"));
        least = error;
    }
    CHECK(lullwise(LEARN DAY) == 0 && widest_line() <= 80);
    CHECK(answer_has("Learned, with one standard error") && answer_has("What to try next"));
    CHECK(answer_has("Days foreseen without having been learned from"));
    CHECK(lullwise(LEARN "--day calm.yaml") == 0 && answer_has("Give a day with more wind"));
    json_decref(told);
}

// --- seasons of rides, whose hidden quantities are kept beside them: with LW_SOAK

#define SEASONS 20
#define FIRST   81  // seed

// What is learned of one, and what was so.
static void learn_season(int seed, lw_learned_boat *learned, lw_learned_boat *truth)
{
    char words[300];
    CHECK(system("rm -rf season learned.yaml season.db*") == 0);
    snprintf(words, sizeof words, "invent season --seed %d" BOAT DAY, seed);
    CHECK(lullwise(words) == 0);
    CHECK(lullwise("log import season/days.csv --logbook season.db") == 0);
    CHECK(lullwise("learn --logbook season.db -o learned.yaml" BOAT) == 0);
    read_kept("learned.yaml", learned);
    read_kept("season/truth.yaml", truth);
}

TEST_FUNCTION(hidden_quantities_of_ridden_seasons_are_found_within_two_errors)
{
    unsigned within[LW_HIDDEN_COUNT] = {0};
    if (soak_times() == 1) skip();
    for (int season = 0; season < SEASONS; season++) {
        lw_learned_boat learned, truth;
        learn_season(FIRST + season, &learned, &truth);
        for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) {
            const lw_quantity *row = &lw_hidden_table.rows[k];
            const double off =
                lw_quantity_value(row, &learned.values) - lw_quantity_value(row, &truth.values);
            within[k] += fabs(off) <= 2.0 * lw_quantity_value(row, &learned.errors);
        }
    }
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) {
        print_message("%s: within two errors %u of %d\n", lw_hidden_table.rows[k].key, within[k],
                      SEASONS);
        CHECK(within[k] >= SEASONS * 9 / 10);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(an_invented_season_is_the_same_from_the_same_seed_and_is_logged_and_tracked),
        TEST(too_little_is_refused_with_what_is_missing),
        TEST(what_was_learned_is_put_into_its_boat_and_into_no_other),
        TEST(a_file_that_lacks_a_part_is_refused_and_no_command_named_that_is_none),
        TEST(chop_that_was_learned_is_that_of_the_rides),
        TEST(what_a_season_tells_is_told_as_it_is_kept_and_near_what_was_hidden),
        TEST(with_a_day_it_tells_which_trial_makes_the_choice_most_sure),
        TEST(hidden_quantities_of_ridden_seasons_are_found_within_two_errors),
    };
    return cmocka_run_group_tests(tests, enter_folder, leave_folder);
}
