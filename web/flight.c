// flight.c - one steady flight for the page, told as `lullwise fly` tells it, and its picture.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "answer/fly/fly.h"
#include "answer/modes/modes.h"
#include "answer/parcel.h"
#include "answer/words/sections.h"
#include "lullwise/drawn.h"
#include "picture/side_picture.h"
#include "web/page.h"

// What the small pictures need beyond the measured boat, in SI: the flight; the sailor's middle to
// windward, sitting in and hiked; the chop.
static void put_drawn(const lw_flown *flown)
{
    const lw_craft *craft = &flown->craft;
    const double incidence = flown->inputs->boat.pins[flown->pin].incidence;
    const double place = flown->answer.flight.place_x + craft->transom_x;
    const lw_craft_drawn at = lw_craft_drawn_of(craft, incidence, place, flown->wind);
    lw_parcel_object("drawn");
    lw_parcel_rows("flight", &lw_flight_table, &flown->answer.flight);
    lw_parcel_number("body_in", at.body_in);
    lw_parcel_number("body_out", at.body_out);
    lw_parcel_number("body_height", at.body_height);
    lw_parcel_number("trough", at.trough);
    lw_parcel_end();
}

static lw_fly fly;  // the last question
static lw_unit speed_unit;

// A craft takes longer to prepare than a flight to find: once for each change of the slot.
static void prepare(int slot)
{
    static const lw_web_slot *last;
    static unsigned changes;
    const lw_web_slot *now = &lw_web_slots[slot];
    const lw_inputs *inputs = &now->inputs;
    fly.has_flight = fly.has_range = false;
    speed_unit = now->speed_unit;
    if (now == last && changes == now->changes) return;
    lw_flown_prepare(&fly.flown, inputs, lw_sections_of(&inputs->boat));
    last = now, changes = now->changes;
}

// What the script asks, as doubles in the room; NAN: not given, to be chosen.
typedef struct question {
    double pin, wind, heading, heel, place, turns;
    double width;  // [px] of the picture; NAN: none is wanted
} question;

static void ask(lw_flown *flown, const question *q)
{
    flown->pin = (size_t)q->pin;
    flown->wind = q->wind;
    flown->heading = q->heading, flown->has_heading = !isnan(q->heading);
    flown->heel = q->heel, flown->has_heel = !isnan(q->heel);
    flown->place = q->place, flown->has_place = !isnan(q->place);
    flown->turns = q->turns, flown->has_turns = !isnan(q->turns);
}

static void put_picture(double width)
{
    const lw_flown *flown = &fly.flown;
    const lw_side_drawn side = {.boat = &flown->inputs->boat,
                                .craft = &flown->craft,
                                .pin = flown->pin,
                                .flight = &flown->answer.flight};
    FILE *out = lw_web_drawing();
    lw_side_draw_alone(out, &side, width);
    lw_web_put_drawing("picture", out);
}

static void put_told(void (*tell)(const void *, lw_teller *), const void *it)
{
    lw_teller teller = lw_parcel_teller(speed_unit);
    tell(it, &teller);
    lw_teller_finish(&teller);
}

LW_EXPORT(lw_web_fly) void lw_web_fly(int slot)
{
    question q;
    const lw_inputs *inputs = &lw_web_slots[slot].inputs;
    memcpy(&q, lw_web_room(sizeof q), sizeof q);
    lw_parcel_begin();
    if (!(q.pin >= 0.0 && q.pin < (double)inputs->boat.pin_count)) return;
    prepare(slot);
    ask(&fly.flown, &q);
    lw_fly_step(&fly, 0);
    put_drawn(&fly.flown);
    if (!isnan(q.width) && lw_fly_is_answered(&fly)) put_picture(q.width);
    put_told(lw_fly_tell, &fly);
}

// Asked once the slider rests, for it takes a range.
LW_EXPORT(lw_web_fly_advice) void lw_web_fly_advice(void)
{
    lw_parcel_begin();
    if (!fly.has_flight) return;
    if (lw_fly_steps(&fly) > 1) lw_fly_step(&fly, 1);
    put_told(lw_fly_tell, &fly);
}

LW_EXPORT(lw_web_fly_modes) void lw_web_fly_modes(void)
{
    static lw_disturbed disturbed;
    lw_parcel_begin();
    if (!fly.has_flight || !lw_fly_is_answered(&fly)) return;
    disturbed.flown = fly.flown;
    lw_disturbed_find(&disturbed);
    put_told(lw_disturbed_tell, &disturbed);
}
