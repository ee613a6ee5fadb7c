// picked.c - the set-ups ranked for a day, and what the ranking says in sentences.
// SPDX-License-Identifier: MIT

#include "advice/picked.h"

#include <math.h>
#include <string.h>

#include "advice/margin_text.h"
#include "advice/number_text.h"
#include "records/fault.h"

#define SPEED(x) LW_SPEED_TEXT((x), 1, picked->speed_unit)

void lw_picked_rank(lw_picked *picked)
{
    const lw_aim aim = lw_aim_of(picked->inputs.day.aim);
    picked->now = lw_choice_of(picked->outlook, aim, 0.0);
    picked->less = lw_choice_of(picked->outlook, aim, -LW_WIND_STEP);
    picked->more = lw_choice_of(picked->outlook, aim, LW_WIND_STEP);
}

const char *lw_picked_label(const lw_picked *picked, size_t pin)
{
    return picked->inputs.boat.pins[pin].label;
}

const lw_placing *lw_picked_place_of(const lw_choice *choice, size_t pin)
{
    for (size_t i = 0; i < choice->count; i++) {
        if (choice->places[i].pin == pin) return &choice->places[i];
    }
    return NULL;
}

bool lw_picked_flies(const lw_choice *choice)
{
    return choice->count > 0 && choice->places[0].prospect.flying > 0.0;
}

void lw_picked_course_name(const lw_picked *picked, size_t course, char name[LW_COURSE_NAME])
{
    const lw_course *c = &picked->outlook->courses[course];
    const char *text = c->direction < LW_PI / 2.0 ? "upwind" : "downwind";
    if (c->high <= c->low)
        lw_text_fit(name, LW_COURSE_NAME, "on the leg at %.0f deg", c->direction / LW_DEG);
    else
        lw_text_fit(name, LW_COURSE_NAME, "%s", text);
}

size_t lw_picked_longest(const lw_picked *picked)
{
    const lw_outlook *outlook = picked->outlook;
    size_t longest = 0;
    for (size_t i = 1; i < outlook->leg_count; i++) {
        if (outlook->leg_length[i] > outlook->leg_length[longest]) longest = i;
    }
    return outlook->leg_course[longest];
}

void lw_picked_end(const lw_picked *picked, size_t pin, char text[LW_REASON_LENGTH])
{
    char course[LW_COURSE_NAME];
    const size_t hardest = lw_outlook_hardest(picked->outlook, pin);
    const lw_range *range = &picked->outlook->ranges[pin][hardest];
    lw_picked_course_name(picked, hardest, course);
    if (!range->has_hold)
        lw_text_fit(text, LW_REASON_LENGTH, "%s no wind keeps all margins", course);
    else if (lw_outlook_hold_ends_by_rides(picked->outlook, pin, hardest))
        lw_text_fit(text, LW_REASON_LENGTH, "in rides more than %.0f swims an hour, %s",
                    3600.0 * LW_SWIM_MANY, course);
    else
        lw_text_fit(text, LW_REASON_LENGTH, "%s, %s%s", lw_margin_end(range->ends_by), course,
                    range->ends_in_puff ? ", as the puff hits" : "");
}

// "; what ends it: rudder foil's tip in the chop, downwind, as the puff hits".
static void add_end(const lw_picked *picked, size_t pin, char text[LW_REASON_LENGTH])
{
    char end[LW_REASON_LENGTH];
    const size_t at = strlen(text);
    lw_picked_end(picked, pin, end);
    lw_text_fit(text + at, LW_REASON_LENGTH - at, "; what ends it: %s", end);
}

// "; too close to call (4 ± 6 s)": behind the one before, and how well that is known.
static void add_close(const lw_picked *picked, size_t place, char text[LW_REASON_LENGTH])
{
    const lw_placing *it = &picked->now.places[place];
    if (!it->is_close) return;
    const double behind = it->prospect.score - picked->now.places[place - 1].prospect.score;
    const size_t at = strlen(text);
    lw_text_fit(text + at, LW_REASON_LENGTH - at, "; too close to call (%.0f ± %.0f s)", behind,
                it->error);
}

