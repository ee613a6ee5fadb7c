// lesson.h - what a day that was sailed tells of a boat.
// SPDX-License-Identifier: MIT

#ifndef LW_LESSON_H
#define LW_LESSON_H

#include "lullwise/hidden.h"

// Of one day; NAN: not told. A row's error is the number's own, without that of the wind, nor that
// of gusts and waves, which are no two days the same.
typedef struct lw_lesson {
    double upwind_turns, reach_turns, downwind_turns;        // [turns] rudder lift on, as most used
    double upwind_speed, reach_speed, downwind_speed;        // [m/s]   mean while she flew
    double upwind_scatter, reach_scatter, downwind_scatter;  // [m/s]   of that
    double flying;                                           // [-]     part of the time under way
    double swims;                                            // [1/s]
} lw_lesson;
#define LW_LESSON_COUNT (sizeof(lw_lesson) / sizeof(double))

// Rows of a kind, one for each course but of the last two.
typedef enum lw_lesson_kind {
    LW_LESSON_TURNS,
    LW_LESSON_SPEED,
    LW_LESSON_SCATTER,
    LW_LESSON_FLYING,
    LW_LESSON_SWIMS,
    LW_LESSON_KINDS
} lw_lesson_kind;
lw_lesson_kind lw_lesson_kind_of(size_t row);
size_t lw_lesson_first(lw_lesson_kind kind);  // row of it

extern const lw_table lw_lesson_table;

#define LW_WIND_ERROR (0.7 * LW_KN)  // of a day's mean wind as read, where she sailed  [judged]

typedef struct lw_lesson_day {
    size_t pin;
    double wind;  // mean [m/s] at the height of the season's day
    lw_lesson told;
    lw_lesson seconds;  // [s] that each was told of; of turns none
} lw_lesson_day;

typedef struct lw_season {
    const lw_boat *boat;
    const lw_sections *sections;
    const lw_person *person;
    lw_day day;  // water, air, sea and how far puffs go above the mean, in the middle of the days
    const lw_lesson_day *days;
    size_t count;
    double asked;  // [m/s] a mean wind that is asked about, too; 0: none
    double leg;    // [s] of a ride; LW_SEASON_LEG, or less to be quick
} lw_season;
#define LW_SEASON_LEG 150.0  // [judged]

// The lesson of a logged day sailed with this pin. Speeds flown for a minute count  [judged]. Where
// nobody says how long she was afloat, swims tell nothing.
lw_lesson_day lw_lesson_of(const lw_logged *logged, size_t pin);

// Moves the middle of so many days on for one more; the first replaces what stood there.
void lw_season_day_add(lw_day *day, size_t before, const lw_logged *logged);

#endif
