// tell.c - the answer of `lullwise modes` told.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/modes/modes.h"
#include "answer/words/flight_text.h"
#include "answer/words/flown.h"
#include "answer/words/modes_text.h"
#include "answer/words/number_text.h"
#include "records/fault.h"

static void tell_question(const lw_disturbed *d, lw_teller *t)
{
    char text[LW_FLOWN_LENGTH];
    const lw_flown *flown = &d->flown;
    const lw_inputs *inputs = flown->inputs;
    const lw_pin *pin = &inputs->boat.pins[flown->pin];
    LW_FIT(text, "%s, %s. Pin %s (%s), wind %s.", inputs->boat.name, inputs->sailor.name,
           pin->label, LW_ANGLE_TEXT(pin->incidence, 1),
           LW_SPEED_TEXT(flown->wind, 1, t->speed_unit));
    lw_tell_sentence(t, "question", text);
    lw_tell_flown(t, flown);
}

static void tell_answer(const lw_disturbed *d, lw_teller *t)
{
    char text[LW_MODES_LENGTH], outcome[LW_FLOWN_LENGTH];
    lw_flown_outcome(&d->flown, t->speed_unit, outcome);
    lw_tell_object(t, "answer", "Is she steady");
    lw_tell_sentence(t, "sentence", outcome);
    if (lw_disturbed_is_answered(d)) {
        lw_modes_verdict(&d->sailed, &d->alone, text);
        lw_tell_sentence(t, "verdict", text);
    }
    lw_tell_end(t);
}

// --- the motions

// A time in seconds, whole ones from a hundred on; "long" where nobody waits for it.
static void tell_time(lw_teller *t, const char *before, double shown, double seconds)
{
    char text[LW_CELL_LENGTH] = "-";
    if (shown < LW_SWING_LONG)
        LW_FIT(text, "%s%.*f s", before, shown < 99.95 ? 1 : 0, shown);
    else if (isfinite(shown))
        LW_FIT(text, "%slong", before);
    lw_tell_number_as(t, NULL, seconds, text);
}

static void tell_damping(lw_teller *t, const lw_swing *swing)
{
    char text[LW_CELL_LENGTH] = "-";
    if (isfinite(swing->period)) lw_cell_number(text, swing->damping, 2, false);
    lw_tell_number_as(t, NULL, swing->damping, text);
}

// Columns: what is shown, then what else is known, of the table of swings, and the shares.
#define AS_SHARE(name, key, text) {"share_of_" key, NULL, LW_AS_NUMBER, LW_UNIT_NONE, 2, NULL},
static const lw_item shares[] = {LW_PART_LIST(AS_SHARE)};
static const char *const others[] = {"growth", "natural", "doubles", "speed", "height",
                                     "pitch",  "heel",    "course",  "wand",  "helm"};
#define OTHERS  (sizeof others / sizeof others[0])
#define NAMED   5
#define COLUMNS (NAMED + 2 + OTHERS + LW_PARTS)

static const lw_quantity *row_of(const char *key) { return lw_table_find(&lw_swing_table, key); }

static void fill_columns(lw_item columns[COLUMNS])
{
    size_t at = 0;
    columns[at++] = (lw_item){.key = "name", .head = "mostly", .form = LW_AS_TEXT};
    columns[at++] = lw_item_of(row_of("period"), "swing");
    columns[at++] = lw_item_of(row_of("halves"), "half gone");
    columns[at++] = lw_item_of(row_of("damping"), "damping");
    columns[at++] = (lw_item){.key = "together", .head = "together", .form = LW_AS_TEXT};
    columns[at++] = (lw_item){.key = "mostly", .form = LW_AS_TEXT};
    columns[at++] = (lw_item){.key = "then", .form = LW_AS_TEXT};
    for (size_t i = 0; i < OTHERS; i++) columns[at++] = lw_item_of(row_of(others[i]), NULL);
    for (size_t i = 0; i < LW_PARTS; i++) columns[at++] = shares[i];
}

