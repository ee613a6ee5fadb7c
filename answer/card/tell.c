// tell.c - the answer of `lullwise card` told.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/card/card.h"
#include "records/fault.h"

static double there(double wind) { return wind > 0.0 ? wind : NAN; }  // 0: there is none

static const char *label_of(const lw_card_side *side, size_t pin)
{
    return side->picked.inputs.boat.pins[pin].label;
}

static void tell_head(const lw_carded *card, lw_teller *t)
{
    const lw_inputs *inputs = &card->sides[0].picked.inputs;
    char text[LW_CARD_WORDS + LW_NAME_LENGTH + 8];
    lw_card_words scene;
    lw_card_scene(card, scene);
    LW_FIT(text, "%s. %s", inputs->boat.name, scene);
    lw_tell_sentence(t, "question", text);
    lw_tell_name(t, "boat", inputs->boat.name);
    lw_tell_name(t, "day", inputs->day.name);
    lw_tell_name(t, "paper", lw_paper_text(card->paper));
    lw_tell_flag(t, "is_season", card->is_season);
}

// --- one sailor's part

static void tell_rungs(const lw_card_side *side, lw_teller *t)
{
    static const lw_item columns[] = {
        {"lull", "from a lull of", LW_AS_NUMBER, LW_UNIT_KN, 1, NULL},
        {"mean", "mean", LW_AS_NUMBER, LW_UNIT_KN, 1, NULL},
        {"puff", "puff", LW_AS_NUMBER, LW_UNIT_KN, 1, NULL},
        {"pin", "pin", LW_AS_TEXT, LW_UNIT_NONE, 0, "none flies"},
        {"is_held", "held in the puffs", LW_AS_TRUTH, LW_UNIT_NONE, 0, NULL}};
    lw_tell_table(t, "ladder", "Which pin from which lull", columns, LW_COUNT_OF(columns));
    for (size_t i = 0; i < side->rung_count; i++) {
        const lw_card_rung *rung = &side->rungs[i];
        lw_tell_row(t);
        lw_tell_number(t, NULL, rung->gusts.lull);
        lw_tell_number(t, NULL, rung->gusts.mean);
        lw_tell_number(t, NULL, rung->gusts.puff);
        lw_tell_text(t, NULL, rung->flies ? label_of(side, rung->pin) : NULL);
        lw_tell_truth(t, NULL, rung->flies && rung->is_held);
    }
    lw_tell_end(t);
}

