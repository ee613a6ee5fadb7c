// summary.c - all that a track tells, at once.
// SPDX-License-Identifier: MIT

#include "lullwise/track_summary.h"

#include "track/way.h"

#define LW_AS_BEST(key, text, seconds, metres) {key, text, seconds, metres},
const lw_track_best lw_track_bests[LW_TRACK_BESTS] = {LW_TRACK_BEST_LIST(LW_AS_BEST)};

static void settle_wind(const lw_track_known *known, lw_track_summary *s)
{
    s->by = LW_TRACK_BY_NOTHING;
    s->from = s->error = NAN;
    if (!isnan(known->given)) {
        s->by = LW_TRACK_BY_WORD;
        s->from = turn_around(known->given);
    } else if (!isnan(known->told)) {
        s->by = LW_TRACK_BY_INSTRUMENT;
        s->from = turn_around(known->told);
    } else if (s->sailed.is_found) {
        s->by = LW_TRACK_BY_SAILING;
        s->from = s->sailed.from;
        s->error = s->sailed.error;
    }
}

static double best_of(const lw_track *track, const lw_track_best *best)
{
    return best->seconds > 0.0 ? lw_track_best_over(track, best->seconds)
                               : lw_track_best_along(track, best->metres);
}

void lw_track_summary_of(lw_track *track, const lw_track_known *known, lw_track_room *room,
                         lw_track_events *events, lw_track_summary *summary)
{
    *summary = (lw_track_summary){.limits = known->limits};
    lw_track_smooth(track);
    lw_track_fly(track, known->limits, events);
    summary->sailed = lw_track_wind_of(track, room);
    settle_wind(known, summary);
    if (summary->by != LW_TRACK_BY_NOTHING) {
        lw_track_turn(track, summary->from, events);
        lw_track_by_angle(track, summary->from, summary->angles);
    }
    summary->sum = lw_track_sum_of(track, events);
    for (int i = 0; i < LW_TRACK_BESTS; i++) summary->best[i] = best_of(track, &lw_track_bests[i]);
}
