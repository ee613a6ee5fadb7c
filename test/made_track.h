// made_track.h - tracks whose truth is known: an invented dinghy on an invented piece of sea.
// SPDX-License-Identifier: MIT
//
// Tacks, gybes, flights, drops, swims and stops from a seed, in steps of a tenth of a second;
// then looked at as a receiver does, with its noise.

#ifndef LW_TEST_MADE_TRACK_H
#define LW_TEST_MADE_TRACK_H

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "lullwise/track_events.h"
#include "test/random.h"

#define MADE_STEP   0.1  // [s]
#define MADE_MOST   240000
#define MADE_EVENTS 2000

typedef struct made_event {
    lw_track_what what;
    double time;
    bool is_flown;
} made_event;

typedef struct made_track {
    random_stream random;
    double wind;           // [rad] where it comes from, on the whole
    double course, speed;  // [rad], [m/s] of now
    double side;           // 1 or -1
    bool is_downwind, flies;
    size_t count;
    double courses[MADE_MOST], speeds[MADE_MOST];
    size_t event_count;
    made_event events[MADE_EVENTS];
} made_track;

static inline double made_within(made_track *m, double low, double high)
{
    return random_between(&m->random, low, high);
}

// A bell about 0 of deviation 1: twelve evenly spread numbers less six.
static inline double made_noise(random_stream *random)
{
    double sum = -6.0;
    for (int i = 0; i < 12; i++) sum += random_between(random, 0.0, 1.0);
    return sum;
}

static inline void made_note(made_track *m, lw_track_what what, double ago, bool is_flown)
{
    m->events[m->event_count++] = (made_event){what, (double)m->count * MADE_STEP - ago, is_flown};
}

// Sails on for some seconds, evenly to another speed [kn] and course [rad], the short way.
static inline void made_go(made_track *m, double seconds, double kn, double course)
{
    const double from = m->speed, begin = m->course, off = course - begin;
    const double turn = off - 2.0 * LW_PI * floor(off / (2.0 * LW_PI) + 0.5);
    const int steps = (int)(seconds / MADE_STEP + 0.5);
    for (int i = 1; i <= steps && m->count < MADE_MOST; i++) {
        const double part = (double)i / steps;
        m->speed = from + part * (kn * LW_KN - from);
        m->course = begin + part * turn;
        const bool flies = m->speed >= (m->flies ? LW_TRACK_DOWN : LW_TRACK_UP);
        if (m->count && flies != m->flies)
            made_note(m, flies ? LW_TRACK_TAKE_OFF : LW_TRACK_DROP, 0.0, false);
        m->flies = flies;
        m->speeds[m->count] = m->speed;
        m->courses[m->count++] = m->course;
    }
}

// Of now: it swings by 6 degrees in 12 minutes, by 3 in 3.
static inline double made_wind(const made_track *m)
{
    const double time = (double)m->count * MADE_STEP;
    return m->wind + (6.0 * sin(time / 115.0) + 3.0 * sin(time / 29.0 + 1.0)) * LW_DEG;
}

static inline double made_target(made_track *m)
{
    const double up = made_within(m, 42.0, 54.0), down = made_within(m, 128.0, 144.0);
    return made_wind(m) + m->side * (m->is_downwind ? down : up) * LW_DEG;
}

static inline double made_pace(made_track *m)
{
    return m->is_downwind ? made_within(m, 13.0, 19.0) : made_within(m, 11.0, 15.5);
}

// Straight for a while, a little faster and slower, a little higher and lower.
static inline void made_leg(made_track *m, double seconds)
{
    for (double left = seconds; left > 0.0; left -= 8.0) {
        made_go(m, 8.0, made_pace(m), made_target(m));
    }
}

// Through the wind, flown or set down in the middle of it.
static inline void made_turn(made_track *m, bool is_flown)
{
    m->side = -m->side;
    made_go(m, 2.5, is_flown ? made_within(m, 8.5, 11.5) : made_within(m, 3.0, 7.0),
            made_wind(m) + (m->is_downwind ? LW_PI : 0.0));
    made_note(m, m->is_downwind ? LW_TRACK_GYBE : LW_TRACK_TACK, 0.0, is_flown);
    const double target = made_target(m);
    made_go(m, 2.5, is_flown ? made_within(m, 9.0, 12.0) : made_within(m, 2.5, 6.0), target);
    if (!is_flown) made_go(m, made_within(m, 5.0, 12.0), 6.0, target);
    made_go(m, 4.0, 13.5, target);
}

