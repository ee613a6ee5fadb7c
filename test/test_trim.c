// test_trim.c - claims about heel, place and turns chosen by a criterion.
// SPDX-License-Identifier: MIT

#include "lullwise/range.h"
#include "test/demo.h"
#include "test/preset.h"

#define PUFF  (3.0 * LW_KN)
#define REACH (100.0 * LW_DEG)

static const lw_course reach = {REACH, REACH, REACH};

static lw_trim trim_by(const lw_craft *craft, lw_criterion by, double wind_kn)
{
    const lw_setup setup = preset_setup(craft, 1);
    const lw_walk walk = lw_walk_of(craft, &setup, reach, PUFF);
    const lw_trim start = lw_walk_flight(&walk, wind_kn * LW_KN);
    const lw_freedom free = {
        .by = by, .heel = true, .place = true, .turns = true, .course = REACH, .puff = PUFF};
    return lw_trim_from(craft, &start, &free);
}

TEST_FUNCTION(turns_chosen_for_speed_are_never_slower_than_a_level_bow)
{
    const lw_craft craft = preset_craft();
    for (double kn = 10.0; kn <= 16.0; kn += 1.0) {
        const lw_trim chosen = trim_by(&craft, LW_BY_SPEED, kn);
        const lw_trim level = trim_by(&craft, LW_BY_LEVEL, kn);
        CHECK(chosen.steady.outcome == LW_FLIES);
        CHECK_NEAR(level.steady.flight.pitch, 0.0, 1e-12);
        CHECK(chosen.score > level.score - 1e-3);
    }
}

TEST_FUNCTION(bow_goes_no_further_than_the_sailor_lets_it)
{
    lw_craft craft = preset_craft();
    for (double most = 0.5; most <= 3.0; most += 0.5) {
        craft.most_bow_down = craft.most_bow_up = most * LW_DEG;
        for (double kn = 9.0; kn <= 24.0; kn += 3.0) {
            const lw_trim trim = trim_by(&craft, LW_BY_SPEED, kn);
            CHECK(fabs(trim.steady.flight.pitch) <= most * LW_DEG + 1e-9);
        }
    }
}

// The turns that hold most leave no less of what more wind uses up than those for speed.
TEST_FUNCTION(turns_that_hold_most_leave_more_than_those_for_speed)
{
    const lw_craft craft = preset_craft();
    const lw_setup setup = preset_setup(&craft, 1);
    const lw_walk walk = lw_walk_of(&craft, &setup, reach, PUFF);
    for (double kn = 10.0; kn <= 20.0; kn += 2.0) {
        const lw_trim speed = lw_walk_flight(&walk, kn * LW_KN);
        const lw_trim most = lw_walk_holding(&walk, &speed);
        const lw_margins *s = &speed.steady.margins, *m = &most.steady.margins;
        const double least = fmin(s->tip_depth, s->rudder_tip);
        CHECK(fmin(m->tip_depth, m->rudder_tip) > least - 0.05);
        CHECK_NEAR(most.steady.flight.heel, speed.steady.flight.heel, 1e-9);
    }
}

// Along the wind, as far as she is held, no turn jumps: little for a fiftieth of a knot.
TEST_FUNCTION(turns_go_evenly_with_the_wind)
{
    const lw_craft craft = preset_craft();
    for (int pin = 0; pin < PRESET_PINS; pin++) {
        const lw_setup setup = preset_setup(&craft, pin);
        const lw_walk walk = lw_walk_of(&craft, &setup, reach, PUFF);
        bool follows = false;
        double before = 0.0;
        for (double kn = 9.0; kn <= 18.0; kn += 0.02) {
            const lw_trim trim = lw_walk_flight(&walk, kn * LW_KN);
            const bool is_held = lw_trim_is_held(&trim);
            if (follows && is_held) CHECK_NEAR(trim.steady.flight.turns, before, 0.15);
            before = trim.steady.flight.turns, follows = is_held;
        }
    }
}

