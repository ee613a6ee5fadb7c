// ranking.c - the pins of a boat in order for an aim, and why each stands where it stands.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "choice/lap.h"
#include "lullwise/choice_find.h"

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

// How often the aim counts a swim.  [judged]
static double swims_counted(lw_aim aim) { return aim == LW_AIM_STEADY ? 3.0 : 1.0; }

// Seconds round the course as the aim counts them.
static double counted(const lw_prospect *p, lw_aim aim)
{
    return p->seconds + (swims_counted(aim) - 1.0) * p->swim_seconds;
}

// Where a set-up belongs before anything is weighed: what cannot be sailed at the end, and before
// it, where flying is the aim, what does not fly.
static int rank_of(const lw_placing *place, lw_aim aim)
{
    if (!place->can_be_sailed) return 2;
    return aim != LW_AIM_RACE && !place->flies ? 1 : 0;
}

static bool goes_before(const lw_placing *a, const lw_placing *b, lw_aim aim)
{
    const int rank = rank_of(a, aim), other = rank_of(b, aim);
    if (rank != other) return rank < other;
    const double held = a->prospect.held_up_to, other_held = b->prospect.held_up_to;
    if (aim == LW_AIM_EASY && held != other_held) return held > other_held;
    return counted(&a->prospect, aim) < counted(&b->prospect, aim);
}

static void place(lw_choice *choice, const lw_placing *placing)
{
    size_t at = choice->count++;
    while (at > 0 && goes_before(placing, &choice->places[at - 1], choice->aim)) {
        choice->places[at] = choice->places[at - 1];
        at--;
    }
    choice->places[at] = *placing;
}

#define SWIMS_TOLD 0.05  // a lap: less is not told as a difference

// Why a set-up loses: where the time goes that the first does not spend.
static lw_reason reason_of(const lw_placing *place, const lw_placing *first, lw_aim aim,
                           lw_gusts gusts)
{
    const lw_prospect *p = &place->prospect, *best = &first->prospect;
    if (!place->can_be_sailed) return LW_REASON_STUCK;
    if (!place->flies) return place->could_fly ? LW_REASON_HULL : LW_REASON_NEVER;
    if (place == first) return LW_REASON_FIRST;
    if (aim == LW_AIM_EASY) {
        return lw_placing_holds(place, gusts.puff) ? LW_REASON_TIGHTER : LW_REASON_UNHELD;
    }
    const double hull = p->hull_seconds - best->hull_seconds;
    const double swims = p->swim_seconds - best->swim_seconds;
    const double rest = p->seconds - best->seconds - hull - swims;
    if (p->swims >= best->swims + SWIMS_TOLD && swims >= hull && swims >= rest) {
        return lw_placing_holds(place, gusts.puff) ? LW_REASON_SWIMS : LW_REASON_UNHELD;
    }
    return hull > 0.0 && hull >= rest ? LW_REASON_DROPS : LW_REASON_SLOWER;
}

// Seconds of a lap as the aim counts them.
static double counted_lap(const lw_lap *lap, lw_aim aim)
{
    return lap->seconds + (swims_counted(aim) - 1.0) * lap->swimming;
}

#define HULL_ERROR 0.01  // of a time sailed on the hull: nobody rides it  [judged]

// How far one pin is behind another, and its error by rides: over the blocks that both rode, and
// for swims that did not happen yet.
static double behind_by(const lw_outlook *outlook, size_t pin, size_t ahead,
                        const lw_choice *choice, double *error)
{
    const double wind = choice->gusts.mean;
    lw_source of = {.kind = LW_OF_SET, .for_time = choice->aim == LW_AIM_RACE};
    double behind[LW_SETS];
    for (of.set = 0; of.set < LW_SETS; of.set++) {
        const lw_lap a = lw_lap_expected(outlook, of, pin, wind);
        const lw_lap b = lw_lap_expected(outlook, of, ahead, wind);
        behind[of.set] = counted_lap(&a, choice->aim) - counted_lap(&b, choice->aim);
    }
    of.set = 0;
    const double seen = lw_jackknife(behind);
    const double unseen =
        swims_counted(choice->aim) * outlook->cost.swim * lw_lap_unseen(outlook, pin, ahead, wind);
    const double hull = HULL_ERROR * lw_lap_of(outlook, of, pin, wind).on_hull;
    *error = sqrt(seen * seen + unseen * unseen + hull * hull);
    return behind[0];
}

// What a draw changes of a lap.
static double moved_of(const lw_outlook *outlook, lw_source draw, size_t pin,
                       const lw_choice *choice)
{
    const lw_lap drawn = lw_lap_of(outlook, draw, pin, choice->gusts.mean);
    draw.kind = LW_BESIDE_DRAW;
    const lw_lap as_is = lw_lap_of(outlook, draw, pin, choice->gusts.mean);
    return counted_lap(&drawn, choice->aim) - counted_lap(&as_is, choice->aim);
}

// How far draws move the difference of two pins.
static double spread_of(const lw_outlook *outlook, size_t pin, size_t ahead,
                        const lw_choice *choice)
{
    double moved[LW_DRAWS];
    for (size_t d = 0; d < LW_DRAWS; d++) {
        const lw_source draw = {LW_OF_DRAW, 0, d, choice->aim == LW_AIM_RACE};
        moved[d] = moved_of(outlook, draw, pin, choice) - moved_of(outlook, draw, ahead, choice);
    }
    return lw_spread(moved);
}

// How far each is behind the one before it, and how surely.
static void weigh(const lw_outlook *outlook, lw_choice *choice)
{
    const lw_aim aim = choice->aim;
    if (aim == LW_AIM_EASY) return;  // its order is by hold, not by seconds
    for (size_t i = 1; i < choice->count; i++) {
        lw_placing *it = &choice->places[i];
        const lw_placing *ahead = &choice->places[i - 1];
        if (rank_of(it, aim) != rank_of(ahead, aim) || !it->can_be_sailed) continue;
        it->behind = behind_by(outlook, it->pin, ahead->pin, choice, &it->error);
        it->spread = spread_of(outlook, it->pin, ahead->pin, choice);
        it->chance = lw_chance(it->behind, it->error, it->spread);
        it->is_close = it->behind < LW_CLOSE * it->error;
    }
}

lw_choice lw_choice_of(const lw_outlook *outlook, lw_aim aim, double more)
{
    const lw_gusts gusts = lw_gusts_at(outlook->gusts, outlook->gusts.mean + more);
    lw_choice choice = {.aim = aim, .gusts = gusts};
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        const lw_placing placing = lw_lap_placing(outlook, pin, gusts, aim == LW_AIM_RACE);
        place(&choice, &placing);
    }
    weigh(outlook, &choice);
    for (size_t i = 0; i < choice.count; i++) {
        choice.places[i].reason = reason_of(&choice.places[i], &choice.places[0], aim, gusts);
    }
    return choice;
}
