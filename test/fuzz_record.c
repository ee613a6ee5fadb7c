// fuzz_record.c - feeds any bytes to the reader of records and of assignments.
// SPDX-License-Identifier: MIT
//
// The first byte chooses the record. Claims: nothing crashes; a fault leaves the record as it was;
// what was read can be written and read again; every fault is a sentence in UTF-8.

#define _POSIX_C_SOURCE 200809L

#include <stdlib.h>
#include <string.h>

#include "lullwise/boat.h"
#include "lullwise/day.h"
#include "records/record_file.h"
#include "records/utf8.h"

#define CLAIM(claim) \
    if (!(claim)) abort()

typedef union any_record {
    lw_boat boat;
    lw_sailor sailor;
    lw_day day;
} any_record;

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length);

static void check_text(const char *text)
{
    for (size_t length; *text; text += length) {
        length = lw_utf8_length(text, strlen(text));
        CLAIM(length > 0);
    }
}

static void check_faults(const lw_faults *faults)
{
    for (size_t i = 0; i < faults->count; i++) {
        const lw_fault *fault = &faults->list[i];
        CLAIM(fault->sentence[0]);
        check_text(fault->sentence), check_text(fault->key), check_text(fault->read);
        check_text(fault->expected), check_text(fault->hint);
    }
}

static void check_reads_again(const lw_record *record, const void *data)
{
    static any_record again;
    char *text = NULL;
    size_t length = 0;
    FILE *out = open_memstream(&text, &length);
    lw_record_write(record, data, out);
    fclose(out);
    lw_faults faults = {0};
    lw_reading reading = lw_reading_of(record, &again);
    CLAIM(lw_reading_text(&reading, &(lw_source_text){"again", text, length}, &faults));
    lw_faults_free(&faults);
    free(text);
}

static void check_text(const lw_record *record, const char *text, size_t length)
{
    static any_record data, before;
    lw_faults faults = {0};
    lw_reading reading = lw_reading_of(record, &data);
    const lw_source_text source = {"file", text, length};
    before = data;
    if (lw_reading_text(&reading, &source, &faults)) {
        lw_reading_check(&reading, &faults);
        check_reads_again(record, &data);
    } else {
        CLAIM(faults.fault_count > 0);
        CLAIM(memcmp(&before, &data, sizeof data) == 0);
    }
    check_faults(&faults);
    lw_faults_free(&faults);
    CLAIM(lw_record_recognise(&source, &faults) || faults.fault_count > 0);
    lw_faults_free(&faults);
}

static void check_assignment(const lw_record *record, const char *text)
{
    static any_record data, before;
    lw_faults faults = {0};
    lw_record_example(record, &data);
    before = data;
    if (lw_record_set(record, &data, text, &faults))
        check_reads_again(record, &data);
    else
        CLAIM(faults.fault_count == 1 && memcmp(&before, &data, record->size) == 0);
    check_faults(&faults);
    lw_faults_free(&faults);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    if (length == 0) return 0;
    const lw_record *record = lw_records[bytes[0] % 3];
    char *text = malloc(length);
    CLAIM(text);
    memcpy(text, bytes + 1, length - 1);
    text[length - 1] = '\0';
    check_text(record, text, length - 1);
    if (strlen(text) < 300) check_assignment(record, text);
    free(text);
    return 0;
}
