// reason.c - why each set-up stands where it stands, in sentences with their numbers.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "answer/words/picked.h"
#include "records/fault.h"

#define SPEED(x) LW_SPEED_TEXT((x), 1, picked->speed_unit)
#define APART(x) LW_APART_TEXT((x), picked->speed_unit)

// "held to 17.5 kn" or "held in no wind".
static void fit_held(char text[LW_CELL_LENGTH], double held, lw_unit unit)
{
    if (held > 0.0)
        lw_text_fit(text, LW_CELL_LENGTH, "held to %s", LW_SPEED_TEXT(held, 1, unit));
    else
        lw_text_fit(text, LW_CELL_LENGTH, "held in no wind");
}

// "; what ends it: rudder foil's tip in the chop, downwind, as the puff hits".
static void add_end(const lw_picked *picked, size_t pin, char text[LW_REASON_LENGTH])
{
    char end[LW_REASON_LENGTH];
    lw_picked_end(picked, pin, end);
    lw_text_add(text, LW_REASON_LENGTH, "; what ends it: %s", end);
}

// "; too close to call (4 s behind B, ± 6 s)".
static void add_close(const lw_picked *picked, size_t place, char text[LW_REASON_LENGTH])
{
    char behind[LW_CELL_LENGTH], error[LW_CELL_LENGTH];
    const lw_placing *it = &picked->now.places[place];
    if (!it->is_close) return;
    lw_cell_time(behind, it->behind);
    lw_cell_time(error, it->error);
    lw_text_add(text, LW_REASON_LENGTH, "; too close to call (%s behind %s, ± %s)", behind,
                lw_picked_label(picked, it[-1].pin), error);
}

// "; cannot be held in the puffs: held to 18.1 kn, puffs 24.0 kn", where the reason is another.
static void add_unheld(const lw_picked *picked, const lw_placing *it, char text[LW_REASON_LENGTH])
{
    char held[LW_CELL_LENGTH];
    const double puff = picked->now.gusts.puff;
    const bool says_so = it->reason == LW_REASON_UNHELD || it->reason == LW_REASON_TIGHTER ||
                         it->reason == LW_REASON_FIRST;
    if (!it->flies || says_so || it->prospect.held_up_to >= puff) return;
    fit_held(held, it->prospect.held_up_to, picked->speed_unit);
    lw_text_add(text, LW_REASON_LENGTH, "; %s: %s, puffs %s", lw_reason_text(LW_REASON_UNHELD),
                held, SPEED(puff));
}

// "37 s more", "12 s less", "as long" round the course than the first.
static void fit_longer(const lw_picked *picked, const lw_placing *place, char text[LW_CELL_LENGTH])
{
    char time[LW_CELL_LENGTH];
    const double more = place->prospect.seconds - picked->now.places[0].prospect.seconds;
    lw_cell_time(time, fabs(more));
    if (fabs(more) < 0.5)
        lw_text_fit(text, LW_CELL_LENGTH, "as long");
    else
        lw_text_fit(text, LW_CELL_LENGTH, "%.30s %s", time, more < 0.0 ? "less" : "more");
}

static void reason_swims(const lw_picked *picked, const lw_placing *place,
                         char text[LW_REASON_LENGTH])
{
    const lw_prospect *p = &place->prospect, *first = &picked->now.places[0].prospect;
    char longer[LW_CELL_LENGTH];
    fit_longer(picked, place, longer);
    lw_text_fit(text, LW_REASON_LENGTH, "%s: %.2f a lap, the first %.2f; %s round the course",
                lw_reason_text(place->reason), p->swims, first->swims, longer);
}

enum { SWIMMING_LENGTH = 2 * LW_CELL_LENGTH };

