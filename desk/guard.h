// guard.h - which requests are answered, and with what status.
// SPDX-License-Identifier: MIT

#ifndef LW_DESK_GUARD_H
#define LW_DESK_GUARD_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

#include "desk/part.h"

// What a request says of itself.
typedef struct lw_asked {
    bool is_reading;      // GET or HEAD
    bool is_keeping;      // POST
    bool is_removing;     // DELETE
    bool has_logbook;     // the desk has one: its days may be asked for
    const char *target;   // as written: "/?wind=12"
    const char *host;     // NULL: none given
    const char *origin;   // NULL: none given
    size_t host_count;    // how often a Host was given
    size_t origin_count;  // and an Origin
} lw_asked;

typedef struct lw_verdict {
    int status;           // of HTTP
    const char *why;      // a line for whoever asked; NULL: the part is the answer
    const lw_part *part;  // NULL when nothing may be served
    bool is_of_days;      // desk/days.h has the answer
    bool is_of_track;     // desk/tracks.h has
    const char *id;       // of the day that is meant, or NULL
} lw_verdict;

// 200 with the part; 307 when "localhost" was asked: one address, so that what the page keeps lies
// in one place; 400, 403, 404 or 405 with a sentence. Days are changed, and tracks read, only for
// who names our origin.
lw_verdict lw_guard_verdict(const lw_asked *asked, uint16_t port);

#endif
