// outlook.c - everything that a day's choice rests on: each pin's range on each course, and rides.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "choice/blocks.h"
#include "lullwise/choice.h"

#define BEAR_AWAY (100.0 * LW_DEG)  // heading on which a boat launches soonest

// The course a leg belongs to; a new one while there is room, else the nearest in direction.
static size_t course_for(lw_outlook *outlook, lw_course course)
{
    size_t nearest = 0;
    double least = 1e9;
    for (size_t i = 0; i < outlook->course_count; i++) {
        const double off = fabs(outlook->courses[i].direction - course.direction);
        if (off < least) least = off, nearest = i;
    }
    if (least < 0.5 * LW_DEG || outlook->course_count == LW_COURSES_MOST) return nearest;
    outlook->courses[outlook->course_count] = course;
    return outlook->course_count++;
}

static void take_legs(lw_outlook *outlook, const lw_day *day)
{
    outlook->leg_count = day->leg_count;
    for (size_t i = 0; i < day->leg_count; i++) {
        const lw_leg *leg = &day->legs[i];
        outlook->leg_length[i] = leg->length;
        outlook->leg_course[i] = course_for(outlook, lw_course_to(fabs(leg->heading)));
    }
}

void lw_outlook_begin(lw_outlook *outlook, const lw_boat *boat, const lw_sections *sections,
                      const lw_person *person, const lw_day *day)
{
    const lw_medium medium = lw_medium_of(day);
    const lw_wind *wind = &day->wind;
    memset(outlook, 0, sizeof *outlook);
    outlook->boat = *boat;
    outlook->person = *person;
    outlook->sections = *sections;
    outlook->gusts = (lw_gusts){wind->lull, wind->mean, wind->puff, wind->period};
    outlook->cost = day->cost;
    outlook->aim = lw_aim_of(day->aim);
    outlook->effort = lw_effort_usual();
    outlook->pin_count = boat->pin_count;
    lw_craft_prepare(&outlook->craft, boat, sections, person, &medium);
    outlook->weather = lw_weather_of(&outlook->craft, day);
    take_legs(outlook, day);
    for (size_t pin = 0; pin < LW_PINS_MOST; pin++) {
        for (size_t c = 0; c < LW_COURSES_MOST; c++) outlook->pace[pin][c] = 1.0;
    }
}

// --- steps: pins on their courses, blocks, blocks again

void lw_outlook_forget(lw_outlook *outlook)
{
    memset(outlook->is_done, 0, sizeof outlook->is_done);
    memset(outlook->blocks, 0, sizeof outlook->blocks);
    memset(outlook->has_plan, 0, sizeof outlook->has_plan);
    memset(outlook->has_drawn, 0, sizeof outlook->has_drawn);
    memset(outlook->rides_more, 0, sizeof outlook->rides_more);
    outlook->is_decided = false;
}

static size_t range_steps(const lw_outlook *outlook)
{
    return outlook->pin_count * outlook->course_count;
}

static bool are_done(const lw_outlook *outlook, size_t steps)
{
    size_t done = 0;
    while (done < steps && outlook->is_done[done]) done++;
    return done == steps;
}

// Pins that are not told apart from the first ride more, once: those next in rank, each as long as
// it is not told apart from the one before it.
static void decide(lw_outlook *outlook)
{
    if (outlook->is_decided) return;
    outlook->is_decided = true;
    if (outlook->effort.more == 0 || outlook->aim >= LW_AIM_COUNT) return;
    lw_blocks_sum(outlook);
    const lw_choice choice = lw_choice_of(outlook, outlook->aim, 0.0);
    for (size_t i = 1; i < choice.count && choice.places[i].is_close; i++) {
        outlook->rides_more[choice.places[i].pin] = true;
        outlook->rides_more[choice.places[i - 1].pin] = true;
    }
}

size_t lw_outlook_steps(lw_outlook *outlook)
{
    const size_t ranges = range_steps(outlook);
    if (!are_done(outlook, ranges)) return ranges;
    if (!are_done(outlook, ranges + LW_BLOCKS)) return ranges + LW_BLOCKS;
    decide(outlook);
    size_t riding = 0;
    for (size_t pin = 0; pin < outlook->pin_count; pin++) riding += outlook->rides_more[pin];
    return ranges + (riding ? 2 * (size_t)LW_BLOCKS : LW_BLOCKS);
}

bool lw_outlook_is_whole(lw_outlook *outlook)
{
    return are_done(outlook, lw_outlook_steps(outlook));
}

// Launching again after a swim, bearing away: in the mean wind; where that is too little, in the
// least that launches her, after half the time from puff to puff.  [judged]
static double relaunch_of(const lw_outlook *outlook, size_t pin, const lw_setup *setup)
{
    const double least = outlook->reach_launch[pin], mean = outlook->gusts.mean;
    const double wait = 0.5 * outlook->gusts.period;
    const lw_range *range = &outlook->ranges[pin][0];
    if (least <= 0.0 || !range->has_flight) return wait;
    const lw_craft *craft = &outlook->craft;
    const double rudder = lw_craft_rudder(craft, lw_range_turns(range, mean));
    const double wind = fmax(mean, least + LW_KN);
    const lw_launch launch = lw_launch_of(craft, setup, rudder, wind, BEAR_AWAY);
    return launch.seconds + (mean < least || !launch.flies ? wait : 0.0);
}

