// test_command_log.c - claims about `lullwise log`.
// SPDX-License-Identifier: MIT

#define _DEFAULT_SOURCE

#include "test/command_answers.h"
#include "test/logged_days.h"

#define BOOK " --logbook book.db "

static int begin(void **state) { return unsetenv("XDG_DATA_HOME") == 0 ? enter_folder(state) : -1; }

#define ADD "log add" DEMO BOOK "--pin B --date 2026-05-17 "

static size_t day_count(const char *book)
{
    char words[100];
    snprintf(words, sizeof words, "log list --logbook %s", book);
    json_t *json = json_answer(words);
    const size_t count = json_array_size(json_rows(json, "days"));
    json_decref(json);
    return count;
}

static void forget(const char *book)
{
    char line[100];
    snprintf(line, sizeof line, "rm -f %s %s-wal %s-shm", book, book, book);
    CHECK(system(line) == 0);
}

TEST_FUNCTION(a_day_added_is_listed_and_shown_within_80_columns)
{
    forget("book.db");
    CHECK(lullwise(ADD
                   "--sign bow-up --sign \"won't take off\" --set verdict=right "
                   "--set turns.upwind='4 turns' --set outing.swims=2 --notes 'Held it.'") == 0);
    CHECK(answer_has("Added ") && answer_has("2026-05-17") && answer_has("pin B"));
    CHECK(lullwise("log list" BOOK) == 0 && answer_has("right") && widest_line() <= 80);
    CHECK(answer_has("12.5") && answer_has("Reed Lake"));
    CHECK(lullwise("log show last" BOOK) == 0 && widest_line() <= 80);
    CHECK(answer_has("Held it.") && answer_has("4.0 turns") && answer_has("not told"));
    CHECK(answer_has("bow up, stern low") && answer_has("won't take off"));
}

TEST_FUNCTION(a_day_keeps_boat_and_sailor_as_they_were)
{
    forget("book.db");
    CHECK(lullwise(ADD "--set main_foil.span='1.05 m'") == 0);
    json_t *json = json_answer("log show last" BOOK);
    CHECK(strstr(json_text(json, "boat_record"), "span: 1.050 m") != NULL);
    CHECK(strstr(json_text(json, "sailor_record"), "mass: 64.0 kg") != NULL);
    CHECK(json_number(json, "outing", "mass") == 69.0);
    CHECK_NEAR(json_number(json, "setup", "incidence"), 3.6, 1e-9);
    CHECK(json_is_null(json_object_get(json_object_get(json, "outing"), "swims")));
    json_decref(json);
}

TEST_FUNCTION(all_faults_are_told_at_once_and_nothing_is_kept)
{
    forget("none.db");
    CHECK(lullwise(
              "log add" DEMO "--logbook none.db --pin B --date 2026-02-30 --sign bow-upp "
              "--set verdict=rihgt --set outing.swims=1.5 --set verdct=right --track gone.gpx") ==
          2);
    CHECK(answer_has("no date of the calendar") && answer_has("perhaps   bow-up"));
    CHECK(answer_has("rihgt") && answer_has("whole number") && answer_has("perhaps   verdict"));
    CHECK(answer_has("gone.gpx"));
    CHECK(access("none.db", F_OK) != 0);
}

TEST_FUNCTION(a_pin_must_be_told_and_be_of_the_boat)
{
    CHECK(lullwise("log add" DEMO BOOK) == 2 && answer_has("which pin") &&
          answer_has("A, B, C, D"));
    CHECK(lullwise("log add" DEMO BOOK "--pin Q") == 2 && answer_has("no pin of this label"));
}

// Nothing is made up: the examples that other commands take are no day that was sailed.
TEST_FUNCTION(a_day_needs_its_files)
{
    CHECK(lullwise("log add --pin B" BOOK) == 2);
    CHECK(answer_has("--boat") && answer_has("--sailor") && answer_has("--day"));
    CHECK(answer_has("the file of the sailor is missing"));
}

TEST_FUNCTION(what_is_unusual_is_told_and_taken)
{
    forget("book.db");
    CHECK(lullwise(ADD "--set turns.upwind='20 turns'") == 0 && answer_has("unusual, but taken"));
    assert_int_equal(day_count("book.db"), 1);
}

TEST_FUNCTION(a_date_still_to_come_is_refused)
{
    CHECK(lullwise("log add" DEMO BOOK "--pin B --date 9999-12-31") == 2);
    CHECK(answer_has("still to come"));
}

