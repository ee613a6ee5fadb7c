// test_command_hull.c - claims about `lullwise hull`.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "test/command_answers.h"

#define HULL "hull --boat " LW_DEMO_DIR "/heron.yaml "

static double member(const json_t *list, size_t i, const char *key)
{
    const json_t *value = json_object_get(json_array_get(list, i), key);
    CHECK(json_is_number(value));
    return json_number_value(value);
}

// Published: test/published/hull_shape.txt.
TEST_FUNCTION(wigleys_hull_has_its_published_waves_and_hydrostatics)
{
    json_t *json = json_answer("hull --wigley --froude 0.25:1.0:0.25");
    const json_t *curve = json_rows(json, "curve");
    CHECK(json_array_size(curve) == 4);
    CHECK_NEAR(member(curve, 0, "froude"), 0.25, 1e-9);
    CHECK_RELATIVE(member(curve, 0, "wave_coefficient"), 1.064e-3, 0.002);
    CHECK_RELATIVE(member(curve, 1, "wave_coefficient"), 4.517e-3, 0.002);
    CHECK_RELATIVE(member(curve, 3, "wave_coefficient"), 1.836e-3, 0.002);
    CHECK_NEAR(json_number(json, "afloat", "block"), 4.0 / 9.0, 1e-6);
    CHECK_NEAR(json_number(json, "afloat", "waterplane_coefficient"), 2.0 / 3.0, 1e-6);
    CHECK_NEAR(json_number(json, "afloat", "wetted"), 0.14879 * 9.0, 1e-4);
    CHECK_NEAR(json_number(json, "afloat", "metacentre_along"), 0.075 * 9.0 / 0.1875, 1e-4);
    CHECK_NEAR(json_number(json, "afloat", "centre_height"), 0.625 * 0.1875, 1e-5);
    json_decref(json);
}

TEST_FUNCTION(resistance_is_friction_and_waves)
{
    json_t *json = json_answer(HULL "--speed '2:6:2 kn'");
    const json_t *curve = json_rows(json, "curve");
    CHECK(json_array_size(curve) == 3);
    for (size_t i = 0; i < 3; i++) {
        CHECK_NEAR(member(curve, i, "speed"), 2.0 + 2.0 * (double)i, 1e-9);
        CHECK_RELATIVE(member(curve, i, "total"),
                       member(curve, i, "friction") + member(curve, i, "waves"), 1e-9);
    }
    json_decref(json);
}

TEST_FUNCTION(a_hull_twice_as_long_makes_the_same_waves_at_the_same_froude_number)
{
    json_t *one = json_answer("hull --wigley --length '2 m' --froude 0.5");
    json_t *two = json_answer("hull --wigley --length '4 m' --froude 0.5");
    const json_t *a = json_rows(one, "curve"), *b = json_rows(two, "curve");
    CHECK_RELATIVE(member(a, 0, "waves") * 8.0, member(b, 0, "waves"), 1e-6);
    CHECK(member(a, 0, "friction_coefficient") > member(b, 0, "friction_coefficient"));
    json_decref(one);
    json_decref(two);
}

// The sailor further forward: bow down.
TEST_FUNCTION(the_boat_displaces_what_she_weighs_level_or_trimmed)
{
    json_t *level = json_answer(HULL "--set boat.hull.mass='40 kg' --speed '3 kn'");
    json_t *forward =
        json_answer(HULL "--set boat.hull.mass='40 kg' --place '1.6 m' --speed '3 kn'");
    json_t *aft = json_answer(HULL "--set boat.hull.mass='40 kg' --place '0.8 m' --speed '3 kn'");
    const double mass = json_number(level, "afloat", "displaced");
    CHECK_NEAR(json_number(level, "afloat", "trim"), 0.0, 1e-12);
    CHECK_RELATIVE(json_number(forward, "afloat", "displaced"), mass, 1e-5);
    CHECK(json_number(forward, "afloat", "trim") < json_number(aft, "afloat", "trim"));
    json_decref(level);
    json_decref(forward);
    json_decref(aft);
}

