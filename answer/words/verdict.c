// verdict.c - what is said first of a day's ranking.
// SPDX-License-Identifier: MIT

#include "answer/words/verdict.h"

#include <math.h>

#include "lullwise/choice_find.h"
#include "records/fault.h"

#define SPEED(x) LW_SPEED_TEXT((x), 1, picked->speed_unit)
#define APART(x) LW_APART_TEXT((x), picked->speed_unit)

static bool any_holds(const lw_choice *choice)
{
    return lw_placing_holds(lw_choice_widest(choice), choice->gusts.puff);
}

// Whether puffs reach what launches the first of the pins, and keeps her up.
static bool could_fly(const lw_choice *choice)
{
    double launch = 0.0;
    return lw_choice_soonest(choice, &launch) && launch <= choice->gusts.puff;
}

lw_verdict lw_verdict_of(const lw_picked *picked)
{
    const lw_choice *choice = &picked->now;
    const bool flies = lw_picked_flies(choice);
    if ((flies || could_fly(choice)) && !any_holds(choice)) return LW_VERDICT_UNHELD;
    return flies ? LW_VERDICT_PIN : LW_VERDICT_NO_FLIGHT;
}

void lw_verdict_headline(const lw_picked *picked, char text[LW_REASON_LENGTH])
{
    const lw_choice *choice = &picked->now;
    switch (lw_verdict_of(picked)) {
        case LW_VERDICT_PIN:
            lw_text_fit(text, LW_REASON_LENGTH, "Pin %s",
                        lw_picked_label(picked, choice->places[0].pin));
            break;
        case LW_VERDICT_UNHELD:
            lw_text_fit(text, LW_REASON_LENGTH, "No pin holds this wind");
            break;
        default:
            lw_text_fit(text, LW_REASON_LENGTH, "Nothing flies %s %s",
                        could_fly(choice) ? "for long in puffs of" : "in puffs of",
                        SPEED(choice->gusts.puff));
    }
}

// "Puffs reach 32.0 kn. Pin D holds most, puffs of 25.1 kn: 6.9 kn less, or a mean of 18.8 kn."
static void say_widest(const lw_picked *picked, char text[LW_REASON_LENGTH])
{
    const lw_choice *choice = &picked->now;
    const lw_placing *most = lw_choice_widest(choice);
    const double held = most->prospect.held_up_to, puff = choice->gusts.puff;
    char end[LW_REASON_LENGTH];
    lw_picked_end(picked, most->pin, end);
    if (held > 0.0)
        lw_text_fit(text, LW_REASON_LENGTH,
                    "Puffs reach %s. Pin %s holds most, puffs of %s: %s less, or a mean of %s. "
                    "What ends it: %s.",
                    SPEED(puff), lw_picked_label(picked, most->pin), SPEED(held),
                    APART(puff - held), SPEED(choice->gusts.mean * held / puff), end);
    else
        lw_text_fit(text, LW_REASON_LENGTH,
                    "Puffs reach %s, and no pin is held in any wind on every leg. Pin %s: %s.",
                    SPEED(puff), lw_picked_label(picked, most->pin), end);
}

static void say_flight(const lw_picked *picked, char text[LW_REASON_LENGTH])
{
    const double puff = picked->now.gusts.puff;
    double launch = 0.0;
    const lw_placing *least = lw_choice_soonest(&picked->now, &launch);
    if (!least)
        lw_text_fit(text, LW_REASON_LENGTH,
                    "No wind was found in which this boat takes off with this sailor: look the "
                    "files over with `lullwise check`.");
    else if (launch > puff)
        lw_text_fit(text, LW_REASON_LENGTH,
                    "They would have to reach %s, %s more: then pin %s takes off, bearing away if "
                    "need be.",
                    SPEED(launch), APART(launch - puff), lw_picked_label(picked, least->pin));
    else
        lw_text_fit(text, LW_REASON_LENGTH,
                    "Pin %s takes off at %s, but she drops and swims so often that she does better "
                    "on the hull.",
                    lw_picked_label(picked, least->pin), SPEED(launch));
}

void lw_verdict_would(const lw_picked *picked, char text[LW_REASON_LENGTH])
{
    const lw_verdict verdict = lw_verdict_of(picked);
    text[0] = '\0';
    if (verdict == LW_VERDICT_UNHELD) say_widest(picked, text);
    if (verdict == LW_VERDICT_NO_FLIGHT) say_flight(picked, text);
}

void lw_verdict_unheld(const lw_picked *picked, char text[LW_REASON_LENGTH])
{
    const lw_choice *choice = &picked->now;
    const double puff = choice->gusts.puff;
    const lw_placing *holder = lw_choice_holder(choice, puff);
    text[0] = '\0';
    if (lw_verdict_of(picked) != LW_VERDICT_PIN || lw_placing_holds(&choice->places[0], puff))
        return;
    lw_text_fit(text, LW_REASON_LENGTH, "Not held in the puffs: pin %s holds them%s",
                lw_picked_label(picked, holder->pin),
                holder->flies ? "" : ", but does not fly on this day");
}

// "+1.2", "(+1.2)" in a wind [m/s] in which it is not held, "-" where she does not stay up.
static void fit_turns(char text[LW_CELL_LENGTH], const lw_placing *place, double wind, double turns)
{
    char number[LW_CELL_LENGTH];
    const bool is_held = lw_placing_holds(place, wind);
    lw_cell_number(number, turns, 1, true);
    if (isnan(turns) || !lw_placing_stays_up(place, wind))
        lw_text_fit(text, LW_CELL_LENGTH, "-");
    else
        lw_text_fit(text, LW_CELL_LENGTH, is_held ? "%.20s" : "(%.20s)", number);
}

// "; turns: lull +0.7, mean +0.8, puff +1.2".
static void add_turns(const lw_placing *place, lw_gusts gusts, char text[LW_REASON_LENGTH])
{
    char lull[LW_CELL_LENGTH], mean[LW_CELL_LENGTH], puff[LW_CELL_LENGTH];
    const lw_prospect *p = &place->prospect;
    fit_turns(lull, place, gusts.lull, p->turns_lull);
    fit_turns(mean, place, gusts.mean, p->turns_mean);
    fit_turns(puff, place, gusts.puff, p->turns_puff);
    lw_text_add(text, LW_REASON_LENGTH, "; turns: lull %s, mean %s, puff %s", lull, mean, puff);
}

void lw_verdict_line(const lw_picked *picked, char text[LW_REASON_LENGTH])
{
    const lw_placing *first = &picked->now.places[0], *most = lw_choice_widest(&picked->now);
    const double held = first->prospect.held_up_to, widest = most->prospect.held_up_to;
    const lw_verdict verdict = lw_verdict_of(picked);
    lw_verdict_headline(picked, text);
    if (verdict == LW_VERDICT_UNHELD && widest > 0.0)
        lw_text_add(text, LW_REASON_LENGTH, "; pin %s holds most: to %s",
                    lw_picked_label(picked, most->pin), SPEED(widest));
    if (verdict != LW_VERDICT_PIN) return;
    if (!first->flies)
        lw_text_add(text, LW_REASON_LENGTH, ", sailed on the hull");
    else if (held > 0.0)
        lw_text_add(text, LW_REASON_LENGTH, ", held to %s", SPEED(held));
    else
        lw_text_add(text, LW_REASON_LENGTH, ", held in no wind");
    if (first->flies) add_turns(first, picked->now.gusts, text);
}
