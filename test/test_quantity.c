// test_quantity.c - claims about reading numbers and units, and about every table of quantities.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "lullwise/boat.h"
#include "lullwise/day.h"
#include "lullwise/order.h"
#include "test/check.h"

static const lw_record *const records[] = {&lw_boat_record, &lw_sailor_record, &lw_day_record};
#define RECORD_COUNT (sizeof records / sizeof records[0])

// Calls `see` for each table of each record.
static void for_each_table(void (*see)(const lw_table *))
{
    for (size_t r = 0; r < RECORD_COUNT; r++) {
        for (size_t s = 0; s < records[r]->section_count; s++) see(records[r]->sections[s].table);
    }
}

static double read_decimal(const char *text)
{
    double value = NAN;
    const char *rest;
    if (!lw_decimal_read(text, &value, &rest) || *rest != '\0') return NAN;
    return value;
}

static const lw_quantity length = {
    .key = "span", .unit = LW_UNIT_M, .min = 0.4, .max = 2.5, .usual_min = 0.8, .usual_max = 1.2};
static const lw_quantity angle = {.key = "angle", .unit = LW_UNIT_DEG, .min = -25.0, .max = 25.0};
static const lw_quantity part = {.key = "part", .unit = LW_UNIT_NONE, .min = 0.0, .max = 1.0};

static lw_status status_of(const lw_quantity *row, const char *text)
{
    double si = 77.0;
    const lw_status status = lw_quantity_read(row, text, &si);
    if (status != LW_OK) CHECK(si == 77.0);
    return status;
}

static double read_as(const lw_quantity *row, const char *text)
{
    double si = NAN;
    CHECK(lw_quantity_read(row, text, &si) == LW_OK);
    return si;
}

TEST_FUNCTION(decimals_of_fifteen_digits_are_the_nearest_double)
{
    CHECK(read_decimal("0.1") == 0.1);
    CHECK(read_decimal("123456789012345e-22") == 123456789012345e-22);
    CHECK(read_decimal("0.000123456789012345") == 0.000123456789012345);
    CHECK(read_decimal("9.80665") == 9.80665);
    CHECK(read_decimal("1.0500000000000000000000") == 1.05);
    CHECK(read_decimal("6.02214076e23") == 6.02214076e23);
}

static bool reads_back(const double *x)
{
    char text[64];
    snprintf(text, sizeof text, "%.15g", x[0] * pow(10.0, floor(x[1])));
    return read_decimal(text) == strtod(text, NULL);
}

TEST_FUNCTION(decimals_agree_with_the_library_in_the_range_of_exact_powers)
{
    CHECK_HOLDS(reads_back, 20000, {-10.0, 10.0}, {-6.0, 6.0});
}

static bool is_within_two_ulp(const double *x)
{
    char text[64];
    snprintf(text, sizeof text, "%.17g", x[0] * pow(10.0, floor(x[1])));
    const double want = strtod(text, NULL), got = read_decimal(text);
    return fabs(got - want) <= 2.0 * (nextafter(fabs(want), INFINITY) - fabs(want));
}

TEST_FUNCTION(decimals_of_seventeen_digits_are_within_two_ulp)
{
    CHECK_HOLDS(is_within_two_ulp, 20000, {-10.0, 10.0}, {-20.0, 20.0});
}

TEST_FUNCTION(a_decimal_takes_comma_sign_and_typographic_minus)
{
    CHECK(read_decimal("1,05") == 1.05);
    CHECK(read_decimal("+2") == 2.0);
    CHECK(read_decimal("\xE2\x88\x92"
                       "2.5") == -2.5);
    CHECK(read_decimal(".5") == 0.5);
    CHECK(read_decimal("5.") == 5.0);
}

TEST_FUNCTION(words_and_overflow_are_no_decimals)
{
    static const char *const texts[] = {"",   "nan", "inf",   "-inf", "NaN",   ".",     "-",
                                        "e5", "0x1", "1e999", "--1",  "1,5,3", "1.2.3", ","};
    for (size_t i = 0; i < sizeof texts / sizeof texts[0]; i++)
        CHECK(isnan(read_decimal(texts[i])));
}

