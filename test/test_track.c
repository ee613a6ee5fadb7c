// test_track.c - claims about a sailed track: speeds, best averages, wind, flights, stops, turns.
// SPDX-License-Identifier: MIT

#include "lullwise/track.h"

#include <stdlib.h>

#include "lullwise/track_summary.h"
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
    size_t tracks, doubtful;
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
        t.doubtful += s.wind.is_doubtful;
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
    CHECK(t.doubtful * 20 <= t.tracks);
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

// --- speeds and best averages

// So many fixes a second each, with a speed [m/s] from a function of time, eastward; told or not.
static seen sail_east(double (*speed)(double), size_t count, bool is_told)
{
    seen s = {.events = {.list = events_room, .room = MADE_EVENTS}};
    double east = 0.0;
    s.fixes = calloc(count, sizeof *s.fixes);
    s.track = (lw_track){s.fixes, calloc(count, sizeof(lw_track_way)), count};
    for (size_t i = 0; i < count; i++) {
        const double time = (double)i;
        s.fixes[i] = (lw_fix){.time = time, .east = east, .speed = NAN, .course = NAN};
        if (is_told) s.fixes[i].speed = speed(time), s.fixes[i].course = 0.5 * LW_PI;
        east += 0.5 * (speed(time) + speed(time + 1.0));
    }
    lw_track_smooth(&s.track);
    return s;
}

static double steady(double time) { return 5.0 + 0.0 * time; }
static double rising(double time) { return 4.0 + 0.1 * time; }
static double burst(double time) { return time >= 20.0 && time <= 30.0 ? 10.0 : 5.0; }

TEST_FUNCTION(a_steady_speed_is_every_average_and_the_course_is_east)
{
    for (int told = 0; told < 2; told++) {
        seen s = sail_east(steady, 400, told);
        for (size_t i = 0; i < s.track.count; i++) {
            CHECK_NEAR(s.track.ways[i].speed, 5.0, 1e-9);
            CHECK_NEAR(s.track.ways[i].course, 0.5 * LW_PI, 1e-9);
        }
        CHECK_NEAR(lw_track_best_over(&s.track, 2.0), 5.0, 1e-9);
        CHECK_NEAR(lw_track_best_over(&s.track, 7.3), 5.0, 1e-9);
        CHECK_NEAR(lw_track_best_along(&s.track, 100.0), 5.0, 1e-9);
        CHECK_NEAR(lw_track_best_along(&s.track, LW_NMI), 5.0, 1e-9);
        CHECK_NEAR(s.track.ways[399].run, 5.0 * 399.0, 1e-6);
        CHECK(isnan(lw_track_best_along(&s.track, 2000.0)));
        CHECK(isnan(lw_track_best_over(&s.track, 400.0)));
        forget(&s);
    }
}

// Speed told rises by 0.1 m/s each second to 43.9: the last 2.5 s are best, straight within the
// second that is cut. Metres of the last seconds by hand: 43.85, 43.75, and of the second before,
// from 43.6 to 43.7 m/s, taken as even, half of 43.65: 109.425 m in 2.5 s.
TEST_FUNCTION(best_averages_are_taken_between_fixes_too)
{
    seen s = sail_east(rising, 400, true);
    CHECK_NEAR(lw_track_best_over(&s.track, 2.5), 109.425 / 2.5, 1e-9);
    CHECK_NEAR(lw_track_best_along(&s.track, 109.425), 109.425 / 2.5, 1e-9);
    forget(&s);
    // ten seconds at 10 m/s, a second at 7.5 on either side: 12 s have 115 m
    s = sail_east(burst, 100, true);
    CHECK_NEAR(lw_track_best_over(&s.track, 10.0), 10.0, 1e-9);
    CHECK_NEAR(lw_track_best_over(&s.track, 12.0), 115.0 / 12.0, 1e-9);
    CHECK_NEAR(lw_track_best_along(&s.track, 100.0), 10.0, 1e-9);
    forget(&s);
}

