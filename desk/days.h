// days.h - logged days at the desk: the page reads and changes the logbook of this computer.
// SPDX-License-Identifier: MIT
//
//     GET /days            all of them, as `lullwise log export` writes them
//     GET /days/removed    ids of those that were taken out, a list in JSON
//     POST /days           days in that form, all or none of them: each is added; one that comes
//                          twice is first as the page had it from here, then as it is now
//     DELETE /days/ID      one is taken out; done too when it is not there
//
// A day that the logbook has otherwise than the page knew it is not changed: 409, and the page asks
// for what there is.

#ifndef LW_DESK_DAYS_H
#define LW_DESK_DAYS_H

#include <stdbool.h>
#include <stddef.h>

#define LW_DAYS_AT      "/days"
#define LW_DAYS_REMOVED "removed"
#define LW_DAYS_MOST    1000000  // [bytes] of a request: a day has some 10,000  [judged]

typedef struct lw_days_asked {
    const char *path;   // of the logbook
    const char *today;  // as in 2030-05-17; NULL: not known
    const char *id;     // of the day to be taken out, or LW_DAYS_REMOVED; NULL: none
    const char *body;   // days to be kept; NULL: none, all are asked for
    size_t length;      // [bytes] of the body
} lw_days_asked;

typedef struct lw_days_answer {
    int status;  // of HTTP: 200; 400: no day; 409: changed meanwhile; 500: the logbook refuses
    char *text;  // the days, or sentences; to be freed; NULL: no memory
    bool is_json;
} lw_days_answer;

lw_days_answer lw_days_answered(const lw_days_asked *asked);

// Whether a request's target is that of the days; *id: the one that it names, or LW_DAYS_REMOVED;
// NULL where it names none.
bool lw_days_are_at(const char *target, const char **id);

#endif
