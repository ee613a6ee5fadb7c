// test_record_file.c - claims about records read from texts: what is taken, what is not.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <stdlib.h>

#include "test/record_checks.h"

// clang-format off
// --- what is taken

TEST_FUNCTION(values_are_read_in_any_unit_and_stored_in_si)
{
    check_reads(&lw_boat_record, "name: Blue boat  # at the lake\n" REST_OF_BOAT
                                 "pins:\n  A: 3 deg\n  \"low, soft\": 0,01 rad\n");
    const lw_boat *boat = &data.boat;
    CHECK_TEXT(boat->name, "Blue boat");
    CHECK(boat->hull.length == 3.35);
    CHECK(boat->pin_count == 2);
    CHECK_NEAR(boat->pins[0].incidence, 3.0 * LW_DEG, 1e-15);
    CHECK_TEXT(boat->pins[1].label, "low, soft");
    CHECK(boat->pins[1].incidence == 0.01);
}

TEST_FUNCTION(a_day_has_lists_of_values_and_of_structs)
{
    check_reads(&lw_day_record,
                "readings: [9 kn, 12 kn,\n  5 m/s]\nlegs:\n- {heading: 45 deg, length: 0.4 nmi}\n");
    const lw_day *day = &data.day;
    CHECK(day->reading_count == 3 && !day->has_wind && !day->has_forecast);
    CHECK(day->readings[2] == 5.0);
    CHECK_NEAR(day->legs[0].length, 740.8, 1e-9);
    CHECK_TEXT(day->aim, "race");
}

TEST_FUNCTION(an_optional_section_tells_whether_it_was_given)
{
    check_reads(&lw_day_record, "forecast: {mean: 14 kn}\n" LEGS);
    CHECK(data.day.has_forecast && !data.day.has_wind);
    CHECK(data.day.forecast.height == 10.0);
}

TEST_FUNCTION(windows_line_ends_a_byte_order_mark_and_a_decimal_comma_are_taken)
{
    check_reads(&lw_sailor_record,
                "\xEF\xBB\xBFname: Zo\xC3\xAB\r\nperson:\r\n  mass: 62,5 kg\r\n");
    CHECK(data.sailor.person.mass == 62.5);
    CHECK_TEXT(data.sailor.name, "Zo\xC3\xAB");
}

TEST_FUNCTION(starter_files_read_back_without_fault_or_doubt)
{
    for (size_t i = 0; lw_records[i]; i++) {
        char *text = NULL;
        size_t length = 0;
        FILE *out = open_memstream(&text, &length);
        lw_record_write(lw_records[i], NULL, out);
        fclose(out);
        check_reads(lw_records[i], text);
        lw_faults none = {0};
        CHECK(lw_record_recognise(&(lw_source_text){"file", text, length}, &none) == lw_records[i]);
        CHECK(none.count == 0);

        any_record example;
        lw_record_example(lw_records[i], &example);
        CHECK(memcmp(&example, &data, sizeof(size_t)) == 0);
        free(text);
    }
}

TEST_FUNCTION(starter_files_keep_within_eighty_columns)
{
    for (size_t i = 0; lw_records[i]; i++) {
        char *text = NULL;
        size_t length = 0;
        FILE *out = open_memstream(&text, &length);
        lw_record_write(lw_records[i], NULL, out);
        fclose(out);
        for (const char *line = text; *line; line += strcspn(line, "\n") + 1) {
            CHECK(strcspn(line, "\n") <= 80);
        }
        free(text);
    }
}

static bool boat_reads_back(const double *x)
{
    lw_boat boat;
    lw_record_example(&lw_boat_record, &boat);
    snprintf(boat.name, sizeof boat.name, "a \"b\" \\ #: %.3g", x[0]);
    snprintf(boat.pins[1].label, sizeof boat.pins[1].label, "- b%d", (int)x[0]);
    boat.main_foil.span = x[0], boat.linkage.rod = x[1] * LW_DEG;

    char *text = NULL;
    size_t length = 0;
    FILE *out = open_memstream(&text, &length);
    lw_record_write(&lw_boat_record, &boat, out);
    fclose(out);
    lw_faults faults = {0};
    const lw_source_text source = {"x", text, length};
    const bool is_read = lw_record_read_text(&lw_boat_record, &source, &data, &faults);
    lw_faults_free(&faults);
    free(text);
    return is_read && strcmp(boat.name, data.boat.name) == 0 &&
           strcmp(boat.pins[1].label, data.boat.pins[1].label) == 0 &&
           fabs(boat.main_foil.span - data.boat.main_foil.span) < 1e-8 &&
           fabs(boat.linkage.rod - data.boat.linkage.rod) < 1e-8;
}

