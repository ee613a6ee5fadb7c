// picked.c - the set-ups ranked for a day, and what the ranking says in sentences.
// SPDX-License-Identifier: MIT

#include "answer/words/picked.h"

#include <assert.h>
#include <math.h>
#include <string.h>

#include "answer/words/margin_text.h"
#include "answer/words/number_text.h"
#include "lullwise/choice_find.h"
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

// Of a pin that is among them.
static const lw_prospect *prospect_of(const lw_choice *choice, size_t pin)
{
    const lw_placing *place = lw_picked_place_of(choice, pin);
    assert(place);
    return &place->prospect;
}

bool lw_picked_flies(const lw_choice *choice)
{
    for (size_t i = 0; i < choice->count; i++) {
        if (choice->places[i].flies) return true;
    }
    return false;
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

// Why a pin is held in no wind on its hardest leg, or round the course.
static void say_no_hold(const lw_picked *picked, size_t pin, const char *course,
                        char text[LW_REASON_LENGTH])
{
    const lw_prospect *p = prospect_of(&picked->now, pin);
    const lw_outlook *outlook = picked->outlook;
    const size_t hardest = lw_outlook_hardest(outlook, pin);
    const lw_range *range = &outlook->ranges[pin][hardest];
    const double held = lw_outlook_hold(outlook, pin, hardest);
    if (p->stays_up_at <= 0.0)
        lw_text_fit(text, LW_REASON_LENGTH, "she does not stay up on every leg in any wind");
    else if (held > 0.0)
        lw_text_fit(text, LW_REASON_LENGTH,
                    "held in less wind (%s, %s) than she stays up in on every leg (%s)",
                    SPEED(held), course, SPEED(p->stays_up_at));
    else if (range->has_hold && range->held_up_to >= range->stays_up_at)
        lw_text_fit(text, LW_REASON_LENGTH,
                    "in every wind that was ridden in she swims too often, %s", course);
    else
        lw_text_fit(text, LW_REASON_LENGTH, "%s no wind keeps all margins", course);
}

void lw_picked_turns_head(const lw_picked *picked, char head[LW_TURNS_HEAD])
{
    char course[LW_COURSE_NAME];
    lw_picked_course_name(picked, lw_outlook_longest(picked->outlook), course);
    lw_text_fit(head, LW_TURNS_HEAD, "Rudder lift on, in turns from the reference mark, %s",
                course);
}

void lw_picked_end(const lw_picked *picked, size_t pin, char text[LW_REASON_LENGTH])
{
    char course[LW_COURSE_NAME];
    const size_t hardest = lw_outlook_hardest(picked->outlook, pin);
    const lw_range *range = &picked->outlook->ranges[pin][hardest];
    const lw_placing *place = lw_picked_place_of(&picked->now, pin);
    assert(place);
    lw_picked_course_name(picked, hardest, course);
    if (place->prospect.held_up_to <= 0.0)
        say_no_hold(picked, pin, course, text);
    else if (place->ends_by_rides)
        lw_text_fit(text, LW_REASON_LENGTH, "more than a swim in five minutes, %s", course);
    else
        lw_text_fit(text, LW_REASON_LENGTH, "%s, %s%s", lw_margin_end(range->ends_by), course,
                    range->ends_in_puff ? ", as the puff hits" : "");
}

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
    const size_t at = strlen(text);
    lw_picked_end(picked, pin, end);
    lw_text_fit(text + at, LW_REASON_LENGTH - at, "; what ends it: %s", end);
}