static void reason_swims(const lw_picked *picked, const lw_placing *place,
                         char text[LW_REASON_LENGTH])
{
    const lw_prospect *p = &place->prospect, *first = &picked->now.places[0].prospect;
    char time[LW_CELL_LENGTH];
    lw_cell_time(time, p->seconds - first->seconds);
    lw_text_fit(text, LW_REASON_LENGTH, "%s: %.1f a lap, the first %.1f; %s more",
                lw_reason_text(place->reason), p->swims, first->swims, time);
}

static void reason_first(const lw_picked *picked, const lw_placing *place,
                         char text[LW_REASON_LENGTH])
{
    const lw_prospect *p = &place->prospect;
    const double puff = picked->now.gusts.puff, spare = p->held_up_to - puff;
    char time[LW_CELL_LENGTH];
    lw_cell_time(time, p->seconds);
    lw_text_fit(text, LW_REASON_LENGTH,
                "%s: %s round the course, flying %.0f %%; held to %s, "
                "%s %s the puffs",
                lw_reason_text(place->reason), time, 100.0 * p->flying, SPEED(p->held_up_to),
                SPEED(fabs(spare)), spare < 0.0 ? "under" : "over");
    add_end(picked, place->pin, text);
}

static void reason_never(const lw_picked *picked, const lw_placing *place,
                         char text[LW_REASON_LENGTH])
{
    const lw_prospect *p = &place->prospect;
    const char *puff = SPEED(picked->now.gusts.puff);
    const char *reason = lw_reason_text(place->reason);
    if (p->launches_at <= 0.0)
        lw_text_fit(text, LW_REASON_LENGTH, "%s: no wind was found that launches her", reason);
    else if (p->stays_up_at <= 0.0)
        lw_text_fit(text, LW_REASON_LENGTH, "%s: on some leg she stays up in no wind", reason);
    else
        lw_text_fit(text, LW_REASON_LENGTH,
                    "%s: launches at %s and stays up from %s; "
                    "puffs %s",
                    reason, SPEED(p->launches_at), SPEED(p->stays_up_at), puff);
}

static void reason_slower(const lw_picked *picked, const lw_placing *place,
                          char text[LW_REASON_LENGTH])
{
    const lw_prospect *p = &place->prospect, *first = &picked->now.places[0].prospect;
    char time[LW_CELL_LENGTH];
    lw_cell_time(time, p->seconds - first->seconds);
    if (p->speed > 0.0 && p->speed < first->speed)
        lw_text_fit(text, LW_REASON_LENGTH,
                    "%s: %s made good in the mean wind, the first "
                    "%s; %s more",
                    lw_reason_text(place->reason), SPEED(p->speed), SPEED(first->speed), time);
    else
        lw_text_fit(text, LW_REASON_LENGTH, "%s: %s more round the course",
                    lw_reason_text(place->reason), time);
}

void lw_picked_reason(const lw_picked *picked, size_t place, char text[LW_REASON_LENGTH])
{
    const lw_placing *it = &picked->now.places[place];
    const lw_prospect *p = &it->prospect;
    const char *reason = lw_reason_text(it->reason);
    const lw_gusts *gusts = &picked->now.gusts;
    switch (it->reason) {
        case LW_REASON_FIRST:
            reason_first(picked, it, text);
            break;
        case LW_REASON_NEVER:
            reason_never(picked, it, text);
            break;
        case LW_REASON_UNHELD:
            lw_text_fit(text, LW_REASON_LENGTH, "%s: held to %s, puffs %s", reason,
                        SPEED(p->held_up_to), SPEED(gusts->puff));
            add_end(picked, it->pin, text);
            break;
        case LW_REASON_DROPS:
            lw_text_fit(text, LW_REASON_LENGTH,
                        "%s: %.0f s there; stays up from %s, launches at "
                        "%s, lulls %s",
                        reason, p->hull_seconds, SPEED(p->stays_up_at), SPEED(p->launches_at),
                        SPEED(gusts->lull));
            break;
        case LW_REASON_TIGHTER:
            lw_text_fit(text, LW_REASON_LENGTH, "%s: to %s, the first to %s", reason,
                        SPEED(p->held_up_to), SPEED(picked->now.places[0].prospect.held_up_to));
            add_end(picked, it->pin, text);
            break;
        case LW_REASON_SWIMS:
            reason_swims(picked, it, text);
            break;
        default:
            reason_slower(picked, it, text);
    }
    add_close(picked, place, text);
}

