// test_command_whole_foil.c - claims about `lullwise foil` of a boat: lift, drag, pressures.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "test/command_answers.h"

#define BOAT "foil --boat " LW_DEMO_DIR "/heron.yaml --sailor " LW_DEMO_DIR "/light.yaml "

static double member(const json_t *list, size_t i, const char *key)
{
    const json_t *value = json_object_get(json_array_get(list, i), key);
    CHECK(json_is_number(value));
    return json_number_value(value);
}

static double top_number(const json_t *json, const char *key)
{
    CHECK(json_is_number(json_object_get(json, key)));
    return json_number_value(json_object_get(json, key));
}

TEST_FUNCTION(a_foil_carries_its_load_at_every_speed_from_take_off_on)
{
    json_t *json =
        json_answer(BOAT "--part main --depth '0.5 m' --load '900 N' --speed '6:24:1 kn'");
    const json_t *foil = json_rows(json, "foil");
    const double from = top_number(json, "takes_off_at");
    CHECK(from > 7.0 && from < 12.0);
    for (size_t i = 0; i < 19; i++) {
        const int carries = json_is_number(json_object_get(json_array_get(foil, i), "lift"));
        CHECK(carries == (6.0 + (double)i > from));
        if (!carries) continue;
        CHECK_RELATIVE(member(foil, i, "lift"), 900.0, 1e-5);
        CHECK_RELATIVE(member(foil, i, "section") + member(foil, i, "induced"),
                       member(foil, i, "drag"), 1e-9);
    }
    CHECK(top_number(json, "cavitates_at") > 24.0);
    json_decref(json);
}

// Speed goes as the root of the load over the greatest lift, which grows by some per cent while the
// Reynolds number doubles.
TEST_FUNCTION(four_times_the_load_takes_a_little_less_than_twice_the_speed)
{
    json_t *one = json_answer(BOAT "--load '400 N'"), *four = json_answer(BOAT "--load '1600 N'");
    const double ratio = top_number(four, "takes_off_at") / top_number(one, "takes_off_at");
    CHECK(ratio < 2.0 && ratio > 1.9);
    json_decref(one);
    json_decref(four);
}

TEST_FUNCTION(a_flap_down_takes_off_sooner_and_less_depth_carries_less)
{
    json_t *plain = json_answer(BOAT), *flap = json_answer(BOAT "--flap '8 deg'");
    CHECK(top_number(flap, "takes_off_at") < top_number(plain, "takes_off_at"));
    json_t *deep = json_answer(BOAT "--alpha 4"),
           *near = json_answer(BOAT "--alpha 4 --depth '5 cm'");
    CHECK(member(json_rows(near, "foil"), 0, "lift") <
          0.9 * member(json_rows(deep, "foil"), 0, "lift"));
    json_decref(plain);
    json_decref(flap);
    json_decref(deep);
    json_decref(near);
}

// Lift over drag of foils by themselves is that of the flight: the same forces.
TEST_FUNCTION(the_foils_drag_is_that_of_the_balance)
{
    json_t *flight = json_answer("fly" DEMO "--wind 12kn --heading 90deg --heel 0deg");
    char words[500];
    const double speed = json_number(flight, "flight", "speed");
    const double depth = 1.0 - 0.01 * json_number(flight, "flight", "ride_height");
    double drag = 0.0;
    for (int i = 0; i < 2; i++) {
        const double lift = json_number(flight, "forces", i ? "rudder_lift" : "main_lift");
        char flap[40] = "";
        if (i == 0)
            snprintf(flap, sizeof flap, "--flap '%.9g deg'", json_number(flight, "flight", "flap"));
        snprintf(words, sizeof words,
                 "foil" DEMO "--part %s --load '%.9g N' --speed '%.9g kn' --depth '%.9g m' %s",
                 i ? "rudder" : "main", lift, speed, i ? depth + 0.05 : depth, flap);
        json_t *json = json_answer(words);
        drag += member(json_rows(json, "foil"), 0, "drag");
        json_decref(json);
    }
    CHECK_RELATIVE(drag, json_number(flight, "forces", "foil_drag"), 0.02);
    json_decref(flight);
}

TEST_FUNCTION(the_section_named_decides_the_pressures_only)
{
    json_t *thin = json_answer(BOAT "--section 'NACA 2409' --speed '16 kn'");
    json_t *thick = json_answer(BOAT "--section 'NACA 2415' --speed '16 kn'");
    const json_t *a = json_rows(thin, "foil"), *b = json_rows(thick, "foil");
    CHECK(member(a, 0, "least_pressure") != member(b, 0, "least_pressure"));
    CHECK_NEAR(member(a, 0, "drag"), member(b, 0, "drag"), 1e-9);
    json_decref(thin);
    json_decref(thick);
}

