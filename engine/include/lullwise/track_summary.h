// track_summary.h - all that a track tells, at once.
// SPDX-License-Identifier: MIT

#ifndef LW_TRACK_SUMMARY_H
#define LW_TRACK_SUMMARY_H

#include "lullwise/track_events.h"

// clang-format off
// Best averages that are worked out, over seconds or along metres.
//    key            text     seconds  metres
#define LW_TRACK_BEST_LIST(X)                 \
    X("over_2_s",    "2 s",    2.0,    0.0)   \
    X("over_10_s",   "10 s",  10.0,    0.0)   \
    X("along_100_m", "100 m",  0.0,  100.0)   \
    X("along_500_m", "500 m",  0.0,  500.0)   \
    X("along_1_nmi", "1 nmi",  0.0, LW_NMI)
// clang-format on

#define LW_TRACK_BESTS 5
typedef struct lw_track_best {
    const char *key, *text;
    double seconds, metres;  // one of them; the other is 0
} lw_track_best;
extern const lw_track_best lw_track_bests[LW_TRACK_BESTS];

// By what the wind's direction is known: the first of these that there is.
typedef enum lw_track_by {
    LW_TRACK_BY_NOTHING,
    LW_TRACK_BY_WORD,        // given
    LW_TRACK_BY_INSTRUMENT,  // told on board
    LW_TRACK_BY_SAILING,     // lw_track_wind_of
} lw_track_by;

// What is known beside the fixes.
typedef struct lw_track_known {
    double given, told;      // [rad] where the wind comes from; NAN: not known
    lw_track_limits limits;  // of flight
} lw_track_known;

typedef struct lw_track_summary {
    lw_track_wind sailed;  // whether it counts or not
    lw_track_by by;
    double from, error;  // [rad] that counts, 0 to 2 pi, and how well it is known; NAN: not known
    lw_track_limits limits;
    lw_track_sum sum;
    lw_track_angle angles[LW_TRACK_ANGLES];  // empty while the wind is not known
    double best[LW_TRACK_BESTS];             // [m/s]; NAN: no piece is as long
} lw_track_summary;

// Works all of it out, the ways of the track and the events too, which are added to those there.
void lw_track_summary_of(lw_track *track, const lw_track_known *known, lw_track_room *room,
                         lw_track_events *events, lw_track_summary *summary);

#endif
