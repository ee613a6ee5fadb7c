// front.c - the first page of a card: what is carried.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/card/card.h"
#include "picture/card_picture.h"
#include "records/fault.h"

// How well lines can be spared where there is no room; the second sailor's one better.
enum {
    SPARE_UNDER = 1,
    SPARE_LIMITS = 3,
    SPARE_LADDER = 5,
    SPARE_STOP = 7,
    SPARE_PINS = 9,                               // those on the ladder
    SPARE_SIGNS = SPARE_PINS + 4 * LW_PINS_MOST,  // but the first of them
    SPARE_OTHERS = SPARE_SIGNS + LW_CARD_SIGNS,   // other pins
};
#define SIGNS_KEPT 4

static const lw_card_line plain = {.scale = 1.0};
static const lw_card_line bold = {.scale = 1.0, .is_bold = true};

static lw_card_line spared(lw_card_line line, const lw_carded *card, const lw_card_side *side,
                           int spare)
{
    line.spare = spare + (side != card->sides);
    return line;
}

static lw_card_line ruled(lw_card_line line)
{
    line.is_ruled = true;
    return line;
}

static const char *label_of(const lw_card_side *side, size_t pin)
{
    return side->picked.inputs.boat.pins[pin].label;
}

// --- in large letters: pin and turns

static void add_head(const lw_carded *card, const lw_card_side *side, lw_card_sheet *sheet)
{
    lw_card_words text;
    const bool is_alone = card->side_count == 1, is_first = side == card->sides;
    lw_card_who(side, text);
    const lw_card_line who = {
        .scale = 1.0, .is_bold = true, .is_single = true, .is_ruled = !is_first};
    lw_card_add(sheet, who, "%s%s%s", is_first ? side->picked.inputs.boat.name : "",
                is_first ? ": " : "", text);
    lw_card_headline(card, side, text);
    const lw_card_line headline = {
        .scale = is_alone ? 3.5 : 2.5, .is_bold = true, .is_single = true};
    if (text[0]) lw_card_add(sheet, headline, "%s", text);
    lw_card_under(card, side, text);
    if (text[0]) lw_card_add(sheet, spared(plain, card, side, SPARE_UNDER), "%s", text);
}

typedef char row_text[4 * LW_CELL_LENGTH];

// "\t+1.2\t+0.8\t-": turns on each course.
static void add_turns(const lw_carded *card, const lw_card_side *side, lw_card_cell cell,
                      row_text text)
{
    char turns[LW_CELL_LENGTH];
    for (cell.course = 0; cell.course < LW_COURSE_COUNT; cell.course++) {
        lw_card_turns(card, side, cell, turns);
        lw_text_add(text, sizeof(row_text), "\t%s", turns);
    }
}

// The pin of the day, or the one for a wind of a season; false: none flies.
static bool pin_in(const lw_carded *card, const lw_card_side *side, size_t wind, size_t *pin)
{
    const lw_card_rung *rung = lw_card_rung_in(side, card->winds[wind]);
    const lw_placing *first = &side->picked.now.places[0];
    *pin = card->is_season ? rung->pin : first->pin;
    return card->is_season ? rung->flies : first->flies;
}

static void add_large_row(const lw_carded *card, const lw_card_side *side, lw_card_line how,
                          size_t wind, lw_card_sheet *sheet)
{
    char name[LW_CELL_LENGTH];
    row_text row = "";
    size_t pin;
    const bool flies = pin_in(card, side, wind, &pin);
    const bool is_held = !card->is_season || lw_card_rung_in(side, card->winds[wind])->is_held;
    lw_card_wind_name(card, wind, name);
    LW_FIT(row, "%s", name);
    if (card->is_season && flies)
        lw_text_add(row, sizeof row, is_held ? "\t%s" : "\t(%s)", label_of(side, pin));
    if (flies)
        add_turns(card, side, (lw_card_cell){.pin = pin, .wind = wind}, row);
    else
        lw_text_add(row, sizeof row, "%s\t-\t-\t-", card->is_season ? "\t-" : "");
    lw_card_add(sheet, how, "%s", row);
}