// ", 1 min 12 s of it for 0.7 swims", where that is much of a lap.
static void fit_swimming(const lw_prospect *p, char text[SWIMMING_LENGTH])
{
    char time[LW_CELL_LENGTH];
    text[0] = '\0';
    if (p->swims < LW_SWIMS_MANY) return;
    lw_cell_time(time, p->swim_seconds);
    lw_text_fit(text, SWIMMING_LENGTH, ", %s of it for %.2f swims", time, p->swims);
}

static void reason_first(const lw_picked *picked, const lw_placing *place,
                         char text[LW_REASON_LENGTH])
{
    const lw_prospect *p = &place->prospect;
    const double puff = picked->now.gusts.puff, spare = p->held_up_to - puff;
    char time[LW_CELL_LENGTH], held[LW_CELL_LENGTH], over[LW_CELL_LENGTH] = "";
    char swimming[SWIMMING_LENGTH];
    lw_cell_time(time, p->seconds);
    fit_held(held, p->held_up_to, picked->speed_unit);
    if (p->held_up_to > 0.0)
        LW_FIT(over, ", %s %s the puffs", APART(spare), spare < 0.0 ? "under" : "over");
    fit_swimming(p, swimming);
    lw_text_fit(text, LW_REASON_LENGTH,
                "%s: %s round the course%s, flying %.0f %% of the time under way; %s%s",
                lw_reason_text(place->reason), time, swimming, 100.0 * p->flying, held, over);
    add_end(picked, place->pin, text);
}

static void reason_never(const lw_picked *picked, const lw_placing *place,
                         char text[LW_REASON_LENGTH])
{
    const lw_prospect *p = &place->prospect;
    const char *reason = lw_reason_text(place->reason);
    if (p->launches_at <= 0.0)
        lw_text_fit(text, LW_REASON_LENGTH, "%s: no wind was found in which she takes off", reason);
    else if (p->stays_up_at <= 0.0)
        lw_text_fit(text, LW_REASON_LENGTH, "%s: on some leg she stays up in no wind", reason);
    else
        lw_text_fit(text, LW_REASON_LENGTH,
                    "%s: takes off at %s and stays up from %s; mean %s, puffs %s", reason,
                    SPEED(p->launches_at), SPEED(p->stays_up_at), SPEED(picked->now.gusts.mean),
                    SPEED(picked->now.gusts.puff));
}

#define ALIKE 0.05  // of the time: so much more or less is flying as much  [judged]

static void reason_slower(const lw_picked *picked, const lw_placing *place,
                          char text[LW_REASON_LENGTH])
{
    const lw_prospect *p = &place->prospect, *first = &picked->now.places[0].prospect;
    const bool flies_alike = fabs(p->flying - first->flying) < ALIKE;
    const char *reason = flies_alike ? lw_reason_text(place->reason) : "is slower";
    const char *speed = SPEED(p->speed), *best = SPEED(first->speed);
    char longer[LW_CELL_LENGTH];
    fit_longer(picked, place, longer);
    if (fabs(p->seconds - first->seconds) < 0.5)
        lw_text_fit(text, LW_REASON_LENGTH, "is as fast, to the second");
    else if (p->speed < first->speed && strcmp(speed, best) != 0)
        lw_text_fit(text, LW_REASON_LENGTH,
                    "%s: %s made good under way, the first %s; %s round "
                    "the course",
                    reason, speed, best, longer);
    else
        lw_text_fit(text, LW_REASON_LENGTH, "%s: %s round the course", reason, longer);
}

// The lulls are named where she drops in them.
static void reason_drops(const lw_picked *picked, const lw_placing *place,
                         char text[LW_REASON_LENGTH])
{
    const lw_prospect *p = &place->prospect;
    const double lull = picked->now.gusts.lull;
    char here[LW_CELL_LENGTH], first[LW_CELL_LENGTH];
    lw_cell_time(here, p->hull_seconds);
    lw_cell_time(first, picked->now.places[0].prospect.hull_seconds);
    lw_text_fit(text, LW_REASON_LENGTH, "%s: %s there, the first %s", lw_reason_text(place->reason),
                here, first);
    if (lull < p->stays_up_at)
        lw_text_add(text, LW_REASON_LENGTH, "; lulls %s, she stays up from %s", SPEED(lull),
                    SPEED(p->stays_up_at));
}

