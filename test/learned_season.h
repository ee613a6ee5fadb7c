// learned_season.h - seasons of made-up days of a boat whose hidden quantities are known.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_LEARNED_SEASON_H
#define LW_TEST_LEARNED_SEASON_H

#include <string.h>

#include "learning/evidence.h"
#include "lullwise/weather.h"
#include "test/demo.h"

#define MADE_DAYS 40
#define LEG       20.0   // [s] of a ride, when there is no time
#define TOLD      300.0  // [s] that a day tells of each number

typedef struct made_season {
    lw_lesson_day days[MADE_DAYS];
    double winds[MADE_DAYS];  // that blew; the days have them as read
    lw_season season;
    lw_hidden truth;
    lw_flights flights;  // with it
} made_season;

static void fly_with(const made_season *made, const lw_hidden *hidden, lw_flights *flights)
{
    static lw_walk walks[LW_COURSE_COUNT];
    static lw_craft craft;
    const lw_medium medium = lw_medium_of(&made->season.day);
    lw_craft_prepare(&craft, &demo.boat, &demo.sections, &demo.sailor.person, &medium);
    memset(flights, 0, sizeof *flights);
    for (size_t pin = 0; pin < demo.boat.pin_count; pin++) {
        const lw_trying trying = {&made->season, &craft, *hidden, pin};
        lw_flights_add(flights, &trying, walks, true);
    }
}

// The demo boat, with all her pins when there is time, else with one of them.
static void begin_season(made_season *made)
{
    const char *why;
    read_demo();
    CHECK(lw_day_settle(&demo.day, &why));
    if (soak_times() == 1 && demo.boat.pin_count > 1) {
        demo.boat.pins[0] = demo.boat.pins[1];
        demo.boat.pin_count = 1;
    }
    made->season = (lw_season){.boat = &demo.boat,
                               .sections = &demo.sections,
                               .person = &demo.sailor.person,
                               .day = demo.day,
                               .days = made->days,
                               .count = MADE_DAYS,
                               .asked = demo.day.wind.mean,
                               .leg = soak_times() == 1 ? LEG : LW_SEASON_LEG};
}

// Hidden quantities by chance, as often as thought before, within twice their errors.
static void hide(const lw_learning *learning, lw_seed *seed, made_season *made)
{
    double z[LW_UNKNOWNS] = {0.0};
    for (size_t k = 0; k < LW_HIDDEN_COUNT; k++) {
        do z[k] = lw_seed_normal(seed);
        while (fabs(z[k]) > 2.0);
    }
    made->truth = lw_hidden_at(learning, z);
}

// The stronger the wind, the more often the pin with less lift.
static void blow(lw_seed *seed, made_season *made)
{
    for (size_t i = 0; i < MADE_DAYS; i++) {
        const double part = lw_seed_uniform(seed);
        const double pin = part * (double)demo.boat.pin_count + lw_seed_uniform(seed) - 0.5;
        made->winds[i] = (soak_times() == 1 ? 10.0 + 4.0 * part : 8.0 + 12.0 * part) * LW_KN;
        made->days[i] =
            (lw_lesson_day){.pin = (size_t)fmin(fmax(pin, 0.0), (double)(demo.boat.pin_count - 1)),
                            .wind = made->winds[i]};
    }
}

// Each number with its own error, each wind read with its own; nobody counts swims.
static void sail(lw_seed *seed, made_season *made)
{
    fly_with(made, &made->truth, &made->flights);
    for (size_t i = 0; i < MADE_DAYS; i++) {
        lw_lesson_day *day = &made->days[i];
        for (size_t row = 0; row < LW_LESSON_COUNT; row++) {
            const lw_quantity *number = &lw_lesson_table.rows[row];
            const double off = number->error * lw_unit_in_si(number->unit) * lw_seed_normal(seed);
            lw_quantity_put(number, &day->seconds, TOLD);
            lw_quantity_put(number, &day->told,
                            off + lw_flights_lesson(&made->flights, day->pin, day->wind, row));
        }
        day->told.swims = NAN;
        day->wind += LW_WIND_ERROR * lw_seed_normal(seed);
    }
}

static void learn(lw_learning *learning)
{
    for (size_t steps, done = 0; done < (steps = lw_learning_steps(learning));) {
        for (; done < steps; done++) lw_learning_step(learning, done);
    }
}

// Root mean square over all days of what is foreseen less what is so, without anybody's noise.
static double off_by(const made_season *made, const lw_flights *foreseen, size_t kind)
{
    double sum = 0.0, count = 0.0;
    for (size_t i = 0; i < MADE_DAYS; i++) {
        for (size_t c = 0; c < LW_COURSE_COUNT; c++) {
            const size_t row = kind * LW_COURSE_COUNT + c, pin = made->days[i].pin;
            const double off = lw_flights_lesson(foreseen, pin, made->winds[i], row) -
                               lw_flights_lesson(&made->flights, pin, made->winds[i], row);
            if (isnan(off)) continue;
            sum += off * off;
            count += 1.0;
        }
    }
    return sqrt(sum / count);
}

#endif