TEST_FUNCTION(no_average_spans_a_gap)
{
    seen s = sail_east(steady, 100, true);
    s.fixes[50].starts = true;
    lw_track_smooth(&s.track);
    CHECK_NEAR(lw_track_best_over(&s.track, 49.0), 5.0, 1e-9);
    CHECK(isnan(lw_track_best_over(&s.track, 49.5)));
    CHECK(isnan(lw_track_best_along(&s.track, 250.0)));
    CHECK_NEAR(s.track.ways[99].run, 5.0 * 98.0, 1e-6);
    forget(&s);
}

// --- laws

// A track turned has its wind turned; one mirrored east and west has it mirrored; a boat twice as
// far off sees nothing else.
TEST_FUNCTION(the_wind_turns_with_the_track)
{
    static made_track made;
    made_sail(&made, 5, 3600.0, true);
    seen a = see(&made, 1.0, NOISE, false);
    for (int degrees = 0; degrees < 360; degrees += 50) {
        seen b = see(&made, 1.0, NOISE, false);
        const double c = cos(degrees * LW_DEG), s = sin(degrees * LW_DEG);
        for (size_t i = 0; i < b.track.count; i++) {
            const lw_fix fix = b.fixes[i];
            b.fixes[i].east = c * fix.east + s * fix.north + 1000.0;
            b.fixes[i].north = c * fix.north - s * fix.east - 500.0;
        }
        lw_track_smooth(&b.track);
        b.wind = lw_track_wind_of(&b.track, &room);
        CHECK(off_of(b.wind.from - a.wind.from - degrees * LW_DEG) < 1.0 * LW_DEG);
        forget(&b);
    }
    forget(&a);
}

TEST_FUNCTION(time_by_angle_and_flown_is_the_time_under_way)
{
    static made_track made;
    lw_track_angle angles[LW_TRACK_ANGLES];
    made_sail(&made, 6, 3600.0, true);
    seen s = see(&made, 1.0, NOISE, true);
    const lw_track_sum sum = lw_track_sum_of(&s.track, &s.events);
    lw_track_by_angle(&s.track, s.wind.from, angles);
    double seconds = 0.0, flying = 0.0;
    for (int i = 0; i < LW_TRACK_ANGLES; i++) {
        seconds += angles[i].seconds, flying += angles[i].flying;
        CHECK(!(angles[i].seconds > 10.0) || angles[i].fast >= 0.8 * angles[i].mean);
    }
    CHECK_NEAR(seconds, sum.under_way, 1e-6);
    CHECK_NEAR(flying, sum.flying, 1e-6);
    CHECK(sum.flying <= sum.under_way && sum.under_way <= sum.seconds);
    forget(&s);
}

TEST_FUNCTION(a_wind_that_is_given_counts_before_one_told_and_that_before_the_sailing)
{
    static made_track made;
    static const double winds[][3] = {{-1.0, 2.0, 2.0 * LW_PI - 1.0}, {NAN, 2.0, 2.0}};
    lw_track_summary summary;
    made_sail(&made, 7, 3600.0, true);
    seen s = see(&made, 1.0, NOISE, true);
    lw_track_known known = {NAN, NAN, {LW_TRACK_UP, LW_TRACK_DOWN}};
    for (int i = 0; i < 3; i++) {
        if (i < 2) known.given = winds[i][0], known.told = winds[i][1];
        if (i == 2) known.given = known.told = NAN;
        s.events.count = 0;
        lw_track_summary_of(&s.track, &known, &room, &s.events, &summary);
        CHECK(summary.by == (lw_track_by)(LW_TRACK_BY_WORD + i));
        CHECK_NEAR(summary.from, i < 2 ? winds[i][2] : s.wind.from, 1e-12);
        CHECK(isnan(summary.error) == (i < 2));
    }
    CHECK_NEAR(summary.best[0], lw_track_best_over(&s.track, 2.0), 0.0);
    CHECK_NEAR(summary.best[4], lw_track_best_along(&s.track, LW_NMI), 0.0);
    CHECK(summary.best[1] <= summary.best[0] && summary.best[4] <= summary.best[3]);
    forget(&s);
}

TEST_FUNCTION(events_beyond_the_room_are_counted)
{
    static made_track made;
    made_sail(&made, 6, 3600.0, true);
    seen s = see(&made, 1.0, NOISE, true);
    lw_track_events few = {.list = events_room, .room = 3};
    const size_t all = s.events.count;
    lw_track_fly(&s.track, (lw_track_limits){LW_TRACK_UP, LW_TRACK_DOWN}, &few);
    lw_track_turn(&s.track, s.wind.from, &few);
    CHECK(few.count == 3 && few.count + few.left_out == all);
    forget(&s);
}

