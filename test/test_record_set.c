// test_record_set.c - claims about single values set from "main_foil.span=1.05 m".
// SPDX-License-Identifier: MIT

#include "test/record_checks.h"

#define FORM "key=value, as in main_foil.span='98 cm'"

// clang-format off
// --- assignments

static lw_sailor sailor_of_75_kg(void)
{
    lw_sailor sailor;
    lw_record_preset(&lw_sailor_record, &sailor);
    return sailor;
}

// The assignment to a day has this fault, and changes nothing.
static void check_set_fault(const char *assignment, lw_fault want)
{
    lw_day day, before;
    lw_faults faults = {0};
    lw_record_example(&lw_day_record, &day);
    before = day;
    CHECK(!lw_record_set(&lw_day_record, &day, assignment, &faults));
    assert_int_equal(faults.count, 1);
    CHECK_TEXT(faults.list[0].file, "--set");
    want.line = 1;
    check_is(&faults.list[0], &want);
    CHECK(memcmp(&day, &before, sizeof day) == 0);
    lw_faults_free(&faults);
}

// What only the whole record shows is blamed on the assignment to that section, not on the file's
// line.
TEST_FUNCTION(a_contradiction_is_blamed_on_the_assignment_that_made_it)
{
    lw_boat boat;
    lw_faults faults = {0};
    lw_reading reading = lw_reading_of(&lw_boat_record, &boat);
    lw_record_example(&lw_boat_record, &boat);
    reading.file = "boat.yaml", reading.option = "--against";
    CHECK(lw_reading_set(&reading, "pins.A=2 deg", &faults));
    CHECK(!lw_reading_check(&reading, &faults) && faults.count == 1);
    CHECK_TEXT(faults.list[0].file, "--against");
    CHECK_TEXT(faults.list[0].read, "pins.A=2 deg");
    lw_faults_free(&faults);
}

static void set(const lw_record *record, void *record_data, const char *assignment)
{
    lw_faults faults = {0};
    CHECK(lw_record_set(record, record_data, assignment, &faults));
    lw_faults_free(&faults);
}

TEST_FUNCTION(an_assignment_sets_one_value)
{
    lw_sailor sailor = sailor_of_75_kg();
    set(&lw_sailor_record, &sailor, "person.mass=81,5 kg");
    set(&lw_sailor_record, &sailor, " sailor.person.hike = 40 cm");
    set(&lw_sailor_record, &sailor, "name=A = B");
    CHECK(sailor.person.mass == 81.5 && sailor.person.hike == 0.4);
    CHECK_TEXT(sailor.name, "A = B");
}

TEST_FUNCTION(an_assignment_reaches_pins_legs_readings_and_optional_sections)
{
    lw_boat boat;
    lw_record_example(&lw_boat_record, &boat);
    set(&lw_boat_record, &boat, "pins.B=2.5 deg");
    set(&lw_boat_record, &boat, "pins.E 1=-1 deg");
    CHECK(boat.pin_count == 5 && boat.pins[1].incidence == 2.5 * LW_DEG);
    CHECK_TEXT(boat.pins[4].label, "E 1");
    set(&lw_boat_record, &boat, "pins.E 1=2.8 deg");
    CHECK(boat.pin_count == 5 && lw_boat_pin(&boat, "E 1") == 1 && lw_boat_pin(&boat, "B") == 2);

    lw_day day;
    lw_record_preset(&lw_day_record, &day);
    set(&lw_day_record, &day, "legs[0].length=400 m");
    set(&lw_day_record, &day, "legs[0].heading=50 deg");
    set(&lw_day_record, &day, "readings[0]=9 kn");
    set(&lw_day_record, &day, "forecast.mean=12 kn");
    CHECK(day.leg_count == 1 && day.legs[0].length == 400.0 && day.reading_count == 1);
    CHECK(day.has_forecast && !day.has_wind);
}

TEST_FUNCTION(a_bad_assignment_names_key_place_and_what_was_expected)
{
    check_set_fault("watr.salinity=0 g/kg",
                (lw_fault){.sentence = "there is no such key", .column = 1, .key = "watr.salinity",
                .read = "watr", .hint = "water"});
    check_set_fault("day.water.salinty=0 g/kg",
                (lw_fault){.sentence = "there is no such key", .column = 11, .key = "water.salinty",
                .read = "salinty", .hint = "salinity"});
    check_set_fault("salinity=0 g/kg",
                (lw_fault){.sentence = "there is no such key", .column = 1, .key = "salinity",
                .read = "salinity", .hint = "water.salinity"});
    check_set_fault("water.salinity = 5",
                (lw_fault){.sentence = "the number has no unit", .column = 18,
                .key = "water.salinity", .read = "5", .expected = "0 to 42 g/kg",
                .hint = "5 g/kg"});
    check_set_fault("water.salinity",
                (lw_fault){.sentence = "an = is missing", .column = 1, .key = "water.salinity",
                .read = "water.salinity", .expected = FORM});
    check_set_fault("=5", (lw_fault){.sentence = "no key stands before the =", .column = 1,
                .expected = FORM});
    check_set_fault("legs[3].length=5 m",
                (lw_fault){.sentence = "there is no place of this index", .column = 1,
                .key = "legs[3].length", .read = "legs[3].length", .expected = "[0] to [2]"});
    check_set_fault("legs[2].lengt=5 m",
                (lw_fault){.sentence = "there is no such key", .column = 9,
                .key = "legs[2].lengt", .read = "lengt", .hint = "length"});
    check_set_fault("legs.length=50 m",
                (lw_fault){.sentence = "an index is missing", .column = 1, .key = "legs.length",
                .read = "legs.length", .expected = "[0] for the first"});
    check_set_fault("legs[x].length=5 m",
                (lw_fault){.sentence = "the index cannot be read", .column = 1,
                .key = "legs[x].length", .read = "legs[x].length", .expected = "[0]"});
    check_set_fault("aim=win",
                (lw_fault){.sentence = "this word is not one of those allowed", .column = 5,
                .key = "aim", .read = "win", .expected = "race, steady or easy"});
}
// clang-format on

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(a_contradiction_is_blamed_on_the_assignment_that_made_it),
        TEST(an_assignment_sets_one_value),
        TEST(an_assignment_reaches_pins_legs_readings_and_optional_sections),
        TEST(a_bad_assignment_names_key_place_and_what_was_expected),
    };
    return RUN_TESTS(tests);
}
