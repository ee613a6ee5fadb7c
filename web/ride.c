// ride.c - one ride through the day's gusts and chop for the page, told as `lullwise ride` tells
// it, and its history for the moving picture.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "answer/parcel.h"
#include "answer/ride/ride.h"
#include "answer/words/sections.h"
#include "lullwise/drawn.h"
#include "picture/side_picture.h"
#include "web/page.h"

static lw_rode rode;  // the last question

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
    rode.inputs = of->inputs;
    lw_ridden_prepare(&rode.ridden, &rode.inputs, lw_sections_of(&rode.inputs.boat));
    last = of, changes = of->changes;
}

static void ask(const question *q, const lw_web_slot *of)
{
    lw_flown *flown = &rode.ridden.flown;
    flown->pin = (size_t)q->pin;
    rode.speed_unit = of->speed_unit;
    flown->wind = isnan(q->wind) ? rode.inputs.day.wind.mean : q->wind;
    flown->heading = q->heading, flown->has_heading = !isnan(q->heading);
    flown->turns = q->turns, flown->has_turns = !isnan(q->turns);
    flown->course = (lw_course_kind)q->course;
    lw_ridden_plan(&rode.ridden, (uint64_t)q->seed);
    lw_ride_log_release(&rode.log);
    if (!lw_ride_log_begin(&rode.log, &rode.ridden, q->seconds, q->every)) abort();
}

// One row: the trace, and the water along the boat above its mean level.
static void put_row(const lw_trace *at, const lw_sea_waves *sea)
{
    double height[LW_WATER_COUNT];
    for (size_t i = 0; i < lw_trace_table.count; i++) {
        lw_parcel_array_number(lw_quantity_value(&lw_trace_table.rows[i], at));
    }
    lw_ridden_water(&rode.ridden, sea, at, height);
    for (int i = 0; i < LW_WATER_COUNT; i++) lw_parcel_array_number(height[i]);
}

static void put_history(void)
{
    const lw_motion *motion = &rode.ridden.motion;
    const size_t width = lw_trace_table.count + LW_WATER_COUNT;
    const lw_sea_waves sea = lw_sea_of(motion->sea, lw_seed_of(rode.ridden.plan.seed, LW_SEED_SEA));
    lw_parcel_array("history", rode.log.row_count * width);
    for (size_t k = 0; k < rode.log.row_count; k++) put_row(&rode.log.rows[k], &sea);
    lw_parcel_number("width", (double)width);
    lw_parcel_number("every", (double)rode.log.every * motion->parameters.step);
    lw_parcel_number("surface_from", LW_WATER_FROM);
    lw_parcel_number("surface_step", LW_WATER_STEP);
}

static void put_boat(void)
{
    const lw_flown *flown = &rode.ridden.flown;
    FILE *out = lw_web_drawing();
    lw_side_parts_draw(out, &flown->inputs->boat, &flown->craft);
    lw_web_put_drawing("boat", out);
}

// What the picture needs beyond the measured boat, and the wind's three heights; in SI.
static void put_drawn(void)
{
    const lw_flown *flown = &rode.ridden.flown;
    const double incidence = flown->inputs->boat.pins[flown->pin].incidence;
    const lw_craft_drawn at =
        lw_craft_drawn_of(&flown->craft, incidence, rode.ridden.plan.place, flown->wind);
    lw_parcel_object("drawn");
    lw_parcel_number("strut_turn", at.strut_turn);
    lw_parcel_number("place_x", at.place_x);
    lw_parcel_number("weight", at.weight);
    lw_parcel_number("heading", flown->answer.flight.heading);
    lw_parcel_number("turns", flown->answer.flight.turns);
    lw_parcel_number("lull", rode.ridden.wind.lull);
    lw_parcel_number("mean", rode.ridden.wind.mean);
    lw_parcel_number("puff", rode.ridden.wind.puff);
    put_history();
    put_boat();
    lw_parcel_end();
}

LW_EXPORT(lw_web_ride) void lw_web_ride(int slot)
{
    question q;
    const lw_web_slot *of = &lw_web_slots[slot];
    memcpy(&q, lw_web_room(sizeof q), sizeof q);
    lw_parcel_begin();
    if (!(q.pin >= 0.0 && q.pin < (double)of->inputs.boat.pin_count)) return;
    if (!(q.course >= 0.0 && q.course < LW_COURSE_COUNT) || !of->is_settled) return;
    prepare(of);
    ask(&q, of);
    while (rode.log.left > 0) lw_ride_log_row(&rode.log, &rode.ridden.motion);
    put_drawn();
    lw_teller teller = lw_parcel_teller(of->speed_unit);
    lw_rode_tell_one(&rode, &teller);
    lw_teller_finish(&teller);
}