TEST_FUNCTION(a_day_is_changed_and_taken_out)
{
    forget("book.db");
    CHECK(lullwise(ADD "--sign hops") == 0);
    CHECK(lullwise("log edit 2026-05-17 --set verdict=too-strong --set wind.puff='17 kn' --pin A "
                   "--sign none" BOOK) == 0 &&
          answer_has("Changed"));
    json_t *json = json_answer("log show last" BOOK);
    CHECK_TEXT(json_text(json, "verdict"), "too-strong");
    CHECK_NEAR(json_number(json, "wind", "puff"), 17.0, 1e-9);
    CHECK_NEAR(json_number(json, "setup", "incidence"), 5.2, 1e-9);  // the demo boat's pin A
    CHECK(json_array_size(json_object_get(json, "signs")) == 0);
    json_decref(json);
    CHECK(lullwise("log edit last --set wind.puff='5 kn'" BOOK) == 2 && answer_has("this order"));
    CHECK(lullwise("log remove last" BOOK) == 0 && answer_has("Removed"));
    assert_int_equal(day_count("book.db"), 0);
}

TEST_FUNCTION(what_was_told_can_be_taken_back_where_it_need_not_be_told)
{
    forget("book.db");
    CHECK(lullwise(ADD "--set outing.swims=2 --set verdict=right --set turns.reach='1 turns'") ==
          0);
    CHECK(lullwise("log edit last --set outing.swims=none --set verdict=none" BOOK) == 0);
    json_t *json = json_answer("log show last" BOOK);
    CHECK(json_is_null(json_object_get(json_object_get(json, "outing"), "swims")));
    CHECK(json_is_null(json_object_get(json, "verdict")));
    CHECK(json_number(json, "turns", "reach") == 1.0);
    json_decref(json);
    CHECK(lullwise("log edit last --set wind.lull=none" BOOK) == 2 && answer_has("not a number"));
}

TEST_FUNCTION(a_day_is_meant_by_date_id_or_last)
{
    forget("book.db");
    CHECK(lullwise(ADD) == 0 && lullwise(ADD) == 0);
    CHECK(lullwise("log show 2026-05-17" BOOK) == 2 && answer_has("2 days are"));
    CHECK(lullwise("log show 2026-05-18" BOOK) == 2 && answer_has("no day"));
    CHECK(lullwise("log remove last" BOOK) == 0);
    CHECK(lullwise("log remove ''" BOOK) == 2 && lullwise("log remove 6" BOOK) == 2);
    assert_int_equal(day_count("book.db"), 1);
    json_t *json = json_answer("log list" BOOK);
    char words[100];
    snprintf(words, sizeof words, "log show %s" BOOK,
             json_text(json_array_get(json_rows(json, "days"), 0), "id"));
    json_decref(json);
    CHECK(lullwise(words) == 0);
}

// Two of one second have eight digits alike.
TEST_FUNCTION(a_list_shows_as_many_digits_of_an_id_as_mean_one_day)
{
    forget("book.db");
    CHECK(lullwise(ADD) == 0 && lullwise(ADD) == 0 && lullwise(ADD) == 0);
    json_t *json = json_answer("log list" BOOK);
    for (size_t i = 0; i < 3; i++) {
        char words[100];
        const json_t *day = json_array_get(json_rows(json, "days"), i);
        const char *digits = json_text(day, "short");
        CHECK(strlen(digits) >= 8 && strncmp(digits, json_text(day, "id"), strlen(digits)) == 0);
        snprintf(words, sizeof words, "log show %s" BOOK, digits);
        CHECK(lullwise(words) == 0);
    }
    json_decref(json);
}

TEST_FUNCTION(the_day_most_like_the_forecast_comes_first_with_what_differs)
{
    forget("book.db");
    CHECK(lullwise(ADD) == 0);
    CHECK(lullwise("log add" DEMO BOOK "--pin A --date 2026-05-18 --set wind.lull='6 kn' "
                   "--set wind.mean='8 kn' --set wind.puff='10 kn'") == 0);
    CHECK(lullwise("log near" DEMO BOOK "--set wind.puff='17.5 kn'") == 0 && widest_line() <= 80);
    CHECK(answer_has("puff 2.0 kn less") && answer_has("How far to trust it"));
    json_t *json = json_answer("log near" DEMO BOOK);
    const json_t *first = json_array_get(json_rows(json, "near"), 0);
    CHECK_TEXT(json_text(first, "date"), "2026-05-17");
    CHECK_TEXT(json_text(first, "why"), "as good as the same");
    CHECK(json_number_value(json_object_get(first, "apart")) == 0.0);
    CHECK(json_is_true(json_object_get(json, "is_like")));
    json_decref(json);
    CHECK(lullwise("log near" DEMO BOOK GALE) == 0 && answer_has("None of these was a day like"));
}

