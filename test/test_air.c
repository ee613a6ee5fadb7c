// test_air.c - laws of air on foils, and of hulls that meet the water.
// SPDX-License-Identifier: MIT

#include "boat/force.h"
#include "foil/ventilation/face.h"
#include "lullwise/swims.h"
#include "motion/ride/fleet.h"
#include "test/demo.h"
#include "test/ride.h"

// --- a foil with air on its back

static lw_foil_flow random_flow(random_stream *stream)
{
    const double speed = random_between(stream, 4.0, 14.0);
    const lw_lanes log_speed = lw_lanes_log(lw_all(speed));
    return (lw_foil_flow){.forward = lw_all(speed),
                          .upward = lw_all(random_between(stream, -3.0, 3.0)),
                          .log_speed = log_speed,
                          .at_speed = lw_interval_of(LW_SPEED_FIRST, LW_SPEED_STEP, log_speed),
                          .incidence = lw_all(random_between(stream, -0.1, 0.1)),
                          .flap = lw_all(random_between(stream, -0.17, 0.17)),
                          .depth = lw_all(random_between(stream, -0.05, 1.0)),
                          .tip_rise = lw_all(random_between(stream, 0.0, 0.2))};
}

TEST_FUNCTION(face_only_ever_takes_power)
{
    const lw_craft craft = preset_craft();
    random_stream stream = {3};
    for (int i = 0; i < 2000; i++) {
        const lw_foil_load load =
            lw_foil_ventilated_force(&craft.main_foil, 1000.0, random_flow(&stream));
        CHECK(load.drag[0] >= 0.0);  // the lift stands square to the flow
        CHECK(isfinite(load.lift[0]) && isfinite(load.moment[0]));
    }
}

TEST_FUNCTION(face_lifts_less_than_the_wet_foil_does_at_the_angles_of_flight)
{
    const lw_craft craft = preset_craft();
    lw_foil_flow flow = {.forward = lw_all(9.0), .upward = lw_all(0.0), .depth = lw_all(0.4)};
    flow.log_speed = lw_lanes_log(flow.forward);
    flow.at_speed = lw_interval_of(LW_SPEED_FIRST, LW_SPEED_STEP, flow.log_speed);
    flow.tip_rise = flow.flap = lw_all(0.0);
    for (double alpha = 0.5; alpha < 8.0; alpha += 0.5) {
        flow.incidence = lw_all(alpha * LW_DEG);
        const double wet = lw_foil_force(&craft.main_foil, 1000.0, flow).lift[0];
        const double airy = lw_foil_ventilated_force(&craft.main_foil, 1000.0, flow).lift[0];
        CHECK(airy > 0.0 && airy < 0.5 * wet);
    }
}

TEST_FUNCTION(face_turned_away_from_the_flow_lifts_nothing)
{
    for (double depth = 0.2; depth < 10.0; depth *= 2.0) {
        const lw_face face = lw_face_of(depth, 0.3);
        CHECK(lw_face_lift(face.slope, 0.05, -5.0 * LW_DEG, 0.05) < 1e-3);
        CHECK(lw_face_lift(face.slope, 0.05, 5.0 * LW_DEG, 0.05) > 0.1);
    }
}

TEST_FUNCTION(load_goes_from_wet_to_ventilated_with_the_air)
{
    const lw_craft craft = preset_craft();
    random_stream stream = {4};
    for (int i = 0; i < 200; i++) {
        lw_foil_flow flow = random_flow(&stream);
        const lw_foil_load wet = lw_foil_force(&craft.main_foil, 1000.0, flow);
        const lw_foil_load airy = lw_foil_ventilated_force(&craft.main_foil, 1000.0, flow);
        lw_foil_load none = wet, half = wet, all = wet;
        flow.ventilated = lw_all(0.0), lw_foil_ventilate(&craft.main_foil, 1000.0, flow, &none);
        flow.ventilated = lw_all(0.5), lw_foil_ventilate(&craft.main_foil, 1000.0, flow, &half);
        flow.ventilated = lw_all(1.0), lw_foil_ventilate(&craft.main_foil, 1000.0, flow, &all);
        CHECK(none.lift[0] == wet.lift[0] && none.drag[0] == wet.drag[0]);
        CHECK_NEAR(half.lift[0], 0.5 * (wet.lift[0] + airy.lift[0]), 1e-9);
        CHECK_NEAR(all.lift[0], airy.lift[0], 1e-9);
    }
}

