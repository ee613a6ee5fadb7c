// ride_many.h - many rides, a seed each, on all cores.
// SPDX-License-Identifier: MIT

#ifndef LW_RIDE_MANY_H
#define LW_RIDE_MANY_H

#include <jansson.h>
#include <stdio.h>

#include "answer/words/ridden.h"
#include "lullwise/ride.h"

typedef struct lw_ride_many {
    const lw_ridden *ridden;  // the plan's seed is that of the first
    double seconds;           // of each
    size_t most;              // rides
    double error;             // ends when every rate is known to this part
    lw_ride_tally *tallies;   // of those that were sailed to their end, by seed
    lw_ride_sample sample;    // of them
    bool is_sure, is_stopped;
} lw_ride_many;

// Which rides are sailed depends neither on the number of cores nor on their speed. False when
// there is no memory.
bool lw_ride_many_fill(lw_ride_many *many);
void lw_ride_many_free(lw_ride_many *many);

void lw_ride_many_print(FILE *out, const lw_ride_many *many);
json_t *lw_ride_many_json(const lw_ride_many *many);

#endif
