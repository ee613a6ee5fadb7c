// flights.c - who flies along a track, take-offs, drops and stops.
// SPDX-License-Identifier: MIT

#include "track/events.h"
#include "track/way.h"

#define STOP_SECONDS 8.0            // [s]    [judged]
#define STOP_OVER    (3.0 * LW_KN)  // [m/s]  she has stopped until she is as fast  [judged]
#define FLEW_BEFORE  10.0           // [s]    [judged]

#define LW_AS_KEY(name, key, text)   key,
#define LW_AS_TEXT_(name, key, text) text,
const char *lw_track_event_key(lw_track_what what)
{
    static const char *const keys[] = {LW_TRACK_EVENT_LIST(LW_AS_KEY)};
    return what < LW_TRACK_EVENTS ? keys[what] : "";
}

const char *lw_track_event_text(lw_track_what what)
{
    static const char *const texts[] = {LW_TRACK_EVENT_LIST(LW_AS_TEXT_)};
    return what < LW_TRACK_EVENTS ? texts[what] : "";
}

static void mark_flights(lw_track *track, lw_track_limits limits, lw_track_events *events)
{
    bool flies = false;
    for (size_t i = 0; i < track->count; i++) {
        lw_track_way *way = &track->ways[i];
        const bool flew = !way->starts && flies;
        flies = way->speed >= (flew ? limits.down : limits.up);
        way->flies = flies;
        if (way->starts || flies == flew) continue;
        add_event(events, (lw_track_event){.what = flies ? LW_TRACK_TAKE_OFF : LW_TRACK_DROP,
                                           .fix = i,
                                           .time = track->fixes[i].time,
                                           .slowest = way->speed});
    }
}

// Whether she flew in the seconds before a fix, in its piece.
static bool flew_before(const lw_track *track, size_t fix)
{
    const double from = track->fixes[fix].time - FLEW_BEFORE;
    for (size_t i = fix + 1; i-- > 0 && track->fixes[i].time >= from;) {
        if (track->ways[i].flies) return true;
        if (track->ways[i].starts) return false;
    }
    return false;
}

// The stop that begins at a fix; returns the fix behind it.
static size_t add_stop(const lw_track *track, size_t first, lw_track_events *events)
{
    size_t i = first + 1;
    double slowest = track->ways[first].speed;
    while (i < track->count && !track->ways[i].starts && track->ways[i].speed < STOP_OVER) {
        slowest = fmin(slowest, track->ways[i].speed);
        i++;
    }
    const double lasts = track->fixes[i - 1].time - track->fixes[first].time;
    if (lasts < STOP_SECONDS) return i;
    add_event(events,
              (lw_track_event){.what = flew_before(track, first) ? LW_TRACK_SWIM : LW_TRACK_STOP,
                               .fix = first,
                               .time = track->fixes[first].time,
                               .lasts = lasts,
                               .slowest = slowest});
    return i;
}

void lw_track_fly(lw_track *track, lw_track_limits limits, lw_track_events *events)
{
    mark_flights(track, limits, events);
    for (size_t i = 0; i < track->count;) {
        if (track->ways[i].speed < SLOW)
            i = add_stop(track, i, events);
        else
            i++;
    }
}