TEST_FUNCTION(a_written_boat_reads_back) { CHECK_HOLDS(boat_reads_back, 200, {0.4, 1.6}, {-6, 6}); }

// --- keys and sections

TEST_FUNCTION(an_unknown_key_is_named_with_the_nearest)
{
    check_fault(&lw_sailor_record, "person:\n  mass: 75 kg\n  gaer: 4 kg\n",
                (lw_fault){.sentence = "there is no such key", .line = 3, .column = 3,
                .key = "person.gaer", .read = "gaer", .hint = "gear"});
}

TEST_FUNCTION(an_unknown_section_is_named_with_the_nearest)
{
    check_fault(&lw_day_record, WIND LEGS "watr:\n  salinity: 0 g/kg\n",
                (lw_fault){.sentence = "there is no such key", .line = 5, .column = 1,
                .key = "watr", .read = "watr", .hint = "water"});
}

TEST_FUNCTION(a_key_of_another_section_is_sent_there)
{
    check_fault(&lw_day_record, "salinity: 0 g/kg\n" WIND LEGS,
                (lw_fault){.sentence = "this key belongs under water:", .line = 1, .column = 1,
                .key = "salinity", .read = "salinity", .hint = "water.salinity"});
}

TEST_FUNCTION(a_missing_section_is_named)
{
    check_fault(&lw_day_record, WIND,
                (lw_fault){.sentence = "the section is missing", .line = 2, .column = 1,
                .key = "legs",
                .expected = "legs: and its values, as `lullwise new day` writes them"});
}

TEST_FUNCTION(a_missing_value_that_must_be_given_is_named_at_its_section)
{
    check_fault(&lw_sailor_record, "name: A\nperson:\n  gear: 4 kg\n",
                (lw_fault){.sentence = "this value is missing", .line = 2, .column = 1,
                .key = "person.mass", .expected = "25 to 150 kg"});
    check_fault(&lw_day_record, WIND "legs:\n  - length: 800 m\n",
                (lw_fault){.sentence = "this value is missing", .line = 3, .column = 5,
                .key = "legs[0].heading", .expected = "-180 to 180°"});
}

TEST_FUNCTION(a_key_given_twice_is_refused)
{
    check_fault(&lw_sailor_record, "person:\n  mass: 75 kg\n  mass: 76 kg\n",
                (lw_fault){.sentence = "this key was given before: keep one of the two", .line = 3,
                .column = 3, .key = "person.mass", .read = "mass"});
    check_fault(&lw_sailor_record, "person: {mass: 75 kg}\nperson: {mass: 76 kg}\n",
                (lw_fault){.sentence = "this key was given before: keep one of the two", .line = 2,
                .column = 1, .key = "person", .read = "person"});
    check_fault(&lw_sailor_record, "name: A\nperson: {mass: 75 kg}\nname: B\n",
                (lw_fault){.sentence = "this key was given before: keep one of the two", .line = 3,
                .column = 1, .key = "name", .read = "name"});
}

TEST_FUNCTION(a_section_that_is_empty_or_one_value_is_refused)
{
    check_fault(&lw_day_record, "water:\n" WIND LEGS,
                (lw_fault){.sentence = "the section is empty", .line = 1, .column = 7,
                .key = "water"});
    check_fault(&lw_day_record, "water: wet\n" WIND LEGS,
                (lw_fault){.sentence = "`key: value` lines are expected here, indented", .line = 1,
                .column = 8, .key = "water", .read = "wet"});
    check_fault(&lw_day_record, WIND LEGS "readings: {a: 3 kn}\n",
                (lw_fault){.sentence = "a list is expected here: lines that begin with -",
                .line = 5, .column = 11, .key = "readings"});
}

// --- values