// Those that hold most in the mean.
static void add_large_most(const lw_carded *card, const lw_card_side *side, lw_card_line how,
                           lw_card_sheet *sheet)
{
    row_text row = "most";
    const size_t pin = side->picked.now.places[0].pin;
    add_turns(card, side, (lw_card_cell){.pin = pin, .wind = 1, .is_most = true}, row);
    lw_card_add(sheet, how, "%s", row);
}

static void add_large(const lw_carded *card, const lw_card_side *side, int table,
                      lw_card_sheet *sheet)
{
    const char *unit = lw_unit_sign(lw_speed_unit(card->speed_unit));
    lw_card_line how = {.table = table, .left = card->is_season ? 2 : 1, .scale = 1.0};
    size_t pin;
    if (!lw_card_flies(side) || (!card->is_season && !pin_in(card, side, 0, &pin))) return;
    lw_card_add(sheet, how, "%s, %s%s\tupwind\treach\tdownwind", card->is_season ? "mean" : "wind",
                unit, card->is_season ? "\tpin" : "");
    how.scale = card->side_count == 1 ? 1.75 : 1.5;
    how.is_bold = true;
    for (size_t i = 0; i < card->wind_count; i++) add_large_row(card, side, how, i, sheet);
    if (!card->is_season) add_large_most(card, side, how, sheet);
}

// --- every pin

static bool is_on_ladder(const lw_card_side *side, size_t pin)
{
    for (size_t i = 0; i < side->rung_count; i++) {
        if (side->rungs[i].flies && side->rungs[i].pin == pin) return true;
    }
    return false;
}

// The pin of the day; of a season that of the least wind.
static size_t first_pin(const lw_carded *card, const lw_card_side *side)
{
    return card->is_season ? side->rungs[0].pin : side->picked.now.places[0].pin;
}

// Its turns stand in large letters.
static bool is_large(const lw_carded *card, const lw_card_side *side, size_t pin)
{
    const lw_choice *now = &side->picked.now;
    return !card->is_season && pin == now->places[0].pin && now->places[0].flies;
}

// How well a pin can be spared: those on the ladder worst, the others the better the further they
// are from the first. Every pin of every sailor has a number of its own.
static int spare_of(const lw_carded *card, const lw_card_side *side, size_t pin)
{
    const size_t first = first_pin(card, side);
    const int apart = pin > first ? 2 * (int)(pin - first) : 2 * (int)(first - pin) + 1;
    return (is_on_ladder(side, pin) ? SPARE_PINS : SPARE_OTHERS) + 2 * apart;
}

// Whether turns of a pin are told in a wind: of a season only where she is held.
static bool has_row(const lw_carded *card, const lw_card_side *side, size_t pin, size_t wind)
{
    const bool is_held = card->winds[wind] <= side->limits[pin].held_up_to;
    return lw_card_is_flown(card, side, pin, wind) && (!card->is_season || is_held);
}

static void add_pin_row(const lw_carded *card, const lw_card_side *side, lw_card_cell cell,
                        lw_card_line how, lw_card_sheet *sheet)
{
    char text[LW_CELL_LENGTH];
    row_text row = "";
    lw_card_wind_name(card, cell.wind, text);
    LW_FIT(row, "%s", text);
    for (int i = 0; i < 2 * LW_COURSE_COUNT; i++) {
        cell.course = (size_t)i / 2, cell.is_most = i % 2;
        lw_card_turns(card, side, cell, text);
        lw_text_add(row, sizeof row, "\t%s", text);
    }
    lw_card_add(sheet, how, "%s", row);
}