double lw_outlook_most_turns(const lw_outlook *outlook, size_t pin, double wind)
{
    const size_t course = lw_outlook_longest(outlook);
    const lw_setup setup = lw_craft_setup(&outlook->craft, &outlook->boat, pin);
    const lw_range_interval in = lw_range_interval_of(wind);
    const double puff = outlook->gusts.puff - outlook->gusts.mean;
    double turns[2] = {NAN, NAN};
    for (int i = 0; i < 2; i++) {
        const lw_answer *flight = &outlook->ranges[pin][course].at[in.below + i].trimmed;
        if (lw_answer_is_kept(flight))
            turns[i] = lw_range_most_turns(&outlook->craft, &setup, outlook->courses[course], puff,
                                           flight);
    }
    if (isnan(turns[0]) || isnan(turns[1])) return isnan(turns[0]) ? turns[1] : turns[0];
    return turns[0] + in.part * (turns[1] - turns[0]);
}

static void find_range(lw_outlook *outlook, size_t pin, size_t course)
{
    const lw_setup setup = lw_craft_setup(&outlook->craft, &outlook->boat, pin);
    lw_range *range = &outlook->ranges[pin][course];
    lw_range_of(&outlook->craft, &setup, outlook->courses[course],
                outlook->gusts.puff - outlook->gusts.mean, range);
    lw_block_plan(outlook, pin, course);
    if (course == lw_outlook_longest(outlook))
        outlook->most_turns[pin] = lw_outlook_most_turns(outlook, pin, outlook->gusts.mean);
    if (course > 0) return;
    outlook->reach_launch[pin] = lw_range_launch(&outlook->craft, &setup, range, BEAR_AWAY);
    outlook->relaunch[pin] = relaunch_of(outlook, pin, &setup);
}

// What a step works out: the range of a pin on a course, or a block of rides.
typedef struct part {
    enum { RANGE, BLOCK, BLOCK_AGAIN } kind;
    size_t pin, course, block;
} part;

static part part_of(const lw_outlook *outlook, size_t step)
{
    const size_t ranges = range_steps(outlook), courses = outlook->course_count;
    if (step < ranges) return (part){RANGE, step / courses, step % courses, 0};
    const size_t block = (step - ranges) % LW_BLOCKS;
    return (part){step < ranges + LW_BLOCKS ? BLOCK : BLOCK_AGAIN, 0, 0, block};
}

void lw_outlook_step(lw_outlook *outlook, size_t step)
{
    const part p = part_of(outlook, step);
    if (p.kind == BLOCK_AGAIN) decide(outlook);
    if (p.kind == RANGE)
        find_range(outlook, p.pin, p.course);
    else
        lw_block_ride(outlook, p.block, p.kind == BLOCK_AGAIN);
    outlook->is_done[step] = true;
}

void lw_outlook_give(const lw_outlook *outlook, size_t step, lw_outlook_part *to)
{
    const part p = part_of(outlook, step);
    if (p.kind == RANGE) {
        to->range = outlook->ranges[p.pin][p.course];
        to->reach_launch = outlook->reach_launch[p.pin];
        to->relaunch = outlook->relaunch[p.pin];
        to->most_turns = outlook->most_turns[p.pin];
    } else {
        to->block = outlook->blocks[p.block];
    }
}

void lw_outlook_take(lw_outlook *outlook, size_t step, const lw_outlook_part *from)
{
    const part p = part_of(outlook, step);
    outlook->is_done[step] = true;
    if (p.kind == RANGE) {
        outlook->ranges[p.pin][p.course] = from->range;
        if (p.course == lw_outlook_longest(outlook)) outlook->most_turns[p.pin] = from->most_turns;
        if (p.course > 0) return;  // what comes with the first course
        outlook->reach_launch[p.pin] = from->reach_launch;
        outlook->relaunch[p.pin] = from->relaunch;
    } else if (p.kind == BLOCK_AGAIN || !outlook->is_done[step + LW_BLOCKS]) {
        outlook->blocks[p.block] = from->block;  // one that rode again is whole already
    }
}

void lw_outlook_end(lw_outlook *outlook) { lw_blocks_sum(outlook); }

void lw_outlook_work_out(lw_outlook *outlook)
{
    size_t done = 0, steps;
    while (done < (steps = lw_outlook_steps(outlook))) {
        while (done < steps) lw_outlook_step(outlook, done++);
    }
    lw_outlook_end(outlook);
}

void lw_outlook_prepare(lw_outlook *outlook, const lw_boat *boat, const lw_sections *sections,
                        const lw_person *person, const lw_day *day)
{
    lw_outlook_begin(outlook, boat, sections, person, day);
    lw_outlook_work_out(outlook);
}
