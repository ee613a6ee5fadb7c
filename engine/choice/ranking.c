// ranking.c - the pins of a boat in order for an aim, and why each stands where it stands.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "choice/lap.h"

#define AS_AIM_TEXT(name, text, doc) text,
#define AS_AIM_DOC(name, text, doc)  doc,
#define AS_REASON_TEXT(name, text)   text,
static const char *const aim_texts[] = {LW_AIM_LIST(AS_AIM_TEXT)};
static const char *const aim_docs[] = {LW_AIM_LIST(AS_AIM_DOC)};
static const char *const reason_texts[] = {LW_REASON_LIST(AS_REASON_TEXT)};

const char *lw_aim_text(lw_aim aim) { return aim_texts[aim]; }
const char *lw_aim_doc(lw_aim aim) { return aim_docs[aim]; }
const char *lw_reason_text(lw_reason reason) { return reason_texts[reason]; }

lw_aim lw_aim_of(const char *text)
{
    int aim = 0;
    while (aim < LW_AIM_COUNT && strcmp(text, aim_texts[aim]) != 0) aim++;
    return (lw_aim)aim;
}

#define NEVER_FLIES 1e6  // score of a set-up that does not fly at all, above any that does

// Least is best. Race: seconds. Steady: seconds with swims and time above the hold limit counted
// threefold. Easy: the widest hold wins among those that fly at all, if only in the puffs.
// [judged] weights
static double score_of(const lw_prospect *p, lw_aim aim, lw_gusts gusts)
{
    if (p->flying <= 0.0) return NEVER_FLIES + p->seconds;
    if (aim == LW_AIM_RACE) return p->seconds;
    if (aim == LW_AIM_STEADY) return p->seconds * (1.0 + 2.0 * p->unheld) + 2.0 * p->swim_seconds;
    return gusts.puff - p->held_up_to;
}

// Why a set-up loses: where the time goes that the first does not spend.
static lw_reason reason_of(const lw_placing *place, const lw_placing *first, lw_aim aim,
                           lw_gusts gusts)
{
    const lw_prospect *p = &place->prospect, *best = &first->prospect;
    if (p->flying <= 0.0) return LW_REASON_NEVER;
    const double hull = p->hull_seconds - best->hull_seconds;
    const double swims = p->swim_seconds - best->swim_seconds;
    if (aim == LW_AIM_EASY) {
        return p->held_up_to < gusts.puff ? LW_REASON_UNHELD : LW_REASON_TIGHTER;
    }
    const double rest = p->seconds - best->seconds - hull - swims;
    if (p->unheld > best->unheld && swims >= fmax(hull, 0.0)) return LW_REASON_UNHELD;
    if (swims > 0.0 && swims >= hull && swims >= rest) return LW_REASON_SWIMS;
    if (hull > 0.0 && hull >= rest) return LW_REASON_DROPS;
    return LW_REASON_SLOWER;
}

static void place(lw_choice *choice, const lw_placing *placing)
{
    size_t at = choice->count++;
    while (at > 0 && choice->places[at - 1].prospect.score > placing->prospect.score) {
        choice->places[at] = choice->places[at - 1];
        at--;
    }
    choice->places[at] = *placing;
}

// How surely each is behind the one before it, as far as swims make the difference.
static void weigh(const lw_outlook *outlook, lw_choice *choice)
{
    if (choice->aim == LW_AIM_EASY) return;  // no swims in that score
    const double each = outlook->cost.swim * (choice->aim == LW_AIM_STEADY ? 3.0 : 1.0);
    for (size_t i = 1; i < choice->count; i++) {
        lw_placing *place = &choice->places[i], *ahead = &choice->places[i - 1];
        if (place->prospect.flying <= 0.0) continue;
        place->error = each * lw_lap_swims_error(outlook, place, ahead, choice->gusts);
        place->is_close = place->prospect.score - ahead->prospect.score < place->error;
    }
}

static bool flies_in(const lw_prospect *p, double wind)
{
    return p->stays_up_at > 0.0 && wind >= p->stays_up_at;
}

lw_choice lw_choice_of(const lw_outlook *outlook, lw_aim aim, double more)
{
    lw_gusts gusts = outlook->gusts;
    gusts.lull = fmax(gusts.lull + more, 0.0);
    gusts.mean = fmax(gusts.mean + more, 0.0);
    gusts.puff = fmax(gusts.puff + more, 0.0);
    lw_choice choice = {.aim = aim, .gusts = gusts};
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        lw_placing placing = lw_lap(outlook, pin, gusts);
        lw_prospect *p = &placing.prospect;
        p->score = score_of(p, aim, gusts);
        const size_t hardest = lw_outlook_hardest(outlook, pin);
        placing.ends_by = outlook->ranges[pin][hardest].ends_by;
        placing.ends_by_rides = lw_outlook_hold_ends_by_rides(outlook, pin, hardest);
        placing.flies_in_lull = flies_in(p, gusts.lull);
        placing.flies_in_mean = flies_in(p, gusts.mean);
        placing.flies_in_puff = flies_in(p, gusts.puff);
        place(&choice, &placing);
    }
    weigh(outlook, &choice);
    for (size_t i = 1; i < choice.count; i++) {
        choice.places[i].reason = reason_of(&choice.places[i], &choice.places[0], aim, gusts);
    }
    if (choice.count > 0 && choice.places[0].prospect.flying <= 0.0) {
        choice.places[0].reason = LW_REASON_NEVER;
    }
    return choice;
}
