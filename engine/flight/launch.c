// launch.c - the hump between sailing on the hull and flying.
// SPDX-License-Identifier: MIT
//
// At each speed from rest the boat is balanced as if towed, with a few places of the sailor and
// settings of the rudder to choose from; what drive is left over speeds her up. She launches when
// something is left at every speed until the hull is clear.

#include <math.h>

#include "lullwise/range.h"

#define SPEEDS   18
#define PLACES   3
#define RUDDERS  4
#define CHOICES  (PLACES * RUDDERS)
#define FINER    4
#define FIRST    1.0   // [m/s]
#define STEP     0.5   // [m/s]

// Incidence of the rudder foil over the range of the thread.
static double rudder_of(const lw_craft *craft, int i)
{
    const double part = (double)i / (RUDDERS - 1);
    const double low = fmax(craft->least_turns, -4.0), high = fmin(craft->most_turns, 4.0);
    return craft->rudder_mark + craft->rudder_turn * (low + part * (high - low));
}

static void choices_of(const lw_craft *craft, const lw_setup *setup, double wind, double heading,
                       lw_ask asks[CHOICES])
{
    for (int i = 0; i < CHOICES; i++) {
        lw_ask *ask = &asks[i];
        *ask = lw_ask_of(craft, setup, wind, heading);
        const double part = (double)(i % PLACES) / (PLACES - 1);
        ask->place = craft->place_aft + part * (craft->place_forward - craft->place_aft);
        ask->rudder = rudder_of(craft, i / PLACES);
        ask->level = false;
        ask->towed = true;
        ask->heel = 0.05;  // [judged] nearly upright
        const double start[6] = {FIRST, 0.1, -0.12, 0.0, 0.0, 0.3};
        for (int k = 0; k < 6; k++) ask->start[k] = start[k];
    }
}

// The choice that speeds her up most, or NULL when none balances.
static const lw_answer *best_of(const lw_answer answers[], int n)
{
    const lw_answer *best = NULL;
    for (int i = 0; i < n; i++) {
        if (answers[i].outcome == LW_NO_BALANCE || answers[i].margins.power < 0.0) continue;
        if (!best || answers[i].flight.acceleration > best->flight.acceleration) best = &answers[i];
    }
    return best;
}

// Half a step either way in place and rudder from the best choice: a finer look where it counts.
static void finer_of(const lw_craft *craft, const lw_ask *best, lw_ask asks[FINER])
{
    const double place = 0.5 * (craft->place_forward - craft->place_aft) / (PLACES - 1);
    const double rudder = 0.5 * (rudder_of(craft, 1) - rudder_of(craft, 0));
    for (int i = 0; i < FINER; i++) asks[i] = *best;
    asks[0].place = fmin(best->place + place, craft->place_forward);
    asks[1].place = fmax(best->place - place, craft->place_aft);
    asks[2].rudder = fmin(best->rudder + rudder, rudder_of(craft, RUDDERS - 1));
    asks[3].rudder = fmax(best->rudder - rudder, rudder_of(craft, 0));
}

// Speed at which the acceleration goes through zero between two speeds.
static double stall_speed(double v_0, double a_0, double v_1, double a_1)
{
    return a_0 > 0.0 ? v_0 + (v_1 - v_0) * a_0 / (a_0 - a_1) : v_1;
}

lw_launch lw_launch_of(const lw_craft *craft, const lw_setup *setup, double wind, double heading)
{
    lw_ask asks[CHOICES], finer[FINER];
    lw_answer answers[CHOICES], closer[FINER];
    choices_of(craft, setup, wind, heading, asks);
    lw_launch launch = {.hump_spare = 1e9};
    double before = 0.0;
    for (int k = 0; k < SPEEDS; k++) {
        const double V = FIRST + STEP * k;
        for (int i = 0; i < CHOICES; i++) asks[i].start[0] = V;
        lw_balance(craft, asks, answers, CHOICES);
        for (int i = 0; i < CHOICES; i++) lw_ask_follow(craft, &asks[i], &answers[i]);
        const lw_answer *best = best_of(answers, CHOICES);
        if (!best) continue;
        finer_of(craft, &asks[best - answers], finer);
        lw_balance(craft, finer, closer, FINER);
        const lw_answer *better = best_of(closer, FINER);
        if (better && better->flight.acceleration > best->flight.acceleration) best = better;
        const double a = best->flight.acceleration;
        if (a < launch.hump_spare) launch.hump_spare = a, launch.hump_speed = V;
        if (a <= 0.0) {
            launch.speed = stall_speed(V - STEP, before, V, a);
            return launch;
        }
        launch.speed = V;
        launch.seconds += STEP / a;
        launch.flies = best->outcome == LW_FLIES;
        if (launch.flies) return launch;
        before = a;
    }
    return launch;
}