TEST_FUNCTION(another_sailor_s_weight_counts_where_it_is_asked)
{
    forget("book.db");
    CHECK(lullwise(ADD) == 0);
    CHECK(lullwise("log near" DEMO BOOK "--set sailor.person.mass='84 kg'") == 0);
    CHECK(answer_has("sailor 20 kg lighter"));
    CHECK(lullwise("log near --day " LW_DEMO_DIR "/breeze.yaml" BOOK) == 0);
    CHECK(answer_has("as good as the same"));
}

// From one logbook into another and back, as bytes.
static void check_moves(const char *form, const char *out)
{
    char words[300];
    forget("other.db");
    snprintf(words, sizeof words, "log export %s %s --force" BOOK, form, out);
    CHECK(lullwise(words) == 0);
    snprintf(words, sizeof words, "log import %s --logbook other.db", out);
    CHECK(lullwise(words) == 0 && answer_has("2 days added"));
    CHECK(lullwise(words) == 0 && answer_has("0 days added") && answer_has("2 were there"));
    assert_int_equal(day_count("other.db"), 2);
    CHECK(lullwise("log export --csv - --logbook other.db >b.csv; '" LW_PROGRAM
                   "' log export --csv -" BOOK ">a.csv") == 0);
    CHECK(system("cmp a.csv b.csv") == 0);
}

TEST_FUNCTION(days_move_by_csv_and_json_and_none_is_doubled)
{
    forget("book.db");
    CHECK(lullwise(ADD "--notes 'a, \"b\"\n c' --track " LW_DEMO_DIR "/heron.yaml") == 0);
    CHECK(lullwise(ADD "--sign hops --set outing.afloat='90 min'") == 0);
    check_moves("--csv", "days.csv");
    check_moves("--output", "days.json");
}

// Nobody who types days in a spreadsheet has an id: the same day has the same one each time.
TEST_FUNCTION(days_without_an_id_are_given_one_and_none_is_doubled)
{
    forget("book.db"), forget("other.db");
    CHECK(lullwise(ADD) == 0 && lullwise(ADD "--sign hops") == 0);
    CHECK(lullwise("log export --csv days.csv --force" BOOK) == 0);
    CHECK(system("sed 's/^.\\{16\\},2026/,2026/' <days.csv >typed.csv") == 0);
    CHECK(lullwise("log import typed.csv --logbook other.db") == 0 && answer_has("2 days added"));
    CHECK(lullwise("log import typed.csv --logbook other.db") == 0 && answer_has("2 were there"));
    assert_int_equal(day_count("other.db"), 2);
}

TEST_FUNCTION(a_day_that_differs_is_told_and_left)
{
    forget("book.db"), forget("other.db");
    CHECK(lullwise(ADD) == 0 && lullwise("log export -o days.json --force" BOOK) == 0);
    CHECK(lullwise("log edit last --set outing.swims=9" BOOK) == 0);
    CHECK(lullwise("log import days.json" BOOK) == 0 && answer_has("changed in one of the two"));
    json_t *json = json_answer("log show last" BOOK);
    CHECK(json_number(json, "outing", "swims") == 9.0);
    json_decref(json);
}

static void write_text(const char *path, const char *text)
{
    FILE *file = fopen(path, "w");
    CHECK(file && fputs(text, file) >= 0 && fclose(file) == 0);
}

TEST_FUNCTION(what_cannot_be_taken_in_is_told_by_line_and_nothing_is_added)
{
    static const struct {
        const char *text, *says;
    } files[] = {
        {"", "empty"},
        {"{", "no JSON"},
        {"{\"days\": []}", "no export of a logbook"},
        {"{\"lullwise_logbook\": 3, \"days\": []}", "another version"},
        {"{\"lullwise_logbook\": 1, \"days\": [7]}", "should be a day"},
        {"{\"lullwise_logbook\": 1, \"days\": [{\"wind.lull\": \"7\"}]}", "a number or null"},
        {"{\"lullwise_logbook\": 1, \"days\": [{\"wind.lul\": 7}]}", "perhaps   wind.lull"},
        {"{\"lullwise_logbook\": 1, \"units\": {\"wind.lull\": \"m/s\"}, \"days\": []}", "units"},
        {"date;pin\n", "no such column"},
        {"date,date\n", "twice"},
        {"date,pin\n2026-05-17\n", "as many cells"},
        {"date,pin\n\"2026-05-17,B\n", "quote"},
        {"wind.lull\n", "no such column"},
        {"wind.lull [kn]\n1e9\n", "outside its range"},
        {"signs\nbow-upp\n", "perhaps   bow-up"},
        {"tracks\n/etc/passwd\n", "no list of tracks"},
        {"date,pin\n2026-05-17,B\n", "record that is kept of it"},
        {"waters\nb\xE4y\n", "not UTF-8"},
        {"notes\n\033[2J\n", "control character"},
        {"{\"lullwise_logbook\": 1, \"days\": [{\"notes\": \"\\u001b[2J\"}]}", "cannot be shown"},
        {"{\"lullwise_logbook\": 1, \"days\": [{\"notes\": \"\\u0000\"}]}", "no JSON"},
    };
    forget("none.db");
    for (size_t i = 0; i < sizeof files / sizeof files[0]; i++) {
        write_text("broken", files[i].text);
        const int ended = lullwise("log import broken --logbook none.db");
        if (ended != 2 || !answer_has(files[i].says))
            fail_msg("%s: ended %d, no \"%s\" in: %s", files[i].text, ended, files[i].says, answer);
        CHECK(access("none.db", F_OK) != 0);
    }
}