TEST_FUNCTION(very_long_decimals_do_not_overflow)
{
    char text[2000];
    memset(text, '9', sizeof text);
    text[1] = '.', text[sizeof text - 1] = '\0';
    CHECK_RELATIVE(read_decimal(text), 10.0, 1e-15);
    memset(text, '0', sizeof text);
    text[1] = '.', text[sizeof text - 2] = '1', text[sizeof text - 1] = '\0';
    CHECK(read_decimal(text) == 0.0);
    CHECK(read_decimal("1e-999999999999") == 0.0);
}

TEST_FUNCTION(a_quantity_takes_any_unit_of_its_dimension)
{
    CHECK(read_as(&length, "0.98 m") == 0.98);
    CHECK_NEAR(read_as(&length, "98 cm"), 0.98, 1e-15);
    CHECK_NEAR(read_as(&length, "980mm"), 0.98, 1e-15);
    CHECK_NEAR(read_as(&length,
                       "  98\xC2\xA0"
                       "cm "),
               0.98, 1e-15);
    CHECK_NEAR(read_as(&angle, "0.1 rad"), 0.1, 1e-15);
    CHECK_NEAR(read_as(&angle, "10\xC2\xB0"), 10.0 * LW_DEG, 1e-15);
    CHECK(read_as(&part, "0.25") == 0.25);
    CHECK(read_as(&part, "25 %") == 0.25);
}

TEST_FUNCTION(a_quantity_takes_the_ends_of_its_range_in_every_unit)
{
    CHECK(status_of(&angle, "25 deg") == LW_OK);
    CHECK(status_of(&angle, "-25 deg") == LW_OK);
    CHECK(status_of(&length, "40 cm") == LW_OK);
    CHECK(status_of(&length, "2500 mm") == LW_OK);
    CHECK(status_of(&angle, "25.001 deg") == LW_OUT_OF_RANGE);
}

TEST_FUNCTION(a_quantity_refuses_what_is_wrong_and_sets_nothing)
{
    CHECK(status_of(&length, "wide") == LW_BAD_NUMBER);
    CHECK(status_of(&length, "") == LW_BAD_NUMBER);
    CHECK(status_of(&length, "nan m") == LW_BAD_NUMBER);
    CHECK(status_of(&length, "inf m") == LW_BAD_NUMBER);
    CHECK(status_of(&length, "1 013 m") == LW_BAD_NUMBER);
    CHECK(status_of(&length, "1.5.2 m") == LW_BAD_NUMBER);
    CHECK(status_of(&length, "0.98") == LW_UNIT_MISSING);
    CHECK(status_of(&length, "0.98 deg") == LW_BAD_UNIT);
    CHECK(status_of(&length, "0.98 m wide") == LW_BAD_UNIT);
    CHECK(status_of(&length, "98 m") == LW_OUT_OF_RANGE);
    CHECK(status_of(&part, "0.5 m") == LW_BAD_UNIT);
}

TEST_FUNCTION(a_value_outside_the_usual_band_is_doubtful)
{
    CHECK(!lw_quantity_is_doubtful(&length, 0.8));
    CHECK(lw_quantity_is_doubtful(&length, 0.79));
    CHECK(lw_quantity_is_doubtful(&length, 1.3));
    CHECK(!lw_quantity_is_doubtful(&angle, 0.4));  // no band given
}

TEST_FUNCTION(every_unit_reads_its_own_text_and_sign)
{
    for (int unit = 0; unit < LW_UNIT_COUNT; unit++) {
        CHECK(lw_unit_of(lw_unit_text((lw_unit)unit)) == (lw_unit)unit);
        CHECK(lw_unit_of(lw_unit_sign((lw_unit)unit)) == (lw_unit)unit);
        CHECK(lw_unit_of(lw_unit_behind((lw_unit)unit)) == (lw_unit)unit);
    }
    CHECK(lw_unit_of("furlongs") == LW_UNIT_COUNT);
    CHECK(lw_unit_of("M") == LW_UNIT_COUNT);
}

TEST_FUNCTION(a_degree_stands_close_to_its_number_and_other_units_apart)
{
    CHECK_TEXT(lw_unit_behind(LW_UNIT_DEG), "°");
    CHECK_TEXT(lw_unit_behind(LW_UNIT_DEGPTURN), "°/turn");
    CHECK_TEXT(lw_unit_behind(LW_UNIT_DEGC), " °C");
    CHECK_TEXT(lw_unit_behind(LW_UNIT_M2), " m²");
    CHECK_TEXT(lw_unit_sign(LW_UNIT_M2), "m²");
    CHECK_TEXT(lw_unit_sign(LW_UNIT_NONE), "");
}

