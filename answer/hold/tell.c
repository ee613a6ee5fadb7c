// tell.c - the answer of `lullwise hold` told.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/hold/hold.h"
#include "answer/words/caution.h"
#include "answer/words/number_text.h"

static void tell_head(const lw_held *held, lw_teller *t)
{
    char text[600], stop[LW_CELL_LENGTH];
    const lw_inputs *inputs = &held->picked.inputs;
    const lw_unit unit = t->speed_unit;
    lw_cell_time(stop, held->hold.stop);
    LW_FIT(text,
           "%s, %s; %s. Mean wind %s now and %s at the finish, lull and puff in proportion; %.2f "
           "nmi left; a stop costs %s.",
           inputs->boat.name, inputs->sailor.name, inputs->day.name,
           LW_SPEED_TEXT(held->hold.now, 1, unit), LW_SPEED_TEXT(held->hold.later, 1, unit),
           held->hold.left / LW_NMI, stop);
    lw_tell_sentence(t, "question", text);
    lw_tell_name(t, "boat", inputs->boat.name);
    lw_tell_name(t, "sailor", inputs->sailor.name);
    lw_tell_name(t, "day", inputs->day.name);
    lw_tell_number(t, &(lw_item){.key = "wind_now", .unit = LW_UNIT_KN, .digits = 1},
                   held->hold.now);
    lw_tell_number(t, &(lw_item){.key = "wind_finish", .unit = LW_UNIT_KN, .digits = 1},
                   held->hold.later);
    lw_tell_number(t, &(lw_item){.key = "left", .unit = LW_UNIT_NMI, .digits = 2}, held->hold.left);
    lw_tell_number(t, &(lw_item){.key = "stop", .unit = LW_UNIT_S, .form = LW_AS_TIME},
                   held->hold.stop);
}

static void tell_answer(const lw_held *held, lw_teller *t)
{
    char text[LW_HELD_LENGTH];
    const bool stops = lw_held_stops(held);
    lw_held_answer(held, text);
    lw_tell_object(t, "answer", "Hold or stop");
    lw_tell_sentence(t, "sentence", text);
    lw_tell_name(t, "held", lw_picked_label(&held->picked, held->hold.pin));
    lw_tell_flag(t, "stops", stops);
    lw_tell_name(t, "change_to", stops ? lw_picked_label(&held->picked, held->hold.best) : NULL);
    lw_tell_end(t);
}

// clang-format off
static const lw_item columns[] = {
    {"pin",           "pin",        LW_AS_TEXT,   LW_UNIT_NONE,    0, NULL},
    {"is_held",       NULL,         LW_AS_TRUTH,  LW_UNIT_NONE,    0, NULL},
    {"to_finish",     "to finish",  LW_AS_TIME,   LW_UNIT_S,       0, NULL},
    {"saves",         "saves",      LW_AS_TIME,   LW_UNIT_S,       0, "held"},
    {"saves_unsure",  "±",          LW_AS_TIME,   LW_UNIT_S,       0, ""},
    {"saves_error",   NULL,         LW_AS_NUMBER, LW_UNIT_S,       1, NULL},
    {"saves_spread",  NULL,         LW_AS_NUMBER, LW_UNIT_S,       1, NULL},
    {"chance",        "chance",     LW_AS_CHANCE, LW_UNIT_PERCENT, 0, ""},
    {"even_left",     "break-even", LW_AS_NUMBER, LW_UNIT_NMI,     2, NULL},
    {"even_seconds",  NULL,         LW_AS_TIME,   LW_UNIT_S,       0, NULL},
    {"best_after",    NULL,         LW_AS_NUMBER, LW_UNIT_NMI,     2, NULL},
    {"best_saves",    NULL,         LW_AS_TIME,   LW_UNIT_S,       0, NULL},
    {"best_error",    NULL,         LW_AS_NUMBER, LW_UNIT_S,       1, NULL},
    {"best_spread",   NULL,         LW_AS_NUMBER, LW_UNIT_S,       1, NULL},
    {"best_chance",   NULL,         LW_AS_CHANCE, LW_UNIT_PERCENT, 0, NULL},
    {"can_be_sailed", NULL,         LW_AS_TRUTH,  LW_UNIT_NONE,    0, NULL},
    {"swims",         "swims",      LW_AS_NUMBER, LW_UNIT_NONE,    1, NULL},
    {"swims_error",   "",           LW_AS_ERROR,  LW_UNIT_NONE,    1, NULL},
    {"flying",        "flying",     LW_AS_NUMBER, LW_UNIT_PERCENT, 0, NULL},
};
// clang-format on

