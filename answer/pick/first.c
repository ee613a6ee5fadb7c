// first.c - what is said first of a ranking; the first place in short.
// SPDX-License-Identifier: MIT

#include "answer/pick/told.h"
#include "answer/words/verdict.h"
#include "lullwise/choice_find.h"
#include "records/fault.h"

static void tell_best_turns(lw_teller *t, const lw_picked *picked, const lw_placing *first)
{
    static const lw_item most = TURNS("holds_most", "holds most");
    static const lw_item items[] = {TURNS("lull", "lull"), TURNS("mean", "mean"),
                                    TURNS("puff", "puff")};
    const lw_prospect *p = &first->prospect;
    const lw_gusts *gusts = &picked->now.gusts;
    const lw_turns_in in[] = {
        {gusts->lull, p->turns_lull}, {gusts->mean, p->turns_mean}, {gusts->puff, p->turns_puff}};
    char head[LW_TURNS_HEAD];
    lw_picked_turns_head(picked, head);
    lw_tell_object(t, "turns", head);
    for (int i = 0; i < 3; i++) lw_tell_turns_in(t, &items[i], first, in[i]);
    lw_tell_turns_in(t, &most, first,
                     (lw_turns_in){gusts->mean, picked->outlook->most_turns[first->pin]});
    lw_tell_end(t);
    bool is_plain = true;
    for (int i = 0; i < 3; i++)
        is_plain &= lw_placing_stays_up(first, in[i].wind) && lw_placing_holds(first, in[i].wind);
    lw_tell_note(t, "turns_note", is_plain ? LW_TURNS_WAY : LW_TURNS_WAY " " LW_TURNS_NOTE);
}

// The first place in short: what is pinned ashore, how far it is held, what is wound afloat. Of no
// use beside the tables: a face that has room for little shows it.
static void tell_best(lw_teller *t, const lw_picked *picked)
{
    static const lw_item held = WIND("held_up_to", "held to puffs of");
    static const lw_item over = WIND("over_puffs", "over the puffs");
    static const lw_item under = WIND("under_puffs", "under the puffs");
    static const lw_item seconds = {"seconds", "round the course", LW_AS_TIME, LW_UNIT_S, 0,
                                    "none"};
    const lw_placing *first = &picked->now.places[0];
    const lw_prospect *p = &first->prospect;
    const double spare = p->held_up_to - picked->now.gusts.puff;
    char text[LW_REASON_LENGTH];
    lw_tell_object(t, "best", NULL);
    lw_tell_name(t, "pin", lw_picked_label(picked, first->pin));
    lw_verdict_unheld(picked, text);
    if (text[0]) lw_tell_sentence(t, "unheld", text);
    LW_FIT(text, "Sailed all the same, pin %s comes first.", lw_picked_label(picked, first->pin));
    if (lw_verdict_of(picked) == LW_VERDICT_UNHELD) lw_tell_sentence(t, "all_the_same", text);
    if (!first->flies) lw_tell_sentence(t, "on_hull", "Sailed on the hull: she does better so.");
    lw_tell_number(t, &held, there(p->held_up_to));
    if (p->held_up_to > 0.0) lw_tell_number(t, spare < 0.0 ? &under : &over, fabs(spare));
    lw_tell_number(t, &seconds, there(p->seconds));
    if (first->flies) tell_best_turns(t, picked, first);
    lw_tell_end(t);
}

// The headline stands alone where a pin is not it.
void lw_tell_first(lw_teller *t, const lw_picked *picked)
{
    char headline[LW_REASON_LENGTH], would[LW_REASON_LENGTH], line[LW_REASON_LENGTH];
    const lw_verdict verdict = lw_verdict_of(picked);
    lw_verdict_headline(picked, headline);
    lw_verdict_would(picked, would);
    lw_verdict_line(picked, line);
    lw_tell_flag(t, "any_flies", lw_picked_flies(&picked->now));
    lw_tell_flag(t, "any_holds", verdict == LW_VERDICT_PIN);
    lw_tell_name(t, "line", line);
    if (verdict == LW_VERDICT_PIN)
        lw_tell_name(t, "headline", headline);
    else
        lw_tell_sentence(t, "headline", headline);
    if (would[0]) lw_tell_sentence(t, "would", would);
    if (lw_picked_flies(&picked->now)) tell_best(t, picked);
}
