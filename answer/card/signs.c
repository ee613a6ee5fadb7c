// signs.c - what the boat does, and what is moved first: as a card has room for.
// SPDX-License-Identifier: MIT

#include "answer/card/card.h"
#include "answer/words/move_text.h"
#include "records/fault.h"

// Those that are told, the first of them first where there is no room for all.
static const lw_sign list[LW_CARD_SIGNS] = {
    LW_SIGN_BOW_UP, LW_SIGN_BOW_DOWN, LW_SIGN_NOSE_RISES, LW_SIGN_RISES, LW_SIGN_BREACHES,
    LW_SIGN_SPINS,  LW_SIGN_DROPS,    LW_SIGN_LOW,        LW_SIGN_SLOW,
};

// The pin and the gusts that signs are read in: the day's, or those in the middle of a season.
static size_t pin_and_gusts(const lw_carded *card, lw_gusts *gusts)
{
    const lw_card_side *side = &card->sides[0];
    if (!card->is_season) {
        *gusts = side->picked.now.gusts;
        return side->picked.now.places[0].pin;
    }
    const lw_card_rung *rung = lw_card_rung_in(side, card->winds[card->wind_count / 2]);
    *gusts = rung->gusts;
    return rung->pin;
}

// Afloat first; ashore where she rises at the wand's stop, because there the trim is at its end.
static const lw_remedy *first_of(lw_sign sign, const lw_remedy *remedies, size_t count)
{
    const bool is_ashore = sign == LW_SIGN_RISES || sign == LW_SIGN_NOSE_RISES;
    for (size_t i = 0; i < count; i++) {
        if (lw_lever_of(remedies[i].lever)->is_trim != is_ashore) return &remedies[i];
    }
    return count > 0 ? &remedies[0] : NULL;
}

static void read_sign(lw_carded *card, lw_scene *scene, size_t pin, lw_sign sign)
{
    lw_diagnosis found;
    lw_remedy remedies[LW_REMEDIES_MOST];
    const lw_known known = {.has_pin = true, .pin = pin};
    const lw_signs_seen seen = {.set = LW_SIGN_BIT(sign)};
    lw_diagnose(scene, &known, &seen, &found);
    const lw_remedy *first = first_of(sign, remedies, lw_remedies_of(scene, &found, remedies));
    if (!first) return;
    lw_card_sign *to = &card->signs[card->sign_count++];
    to->sign = sign;
    lw_move_text_brief(scene->boat, first, to->change);
}

void lw_card_read_signs(lw_carded *card)
{
    lw_scene scene;
    lw_gusts gusts;
    const lw_card_side *side = &card->sides[0];
    const size_t pin = pin_and_gusts(card, &gusts);
    lw_wind wind = side->picked.inputs.day.wind;
    wind.lull = gusts.lull, wind.mean = gusts.mean, wind.puff = gusts.puff;
    lw_scene_prepare(&scene, &side->outlook.craft, &side->picked.inputs.boat, &wind,
                     lw_course_of(LW_UPWIND));
    card->sign_count = 0;
    if (!lw_answer_is_up(&scene.own[pin].at[LW_IN_MEAN])) return;
    for (int i = 0; i < LW_CARD_SIGNS; i++) read_sign(card, &scene, pin, list[i]);
}

void lw_card_signs_head(const lw_carded *card, lw_card_words text)
{
    lw_gusts gusts;
    const size_t pin = pin_and_gusts(card, &gusts);
    lw_text_fit(text, LW_CARD_WORDS, "Signs, and what to move first (pin %s, upwind, %s)",
                card->sides[0].picked.inputs.boat.pins[pin].label,
                LW_SPEED_TEXT(gusts.mean, 1, card->speed_unit));
}
