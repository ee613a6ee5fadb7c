// ride.h - `lullwise ride`: boat and sailor through the day's gusts and chop, once or many times.
// SPDX-License-Identifier: MIT

#ifndef LW_ANSWER_RIDE_H
#define LW_ANSWER_RIDE_H

#include "answer/question.h"
#include "lullwise/flown.h"
#include "lullwise/ride.h"

// One ride as it goes: its events, and a row of its history every so often.
typedef struct lw_ride_log {
    size_t every, left;  // steps of the motion: from row to row, and still to be made
    lw_ride ride;
    lw_trace *rows;
    size_t row_count, row_room;
} lw_ride_log;

// From its beginning on: `seconds` long, with a row each `every` [s]. False when there is no
// memory.
bool lw_ride_log_begin(lw_ride_log *log, const lw_ridden *ridden, double seconds, double every);
void lw_ride_log_release(lw_ride_log *log);
void lw_ride_log_row(lw_ride_log *log, const lw_motion *motion);  // as far as the next row

// Many rides, a seed each from the plan's on. They are sailed in rounds, so that which are sailed
// depends neither on the number of cores nor on their speed.
typedef struct lw_ride_many {
    size_t most;             // rides
    double error;            // ends when every rate is known to this part
    lw_ride_tally *tallies;  // of those that were sailed to their end, by seed
    size_t first, end;       // rides of this round
    size_t steps_before;     // of the rounds before
    lw_ride_sample sample;   // of those rounds
    bool is_sure, is_over;   // known well enough; and the last round has ended
} lw_ride_many;

typedef struct lw_rode {
    lw_inputs inputs;
    lw_ridden ridden;    // what is asked
    lw_unit speed_unit;  // of speeds in sentences; LW_UNIT_NONE: knots
    double seconds;      // of each ride
    bool is_many, is_stopped;
    bool (*wants_end)(void);  // or NULL
    lw_ride_log log;          // of one
    lw_ride_many many;
} lw_rode;

bool lw_rode_many_begin(lw_rode *rode);  // false: no memory
size_t lw_rode_many_steps(lw_rode *rode);
void lw_rode_many_step(lw_rode *rode, size_t step);
void lw_rode_many_end(lw_rode *rode);

// The answer of one ride without its history, and of many.
void lw_rode_tell_one(const lw_rode *rode, lw_teller *teller);
void lw_rode_tell_many(const lw_rode *rode, lw_teller *teller);

// The faces of the question.
bool lw_rode_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                   lw_refusal *refusal);
size_t lw_rode_steps(void *it);
void lw_rode_step(void *it, size_t step);
bool lw_rode_are_apart(const void *it);
void lw_rode_end(void *it);
void lw_rode_release(void *it);
bool lw_rode_is_answered(const void *it);
void lw_rode_tell(const void *it, lw_teller *teller);
void lw_rode_draw(const void *it, FILE *out);
void lw_rode_log(const void *it, FILE *out);

#endif
