// tell.c - the answer of `lullwise fly` told.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/fly/fly.h"
#include "answer/words/flight_text.h"
#include "answer/words/flown.h"
#include "answer/words/margin_text.h"
#include "answer/words/number_text.h"
#include "records/fault.h"

static void tell_question(const lw_flown *a, lw_teller *t)
{
    char text[LW_FLOWN_LENGTH];
    lw_flown_question(a, t->speed_unit, text);
    lw_tell_sentence(t, "question", text);
    lw_flown_freedom(a, text);
    lw_tell_sentence(t, "freedom", text);
    lw_tell_flown(t, a);
}

// What holds most, and from what wind she flies where she does not: NAN where it was not sought.
static void tell_limits(const lw_fly *fly, lw_teller *t)
{
    const lw_flown *a = &fly->flown;
    const lw_range *range = &a->range;
    const bool has_most = a->answer.outcome == LW_FLIES && !a->has_turns;
    const bool stays_up = fly->has_range && range->has_flight;
    const bool launches = fly->has_range && range->has_launch;
    const lw_item most = {.key = "turns_that_hold_most", .unit = LW_UNIT_TURN, .digits = 1};
    const lw_item up = lw_item_of(lw_table_find(&lw_range_table, "stays_up_at"), NULL);
    const lw_item off = lw_item_of(lw_table_find(&lw_range_table, "launches_at"), NULL);
    lw_tell_number(t, &most, has_most ? a->most_turns : NAN);
    lw_tell_number(t, &up, stays_up ? range->stays_up_at : NAN);
    lw_tell_number(t, &off, launches ? range->launches_at : NAN);
}

static void tell_answer(const lw_fly *fly, lw_teller *t)
{
    char text[LW_FLOWN_LENGTH];
    const lw_flown *a = &fly->flown;
    const lw_margins *margins = &a->answer.margins;
    const bool has_balance = lw_fly_is_answered(fly);
    lw_tell_object(t, "answer", "Steady flight");
    lw_flown_outcome(a, t->speed_unit, text);
    lw_tell_sentence(t, "sentence", text);
    const bool has_turns = lw_flown_turns(a, text);
    lw_tell_sentence(t, "winding", has_turns ? text : NULL);
    if (fly->has_range) lw_flown_advice(a, t->speed_unit, text);
    lw_tell_sentence(t, "advice", fly->has_range ? text : NULL);
    lw_tell_flag(t, "keeps_margins", has_balance && lw_margins_hold(margins));
    lw_tell_name(t, "first_to_run_out",
                 has_balance ? lw_margin_key(lw_margins_first(margins)) : NULL);
    lw_tell_name(t, "trim", a->has_turns ? NULL : lw_criterion_text(a->by));
    tell_limits(fly, t);
    lw_tell_end(t);
}

static void tell_trust(const lw_flown *a, lw_teller *t)
{
    char notes[LW_TRUST_MOST][LW_TRUST_LENGTH];
    const size_t count = lw_flown_trust(a, notes);
    lw_tell_list(t, "trust", "How far to trust it");
    for (size_t i = 0; i < count; i++) lw_tell_text(t, NULL, notes[i]);
    lw_tell_end(t);
}

void lw_fly_tell(const void *it, lw_teller *t)
{
    const lw_fly *fly = it;
    const lw_answer *answer = &fly->flown.answer;
    const bool has_balance = lw_fly_is_answered(fly);
    tell_question(&fly->flown, t);
    tell_answer(fly, t);
    lw_tell_flight(t, &answer->flight, has_balance);
    if (!has_balance) return;
    lw_tell_margins(t, &answer->margins, answer->outcome == LW_FLIES);
    tell_trust(&fly->flown, t);
}