static void tell_mode(lw_teller *t, const lw_mode *mode)
{
    char name[LW_CELL_LENGTH], together[LW_MODES_LENGTH];
    const lw_swing *swing = &mode->swing;
    const bool grows = swing->growth > 0.0;
    lw_mode_name(mode, name);
    lw_mode_shape(mode, together);
    lw_tell_row(t);
    lw_tell_text(t, NULL, name);
    tell_time(t, "", swing->period, swing->period);
    tell_time(t, grows ? "x2 " : "", grows ? swing->doubles : swing->halves, swing->halves);
    tell_damping(t, swing);
    lw_tell_text(t, NULL, together);
    lw_tell_text(t, NULL, lw_part_key(mode->first));
    lw_tell_text(t, NULL, lw_part_key(mode->second));
    for (size_t i = 0; i < OTHERS; i++)
        lw_tell_number(t, NULL, lw_quantity_value(row_of(others[i]), swing));
    for (size_t i = 0; i < LW_PARTS; i++) lw_tell_number(t, NULL, mode->share[i]);
}

// Those that are seen, or those that are not; returns how many.
static size_t tell_table(lw_teller *t, const lw_modes *modes, bool is_seen)
{
    size_t count = 0;
    lw_item columns[COLUMNS];
    fill_columns(columns);
    lw_tell_table(t, is_seen ? "modes" : "unseen", is_seen ? "" : NULL, columns, COLUMNS);
    for (size_t i = 0; i < modes->count; i++) {
        if (lw_mode_is_seen(&modes->mode[i]) != is_seen) continue;
        tell_mode(t, &modes->mode[i]);
        count++;
    }
    lw_tell_end(t);
    return count;
}

static void tell_modes(lw_teller *t, const char *key, const char *head, const lw_modes *modes)
{
    char text[80];
    lw_tell_object(t, key, head);
    lw_tell_flag(t, "is_steady", modes->is_steady);
    tell_table(t, modes, true);
    const size_t unseen = tell_table(t, modes, false);
    LW_FIT(text, "and %zu that %s over before %s seen", unseen, unseen == 1 ? "is" : "are",
           unseen == 1 ? "it is" : "they are");
    if (unseen) lw_tell_note(t, "more", text);
    lw_tell_end(t);
}

// --- the wand's loop

static void tell_wand(const lw_disturbed *d, lw_teller *t)
{
    char head[80], text[LW_MODES_LENGTH];
    LW_FIT(head, "Ride height by wand and flap, gearing %.2f", d->gearing);
    lw_tell_object(t, "wand", head);
    lw_wand_more(&d->margin, text);
    lw_tell_text(t, &(lw_item){.key = "more_gearing", .head = "more gearing"}, text);
    lw_wand_less(&d->margin, text);
    lw_tell_text(t, &(lw_item){.key = "less_gearing", .head = "less gearing"}, text);
    lw_wand_late(&d->margin, text);
    lw_tell_text(t, &(lw_item){.key = "later_wand", .head = "a later wand"}, text);
    lw_tell_number(t, &(lw_item){.key = "gearing_now", .digits = 2}, d->gearing);
    lw_tell_rows(t, "swings_by_itself", &lw_wand_margin_table, &d->margin);
    lw_tell_end(t);
}

void lw_disturbed_tell(const void *it, lw_teller *t)
{
    const lw_disturbed *d = it;
    tell_question(d, t);
    tell_answer(d, t);
    lw_tell_flight(t, &d->flown.answer.flight, false);
    if (!lw_disturbed_is_answered(d)) return;
    tell_modes(t, "as_sailed", "As sailed: body, sheet and helm answer what the sailor sees",
               &d->sailed);
    tell_modes(t, "left_alone", "Left alone: body, sheet and helm stay where they are", &d->alone);
    if (d->flown.answer.outcome == LW_FLIES) tell_wand(d, t);
    lw_tell_list(t, "trust", "How far to trust it");
    for (int i = 0; i < LW_MODES_TRUST; i++) lw_tell_text(t, NULL, lw_modes_trust[i]);
    lw_tell_end(t);
}
