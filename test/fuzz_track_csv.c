// fuzz_track_csv.c - feeds any bytes to the reader of tracks in CSV (fuzz_track.h).
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "test/fuzz_track.h"

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    feed(lw_csv_read, bytes, length);
    return 0;
}