static void tell_limits(const lw_card_side *side, lw_teller *t)
{
    static const lw_item columns[] = {
        {"pin", "pin", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
        {"launches_at", "takes off", LW_AS_NUMBER, LW_UNIT_KN, 1, "none"},
        {"stays_up_at", "stays up", LW_AS_NUMBER, LW_UNIT_KN, 1, "none"},
        {"held_up_to", "held to", LW_AS_NUMBER, LW_UNIT_KN, 1, "none"}};
    lw_tell_table(t, "pins", "Winds of each pin", columns, LW_COUNT_OF(columns));
    for (size_t pin = 0; pin < side->outlook.pin_count; pin++) {
        const lw_card_limits *limits = &side->limits[pin];
        lw_tell_row(t);
        lw_tell_text(t, NULL, label_of(side, pin));
        lw_tell_number(t, NULL, there(limits->launches_at));
        lw_tell_number(t, NULL, there(limits->stays_up_at));
        lw_tell_number(t, NULL, there(limits->held_up_to));
    }
    lw_tell_end(t);
}

// clang-format off
#define TURNS(key, head) {(key), (head), LW_AS_CHANGE, LW_UNIT_TURN, 1, NULL}
static const lw_item turns_columns[] = {
    {"pin",  "pin",  LW_AS_TEXT,   LW_UNIT_NONE, 0, NULL},
    {"wind", "wind", LW_AS_NUMBER, LW_UNIT_KN,   1, NULL},
    TURNS("upwind",   "upwind"),   TURNS("upwind_most",   "most"),
    TURNS("reach",    "reach"),    TURNS("reach_most",    "most"),
    TURNS("downwind", "downwind"), TURNS("downwind_most", "most"),
};
// clang-format on

static void tell_turns(const lw_carded *card, const lw_card_side *side, lw_teller *t)
{
    char text[LW_CELL_LENGTH];
    lw_tell_table(t, "turns", "Rudder lift on, in turns from the reference mark", turns_columns,
                  LW_COUNT_OF(turns_columns));
    for (size_t k = 0; k < side->outlook.pin_count * card->wind_count; k++) {
        lw_card_cell cell = {.pin = k / card->wind_count, .wind = k % card->wind_count};
        lw_tell_row(t);
        lw_tell_text(t, NULL, label_of(side, cell.pin));
        lw_tell_number(t, NULL, card->winds[cell.wind]);
        for (int i = 0; i < 2 * LW_COURSE_COUNT; i++) {
            cell.course = (size_t)i / 2, cell.is_most = i % 2;
            const double turns = lw_card_turns(card, side, cell, text);
            lw_tell_number_as(t, NULL, turns, text);
        }
    }
    lw_tell_end(t);
    lw_tell_note(t, "turns_note", LW_CARD_TURNS_NOTE);
}

static void tell_side(const lw_carded *card, const lw_card_side *side, lw_teller *t)
{
    lw_card_words text;
    const bool has_pin = !card->is_season && lw_card_flies(side);
    lw_card_who(side, text);
    lw_tell_object(t, "", text);
    lw_tell_name(t, "sailor", side->picked.inputs.sailor.name);
    lw_tell_flag(t, "any_flies", lw_card_flies(side));
    lw_tell_name(t, "pin", has_pin ? label_of(side, side->picked.now.places[0].pin) : NULL);
    lw_card_headline(card, side, text);
    lw_tell_sentence(t, "headline", text[0] ? text : NULL);
    lw_card_under(card, side, text);
    lw_tell_sentence(t, "under", text[0] ? text : NULL);
    tell_rungs(side, t);
    tell_limits(side, t);
    tell_turns(card, side, t);
    lw_card_stop(card, side, text);
    lw_tell_sentence(t, "hold_or_stop", text);
    lw_tell_end(t);
}

// --- what is both's

static void tell_signs(const lw_carded *card, lw_teller *t)
{
    static const lw_item columns[] = {{"sign", "sign", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL},
                                      {"change", "move first", LW_AS_TEXT, LW_UNIT_NONE, 0, NULL}};
    lw_card_words head;
    lw_card_signs_head(card, head);
    lw_tell_table(t, "signs", card->sign_count > 0 ? head : "", columns, LW_COUNT_OF(columns));
    for (size_t i = 0; i < card->sign_count; i++) {
        lw_tell_row(t);
        lw_tell_text(t, NULL, lw_sign_text(card->signs[i].sign));
        lw_tell_text(t, NULL, card->signs[i].change);
    }
    lw_tell_end(t);
}

static void tell_list(const char *key, const char *head, lw_card_words *texts, size_t count,
                      lw_teller *t)
{
    lw_tell_list(t, key, head);
    for (size_t i = 0; i < count; i++) lw_tell_text(t, NULL, texts[i]);
    lw_tell_end(t);
}

void lw_carded_tell(const void *it, lw_teller *t)
{
    const lw_carded *card = it;
    lw_card_words text, trust[LW_CARD_TRUST_MOST], cautions[LW_CARD_CAUTIONS_MOST];
    tell_head(card, t);
    lw_tell_list(t, "sailors", "");
    for (size_t i = 0; i < card->side_count; i++) tell_side(card, &card->sides[i], t);
    lw_tell_end(t);
    lw_card_grip(card, text);
    lw_tell_sentence(t, "grip", text);
    tell_signs(card, t);
    tell_list("cautions", LW_CAUTIONS_HEAD, cautions, lw_card_cautions(card, cautions), t);
    tell_list("trust", "How far to trust it", trust, lw_card_trust(card, trust), t);
    lw_card_made(card, text);
    lw_tell_sentence(t, "made", text);
}
