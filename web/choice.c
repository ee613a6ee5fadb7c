// choice.c - the day's outlook in steps, and the ranking with all that is said about it.
// SPDX-License-Identifier: MIT

#include <stdlib.h>
#include <string.h>

#include "answer/words/caution.h"
#include "answer/words/margin_text.h"
#include "answer/words/sections.h"
#include "web/page.h"
#include "web/parcel.h"

LW_EXPORT(lw_web_begin) int lw_web_begin(int slot)
{
    lw_picked *picked = &lw_web_slots[slot].picked;
    const lw_inputs *inputs = &picked->inputs;
    if (!lw_web_slots[slot].is_settled || inputs->boat.pin_count == 0) return 0;
    if (!picked->outlook) picked->outlook = malloc(sizeof *picked->outlook);
    if (!picked->outlook) abort();
    lw_outlook_begin(picked->outlook, &inputs->boat, lw_sections_of(&inputs->boat),
                     &inputs->sailor.person, &inputs->day);
    return (int)lw_outlook_steps(picked->outlook);
}

LW_EXPORT(lw_web_steps) int lw_web_steps(int slot)
{
    return (int)lw_outlook_steps(lw_web_slots[slot].picked.outlook);
}

LW_EXPORT(lw_web_forget) void lw_web_forget(int slot)
{
    lw_outlook_forget(lw_web_slots[slot].picked.outlook);
}

LW_EXPORT(lw_web_part_size) size_t lw_web_part_size(void) { return sizeof(lw_outlook_part); }

LW_EXPORT(lw_web_step) void lw_web_step(int slot, int step)
{
    lw_outlook *outlook = lw_web_slots[slot].picked.outlook;
    lw_outlook_part *to = (lw_outlook_part *)lw_web_room(sizeof *to);
    memset(to, 0, sizeof *to);
    lw_outlook_step(outlook, (size_t)step);
    lw_outlook_give(outlook, (size_t)step, to);
}

LW_EXPORT(lw_web_take) void lw_web_take(int slot, int step)
{
    const lw_outlook_part *from = (const lw_outlook_part *)lw_web_room(sizeof *from);
    lw_outlook_take(lw_web_slots[slot].picked.outlook, (size_t)step, from);
}

static bool flies(const lw_range_point *point)
{
    return point->trimmed.outcome == LW_FLIES && lw_margins_hold(&point->trimmed.margins);
}

// Turns and speed in each wind that she flies in, and the limits, on one course.
static void put_range(const lw_picked *picked, size_t pin, size_t course)
{
    const lw_range *range = &picked->outlook->ranges[pin][course];
    char name[LW_COURSE_NAME];
    lw_picked_course_name(picked, course, name);
    lw_parcel_object("");
    lw_parcel_text("course", name);
    lw_parcel_rows("limits", &lw_range_table, range);
    lw_parcel_truth("has_launch", range->has_launch);
    lw_parcel_truth("has_flight", range->has_flight);
    lw_parcel_truth("has_hold", range->has_hold);
    lw_parcel_text("ends_by", lw_margin_end(range->ends_by));
    lw_parcel_truth("ends_in_puff", range->ends_in_puff);
    lw_parcel_list("winds");
    for (int i = 0; i < LW_RANGE_WINDS; i++) {
        const lw_flight *flight = &range->at[i].trimmed.flight;
        if (!flies(&range->at[i])) continue;
        lw_parcel_object("");
        lw_parcel_number("wind", range->at[i].wind);
        lw_parcel_number("speed", flight->speed);
        lw_parcel_number("turns", flight->turns);
        lw_parcel_truth("is_held", range->at[i].is_held);
        lw_parcel_end();
    }
    lw_parcel_end();
    lw_parcel_end();
}

static void put_place(const lw_picked *picked, size_t i)
{
    const lw_placing *place = &picked->now.places[i];
    char text[LW_REASON_LENGTH];
    lw_picked_reason(picked, i, text);
    lw_parcel_object("");
    lw_parcel_number("pin", (double)place->pin);
    lw_parcel_text("label", lw_picked_label(picked, place->pin));
    lw_parcel_truth("is_first", place->reason == LW_REASON_FIRST);
    lw_parcel_text("reason", lw_reason_text(place->reason));
    lw_parcel_text("sentence", text);
    lw_picked_end(picked, place->pin, text);
    lw_parcel_text("ends_by", text);
    lw_parcel_text("behind", lw_picked_behind(picked, i, text) ? text : "");
    lw_parcel_truth("can_be_sailed", place->can_be_sailed);
    lw_parcel_truth("flies", place->flies);
    lw_parcel_truth("ends_by_rides", place->ends_by_rides);
    lw_parcel_truth("is_close", place->is_close);
    lw_parcel_truth("flies_in_lull", place->flies_in_lull);
    lw_parcel_truth("flies_in_mean", place->flies_in_mean);
    lw_parcel_truth("flies_in_puff", place->flies_in_puff);
    lw_parcel_rows("prospect", &lw_prospect_table, &place->prospect);
    lw_parcel_list("ranges");
    for (size_t c = 0; c < picked->outlook->course_count; c++) put_range(picked, place->pin, c);
    lw_parcel_end();
    lw_parcel_end();
}

static void put_order(const char *key, const lw_picked *picked, const lw_choice *choice)
{
    char text[LW_REASON_LENGTH];
    lw_picked_order(picked, choice, text);
    lw_parcel_text(key, text);
}

static void put_steps(const lw_picked *picked)
{
    lw_parcel_list("calmer");
    for (size_t pin = 0; pin + 1 < picked->now.count; pin++) {
        char text[LW_REASON_LENGTH];
        lw_picked_step(picked, pin, text);
        lw_parcel_object("");
        lw_parcel_text("from", lw_picked_label(picked, pin));
        lw_parcel_text("to", lw_picked_label(picked, pin + 1));
        lw_parcel_text("sentence", text);
        lw_parcel_end();
    }
    lw_parcel_end();
}

static void put_cautions(const lw_picked *picked)
{
    char lines[LW_CAUTIONS_MOST][LW_CAUTION_LENGTH];
    const size_t count = lw_cautions(picked, lines);
    lw_parcel_list("cautions");
    for (size_t i = 0; i < count; i++) lw_parcel_text("", lines[i]);
    lw_parcel_end();
}

LW_EXPORT(lw_web_choice) void lw_web_choice(int slot)
{
    lw_picked *picked = &lw_web_slots[slot].picked;
    char text[LW_REASON_LENGTH];
    lw_outlook_end(picked->outlook);
    lw_picked_rank(picked);
    lw_parcel_begin();
    lw_parcel_truth("flies", lw_picked_flies(&picked->now));
    if (!lw_picked_flies(&picked->now)) {
        lw_picked_no_flight(picked, text);
        lw_parcel_text("no_flight", text);
    }
    lw_parcel_object("gusts");
    lw_parcel_number("lull", picked->now.gusts.lull);
    lw_parcel_number("mean", picked->now.gusts.mean);
    lw_parcel_number("puff", picked->now.gusts.puff);
    lw_parcel_end();
    lw_picked_course_name(picked, lw_picked_longest(picked), text);
    lw_parcel_text("turns_course", text);
    lw_parcel_list("places");
    for (size_t i = 0; i < picked->now.count; i++) put_place(picked, i);
    lw_parcel_end();
    lw_parcel_number("wind_step", LW_WIND_STEP);
    put_order("less", picked, &picked->less);
    put_order("more", picked, &picked->more);
    put_steps(picked);
    put_cautions(picked);
}
