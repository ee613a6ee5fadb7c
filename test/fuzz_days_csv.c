// fuzz_days_csv.c - feeds any bytes to the reader of days in CSV.
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "test/days_claims.h"

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length);

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    if (length == 0 || bytes[0] != '{') claim_of_days((const char *)bytes, length);
    return 0;
}