// "; too close to call (4 s behind B, ± 6 s)".
static void add_close(const lw_picked *picked, size_t place, char text[LW_REASON_LENGTH])
{
    const lw_placing *it = &picked->now.places[place];
    if (!it->is_close) return;
    const size_t at = strlen(text);
    lw_text_fit(text + at, LW_REASON_LENGTH - at,
                "; too close to call (%.0f s behind %s, ± %.0f s)", it->behind,
                lw_picked_label(picked, it[-1].pin), it->error);
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
    const size_t at = strlen(text);
    lw_text_fit(text + at, LW_REASON_LENGTH - at, "; %s: %s, puffs %s",
                lw_reason_text(LW_REASON_UNHELD), held, SPEED(puff));
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
    char time[LW_CELL_LENGTH], held[LW_CELL_LENGTH], over[LW_CELL_LENGTH] = "";
    lw_cell_time(time, p->seconds);
    fit_held(held, p->held_up_to, picked->speed_unit);
    if (p->held_up_to > 0.0)
        LW_FIT(over, ", %s %s the puffs", SPEED(fabs(spare)), spare < 0.0 ? "under" : "over");
    lw_text_fit(text, LW_REASON_LENGTH, "%s: %s round the course, flying %.0f %%; %s%s",
                lw_reason_text(place->reason), time, 100.0 * p->flying, held, over);
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

#define ALIKE 0.05  // of the time: so much more or less is flying as much  [judged]

static void reason_slower(const lw_picked *picked, const lw_placing *place,
                          char text[LW_REASON_LENGTH])
{
    const lw_prospect *p = &place->prospect, *first = &picked->now.places[0].prospect;
    const bool flies_alike = fabs(p->flying - first->flying) < ALIKE;
    const char *reason = flies_alike ? lw_reason_text(place->reason) : "is slower";
    char time[LW_CELL_LENGTH];
    lw_cell_time(time, p->seconds - first->seconds);
    if (p->speed < first->speed)
        lw_text_fit(text, LW_REASON_LENGTH, "%s: %s made good under way, the first %s; %s more",
                    reason, SPEED(p->speed), SPEED(first->speed), time);
    else
        lw_text_fit(text, LW_REASON_LENGTH, "%s: %s more round the course", reason, time);
}

static void reason_drops(const lw_picked *picked, const lw_placing *place,
                         char text[LW_REASON_LENGTH])
{
    char here[LW_CELL_LENGTH], first[LW_CELL_LENGTH];
    lw_cell_time(here, place->prospect.hull_seconds);
    lw_cell_time(first, picked->now.places[0].prospect.hull_seconds);
    lw_text_fit(text, LW_REASON_LENGTH, "%s: %s there, the first %s; lulls %s",
                lw_reason_text(place->reason), here, first, SPEED(picked->now.gusts.lull));
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

void lw_picked_reason(const lw_picked *picked, size_t place, char text[LW_REASON_LENGTH])
{
    const lw_placing *it = &picked->now.places[place];
    const lw_prospect *p = &it->prospect;
    const char *reason = lw_reason_text(it->reason);
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
                        reason);
            break;
        case LW_REASON_UNHELD:
            reason_unheld(picked, it, text);
            break;
        case LW_REASON_DROPS:
            reason_drops(picked, it, text);
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
    add_unheld(picked, it, text);
    add_close(picked, place, text);
}

bool lw_picked_behind(const lw_picked *picked, size_t place, char text[LW_REASON_LENGTH])
{
    const lw_placing *it = &picked->now.places[place];
    char chance[LW_CELL_LENGTH];
    if (place == 0 || it->chance <= 0.0) return false;
    lw_chance_text(chance, it->chance);
    lw_text_fit(
        text, LW_REASON_LENGTH,
        "%s behind %s by %.0f s: ± %.0f s by rides%s, ± %.0f s by what is not known; chance "
        "that it is behind: %s",
        lw_picked_label(picked, it->pin), lw_picked_label(picked, it[-1].pin), it->behind,
        it->error, it->is_close ? " (too close to call)" : "", it->spread, chance);
    return true;
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

enum { STEP_LENGTH = 2 * LW_CELL_LENGTH };

// "; holds 3.5 kn more", or what takes its place where one of them is held in no wind.
static void fit_hold_step(const lw_picked *picked, const lw_prospect *from, const lw_prospect *to,
                          char text[STEP_LENGTH])
{
    const double more = to->held_up_to - from->held_up_to;
    if (from->held_up_to > 0.0 && to->held_up_to > 0.0)
        lw_text_fit(text, STEP_LENGTH, "holds %s %s", SPEED(fabs(more)),
                    more < 0.0 ? "less" : "more");
    else if (to->held_up_to > 0.0)
        lw_text_fit(text, STEP_LENGTH, "holds %s instead of no wind", SPEED(to->held_up_to));
    else
        lw_text_fit(text, STEP_LENGTH, "is held in no wind");
}

void lw_picked_step(const lw_picked *picked, size_t pin, char text[LW_REASON_LENGTH])
{
    const lw_prospect *from = prospect_of(&picked->now, pin);
    const lw_prospect *to = prospect_of(&picked->now, pin + 1);
    char time[LW_CELL_LENGTH], cost[LW_CELL_LENGTH], held[STEP_LENGTH];
    fit_hold_step(picked, from, to, held);
    if (from->seconds <= 0.0 || to->seconds <= 0.0) {
        lw_text_fit(text, LW_REASON_LENGTH, "%s", held);
        return;
    }
    fit_cost(time, to->seconds - from->seconds, 0, "s", "takes as long");
    const lw_unit unit = lw_speed_unit(picked->speed_unit);
    const double lost = (from->speed - to->speed) / lw_unit_in_si(unit);
    fit_cost(cost, lost, 1, lw_unit_text(unit), "as fast");
    lw_text_fit(text, LW_REASON_LENGTH, "%s under way, %s round the course; %s", cost, time, held);
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
    const double puff = choice->gusts.puff;
    double launch = 0.0;
    const lw_placing *least = lw_choice_soonest(choice, &launch);
    if (!least)
        lw_text_fit(
            text, LW_REASON_LENGTH,
            "No wind was found that launches this boat with this sailor: look the files over "
            "with `lullwise check`.");
    else if (launch > puff)
        lw_text_fit(
            text, LW_REASON_LENGTH,
            "Nothing flies in puffs of %s. They would have to reach %s, %s more: then pin %s "
            "launches, bearing away if need be.",
            SPEED(puff), SPEED(launch), SPEED(launch - puff), lw_picked_label(picked, least->pin));
    else
        lw_text_fit(
            text, LW_REASON_LENGTH,
            "Nothing flies for long: pin %s launches at %s and puffs reach %s, but she drops "
            "and swims so often that she does better on the hull.",
            lw_picked_label(picked, least->pin), SPEED(launch), SPEED(puff));
}
