// ride_log.h - one ride as it went: its events, and a row of its history every so often.
// SPDX-License-Identifier: MIT

#ifndef LW_RIDE_LOG_H
#define LW_RIDE_LOG_H

#include <jansson.h>
#include <stdio.h>

#include "answer/words/ridden.h"
#include "lullwise/ride.h"

typedef struct lw_ride_log {
    lw_ridden ridden;
    double seconds, every;  // asked for: how long, and from row to row [s]
    lw_ride ride;           // as it ended
    lw_trace *rows;
    size_t row_count;
    bool is_stopped;  // before its end, from the keyboard
} lw_ride_log;

// Rides the plan. False when there is no memory.
bool lw_ride_log_fill(lw_ride_log *log);
void lw_ride_log_free(lw_ride_log *log);

void lw_ride_log_print(FILE *out, const lw_ride_log *log);
json_t *lw_ride_log_json(const lw_ride_log *log);
void lw_ride_log_csv(FILE *out, const lw_ride_log *log);   // head with units, then a row a line
void lw_ride_log_draw(FILE *out, const lw_ride_log *log);  // wind, ride height, pitch, flap; SVG

#endif
