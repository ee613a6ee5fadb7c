// test_ride.c - claims about rides: what happens on them, how they end, and that each is its own.
// SPDX-License-Identifier: MIT

#include "lullwise/ride.h"
#include "test/check.h"
#include "test/random_boat.h"
#include "test/ride.h"

// --- lanes

TEST_FUNCTION(ride_depends_neither_on_its_neighbours_nor_on_how_steps_are_shared_out)
{
    enum { RIDES = 7 };
    static flown f;
    static lw_ride together[RIDES], alone;
    flown_fill(&f, 0, 16.0, 100.0);
    flown_stir(&f, 0.25);
    for (int i = 0; i < RIDES; i++) {
        f.plan.seed = (uint64_t)i + 1;
        lw_ride_begin(&together[i], &f.motion, &f.plan);
    }
    lw_rides_advance(&f.motion, together, RIDES, 3000);
    for (int i = 0; i < RIDES; i++) {
        f.plan.seed = (uint64_t)i + 1;
        lw_ride_begin(&alone, &f.motion, &f.plan);
        for (int part = 0; part < 30; part++) lw_rides_advance(&f.motion, &alone, 1, 100);
        CHECK(memcmp(alone.lane, together[i].lane, sizeof alone.lane) == 0);
        CHECK(memcmp(&alone.tally, &together[i].tally, sizeof alone.tally) == 0);
    }
}

// --- events and ends

// What the half second after an event of a kind brings, over rides in far too much wind until the
// first swim; and how far she turns in any half second before.
typedef struct after {
    double events, pitch, turned;  // counted; bow up, and turned either way [rad], summed
    double halves, usually;
} after;

static void ride_on(const flown *f, lw_ride *ride, int steps, after *sum, bool happened)
{
    const lw_ride_state was = lw_ride_now(ride);
    lw_rides_advance(&f->motion, ride, 1, (size_t)steps);
    const lw_ride_state is = lw_ride_now(ride);
    if (lw_ride_tally_swims(&ride->tally) > 0.0) return;
    const double turned = fabs(is.bow - was.bow);
    if (happened) {
        sum->events += 1.0, sum->pitch += is.pitch - was.pitch, sum->turned += turned;
    } else {
        sum->halves += 1.0, sum->usually += turned;
    }
}

static after after_all(lw_ride_what what)
{
    static flown f;
    after sum = {0};
    flown_fill(&f, 0, 14.0, 100.0);
    f.plan.wind = 30.0 * LW_KN;
    flown_stir(&f, 0.2);
    for (uint64_t seed = 1; seed <= 60; seed++) {
        lw_ride ride = {.events = NULL};
        f.plan.seed = seed;
        lw_ride_begin(&ride, &f.motion, &f.plan);
        while (lw_ride_tally_swims(&ride.tally) == 0.0 && ride.tally.seconds < 60.0) {
            const double count = ride.tally.count[what];
            const bool is_early = ride.tally.seconds < 1.0;  // all is as usual yet
            if (is_early) ride_on(&f, &ride, 25, &sum, false);
            if (!is_early) lw_rides_advance(&f.motion, &ride, 1, 1);
            if (ride.tally.count[what] > count) ride_on(&f, &ride, 25, &sum, true);
        }
    }
    return sum;
}

// Air on the main foil drops the bow, air on the rudder's blade spins her: seen from the events.
TEST_FUNCTION(bow_drops_after_air_on_the_main_foil_and_air_on_the_blade_turns_her)
{
    const after foil = after_all(LW_RIDE_FOIL_AIR), blade = after_all(LW_RIDE_BLADE_AIR);
    printf(
        "  in half a second: bow %+.1f deg after air on the main foil (%.0f times); turned by "
        "%.1f deg after air on the blade (%.0f times), %.1f deg before\n",
        foil.pitch / foil.events / LW_DEG, foil.events, blade.turned / blade.events / LW_DEG,
        blade.events, blade.usually / blade.halves / LW_DEG);
    CHECK(foil.events >= 10.0 && blade.events >= 10.0);
    CHECK(foil.pitch / foil.events < -5.0 * LW_DEG);
    CHECK(blade.turned / blade.events > 1.5 * blade.usually / blade.halves);
}

