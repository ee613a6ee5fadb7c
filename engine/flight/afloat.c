// afloat.c - a balance on the hull, by towing: a hull's resistance has bends that a search for
// speed
// gets stuck at.
// SPDX-License-Identifier: MIT

#include "lullwise/flight.h"

#define SPEEDS  6
#define EFFORTS 3
#define HALVES  12

static bool is_found(const lw_answer *answer) { return answer->outcome != LW_NO_BALANCE; }

// Towed at one speed after the other: the first balance of each, from any effort. Returns how many:
// one where slow is fast.
static int tow(const lw_craft *craft, const lw_ask *ask, double slow, double fast,
               lw_answer at[SPEEDS])
{
    const int speeds = fast > slow ? SPEEDS : 1;
    lw_ask asks[SPEEDS][EFFORTS];
    lw_answer answers[SPEEDS][EFFORTS];
    for (int i = 0; i < speeds; i++) {
        const double part = (double)i / (SPEEDS - 1);
        for (int k = 0; k < EFFORTS; k++) {
            const double effort = 0.3 + 0.5 * k;
            lw_ask *to = &asks[i][k];
            *to = *ask;
            lw_ask_give_speed(to, slow + (fast - slow) * part);
            to->start = (lw_ask_start){
                .leeway = 0.1, .ride_height = -0.12, .rudder = ask->start.rudder, .effort = effort};
        }
    }
    lw_balance(craft, asks[0], answers[0], (size_t)speeds * EFFORTS);
    for (int i = 0; i < speeds; i++) {
        at[i] = answers[i][0];
        for (int k = 1; k < EFFORTS && !is_found(&at[i]); k++) at[i] = answers[i][k];
    }
    return speeds;
}

// Between a speed at which she gathers way and one at which she loses it: there she keeps it.
static lw_answer bisected(const lw_craft *craft, const lw_ask *ask, lw_answer gathers,
                          lw_answer loses)
{
    lw_ask towed = *ask;
    lw_answer answer = gathers;
    for (int i = 0; i < HALVES; i++) {
        lw_ask_follow(craft, &towed, &gathers);
        lw_ask_give_speed(&towed, 0.5 * (gathers.flight.speed + loses.flight.speed));
        lw_balance(craft, &towed, &answer, 1);
        if (!is_found(&answer)) break;
        *(answer.flight.acceleration > 0.0 ? &gathers : &loses) = answer;
    }
    lw_ask steady = *ask;
    lw_ask_follow(craft, &steady, &gathers);
    lw_balance(craft, &steady, &answer, 1);
    return answer;
}

lw_answer lw_afloat(const lw_craft *craft, const lw_ask *ask, double slow, double fast)
{
    lw_answer at[SPEEDS], answer = {.outcome = LW_NO_BALANCE};
    const int speeds = tow(craft, ask, slow, fast, at);
    for (int i = 0; i < speeds && ask->gives_speed; i++) {
        if (is_found(&at[i])) return at[i];
    }
    for (int i = 0; i + 1 < speeds && !is_found(&answer); i++) {
        const bool are_found = is_found(&at[i]) && is_found(&at[i + 1]);
        if (!are_found || at[i].flight.acceleration <= 0.0) continue;
        if (at[i + 1].flight.acceleration > 0.0) continue;
        answer = bisected(craft, ask, at[i], at[i + 1]);
    }
    return answer;
}