// "0.93 nmi", "over 99.00 nmi", "never".
static void tell_even(const lw_change *change, bool is_in, lw_teller *t)
{
    const double miles = change->even_left / LW_NMI;
    char text[LW_CELL_LENGTH] = "";
    if (!is_in) LW_FIT(text, "never");
    if (!is_in && change->is_ever)
        LW_FIT(text, "%s%.*f nmi", miles > 99.0 ? "over " : "", miles < 9.95 ? 2 : 0,
               fmin(miles, 99.0));
    const bool is_told = !is_in && change->is_ever;
    lw_tell_number_as(t, NULL, is_told ? change->even_left : NAN, text);
    lw_tell_number(t, NULL, is_told ? change->even_seconds : NAN);
}

static void tell_row(const lw_held *held, size_t pin, lw_teller *t)
{
    const lw_change *change = &held->hold.changes[pin];
    const bool is_in = pin == held->hold.pin;
    double error;
    const double swims = lw_hold_swims(&held->hold, pin, &error);
    lw_tell_row(t);
    lw_tell_text(t, NULL, lw_picked_label(&held->picked, pin));
    lw_tell_truth(t, NULL, is_in);
    lw_tell_number(t, NULL, is_in ? change->held : change->changed);
    lw_tell_number(t, NULL, is_in ? NAN : change->saved);
    lw_tell_number(t, NULL, is_in ? NAN : lw_hold_unsure(change->error, change->spread));
    lw_tell_number(t, NULL, is_in ? NAN : change->error);
    lw_tell_number(t, NULL, is_in ? NAN : change->spread);
    lw_tell_number(t, NULL, is_in ? NAN : change->chance);
    tell_even(change, is_in, t);
    lw_tell_number(t, NULL, is_in ? NAN : change->best_at);
    lw_tell_number(t, NULL, is_in ? NAN : change->best_saved);
    lw_tell_number(t, NULL, is_in ? NAN : change->best_error);
    lw_tell_number(t, NULL, is_in ? NAN : change->best_spread);
    lw_tell_number(t, NULL, is_in ? NAN : change->best_chance);
    lw_tell_truth(t, NULL, !held->hold.paces[pin].is_stuck);
    lw_tell_number(t, NULL, swims);
    lw_tell_number(t, NULL, error);
    lw_tell_number(t, NULL, lw_hold_flying(&held->hold, pin));
}

static void tell_pins(const lw_held *held, lw_teller *t)
{
    lw_tell_table(t, "pins", "", columns, LW_COUNT_OF(columns));
    for (size_t pin = 0; pin < held->outlook.pin_count; pin++) tell_row(held, pin, t);
    lw_tell_end(t);
}

