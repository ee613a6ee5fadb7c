// tell.c - the answer of `lullwise ride` told: one ride.
// SPDX-License-Identifier: MIT

#include <assert.h>
#include <math.h>

#include "answer/ride/ride.h"
#include "answer/words/number_text.h"
#include "answer/words/ridden.h"
#include "records/fault.h"

#define MANY   60   // events, beyond which no touch or breach is shown
#define BEFORE 5.0  // [s] ... but for those before a swim

// --- what was asked

static void tell_head(const lw_rode *rode, lw_teller *t)
{
    static const lw_item seed = {.key = "seed", .form = LW_AS_NUMBER};
    char text[LW_RIDDEN_LENGTH];
    const lw_flown *flown = &rode->ridden.flown;
    lw_ridden_scene(&rode->ridden, t->speed_unit, text);
    lw_tell_sentence(t, "question", text);
    lw_ridden_trim(&rode->ridden, t->speed_unit, text);
    lw_tell_note(t, "trim", text);
    lw_tell_name(t, "boat", rode->inputs.boat.name);
    lw_tell_name(t, "sailor", rode->inputs.sailor.name);
    lw_tell_name(t, "day", rode->inputs.day.name);
    lw_tell_name(t, "pin", rode->inputs.boat.pins[flown->pin].label);
    lw_tell_number(t, &seed, (double)rode->ridden.plan.seed);
}

// --- what happened

// Members of a moment that are shown, those that are in whole numbers.
static const struct {
    size_t member;
    const char *head;
    bool is_whole;
} shown[] = {
    {offsetof(lw_trace, time), "time", false},      {offsetof(lw_trace, wind), "wind", false},
    {offsetof(lw_trace, heel), "heel", true},       {offsetof(lw_trace, pitch), "pitch", false},
    {offsetof(lw_trace, clearance), "hull", false}, {offsetof(lw_trace, climb), "rise", false},
    {offsetof(lw_trace, wand), "wand", true},
};

// A column of a table of moments.
static lw_item column_of(const lw_quantity *row, bool is_shown)
{
    lw_item column = lw_item_of(row, NULL);
    column.form = LW_AS_BARE;
    for (size_t i = 0; is_shown && i < sizeof shown / sizeof shown[0]; i++) {
        if (shown[i].member != row->offset) continue;
        column.head = shown[i].head;
        if (shown[i].is_whole) column.digits = 0;
    }
    return column;
}

// clang-format off
static const lw_item words[] = {
    {"what",    NULL,   LW_AS_TEXT,  LW_UNIT_NONE, 0, NULL},
    {"is_swim", NULL,   LW_AS_TRUTH, LW_UNIT_NONE, 0, NULL},
    {"says",    "what", LW_AS_TEXT,  LW_UNIT_NONE, 0, NULL},
};
// clang-format on
#define WORDS (sizeof words / sizeof words[0])

static size_t put_columns(lw_item columns[LW_TABLE_COLUMNS_MOST])
{
    const size_t count = lw_trace_table.count;
    assert(count + WORDS <= LW_TABLE_COLUMNS_MOST);
    for (size_t i = 0; i < count; i++) columns[i] = column_of(&lw_trace_table.rows[i], true);
    for (size_t i = 0; i < WORDS; i++) columns[count + i] = words[i];
    return count + WORDS;
}

// "2:05.4"; and "*12" for a wand at its forward stop.
static void show_time(double seconds, char text[LW_CELL_LENGTH])
{
    const int tenths = (int)floor(10.0 * seconds + 0.5);
    lw_text_fit(text, LW_CELL_LENGTH, "%d:%02d.%d", tenths / 600, tenths / 10 % 60, tenths % 10);
}

