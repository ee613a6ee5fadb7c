// log.c - one ride, kept row by row.
// SPDX-License-Identifier: MIT

#include <stdlib.h>

#include "answer/ride/ride.h"
#include "answer/words/ridden.h"
#include "picture/ride_picture.h"

// Tips and hull have an event in half a second at most, air hardly more.
static size_t event_room(double seconds) { return 64 + (size_t)(8.0 * seconds); }

static bool make_room(lw_ride_log *log, size_t rows, size_t events)
{
    log->rows = calloc(rows, sizeof *log->rows);
    log->ride.events = calloc(events, sizeof *log->ride.events);
    log->row_room = rows, log->ride.event_room = events;
    return log->rows && log->ride.events;
}

bool lw_ride_log_begin(lw_ride_log *log, const lw_ridden *ridden, double seconds, double every)
{
    const lw_motion *motion = &ridden->motion;
    *log = (lw_ride_log){.every = lw_ridden_steps(ridden, every),
                         .left = lw_ridden_steps(ridden, seconds)};
    const size_t rows = (log->left + log->every - 1) / log->every;  // the last may be sooner
    if (!make_room(log, rows + 1, event_room(seconds))) return false;
    lw_ride_begin(&log->ride, motion, &ridden->plan);
    log->rows[log->row_count++] = lw_ride_trace(motion, &log->ride);
    return true;
}

void lw_ride_log_release(lw_ride_log *log)
{
    free(log->rows);
    free(log->ride.events);
    *log = (lw_ride_log){0};
}

void lw_ride_log_row(lw_ride_log *log, const lw_motion *motion)
{
    const size_t steps = log->left < log->every ? log->left : log->every;
    lw_rides_advance(motion, &log->ride, 1, steps);
    log->rows[log->row_count++] = lw_ride_trace(motion, &log->ride);
    log->left -= steps;
}

void lw_rode_log(const void *it, FILE *out)
{
    const lw_ride_log *log = &((const lw_rode *)it)->log;
    const lw_table *table = &lw_trace_table;
    for (size_t i = 0; i < table->count; i++) {
        const char *unit = lw_unit_text(table->rows[i].unit);
        fprintf(out, "%s%s", i ? "," : "", table->rows[i].key);
        if (unit[0]) fprintf(out, " [%s]", unit);
    }
    fputc('\n', out);
    for (size_t k = 0; k < log->row_count; k++) {
        for (size_t i = 0; i < table->count; i++) {
            fprintf(out, "%s%.7g", i ? "," : "", lw_quantity_shown(&table->rows[i], &log->rows[k]));
        }
        fputc('\n', out);
    }
}

void lw_rode_draw(const void *it, FILE *out)
{
    const lw_rode *rode = it;
    const lw_ridden *ridden = &rode->ridden;
    char scene[LW_RIDDEN_LENGTH], trim[LW_RIDDEN_LENGTH], sum[LW_RIDDEN_LENGTH];
    lw_ridden_scene(ridden, rode->speed_unit, scene);
    lw_ridden_trim(ridden, rode->speed_unit, trim);
    lw_ridden_sum(&rode->log.ride.tally, rode->speed_unit, sum);
    const lw_ride_drawn drawn = {.scene = scene,
                                 .trim = trim,
                                 .sum = sum,
                                 .ride = &rode->log.ride,
                                 .rows = rode->log.rows,
                                 .row_count = rode->log.row_count,
                                 .wind = ridden->wind,
                                 .linkage = &rode->inputs.boat.linkage};
    lw_ride_draw(out, &drawn);
}