// What is wound, here and at the finish, whichever pin it is.
static void tell_turns(const lw_held *held, lw_teller *t)
{
    static const lw_item turns[] = {
        {"pin", "pin", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
        {"now", "now", LW_AS_CHANGE, LW_UNIT_TURN, 1, ""},
        {"finish", "at the finish", LW_AS_CHANGE, LW_UNIT_TURN, 1, ""},
        {"holds_most", "holds most there", LW_AS_CHANGE, LW_UNIT_TURN, 1, "not held"},
    };
    char head[LW_TURNS_HEAD];
    const size_t on = lw_outlook_longest(&held->outlook);
    lw_picked_turns_head(&held->picked, head);
    lw_tell_table(t, "turns", head, turns, LW_COUNT_OF(turns));
    for (size_t pin = 0; pin < held->outlook.pin_count; pin++) {
        const lw_range *range = &held->outlook.ranges[pin][on];
        if (!range->has_flight) continue;
        lw_tell_row(t);
        lw_tell_text(t, NULL, lw_picked_label(&held->picked, pin));
        lw_tell_number(t, NULL, lw_range_turns(range, held->hold.now));
        lw_tell_number(t, NULL, lw_range_turns(range, held->hold.later));
        lw_tell_number(t, NULL, held->most_turns[pin]);
    }
    lw_tell_end(t);
    lw_tell_note(t, "turns_note", LW_TURNS_WAY);
}

// Swims an hour of a pin on the way.
static void tell_hourly(const lw_held *held, size_t pin, lw_teller *t)
{
    char text[200];
    double error;
    const double swims = lw_hold_swims_an_hour(&held->hold, pin, &error);
    LW_FIT(text, "%s: %.1f swims an hour, give or take %.1f, flying %.0f %% of the time.",
           lw_picked_label(&held->picked, pin), swims, error,
           100.0 * lw_hold_flying(&held->hold, pin));
    lw_tell_text(t, NULL, text);
}

// What ends the hold of the pin in the boat, and swims by the hour.
static void tell_why(const lw_held *held, lw_teller *t)
{
    char text[800], end[LW_REASON_LENGTH];
    const lw_picked *picked = &held->picked;
    const lw_unit unit = t->speed_unit;
    const double puff = lw_hold_puff(&held->hold, picked->now.gusts.puff);
    const double most = lw_picked_place_of(&picked->now, held->hold.pin)->prospect.held_up_to;
    lw_picked_end(picked, held->hold.pin, end);
    if (most > 0.0)
        LW_FIT(text, "%s is held up to %s of puff, then: %s; puffs at the finish are %s.",
               lw_picked_label(picked, held->hold.pin), LW_SPEED_TEXT(most, 1, unit), end,
               LW_SPEED_TEXT(puff, 1, unit));
    else
        LW_FIT(text, "%s is held in no wind: %s; puffs at the finish are %s.",
               lw_picked_label(picked, held->hold.pin), end, LW_SPEED_TEXT(puff, 1, unit));
    lw_tell_list(t, "why", "Why");
    lw_tell_text(t, NULL, text);
    tell_hourly(held, held->hold.pin, t);
    if (held->hold.has_best) tell_hourly(held, held->hold.best, t);
    lw_tell_end(t);
}

static void tell_trust(const lw_held *held, lw_teller *t)
{
    char text[200];
    lw_tell_list(t, "trust", "How far to trust it");
    if (lw_hold_is_beyond_rides(&held->hold)) {
        LW_FIT(text, "Rides reach from %s to %s of mean wind; beyond, the nearer stands.",
               LW_SPEED_TEXT(LW_RIDE_LEAST * held->hold.now, 1, t->speed_unit),
               LW_SPEED_TEXT(LW_RIDE_MOST * held->hold.now, 1, t->speed_unit));
        lw_tell_text(t, NULL, text);
    }
    lw_tell_text(t, NULL,
                 "Saves: by stopping here, the stop counted. Break-even: stop with more left, hold "
                 "with less.");
    lw_tell_text(t, NULL,
                 "Times and swims are expected, and ± and chance stand, over the gusts of the "
                 "rides, your measurements within their errors, and what is judged of the sailor "
                 "and the wand, drawn 32 times, the same for every pin. They know nothing of what "
                 "the model leaves out.");
    lw_tell_text(t, NULL, "Time yourself changing a pin, and say it with --stop.");
    lw_tell_end(t);
}

// Puffs at the finish above what any pin is held in.
static void tell_unheld(const lw_held *held, lw_teller *t)
{
    char text[LW_CAUTION_LENGTH];
    const lw_choice *now = &held->picked.now;
    const double puff = lw_hold_puff(&held->hold, now->gusts.puff);
    double most = 0.0;
    for (size_t i = 0; i < now->count; i++) most = fmax(most, now->places[i].prospect.held_up_to);
    if (puff <= most) return;
    if (most <= 0.0)
        LW_FIT(text,
               "No pin is held in any wind on every leg: be ready to come off the foils, or "
               "to go in.");
    else
        LW_FIT(text,
               "Puffs of %s come before the finish, and no pin is held in more than %s: be ready "
               "to come off the foils, or to go in.",
               LW_SPEED_TEXT(puff, 1, t->speed_unit), LW_SPEED_TEXT(most, 1, t->speed_unit));
    lw_tell_text(t, NULL, text);
}

static void tell_cautions(const lw_held *held, lw_teller *t)
{
    lw_care care = lw_care_of(&held->picked);
    care.mean = fmax(care.mean, held->hold.later);
    care.puff = fmax(care.puff, lw_hold_puff(&held->hold, care.puff));
    lw_tell_list(t, "cautions", LW_CAUTIONS_HEAD);
    tell_unheld(held, t);
    lw_tell_text(t, NULL,
                 "Faster is not safer. When the wind is more than you can handle, come off the "
                 "foils or go in, whatever the race.");
    lw_tell_text(t, NULL,
                 "Stop clear of other boats and of the shore: she drifts while you change the "
                 "pin.");
    lw_tell_caution_lines(t, &care);
    lw_tell_end(t);
}

void lw_held_tell(const void *it, lw_teller *t)
{
    const lw_held *held = it;
    tell_head(held, t);
    tell_answer(held, t);
    if (lw_hold_flies(&held->hold)) {
        tell_pins(held, t);
        tell_turns(held, t);
        tell_why(held, t);
        tell_trust(held, t);
    }
    tell_cautions(held, t);
}