// One finder: between two knots a flight is one that fits both of them.
TEST_FUNCTION(flight_between_knots_lies_between_theirs)
{
    const lw_craft craft = preset_craft();
    for (int pin = 0; pin < PRESET_PINS; pin++) {
        const lw_setup setup = preset_setup(&craft, pin);
        const lw_walk walk = lw_walk_of(&craft, &setup, reach, PUFF);
        for (int i = 6; i < 14; i++) {
            const lw_trim *a = &walk.trims[i], *b = &walk.trims[i + 1];
            if (!lw_trim_is_held(a) || !lw_trim_is_held(b)) continue;
            const lw_trim mid = lw_walk_flight(&walk, lw_range_wind(i) + 0.5 * LW_KN);
            const double V = 0.5 * (a->steady.flight.speed + b->steady.flight.speed);
            CHECK_NEAR(mid.steady.flight.speed, V, 0.1 * LW_KN);
        }
    }
}

// Of a walk upwind: what a search from nothing finds more, at most, up to a wind [m/s].
static double most_missed(const lw_walk *walk, double until_kn)
{
    double most = 0.0;
    for (int i = 0; lw_range_wind(i) <= until_kn * LW_KN; i++) {
        const lw_trim anew = lw_walk_trim(walk, lw_range_wind(i), NULL);
        if (!lw_trim_is_held(&anew)) continue;
        CHECK(lw_trim_is_held(&walk->trims[i]));
        most = fmax(most, anew.score - walk->trims[i].score);
    }
    return most;
}

// In light wind a strong pin is sailed bow up, in more of it bow down: whichever way the walk came,
// it is on the better one, whatever the puffs.
TEST_FUNCTION(no_search_from_nothing_finds_a_better_way_in_light_wind)
{
    const lw_craft craft = preset_craft();
    for (int pin = 0; pin < PRESET_PINS; pin++) {
        const lw_setup setup = preset_setup(&craft, pin);
        for (double puff = 2.0; puff <= 3.0; puff += 0.25) {
            const lw_walk walk = lw_walk_of(&craft, &setup, lw_course_of(LW_UPWIND), puff * LW_KN);
            CHECK(most_missed(&walk, 10.0) < 0.02);
        }
    }
}

// A light boat with the weakest pin flies with the bow up: from 45 to 115 kg there is no pin and no
// course without a flight that keeps its margins.
TEST_FUNCTION(every_sailor_has_a_flight_with_every_pin)
{
    read_demo();
    const lw_medium medium = lw_medium_of(&demo.day);
    for (double kg = 45.0; kg <= 115.0; kg += 4.7) {
        lw_person person = demo.sailor.person;
        lw_craft craft;
        person.mass = kg;
        lw_craft_prepare(&craft, &demo.boat, &demo.sections, &person, &medium);
        for (size_t pin = 0; pin < demo.boat.pin_count; pin++) {
            const lw_setup setup = lw_craft_setup(&craft, &demo.boat, pin);
            const lw_walk walk = lw_walk_of(&craft, &setup, lw_course_of(LW_UPWIND), PUFF);
            bool is_kept = false;
            for (int i = 0; i < LW_RANGE_WINDS; i++)
                is_kept |= lw_answer_is_kept(&walk.trims[i].steady);
            CHECK(is_kept);
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(turns_chosen_for_speed_are_never_slower_than_a_level_bow),
        TEST(bow_goes_no_further_than_the_sailor_lets_it),
        TEST(turns_that_hold_most_leave_more_than_those_for_speed),
        TEST(turns_go_evenly_with_the_wind),
        TEST(flight_between_knots_lies_between_theirs),
        TEST(no_search_from_nothing_finds_a_better_way_in_light_wind),
        TEST(every_sailor_has_a_flight_with_every_pin),
    };
    return RUN_TESTS(tests);
}