static inline void made_drop(made_track *m)
{
    made_go(m, 2.0, made_within(m, 3.5, 7.4), m->course);
    made_go(m, made_within(m, 1.0, 12.0), made_within(m, 4.0, 7.4), m->course);
    made_go(m, 4.0, made_pace(m), made_target(m));
}

// In the water at once, or slowly to a stop; then drifting to leeward, and away.
static inline void made_stop(made_track *m, bool is_swim)
{
    if (is_swim) {
        made_go(m, 3.0, 0.8, m->course);
    } else {
        made_go(m, 3.0, 5.0, m->course);
        made_go(m, 20.0, 4.5, m->course);
        made_go(m, 5.0, 0.8, m->course);
    }
    made_note(m, is_swim ? LW_TRACK_SWIM : LW_TRACK_STOP, 0.0, false);
    m->course = made_wind(m) + LW_PI;
    made_go(m, made_within(m, 9.0, 60.0), 0.7, m->course);
    made_go(m, 4.0, 4.0, made_target(m));
    made_go(m, 6.0, 6.0, made_target(m));
    made_go(m, 5.0, made_pace(m), made_target(m));
}

// Across the wind for a while, on the side where she is.
static inline void made_reach(made_track *m)
{
    for (int i = 0; i < 6; i++) {
        made_go(m, 8.0, made_within(m, 14.0, 19.0),
                made_wind(m) + m->side * made_within(m, 80.0, 110.0) * LW_DEG);
    }
    made_go(m, 6.0, made_pace(m), made_target(m));
}

// So many seconds of sailing, up and down the wind; `both`: on both tacks.
static inline void made_sail(made_track *m, uint64_t seed, double seconds, bool both)
{
    memset(m, 0, sizeof *m);
    m->random.state = seed;
    m->wind = made_within(m, 0.0, 2.0 * LW_PI);
    m->side = 1.0;
    m->course = made_target(m);
    for (int leg = 1; (double)m->count * MADE_STEP < seconds; leg++) {
        made_leg(m, made_within(m, 40.0, 110.0));
        const double what = made_within(m, 0.0, 1.0);
        if (what < 0.15)
            made_drop(m);
        else if (what > 0.9)
            made_reach(m);
        else if (what < 0.2)
            made_stop(m, true);
        else if (what < 0.25)
            made_stop(m, false);
        else if (both)
            made_turn(m, made_within(m, 0.0, 1.0) < 0.5);
        if (leg % 7 == 0) m->is_downwind = !m->is_downwind;
    }
}

// What a receiver makes of it, `hz` fixes a second; noise of a speed [m/s] from fix to fix, told by
// it or to be worked out from places alone. Returns how many there are; *fixes is the caller's.
static inline size_t made_look(const made_track *m, double hz, double noise, bool is_told,
                               lw_fix **fixes)
{
    random_stream random = {m->random.state ^ 77};
    const size_t stride = (size_t)(1.0 / (hz * MADE_STEP) + 0.5);
    const double step = (double)stride * MADE_STEP, jitter = noise * step / sqrt(2.0);
    double east = 0.0, north = 0.0;
    size_t count = 0;
    *fixes = calloc(m->count / stride + 1, sizeof **fixes);
    for (size_t i = 0; i < m->count; i++) {
        if (i % stride == 0) {
            lw_fix *fix = &(*fixes)[count++];
            *fix = (lw_fix){.time = (double)i * MADE_STEP, .speed = NAN, .course = NAN};
            fix->east = east + jitter * made_noise(&random);
            fix->north = north + jitter * made_noise(&random);
            const double ve = m->speeds[i] * sin(m->courses[i]) + noise * made_noise(&random);
            const double vn = m->speeds[i] * cos(m->courses[i]) + noise * made_noise(&random);
            if (is_told) fix->speed = hypot(ve, vn), fix->course = atan2(ve, vn);
        }
        east += MADE_STEP * m->speeds[i] * sin(m->courses[i]);
        north += MADE_STEP * m->speeds[i] * cos(m->courses[i]);
    }
    return count;
}

#endif
