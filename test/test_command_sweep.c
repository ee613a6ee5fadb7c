// test_command_sweep.c - `lullwise sweep`: the same table however it is worked out, gone on with
// after a kill, and what is refused.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <jansson.h>

#include "test/check.h"
#include "test/program.h"

#define DEMO                                                        \
    "sweep --boat " LW_DEMO_DIR "/heron.yaml --sailor " LW_DEMO_DIR \
    "/light.yaml --day " LW_DEMO_DIR "/breeze.yaml "
#define QUICK DEMO "--ask balance --over 'person.mass=60; 80 kg' --over wind.mean=10:18:4kn "
#define TABLE "test_command_sweep.csv"

static int shell(const char *words)
{
    const int status = system(words);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

static void forget(void) { shell("rm -f " TABLE " " TABLE ".part " TABLE ".whole"); }

TEST_FUNCTION(a_table_is_the_same_with_any_number_of_threads)
{
    forget();
    assert_int_equal(lullwise(QUICK "--draws 3 --threads 1 -o " TABLE ".whole"), 0);
    assert_int_equal(lullwise(QUICK "--draws 3 --threads 3 -o " TABLE), 0);
    assert_int_equal(shell("cmp " TABLE " " TABLE ".whole"), 0);
    assert_int_equal(shell("test ! -e " TABLE ".part"), 0);
    forget();
}

TEST_FUNCTION(a_run_that_was_killed_goes_on_and_comes_to_the_same)
{
    static const char asks[] = QUICK "--draws 4 --pin B --threads 2 ";
    char words[1000];
    forget();
    snprintf(words, sizeof words, "%s -o " TABLE ".whole", asks);
    assert_int_equal(lullwise(words), 0);
    snprintf(words, sizeof words,
             "'" LW_PROGRAM "' %s -o " TABLE
             " & for i in $(seq 600); do sleep 0.02; "
             "[ $(cat " TABLE
             ".part 2>/dev/null | wc -l) -lt 4 ] || break; done; "
             "kill -9 $!; wait $! 2>/dev/null",
             asks);
    shell(words);
    assert_int_equal(shell("printf '24 17\x1f' >>" TABLE ".part && test ! -e " TABLE), 0);
    snprintf(words, sizeof words, "%s -o " TABLE, asks);
    assert_int_equal(lullwise(words), 2);
    assert_true(answer_has("--resume"));
    snprintf(words, sizeof words, "%s -o " TABLE " --resume", asks);
    assert_int_equal(lullwise(words), 0);
    assert_int_equal(shell("cmp " TABLE " " TABLE ".whole"), 0);
    forget();
}

TEST_FUNCTION(another_question_is_not_gone_on_with)
{
    forget();
    assert_int_equal(shell("printf 'lullwise sweep 0000000000000001 6\n' >" TABLE ".part"), 0);
    assert_int_equal(lullwise(QUICK "-o " TABLE " --resume"), 2);
    assert_true(answer_has("something else was asked there"));
    assert_int_equal(lullwise(QUICK "--resume"), 2);
    forget();
}

// What the range of the day says of the pin, in both.
TEST_FUNCTION(a_point_tells_what_the_question_tells_by_itself)
{
    assert_int_equal(lullwise(DEMO "--ask range --pin B --over 'person.mass=80 kg' --json"), 0);
    json_t *point = json_loads(answer, JSON_DISABLE_EOF_CHECK, NULL);
    assert_int_equal(lullwise("range --boat " LW_DEMO_DIR "/heron.yaml --sailor " LW_DEMO_DIR
                              "/light.yaml --day " LW_DEMO_DIR
                              "/breeze.yaml --pin B --set 'person.mass=80 kg' --json"),
                     0);
    json_t *range = json_loads(answer, 0, NULL);
    assert_non_null(point);
    assert_non_null(range);
    json_t *held = json_object_get(point, "held_up_to [kn]");
    assert_true(json_is_number(held));
    char text[60];
    snprintf(text, sizeof text, "%.12g", json_number_value(held));
    assert_true(answer_has(text));
    json_decref(point);
    json_decref(range);
}

TEST_FUNCTION(a_wind_that_is_varied_alone_takes_lull_and_puff_along)
{
    static char alone[20000];
    assert_int_equal(lullwise(DEMO "--ask range --pin B --over 'wind.mean=25 kn'"), 0);
    snprintf(alone, sizeof alone, "%s", strchr(answer, '\n'));
    assert_int_equal(lullwise(DEMO "--ask range --pin B --over 'wind.mean=25 kn' --over "
                                   "'wind.lull=20 kn' --over 'wind.puff=31 kn'"),
                     0);
    // behind the axes' own cells all is the same
    const char *at = strstr(alone, "flies"), *all = strstr(answer, "flies");
    assert_non_null(at);
    assert_non_null(all);
    assert_int_equal(strcspn(at, "\n"), strcspn(all, "\n"));
    assert_memory_equal(at, all, strcspn(at, "\n"));
}

TEST_FUNCTION(a_point_that_contradicts_itself_is_named)
{
    assert_int_equal(lullwise(DEMO "--ask balance --pin B --over 'wind.lull=9; 13 kn' --over "
                                   "'wind.mean=12; 14 kn'"),
                     0);
    assert_true(answer_has("\n3,13,12,\"refused: ") || answer_has("\n3,13,12,refused: "));
    assert_false(answer_has("\n1,9,12,refused") || answer_has("\n4,13,14,refused"));
}

TEST_FUNCTION(a_slip_is_refused_before_the_work)
{
    assert_int_equal(lullwise(DEMO "--over person.mas=60:70:5kg"), 2);
    assert_true(answer_has("perhaps   mass"));
    assert_int_equal(lullwise(DEMO "--over person.mass=60:70:-5kg"), 2);
    assert_int_equal(lullwise(DEMO "--over person.mass=60:70"), 2);
    assert_int_equal(lullwise(DEMO "--over 'person.mass=60 kg; 70 kg'"), 2);
    assert_true(answer_has("the unit stands"));
    assert_int_equal(lullwise(DEMO "--over person.mass"), 2);
    assert_int_equal(lullwise(DEMO "--over 'sailor=not-there.yaml'"), 2);
    assert_int_equal(lullwise(DEMO "--draws 2 --ask tea"), 2);
    assert_int_equal(lullwise(DEMO), 2);
    assert_true(answer_has("nothing is varied"));
    assert_int_equal(lullwise(DEMO "--draws 2 --svg x.svg"), 2);
}

TEST_FUNCTION(sailors_of_files_are_rows_and_a_map_shows_them)
{
    forget();
    assert_int_equal(
        lullwise(DEMO "--ask balance --pin B --over 'sailor=" LW_DEMO_DIR
                      "/light.yaml; " LW_DEMO_DIR
                      "/heavy.yaml' --over wind.mean=12:14:2kn --svg - --map pin -o " TABLE),
        0);
    assert_true(answer_has("<svg"));
    assert_true(answer_has("wind.mean [kn]"));
    assert_int_equal(shell("test $(wc -l <" TABLE ") = 5"), 0);
    forget();
}

#define SEARCH                                                                                   \
    DEMO "--ask balance --best main_foil.span=0.9:1.1:0.05m --best linkage.gearing=0.3:0.5:0.1 " \
         "--course downwind --over wind.mean=14:18:4kn --pin A "

// What it comes to, and the table of what it tried: with any number of threads, and gone on with.
TEST_FUNCTION(a_search_for_hardware_comes_to_the_same_however_it_is_worked_out)
{
    static char one[sizeof answer];
    forget();
    assert_int_equal(lullwise(SEARCH "--threads 1 -o " TABLE ".whole"), 0);
    snprintf(one, sizeof one, "%s", answer);
    assert_int_equal(lullwise(SEARCH "--threads 3 -o " TABLE), 0);
    assert_string_equal(answer, one);
    assert_int_equal(shell("cmp " TABLE " " TABLE ".whole"), 0);

    // one that is killed after a few points
    assert_int_equal(shell("'" LW_PROGRAM "' " SEARCH "--threads 1 -o " TABLE
                           " --force & for i in $(seq 600); do sleep 0.01; "
                           "[ $(cat " TABLE ".part 2>/dev/null | wc -l) -lt 6 ] || break; done; "
                           "kill -9 $!; wait $! 2>/dev/null; test -e " TABLE ".part"),
                     0);
    assert_int_equal(lullwise(SEARCH "-o " TABLE " --resume"), 0);
    assert_string_equal(answer, one);
    assert_int_equal(shell("cmp " TABLE " " TABLE ".whole"), 0);
    forget();
}

// Each case's gain, and that of all of them, from the table's own lines.
TEST_FUNCTION(a_search_tells_what_its_table_holds)
{
    forget();
    assert_int_equal(lullwise(SEARCH "--json -o " TABLE), 0);
    json_t *told = json_loads(answer, 0, NULL),
           *cases = json_object_get(json_object_get(told, "cases"), "rows");
    assert_int_equal(json_array_size(cases), 2);
    const json_t *first = json_array_get(cases, 0);
    const double hers = json_number_value(json_object_get(first, "hers"));
    const double gains = json_number_value(json_object_get(first, "together"));
    char words[400];
    snprintf(words, sizeof words,
             "awk -F, 'NR == 1 {for (i = 1; i <= NF; i++) if ($i == \"vmg [kn]\") k = i} "
             "$2 == 0.96 && $3 == 0.4 && $5 == 14 {d = -$k - %.9f; if (d * d < 1e-8) ok = 1} "
             "$5 == 14 && (-$k - %.9f) ^ 2 < 1e-8 {other = 1} END {exit !(ok && other)}' " TABLE,
             hers, hers + gains);
    assert_int_equal(shell(words), 0);
    json_decref(told);
    forget();
}

TEST_FUNCTION(hardware_that_cannot_be_sought_is_refused)
{
    assert_int_equal(lullwise(DEMO "--best main_foil.span=1.2:1.4:0.1m"), 2);
    assert_true(answer_has("hers is 0.96 m"));
    assert_int_equal(lullwise(DEMO "--best person.mass=60:80:5kg"), 2);
    assert_true(answer_has("numbers of the boat"));
    assert_int_equal(lullwise(DEMO "--ask range --best main_foil.span=0.9:1:0.1m"), 2);
    assert_true(answer_has("goes by"));
    assert_int_equal(lullwise(DEMO "--best main_foil.span=0.9:1:0.1m --svg x.svg"), 2);
    assert_int_equal(lullwise(DEMO "--best main_foil.span=0.9:1:0.1"), 2);
    assert_true(answer_has("no unit"));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_table_is_the_same_with_any_number_of_threads),
        TEST(a_run_that_was_killed_goes_on_and_comes_to_the_same),
        TEST(another_question_is_not_gone_on_with),
        TEST(a_point_tells_what_the_question_tells_by_itself),
        TEST(a_wind_that_is_varied_alone_takes_lull_and_puff_along),
        TEST(a_point_that_contradicts_itself_is_named),
        TEST(a_slip_is_refused_before_the_work),
        TEST(sailors_of_files_are_rows_and_a_map_shows_them),
        TEST(a_search_for_hardware_comes_to_the_same_however_it_is_worked_out),
        TEST(a_search_tells_what_its_table_holds),
        TEST(hardware_that_cannot_be_sought_is_refused),
    };
    return RUN_TESTS(tests);
}