// The lesser tack a fifth of the time.
TEST_FUNCTION(the_wind_is_found_of_tacks_that_are_sailed_unevenly)
{
    static made_track made;
    for (uint64_t seed = 1; seed <= 6; seed++) {
        made_sail(&made, seed, 7200.0, true);
        lw_fix *fixes;
        size_t kept = 0;
        const size_t count = made_look(&made, 1.0, NOISE, true, &fixes);
        for (size_t i = 0; i < count; i++) {
            const bool is_port = sin(made.courses[10 * i] - made.wind) > 0.0;
            if (is_port || i % 400 < 100) fixes[kept++] = fixes[i];
        }
        lw_track track = {fixes, calloc(kept, sizeof(lw_track_way)), kept};
        lw_track_smooth(&track);
        const lw_track_wind wind = lw_track_wind_of(&track, &room);
        CHECK(wind.is_found && wind.lesser < 0.35);
        CHECK(off_of(wind.from - made.wind) < 5.0 * LW_DEG);
        free(fixes);
        free(track.ways);
    }
}

// A current carries everything; it is no part of the model.
static lw_track_wind wind_in_current(const made_track *m, double current, double to)
{
    lw_fix *fixes;
    const size_t count = made_look(m, 1.0, NOISE, false, &fixes);
    lw_track track = {fixes, calloc(count, sizeof(lw_track_way)), count};
    for (size_t i = 0; i < count; i++) {
        fixes[i].east += current * fixes[i].time * sin(to);
        fixes[i].north += current * fixes[i].time * cos(to);
    }
    lw_track_smooth(&track);
    const lw_track_wind wind = lw_track_wind_of(&track, &room);
    free(fixes);
    free(track.ways);
    return wind;
}

TEST_FUNCTION(a_current_of_a_knot_moves_the_wind_little_or_is_doubted)
{
    static made_track made;
    int doubtful = 0;
    for (uint64_t seed = 1; seed <= 8; seed++) {
        made_sail(&made, seed * 1000, 3600.0, true);
        for (int way = 0; way < 4; way++) {
            const double to = made.wind + 0.5 * way * LW_PI;
            const lw_track_wind wind = wind_in_current(&made, LW_KN, to);
            const bool is_near = off_of(wind.from - made.wind) < 5.0 * LW_DEG;
            CHECK(is_near || wind.is_doubtful);
            doubtful += wind.is_doubtful;
        }
    }
    print_message("in a knot of current doubted %d times of 32\n", doubtful);
    CHECK(doubtful <= 12);
}

TEST_FUNCTION(a_track_of_nothing_has_no_wind_and_no_events)
{
    seen s = sail_east(steady, 2, false);
    s.fixes[1].east = 0.0;
    lw_track_smooth(&s.track);
    const lw_track_wind wind = lw_track_wind_of(&s.track, &room);
    CHECK(!wind.is_found && isnan(wind.from));
    lw_track_fly(&s.track, (lw_track_limits){LW_TRACK_UP, LW_TRACK_DOWN}, &s.events);
    CHECK(s.events.count == 0);
    CHECK(isnan(lw_track_best_over(&s.track, 2.0)));
    forget(&s);
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
        TEST(a_steady_speed_is_every_average_and_the_course_is_east),
        TEST(best_averages_are_taken_between_fixes_too),
        TEST(no_average_spans_a_gap),
        TEST(the_wind_turns_with_the_track),
        TEST(time_by_angle_and_flown_is_the_time_under_way),
        TEST(a_wind_that_is_given_counts_before_one_told_and_that_before_the_sailing),
        TEST(events_beyond_the_room_are_counted),
        TEST(the_wind_is_found_of_tacks_that_are_sailed_unevenly),
        TEST(a_current_of_a_knot_moves_the_wind_little_or_is_doubted),
        TEST(a_track_of_nothing_has_no_wind_and_no_events),
        TEST(no_wind_is_found_when_one_tack_was_sailed),
    };
    return RUN_TESTS(tests);
}
