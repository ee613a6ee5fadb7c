// words.c - a card in words: who, which pin, its winds and turns.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/card/card.h"
#include "answer/words/verdict.h"
#include "lullwise/choice_find.h"
#include "records/fault.h"

#define SPEED(x)    LW_SPEED_TEXT((x), 1, card->speed_unit)
#define FIT(...)    lw_text_fit(text, LW_CARD_WORDS, __VA_ARGS__)
#define ADD_ON(...) lw_text_add(text, LW_CARD_WORDS, __VA_ARGS__)

static const char *label_of(const lw_card_side *side, size_t pin)
{
    return side->picked.inputs.boat.pins[pin].label;
}

void lw_card_who(const lw_card_side *side, lw_card_words text)
{
    const lw_sailor *sailor = &side->picked.inputs.sailor;
    FIT("%s, %.0f kg", sailor->name, sailor->person.mass + sailor->person.gear);
}

// --- which pin

void lw_card_headline(const lw_carded *card, const lw_card_side *side, lw_card_words text)
{
    char headline[LW_REASON_LENGTH];
    text[0] = '\0';
    if (!card->is_season) {
        lw_verdict_headline(&side->picked, headline);
        FIT("%s", headline);
    } else if (!lw_card_flies(side)) {
        FIT("No pin flies in these winds");
    }
}

// What is to be said of the first place beside its name.
static void say_first(const lw_picked *picked, lw_card_words text)
{
    char words[LW_REASON_LENGTH];
    const lw_placing *first = &picked->now.places[0];
    const char *label = lw_picked_label(picked, first->pin);
    lw_verdict_unheld(picked, words);
    if (words[0]) ADD_ON("%s.", words);
    if (lw_verdict_of(picked) == LW_VERDICT_UNHELD && lw_picked_flies(&picked->now))
        ADD_ON(" Sailed all the same, pin %s comes first.", label);
    if (!first->flies && lw_picked_flies(&picked->now))
        ADD_ON("%sSailed on the hull: she does better so.", text[0] ? " " : "");
}

void lw_card_under(const lw_carded *card, const lw_card_side *side, lw_card_words text)
{
    char would[LW_REASON_LENGTH];
    text[0] = '\0';
    if (card->is_season) return;
    lw_verdict_would(&side->picked, would);
    FIT("%s", would);
    say_first(&side->picked, text);
}

void lw_card_limits_text(const lw_carded *card, const lw_card_limits *limits, lw_card_words text)
{
    FIT("does not take off");
    if (limits->launches_at > 0.0) FIT("takes off %s", SPEED(limits->launches_at));
    if (limits->stays_up_at > 0.0)
        ADD_ON(", stays up %s", SPEED(limits->stays_up_at));
    else
        ADD_ON(", does not stay up on every course");
    if (limits->held_up_to > 0.0)
        ADD_ON(", held to %s", SPEED(limits->held_up_to));
    else
        ADD_ON(", held in no wind");
}

// A pin that stands on two rungs, held in the puffs and not, is named once.
void lw_card_ladder(const lw_carded *card, const lw_card_side *side, lw_card_words text)
{
    const lw_card_rung *last = NULL;
    FIT("From a lull of");
    for (size_t i = 0; i < side->rung_count; i++) {
        const lw_card_rung *rung = &side->rungs[i];
        if (last && last->flies && rung->flies && last->pin == rung->pin) continue;
        ADD_ON("%s %s: %s", last ? "," : "", SPEED(rung->gusts.lull),
               rung->flies ? label_of(side, rung->pin) : "none flies");
        last = rung;
    }
    ADD_ON(".");
}

// --- when to change it

// The next pin with less lift that holds more than another; the other itself: there is none.
static size_t next_pin(const lw_card_side *side, size_t pin)
{
    const double held = side->limits[pin].held_up_to;
    for (size_t next = pin + 1; next < side->outlook.pin_count; next++) {
        if (side->limits[next].held_up_to > held) return next;
    }
    return pin;
}

void lw_card_stop(const lw_carded *card, const lw_card_side *side, lw_card_words text)
{
    const size_t pin = side->picked.now.places[0].pin, next = next_pin(side, pin);
    const double held = side->limits[pin].held_up_to;
    if (card->is_season || !lw_card_flies(side)) {
        FIT("Puffs stay above what a pin is held to: stop for one with less lift, if enough is "
            "left.");
        return;
    }
    if (held > 0.0)
        FIT("Puffs stay above %s: ", SPEED(held));
    else
        FIT("%s is held in no wind: ", label_of(side, pin));
    if (next != pin)
        ADD_ON("stop for %s, if enough is left.", label_of(side, next));
    else
        ADD_ON("no pin holds more, go in.");
}

// --- turns

void lw_card_wind_name(const lw_carded *card, size_t wind, char text[LW_CELL_LENGTH])
{
    static const char *const names[] = {"lull ", "mean ", "puff "};
    const lw_unit unit = lw_speed_unit(card->speed_unit);
    lw_text_fit(text, LW_CELL_LENGTH, "%s%.1f", card->is_season ? "" : names[wind],
                card->winds[wind] / lw_unit_in_si(unit));
}

static bool stays_up(const lw_range *range, double wind)
{
    return range->has_flight && wind >= range->stays_up_at;
}

double lw_card_turns(const lw_carded *card, const lw_card_side *side, lw_card_cell cell,
                     char text[LW_CELL_LENGTH])
{
    char number[LW_CELL_LENGTH];
    const lw_card_flights *on = &side->of[cell.pin][cell.course];
    const double wind = card->winds[cell.wind];
    const double turns = cell.is_most ? on->most[cell.wind] : lw_range_turns(&on->range, wind);
    const bool is_held = on->range.has_hold && wind <= on->range.held_up_to;
    lw_text_fit(text, LW_CELL_LENGTH, "-");
    if (!stays_up(&on->range, wind) || isnan(turns)) return NAN;
    lw_cell_number(number, turns, 1, true);
    lw_text_fit(text, LW_CELL_LENGTH, is_held ? "%.20s" : "(%.20s)", number);
    return turns;
}

bool lw_card_is_flown(const lw_carded *card, const lw_card_side *side, size_t pin, size_t wind)
{
    for (int course = 0; course < LW_COURSE_COUNT; course++) {
        if (stays_up(&side->of[pin][course].range, card->winds[wind])) return true;
    }
    return false;
}
