// reading.h - what readers of tracks share: bytes in chunks, lines, points added, faults.
// SPDX-License-Identifier: MIT

#ifndef LW_TRACK_READING_H
#define LW_TRACK_READING_H

#include "records/track/track_file.h"

#define LW_TRACK_CHUNK 65536  // bytes
#define LW_TRACK_LINE  1024   // bytes of a line that are looked at, with a closing zero

typedef struct lw_track_reading {
    lw_track_file *file;
    FILE *stream;
    const char *path;
    lw_faults *faults;
    size_t first;  // point of this file
    bool starts;   // the next point begins a piece
    char chunk[LW_TRACK_CHUNK];
    size_t length, at;  // of the chunk
    bool is_over;       // nothing comes behind the chunk
    char line[LW_TRACK_LINE];
    size_t line_number;
} lw_track_reading;

// The next chunk; false when there is none.
bool lw_track_chunk(lw_track_reading *r);

// The next line into r->line, without its end, clipped; false when there is none, or it has a zero
// byte, which is a fault.
bool lw_track_line(lw_track_reading *r);

// Adds a point. One that lies nowhere is counted as broken. False with a fault when there are too
// many or no memory.
bool lw_track_add(lw_track_reading *r, const lw_track_point *point);

// Counts a point that cannot be read, and notes the first line of that.
void lw_track_broken(lw_track_reading *r, size_t line);

// A fault of the whole file, or of a line; false, so that it can be returned.
bool lw_track_refuse(lw_track_reading *r, size_t line, const char *sentence, const char *expected);

// The readers. False with a fault.
bool lw_gpx_read(lw_track_reading *r);
bool lw_nmea_read(lw_track_reading *r);
bool lw_csv_read(lw_track_reading *r);

// Whether a line has a sentence of NMEA 0183 in it: "$" or "!", five letters, a comma.
bool lw_nmea_is_sentence(const char *line);

#endif
