// random_day.h - random days that may well be sailed, and anything that a file may say; ranges for
// them from a pool that is worked out once, and rides of any kind.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_RANDOM_DAY_H
#define LW_TEST_RANDOM_DAY_H

#include "lullwise/choice.h"
#include "test/random_outlook.h"

// One pin of any boat on any course.
static inline lw_range any_range(boat_kind kind, random_stream *stream)
{
    long again = 0;
    lw_craft craft;
    lw_range range;
    const lw_boat boat = random_boat(kind, stream, &again);
    const lw_person person = random_person(kind, stream);
    const lw_day day = random_day(kind, stream);
    const lw_medium medium = lw_medium_of(&day);
    lw_craft_prepare(&craft, &boat, random_sections(stream), &person, &medium);
    lw_setup setup = craft.setup;
    setup.incidence = boat.pins[0].incidence;
    const lw_course course = lw_course_to(random_between(stream, 0.0, 180.0) * LW_DEG);
    lw_range_of(&craft, &setup, course, random_between(stream, 0.0, 6.0) * LW_KN, &range);
    return range;
}

// One pin of the presets' boat with a sailor who sails her: held in some wind.
static inline lw_range good_range(random_stream *stream)
{
    static lw_polar_room room;
    static lw_sections sections;
    static bool is_ready;
    lw_boat boat;
    lw_sailor sailor;
    lw_craft craft;
    lw_range range;
    lw_record_preset(&lw_boat_record, &boat);
    lw_record_preset(&lw_sailor_record, &sailor);
    if (!is_ready) lw_sections_prepare(&sections, &boat, &room);
    is_ready = true;
    sailor.person.mass = random_between(stream, 60.0, 90.0);
    const lw_day day = random_day(BOAT_USUAL, stream);
    const lw_medium medium = lw_medium_of(&day);
    lw_craft_prepare(&craft, &boat, &sections, &sailor.person, &medium);
    lw_setup setup = craft.setup;
    setup.incidence = random_between(stream, 0.0, 5.0) * LW_DEG;
    const lw_course course = lw_course_of((lw_course_kind)(random_bits(stream) % LW_COURSE_COUNT));
    lw_range_of(&craft, &setup, course, random_between(stream, 0.0, 4.0) * LW_KN, &range);
    return range;
}

// The first half of them good.
static inline void work_out_ranges(lw_range *ranges, size_t count, random_stream *stream)
{
    for (size_t i = 0; i < count; i++) {
        ranges[i] = i < count / 2 ? good_range(stream) : any_range(kind_of((int)i), stream);
    }
}

// Winds in which she may well fly.
static inline void draw_breeze(lw_wind *wind, random_stream *stream)
{
    wind->mean = random_between(stream, 4.0, 18.0) * LW_KN;
    wind->lull = wind->mean * random_between(stream, 0.6, 0.95);
    wind->puff = wind->mean * random_between(stream, 1.05, 1.5);
}

// Rides that swim nowhere, flying always or when the wind is more.
static inline void calm_rides(lw_outlook *outlook, random_stream *stream)
{
    for (size_t b = 0; b < LW_BLOCKS; b++) {
        for (size_t k = 0; k < LW_RIDE_WINDS; k++) {
            for (size_t pin = 0; pin < outlook->pin_count; pin++) {
                for (size_t c = 0; c < outlook->course_count; c++) {
                    lw_ride_sum *one = &outlook->blocks[b].as_is[k][pin][c];
                    one->swims = 0.0;
                    for (int d = 0; d < LW_BLOCK_DRAWS; d++)
                        outlook->blocks[b].drawn[d][k][pin][c].swims = 0.0;
                    one->along = one->seconds * random_between(stream, 2.0, 8.0);
                }
            }
        }
    }
}

// Boat, sailor and day of a run, by its kind and aim. False where the day contradicts itself.
static inline bool random_inputs(lw_inputs *inputs, int run, random_stream *stream)
{
    const char *why;
    long again = 0;
    const boat_kind kind = kind_of(run);
    lw_record_preset(&lw_sailor_record, &inputs->sailor);
    inputs->boat = random_boat(kind, stream, &again);
    inputs->sailor.person = random_person(kind, stream);
    inputs->day = random_day(kind, stream);
    if (run % 3) draw_breeze(&inputs->day.wind, stream);
    snprintf(inputs->day.aim, sizeof inputs->day.aim, "%s", lw_aim_text((lw_aim)(run / 2 % 3)));
    return lw_day_settle(&inputs->day, &why);
}

// What a run's outlook would be after its steps.
static inline void draw_outlook(lw_outlook *outlook, const range_pool *pool, int run,
                                random_stream *stream)
{
    const size_t good = run % 3 ? pool->count / 2 : pool->count;
    draw_ranges(outlook, &(range_pool){pool->ranges, good}, stream);
    draw_rides(outlook, stream);
    if (run % 4) calm_rides(outlook, stream);
}

#endif
