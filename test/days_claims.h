// days_claims.h - what holds of any bytes that the readers of days are given.
// SPDX-License-Identifier: MIT
//
// Nothing crashes; what is refused has a fault, in UTF-8; what is read can be written in both
// forms, and read again as the same.

#ifndef LW_TEST_DAYS_CLAIMS_H
#define LW_TEST_DAYS_CLAIMS_H

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "records/logbook/transfer.h"
#include "records/utf8.h"

#define CLAIM(claim) \
    if (!(claim)) abort()

static inline void claim_text(const char *text)
{
    for (size_t length; *text; text += length) {
        length = lw_utf8_length(text, strlen(text));
        CLAIM(length > 0);
    }
}

static inline void claim_faults(const lw_faults *faults)
{
    CLAIM(faults->fault_count > 0);
    for (size_t i = 0; i < faults->count; i++) {
        const lw_fault *fault = &faults->list[i];
        CLAIM(fault->is_doubt || fault->sentence[0]);
        claim_text(fault->sentence), claim_text(fault->key), claim_text(fault->read);
        claim_text(fault->expected), claim_text(fault->hint);
    }
}

static inline void claim_reads_again(const lw_entries *days,
                                     bool (*write)(const lw_entries *, FILE *))
{
    char *text = NULL;
    size_t length = 0;
    lw_faults faults = {0};
    lw_entries again = {0};
    FILE *out = open_memstream(&text, &length);
    CLAIM(write(days, out) && fclose(out) == 0);
    const lw_source_text source = {"again", text, length};
    CLAIM(lw_days_read(&source, "9999-12-31", &again, &faults) && again.count == days->count);
    for (size_t i = 0; i < days->count; i++)
        CLAIM(lw_days_are_same(&days->list[i], &again.list[i]));
    lw_entries_free(&again);
    lw_faults_free(&faults);
    free(text);
}

static inline void claim_of_days(const char *bytes, size_t length)
{
    lw_faults faults = {0};
    lw_entries days = {0};
    char *text = malloc(length + 1);
    CLAIM(text != NULL);
    memcpy(text, bytes, length);
    text[length] = '\0';
    const lw_source_text source = {"bytes", text, length};
    if (lw_days_read(&source, "9999-12-31", &days, &faults)) {
        claim_reads_again(&days, lw_days_write_csv);
        claim_reads_again(&days, lw_days_write_json);
    } else {
        claim_faults(&faults);
    }
    lw_entries_free(&days);
    lw_faults_free(&faults);
    free(text);
}

#endif
