// test_json.c - claims about records as JSON.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include <stdlib.h>
#include <string.h>

#include "lullwise/boat.h"
#include "lullwise/day.h"
#include "records/json.h"
#include "records/record_file.h"
#include "test/check.h"

static json_t *member(json_t *object, const char *section, const char *key)
{
    return json_object_get(json_object_get(object, section), key);
}

TEST_FUNCTION(numbers_stand_in_the_unit_of_their_row)
{
    lw_boat boat;
    lw_record_example(&lw_boat_record, &boat);
    json_t *json = lw_record_json(&lw_boat_record, &boat);
    CHECK_TEXT(json_string_value(json_object_get(json, "record")), "boat");
    CHECK_TEXT(json_string_value(json_object_get(json, "name")), "Unnamed boat");
    CHECK(json_real_value(member(json, "main_foil", "zero_lift_angle")) == -2.5);
    CHECK_TEXT(
        json_string_value(member(json_object_get(json, "units"), "main_foil", "zero_lift_angle")),
        "deg");
    json_t *pin = json_array_get(json_object_get(json, "pins"), 1);
    CHECK_TEXT(json_string_value(json_object_get(pin, "label")), "B");
    CHECK(json_real_value(json_object_get(pin, "incidence")) == 2.0);
    json_decref(json);
}

TEST_FUNCTION(every_section_of_every_record_is_there)
{
    static union {
        lw_boat boat;
        lw_sailor sailor;
        lw_day day;
    } data;
    for (size_t i = 0; lw_records[i]; i++) {
        lw_record_example(lw_records[i], &data);
        json_t *json = lw_record_json(lw_records[i], &data);
        for (size_t k = 0; k < lw_records[i]->section_count; k++) {
            const lw_table *table = lw_records[i]->sections[k].table;
            CHECK(json_object_get(json, table->key));
            json_t *units = json_object_get(json_object_get(json, "units"), table->key);
            CHECK(json_object_size(units) == table->count);
        }
        json_decref(json);
    }
}

TEST_FUNCTION(an_optional_section_that_was_not_given_is_null)
{
    lw_day day;
    lw_record_example(&lw_day_record, &day);
    json_t *json = lw_record_json(&lw_day_record, &day);
    CHECK(json_is_null(json_object_get(json, "forecast")));
    CHECK(json_is_object(json_object_get(json, "wind")));
    CHECK(json_array_size(json_object_get(json, "readings")) == 0);
    json_decref(json);
}

TEST_FUNCTION(what_is_no_number_is_null)
{
    lw_person person;
    const lw_table *table = lw_sailor_record.sections[0].table;
    lw_table_preset(table, &person);
    person.mass = NAN, person.hike = INFINITY;
    json_t *json = lw_table_json(table, &person);
    CHECK(json_is_null(json_object_get(json, "mass")));
    CHECK(json_is_null(json_object_get(json, "hike")));
    json_decref(json);
}

TEST_FUNCTION(written_numbers_are_short_and_end_with_a_newline)
{
    lw_person person;
    const lw_table *table = lw_sailor_record.sections[0].table;
    lw_table_preset(table, &person);
    person.hike = 0.1 + 0.2;
    char *text = NULL;
    size_t length = 0;
    FILE *out = open_memstream(&text, &length);
    CHECK(lw_json_write(lw_table_json(table, &person), out));
    fclose(out);
    CHECK(strstr(text, "\"hike\": 0.3,"));
    CHECK(text[length - 1] == '\n');
    free(text);
}

TEST_FUNCTION(a_full_device_is_reported)
{
    FILE *out = fopen("/dev/full", "w");
    if (!out) skip();
    CHECK(!lw_json_write(json_integer(1), out));
    fclose(out);
    CHECK(!lw_json_write(NULL, stdout));
}

TEST_FUNCTION(faults_carry_place_and_kind)
{
    lw_sailor sailor;
    lw_faults faults = {0};
    const char *text = "person:\n  mass: 110 kg\n  hike: 35\n";
    const lw_source_text source = {"x.yaml", text, strlen(text)};
    lw_record_read_text(&lw_sailor_record, &source, &sailor, &faults);
    json_t *json = lw_faults_json(&faults);
    CHECK(json_array_size(json) == 2);
    CHECK(json_is_true(json_object_get(json_array_get(json, 0), "doubt")));
    json_t *fault = json_array_get(json, 1);
    CHECK(json_integer_value(json_object_get(fault, "line")) == 3);
    CHECK(json_integer_value(json_object_get(fault, "column")) == 9);
    CHECK_TEXT(json_string_value(json_object_get(fault, "key")), "person.hike");
    CHECK_TEXT(json_string_value(json_object_get(fault, "hint")), "35 cm");
    json_decref(json);
    lw_faults_free(&faults);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(numbers_stand_in_the_unit_of_their_row),
        TEST(every_section_of_every_record_is_there),
        TEST(an_optional_section_that_was_not_given_is_null),
        TEST(what_is_no_number_is_null),
        TEST(written_numbers_are_short_and_end_with_a_newline),
        TEST(a_full_device_is_reported),
        TEST(faults_carry_place_and_kind),
    };
    return RUN_TESTS(tests);
}
