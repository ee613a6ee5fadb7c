// record_checks.h - checks that a text reads, or has one fault and no other.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_RECORD_CHECKS_H
#define LW_TEST_RECORD_CHECKS_H

#include <string.h>

#include "lullwise/boat.h"
#include "lullwise/day.h"
#include "records/record_file.h"
#include "test/check.h"

#define FOILS        "hull: {}\nmain_foil: {}\nrudder_foil: {}\nmain_strut: {}\nrudder_strut: {}\n"
#define REST_OF_BOAT FOILS "linkage: {}\nrudder: {}\nrig: {}\nplace: {}\n"  // nine lines
#define WIND         "wind: {lull: 8 kn, mean: 10 kn, puff: 12 kn}\n"
#define LEGS         "legs:\n  - heading: 0 deg\n    length: 800 m\n"

typedef union any_record {
    lw_boat boat;
    lw_sailor sailor;
    lw_day day;
    unsigned char bytes[sizeof(lw_day) > sizeof(lw_boat) ? sizeof(lw_day) : sizeof(lw_boat)];
} any_record;

static any_record data;

static inline bool read_text(const lw_record *record, const char *text, lw_faults *faults)
{
    memset(&data, 0x5A, sizeof data);
    const lw_source_text source = {"x.yaml", text, strlen(text)};
    const bool is_read = lw_record_read_text(record, &source, &data, faults);
    for (size_t i = 0; !is_read && i < sizeof data; i++) CHECK(data.bytes[i] == 0x5A);
    CHECK(is_read == (faults->fault_count == 0));
    return is_read;
}

static inline void check_reads(const lw_record *record, const char *text)
{
    lw_faults faults = {0};
    if (!read_text(record, text, &faults)) print_error("%s\n", faults.list[0].sentence);
    CHECK(faults.count == 0);
    lw_faults_free(&faults);
}

static inline void check_is(const lw_fault *got, const lw_fault *want)
{
    CHECK_TEXT(got->sentence, want->sentence);
    assert_int_equal(got->line, want->line);
    assert_int_equal(got->column, want->column);
    CHECK_TEXT(got->key, want->key);
    CHECK_TEXT(got->read, want->read);
    CHECK_TEXT(got->expected, want->expected);
    CHECK_TEXT(got->hint, want->hint);
    CHECK(got->is_doubt == want->is_doubt);
}

// The text has this fault and no other; and after a fault the record is as it was.
static inline void check_fault(const lw_record *record, const char *text, lw_fault want)
{
    lw_faults faults = {0};
    CHECK(!read_text(record, text, &faults));
    assert_int_equal(faults.count, 1);
    CHECK_TEXT(faults.list[0].file, "x.yaml");
    check_is(&faults.list[0], &want);
    lw_faults_free(&faults);
}

#endif
