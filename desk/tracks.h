// tracks.h - a sailed track at the desk: its file is read here, where the readers are.
// SPDX-License-Identifier: MIT
//
//     POST /track/NAME?UNIT    the bytes of a track's file; speeds in sentences are in the unit
//
// It is answered by a parcel (answer/parcel.h): `told` and `picture` as `lullwise track` tells and
// draws it, and `day`, the columns that a logged day keeps of it.
//
// Nothing is kept of it here.

#ifndef LW_DESK_TRACKS_H
#define LW_DESK_TRACKS_H

#include <stdbool.h>
#include <stddef.h>

#define LW_TRACK_AT         "/track/"
#define LW_TRACK_BYTES_MOST 16000000  // an hour at 10 Hz has 5 MB of GPX  [judged]

typedef struct lw_track_asked {
    const char *name;   // of its file
    const char *unit;   // of speeds in sentences, by its name; NULL: knots
    const char *today;  // as in 2030-05-17; NULL: not known
    const char *bytes;
    size_t length;
} lw_track_asked;

typedef struct lw_track_answer {
    int status;   // of HTTP: 200; 400: no track; 500: no memory
    char *bytes;  // the parcel, or sentences; to be freed; NULL: no memory
    size_t length;
} lw_track_answer;

lw_track_answer lw_track_answered(const lw_track_asked *asked);

// What is named in a request's target, decoded; both to be freed. name, unit: NULL, none is named.
void lw_track_names_in(const char *target, char **name, char **unit);

#endif