// A wedge 4 m long whose half-breadth is twice the height: volume 4 x 2 T^2. Then a file with three
// faults.
TEST_FUNCTION(offsets_are_read_in_their_unit_and_faults_are_named_with_their_place)
{
    FILE *file = fopen("offsets.txt", "w");
    CHECK(file != NULL);
    fputs(
        "# a wedge\nunit cm\nheights 10, 20 30\n"
        "0 0 20 40 60\n200 0 20 40 60\n400 0 20 40 60  # the bow\n",
        file);
    fclose(file);
    json_t *json =
        json_answer("hull --offsets offsets.txt --boat " LW_DEMO_DIR "/heron.yaml --speed '3 kn'");
    const json_t *afloat = json_object_get(json, "afloat");
    CHECK_RELATIVE(json_number_value(json_object_get(afloat, "length")), 4.0, 1e-9);
    const double displaced = json_number_value(json_object_get(afloat, "displaced"));
    const double density = json_number_value(json_object_get(json, "water_density"));
    CHECK_RELATIVE(json_number_value(json_object_get(afloat, "draft")),
                   sqrt(displaced / density / 8.0), 1e-4);
    json_decref(json);

    file = fopen("offsets.txt", "w");
    CHECK(file != NULL);
    fputs("unit cm\nheights 10 20\n0 0 20 2o\n200 0 20\n400 0 20 20 20\n", file);
    fclose(file);
    CHECK(lullwise(HULL "--offsets offsets.txt") == 2);
    CHECK(answer_has("offsets.txt:3:8") && answer_has("offsets.txt:4:1"));
    CHECK(answer_has("offsets.txt:5:13"));
    CHECK(lullwise(HULL "--offsets nowhere.txt") == 2 && answer_has("no such file"));
    CHECK(lullwise("hull --wigley --offsets offsets.txt") == 2);
    remove("offsets.txt");
}

TEST_FUNCTION(a_hull_that_cannot_float_her_crew_is_wrong_input)
{
    CHECK(lullwise(HULL "--set hull.block=0.1") == 2);
}

TEST_FUNCTION(wrong_speeds_end_with_two_and_say_what_is_expected)
{
    CHECK(lullwise(HULL "--speed 1:8:0.5") == 2 && answer_has("no unit") && answer_has("kn"));
    CHECK(lullwise(HULL "--speed '1:8 kn'") == 2 && answer_has("from:to:step"));
    CHECK(lullwise(HULL "--speed '8:1:1 kn'") == 2 && answer_has("step"));
    CHECK(lullwise(HULL "--speed '1:8:0 kn'") == 2 && answer_has("step"));
    CHECK(lullwise(HULL "--speed '1:8:0.0001 kn'") == 2 && answer_has("values"));
    CHECK(lullwise(HULL "--speed '3 kg'") == 2 && answer_has("expected"));
    CHECK(lullwise(HULL "--speed nan") == 2);
    CHECK(lullwise(HULL "--speed ''") == 2);
    CHECK(lullwise(HULL "--froude 0.3:x:1") == 2 && answer_has("not a number"));
    CHECK(lullwise(HULL "--froude 9") == 2 && answer_has("0.05 to 3"));
    CHECK(lullwise(HULL "--froude 0.3 --speed '3 kn'") == 2 && answer_has("leave one out"));
    CHECK(lullwise(HULL "--wigley") == 2 && answer_has("leave out --boat"));
    CHECK(lullwise(HULL "--length '3 m'") == 2 && answer_has("--wigley"));
    CHECK(lullwise("hull --boat nowhere.yaml") == 2 && answer_has("no such file"));
    CHECK(!answer_has("Resistance"));
}

TEST_FUNCTION(the_text_fits_eighty_columns)
{
    static const char *const runs[] = {HULL, "hull --wigley --length '20 m'", "hull --help",
                                       HULL "--place '0.9 m' --speed '1:30:1 kn'"};
    for (size_t i = 0; i < sizeof runs / sizeof runs[0]; i++) {
        CHECK(lullwise(runs[i]) == 0);
        CHECK(widest_line() <= 80);
        CHECK(!answer_has("nan") && !answer_has("inf"));
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(wigleys_hull_has_its_published_waves_and_hydrostatics),
        TEST(resistance_is_friction_and_waves),
        TEST(a_hull_twice_as_long_makes_the_same_waves_at_the_same_froude_number),
        TEST(the_boat_displaces_what_she_weighs_level_or_trimmed),
        TEST(offsets_are_read_in_their_unit_and_faults_are_named_with_their_place),
        TEST(a_hull_that_cannot_float_her_crew_is_wrong_input),
        TEST(wrong_speeds_end_with_two_and_say_what_is_expected),
        TEST(the_text_fits_eighty_columns),
    };
    return RUN_TESTS(tests);
}
