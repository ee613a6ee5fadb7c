// fuzz_track_nmea.c - feeds any bytes to the reader of tracks in NMEA 0183 (fuzz_track.h).
// SPDX-License-Identifier: MIT

#define _POSIX_C_SOURCE 200809L

#include "test/fuzz_track.h"

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t length)
{
    feed(lw_nmea_read, bytes, length);
    return 0;
}
