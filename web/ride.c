// ride.c - one ride through the day's gusts and chop for the page: its history, what happened,
// words.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "answer/words/ridden.h"
#include "answer/words/sections.h"
#include "lullwise/drawn.h"
#include "lullwise/ride.h"
#include "web/page.h"
#include "web/parcel.h"

#define EVENTS_MOST 4000

static lw_ridden ridden;
static lw_ride ride;
static lw_ride_event events[EVENTS_MOST];

// What the script asks, as doubles in the room; NAN: not given, to be chosen.
typedef struct question {
    double pin, wind, heading, turns, course;
    double seed, seconds, every;
} question;

// A craft takes longer than a ride: it is prepared anew only when a record of the slot is another.
static void prepare(const lw_web_slot *of)
{
    static const lw_web_slot *last;
    static unsigned changes;
    if (last && last == of && changes == last->changes) return;
    lw_ridden_prepare(&ridden, &of->picked.inputs, lw_sections_of(&of->picked.inputs.boat));
    last = of, changes = of->changes;
}

static void ask(const question *q, const lw_web_slot *of)
{
    lw_flown *flown = &ridden.flown;
    flown->pin = (size_t)q->pin;
    flown->speed_unit = of->picked.speed_unit;
    flown->wind = isnan(q->wind) ? of->picked.inputs.day.wind.mean : q->wind;
    flown->heading = q->heading, flown->has_heading = !isnan(q->heading);
    flown->turns = q->turns, flown->has_turns = !isnan(q->turns);
    flown->course = (lw_course_kind)q->course;
    lw_ridden_plan(&ridden, (uint64_t)q->seed);
}

// One row: the trace, and the water along the boat above its mean level.
static void put_row(const lw_sea_waves *sea)
{
    const lw_trace at = lw_ride_trace(&ridden.motion, &ride);
    for (size_t i = 0; i < lw_trace_table.count; i++) {
        lw_parcel_number("", lw_quantity_value(&lw_trace_table.rows[i], &at));
    }
    double height[LW_WATER_COUNT];
    lw_ridden_water(&ridden, sea, &at, height);
    for (int i = 0; i < LW_WATER_COUNT; i++) lw_parcel_number("", height[i]);
}

static void put_history(const question *q)
{
    const size_t every = lw_ridden_steps(&ridden, q->every);
    const double apart = (double)every * ridden.motion.parameters.step;
    const size_t rows = (size_t)fmax(round(q->seconds / apart), 1.0);
    const lw_sea_waves sea =
        lw_sea_of(ridden.motion.sea, lw_seed_of(ridden.plan.seed, LW_SEED_SEA));
    ride.events = events, ride.event_room = EVENTS_MOST;
    lw_ride_begin(&ride, &ridden.motion, &ridden.plan);
    lw_parcel_list("history");
    put_row(&sea);
    for (size_t k = 0; k < rows; k++) {
        lw_rides_advance(&ridden.motion, &ride, 1, every);
        put_row(&sea);
    }
    lw_parcel_end();
    lw_parcel_number("every", apart);
    lw_parcel_number("width", (double)(lw_trace_table.count + LW_WATER_COUNT));
    lw_parcel_number("surface_from", LW_WATER_FROM);
    lw_parcel_number("surface_step", LW_WATER_STEP);
}

static void put_events(void)
{
    lw_parcel_list("events");
    for (size_t i = 0; i < ride.event_count; i++) {
        const lw_ride_event *event = &ride.events[i];
        lw_parcel_object("");
        lw_parcel_text("what", lw_ride_event_key(event->what));
        lw_parcel_text("says", lw_ride_event_text(event->what));
        lw_parcel_truth("is_swim", lw_ride_event_is_swim(event->what));
        lw_parcel_rows("at", &lw_trace_table, &event->at);
        lw_parcel_end();
    }
    lw_parcel_end();
    lw_parcel_text("end", lw_ride_stand_text(lw_ride_stands(&ride)));
}

static void put_words(void)
{
    char text[LW_RIDDEN_LENGTH];
    const lw_ride_rates rates = lw_ride_rates_of(&ride.tally);
    lw_ridden_scene(&ridden, text);
    lw_parcel_text("scene", text);
    lw_ridden_trim(&ridden, text);
    lw_parcel_text("trim", text);
    lw_ridden_sum(&ridden, &ride.tally, text);
    lw_parcel_text("sum", text);
    lw_parcel_rows("rates", &lw_ride_rates_table, &rates);
}

// What the picture needs beyond the measured boat, and the wind's three heights.
static void put_drawn(void)
{
    const lw_flown *flown = &ridden.flown;
    const double incidence = flown->inputs->boat.pins[flown->pin].incidence;
    const lw_craft_drawn at =
        lw_craft_drawn_of(&flown->craft, incidence, ridden.plan.place, flown->wind);
    lw_parcel_number("strut_turn", at.strut_turn);
    lw_parcel_number("place_x", at.place_x);
    lw_parcel_number("weight", at.weight);
    lw_parcel_number("heading", ridden.flown.answer.flight.heading);
    lw_parcel_number("turns", ridden.flown.answer.flight.turns);
    lw_parcel_number("lull", ridden.wind.lull);
    lw_parcel_number("mean", ridden.wind.mean);
    lw_parcel_number("puff", ridden.wind.puff);
}

LW_EXPORT(lw_web_ride) void lw_web_ride(int slot)
{
    question q;
    const lw_web_slot *of = &lw_web_slots[slot];
    memcpy(&q, lw_web_room(sizeof q), sizeof q);
    lw_parcel_begin();
    if (!(q.pin >= 0.0 && q.pin < (double)of->picked.inputs.boat.pin_count)) return;
    if (!(q.course >= 0.0 && q.course < LW_COURSE_COUNT) || !of->is_settled) return;
    prepare(of);
    ask(&q, of);
    put_history(&q);
    put_events();
    put_words();
    put_drawn();
}