static void tell_moment(const lw_rode *rode, const lw_trace *at, lw_teller *t)
{
    char text[LW_CELL_LENGTH], number[LW_CELL_LENGTH];
    const double stop = rode->ridden.flown.craft.linkage.forward_stop;
    for (size_t i = 0; i < lw_trace_table.count; i++) {
        const lw_quantity *row = &lw_trace_table.rows[i];
        const double value = lw_quantity_value(row, at);
        if (row->offset == offsetof(lw_trace, time)) {
            show_time(value, text);
            lw_tell_number_as(t, NULL, value, text);
        } else if (row->offset == offsetof(lw_trace, wand)) {
            lw_cell_number(number, value / LW_DEG, 0, false);
            LW_FIT(text, "%s%s", value < stop + 0.5 * LW_DEG ? "*" : "", number);
            lw_tell_number_as(t, NULL, value, text);
        } else {
            lw_tell_number(t, NULL, value);
        }
    }
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

static bool is_event_shown(const lw_ride *ride, size_t i)
{
    return ride->event_count <= MANY || !is_small(ride->events[i].what) || is_before_swim(ride, i);
}

static void tell_event(const lw_rode *rode, size_t i, lw_teller *t)
{
    const lw_ride *ride = &rode->log.ride;
    const lw_ride_event *event = &ride->events[i];
    if (is_event_shown(ride, i))
        lw_tell_row(t);
    else
        lw_tell_hidden_row(t);
    tell_moment(rode, &event->at, t);
    lw_tell_text(t, NULL, lw_ride_event_key(event->what));
    lw_tell_truth(t, NULL, lw_ride_event_is_swim(event->what));
    lw_tell_text(t, NULL, lw_ride_event_text(event->what));
}

// How to read the table, and what was left out of it.
static void tell_reading(const lw_ride *ride, lw_teller *t)
{
    char text[200];
    size_t left_out = 0;
    for (size_t i = 0; i < ride->event_count; i++) left_out += !is_event_shown(ride, i);
    if (left_out > 0) {
        LW_FIT(text, "And %zu touches and breaches that no swim followed within %.0f s.", left_out,
               BEFORE);
        lw_tell_note(t, "left_out", text);
    }
    lw_tell_note(t, "reading",
                 "Heel to windward, bow up; hull above the water there, and how fast it rises; "
                 "wand at its forward stop: *.");
}

static void tell_events(const lw_rode *rode, lw_teller *t)
{
    lw_item columns[LW_TABLE_COLUMNS_MOST];
    const lw_ride *ride = &rode->log.ride;
    const size_t count = put_columns(columns);
    lw_tell_table(t, "events", ride->event_count ? "What happens" : "", columns, count);
    for (size_t i = 0; i < ride->event_count; i++) tell_event(rode, i, t);
    lw_tell_end(t);
    if (ride->event_count) tell_reading(ride, t);
}

// --- what it came to

static void tell_sum(const lw_rode *rode, lw_teller *t)
{
    static const lw_item seconds = {.key = "seconds", .form = LW_AS_TIME, .unit = LW_UNIT_S};
    char text[LW_RIDDEN_LENGTH], time[LW_CELL_LENGTH];
    const lw_ride *ride = &rode->log.ride;
    const char *stands = lw_ride_stand_text(lw_ride_stands(ride));
    show_time(ride->tally.seconds, time);
    lw_tell_list(t, "sum", "What it comes to");
    lw_ridden_sum(&ride->tally, t->speed_unit, text);
    lw_tell_text(t, NULL, text);
    LW_FIT(text, "%s %s: %s.", rode->is_stopped ? "Stopped at" : "At the end,", time, stands);
    lw_tell_text(t, NULL, text);
    lw_tell_end(t);
    lw_tell_name(t, "stands", stands);
    lw_tell_number(t, &seconds, ride->tally.seconds);
    lw_tell_flag(t, "is_stopped", rode->is_stopped);
}

// What happened, as so many an hour; what did not happen is for programs only.
static void tell_rates(const lw_ride_tally *tally, lw_teller *t)
{
    const lw_ride_rates rates = lw_ride_rates_of(tally);
    const lw_table *table = &lw_ride_rates_table;
    bool has_any = false;
    for (size_t i = 0; i < table->count; i++) {
        const bool is_event = table->rows[i].unit == LW_UNIT_PERH;
        has_any |= is_event && lw_quantity_value(&table->rows[i], &rates) > 0.0;
    }
    lw_tell_object(t, "rates", has_any ? "In an hour of this" : NULL);
    for (size_t i = 0; i < table->count; i++) {
        const lw_quantity *row = &table->rows[i];
        const double value = lw_quantity_value(row, &rates);
        lw_item item = lw_item_of(row, row->unit == LW_UNIT_PERH && value > 0.0 ? row->doc : NULL);
        if (row->unit == LW_UNIT_PERH) item.digits = 0;
        lw_tell_number(t, &item, value);
    }
    lw_tell_end(t);
}

static void tell_trust(lw_teller *t)
{
    lw_tell_list(t, "trust", "How far to trust it");
    lw_tell_text(t, NULL,
                 "One ride tells little of rates: `lullwise ride --runs 100` sails many. Other "
                 "seeds are other gusts and waves of the same day.");
    lw_tell_end(t);
}

void lw_rode_tell_one(const lw_rode *rode, lw_teller *t)
{
    tell_head(rode, t);
    tell_events(rode, t);
    tell_sum(rode, t);
    tell_rates(&rode->log.ride.tally, t);
    tell_trust(t);
}

static void tell_history(const lw_ride_log *log, lw_teller *t)
{
    lw_item columns[LW_TABLE_COLUMNS_MOST];
    const lw_table *table = &lw_trace_table;
    for (size_t i = 0; i < table->count; i++) columns[i] = column_of(&table->rows[i], false);
    lw_tell_table(t, "history", NULL, columns, table->count);
    for (size_t k = 0; k < log->row_count; k++) {
        lw_tell_row(t);
        for (size_t i = 0; i < table->count; i++) {
            lw_tell_number(t, NULL, lw_quantity_value(&table->rows[i], &log->rows[k]));
        }
    }
    lw_tell_end(t);
}

// --- many rides

// "11.2 ± 0.01 kn", for each; the errors once more by themselves.
static void tell_means(const lw_ride_sample *sample, lw_teller *t)
{
    char mean[LW_SHOWN_LENGTH], error[LW_SHOWN_LENGTH], text[2 * LW_SHOWN_LENGTH];
    const lw_ride_rates errors = lw_ride_sample_error(sample);
    const lw_table *table = &lw_ride_rates_table;
    lw_tell_object(t, "mean", "What they come to");
    for (size_t i = 0; i < table->count; i++) {
        const lw_quantity *row = &table->rows[i];
        const lw_item item = lw_item_of(row, row->doc);
        const double value = lw_quantity_value(row, &sample->mean);
        lw_cell_number(mean, lw_quantity_shown(row, &sample->mean), row->decimals, false);
        lw_cell_number(error, lw_quantity_shown(row, &errors), row->decimals + 1, false);
        LW_FIT(text, "%s ± %s%s", mean, error, lw_unit_behind(row->unit));
        lw_tell_number_as(t, &item, value, text);
    }
    lw_tell_end(t);
    lw_tell_rows(t, "error", table, &errors);
}

static const char *why_it_ended(const lw_rode *rode)
{
    return rode->many.is_sure ? "every rate is known well enough"
           : rode->is_stopped ? "stopped from the keyboard"
                              : "so many were asked for";
}

static void say_end(const lw_rode *rode, char text[LW_RIDDEN_LENGTH])
{
    char time[LW_CELL_LENGTH];
    lw_cell_time(time, rode->seconds);
    lw_text_fit(text, LW_RIDDEN_LENGTH,
                "±: standard error; of what happens, never less than one in all the time sailed. "
                "%.0f rides of %s, seeds from %llu: %s.",
                rode->many.sample.rides, time, (unsigned long long)rode->ridden.plan.seed,
                why_it_ended(rode));
}

static void tell_rides(const lw_rode *rode, lw_teller *t)
{
    lw_item columns[1 + LW_RIDE_RATES] = {{.key = "seed", .form = LW_AS_NUMBER}};
    const lw_table *table = &lw_ride_rates_table;
    for (size_t i = 0; i < table->count; i++) columns[1 + i] = lw_item_of(&table->rows[i], NULL);
    lw_tell_table(t, "rides", NULL, columns, 1 + table->count);
    for (size_t k = 0; k < rode->many.most; k++) {
        const lw_ride_tally *tally = &rode->many.tallies[k];
        if (!(tally->seconds > 0.0)) continue;
        const lw_ride_rates rates = lw_ride_rates_of(tally);
        lw_tell_row(t);
        lw_tell_number(t, NULL, (double)(rode->ridden.plan.seed + k));
        for (size_t i = 0; i < table->count; i++) {
            lw_tell_number(t, NULL, lw_quantity_value(&table->rows[i], &rates));
        }
    }
    lw_tell_end(t);
}

void lw_rode_tell_many(const lw_rode *rode, lw_teller *t)
{
    static const lw_item seconds = {.key = "seconds", .form = LW_AS_TIME, .unit = LW_UNIT_S};
    static const lw_item count = {.key = "count", .form = LW_AS_NUMBER};
    char text[LW_RIDDEN_LENGTH];
    const bool is_sailed = rode->many.sample.rides > 0.0;
    tell_head(rode, t);
    lw_tell_number(t, &count, rode->many.sample.rides);
    lw_tell_number(t, &seconds, rode->seconds);
    lw_tell_flag(t, "is_sure", rode->many.is_sure);
    lw_tell_flag(t, "is_stopped", rode->is_stopped);
    if (is_sailed) tell_means(&rode->many.sample, t);
    if (is_sailed)
        say_end(rode, text);
    else
        LW_FIT(text,
               "Stopped before the first ride had ended: nothing was sailed to the end, so "
               "there are no rates. Fewer --minutes end sooner.");
    lw_tell_sentence(t, "end", text);
    tell_rides(rode, t);
}

void lw_rode_tell(const void *it, lw_teller *t)
{
    const lw_rode *rode = it;
    if (rode->is_many) {
        lw_rode_tell_many(rode, t);
        return;
    }
    lw_rode_tell_one(rode, t);
    if (!lw_teller_is_for_people(t)) tell_history(&rode->log, t);
}
