// block.h - rides of a day in blocks, and how much is ridden.
// SPDX-License-Identifier: MIT

#ifndef LW_BLOCK_H
#define LW_BLOCK_H

#include <stdbool.h>
#include <stdint.h>

#include "lullwise/boat.h"
#include "lullwise/chance.h"
#include "lullwise/ride.h"
#include "lullwise/swims.h"

#define LW_COURSES_MOST 4

// What rides of one pin on one course came to, from the first second to the last.
typedef struct lw_ride_sum {
    double seconds;  // [s]  under way: all but lying in the water after a swim
    double along;    // [m]  made good along the course
    double flown;    // [s]
    double swims;
} lw_ride_sum;

typedef lw_ride_sum lw_ride_sums[LW_RIDE_WINDS][LW_PINS_MOST][LW_COURSES_MOST];

// A block of rides: one stretch of gusts and waves, which all pins meet.
typedef struct lw_block {
    lw_ride_sums as_is;                  // boat, sailor and judged numbers as given
    lw_ride_sums drawn[LW_BLOCK_DRAWS];  // drawn within their errors (draw.h)
    // How each draw is sailed in the mean wind, where it is known: for those that ride more.
    lw_ride_plan plans[LW_BLOCK_DRAWS][LW_PINS_MOST][LW_COURSES_MOST];
    bool has_plan[LW_BLOCK_DRAWS][LW_PINS_MOST][LW_COURSES_MOST];
} lw_block;

// How much is ridden. All pins and courses of a block and a wind have the same gusts and waves;
// what draws ride more has others, of each draw its own.
typedef struct lw_effort {
    double seconds;       // [s] each ride
    double drawn;         // [s] each ride of a draw, in the day's own wind and some others
    bool rides_all;       // each block in every wind; else all in the day's own, half in each other
    double more;          // [s] more of each draw in the day's wind, of pins tied with the first
    uint64_t first_seed;  // rides have seeds from this on
    unsigned first_draw;  // and draws numbers: from a multiple of LW_DRAWS on, others each time
} lw_effort;

lw_effort lw_effort_usual(void);     // of a ranking
lw_effort lw_effort_thorough(void);  // of hold or stop, and of the swims in every wind

#endif
