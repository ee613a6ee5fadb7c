// sailed.c - what a logged day keeps of a track.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "learning/flown_sum.h"
#include "lullwise/logged.h"

static void add_up(const lw_track *track, double from, lw_flown_sum of[LW_COURSE_COUNT])
{
    for (size_t i = 0; i < track->count; i++) {
        const lw_track_way *way = &track->ways[i];
        if (way->flies)
            lw_flown_sum_add(of, way->course - from, way->speed, lw_track_step(track, i));
    }
}

lw_sailed lw_sailed_of(const lw_track *track, const lw_track_summary *summary)
{
    const bool has_wind = summary->by != LW_TRACK_BY_NOTHING;
    const lw_track_sum *sum = &summary->sum;
    lw_flown_sum of[LW_COURSE_COUNT] = {{0.0, 0.0, 0.0}};
    if (has_wind) add_up(track, summary->from, of);
    const lw_flown_sum *up = &of[LW_UPWIND], *across = &of[LW_REACH], *down = &of[LW_DOWNWIND];
    return (lw_sailed){.upwind_speed = lw_flown_sum_mean(up),
                       .reach_speed = lw_flown_sum_mean(across),
                       .downwind_speed = lw_flown_sum_mean(down),
                       .upwind_scatter = lw_flown_sum_scatter(up),
                       .reach_scatter = lw_flown_sum_scatter(across),
                       .downwind_scatter = lw_flown_sum_scatter(down),
                       .upwind_time = has_wind ? up->time : NAN,
                       .reach_time = has_wind ? across->time : NAN,
                       .downwind_time = has_wind ? down->time : NAN,
                       .flying = sum->under_way > 0.0 ? sum->flying / sum->under_way : NAN,
                       .take_offs = (double)sum->count[LW_TRACK_TAKE_OFF],
                       .stops = (double)sum->count[LW_TRACK_SWIM]};
}