TEST_FUNCTION(a_number_without_its_unit_is_refused_with_a_likely_one)
{
    check_fault(&lw_sailor_record, "person:\n  mass: 75 kg\n  hike: 35\n",
                (lw_fault){.sentence = "the number has no unit", .line = 3, .column = 9,
                .key = "person.hike", .read = "35", .expected = "0 to 0.8 m", .hint = "35 cm"});
}

TEST_FUNCTION(a_unit_of_another_kind_and_an_unknown_one_are_refused)
{
    check_fault(&lw_sailor_record, "person:\n  mass: 75 kg\n  hike: 0.35 kn\n",
                (lw_fault){.sentence = "\"kn\" does not measure this", .line = 3, .column = 9,
                .key = "person.hike", .read = "0.35 kn", .expected = "0 to 0.8 m",
                .hint = "0.35 m"});
    check_fault(&lw_sailor_record, "person:\n  mass: 75 kgs\n",
                (lw_fault){.sentence = "there is no unit \"kgs\"", .line = 2, .column = 9,
                .key = "person.mass", .read = "75 kgs", .expected = "25 to 150 kg", .hint = "kg"});
}

TEST_FUNCTION(a_value_out_of_range_is_refused)
{
    check_fault(&lw_sailor_record, "person:\n  mass: 750 kg\n",
                (lw_fault){.sentence = "the value lies outside its range", .line = 2, .column = 9,
                .key = "person.mass", .read = "750 kg", .expected = "25 to 150 kg"});
    check_fault(&lw_sailor_record, "person:\n  mass: 75 kg\n  hike: 35 m\n",
                (lw_fault){.sentence = "the value lies outside its range", .line = 3, .column = 9,
                .key = "person.hike", .read = "35 m", .expected = "0 to 0.8 m", .hint = "35 cm"});
}

TEST_FUNCTION(nan_infinity_words_and_nothing_are_no_numbers)
{
    static const char *const words[] = {"nan kg", "inf kg", "-Infinity kg", "heavy", "0x4B kg"};
    for (size_t i = 0; i < sizeof words / sizeof words[0]; i++) {
        char text[80];
        const bool is_hex = i == 4;  // a zero, and a unit that there is not
        snprintf(text, sizeof text, "person:\n  mass: %s\n", words[i]);
        lw_fault want = {.sentence = "this is not a number",
                         .line = 2,
                         .column = 9,
                         .key = "person.mass",
                         .expected = "25 to 150 kg"};
        snprintf(want.read, sizeof want.read, "%s", words[i]);
        if (is_hex) snprintf(want.sentence, sizeof want.sentence, "there is no unit \"x4B kg\"");
        check_fault(&lw_sailor_record, text, want);
    }
    check_fault(&lw_sailor_record, "person:\n  mass:\n",
                (lw_fault){.sentence = "no value is given", .line = 2, .column = 8,
                .key = "person.mass", .expected = "25 to 150 kg"});
}

TEST_FUNCTION(a_list_where_a_value_belongs_is_refused_and_passed_over)
{
    check_fault(&lw_sailor_record, "person:\n  mass: [75 kg, {a: [b]}]\n  gear: 4 kg\n",
                (lw_fault){.sentence = "one value is expected here, not a list or a section",
                .line = 2, .column = 9, .key = "person.mass", .expected = "25 to 150 kg"});
}

TEST_FUNCTION(an_unusual_value_is_taken_with_a_doubt)
{
    lw_faults faults = {0};
    CHECK(read_text(&lw_sailor_record, "person:\n  mass: 75 kg\n  hike: 70 cm\n", &faults));
    CHECK(faults.fault_count == 0);
    assert_int_equal(faults.count, 1);
    const lw_fault want = {.sentence = "unusual, but taken",
                           .line = 3,
                           .column = 9,
                           .key = "person.hike",
                           .read = "70 cm",
                           .expected = "usually 0.15 to 0.55 m",
                           .is_doubt = true};
    check_is(&faults.list[0], &want);
    CHECK_NEAR(data.sailor.person.hike, 0.7, 1e-15);
    lw_faults_free(&faults);
}