// A cavity that is loaded holds more air, and lasts; one that is not is gone at once.
TEST_FUNCTION(cavity_lasts_longer_the_more_it_is_loaded)
{
    double before = 0.0;
    for (double alpha = 0.0; alpha < 12.0; alpha += 1.0) {
        const double way =
            lw_cavity_lasts(0.083, lw_all(alpha * LW_DEG), lw_all(0.4), lw_all(9.0))[0];
        CHECK(way >= before && way >= 5.0 * 0.083 && way <= 100.0 * 0.083);
        before = way;
    }
}

// --- a hull that meets the water

TEST_FUNCTION(hull_that_meets_the_water_only_ever_loses_power)
{
    const lw_craft craft = preset_craft();
    random_stream stream = {5};
    for (int i = 0; i < 2000; i++) {
        const lw_vector none = {lw_all(0.0), lw_all(0.0), lw_all(0.0)};
        const lw_hull_in_water in = {.water = lw_all(random_between(&stream, -0.3, 0.4)),
                                     .slope = lw_all(random_between(&stream, -0.2, 0.2))};
        const lw_vector spin = {.y = lw_all(random_between(&stream, -2.0, 2.0))};
        const lw_vector through = {.x = lw_all(random_between(&stream, 0.0, 14.0)),
                                   .z = lw_all(random_between(&stream, -3.0, 3.0))};
        lw_loads loads = {.inflow = {.through = through, .spin = spin, .hull = in}};
        loads.hull.stem = lw_hull_stem(&craft.hull, in);
        lw_sum sum = {none, none};
        lw_add_impact(&craft, &loads, &sum);
        const lw_lanes power =
            sum.force.x * through.x + sum.force.z * through.z + sum.moment.y * spin.y;
        CHECK(power[0] <= 1e-9);
        CHECK(sum.force.z[0] >= 0.0);  // water does not pull
    }
}

// --- rides

// Air drawn down to the main foil of a boat in steady flight for a fifth of a second, in calm water
// and even wind: how far she and her bow go down in half a second.
static void half_a_second_of_air(const flown *f, double *fall, double *bow)
{
    lw_ride ride = {.events = NULL};
    lw_ride_begin(&ride, &f->motion, &f->plan);
    const size_t on = offsetof(lw_fleet, boats.memory.main.foil.on) / sizeof(lw_lanes);
    const size_t held = offsetof(lw_fleet, boats.memory.main.foil.held) / sizeof(lw_lanes);
    *fall = *bow = 0.0;
    for (int step = 0; step < 25; step++) {
        if (step < 10) ride.lane[on] = -1, ride.lane[held] = 0;
        lw_rides_advance(&f->motion, &ride, 1, 1);
        const lw_ride_state now = lw_ride_now(&ride);
        *fall = fmax(*fall, f->plan.start.height - now.height);
        *bow = fmax(*bow, f->plan.start.pitch - now.pitch);
    }
}

TEST_FUNCTION(air_on_the_main_foil_drops_boat_and_bow_within_half_a_second)
{
    static flown f;
    double boats = 0.0, drops = 0.0, bow = 0.0, fall = 0.0, down, nose;
    for (int pin = 0; pin < 3; pin++) {
        for (double wind = 12.0; wind < 21.0; wind += 2.0) {
            for (double heading = 90.0; heading < 145.0; heading += 15.0) {
                flown_fill(&f, pin, wind, heading);
                const lw_flight *flight = &f.answer.flight;
                if (f.answer.outcome != LW_FLIES || flight->speed < 15.0 * LW_KN) continue;
                half_a_second_of_air(&f, &down, &nose);
                boats += 1.0, bow += nose, fall += down;
                drops += down > 0.2 && nose > 2.0 * LW_DEG;
            }
        }
    }
    printf(
        "  half a second after air on the main foil: down by %.2f m, bow by %.1f deg, both %.0f of "
        "%.0f times\n",
        fall / boats, bow / boats / LW_DEG, drops, boats);
    CHECK(boats >= 40.0);
    CHECK(drops >= 0.9 * boats);
}