static void add_pin(const lw_carded *card, const lw_card_side *side, size_t pin, int table,
                    lw_card_sheet *sheet)
{
    lw_card_words limits;
    const int spare = spare_of(card, side, pin);
    lw_card_line row = {.table = table, .left = 1, .scale = 1.0};
    row = spared(row, card, side, spare);
    lw_card_limits_text(card, &side->limits[pin], limits);
    lw_card_add(sheet, spared(ruled(bold), card, side, spare), "%s: %s", label_of(side, pin),
                limits);
    for (size_t wind = 0; wind < card->wind_count; wind++) {
        if (has_row(card, side, pin, wind))
            add_pin_row(card, side, (lw_card_cell){.pin = pin, .wind = wind}, row, sheet);
    }
}

static void add_pins(const lw_carded *card, const lw_card_side *side, int table,
                     lw_card_sheet *sheet)
{
    const lw_card_line head = {
        .table = table, .left = 1, .scale = 1.0, .is_ruled = true, .is_head = true};
    lw_card_add(sheet, head, " \tupwind\tmost\treach\tmost\tdownwind\tmost");
    for (size_t pin = 0; pin < side->outlook.pin_count; pin++) {
        if (!is_large(card, side, pin)) add_pin(card, side, pin, table, sheet);
    }
}

// --- the page

// The winds of the day's pin, and which is to be taken in others.
static void add_ladder(const lw_carded *card, const lw_card_side *side, lw_card_sheet *sheet)
{
    lw_card_words text;
    lw_card_ladder(card, side, text);
    lw_card_add(sheet, spared(bold, card, side, SPARE_LADDER), "%s", text);
    if (!lw_card_flies(side)) return;
    lw_card_stop(card, side, text);
    lw_card_add(sheet, spared(plain, card, side, SPARE_STOP), "%s", text);
}

static void add_side(const lw_carded *card, size_t i, lw_card_sheet *sheet)
{
    lw_card_words text;
    const lw_card_side *side = &card->sides[i];
    const size_t first = first_pin(card, side);
    const int large = 1 + 2 * (int)i;
    add_head(card, side, sheet);
    if (is_large(card, side, first)) {
        lw_card_limits_text(card, &side->limits[first], text);
        lw_card_add(sheet, spared(bold, card, side, SPARE_LIMITS), "%s: %s", label_of(side, first),
                    text);
    }
    add_large(card, side, large, sheet);
    if (!card->is_season) add_ladder(card, side, sheet);
    add_pins(card, side, large + 1, sheet);
}

static void add_signs(const lw_carded *card, lw_card_sheet *sheet)
{
    lw_card_words head;
    if (card->sign_count == 0) return;
    lw_card_signs_head(card, head);
    lw_card_add(sheet, ruled(bold), "%s", head);
    for (size_t i = 0; i < card->sign_count; i++) {
        const lw_card_sign *it = &card->signs[i];
        lw_card_line line = plain;
        line.spare = i < SIGNS_KEPT ? 0 : SPARE_SIGNS + (int)i;
        lw_card_add(sheet, line, "%s: %s", lw_sign_text(it->sign), it->change);
    }
}

void lw_carded_front(const lw_carded *card, lw_card_sheet *sheet)
{
    lw_card_words text;
    *sheet = (lw_card_sheet){.paper = card->paper};
    LW_FIT(sheet->title, "%s: what is carried", card->sides[0].picked.inputs.boat.name);
    for (size_t i = 0; i < card->side_count; i++) add_side(card, i, sheet);
    lw_card_add(sheet, ruled(plain), "%s", LW_CARD_TURNS_NOTE);
    lw_card_grip(card, text);
    lw_card_add(sheet, bold, "%s", text);
    add_signs(card, sheet);
    lw_card_add(sheet, ruled(bold), LW_CARD_CARE);
    lw_card_add(sheet, (lw_card_line){.scale = 1.0, .tells_of_spare = true}, LW_CARD_SPARED);
}

void lw_carded_draw(const void *it, FILE *out)
{
    lw_card_sheet sheet;
    lw_carded_front(it, &sheet);
    lw_card_sheet_draw(out, &sheet);
}
