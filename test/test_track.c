// test_track.c - claims about a sailed track: speeds, best averages, wind, flights, stops, turns.
// SPDX-License-Identifier: MIT

#include "lullwise/track.h"

#include <stdlib.h>

#include "lullwise/track_events.h"
#include "test/check.h"
#include "test/made_track.h"

#define NOISE (0.3 * LW_KN)  // of a receiver's speed

static lw_track_event events_room[MADE_EVENTS];
static lw_track_room room;

typedef struct seen {
    lw_fix *fixes;
    lw_track track;
    lw_track_events events;
    lw_track_wind wind;
} seen;

static seen see(const made_track *m, double hz, double noise, bool is_told)
{
    seen s = {.events = {.list = events_room, .room = MADE_EVENTS}};
    s.track.count = made_look(m, hz, noise, is_told, &s.fixes);
    s.track.fixes = s.fixes;
    s.track.ways = calloc(s.track.count, sizeof *s.track.ways);
    lw_track_smooth(&s.track);
    s.wind = lw_track_wind_of(&s.track, &room);
    lw_track_fly(&s.track, (lw_track_limits){LW_TRACK_UP, LW_TRACK_DOWN}, &s.events);
    lw_track_turn(&s.track, s.wind.from, &s.events);
    return s;
}

static void forget(seen *s)
{
    free(s->fixes);
    free(s->track.ways);
}

static double off_of(double angle)
{
    return fabs(angle - 2.0 * LW_PI * floor(angle / (2.0 * LW_PI) + 0.5));
}

// --- what is found of made tracks

typedef struct tally {
    size_t made, seen, matched, flown_alike, turns;
    double worst, sum2, chi2;  // [deg] of the wind
    size_t tracks;
} tally;

#define CLOSE 4.0  // [s]

static void match(const made_track *m, const lw_track_events *events, tally *t)
{
    bool *taken = calloc(events->count + 1, sizeof *taken);
    for (size_t i = 0; i < m->event_count; i++) {
        const made_event *made = &m->events[i];
        size_t best = events->count;
        double apart = CLOSE;
        for (size_t k = 0; k < events->count; k++) {
            const double off = fabs(events->list[k].time - made->time);
            if (taken[k] || events->list[k].what != made->what || !(off < apart)) continue;
            best = k, apart = off;
        }
        if (best == events->count) continue;
        taken[best] = true;
        t->matched++;
        if (made->what != LW_TRACK_TACK && made->what != LW_TRACK_GYBE) continue;
        t->turns++;
        t->flown_alike += events->list[best].is_flown == made->is_flown;
    }
    t->made += m->event_count;
    t->seen += events->count;
    free(taken);
}

static tally sail_many(int tracks, double hz, bool is_told)
{
    static made_track made;
    tally t = {0};
    for (int seed = 1; seed <= tracks * soak_times(); seed++) {
        made_sail(&made, (uint64_t)seed * 1000, 3600.0, true);
        seen s = see(&made, hz, NOISE, is_told);
        match(&made, &s.events, &t);
        const double off = off_of(s.wind.from - made.wind) / LW_DEG;
        CHECK(s.wind.is_found);
        t.worst = fmax(t.worst, off);
        t.sum2 += off * off;
        t.chi2 += off * off / (s.wind.error * s.wind.error) * LW_DEG * LW_DEG;
        t.tracks++;
        forget(&s);
    }
    print_message(
        "%g Hz, %s: %zu events, found %.1f %%, false %.1f %%; flown told right %.1f %%; "
        "wind off by %.1f deg at most, %.1f rms, %.1f of its error\n",
        hz, is_told ? "told" : "places", t.made, 100.0 * (double)t.matched / (double)t.made,
        100.0 * (double)(t.seen - t.matched) / (double)t.seen,
        100.0 * (double)t.flown_alike / (double)t.turns, t.worst, sqrt(t.sum2 / (double)t.tracks),
        sqrt(t.chi2 / (double)t.tracks));
    return t;
}

static void check_tally(tally t)
{
    CHECK((double)t.matched >= 0.95 * (double)t.made);
    CHECK((double)(t.seen - t.matched) <= 0.05 * (double)t.seen);
    CHECK((double)t.flown_alike >= 0.95 * (double)t.turns);
    CHECK(t.worst <= 5.0);
}

TEST_FUNCTION(made_tracks_at_1_hz_are_found_by_places_and_by_speeds_told)
{
    check_tally(sail_many(12, 1.0, false));
    check_tally(sail_many(12, 1.0, true));
}

TEST_FUNCTION(made_tracks_at_10_hz_are_found_by_places_and_by_speeds_told)
{
    check_tally(sail_many(6, 10.0, false));
    check_tally(sail_many(6, 10.0, true));
}

TEST_FUNCTION(no_wind_is_found_when_one_tack_was_sailed)
{
    static made_track made;
    for (uint64_t seed = 1; seed <= 8; seed++) {
        made_sail(&made, seed, 1800.0, false);
        seen s = see(&made, 1.0, NOISE, false);
        CHECK(!s.wind.is_found || s.wind.is_doubtful);
        forget(&s);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(made_tracks_at_1_hz_are_found_by_places_and_by_speeds_told),
        TEST(made_tracks_at_10_hz_are_found_by_places_and_by_speeds_told),
        TEST(no_wind_is_found_when_one_tack_was_sailed),
    };
    return RUN_TESTS(tests);
}
