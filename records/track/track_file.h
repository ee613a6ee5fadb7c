// track_file.h - tracks read from GPX, NMEA 0183 and CSV: points in order, and what was wrong.
// SPDX-License-Identifier: MIT

#ifndef LW_TRACK_FILE_H
#define LW_TRACK_FILE_H

#include <stdio.h>

#include "lullwise/track.h"
#include "records/fault.h"

#define LW_TRACK_MOST 2000000  // points, of all files together

// clang-format off
// What was met while reading, counted.
//    name            key               text
#define LW_TRACK_COUNT_LIST(X)                                                                  \
    X(READ,           "read",           "points read")                                          \
    X(KEPT,           "kept",           "kept")                                                 \
    X(REPEATS,        "repeats",        "of a time that was there already: dropped")            \
    X(OUT_OF_ORDER,   "out_of_order",   "earlier than the one before: put in order")            \
    X(WILD,           "wild",           "a jump that no boat makes, for a moment: dropped")      \
    X(WILD_SPEEDS,    "wild_speeds",    "a speed told that no boat has: worked out instead")    \
    X(JUMPS,          "jumps",          "jumps without a way back: a new piece begins")         \
    X(WITHOUT_FIX,    "without_fix",    "the receiver says itself that it had no fix: dropped") \
    X(WITHOUT_TIME,   "without_time",   "without a time: dropped")                              \
    X(LATER,          "later",          "dated later than today: taken, but the clock is wrong") \
    X(WRONG_SUMS,     "wrong_sums",     "sentences with a wrong checksum: dropped")             \
    X(BROKEN,         "broken",         "lines or points that cannot be read: dropped")         \
    X(OTHER,          "other",          "lines of other kinds: passed over")                    \
    X(CUT,            "cut",            "files that end too early: taken up to there")
// clang-format on
#define LW_AS_TRACK_COUNT(name, ...) LW_TRACK_##name,
typedef enum lw_track_count {
    LW_TRACK_COUNT_LIST(LW_AS_TRACK_COUNT) LW_TRACK_COUNTS
} lw_track_count;
const char *lw_track_count_key(lw_track_count count);
const char *lw_track_count_text(lw_track_count count);

typedef struct lw_track_point {
    double time;                         // [s] since 1970-01-01 UTC
    double latitude_deg, longitude_deg;  // WGS 84; north and east positive
    double speed, course;                // [m/s], [rad] over ground; NAN: not told
    bool starts;                         // a piece, by the file
    size_t order;                        // in which it was read
} lw_track_point;

// Sums of wind as instruments tell it, true and over ground.
typedef struct lw_track_told_wind {
    double east, north;  // of unit vectors to where it comes from
    double speed;        // [m/s]
    size_t count;
} lw_track_told_wind;

// Begins as {0} but for the first two; owned by the caller.
typedef struct lw_track_file {
    bool (*wants_end)(void);  // whether reading should be given up; NULL: never
    double latest;            // [s] since 1970: later times are counted; 0: none is
    lw_track_point *points;
    lw_fix *fixes;  // of the points, once settled; times from the first
    size_t count, room;
    double middle_latitude_deg, middle_longitude_deg;  // of the fixes' east and north
    size_t counts[LW_TRACK_COUNTS];
    bool lacks_date;     // times of day only
    size_t broken_line;  // the first that could not be read; 0: none
    lw_track_told_wind wind;
} lw_track_file;

// Adds the points of a file ("-": standard input); its kind is told by what is in it. Memory stays
// bounded, whatever the file is. False with a fault, and then the file means nothing.
bool lw_track_file_read(lw_track_file *file, const char *path, lw_faults *faults);
bool lw_track_file_stream(lw_track_file *file, FILE *stream, const char *path, lw_faults *faults);

// Once all are read: in order of time, without repeats and wild points, as metres about a middle by
// geodesics of the ellipsoid WGS 84 [karney-2013]. False with a fault when nothing is left.
bool lw_track_file_settle(lw_track_file *file, const char *path, lw_faults *faults);

void lw_track_file_free(lw_track_file *file);

// The points as CSV that lw_track_file_read takes: times to a millisecond, places to a centimetre.
void lw_track_file_write(const lw_track_file *file, FILE *out);

#endif
