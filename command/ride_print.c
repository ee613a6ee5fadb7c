// ride_print.c - a ride as a table of what happened, and what it came to.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "command/cell.h"
#include "command/ride_log.h"
#include "command/terminal/print.h"

#define WORDS  36   // wide
#define MANY   60   // events, beyond which touches and breaches are left out
#define BEFORE 5.0  // [s] ... but for those before a swim

static void print_time(FILE *out, double seconds)
{
    char text[LW_CELL_LENGTH];
    const int tenths = (int)floor(10.0 * seconds + 0.5);
    LW_FIT(text, "%d:%02d.%d", tenths / 600, tenths / 10 % 60, tenths % 10);
    lw_cell_right(out, text, 7);
}

typedef struct column {
    const char *head;
    size_t width, member;
    double unit;
    int decimals;
} column;

#define COLUMN(head, width, member, unit, decimals)             \
    {                                                           \
        head, width, offsetof(lw_trace, member), unit, decimals \
    }
static const column columns[] = {
    COLUMN("wind", 6, wind, LW_KN, 1),  COLUMN("hull", 6, clearance, 0.01, 0),
    COLUMN("rise", 6, climb, 0.01, 0),  COLUMN("pitch", 6, pitch, LW_DEG, 1),
    COLUMN("heel", 5, heel, LW_DEG, 0), COLUMN("wand", 5, wand, LW_DEG, 0),
};
#define COLUMNS (sizeof columns / sizeof columns[0])

static void print_head(FILE *out)
{
    lw_cell_right(out, "time", 7);
    fputs("  ", out);
    lw_cell_left(out, "what", WORDS);
    for (size_t i = 0; i < COLUMNS; i++) lw_cell_right(out, columns[i].head, columns[i].width);
    fputc('\n', out);
}

static void print_event(FILE *out, const lw_ride_log *log, const lw_ride_event *event)
{
    const double stop = log->ridden.flown.craft.linkage.forward_stop;
    print_time(out, event->at.time);
    fputs("  ", out);
    lw_cell_left(out, lw_ride_event_text(event->what), WORDS);
    for (size_t i = 0; i < COLUMNS; i++) {
        char text[LW_CELL_LENGTH];
        const void *place = (const char *)&event->at + columns[i].member;
        const double value = *(const double *)place;
        lw_cell_number(text, value / columns[i].unit, columns[i].decimals, false);
        lw_cell_right(out, text, columns[i].width);
    }
    fputs(event->at.wand < stop + 0.5 * LW_DEG ? "*\n" : "\n", out);
}

static bool is_small(lw_ride_what what)
{
    return what == LW_RIDE_TOUCH || what == LW_RIDE_BREACH || what == LW_RIDE_RUDDER_BREACH;
}

static bool is_before_swim(const lw_ride *ride, size_t event)
{
    const double time = ride->events[event].at.time;
    for (size_t i = event; i < ride->event_count; i++) {
        if (ride->events[i].at.time > time + BEFORE) return false;
        if (lw_ride_event_is_swim(ride->events[i].what)) return true;
    }
    return false;
}

static void print_events(FILE *out, const lw_ride_log *log)
{
    const lw_ride *ride = &log->ride;
    size_t left_out = 0;
    print_head(out);
    for (size_t i = 0; i < ride->event_count; i++) {
        const lw_ride_event *event = &ride->events[i];
        if (ride->event_count <= MANY || !is_small(event->what) || is_before_swim(ride, i))
            print_event(out, log, event);
        else
            left_out++;
    }
    print_time(out, ride->tally.seconds);
    fprintf(out, "  %s: %s\n", log->is_stopped ? "stopped" : "end",
            lw_ride_stand_text(lw_ride_stands(ride)));
    if (left_out == 0) return;
    fprintf(out, "  and %zu touches and breaches that no swim followed within %.0f s\n", left_out,
            BEFORE);
}

// What happened, as so many an hour.
static void print_rates(FILE *out, const lw_ride_tally *tally)
{
    const lw_ride_rates rates = lw_ride_rates_of(tally);
    const lw_table *table = &lw_ride_rates_table;
    bool is_first = true;
    for (size_t i = 0; i < table->count; i++) {
        const lw_quantity *row = &table->rows[i];
        const double an_hour = lw_quantity_shown(row, &rates);
        if (row->unit != LW_UNIT_PERH || an_hour == 0.0) continue;
        char text[LW_CELL_LENGTH];
        if (is_first) fputs("In an hour of this\n", out);
        is_first = false;
        lw_cell_number(text, an_hour, 0, false);
        lw_cell_right(out, text, 7);
        fprintf(out, "  %s\n", row->doc);
    }
}

void lw_ride_log_print(FILE *out, const lw_ride_log *log)
{
    char text[LW_RIDDEN_LENGTH];
    lw_ridden_scene(&log->ridden, text);
    lw_print_wrapped(out, text, 0, 0);
    lw_ridden_trim(&log->ridden, text);
    lw_print_wrapped(out, text, 0, 0);
    fputc('\n', out);
    print_events(out, log);
    lw_print_wrapped(out,
                     "wind in kn; hull in cm above the water there, rising in cm/s; bow up and "
                     "windward heel in deg; wand in deg, * at its forward stop.",
                     0, 0);
    fputc('\n', out);
    lw_ridden_sum(&log->ridden, &log->ride.tally, text);
    lw_print_wrapped(out, text, 0, 0);
    print_rates(out, &log->ride.tally);
    lw_print_wrapped(out,
                     "One ride tells little of rates: --runs sails many. Other seeds are other "
                     "gusts and waves of the same day.",
                     0, 0);
}
