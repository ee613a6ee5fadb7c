// work.c - the answer of `lullwise track` worked out.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdlib.h>

#include "answer/asked.h"
#include "answer/track/track.h"
#include "lullwise/elementary.h"
#include "records/track/moment.h"

#define FIRST_ANGLE 4    // 40 to 50 deg: closer to the wind the model is not asked
#define LAST_ANGLE  14   // 140 to 150 deg
#define COMES_DOWN  0.8  // of the speed at which she lifts off  [judged]
#define TOLD_LEAST  30   // readings of a wind, to take it       [judged]

// --- what is asked

static void forget_model(lw_tracked *t)
{
    t->model.lifts_off = t->model.slowest = NAN;
    for (size_t i = 0; i < LW_TRACK_ANGLES; i++) t->model.speed[i] = NAN;
}

static bool ask_model(lw_tracked *t, const lw_options *options, lw_refusal *refusal)
{
    int pin;
    t->model.is_asked = lw_options_has(options, "boat");
    if (!t->model.is_asked && lw_options_has(options, "pin"))
        return lw_refuse(refusal, "--pin goes with --boat");
    if (!lw_asked_pin(options, &t->inputs->boat, &pin, refusal)) return false;
    t->model.pin = pin == LW_ALL_PINS ? 0 : (size_t)pin;
    t->model.wind = t->inputs->day.wind.mean;
    forget_model(t);
    if (!t->model.is_asked) return true;
    t->model.craft = lw_asked_craft(t->inputs);
    t->model.setup = lw_craft_setup(&t->model.craft, &t->inputs->boat, t->model.pin);
    return true;
}

// To the end of the day, wherever she is.
static void expect_until(lw_tracked *t, const char *day)
{
    double today;
    if (day && lw_moment_read(day, &today)) t->file.latest = today + 2.0 * 86400.0;
}

static bool read_files(lw_tracked *t, const lw_options *options, lw_refusal *refusal)
{
    t->file_count = options->operand_count;
    t->name = options->operands[0];
    t->file.wants_end = options->wants_end;
    expect_until(t, options->today);
    for (size_t i = 0; i < t->file_count; i++) {
        const char *name = options->operands[i];
        if (t->streams ? !lw_track_file_stream(&t->file, t->streams[i], name, &refusal->faults)
                       : !lw_track_file_read(&t->file, name, &refusal->faults))
            return false;
    }
    return true;
}

static bool settle(lw_tracked *t, lw_faults *faults)
{
    if (!lw_track_file_settle(&t->file, t->name, faults)) return false;
    t->track = (lw_track){.fixes = t->file.fixes,
                          .ways = calloc(t->file.count, sizeof *t->track.ways),
                          .count = t->file.count};
    t->events = (lw_track_events){.list = t->list, .room = LW_TRACKED_EVENTS};
    t->room = calloc(1, sizeof *t->room);
    return (t->track.ways && t->room) || lw_faults_no_memory(faults, t->name);
}

bool lw_tracked_begin(void *it, const lw_inputs *inputs, const lw_options *options,
                      lw_refusal *refusal)
{
    lw_tracked *t = it;
    t->inputs = inputs;
    t->speed_unit = options->speed_unit;
    t->asked = NAN;
    if (options->operand_count == 0) return lw_refuse(refusal, "which track? lullwise track FILE");
    if (!lw_asked_number(options, "wind-from", (lw_bounds){0}, &t->asked, refusal)) return false;
    return ask_model(t, options, refusal) && read_files(t, options, refusal) &&
           settle(t, &refusal->faults);
}

// --- the model

// A step is an angle; the last two are the launch and the slowest flight.
size_t lw_tracked_steps(void *it)
{
    const lw_tracked *t = it;
    return t->model.is_asked ? LAST_ANGLE - FIRST_ANGLE + 3 : 0;
}

bool lw_tracked_are_apart(const void *it)
{
    (void)it;
    return true;
}

static double puff_of(const lw_tracked *t)
{
    return t->inputs->day.wind.puff - t->inputs->day.wind.mean;
}

static void find_range(const lw_tracked *t, lw_course_kind course, lw_range *range)
{
    const lw_tracked_model *m = &t->model;
    lw_range_of(&m->craft, &m->setup, lw_course_of(course), puff_of(t), range);
}

// Lifting off in the day's wind, or in the least wind that lifts her.
static double launch_of(const lw_tracked *t, const lw_range *range)
{
    const lw_launch *here = &range->on_hull[lw_range_nearest(t->model.wind)];
    if (!here->flies) here = &range->on_hull[lw_range_nearest(range->launches_at)];
    return range->has_launch && here->flies ? here->speed : NAN;
}

static double slowest_of(const lw_range *range)
{
    double slowest = NAN;
    for (int i = 0; i < LW_RANGE_WINDS; i++) {
        const lw_answer *answer = &range->at[i].trimmed;
        if (lw_answer_is_kept(answer)) slowest = fmin(slowest, answer->flight.speed);
    }
    return slowest;
}

// The last two steps.
static void find_speeds(lw_tracked *t, bool is_launch)
{
    lw_range *range = calloc(1, sizeof *range);
    if (!range) return;
    find_range(t, is_launch ? LW_REACH : LW_UPWIND, range);
    if (is_launch)
        t->model.lifts_off = launch_of(t, range);
    else
        t->model.slowest = slowest_of(range);
    free(range);
}

void lw_tracked_step(void *it, size_t step)
{
    lw_tracked *t = it;
    lw_tracked_model *m = &t->model;
    const size_t angle = FIRST_ANGLE + step;
    if (angle > LAST_ANGLE) {
        find_speeds(t, angle == LAST_ANGLE + 1);
        return;
    }
    const double heading = ((double)angle + 0.5) * LW_PI / LW_TRACK_ANGLES;
    const lw_course course = {.direction = heading, .low = heading, .high = heading};
    const lw_walk walk = lw_walk_of(&m->craft, &m->setup, course, puff_of(t));
    const lw_trim trim = lw_walk_flight(&walk, m->wind);
    if (lw_answer_is_kept(&trim.steady)) m->speed[angle] = trim.steady.flight.speed;
}

// --- the track

static lw_track_limits limits_of(const lw_tracked *t)
{
    const double up = fmin(t->model.lifts_off, t->model.slowest);
    return up > 0.0 ? (lw_track_limits){up, COMES_DOWN * up}
                    : (lw_track_limits){LW_TRACK_UP, LW_TRACK_DOWN};
}

// The mean of what instruments tell, once there is enough of it.
double lw_tracked_told_wind(const lw_track_told_wind *told)
{
    return told->count < TOLD_LEAST ? NAN : lw_atan2(told->east, told->north);
}

void lw_tracked_end(void *it)
{
    lw_tracked *t = it;
    const lw_track_known known = {t->asked, lw_tracked_told_wind(&t->file.wind), limits_of(t)};
    lw_track_summary_of(&t->track, &known, t->room, &t->events, &t->found);
}

void lw_tracked_release(void *it)
{
    lw_tracked *t = it;
    free(t->track.ways);
    free(t->room);
    lw_track_file_free(&t->file);
}
