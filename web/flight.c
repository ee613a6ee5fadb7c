// flight.c - one steady flight for the page: state, margins in their order, and what is said.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "answer/words/flown.h"
#include "answer/words/margin_text.h"
#include "answer/words/modes_text.h"
#include "answer/words/sections.h"
#include "lullwise/drawn.h"
#include "web/page.h"
#include "web/parcel.h"

static void put_margins(const lw_margins *margins)
{
    size_t order[LW_MARGIN_COUNT];
    lw_margins_order(margins, order);
    lw_parcel_list("margins");
    for (size_t i = 0; i < LW_MARGIN_COUNT; i++) {
        const lw_quantity *row = &lw_margins_table.rows[order[i]];
        const double left = lw_quantity_value(row, margins);
        lw_parcel_object("");
        lw_parcel_text("key", row->key);
        lw_parcel_text("name", lw_margin_name(order[i]));
        lw_parcel_text("end", lw_margin_end(order[i]));
        lw_parcel_number("left", left);
        lw_parcel_number("scales", left / lw_margins_scale(order[i]));
        lw_parcel_end();
    }
    lw_parcel_end();
}

static void put_answer(const lw_flown *flown)
{
    static const char *const outcomes[] = {"flies", "floats", "no_balance"};
    const bool has_balance = flown->answer.outcome != LW_NO_BALANCE;
    lw_parcel_text("outcome", outcomes[flown->answer.outcome]);
    lw_parcel_truth("is_held", has_balance && lw_margins_hold(&flown->answer.margins));
    lw_parcel_rows("flight", &lw_flight_table, &flown->answer.flight);
    if (has_balance) put_margins(&flown->answer.margins);
}

// What a picture needs beyond the measured boat: where weight and sail act, forward of the transom
// and above the hull's bottom; the sailor's middle to windward, sitting in and hiked.
static void put_drawn(const lw_flown *flown)
{
    const lw_craft *craft = &flown->craft;
    const double incidence = flown->inputs->boat.pins[flown->pin].incidence;
    const double place = flown->answer.flight.place_x + craft->transom_x;
    const lw_craft_drawn at = lw_craft_drawn_of(craft, incidence, place, flown->wind);
    lw_parcel_object("drawn");
    lw_parcel_number("weight", at.weight);
    lw_parcel_number("weight_x", at.weight_x);
    lw_parcel_number("weight_height", at.weight_height);
    lw_parcel_number("sail_x", at.sail_x);
    lw_parcel_number("sail_height", at.sail_height);
    lw_parcel_number("body_in", at.body_in);
    lw_parcel_number("body_out", at.body_out);
    lw_parcel_number("body_height", at.body_height);
    lw_parcel_number("strut_turn", at.strut_turn);
    lw_parcel_number("trough", at.trough);
    lw_parcel_end();
}

static void put_words(lw_flown *flown)
{
    char text[LW_FLOWN_LENGTH], notes[LW_TRUST_MOST][LW_TRUST_LENGTH];
    lw_flown_outcome(flown, text);
    lw_parcel_text("sentence", text);
    lw_flown_freedom(flown, text);
    lw_parcel_text("freedom", text);
    if (lw_flown_turns(flown, text)) lw_parcel_text("turns", text);
    const size_t count = lw_flown_trust(flown, notes);
    lw_parcel_list("trust");
    for (size_t i = 0; i < count; i++) lw_parcel_text("", notes[i]);
    lw_parcel_end();
}

static lw_flown flown;  // of the last question

// A craft takes longer to prepare than a flight to find: once for each change of the slot.
static void prepare(int slot)
{
    static const lw_web_slot *last;
    static unsigned changes;
    const lw_web_slot *now = &lw_web_slots[slot];
    if (now == last && changes == now->changes) return;
    lw_flown_prepare(&flown, &now->picked.inputs, lw_sections_of(&now->picked.inputs.boat));
    last = now, changes = now->changes;
}

// What the script asks, as doubles in the room; NAN: not given, to be chosen.
typedef struct question {
    double pin, wind, heading, heel, place, turns;
} question;

