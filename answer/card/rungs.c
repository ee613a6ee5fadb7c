// rungs.c - which pin from which wind on, and the winds of each pin.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/card/card.h"
#include "lullwise/choice_find.h"

#define MEANS \
    41  // mean winds that a day is ranked in, from the least that is ridden in to the most

// --- by rides, as the day is ranked

static lw_card_limits ranked_limits(const lw_picked *picked, size_t pin)
{
    const lw_placing *place = lw_picked_place_of(&picked->now, pin);
    if (!place) return (lw_card_limits){0};
    const lw_prospect *p = &place->prospect;
    return (lw_card_limits){p->launches_at, p->stays_up_at, p->held_up_to};
}

static lw_card_rung ranked_rung(const lw_picked *picked, double mean)
{
    const double more = mean - picked->now.gusts.mean;
    const lw_choice choice = lw_choice_of(picked->outlook, picked->now.aim, more);
    const lw_placing *first = &choice.places[0];
    return (lw_card_rung){.gusts = choice.gusts,
                          .pin = first->pin,
                          .flies = first->flies,
                          .is_held = lw_placing_holds(first, choice.gusts.puff)};
}

// --- by steady flight alone

// On the three courses together, as lw_prospect has it for the day's.
static lw_card_limits steady_limits(const lw_card_flights on[LW_COURSE_COUNT])
{
    lw_card_limits limits = {.held_up_to = INFINITY};
    bool always = true;
    for (int course = 0; course < LW_COURSE_COUNT; course++) {
        const lw_range *range = &on[course].range;
        const double launch = range->launches_at, hold = range->has_hold ? range->held_up_to : 0.0;
        if (launch > 0.0 && (limits.launches_at <= 0.0 || launch < limits.launches_at))
            limits.launches_at = launch;
        always = always && range->has_flight;
        limits.stays_up_at = fmax(limits.stays_up_at, range->stays_up_at);
        limits.held_up_to = fmin(limits.held_up_to, hold);
    }
    if (!always) limits.stays_up_at = 0.0;
    if (!always || limits.held_up_to < limits.stays_up_at) limits.held_up_to = 0.0;
    return limits;
}

// The pin with most lift that the puffs lift off and that is held in them; where none is held the
// one that holds most.
static lw_card_rung steady_rung(const lw_card_side *side, double mean)
{
    lw_card_rung rung = {.gusts = lw_gusts_at(side->outlook.gusts, mean)};
    const double puff = rung.gusts.puff;
    for (size_t pin = 0; pin < side->outlook.pin_count; pin++) {
        const lw_card_limits *of = &side->limits[pin];
        const bool is_held = of->held_up_to >= puff;
        const bool is_more = of->held_up_to > side->limits[rung.pin].held_up_to;
        if (of->launches_at <= 0.0 || fmax(of->launches_at, of->stays_up_at) > puff) continue;
        if (of->stays_up_at <= 0.0 || (rung.flies && (rung.is_held || !(is_held || is_more))))
            continue;
        rung.pin = pin, rung.flies = true, rung.is_held = is_held;
    }
    return rung;
}

// --- both

static void add_rung(lw_card_side *side, lw_card_rung rung, bool is_merged)
{
    const lw_card_rung *last = side->rung_count ? &side->rungs[side->rung_count - 1] : NULL;
    const bool is_same =
        last && last->flies == rung.flies && last->pin == rung.pin && last->is_held == rung.is_held;
    const bool is_none = last && !last->flies && !rung.flies;
    if (is_merged && (is_same || is_none)) return;
    if (side->rung_count < LW_CARD_RUNGS) side->rungs[side->rung_count++] = rung;
}

void lw_card_climb(const lw_carded *card, lw_card_side *side)
{
    const lw_picked *picked = &side->picked;
    const double mean = side->outlook.gusts.mean;
    side->rung_count = 0;
    for (size_t pin = 0; pin < side->outlook.pin_count; pin++) {
        side->limits[pin] =
            card->is_season ? steady_limits(side->of[pin]) : ranked_limits(picked, pin);
    }
    for (size_t i = 0; i < card->wind_count && card->is_season; i++)
        add_rung(side, steady_rung(side, card->winds[i]), false);
    for (int i = 0; i < MEANS && !card->is_season; i++) {
        const double part = i / (MEANS - 1.0);
        const double share = LW_RIDE_LEAST + part * (LW_RIDE_MOST - LW_RIDE_LEAST);
        add_rung(side, ranked_rung(picked, share * mean), true);
    }
}

const lw_card_rung *lw_card_rung_in(const lw_card_side *side, double mean)
{
    const lw_card_rung *rung = &side->rungs[0];
    for (size_t i = 1; i < side->rung_count && side->rungs[i].gusts.mean <= mean; i++)
        rung = &side->rungs[i];
    return rung;
}

bool lw_card_flies(const lw_card_side *side)
{
    if (side->picked.now.count) return lw_picked_flies(&side->picked.now);
    for (size_t i = 0; i < side->rung_count; i++) {
        if (side->rungs[i].flies) return true;
    }
    return false;
}
