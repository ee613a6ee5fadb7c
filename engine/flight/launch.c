// launch.c - the hump between sailing on the hull and flying.
// SPDX-License-Identifier: MIT
//
// At each speed from rest the boat is balanced as if towed, the rudder wound as she will fly or
// with less lift on, as one winds it off to get the bow up, and the sailor free to move along the
// boat; what drive is left over speeds her up. She launches when something is left at every speed
// until the hull is clear, the bow no further up than her sailor lets it.

#include <math.h>

#include "linkage/linkage.h"
#include "lullwise/range.h"
#include "solve/within.h"

#define SPEEDS 16
#define FIRST  1.5  // [m/s]
#define STEP   0.5  // [m/s]
#define PLACES 6    // of the sailor, from aft to forward
#define WOUND  3    // turns tried: as for the flight to follow, and less, which lets the bow up
#define OFF    1.5  // [turns] from one to the next  [judged]
enum { WAYS = PLACES * WOUND };

// The ask begun on the hull: nearly upright, the rudder as in the flight to follow.
static lw_ask afloat(lw_ask ask, double rudder)
{
    lw_ask_give_rudder(&ask, rudder);
    ask.heel = 0.05;  // [judged]
    ask.start = (lw_ask_start){.leeway = 0.1, .ride_height = -0.12, .effort = 0.3};
    return ask;
}

// From there, the sailor in every place along the boat and the rudder wound as far or less.
static void asks_of(const lw_craft *craft, const lw_ask *start, lw_ask asks[WAYS])
{
    const double least = lw_craft_rudder(craft, craft->least_turns);
    const double rudder = lw_ask_rudder(start);
    for (int i = 0; i < WAYS; i++) {
        lw_ask *ask = &asks[i];
        *ask = *start;
        const int place = i % PLACES, wound = i / PLACES;
        const double part = (double)place / (PLACES - 1);
        ask->place = craft->place_aft + part * (craft->place_forward - craft->place_aft);
        lw_ask_give_rudder(ask, fmax(rudder - OFF * wound * craft->rudder_turn, least));
    }
}

// Ride height from which a flight is sought: lower or higher the flap would be at a stop, and no
// lift would be lost by rising a little.
static double aloft(const lw_craft *craft, const lw_setup *setup)
{
    const double pivot =
        lw_linkage_middle(&craft->linkage, setup->wand_length, setup->gearing, setup->rod);
    const double deep = craft->main_strut.length;
    return lw_within(pivot + deep - craft->wand_z, 0.1 * deep, 0.8 * deep);
}

// In flight with the bow no further up than this sailor lets it.
static bool is_let_fly(const lw_craft *craft, const lw_answer *answer)
{
    return answer->outcome == LW_FLIES && answer->flight.pitch <= craft->most_bow_up;
}

// As towed at a speed. Where there is no balance on the hull any more, because she rises, a flight
// is sought.
static void tow(const lw_craft *craft, double V, lw_ask asks[WAYS], lw_answer answers[WAYS])
{
    lw_ask rising[WAYS];
    lw_answer found[WAYS];
    size_t way[WAYS], n = 0;
    const double height = aloft(craft, &asks[0].setup);
    for (int i = 0; i < WAYS; i++) lw_ask_give_speed(&asks[i], V);
    lw_balance(craft, asks, answers, WAYS);
    for (size_t i = 0; i < WAYS; i++) {
        if (answers[i].outcome == LW_FLOATS || is_let_fly(craft, &answers[i])) continue;
        answers[i].outcome = LW_NO_BALANCE;
        rising[n] = asks[i];
        rising[n].start.ride_height = height;
        way[n++] = i;
    }
    lw_balance(craft, rising, found, n);
    for (size_t k = 0; k < n; k++) {
        if (is_let_fly(craft, &found[k])) answers[way[k]] = found[k];
    }
    for (int i = 0; i < WAYS; i++) lw_ask_follow(craft, &asks[i], &answers[i]);
}

// The place and turns that speed her up most, or NULL when none balances.
static const lw_answer *best_of(const lw_answer answers[WAYS])
{
    const lw_answer *best = NULL;
    for (int i = 0; i < WAYS; i++) {
        if (answers[i].outcome == LW_NO_BALANCE || answers[i].margins.power < 0.0) continue;
        if (!best || answers[i].flight.acceleration > best->flight.acceleration) best = &answers[i];
    }
    return best;
}

// Speed at which the acceleration goes through zero between two speeds.
static double stall_speed(double v_0, double a_0, double v_1, double a_1)
{
    return a_0 > 0.0 ? v_0 + (v_1 - v_0) * a_0 / (a_0 - a_1) : v_1;
}

lw_launch lw_launch_of(const lw_craft *craft, const lw_setup *setup, double rudder, double wind,
                       double heading)
{
    lw_ask asks[WAYS];
    lw_answer answers[WAYS];
    const lw_ask start = afloat(lw_ask_of(craft, setup, wind, heading), rudder);
    asks_of(craft, &start, asks);
    lw_launch launch = {.hump_spare = 1e9};
    double before = 0.0;
    for (int k = 0; k < SPEEDS; k++) {
        const double V = FIRST + STEP * k;
        tow(craft, V, asks, answers);
        const lw_answer *best = best_of(answers);
        if (!best) continue;
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
