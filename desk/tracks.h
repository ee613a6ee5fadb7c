// tracks.h - a sailed track at the desk: its file is read here, where the readers are.
// SPDX-License-Identifier: MIT
//
//     POST /track?unit=kn&wind-from=225+deg&pin=B&boat=2411&sailor=307&day=398&track=90210+way.gpx
//
// In the query stand the unit of speeds in sentences, options of `lullwise track`, and of how many
// bytes each file is whose text stands in the body, one behind the other: one track or several,
// with their names, which are taken as one; and boat, sailor and day, with what was learned of
// the boat, if the model is to stand beside. Only tracks are needed.
//
// It is answered by a parcel (answer/parcel.h): `told` and `picture` as `lullwise track` tells and
// draws it, and `day`, the columns that a logged day keeps of it.
//
// Nothing is kept of it here.

#ifndef LW_DESK_TRACKS_H
#define LW_DESK_TRACKS_H

#include <stdbool.h>
#include <stddef.h>

#define LW_TRACK_AT         "/track?"
#define LW_TRACK_BYTES_MOST 32000000  // six hours at 10 Hz have 28 MB of GPX  [judged]

typedef struct lw_track_asked {
    const char *query;  // behind the "?"
    const char *today;  // as in 2030-05-17; NULL: not known
    const char *body;
    size_t length;
} lw_track_asked;

typedef struct lw_track_answer {
    int status;   // of HTTP: 200; 400: no track; 500: no memory
    char *bytes;  // the parcel, or sentences; to be freed; NULL: no memory
    size_t length;
} lw_track_answer;

lw_track_answer lw_track_answered(const lw_track_asked *asked);

#endif
