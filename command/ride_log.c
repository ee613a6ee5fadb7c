// ride_log.c - rides once and keeps what happened, row by row.
// SPDX-License-Identifier: MIT

#include "command/ride_log.h"

#include <stdlib.h>

#include "command/terminal/progress.h"
#include "command/terminal/stop.h"
#include "records/json.h"

// Tips and hull have an event in half a second at most, air hardly more.
static size_t event_room(double seconds) { return 64 + (size_t)(8.0 * seconds); }

static bool make_room(lw_ride_log *log, size_t rows)
{
    const size_t events = event_room(log->seconds);
    log->rows = calloc(rows, sizeof *log->rows);
    log->ride.events = calloc(events, sizeof *log->ride.events);
    log->ride.event_room = events;
    return log->rows && log->ride.events;
}

#define PROGRESS_ROWS 256

bool lw_ride_log_fill(lw_ride_log *log)
{
    const lw_motion *motion = &log->ridden.motion;
    const size_t every = lw_ridden_steps(&log->ridden, log->every);
    size_t left = lw_ridden_steps(&log->ridden, log->seconds);
    const size_t rows = (left + every - 1) / every;  // the last may be sooner
    if (!make_room(log, rows + 1)) return false;
    lw_ride_begin(&log->ride, motion, &log->ridden.plan);
    log->rows[log->row_count++] = lw_ride_trace(motion, &log->ride);
    while (left > 0 && !lw_stop_wanted()) {
        const size_t steps = left < every ? left : every;
        if (log->row_count % PROGRESS_ROWS == 0) lw_progress("the ride", log->row_count - 1, rows);
        lw_rides_advance(motion, &log->ride, 1, steps);
        log->rows[log->row_count++] = lw_ride_trace(motion, &log->ride);
        left -= steps;
    }
    log->is_stopped = left > 0;
    lw_progress_over();
    return true;
}

void lw_ride_log_free(lw_ride_log *log)
{
    free(log->rows);
    free(log->ride.events);
}

void lw_ride_log_csv(FILE *out, const lw_ride_log *log)
{
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

static json_t *event_json(const lw_ride_event *event)
{
    return json_pack("{s:s, s:s, s:b, s:o}", "what", lw_ride_event_key(event->what), "says",
                     lw_ride_event_text(event->what), "swim", lw_ride_event_is_swim(event->what),
                     "at", lw_table_json(&lw_trace_table, &event->at));
}

json_t *lw_ride_log_json(const lw_ride_log *log)
{
    const lw_ridden *ridden = &log->ridden;
    const lw_ride_tally *tally = &log->ride.tally;
    const lw_ride_rates rates = lw_ride_rates_of(tally);
    json_t *events = json_array(), *history = json_array();
    for (size_t i = 0; i < log->ride.event_count; i++) {
        json_array_append_new(events, event_json(&log->ride.events[i]));
    }
    for (size_t i = 0; i < log->row_count; i++) {
        json_array_append_new(history, lw_table_json(&lw_trace_table, &log->rows[i]));
    }
    return json_pack("{s:s, s:s, s:s, s:I, s:f, s:b, s:s, s:o, s:o, s:o, s:{s:o, s:o}}", "boat",
                     ridden->flown.inputs->boat.name, "sailor", ridden->flown.inputs->sailor.name,
                     "pin", ridden->flown.inputs->boat.pins[ridden->flown.pin].label, "seed",
                     (json_int_t)ridden->plan.seed, "seconds", tally->seconds, "stopped",
                     log->is_stopped, "end", lw_ride_stand_text(lw_ride_stands(&log->ride)),
                     "rates", lw_table_json(&lw_ride_rates_table, &rates), "events", events,
                     "history", history, "units", "rates",
                     lw_table_units_json(&lw_ride_rates_table), "history",
                     lw_table_units_json(&lw_trace_table));
}
