// words.c - the answer of `lullwise hold` in words.
// SPDX-License-Identifier: MIT

#include "answer/hold/hold.h"

#include <math.h>

#include "answer/words/number_text.h"
#include "records/fault.h"

#define FAR  5.0   // times what is left: no minutes are told for such a break-even  [judged]
#define SOON 0.02  // of what is left: a stop later than that is said to be later  [judged]

static void say_even(const lw_change *change, double left, char text[120])
{
    if (!change->is_ever) {
        lw_text_fit(text, 120, "none, however much is left");
        return;
    }
    if (change->even_left > FAR * left) {
        lw_text_fit(text, 120, "only with more than %.0f nmi left", change->even_left / LW_NMI);
        return;
    }
    char time[LW_CELL_LENGTH];
    lw_cell_time(time, change->even_seconds);
    lw_text_fit(text, 120, "%.2f nmi or %s left", change->even_left / LW_NMI, time);
}

// Chances near one half are no advice.  [judged]
static const char *say_close(double chance)
{
    return fabs(chance - 0.5) < 0.15 ? " Too close to call." : "";
}

static void say_stop(const lw_held *held, char text[LW_HELD_LENGTH])
{
    const lw_change *change = &held->hold.changes[held->hold.best];
    const char *to = lw_picked_label(&held->picked, held->hold.best);
    char saved[LW_CELL_LENGTH], error[LW_CELL_LENGTH], chance[LW_CELL_LENGTH], even[120];
    lw_chance_text(chance, change->best_chance);
    lw_cell_time(saved, change->best_saved);
    lw_cell_time(error, lw_hold_unsure(change->best_error, change->best_spread));
    say_even(change, held->hold.left, even);
    const double share = change->best_at / held->hold.left;
    const double wind = lw_hold_wind(&held->hold, change->best_at);
    if (share > SOON) {
        lw_text_fit(
            text, LW_HELD_LENGTH,
            "Hold %s until the mean wind is %.1f kn, then stop and go to %s: saves %s, give "
            "or take %s, over holding on. With less than %s, hold. Chance that the stop "
            "pays: %s.%s",
            lw_picked_label(&held->picked, held->hold.pin), wind / LW_KN, to, saved, error, even,
            chance, say_close(change->best_chance));
        return;
    }
    lw_text_fit(text, LW_HELD_LENGTH,
                "Stop and go to %s: saves %s, give or take %s, over the %.2f nmi left. Break-even: "
                "%s; with less, hold. Chance that the stop pays: %s.%s",
                to, saved, error, held->hold.left / LW_NMI, even, chance,
                say_close(change->best_chance));
}

static void say_hold(const lw_held *held, char text[LW_HELD_LENGTH])
{
    const lw_change *change = &held->hold.changes[held->hold.best];
    const char *to = lw_picked_label(&held->picked, held->hold.best);
    char lost[LW_CELL_LENGTH], error[LW_CELL_LENGTH], chance[LW_CELL_LENGTH], even[120];
    lw_chance_text(chance, 1.0 - change->chance);
    lw_cell_time(lost, -change->saved);
    lw_cell_time(error, lw_hold_unsure(change->error, change->spread));
    say_even(change, held->hold.left, even);
    lw_text_fit(text, LW_HELD_LENGTH,
                "Hold %s. The best other pin, %s, loses %s, give or take %s, by the stop over the "
                "%.2f nmi left. Break-even: %s. Chance that holding is faster: %s.%s",
                lw_picked_label(&held->picked, held->hold.pin), to, lost, error,
                held->hold.left / LW_NMI, even, chance, say_close(change->chance));
}

void lw_held_answer(const lw_held *held, char text[LW_HELD_LENGTH])
{
    if (!lw_hold_flies(&held->hold))
        lw_text_fit(text, LW_HELD_LENGTH,
                    "No pin flies in these winds: hold %s, and see `lullwise pick` for what would.",
                    lw_picked_label(&held->picked, held->hold.pin));
    else if (!held->hold.has_best)
        lw_text_fit(text, LW_HELD_LENGTH, "Hold %s: the boat has no other pin.",
                    lw_picked_label(&held->picked, held->hold.pin));
    else if (lw_held_stops(held))
        say_stop(held, text);
    else
        say_hold(held, text);
}
