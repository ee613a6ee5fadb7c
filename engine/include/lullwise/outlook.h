// outlook.h - all that a choice rests on: the range of each pin on each course, and rides.
// SPDX-License-Identifier: MIT

#ifndef LW_OUTLOOK_H
#define LW_OUTLOOK_H

#include "lullwise/aim.h"
#include "lullwise/block.h"
#include "lullwise/day.h"
#include "lullwise/draw.h"
#include "lullwise/range.h"

// Winds of the day at its height.
typedef struct lw_gusts {
    double lull, mean, puff;  // [m/s]
    double period;            // [s]
} lw_gusts;

// In a wind whose mean is another, lull and puff in proportion.
lw_gusts lw_gusts_at(lw_gusts gusts, double mean);

// Worked out once for a boat, a sailor and a day.
typedef struct lw_outlook {
    lw_boat boat;
    lw_person person;
    lw_sections sections;
    lw_craft craft;
    lw_gusts gusts;
    lw_cost cost;
    lw_aim aim;
    lw_effort effort;
    size_t pin_count, course_count, leg_count;
    lw_course courses[LW_COURSES_MOST];
    size_t leg_course[LW_LEGS_MOST];
    double leg_length[LW_LEGS_MOST];
    double
        reach_launch[LW_PINS_MOST];  // [m/s] least wind in which she launches bearing away; 0: none
    double relaunch[LW_PINS_MOST];   // [s] to launch again after a swim, bearing away
    double most_turns[LW_PINS_MOST];  // of lw_outlook_most_turns in the mean wind
    lw_range ranges[LW_PINS_MOST][LW_COURSES_MOST];
    lw_weather weather;
    lw_ride_plan plans[LW_RIDE_WINDS][LW_PINS_MOST][LW_COURSES_MOST];    // once they are asked for
    lw_wishes wishes[LW_RIDE_WINDS][LW_PINS_MOST][LW_COURSES_MOST];      // theirs
    signed char has_plan[LW_RIDE_WINDS][LW_PINS_MOST][LW_COURSES_MOST];  // 1; -1: she never flies
    lw_craft drawn[LW_DRAWS];                                            // once they are asked for
    bool has_drawn[LW_DRAWS];
    lw_block blocks[LW_BLOCKS];
    bool is_done[LW_PINS_MOST * LW_COURSES_MOST + 2 * LW_BLOCKS];           // by step
    bool is_decided, rides_more[LW_PINS_MOST];                              // which pins ride again
    lw_ride_sums sums[LW_SETS];                                             // as is
    double rate[2][LW_SETS][LW_PINS_MOST][LW_COURSES_MOST][LW_RIDE_WINDS];  // [1/s] of swims,
        // fitted: of each set as is, and of its draws
    lw_swims swims[LW_PINS_MOST][LW_COURSES_MOST];  // of all blocks
    double pace[LW_PINS_MOST][LW_COURSES_MOST];  // factor on speeds, for a boat a little different
} lw_outlook;

// The day must be settled (day.h). At most LW_COURSES_MOST different headings count as courses;
// further legs take the nearest. About 5 MB: keep it off the stack.
void lw_outlook_prepare(lw_outlook *outlook, const lw_boat *boat, const lw_sections *sections,
                        const lw_person *person, const lw_day *day);

// The same in steps, for a caller that shows progress, stops, or shares them out:
//
//     lw_outlook_begin(outlook, ...)              then, if other effort is wanted, outlook->effort
//     for (done = 0; done < (n = lw_outlook_steps(outlook)); done = n)
//         lw_outlook_step(outlook, k)             each k from done up to n, in any order
//     lw_outlook_end(outlook)
//
// First come the pins on their courses, then the blocks of rides, then more rides if pins are not
// told apart from the first. What a step works out can be given to another outlook that has begun
// the same.
void lw_outlook_begin(lw_outlook *outlook, const lw_boat *boat, const lw_sections *sections,
                      const lw_person *person, const lw_day *day);
size_t lw_outlook_steps(lw_outlook *outlook);
bool lw_outlook_is_whole(lw_outlook *outlook);  // all steps that there will be are done
void lw_outlook_step(lw_outlook *outlook, size_t step);
void lw_outlook_end(lw_outlook *outlook);
void lw_outlook_work_out(lw_outlook *outlook);  // all steps of one that has begun, and its end

// Begun again: what steps worked out is forgotten.
void lw_outlook_forget(lw_outlook *outlook);

typedef struct lw_outlook_part {
    lw_range range;
    double reach_launch, relaunch, most_turns;
    lw_block block;
} lw_outlook_part;
void lw_outlook_give(const lw_outlook *outlook, size_t step, lw_outlook_part *to);
void lw_outlook_take(lw_outlook *outlook, size_t step, const lw_outlook_part *from);

// The k-th mean wind [m/s] that is ridden in, of LW_RIDE_WINDS.
double lw_outlook_wind(const lw_outlook *outlook, size_t k);

// Greatest puffs [m/s] in which a pin is held on a course, by margins and by rides; 0: none, or
// less than the wind in which she stays up.
double lw_outlook_hold(const lw_outlook *outlook, size_t pin, size_t course);

// The course of the longest leg, on which rudder turns are told.
size_t lw_outlook_longest(const lw_outlook *outlook);

// Rudder turns that hold most in a wind [m/s] on that course, of flights whose heading, heel and
// place are those for speed; straight between knots. NAN: none there keeps its margins.
double lw_outlook_most_turns(const lw_outlook *outlook, size_t pin, double wind);

// The course on which a pin is held least.
size_t lw_outlook_hardest(const lw_outlook *outlook, size_t pin);

// Whether swims end it, in less wind than the margins do.
bool lw_outlook_hold_ends_by_rides(const lw_outlook *outlook, size_t pin, size_t course);

#endif
