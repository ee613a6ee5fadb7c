// track.c - an invented zigzag to windward and back, and what it tells of wind, flights and turns.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdio.h>

#include "lullwise/lullwise.h"

#define SECONDS 1200
#define WIND    (240.0 * LW_DEG)  // where it comes from

// 48 deg from it at 13 kn upwind, 136 deg at 17 kn downwind; another tack every two minutes, with
// ten seconds at 5 kn after it.
static double angle_at(int second)
{
    const double side = second / 120 % 2 ? -1.0 : 1.0;
    return side * (second < SECONDS / 2 ? 48.0 : 136.0) * LW_DEG;
}
static double speed_at(int second)
{
    if (second % 120 < 10 && second > 10) return 5.0 * LW_KN;
    return (second < SECONDS / 2 ? 13.0 : 17.0) * LW_KN;
}

int main(void)
{
    static lw_fix fixes[SECONDS];
    static lw_track_way ways[SECONDS];
    static lw_track_room room;
    lw_track_event list[100];
    double east = 0.0, north = 0.0;
    for (int i = 0; i < SECONDS; i++) {
        fixes[i] = (lw_fix){.time = i, .east = east, .north = north, .speed = NAN, .course = NAN};
        east += speed_at(i) * lw_sin(WIND + angle_at(i));
        north += speed_at(i) * lw_cos(WIND + angle_at(i));
    }

    // No wind is given: it is found by the sailing.
    lw_track track = {fixes, ways, SECONDS};
    lw_track_events events = {.list = list, .room = 100};
    lw_track_summary found;
    const lw_track_known known = {NAN, NAN, {LW_TRACK_UP, LW_TRACK_DOWN}};
    lw_track_summary_of(&track, &known, &room, &events, &found);

    printf("wind from %.0f deg, give or take %.0f\n", found.from / LW_DEG, found.error / LW_DEG);
    printf("flying %.0f %% of the time under way\n",
           100.0 * found.sum.flying / found.sum.under_way);
    for (int what = 0; what < LW_TRACK_EVENTS; what++) {
        printf("%s %zu times\n", lw_track_event_text((lw_track_what)what), found.sum.count[what]);
    }
    printf("best 500 m %.1f kn\n", found.best[3] / LW_KN);
    return 0;
}
