// test_command_learn.c - claims about `lullwise learn`, `invent` and --learned.
// SPDX-License-Identifier: MIT

#define _DEFAULT_SOURCE

#include "test/log_folder.h"
#include "test/program.h"

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

TEST_FUNCTION(what_was_learned_is_put_into_its_boat_and_into_no_other)
{
    static const char head[] = "boat: Grey Heron (invented)\nhash: 4e5e45fdf2a21f3e\n";
    static const char values[] =
        "learned:\n  main_incidence: 0.5 deg\n  rudder_incidence: 0 deg\n  main_chord: 1\n"
        "  drag_area: 0 m2\n  sail_power: 1\nerrors:\n  main_incidence: 0.1 deg\n"
        "  rudder_incidence: 0.1 deg\n  main_chord: 0.01\n  drag_area: 0.1 m2\n"
        "  sail_power: 0.1\nfrom:\n  days: 6\n  numbers: 18\n";
    FILE *file = fopen("learned.yaml", "w");
    CHECK(file && fprintf(file, "%s%s", head, values) > 0 && fclose(file) == 0);
    CHECK(lullwise("fly --wind '12 kn' --pin B --learned learned.yaml" BOAT) == 0);
    CHECK(answer_has("4.1"));  // 3.6 deg as measured
    CHECK(lullwise("fly --wind '12 kn' --pin B --learned learned.yaml") == 2);
    CHECK(answer_has("another boat"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(an_invented_season_is_the_same_from_the_same_seed_and_is_logged_and_tracked),
        TEST(too_little_is_refused_with_what_is_missing),
        TEST(what_was_learned_is_put_into_its_boat_and_into_no_other),
    };
    return cmocka_run_group_tests(tests, enter_folder, leave_folder);
}