TEST_FUNCTION(distance_counts_single_edits)
{
    CHECK(lw_text_distance("span", "span") == 0);
    CHECK(lw_text_distance("spn", "span") == 1);
    CHECK(lw_text_distance("kitten", "sitting") == 3);
    CHECK(lw_text_distance("", "abc") == 3);
    CHECK(lw_text_distance("Span", "span") == 0);
    CHECK(lw_text_distance("nmae", "name") == 1);
    CHECK(lw_text_distance("ab", "ba") == 1);
}

TEST_FUNCTION(the_nearest_key_is_found_and_a_far_one_is_not)
{
    const lw_table *hull = lw_boat_record.sections[0].table;
    CHECK_TEXT(lw_table_nearest(hull, "lenght")->key, "length");
    CHECK_TEXT(lw_table_nearest(hull, "windage")->key, "windage_area");
    CHECK(lw_table_nearest(hull, "spinnaker") == NULL);
    CHECK(lw_table_nearest(hull, "spam") == NULL);
    CHECK(lw_table_nearest(hull, "") == NULL);
}

static void check_rows(const lw_table *table)
{
    for (size_t i = 0; i < table->count; i++) {
        const lw_quantity *row = &table->rows[i];
        CHECK(row->offset == i * sizeof(double));
        CHECK(lw_table_find(table, row->key) == row);
        CHECK(row->symbol && row->symbol[0]);
        CHECK(row->doc && strlen(row->doc) > 10);
        CHECK(row->error >= 0.0 && row->decimals >= 0);
    }
}

TEST_FUNCTION(rows_stand_in_the_order_of_the_members) { for_each_table(check_rows); }

static void check_presets(const lw_table *table)
{
    double data[32] = {0};
    CHECK(table->count <= sizeof data / sizeof data[0]);
    lw_table_preset(table, data);
    CHECK(lw_table_check(table, data) == NULL);
    for (size_t i = 0; i < table->count; i++) {
        const lw_quantity *row = &table->rows[i];
        CHECK(row->usual_min >= row->min && row->usual_max <= row->max);
        const bool is_not_given =
            row->preset == 0.0 && lw_unit_same_dimension(row->unit, LW_UNIT_KN);
        if (!is_not_given) CHECK(!lw_quantity_is_doubtful(row, lw_quantity_value(row, data)));
        CHECK_RELATIVE(lw_quantity_shown(row, data) + 1.0, row->preset + 1.0, 1e-14);
    }
}

TEST_FUNCTION(presets_lie_in_range_and_in_the_usual_band) { for_each_table(check_presets); }

TEST_FUNCTION(a_table_check_finds_what_is_out_of_range_and_nan)
{
    lw_person person;
    const lw_table *table = lw_sailor_record.sections[0].table;
    lw_table_preset(table, &person);
    person.hike = 3.0;
    CHECK_TEXT(lw_table_check(table, &person)->key, "hike");
    person.hike = NAN;
    CHECK_TEXT(lw_table_check(table, &person)->key, "hike");
}

static lw_boat sound_boat(void)
{
    lw_boat boat;
    lw_record_preset(&lw_boat_record, &boat);
    boat.pin_count = 3;
    for (size_t i = 0; i < 3; i++) {
        boat.pins[i].incidence = (3.0 - (double)i) * LW_DEG;
        boat.pins[i].label[0] = (char)('A' + i);
    }
    return boat;
}

static const char *section_at_fault(const lw_boat *boat)
{
    const char *why = NULL;
    const char *section = lw_boat_contradiction(boat, &why);
    CHECK((section != NULL) == (why != NULL));
    return section ? section : "none";
}

TEST_FUNCTION(the_preset_boat_with_pins_is_sound)
{
    const lw_boat boat = sound_boat();
    CHECK_TEXT(section_at_fault(&boat), "none");
}

