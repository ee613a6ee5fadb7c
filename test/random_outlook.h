// random_outlook.h - outlooks of random days: sections of a few boats, ranges from a pool, rides
// of any kind.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_RANDOM_OUTLOOK_H
#define LW_TEST_RANDOM_OUTLOOK_H

#include "lullwise/outlook.h"
#include "test/random_boat.h"

// Every other boat may well sail; the rest are anything that a file may say.
static inline boat_kind kind_of(int run) { return run % 2 ? BOAT_ANY : BOAT_USUAL; }

// Sections of a few random boats: they take too long to be worked out for every one.
#define SECTIONS 6
static inline const lw_sections *random_sections(random_stream *stream)
{
    static lw_polar_room room;
    static lw_sections sections[SECTIONS];
    static int ready;
    for (; ready < SECTIONS; ready++) {
        random_stream own = {100 + ready};
        long again = 0;
        const lw_boat boat = random_boat(kind_of(ready), &own, &again);
        lw_sections_prepare(&sections[ready], &boat, &room);
    }
    return &sections[random_bits(stream) % SECTIONS];
}

// Ranges that were worked out, for days to draw from.
typedef struct range_pool {
    const lw_range *ranges;
    size_t count;
} range_pool;

// Any range on any leg: more that differs between pins than one boat has.
static inline void draw_ranges(lw_outlook *outlook, const range_pool *pool, random_stream *stream)
{
    for (size_t pin = 0; pin < outlook->pin_count; pin++) {
        for (size_t course = 0; course < outlook->course_count; course++) {
            outlook->ranges[pin][course] = pool->ranges[random_bits(stream) % pool->count];
        }
        const lw_range *first = &outlook->ranges[pin][0];
        outlook->reach_launch[pin] = random_bits(stream) & 1 ? first->launches_at : 0.0;
        outlook->relaunch[pin] = random_between(stream, 0.0, 900.0);
    }
}

// A minute's ride of any kind: backwards too, never flying, swimming every few seconds.
static inline lw_ride_sum random_ride(random_stream *stream)
{
    static const double swims[] = {0.0, 0.0, 0.0, 1.0, 2.0, 15.0};
    const double share = random_between(stream, -0.5, 1.5);
    return (lw_ride_sum){.seconds = 60.0,
                         .along = 60.0 * random_between(stream, -2.0, 14.0),
                         .flown = 60.0 * fmin(fmax(share, 0.0), 1.0),
                         .swims = swims[random_bits(stream) % 6]};
}

static inline void draw_rides(lw_outlook *outlook, random_stream *stream)
{
    for (size_t b = 0; b < LW_BLOCKS; b++) {
        for (size_t k = 0; k < LW_RIDE_WINDS; k++) {
            for (size_t pin = 0; pin < outlook->pin_count; pin++) {
                for (size_t c = 0; c < outlook->course_count; c++) {
                    if (k != LW_RIDE_MEAN && (k + b) % 2) continue;
                    outlook->blocks[b].as_is[k][pin][c] = random_ride(stream);
                    for (int d = 0; d < LW_BLOCK_DRAWS; d++)
                        outlook->blocks[b].drawn[d][k][pin][c] = random_ride(stream);
                }
            }
        }
    }
}

#endif
