// foreseen.h - what of a day is foreseen, along the wind.
// SPDX-License-Identifier: MIT

#ifndef LW_FORESEEN_H
#define LW_FORESEEN_H

#include "lullwise/lesson.h"
#include "lullwise/range.h"

// A steady flight trimmed for speed.
typedef struct lw_foreseen {
    double turns;      // [turns] NAN: does not fly, or does not keep her margins
    double speed;      // [m/s]
    double made_good;  // [m/s] along the course
} lw_foreseen;

// Winds in which she is ridden, where the season has days beside them.
#define LW_RIDDEN_FIRST (6.0 * LW_KN)
#define LW_RIDDEN_APART (2.0 * LW_KN)
#define LW_RIDDEN_WINDS 12
#define LW_RIDDEN_REACH (2.5 * LW_KN)  // of a day's wind, within which she is ridden

typedef struct lw_flights {
    lw_foreseen of[LW_PINS_MOST][LW_COURSE_COUNT][LW_RANGE_WINDS];
    lw_lesson ridden[LW_PINS_MOST][LW_RIDDEN_WINDS];  // but the turns; NAN: not ridden, or not told
} lw_flights;

// How many of them there are, of all pins.
size_t lw_season_winds(const lw_season *season);

// What is tried with one pin.
typedef struct lw_trying {
    const lw_season *season;
    const lw_craft *craft;  // as measured: others have its hull's form
    lw_hidden hidden;
    size_t pin;
} lw_trying;

// Flies it, rides it or leaves the rides that there are, and keeps the walks.
void lw_flights_add(lw_flights *flights, const lw_trying *trying, lw_walk walks[LW_COURSE_COUNT],
                    bool rides);

// A little beside what was walked: steady flights from there in about the winds of the days, and
// rides in every so-many-th wind; 0: none.
void lw_flights_add_beside(lw_flights *flights, const lw_trying *trying,
                           const lw_walk walks[LW_COURSE_COUNT], size_t every);

// The steady flights of others, with the rudder wound otherwise.
void lw_flights_add_wound(lw_flights *flights, const lw_flights *others, size_t pin, double turns);

// A row of the lessons, foreseen in a wind: straight between the knots.
double lw_flights_lesson(const lw_flights *flights, size_t pin, double wind, size_t row);

#endif