TEST_FUNCTION(contradictions_name_their_section)
{
    lw_boat boat = sound_boat();
    boat.hull.block = 0.75;
    CHECK_TEXT(section_at_fault(&boat), "hull");

    boat = sound_boat(), boat.hull.draft = 0.08;  // floats 55 kg: less than the boat and 40 kg
    CHECK_TEXT(section_at_fault(&boat), "hull");

    boat = sound_boat(), boat.main_foil.tip_chord = 0.2;
    CHECK_TEXT(section_at_fault(&boat), "main_foil");

    boat = sound_boat(), boat.rudder_strut.x = 2.0;
    CHECK_TEXT(section_at_fault(&boat), "rudder_strut");

    boat = sound_boat(), boat.linkage.forward_stop = boat.linkage.aft_stop;
    CHECK_TEXT(section_at_fault(&boat), "linkage");

    boat = sound_boat(), boat.place.aft_x = 2.2;
    CHECK_TEXT(section_at_fault(&boat), "place");

    boat = sound_boat(), boat.pins[2].incidence = boat.pins[1].incidence;
    CHECK_TEXT(section_at_fault(&boat), "pins");

    boat = sound_boat(), boat.pin_count = 0;
    CHECK_TEXT(section_at_fault(&boat), "pins");
}

// Where a path's number stands in a record: SIZE_MAX when it names none.
static size_t place_of(const lw_record *record, const char *path)
{
    const char *dot = strchr(path, '.');
    for (size_t i = 0; dot && i < record->section_count; i++) {
        const lw_section *section = &record->sections[i];
        const size_t wide = strlen(section->table->key);
        if (wide != (size_t)(dot - path) || strncmp(section->table->key, path, wide)) continue;
        const lw_quantity *row = lw_table_find(section->table, dot + 1);
        return row ? section->offset + row->offset : SIZE_MAX;
    }
    return SIZE_MAX;
}

TEST_FUNCTION(every_order_is_between_two_numbers_of_its_record_and_fails_when_they_swap)
{
    union {
        lw_boat boat;
        lw_sailor sailor;
        lw_day day;
        char bytes[1];
    } data;
    size_t count = 0;
    for (size_t r = 0; r < RECORD_COUNT; r++) {
        for (const lw_order *order = lw_orders_of(records[r]); order->lesser; order++, count++) {
            CHECK(place_of(records[r], order->lesser) == order->lesser_offset);
            CHECK(place_of(records[r], order->greater) == order->greater_offset);
            lw_record_preset(records[r], &data);
            *(double *)(data.bytes + order->lesser_offset) = 2.0;
            *(double *)(data.bytes + order->greater_offset) = 1.0;
            CHECK(lw_order_failing(records[r], &data) != NULL);
        }
    }
    CHECK(count > 10 && !lw_orders_of(&lw_sailor_record)->lesser);
    lw_record_preset(&lw_boat_record, &data);
    CHECK(!lw_order_failing(&lw_boat_record, &data));
}

TEST_FUNCTION(a_pin_is_found_by_its_label)
{
    const lw_boat boat = sound_boat();
    CHECK(lw_boat_pin(&boat, "B") == 1);
    CHECK(lw_boat_pin(&boat, "b") == -1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(decimals_of_fifteen_digits_are_the_nearest_double),
        TEST(decimals_agree_with_the_library_in_the_range_of_exact_powers),
        TEST(decimals_of_seventeen_digits_are_within_two_ulp),
        TEST(a_decimal_takes_comma_sign_and_typographic_minus),
        TEST(words_and_overflow_are_no_decimals),
        TEST(very_long_decimals_do_not_overflow),
        TEST(a_quantity_takes_any_unit_of_its_dimension),
        TEST(a_quantity_takes_the_ends_of_its_range_in_every_unit),
        TEST(a_quantity_refuses_what_is_wrong_and_sets_nothing),
        TEST(a_value_outside_the_usual_band_is_doubtful),
        TEST(every_unit_reads_its_own_text_and_sign),
        TEST(a_degree_stands_close_to_its_number_and_other_units_apart),
        TEST(distance_counts_single_edits),
        TEST(the_nearest_key_is_found_and_a_far_one_is_not),
        TEST(rows_stand_in_the_order_of_the_members),
        TEST(presets_lie_in_range_and_in_the_usual_band),
        TEST(a_table_check_finds_what_is_out_of_range_and_nan),
        TEST(the_preset_boat_with_pins_is_sound),
        TEST(contradictions_name_their_section),
        TEST(every_order_is_between_two_numbers_of_its_record_and_fails_when_they_swap),
        TEST(a_pin_is_found_by_its_label),
    };
    return RUN_TESTS(tests);
}
