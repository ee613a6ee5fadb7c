// turns.c - tacks and gybes of a track whose wind is known.
// SPDX-License-Identifier: MIT

#include "lullwise/elementary.h"
#include "track/events.h"
#include "track/way.h"

#define HELD    4.0   // [s] on a side, to be on it  [judged]
#define WITHIN  20.0  // [s] from side to side       [judged]
#define BESIDE  3.0   // [s] before and behind a turn that is flown through
#define HEADING 5.0   // [s] of a side that tell on what course she was
#define AXIS    0.17  // sine of 10 deg: closer to the axis she is on no side

// A stay on one side of the wind.
typedef struct side {
    int sign;  // 1: the wind comes over the port side; -1: over the starboard side; 0: none
    size_t first, last;
} side;

static int sign_of(const lw_track_way *way, double from)
{
    const double across = lw_sin(way->course - from);
    if (way->speed < SLOW || fabs(across) < AXIS) return 0;
    return across > 0.0 ? 1 : -1;
}

static bool is_held(const lw_track *track, side s)
{
    return s.sign != 0 && track->fixes[s.last].time - track->fixes[s.first].time >= HELD;
}

// Sum of cosines from the wind over the end of a stay, or over its beginning.
static double upwind_of(const lw_track *track, double from, side s, bool at_end)
{
    const double time = track->fixes[at_end ? s.last : s.first].time;
    double sum = 0.0, n = 0.0;
    for (size_t k = 0; k <= s.last - s.first; k++) {
        const size_t i = at_end ? s.last - k : s.first + k;
        if (fabs(track->fixes[i].time - time) > HEADING) break;
        sum += lw_cos(track->ways[i].course - from);
        n += 1.0;
    }
    return sum / n;
}

static bool is_flown(const lw_track *track, side before, side behind)
{
    const double from = track->fixes[before.last].time - BESIDE;
    const double to = track->fixes[behind.first].time + BESIDE;
    for (size_t i = before.last; track->fixes[i].time >= from; i--) {
        if (!track->ways[i].flies) return false;
        if (track->ways[i].starts) break;
    }
    for (size_t i = before.last; i < track->count && track->fixes[i].time <= to; i++) {
        if (!track->ways[i].flies) return false;
    }
    return true;
}

static void add_turn(const lw_track *track, double from, const side sides[2],
                     lw_track_events *events)
{
    const side before = sides[0], behind = sides[1];
    const double leaves = track->fixes[before.last].time, is_on = track->fixes[behind.first].time;
    if (is_on - leaves > WITHIN) return;
    const double upwind =
        upwind_of(track, from, before, true) + upwind_of(track, from, behind, false);
    lw_track_event event = {.what = upwind > 0.0 ? LW_TRACK_TACK : LW_TRACK_GYBE,
                            .fix = before.last + (behind.first - before.last) / 2,
                            .lasts = is_on - leaves,
                            .slowest = track->ways[before.last].speed,
                            .is_flown = is_flown(track, before, behind)};
    event.time = track->fixes[event.fix].time;
    for (size_t i = before.last; i <= behind.first; i++) {
        event.slowest = fmin(event.slowest, track->ways[i].speed);
    }
    add_event(events, event);
}

void lw_track_turn(const lw_track *track, double from, lw_track_events *events)
{
    side sides[2] = {{0}, {0}};  // the last that was held, and that of now
    bool is_told = false;        // that of now
    for (size_t i = 0; i < track->count; i++) {
        const int sign = sign_of(&track->ways[i], from);
        if (track->ways[i].starts) sides[0].sign = sides[1].sign = 0;
        if (sign == 0) continue;
        if (sign == sides[1].sign) {
            sides[1].last = i;
        } else {
            if (is_held(track, sides[1])) sides[0] = sides[1];
            sides[1] = (side){sign, i, i};
            is_told = false;
        }
        if (is_told || !is_held(track, sides[1])) continue;
        is_told = true;
        if (sides[0].sign == -sign) add_turn(track, from, sides, events);
    }
}