static void ask(const question *q)
{
    flown.pin = (size_t)q->pin;
    flown.wind = q->wind;
    flown.heading = q->heading, flown.has_heading = !isnan(q->heading);
    flown.heel = q->heel, flown.has_heel = !isnan(q->heel);
    flown.place = q->place, flown.has_place = !isnan(q->place);
    flown.turns = q->turns, flown.has_turns = !isnan(q->turns);
}

LW_EXPORT(lw_web_fly) void lw_web_fly(int slot)
{
    question q;
    const lw_inputs *inputs = &lw_web_slots[slot].picked.inputs;
    memcpy(&q, lw_web_room(sizeof q), sizeof q);
    lw_parcel_begin();
    if (!(q.pin >= 0.0 && q.pin < (double)inputs->boat.pin_count)) return;
    prepare(slot);
    flown.speed_unit = lw_web_slots[slot].picked.speed_unit;
    ask(&q);
    lw_flown_answer(&flown);
    put_answer(&flown);
    put_drawn(&flown);
    put_words(&flown);
}

// Why she does not fly, and what to try: asked once the slider rests, for it takes a range.
LW_EXPORT(lw_web_fly_advice) void lw_web_fly_advice(void)
{
    char text[LW_FLOWN_LENGTH] = "";
    lw_parcel_begin();
    if (flown.inputs && flown.answer.outcome != LW_FLIES) {
        lw_flown_range(&flown);
        lw_flown_advice(&flown, text);
    }
    lw_parcel_text("advice", text);
}

static void put_modes(const char *key, const lw_modes *modes)
{
    char text[LW_MODES_LENGTH];
    lw_parcel_list(key);
    for (size_t i = 0; i < modes->count; i++) {
        const lw_mode *mode = &modes->mode[i];
        if (!lw_mode_is_seen(mode)) continue;
        lw_parcel_object("");
        lw_mode_name(mode, text);
        lw_parcel_text("name", text);
        lw_mode_shape(mode, text);
        lw_parcel_text("together", text);
        lw_parcel_number("period", mode->swing.period);
        lw_parcel_truth("grows", mode->swing.growth > 0.0);
        lw_parcel_number("seconds",
                         mode->swing.growth > 0.0 ? mode->swing.doubles : mode->swing.halves);
        lw_parcel_end();
    }
    lw_parcel_end();
}

static void put_wand(const lw_motion *motion, const lw_ride_plan *plan)
{
    char text[LW_MODES_LENGTH];
    const lw_wand_margin margin = lw_wand_margin_of(motion, plan, LW_HANDS_SAILING);
    lw_parcel_object("wand");
    lw_wand_more(&margin, text);
    lw_parcel_text("more gearing", text);
    lw_wand_less(&margin, text);
    lw_parcel_text("less gearing", text);
    lw_wand_late(&margin, text);
    lw_parcel_text("a later wand", text);
    lw_parcel_end();
}

// The motions about the flight asked last, as `lullwise modes` tells them.
LW_EXPORT(lw_web_fly_modes) void lw_web_fly_modes(void)
{
    static lw_modes sailed, alone;
    char text[LW_MODES_LENGTH];
    lw_parcel_begin();
    if (!flown.inputs || flown.answer.outcome == LW_NO_BALANCE) return;
    const lw_motion motion = lw_motion_of(&flown.craft);
    const lw_ride_plan plan = lw_ride_plan_of(&motion, &flown.ask, &flown.answer);
    lw_modes_of(&motion, &plan, LW_HANDS_SAILING, &sailed);
    lw_modes_of(&motion, &plan, LW_HANDS_STILL, &alone);
    lw_modes_verdict(&sailed, &alone, text);
    lw_parcel_text("verdict", text);
    put_modes("sailed", &sailed);
    put_modes("alone", &alone);
    if (flown.answer.outcome == LW_FLIES) put_wand(&motion, &plan);
    lw_parcel_list("trust");
    for (int i = 0; i < LW_MODES_TRUST; i++) lw_parcel_text("", lw_modes_trust[i]);
    lw_parcel_end();
}
