// made.c - what a card rests on: winds, model, files, and how far to trust it.
// SPDX-License-Identifier: MIT

#include <inttypes.h>
#include <string.h>

#include "answer/card/card.h"
#include "records/fault.h"
#include "records/record_hash.h"

#ifndef LW_VERSION
#define LW_VERSION "unversioned"
#endif

#define SPEED(x)    LW_SPEED_TEXT((x), 1, card->speed_unit)
#define FIT(...)    lw_text_fit(text, LW_CARD_WORDS, __VA_ARGS__)
#define ADD_ON(...) lw_text_add(text, LW_CARD_WORDS, __VA_ARGS__)

static const lw_inputs *inputs_of(const lw_carded *card) { return &card->sides[0].picked.inputs; }

void lw_card_grip(const lw_carded *card, lw_card_words text)
{
    const char *grip = inputs_of(card)->boat.grip;
    if (grip[0] == '\0' || strcmp(grip, LW_GRIP_UNKNOWN) == 0)
        FIT("Check which way the grip adds rudder lift.");
    else
        FIT("Rudder lift on: grip %s, as you sit.", grip);
}

void lw_card_scene(const lw_carded *card, lw_card_words text)
{
    const lw_day *day = &inputs_of(card)->day;
    const lw_wind *wind = &day->wind;
    if (card->is_season) {
        FIT("Mean winds of %s to %s; lull %.2f and puff %.2f of the mean, sea and all else as on "
            "the day %s.",
            SPEED(card->winds[0]), SPEED(card->winds[card->wind_count - 1]),
            wind->lull / wind->mean, wind->puff / wind->mean, day->name);
        return;
    }
    FIT("%s: lull %s, mean %s, puff %s, read at %.1f m. Aim: %s.", day->name, SPEED(wind->lull),
        SPEED(wind->mean), SPEED(wind->puff), wind->height, day->aim);
}

void lw_card_made(const lw_carded *card, lw_card_words text)
{
    const lw_inputs *inputs = inputs_of(card);
    FIT("lullwise " LW_VERSION "%s%s. " LW_HASH_NAME ": boat %016" PRIx64,
        card->date[0] ? ", " : "", card->date, lw_record_hash(&lw_boat_record, &inputs->boat));
    for (size_t i = 0; i < card->side_count; i++) {
        const lw_sailor *sailor = &card->sides[i].picked.inputs.sailor;
        ADD_ON(", %s %016" PRIx64, i ? "second" : "sailor",
               lw_record_hash(&lw_sailor_record, sailor));
    }
    ADD_ON(", day %016" PRIx64 ".", lw_record_hash(&lw_day_record, &inputs->day_as_given));
}

static size_t trust_day(const lw_carded *card, lw_card_words texts[])
{
    const double mean = card->winds[1];
    size_t count = 0;
    for (size_t i = 0; i < card->side_count; i++) {
        const lw_picked *picked = &card->sides[i].picked;
        char behind[LW_REASON_LENGTH];
        if (!lw_card_flies(&card->sides[i]) || !lw_picked_behind(picked, 1, behind)) continue;
        lw_text_fit(texts[count++], LW_CARD_WORDS, "%s: %s.", picked->inputs.sailor.name, behind);
    }
    lw_text_fit(texts[count++], LW_CARD_WORDS,
                "Pins by rides in gusts and chop with a modelled sailor, in means of %s to %s.",
                SPEED(LW_RIDE_LEAST * mean), SPEED(LW_RIDE_MOST * mean));
    return count;
}

size_t lw_card_trust(const lw_carded *card, lw_card_words texts[])
{
    const lw_wind *wind = &inputs_of(card)->day.wind;
    size_t count = card->is_season ? 0 : trust_day(card, texts);
    if (card->is_season)
        lw_text_fit(texts[count++], LW_CARD_WORDS,
                    "Pins by steady flight alone, no rides: the one with most lift that is held in "
                    "the puffs. Holds are for puffs of %s above the mean.",
                    SPEED(wind->puff - wind->mean));
    lw_text_fit(texts[count++], LW_CARD_WORDS,
                "Turns are those of steady flight: begin with them, and note what yours are. "
                "Differences between pins are surer than the numbers themselves.");
    return count;
}

// --- cautions

typedef struct cautions {
    size_t count;
    char at[LW_CAUTIONS_MOST][LW_CAUTION_LENGTH];
} cautions;

static cautions cautions_for(const lw_carded *card, const lw_card_side *side)
{
    cautions of;
    lw_care care = lw_care_of_day(&side->picked.inputs, card->speed_unit);
    const lw_wind *wind = &side->picked.inputs.day.wind;
    const double most = card->winds[card->wind_count - 1];
    if (card->is_season) care.mean = most, care.puff = most * wind->puff / wind->mean;
    if (!card->is_season) care = lw_care_of(&side->picked);
    of.count = lw_cautions(&care, of.at);
    return of;
}

static bool is_among(const char *text, const cautions *of)
{
    for (size_t i = 0; i < of->count; i++) {
        if (strcmp(text, of->at[i]) == 0) return true;
    }
    return false;
}

size_t lw_card_cautions(const lw_carded *card, lw_card_words texts[])
{
    size_t count = 0;
    const size_t sides = card->side_count;
    const cautions first = cautions_for(card, &card->sides[0]);
    const cautions last = cautions_for(card, &card->sides[sides - 1]);
    for (size_t side = 0; side < sides; side++) {  // what is one sailor's own
        const cautions *own = side ? &last : &first, *other = side ? &first : &last;
        const char *name = card->sides[side].picked.inputs.sailor.name;
        for (size_t i = 0; i < own->count; i++) {
            if (is_among(own->at[i], other)) continue;
            lw_text_fit(texts[count++], LW_CARD_WORDS, "%s: %s", name, own->at[i]);
        }
    }
    for (size_t i = 0; i < first.count; i++) {  // what is both's
        if (is_among(first.at[i], &last))
            lw_text_fit(texts[count++], LW_CARD_WORDS, "%s", first.at[i]);
    }
    return count;
}
