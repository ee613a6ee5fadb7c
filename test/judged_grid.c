// judged_grid.c - swims an hour of a practised sailor on the demo boat, in four numbers.
// SPDX-License-Identifier: MIT
//
// Prints those of B, C and D on four courses in 12, 16 and 20 kn; of all pins there in 10 kn; of
// taking off, all pins from rest upwind and down in 9 and 11 kn; and of a pin that is too strong, A
// downwind in 16 and 18 kn. Eight seeds of ten minutes, of four when she takes off. test/judged.mjs
// asks it with judged numbers that are others.

#include <stdio.h>

#include "lullwise/flown.h"
#include "lullwise/swims.h"
#include "test/demo.h"

#define SEEDS   8
#define COURSES 4

static lw_craft craft;
static lw_weather weather;
static lw_range ranges[LW_PINS_MOST][COURSES];
static lw_course courses[COURSES];

// What rides of some pins on some courses in some winds came to.
typedef struct sailed {
    double swims, seconds;
} sailed;

static void add_rides(size_t pin, size_t course, double wind, bool is_rest, sailed *sum)
{
    static lw_ride rides[SEEDS];
    const lw_range_point *point = lw_range_sailed(&ranges[pin][course], wind);
    if (!point) return;
    const lw_setup setup = lw_craft_setup(&craft, &demo.boat, pin);
    const lw_ask ask = lw_ask_as(&craft, &setup, &point->trimmed);
    lw_motion motion = lw_motion_of(&craft);
    lw_weather_put(&weather, wind, &motion);
    lw_ride_plan plan = lw_ride_plan_of(&motion, &ask, &point->trimmed);
    lw_ride_plan_wind(&plan, &craft, &ranges[pin][course]);
    if (is_rest) plan.starts_aloft = false, plan.start = plan.rest;
    for (int i = 0; i < SEEDS; i++) {
        plan.seed = (uint64_t)i + 1;
        rides[i].events = NULL, rides[i].event_room = 0;
        lw_ride_begin(&rides[i], &motion, &plan);
    }
    const double seconds = is_rest ? 240.0 : 600.0;
    lw_rides_advance(&motion, rides, SEEDS, (size_t)(seconds / motion.parameters.step));
    for (int i = 0; i < SEEDS; i++) {
        sum->swims += lw_ride_tally_swims(&rides[i].tally);
        sum->seconds += rides[i].tally.seconds - rides[i].tally.swimming;
    }
}

static double an_hour(const sailed *sum) { return 3600.0 * sum->swims / sum->seconds; }

static void work_out_ranges(void)
{
    const double reaches[] = {75.0 * LW_DEG, 100.0 * LW_DEG};
    const lw_medium medium = lw_medium_of(&demo.day);
    lw_craft_prepare(&craft, &demo.boat, &demo.sections, &demo.sailor.person, &medium);
    weather = lw_weather_of(&craft, &demo.day);
    courses[0] = lw_course_of(LW_UPWIND), courses[3] = lw_course_of(LW_DOWNWIND);
    for (int i = 0; i < 2; i++) courses[1 + i] = (lw_course){reaches[i], reaches[i], reaches[i]};
    for (size_t pin = 0; pin < demo.boat.pin_count; pin++) {
        const lw_setup setup = lw_craft_setup(&craft, &demo.boat, pin);
        for (size_t c = 0; c < COURSES; c++)
            lw_range_of(&craft, &setup, courses[c], 2.5 * LW_KN, &ranges[pin][c]);
    }
}

int main(void)
{
    sailed grid = {0}, light = {0}, rising = {0}, strong = {0};
    read_demo();
    work_out_ranges();
    for (size_t pin = 0; pin < demo.boat.pin_count; pin++) {
        for (size_t c = 0; c < COURSES; c++) {
            const bool is_along = c == 0 || c == COURSES - 1;
            for (double kn = 12.0; pin > 0 && kn <= 20.0; kn += 4.0)
                add_rides(pin, c, kn * LW_KN, false, &grid);
            add_rides(pin, c, 10.0 * LW_KN, false, &light);
            for (double kn = 9.0; is_along && kn <= 11.0; kn += 2.0)
                add_rides(pin, c, kn * LW_KN, true, &rising);
        }
    }
    for (double kn = 16.0; kn <= 18.0; kn += 2.0)
        add_rides(0, COURSES - 1, kn * LW_KN, false, &strong);
    printf("%.2f / %.2f / %.1f / %.0f\n", an_hour(&grid), an_hour(&light), an_hour(&rising),
           an_hour(&strong));
    return 0;
}