// A boat trimmed for 14 kn comes to grief in gusts about 28 kn, and each time
// the story has its parts: she was flying or afloat, fell, lay for the cost of a swim, went on.
TEST_FUNCTION(swim_costs_its_time_and_is_followed_by_going_on)
{
    static flown f;
    static lw_ride_event events[400];
    flown_fill(&f, 1, 14.0, 100.0);
    f.plan.wind = 28.0 * LW_KN;
    flown_stir(&f, 0.2);
    lw_ride ride = {.events = events, .event_room = 400};
    lw_ride_begin(&ride, &f.motion, &f.plan);
    lw_rides_advance(&f.motion, &ride, 1, 30000);
    CHECK(lw_ride_tally_swims(&ride.tally) >= 2.0);
    double fell = -1.0, lain = 0.0;
    for (size_t i = 0; i < ride.event_count; i++) {
        const lw_ride_event *event = &events[i];
        CHECK(lw_ride_event_text(event->what)[0] != '\0');
        if (lw_ride_event_is_swim(event->what)) {
            CHECK(fell < 0.0);  // nobody falls while swimming
            fell = event->at.time;
        } else if (event->what == LW_RIDE_AGAIN) {
            CHECK_NEAR(event->at.time - fell, f.motion.parameters.swim,
                       3.0 * f.motion.parameters.step);
            lain += event->at.time - fell;
            fell = -1.0;
        } else {
            CHECK(fell < 0.0);  // and nothing else happens meanwhile
        }
    }
    CHECK(ride.tally.swimming >= lain - 1.0);
}

// From rest on the hull in a good wind she gathers way, launches, turns to her course and flies as
// the balance does.
TEST_FUNCTION(boat_at_rest_launches_and_comes_to_her_balance)
{
    static lw_ride_event events[100];
    flown f;
    flown_fill(&f, 1, 14.0, 100.0);
    const lw_ride_state balance = f.plan.start;
    f.plan.start = f.plan.rest, f.plan.starts_aloft = false;
    lw_ride ride = {.events = events, .event_room = 100};
    lw_ride_begin(&ride, &f.motion, &f.plan);
    CHECK(lw_ride_stands(&ride) == LW_STANDS_AFLOAT);
    lw_rides_advance(&f.motion, &ride, 1, 6000);
    CHECK(ride.tally.count[LW_RIDE_LAUNCH] == 1.0);
    CHECK(lw_ride_tally_swims(&ride.tally) == 0.0);
    CHECK(lw_ride_stands(&ride) == LW_STANDS_FLYING);
    const lw_ride_state end = lw_ride_now(&ride);
    CHECK_RELATIVE(end.surge, balance.surge, 2e-3);
    CHECK_RELATIVE(end.heel, balance.heel, 2e-2);
}

TEST_FUNCTION(sailor_holds_an_ordinary_wind_and_loses_far_too_much)
{
    enum { RIDES = 8 };
    static flown f;
    static lw_ride rides[RIDES];
    double swims[2];
    for (int strong = 0; strong < 2; strong++) {
        flown_fill(&f, 1, 14.0, 100.0);
        if (strong) f.plan.wind = 28.0 * LW_KN;
        flown_stir(&f, 0.2);
        for (int i = 0; i < RIDES; i++) {
            f.plan.seed = (uint64_t)i + 1;
            lw_ride_begin(&rides[i], &f.motion, &f.plan);
        }
        lw_rides_advance(&f.motion, rides, RIDES, 15000);  // five minutes
        swims[strong] = 0.0;
        for (int i = 0; i < RIDES; i++) swims[strong] += lw_ride_tally_swims(&rides[i].tally);
    }
    printf("  swims: %.0f in an ordinary wind, %.0f in far too much\n", swims[0], swims[1]);
    CHECK(swims[0] <= 1.0);
    CHECK(swims[1] >= 2.0 * RIDES);
}