// "costs 0.2 kn", "gains 0.2 kn"; `none` when it would read 0.
static void fit_cost(char text[LW_CELL_LENGTH], double cost, int decimals, const char *unit,
                     const char *none)
{
    char number[LW_CELL_LENGTH];
    lw_cell_number(number, fabs(cost), decimals, false);
    if (strpbrk(number, "123456789"))
        lw_text_fit(text, LW_CELL_LENGTH, "%s %s %s", cost < 0.0 ? "gains" : "costs", number, unit);
    else
        lw_text_fit(text, LW_CELL_LENGTH, "%s", none);
}

void lw_picked_step(const lw_picked *picked, size_t pin, char text[LW_REASON_LENGTH])
{
    const lw_prospect *from = &lw_picked_place_of(&picked->now, pin)->prospect;
    const lw_prospect *to = &lw_picked_place_of(&picked->now, pin + 1)->prospect;
    const double held = to->held_up_to - from->held_up_to;
    char time[LW_CELL_LENGTH], cost[LW_CELL_LENGTH], speed[2 * LW_CELL_LENGTH] = "";
    fit_cost(time, to->seconds - from->seconds, 0, "s", "takes as long");
    if (from->speed > 0.0 && to->speed > 0.0) {
        const lw_unit unit = lw_speed_unit(picked->speed_unit);
        const double lost = (from->speed - to->speed) / lw_unit_in_si(unit);
        fit_cost(cost, lost, 1, lw_unit_text(unit), "as fast");
        LW_FIT(speed, "%s in the mean wind, ", cost);
    }
    lw_text_fit(text, LW_REASON_LENGTH, "%s%s round the course; holds %s %s", speed, time,
                SPEED(fabs(held)), held < 0.0 ? "less" : "more");
}

void lw_picked_order(const lw_picked *picked, const lw_choice *choice, char text[LW_REASON_LENGTH])
{
    text[0] = '\0';
    for (size_t i = 0; i < choice->count; i++) {
        const size_t at = strlen(text);
        lw_text_fit(text + at, LW_REASON_LENGTH - at, "%s%s", i ? ", " : "",
                    lw_picked_label(picked, choice->places[i].pin));
    }
    const size_t at = strlen(text);
    if (!lw_picked_flies(choice)) {
        lw_text_fit(text, LW_REASON_LENGTH, "nothing flies");
    } else if (picked->now.places[0].pin != choice->places[0].pin) {
        lw_text_fit(text + at, LW_REASON_LENGTH - at, "  (%s first instead of %s)",
                    lw_picked_label(picked, choice->places[0].pin),
                    lw_picked_label(picked, picked->now.places[0].pin));
    }
}

void lw_picked_no_flight(const lw_picked *picked, char text[LW_REASON_LENGTH])
{
    const lw_choice *choice = &picked->now;
    const lw_placing *least = NULL;
    for (size_t i = 0; i < choice->count; i++) {
        const lw_placing *p = &choice->places[i];
        if (p->prospect.launches_at <= 0.0) continue;
        if (!least || p->prospect.launches_at < least->prospect.launches_at) least = p;
    }
    if (!least) {
        lw_text_fit(
            text, LW_REASON_LENGTH,
            "No wind was found that launches this boat with this sailor: look the files over "
            "with `lullwise check`.");
        return;
    }
    const double launch = fmax(least->prospect.launches_at, least->prospect.stays_up_at);
    lw_text_fit(text, LW_REASON_LENGTH,
                "Nothing flies in puffs of %s. They would have to "
                "reach %s, %s more: then pin %s launches, bearing away if need be.",
                SPEED(choice->gusts.puff), SPEED(launch), SPEED(launch - choice->gusts.puff),
                lw_picked_label(picked, least->pin));
}