typedef struct tale {
    double events, touches, swims;
} tale;

// What follows air on the main foil at over 15 kn: a touch within a second, a swim within three.
static void add_tale(tale *sum, const lw_ride *ride)
{
    for (size_t i = 0; i < ride->event_count; i++) {
        const lw_ride_event *air = &ride->events[i];
        if (air->what != LW_RIDE_FOIL_AIR || air->at.speed < 15.0 * LW_KN) continue;
        bool touches = false, swims = false;
        for (size_t k = i + 1; k < ride->event_count; k++) {
            const double after = ride->events[k].at.time - air->at.time;
            touches |= after < 1.0 && ride->events[k].what == LW_RIDE_TOUCH;
            swims |= after < 3.0 && lw_ride_event_is_swim(ride->events[k].what);
        }
        sum->events += 1.0, sum->touches += touches, sum->swims += swims;
    }
}

// Sailors tell: the lift is gone, the bow drops at once and she comes down on the water; not each
// time is it a swim. The demo boat with her strongest pin in 18 kn.  [common practice]
TEST_FUNCTION(air_on_the_main_foil_in_waves_brings_the_hull_to_the_water_within_a_second)
{
    static flown f;
    static lw_ride rides[16];
    static lw_ride_event events[16][2000];
    tale sum = {0.0, 0.0, 0.0};
    read_demo();
    const lw_medium medium = lw_medium_of(&demo.day);
    lw_craft_prepare(&f.craft, &demo.boat, &demo.sections, &demo.sailor.person, &medium);
    const lw_setup setup = lw_craft_setup(&f.craft, &demo.boat, 0);
    f.ask = lw_ask_of(&f.craft, &setup, 18.0 * LW_KN, 138.0 * LW_DEG);
    const lw_freedom free = {
        .by = LW_BY_LEVEL, .heel = true, .place = true, .turns = true, .course = LW_PI};
    const lw_trim trim = lw_trim_of(&f.craft, &f.ask, &free);
    f.ask = trim.ask, f.answer = trim.steady;
    f.motion = lw_motion_of(&f.craft);
    f.plan = lw_ride_plan_of(&f.motion, &f.ask, &f.answer);
    const lw_weather weather = lw_weather_of(&f.craft, &demo.day);
    lw_weather_put(&weather, 18.0 * LW_KN, &f.motion);
    for (int i = 0; i < 16; i++) {
        rides[i] = (lw_ride){.events = events[i], .event_room = 2000};
        f.plan.seed = 1 + (uint64_t)i;
        lw_ride_begin(&rides[i], &f.motion, &f.plan);
    }
    lw_rides_advance(&f.motion, rides, 16, 15000);
    for (int i = 0; i < 16; i++) add_tale(&sum, &rides[i]);
    printf(
        "  air on the main foil %.0f times: a touch within 1 s %.0f %%, a swim within 3 s %.0f "
        "%%\n",
        sum.events, 100.0 * sum.touches / sum.events, 100.0 * sum.swims / sum.events);
    CHECK(sum.events > 30.0);
    CHECK(sum.touches > 0.6 * sum.events);  // aimed at: 0.9, common practice, no source
    CHECK(sum.swims > 0.05 * sum.events && sum.swims < 0.9 * sum.events);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(face_only_ever_takes_power),
        TEST(face_lifts_less_than_the_wet_foil_does_at_the_angles_of_flight),
        TEST(face_turned_away_from_the_flow_lifts_nothing),
        TEST(load_goes_from_wet_to_ventilated_with_the_air),
        TEST(cavity_lasts_longer_the_more_it_is_loaded),
        TEST(hull_that_meets_the_water_only_ever_loses_power),
        TEST(air_on_the_main_foil_drops_boat_and_bow_within_half_a_second),
        TEST(air_on_the_main_foil_in_waves_brings_the_hull_to_the_water_within_a_second),
    };
    return RUN_TESTS(tests);
}
