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
        lw_text_fit(name, LW_COURSE_NAME, "on the leg at %s", LW_ANGLE_TEXT(c->direction, 0));
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
                    "flown %s she swims more than once in five minutes in every wind that was "
                    "ridden in",
                    course);
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

enum { STEP_LENGTH = 2 * LW_CELL_LENGTH };

// "costs 0.2 kn", "gains 0.2 kn"; `none` when it would read 0.
static void fit_cost(char text[STEP_LENGTH], double cost, const char *shown, const char *none)
{
    if (strpbrk(shown, "123456789"))
        lw_text_fit(text, STEP_LENGTH, "%s %s", cost < 0.0 ? "gains" : "costs", shown);
    else
        lw_text_fit(text, STEP_LENGTH, "%s", none);
}

static void fit_more(char text[STEP_LENGTH], double more, const char *shown)
{
    if (strpbrk(shown, "123456789"))
        lw_text_fit(text, STEP_LENGTH, "holds %s %s", shown, more < 0.0 ? "less" : "more");
    else
        lw_text_fit(text, STEP_LENGTH, "holds as much");
}

// "; holds 3.5 kn more", or what takes its place where one of them is held in no wind.
static void fit_hold_step(const lw_picked *picked, const lw_prospect *from, const lw_prospect *to,
                          char text[STEP_LENGTH])
{
    const double more = to->held_up_to - from->held_up_to;
    if (from->held_up_to > 0.0 && to->held_up_to > 0.0)
        fit_more(text, more, SPEED(fabs(more)));
    else if (to->held_up_to > 0.0)
        lw_text_fit(text, STEP_LENGTH, "holds %s instead of no wind", SPEED(to->held_up_to));
    else
        lw_text_fit(text, STEP_LENGTH, "is held in no wind");
}

void lw_picked_step(const lw_picked *picked, size_t pin, char text[LW_REASON_LENGTH])
{
    const lw_prospect *from = prospect_of(&picked->now, pin);
    const lw_prospect *to = prospect_of(&picked->now, pin + 1);
    char seconds[LW_CELL_LENGTH], time[STEP_LENGTH], cost[STEP_LENGTH], held[STEP_LENGTH];
    fit_hold_step(picked, from, to, held);
    if (from->seconds <= 0.0 || to->seconds <= 0.0) {
        lw_text_fit(text, LW_REASON_LENGTH, "%s", held);
        return;
    }
    const double more = to->seconds - from->seconds, lost = from->speed - to->speed;
    lw_cell_time(seconds, fabs(more));
    fit_cost(time, more, seconds, "takes as long");
    fit_cost(cost, lost, SPEED(fabs(lost)), "as fast");
    lw_text_fit(text, LW_REASON_LENGTH, "%s under way, %s round the course; %s", cost, time, held);
}

void lw_picked_order(const lw_picked *picked, const lw_choice *choice, char text[LW_REASON_LENGTH])
{
    text[0] = '\0';
    for (size_t i = 0; i < choice->count; i++) {
        lw_text_add(text, LW_REASON_LENGTH, "%s%s", i ? ", " : "",
                    lw_picked_label(picked, choice->places[i].pin));
    }
    if (!lw_picked_flies(choice)) {
        lw_text_fit(text, LW_REASON_LENGTH, "nothing flies");
    } else if (picked->now.places[0].pin != choice->places[0].pin) {
        lw_text_add(text, LW_REASON_LENGTH, "  (%s first instead of %s)",
                    lw_picked_label(picked, choice->places[0].pin),
                    lw_picked_label(picked, picked->now.places[0].pin));
    }
}