// NACA 63-412 given in the boat is the same as given on the line; without a name it is said so.
TEST_FUNCTION(a_foil_has_the_pressures_of_the_boats_own_section)
{
    json_t *own = json_answer(BOAT "--part main --set main_section='NACA 63-412'");
    json_t *named = json_answer(BOAT "--part main --section 'NACA 63-412'");
    json_t *measured = json_answer(BOAT "--part main");
    CHECK(strstr(json_string_value(json_object_get(own, "section")), "63-412") != NULL);
    const double low = member(json_rows(own, "foil"), 6, "least_pressure");
    CHECK_RELATIVE(low, member(json_rows(named, "foil"), 6, "least_pressure"), 0.02);
    CHECK(fabs(low - member(json_rows(measured, "foil"), 6, "least_pressure")) > 0.01);
    CHECK(lullwise(BOAT "--part main") == 0 && answer_has("not known by name"));
    CHECK(lullwise(BOAT "--part main --set main_section='NACA 63-412'") == 0);
    CHECK(answer_has("NACA 63-412") && !answer_has("not known by name"));
    json_decref(own), json_decref(named), json_decref(measured);
}

TEST_FUNCTION(a_foils_picture_says_whose_section_and_where)
{
    CHECK(lullwise(BOAT "--part main --set main_section='NACA 63-412' --flap '5 deg' --svg -") ==
          0);
    CHECK(strncmp(answer, "<svg", 4) == 0 && answer_has("</svg>") && !answer_has("nan"));
    CHECK(answer_has("main foil, NACA 63-412<") && answer_has("0.50 m deep, flap +5.0°"));
    CHECK(answer_has("carrying 1030 N") && answer_has(">10 kn<") && answer_has(">28 kn<"));
    CHECK(!answer_has("textLength"));
    CHECK(lullwise(BOAT "--part main --set boat.name='A very long name that a proud owner gave "
                        "to his beloved boat' --svg -") == 0);
    CHECK(answer_has(" textLength=\"715\" lengthAdjust=\"spacingAndGlyphs\">A very long name"));
    CHECK(lullwise(BOAT "--part main --load '1300 N' --svg -") == 0);
    CHECK(answer_has("carrying 1300 N") && !answer_has(">8 kn<") && !answer_has("nan"));
    CHECK(lullwise(BOAT "--part rudder --heel '10 deg' --svg -") == 0);
    CHECK(answer_has("rudder foil, a four-digit section, 11.0 % thick<"));
    CHECK(answer_has("heeled 10°, at 12 kn") && answer_has("°<"));
    CHECK(lullwise(BOAT "--part main --svg no/such/folder.svg") == 2);
}

TEST_FUNCTION(a_load_beyond_all_speeds_is_no_answer)
{
    CHECK(lullwise(BOAT
                   "--load '20000 N' --depth '2 cm' --heel '45 deg' --set main_foil.span='40 cm' "
                   "--set main_foil.root_chord='62 mm'") == 1);
}

TEST_FUNCTION(wrong_questions_of_a_whole_foil_end_with_two)
{
    CHECK(lullwise(BOAT "--part keel") == 2 && answer_has("expected"));
    CHECK(lullwise(BOAT "--part rudder --flap '5 deg'") == 2 && answer_has("no flap"));
    CHECK(lullwise(BOAT "--load 900") == 2 && answer_has("no unit"));
    CHECK(lullwise(BOAT "--load '900 N' --alpha 3") == 2 && answer_has("leave one out"));
    CHECK(lullwise(BOAT "--alpha 0:4:1 --speed '8:12:1 kn'") == 2 && answer_has("one speed"));
    CHECK(lullwise(BOAT "--section 'NACA 9'") == 2 && answer_has("designation"));
    CHECK(lullwise("foil --section 0012 --load '900 N'") == 2 && answer_has("whole foil"));
    CHECK(lullwise("foil --boat nowhere.yaml --part main") == 2 && answer_has("no such file"));
}

TEST_FUNCTION(the_text_fits_eighty_columns)
{
    static const char *const runs[] = {BOAT, BOAT "--part rudder --heel '45 deg' --depth '0 m'",
                                       BOAT "--load '20000 N' --speed '60:80:1 kn'"};
    texts_fit(runs, sizeof runs / sizeof runs[0]);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_foil_carries_its_load_at_every_speed_from_take_off_on),
        TEST(four_times_the_load_takes_a_little_less_than_twice_the_speed),
        TEST(a_flap_down_takes_off_sooner_and_less_depth_carries_less),
        TEST(the_foils_drag_is_that_of_the_balance),
        TEST(the_section_named_decides_the_pressures_only),
        TEST(a_foil_has_the_pressures_of_the_boats_own_section),
        TEST(a_foils_picture_says_whose_section_and_where),
        TEST(a_load_beyond_all_speeds_is_no_answer),
        TEST(wrong_questions_of_a_whole_foil_end_with_two),
        TEST(the_text_fits_eighty_columns),
    };
    return RUN_TESTS(tests);
}