TEST_FUNCTION(texts_are_bounded_and_words_are_those_allowed)
{
    check_fault(&lw_day_record, "aim: win\n" WIND LEGS,
                (lw_fault){.sentence = "this word is not one of those allowed", .line = 1,
                .column = 6, .key = "aim", .read = "win", .expected = "race, steady or easy"});
    check_fault(&lw_sailor_record,
                "name: 0123456789012345678901234567890123456789012345678901234567890123\n"
                "person: {mass: 75 kg}\n",
                (lw_fault){.sentence = "the text is too long", .line = 1, .column = 7,
                .key = "name",
                .read = "012345678901234567890123456789012345678901234567890123456789" "...",
                .expected = "a text of up to 63 bytes"});
    check_fault(&lw_sailor_record, "name: \"a\\x1b[2Jb\"\nperson: {mass: 75 kg}\n",
                (lw_fault){.sentence = "a character that cannot be shown stands in the text",
                .line = 1, .column = 7, .key = "name", .read = "a [2Jb",
                .expected = "a text of up to 63 bytes"});
    check_fault(&lw_sailor_record, "name: \"a\\u202Eb\"\nperson: {mass: 75 kg}\n",  // turned
                (lw_fault){.sentence = "a character that cannot be shown stands in the text",
                .line = 1, .column = 7, .key = "name", .read = "a?b",
                .expected = "a text of up to 63 bytes"});
}

// --- pins and lists

TEST_FUNCTION(pin_labels_must_be_there_short_and_different)
{
    check_fault(&lw_boat_record, REST_OF_BOAT "pins:\n  A: 3 deg\n  A: 2 deg\n",
                (lw_fault){.sentence = "this label was given before: labels must differ",
                .line = 12, .column = 3, .key = "pins.A", .read = "A"});
    check_fault(&lw_boat_record, REST_OF_BOAT "pins:\n  A: 3 deg\n  \"\": 2 deg\n",
                (lw_fault){.sentence = "the label is empty", .line = 12, .column = 3,
                .key = "pins.", .expected = "a label of 1 to 15 bytes"});
    check_fault(&lw_boat_record, REST_OF_BOAT "pins:\n  A: 3 deg\n  the-second-of-all: 2 deg\n",
                (lw_fault){.sentence = "the label is too long", .line = 12, .column = 3,
                .key = "pins.the-second-of-all", .read = "the-second-of-all",
                .expected = "a label of 1 to 15 bytes"});
}

TEST_FUNCTION(a_list_that_is_too_long_is_refused_once)
{
    char text[4000] = REST_OF_BOAT "pins:\n";
    for (int i = 0; i < 20; i++) {
        const size_t length = strlen(text);
        snprintf(text + length, sizeof text - length, "  p%d: %.1f deg\n", i, 5.0 - 0.1 * i);
    }
    check_fault(&lw_boat_record, text,
                (lw_fault){.sentence = "the list is too long", .line = 23, .column = 3,
                .key = "pins", .expected = "12 at most"});
}

TEST_FUNCTION(too_many_readings_and_legs_are_refused_once)
{
    static char text[40000];
    strcpy(text, LEGS "readings:\n");
    for (int i = 0; i < 700; i++) strcat(text, "- 10 kn\n");
    check_fault(&lw_day_record, text,
                (lw_fault){.sentence = "the list is too long", .line = 605, .column = 3,
                .key = "readings", .read = "10 kn", .expected = "600 at most"});
    strcpy(text, WIND "legs:\n");
    for (int i = 0; i < 15; i++) strcat(text, "- {heading: 0 deg, length: 100 m}\n");
    check_fault(&lw_day_record, text,
                (lw_fault){.sentence = "the list is too long", .line = 15, .column = 3,
                .key = "legs", .expected = "12 at most"});
}

TEST_FUNCTION(a_bad_reading_is_named_by_its_index)
{
    check_fault(&lw_day_record, LEGS "readings:\n  - 9 kn\n  - 10\n  - 11 kn\n",
                (lw_fault){.sentence = "the number has no unit", .line = 6, .column = 5,
                .key = "readings[1]", .read = "10", .expected = "0 to 60 kn", .hint = "10 kn"});
}

// --- what only the whole record shows

TEST_FUNCTION(a_contradiction_is_named_at_its_section)
{
    lw_faults faults = {0};
    CHECK(!read_text(&lw_boat_record, REST_OF_BOAT "pins:\n  A: 2 deg\n  B: 2 deg\n", &faults));
    assert_int_equal(faults.count, 1);
    assert_int_equal(faults.list[0].line, 10);
    CHECK_TEXT(faults.list[0].key, "pins");
    lw_faults_free(&faults);
}

