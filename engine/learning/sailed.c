// sailed.c - what a logged day keeps of a track.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/logged.h"
#include "lullwise/range.h"

// Angles from the wind that count as a course.  [judged]
static const double lows[LW_COURSE_COUNT] = {30.0 * LW_DEG, 85.0 * LW_DEG, 115.0 * LW_DEG};
static const double highs[LW_COURSE_COUNT] = {75.0 * LW_DEG, 115.0 * LW_DEG, 170.0 * LW_DEG};

// Sums over the time flown on a course.
typedef struct sums {
    double time, run, squares;
} sums;

static int course_of(double angle)
{
    int c = 0;
    while (c < LW_COURSE_COUNT && !(angle >= lows[c] && angle < highs[c])) c++;
    return c;
}

static void add_up(const lw_track *track, double from, sums of[LW_COURSE_COUNT])
{
    for (size_t i = 0; i < track->count; i++) {
        const lw_track_way *way = &track->ways[i];
        const double around = way->course - from;
        const double angle = fabs(around - 2.0 * LW_PI * floor(around / (2.0 * LW_PI) + 0.5));
        const int c = course_of(angle);
        const double step = lw_track_step(track, i);
        if (!way->flies || c == LW_COURSE_COUNT) continue;
        of[c].time += step;
        of[c].run += step * way->speed;
        of[c].squares += step * way->speed * way->speed;
    }
}

static double mean_of(const sums *s) { return s->time > 0.0 ? s->run / s->time : NAN; }

static double scatter_of(const sums *s)
{
    const double mean = mean_of(s);
    return s->time > 0.0 ? sqrt(fmax(s->squares / s->time - mean * mean, 0.0)) : NAN;
}

lw_sailed lw_sailed_of(const lw_track *track, const lw_track_summary *summary)
{
    const bool has_wind = summary->by != LW_TRACK_BY_NOTHING;
    const lw_track_sum *sum = &summary->sum;
    sums of[LW_COURSE_COUNT] = {{0.0, 0.0, 0.0}};
    if (has_wind) add_up(track, summary->from, of);
    const sums *up = &of[LW_UPWIND], *across = &of[LW_REACH], *down = &of[LW_DOWNWIND];
    return (lw_sailed){.upwind_speed = mean_of(up),
                       .reach_speed = mean_of(across),
                       .downwind_speed = mean_of(down),
                       .upwind_scatter = scatter_of(up),
                       .reach_scatter = scatter_of(across),
                       .downwind_scatter = scatter_of(down),
                       .upwind_time = has_wind ? up->time : NAN,
                       .reach_time = has_wind ? across->time : NAN,
                       .downwind_time = has_wind ? down->time : NAN,
                       .flying = sum->under_way > 0.0 ? sum->flying / sum->under_way : NAN,
                       .take_offs = (double)sum->count[LW_TRACK_TAKE_OFF],
                       .stops = (double)sum->count[LW_TRACK_SWIM]};
}