static bool is_finite(const double *x, size_t n)
{
    for (size_t k = 0; k < n; k++) {
        if (!isfinite(x[k])) return false;
    }
    return true;
}

// Any boat a file may describe, on any day: some cannot sail at all, but each ride says how it
// stands and none holds what is no number. The polars are those of the preset's sections. 10,000
// rides, and under `make soak` more: 250 boats and days, four pins, ten seeds each.
TEST_FUNCTION(ride_of_any_boat_on_any_day_ends_with_a_name_and_in_numbers)
{
    enum { PLANS = 4, SEEDS = 10, RIDES = PLANS * SEEDS, STEPS = 400 };
    static lw_craft craft;
    static lw_ride rides[RIDES];
    random_stream stream = {17};
    long again = 0;
    for (int run = 0; run < 250 * soak_times(); run++) {
        const boat_kind kind = run % 2 ? BOAT_ANY : BOAT_USUAL;
        const lw_boat boat = random_boat(kind, &stream, &again);
        const lw_person person = random_person(kind, &stream);
        const lw_day day = random_day(kind, &stream);
        const lw_medium medium = lw_medium_of(&day);
        lw_craft_prepare(&craft, &boat, preset_sections(), &person, &medium);
        lw_motion motion = lw_motion_of(&craft);
        motion.is_gusty = motion.is_choppy = true;
        motion.gust = lw_gust_filter_of(lw_gust_kind_of(&day, craft.sail.centre_height),
                                        motion.parameters.step);
        motion.sea = lw_sea_kind_of(&medium, day.wind.mean);
        for (int i = 0; i < PLANS; i++) {
            lw_setup setup = craft.setup;
            setup.incidence = boat.pins[i].incidence;
            const double heading = random_between(&stream, 30.0, 170.0) * LW_DEG;
            const lw_ask ask = lw_ask_of(&craft, &setup, day.wind.mean, heading);
            lw_answer answer;
            lw_balance(&craft, &ask, &answer, 1);
            lw_ride_plan plan = lw_ride_plan_of(&motion, &ask, &answer);
            for (int k = SEEDS * i; k < SEEDS * (i + 1); k++) {
                plan.seed = random_bits(&stream);
                rides[k].events = NULL;
                lw_ride_begin(&rides[k], &motion, &plan);
            }
        }
        lw_rides_advance(&motion, rides, RIDES, STEPS);
        for (int i = 0; i < RIDES; i++) {
            const lw_ride_state now = lw_ride_now(&rides[i]);
            const lw_trace at = lw_ride_trace(&motion, &rides[i]);
            CHECK(is_finite(now.at, LW_RIDE_STATES));
            CHECK(is_finite((const double *)&at, sizeof at / sizeof(double)));
            CHECK(
                is_finite((const double *)&rides[i].tally, sizeof rides[i].tally / sizeof(double)));
            CHECK_NEAR(rides[i].tally.seconds, STEPS * motion.parameters.step, 1e-9);
            CHECK(lw_ride_stand_text(lw_ride_stands(&rides[i]))[0] != '\0');
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(ride_depends_neither_on_its_neighbours_nor_on_how_steps_are_shared_out),
        TEST(bow_drops_after_air_on_the_main_foil_and_air_on_the_blade_turns_her),
        TEST(swim_costs_its_time_and_is_followed_by_going_on),
        TEST(boat_at_rest_launches_and_comes_to_her_balance),
        TEST(sailor_holds_an_ordinary_wind_and_loses_far_too_much),
        TEST(ride_of_any_boat_on_any_day_ends_with_a_name_and_in_numbers),
    };
    return RUN_TESTS(tests);
}