TEST_FUNCTION(pins_stand_from_the_most_lift_to_the_least_however_they_were_written)
{
    lw_faults faults = {0};
    CHECK(read_text(&lw_boat_record,
                    REST_OF_BOAT "pins:\n  3: 1 deg\n  1: 3 deg\n  2: 2 deg\n", &faults));
    CHECK(data.boat.pin_count == 3 && faults.count == 0);
    CHECK_TEXT(data.boat.pins[0].label, "1");
    CHECK_TEXT(data.boat.pins[1].label, "2");
    CHECK(data.boat.pins[2].incidence == 1.0 * LW_DEG);
    lw_faults_free(&faults);
}

// 1.4 deg written for 4.1.
TEST_FUNCTION(an_angle_against_the_order_of_the_labels_is_doubted)
{
    lw_faults faults = {0};
    CHECK(read_text(&lw_boat_record,
                    REST_OF_BOAT "pins:\n  A: 1.4 deg\n  B: 3 deg\n  C: 2 deg\n  D: 1 deg\n",
                    &faults));
    assert_int_equal(faults.count, 1);
    CHECK(faults.list[0].is_doubt && faults.list[0].line == 10);
    CHECK_TEXT(faults.list[0].key, "pins.C");
    CHECK_TEXT(faults.list[0].sentence,
               "pin C has more lift than pin A, unlike the other labels; taken so");
    lw_faults_free(&faults);
    faults = (lw_faults){0};
    CHECK(read_text(&lw_boat_record,
                    REST_OF_BOAT "pins:\n  low: 1 deg\n  high: 3 deg\n  mid: 2 deg\n", &faults));
    CHECK(faults.count == 0);
}

TEST_FUNCTION(a_day_needs_one_wind_and_not_two)
{
    lw_faults faults = {0};
    CHECK(!read_text(&lw_day_record, LEGS, &faults));
    assert_int_equal(faults.count, 1);
    lw_faults_free(&faults);
    CHECK(!read_text(&lw_day_record, LEGS WIND "forecast: {mean: 12 kn}\n", &faults));
    assert_int_equal(faults.count, 1);
    assert_int_equal(faults.list[0].line, 4);
    lw_faults_free(&faults);
}
// clang-format on

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(values_are_read_in_any_unit_and_stored_in_si),
        TEST(a_day_has_lists_of_values_and_of_structs),
        TEST(an_optional_section_tells_whether_it_was_given),
        TEST(windows_line_ends_a_byte_order_mark_and_a_decimal_comma_are_taken),
        TEST(starter_files_read_back_without_fault_or_doubt),
        TEST(starter_files_keep_within_eighty_columns),
        TEST(a_written_boat_reads_back),
        TEST(an_unknown_key_is_named_with_the_nearest),
        TEST(an_unknown_section_is_named_with_the_nearest),
        TEST(a_key_of_another_section_is_sent_there),
        TEST(a_missing_section_is_named),
        TEST(a_missing_value_that_must_be_given_is_named_at_its_section),
        TEST(a_key_given_twice_is_refused),
        TEST(a_section_that_is_empty_or_one_value_is_refused),
        TEST(a_number_without_its_unit_is_refused_with_a_likely_one),
        TEST(a_unit_of_another_kind_and_an_unknown_one_are_refused),
        TEST(a_value_out_of_range_is_refused),
        TEST(nan_infinity_words_and_nothing_are_no_numbers),
        TEST(a_list_where_a_value_belongs_is_refused_and_passed_over),
        TEST(an_unusual_value_is_taken_with_a_doubt),
        TEST(texts_are_bounded_and_words_are_those_allowed),
        TEST(pin_labels_must_be_there_short_and_different),
        TEST(a_list_that_is_too_long_is_refused_once),
        TEST(too_many_readings_and_legs_are_refused_once),
        TEST(a_bad_reading_is_named_by_its_index),
        TEST(a_contradiction_is_named_at_its_section),
        TEST(pins_stand_from_the_most_lift_to_the_least_however_they_were_written),
        TEST(an_angle_against_the_order_of_the_labels_is_doubted),
        TEST(a_day_needs_one_wind_and_not_two),
    };
    return RUN_TESTS(tests);
}
