// tell.c - two rankings side by side.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "answer/compare/compare.h"
#include "answer/words/caution.h"
#include "answer/words/number_text.h"
#include "records/fault.h"

// clang-format off
static const lw_item columns[] = {
    {"name",       "",           LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"key",        NULL,         LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"as_is",      "as it is",   LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL},
    {"changed",    "changed",    LW_AS_NUMBER, LW_UNIT_NONE, 0, NULL},
    {"difference", "difference", LW_AS_NUMBER, LW_UNIT_NONE, 0, ""},
    {"unit",       NULL,         LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
};

// What is set side by side, and its names.
static const lw_item members[] = {
    {"seconds",     "time round the course",  LW_AS_TIME,   LW_UNIT_S,       0, "cannot be sailed"},
    {"flying",      "share of time flying",   LW_AS_NUMBER, LW_UNIT_PERCENT, 0, NULL},
    {"swims",       "swims round the course", LW_AS_NUMBER, LW_UNIT_NONE,    2, NULL},
    {"launches_at", "takes off at",           LW_AS_NUMBER, LW_UNIT_KN,      1, "none"},
    {"stays_up_at", "stays up from",          LW_AS_NUMBER, LW_UNIT_KN,      1, "none"},
    {"held_up_to",  "held to",                LW_AS_NUMBER, LW_UNIT_KN,      1, "none"},
    {"speed",       "made good under way",    LW_AS_NUMBER, LW_UNIT_KN,      1, "none"},
    {"turns_lull",  "turns in the lull",      LW_AS_SIGNED, LW_UNIT_TURN,    1, "does not fly"},
    {"turns_mean",  "turns in the mean",      LW_AS_SIGNED, LW_UNIT_TURN,    1, "does not fly"},
    {"turns_puff",  "turns in the puff",      LW_AS_SIGNED, LW_UNIT_TURN,    1, "does not fly"},
};
// clang-format on
#define SECONDS    (&members[0])
#define HELD_UP_TO (&members[5])

// Turns are for winds in which she flies.
static bool is_there(const lw_item *item, const lw_placing *place)
{
    if (strcmp(item->key, "turns_lull") == 0) return place->flies_in_lull;
    if (strcmp(item->key, "turns_mean") == 0) return place->flies_in_mean;
    if (strcmp(item->key, "turns_puff") == 0) return place->flies_in_puff;
    return true;
}

// In the item's unit; NAN where there is none.
static double value_of(const lw_item *item, const lw_placing *place)
{
    const lw_quantity *row = lw_table_find(&lw_prospect_table, item->key);
    const double value = lw_quantity_value(row, &place->prospect);
    if (!is_there(item, place)) return NAN;
    const bool may_lack = lw_prospect_may_lack((size_t)(row - lw_prospect_table.rows));
    return may_lack && value <= 0.0 ? NAN : value / lw_unit_in_si(item->unit);
}

static void tell_value(lw_teller *t, const lw_item *item, double value)
{
    char text[LW_SHOWN_LENGTH];
    lw_item_show(item, value, text);
    lw_tell_number_as(t, NULL, value, text);
}

// "+1.2 kn", or "=" when it is nothing as far as it is shown: of the two as they stand there.
static void tell_difference(lw_teller *t, const lw_item *item, double from, double to)
{
    char text[LW_SHOWN_LENGTH];
    lw_item more = *item;
    const double last = lw_ten_to(item->digits);
    const double value = (round(to * last) - round(from * last)) / last;
    more.form = LW_AS_SIGNED, more.none = "";
    lw_item_show(&more, value, text);
    lw_tell_number_as(t, NULL, value, value == 0.0 ? "=" : text);
}

static void tell_row(lw_teller *t, const char *name, lw_item item, const lw_placing *a,
                     const lw_placing *b)
{
    if (item.unit == LW_UNIT_KN && t->speed_unit) item.unit = t->speed_unit;
    const double from = value_of(&item, a), to = value_of(&item, b);
    lw_tell_row(t);
    lw_tell_text(t, NULL, name);
    lw_tell_text(t, NULL, item.key);
    tell_value(t, &item, from);
    tell_value(t, &item, to);
    tell_difference(t, &item, from, to);
    lw_tell_text(t, NULL, lw_unit_sign(item.unit));
}

static void tell_pair(lw_teller *t, lw_side a, lw_side b)
{
    char head[2 * LW_LABEL_LENGTH + 40];
    const char *was = lw_picked_label(a.picked, a.place->pin);
    const char *is = lw_picked_label(b.picked, b.place->pin);
    LW_FIT(head, "Pin %s as it is, pin %s changed", was, is);
    lw_tell_name(t, "pin_as_is", was);
    lw_tell_name(t, "pin_changed", is);
    lw_tell_table(t, "members", head, columns, LW_COUNT_OF(columns));
    for (size_t i = 0; i < LW_COUNT_OF(members); i++) {
        tell_row(t, members[i].head, members[i], a.place, b.place);
    }
    lw_tell_end(t);
}

// Every pin that both boats have.
static void tell_pins(lw_teller *t, const lw_picked *a, const lw_picked *b)
{
    lw_tell_table(t, "pins", "Every pin: time round the course, and held to", columns,
                  LW_COUNT_OF(columns));
    for (size_t pin = 0; pin < a->now.count; pin++) {
        const int same = lw_boat_pin(&b->inputs.boat, lw_picked_label(a, pin));
        if (same < 0) continue;
        const lw_placing *p = lw_picked_place_of(&a->now, pin);
        const lw_placing *q = lw_picked_place_of(&b->now, (size_t)same);
        tell_row(t, lw_picked_label(a, pin), *SECONDS, p, q);
        tell_row(t, "", *HELD_UP_TO, p, q);
    }
    lw_tell_end(t);
}

static void tell_orders(lw_teller *t, const lw_picked *a, const lw_picked *b)
{
    static const lw_item rows[] = {{"which", "", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
                                   {"order", "", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL}};
    const lw_picked *const both[] = {a, b};
    lw_tell_table(t, "orders", "The order", rows, LW_COUNT_OF(rows));
    for (int i = 0; i < 2; i++) {
        char order[LW_REASON_LENGTH];
        lw_picked_order(both[i], &both[i]->now, order);
        lw_tell_row(t);
        lw_tell_text(t, NULL, columns[2 + i].head);
        lw_tell_text(t, NULL, order);
    }
    lw_tell_end(t);
}

static void tell_differences(lw_teller *t, lw_side as_is, lw_side changed)
{
    char lines[LW_COMPARED_MOST][LW_REASON_LENGTH];
    const size_t count = lw_compared(as_is, changed, lines);
    lw_tell_list(t, "differences", "What the change does");
    for (size_t i = 0; i < count; i++) lw_tell_text(t, NULL, lines[i]);
    lw_tell_end(t);
}

static void tell_cautions(lw_teller *t, const lw_picked *as_is, const lw_picked *changed)
{
    const lw_care one = lw_care_of(as_is), other = lw_care_of(changed);
    lw_tell_cautions_of_two(t, &one, &other);
}

void lw_tell_compared(lw_teller *t, lw_side as_is, lw_side changed)
{
    tell_pair(t, as_is, changed);
    tell_pins(t, as_is.picked, changed.picked);
    tell_orders(t, as_is.picked, changed.picked);
    tell_differences(t, as_is, changed);
    tell_cautions(t, as_is.picked, changed.picked);
}