// On the hull in all of the day's winds.
static void reason_hull(const lw_picked *picked, const lw_placing *place,
                        char text[LW_REASON_LENGTH])
{
    char time[LW_CELL_LENGTH];
    lw_cell_time(time, place->prospect.seconds);
    lw_text_fit(text, LW_REASON_LENGTH, "%s: %s round the course, %s made good",
                lw_reason_text(place->reason), time, SPEED(place->prospect.speed));
}

static void reason_unheld(const lw_picked *picked, const lw_placing *place,
                          char text[LW_REASON_LENGTH])
{
    char held[LW_CELL_LENGTH];
    fit_held(held, place->prospect.held_up_to, picked->speed_unit);
    lw_text_fit(text, LW_REASON_LENGTH, "%s: %s, puffs %s", lw_reason_text(place->reason), held,
                SPEED(picked->now.gusts.puff));
    add_end(picked, place->pin, text);
}

static void reason_tighter(const lw_picked *picked, const lw_placing *place,
                           char text[LW_REASON_LENGTH])
{
    const char *held = SPEED(place->prospect.held_up_to);
    const char *most = SPEED(picked->now.places[0].prospect.held_up_to);
    if (strcmp(held, most) != 0)
        lw_text_fit(text, LW_REASON_LENGTH, "%s: to %s, the first to %s",
                    lw_reason_text(place->reason), held, most);
    else
        lw_text_fit(text, LW_REASON_LENGTH, "holds as much wind as the first: to %s", held);
    add_end(picked, place->pin, text);
}

void lw_picked_reason(const lw_picked *picked, size_t place, char text[LW_REASON_LENGTH])
{
    const lw_placing *it = &picked->now.places[place];
    switch (it->reason) {
        case LW_REASON_FIRST:
            reason_first(picked, it, text);
            break;
        case LW_REASON_NEVER:
            reason_never(picked, it, text);
            break;
        case LW_REASON_HULL:
            reason_hull(picked, it, text);
            break;
        case LW_REASON_STUCK:
            lw_text_fit(text, LW_REASON_LENGTH, "%s: less than a knot made good on some leg",
                        lw_reason_text(it->reason));
            break;
        case LW_REASON_UNHELD:
            reason_unheld(picked, it, text);
            break;
        case LW_REASON_DROPS:
            reason_drops(picked, it, text);
            break;
        case LW_REASON_TIGHTER:
            reason_tighter(picked, it, text);
            break;
        case LW_REASON_SWIMS:
            reason_swims(picked, it, text);
            break;
        default:
            reason_slower(picked, it, text);
    }
    add_unheld(picked, it, text);
    add_close(picked, place, text);
}

bool lw_picked_behind(const lw_picked *picked, size_t place, char text[LW_REASON_LENGTH])
{
    const lw_placing *it = &picked->now.places[place];
    char chance[LW_CELL_LENGTH], behind[LW_CELL_LENGTH], error[LW_CELL_LENGTH];
    char spread[LW_CELL_LENGTH];
    if (place == 0 || it->chance <= 0.0) return false;
    lw_chance_text(chance, it->chance);
    lw_cell_time(behind, it->behind);
    lw_cell_time(error, it->error);
    lw_cell_time(spread, it->spread);
    lw_text_fit(text, LW_REASON_LENGTH,
                "%s behind %s by %s: ± %s by rides%s, ± %s by what is not known; chance that it is "
                "behind: %s",
                lw_picked_label(picked, it->pin), lw_picked_label(picked, it[-1].pin), behind,
                error, it->is_close ? " (too close to call)" : "", spread, chance);
    return true;
}