TEST_FUNCTION(an_export_of_version_1_is_taken_in)
{
    CHECK(lullwise("log import " LW_TEST_DATA "/../seeds/fuzz_days_json/day --logbook first.db") ==
              0 &&
          answer_has("1 day added"));
}

// Straight on for two minutes, half of it fast: no wind can be told of it, but how much she flew.
TEST_FUNCTION(a_track_of_a_day_is_read_and_a_file_of_another_kind_kept_by_name)
{
    FILE *file = fopen("straight.csv", "w");
    CHECK(file != NULL);
    fputs("time,latitude,longitude,speed [kn],course [deg]\n", file);
    for (int i = 0; i < 120; i++)
        fprintf(file, "2030-05-17T10:%02d:%02dZ,%.7f,0,%d,0\n", i / 60, i % 60,
                50.0 + (i < 60 ? 12 * i : 720 + 6 * (i - 60)) / 3600.0 / 60.0, i < 60 ? 12 : 6);
    fclose(file);
    CHECK(lullwise(ADD "--logbook sailed.db --track straight.csv") == 0);
    CHECK(lullwise("log show last --logbook sailed.db") == 0);
    CHECK(answer_has("flying") && answer_has("50 %"));
    CHECK(lullwise(ADD "--logbook named.db --track " LW_DEMO_DIR "/heron.yaml") == 0);
    CHECK(answer_has("only its name is kept"));
}

// From ten in the evening by UTC, which may be her next morning.
TEST_FUNCTION(a_track_of_another_date_is_told_of_and_taken)
{
    FILE *file = fopen("evening.csv", "w");
    CHECK(file != NULL);
    fputs("time,latitude,longitude,speed [kn]\n", file);
    for (int i = 0; i < 60; i++)
        fprintf(file, "2023-05-17T22:00:%02dZ,%.6f,0,12\n", i, 50.0 + 1e-4 * i);
    fclose(file);
    static const char add[] = "log add --pin B --logbook dated.db --track evening.csv" DEMO;
    static const struct {
        const char *date;
        bool is_told;
    } dates[] = {{"2023-05-15", true},
                 {"2023-05-16", false},
                 {"2023-05-17", false},
                 {"2023-05-18", false},
                 {"2023-05-19", true}};
    for (size_t i = 0; i < sizeof dates / sizeof dates[0]; i++) {
        char words[300];
        snprintf(words, sizeof words, "%s --date %s", add, dates[i].date);
        CHECK(lullwise(words) == 0);
        CHECK(answer_has("the track is of 2023-05-17") == dates[i].is_told);
    }
}

TEST_FUNCTION(a_sparse_gigabyte_is_too_long)
{
    write_text("sparse", "");
    CHECK(truncate("sparse", 1 << 30) == 0);
    CHECK(lullwise("log import sparse --logbook none.db") == 2 && answer_has("64 MB is the most"));
    CHECK(access("none.db", F_OK) != 0);
}

// Nested as deep as one likes.
TEST_FUNCTION(deep_json_is_refused)
{
    FILE *file = fopen("deep.json", "w");
    CHECK(file != NULL);
    for (int i = 0; i < 200000; i++) fputs("{\"a\":", file);
    CHECK(fclose(file) == 0);
    CHECK(lullwise("log import deep.json --logbook none.db") == 2 && answer_has("no JSON"));
}

