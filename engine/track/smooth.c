// smooth.c - speed and course of a track, and what was sailed.
// SPDX-License-Identifier: MIT

#include "lullwise/elementary.h"
#include "track/way.h"

#define TOLD_REACH  0.5  // [s] either way
#define FIXES_REACH 1.0  // [s]
#define MOST_BESIDE 32   // fixes on either side: of more, the nearest

typedef struct velocity {
    double east, north;  // [m/s]
} velocity;

// Fixes from one to another, the ends included.
typedef struct stretch {
    size_t first, last;
} stretch;

// Those of one piece within so many seconds of a fix.
static stretch around(const lw_track *track, size_t i, double reach, size_t least)
{
    const double time = track->fixes[i].time;
    stretch s = {i, i};
    while (i - s.first < MOST_BESIDE && !track->ways[s.first].starts) {
        if (i - s.first >= least && time - track->fixes[s.first - 1].time > reach) break;
        s.first--;
    }
    while (s.last - i < MOST_BESIDE && s.last + 1 < track->count &&
           !track->ways[s.last + 1].starts) {
        if (s.last - i >= least && track->fixes[s.last + 1].time - time > reach) break;
        s.last++;
    }
    return s;
}

// Slope of the straight line through them.
static velocity slope_of(const lw_track *track, stretch s)
{
    const double n = (double)(s.last - s.first + 1), start = track->fixes[s.first].time;
    double time = 0.0, east = 0.0, north = 0.0, spread = 0.0;
    velocity v = {0.0, 0.0};
    for (size_t k = s.first; k <= s.last; k++) {
        time += (track->fixes[k].time - start) / n;
        east += track->fixes[k].east / n;
        north += track->fixes[k].north / n;
    }
    for (size_t k = s.first; k <= s.last; k++) {
        const double t = track->fixes[k].time - start - time;
        spread += t * t;
        v.east += t * (track->fixes[k].east - east);
        v.north += t * (track->fixes[k].north - north);
    }
    if (!(spread > 0.0)) return (velocity){0.0, 0.0};
    return (velocity){v.east / spread, v.north / spread};
}

static velocity velocity_of(double speed, double course)
{
    return (velocity){speed * lw_sin(course), speed * lw_cos(course)};
}

static double speed_of(velocity v) { return sqrt(v.east * v.east + v.north * v.north); }

// As told; a course that is not told is that of the fixes.
static velocity told_at(const lw_track *track, size_t i)
{
    const lw_fix *fix = &track->fixes[i];
    if (!isnan(fix->course)) return velocity_of(fix->speed, fix->course);
    const velocity v = slope_of(track, around(track, i, FIXES_REACH, 1));
    const double speed = speed_of(v);
    if (!(speed > 0.0)) return (velocity){0.0, fix->speed};
    return (velocity){v.east * fix->speed / speed, v.north * fix->speed / speed};
}

static velocity smooth_at(const lw_track *track, size_t i)
{
    if (isnan(track->fixes[i].speed)) return slope_of(track, around(track, i, FIXES_REACH, 1));
    const stretch s = around(track, i, TOLD_REACH, 0);
    velocity sum = {0.0, 0.0};
    double speed = 0.0, n = 0.0;
    for (size_t k = s.first; k <= s.last; k++) {
        if (isnan(track->fixes[k].speed)) continue;
        const velocity v = told_at(track, k);
        sum.east += v.east, sum.north += v.north;
        speed += track->fixes[k].speed, n += 1.0;
    }
    // the mean of speeds, in the direction of the mean: what turns is not slowed down
    const double length = speed_of(sum), scale = length > 0.0 ? speed / n / length : 0.0;
    return (velocity){sum.east * scale, sum.north * scale};
}

double lw_track_step(const lw_track *track, size_t i)
{
    return track->ways[i].starts ? 0.0 : track->fixes[i].time - track->fixes[i - 1].time;
}

static double speed_run_with(const lw_track *track, size_t i)
{
    const double told = track->fixes[i].speed;
    return isnan(told) ? track->ways[i].speed : told;
}

void lw_track_smooth(lw_track *track)
{
    for (size_t i = 0; i < track->count; i++) {
        const lw_fix *fix = &track->fixes[i];
        const bool starts = i == 0 || fix->starts || fix->time - fix[-1].time > LW_TRACK_GAP;
        track->ways[i] = (lw_track_way){.starts = starts};
    }
    double run = 0.0;
    for (size_t i = 0; i < track->count; i++) {
        const velocity v = smooth_at(track, i);
        lw_track_way *way = &track->ways[i];
        way->speed = speed_of(v);
        way->course = way->speed > 0.0 ? turn_around(lw_atan2(v.east, v.north)) : 0.0;
        if (!way->starts)
            run += 0.5 * lw_track_step(track, i) *
                   (speed_run_with(track, i - 1) + speed_run_with(track, i));
        way->run = run;
    }
}