TEST_FUNCTION(without_a_logbook_it_says_how_to_begin)
{
    CHECK(lullwise("log list --logbook gone.db") == 1 && answer_has("log add"));
    CHECK(lullwise("log near --logbook gone.db") == 1 && answer_has("log add"));
    CHECK(access("gone.db", F_OK) != 0);
}

TEST_FUNCTION(it_is_kept_in_the_data_folder_unless_told_otherwise)
{
    char line[200];
    CHECK(setenv("XDG_DATA_HOME", folder, 1) == 0);
    CHECK(lullwise("log add" DEMO "--pin B --date 2026-05-17") == 0);
    snprintf(line, sizeof line, "%s/lullwise/logbook.db", folder);
    CHECK(access(line, F_OK) == 0);
    CHECK(setenv("XDG_DATA_HOME", "not/absolute", 1) == 0 && setenv("HOME", folder, 1) == 0);
    CHECK(lullwise("log add" DEMO "--pin B --date 2026-05-17") == 0);
    snprintf(line, sizeof line, "%s/.local/share/lullwise/logbook.db", folder);
    CHECK(access(line, F_OK) == 0);
    CHECK(unsetenv("XDG_DATA_HOME") == 0);
}

TEST_FUNCTION(a_name_is_a_file_s_whatever_a_database_makes_of_it)
{
    CHECK(lullwise("log add" DEMO "--pin B --logbook :memory:") == 0 &&
          access(":memory:", F_OK) == 0);
    assert_int_equal(day_count(":memory:"), 1);
    CHECK(lullwise("log add" DEMO "--pin B --logbook 'file:a?mode=memory'") == 0);
    CHECK(access("file:a?mode=memory", F_OK) == 0);
    CHECK(lullwise("log add" DEMO "--pin B --logbook ''") == 1 && answer_has("no file is named"));
}

TEST_FUNCTION(wrong_words_and_options_name_the_nearest)
{
    CHECK(lullwise("log lst" BOOK) == 2 && answer_has("did you mean list?"));
    CHECK(lullwise("log") == 2 && answer_has("something is missing"));
    CHECK(lullwise("log show" BOOK) == 2 && answer_has("log show DAY"));
    CHECK(lullwise("log list --pin B" BOOK) == 2 && answer_has("takes no --pin"));
    CHECK(lullwise("log --help") == 0 && answer_has("--logbook") && widest_line() <= 80);
}

TEST_FUNCTION(what_is_no_logbook_stays_as_it_is)
{
    write_text("notes.txt", "not a logbook\n");
    CHECK(lullwise("log add" DEMO "--pin B --date 2026-05-17 --logbook notes.txt") == 1);
    CHECK(answer_has("this is no logbook"));
    CHECK(lullwise("log list --logbook '" LW_PROGRAM "'") == 1 && answer_has("this is no logbook"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_day_added_is_listed_and_shown_within_80_columns),
        TEST(a_day_keeps_boat_and_sailor_as_they_were),
        TEST(all_faults_are_told_at_once_and_nothing_is_kept),
        TEST(a_pin_must_be_told_and_be_of_the_boat),
        TEST(a_day_needs_its_files),
        TEST(what_is_unusual_is_told_and_taken),
        TEST(a_date_still_to_come_is_refused),
        TEST(a_day_is_changed_and_taken_out),
        TEST(what_was_told_can_be_taken_back_where_it_need_not_be_told),
        TEST(a_day_is_meant_by_date_id_or_last),
        TEST(a_list_shows_as_many_digits_of_an_id_as_mean_one_day),
        TEST(the_day_most_like_the_forecast_comes_first_with_what_differs),
        TEST(another_sailor_s_weight_counts_where_it_is_asked),
        TEST(days_move_by_csv_and_json_and_none_is_doubled),
        TEST(days_without_an_id_are_given_one_and_none_is_doubled),
        TEST(a_day_that_differs_is_told_and_left),
        TEST(what_cannot_be_taken_in_is_told_by_line_and_nothing_is_added),
        TEST(an_export_of_version_1_is_taken_in),
        TEST(a_track_of_a_day_is_read_and_a_file_of_another_kind_kept_by_name),
        TEST(a_track_of_another_date_is_told_of_and_taken),
        TEST(a_sparse_gigabyte_is_too_long),
        TEST(deep_json_is_refused),
        TEST(without_a_logbook_it_says_how_to_begin),
        TEST(it_is_kept_in_the_data_folder_unless_told_otherwise),
        TEST(a_name_is_a_file_s_whatever_a_database_makes_of_it),
        TEST(wrong_words_and_options_name_the_nearest),
        TEST(what_is_no_logbook_stays_as_it_is),
    };
    return cmocka_run_group_tests(tests, begin, leave_folder);
}
