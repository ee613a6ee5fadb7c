// test_choice.c - claims about a day's choice: rides that pins share, and what follows from them.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "lullwise/choice_find.h"
#include "lullwise/hold.h"
#include "test/demo.h"

static lw_outlook one, other;

static void begin(lw_outlook *outlook, uint64_t seed)
{
    const char *why;
    read_demo();
    CHECK(lw_day_settle(&demo.day, &why));
    lw_outlook_begin(outlook, &demo.boat, &demo.sections, &demo.sailor.person, &demo.day);
    outlook->effort.first_seed = seed;
}

static void finish(lw_outlook *outlook)
{
    for (size_t k = 0; k < lw_outlook_steps(outlook); k++) lw_outlook_step(outlook, k);
    lw_outlook_end(outlook);
}

static size_t place_of(const lw_choice *choice, size_t pin)
{
    size_t at = 0;
    while (choice->places[at].pin != pin) at++;
    return at;
}

#define STEPS_MOST (LW_PINS_MOST * LW_COURSES_MOST + 2 * LW_BLOCKS)

// Two outlooks share the steps, from the last to the first of each round; then both take all parts
// there are, from the first on, those that they have among them. One is summed as soon as it is
// whole.
TEST_FUNCTION(steps_in_any_order_by_anybody_come_to_the_same_bits)
{
    static lw_outlook_part parts[STEPS_MOST];
    begin(&one, 1);
    finish(&one);
    static lw_outlook two, three;
    begin(&two, 1);
    begin(&three, 1);
    size_t done = 0, steps;
    bool is_summed = false;
    while (done < (steps = lw_outlook_steps(&two))) {
        CHECK(steps == lw_outlook_steps(&three));
        for (size_t k = steps; k-- > done;) {
            lw_outlook *from = k % 2 ? &three : &two;
            lw_outlook_step(from, k);
            lw_outlook_give(from, k, &parts[k]);
        }
        done = steps;
        for (size_t k = 0; k < steps; k++) {
            lw_outlook_take(&two, k, &parts[k]);
            lw_outlook_take(&three, k, &parts[k]);
            if (is_summed || !lw_outlook_is_whole(&three)) continue;
            lw_outlook_end(&three);
            is_summed = true;
        }
    }
    const lw_choice a = lw_choice_of(&one, LW_AIM_RACE, 0.0);
    const lw_choice b = lw_choice_of(&three, LW_AIM_RACE, 0.0);
    for (size_t i = 0; i < a.count; i++) {
        CHECK(a.places[i].pin == b.places[i].pin && a.places[i].error == b.places[i].error);
        CHECK(memcmp(&a.places[i].prospect, &b.places[i].prospect, sizeof(lw_prospect)) == 0);
    }
}

static bool is_held(const lw_choice *choice, size_t pin, double puff)
{
    return lw_placing_holds(&choice->places[place_of(choice, pin)], puff);
}

// Error of the difference of two neighbours, as a part of what it would be in gusts of their own.
static double error_in_common(const lw_outlook *outlook, size_t pin)
{
    const double mean = outlook->gusts.mean;
    const lw_pace p = lw_pace_of(outlook, pin, mean, mean);
    const lw_pace q = lw_pace_of(outlook, pin + 1, mean, mean);
    double a[LW_SETS], b[LW_SETS], more[LW_SETS];
    for (size_t set = 0; set < LW_SETS; set++) {
        a[set] = p.seconds[set][0], b[set] = q.seconds[set][0];
        more[set] = b[set] - a[set];
    }
    return lw_jackknife(more) / hypot(lw_jackknife(a), lw_jackknife(b));
}

#define GUSTS 3

// Both pins meet the same gusts: their difference is known better than if each had its own. Not
// where one is not held in the puffs: its swims are its own, whatever the other does in that gust.
TEST_FUNCTION(common_gusts_make_a_difference_surer_than_what_it_is_between)
{
    size_t pairs = 0;
    for (int k = 0; k < GUSTS; k++) {
        begin(&one, k ? 100000 * (uint64_t)k : 1);
        one.effort.more = 0.0;  // of pins that are not told apart: not of all
        finish(&one);
        const lw_choice choice = lw_choice_of(&one, LW_AIM_RACE, 0.0);
        for (size_t pin = 0; pin + 1 < demo.boat.pin_count; pin++) {
            if (!is_held(&choice, pin, one.gusts.puff)) continue;
            if (!is_held(&choice, pin + 1, one.gusts.puff)) continue;
            CHECK(error_in_common(&one, pin) < 0.7);
            pairs++;
        }
    }
    CHECK(pairs >= 2 * GUSTS);
}

#define OTHERS 5

TEST_FUNCTION(other_gusts_give_the_same_order_or_had_it_too_close_to_call)
{
    begin(&one, 1);
    finish(&one);
    const lw_choice here = lw_choice_of(&one, LW_AIM_RACE, 0.0);
    for (uint64_t k = 1; k <= OTHERS; k++) {
        begin(&other, 100000 * k);
        finish(&other);
        const lw_choice there = lw_choice_of(&other, LW_AIM_RACE, 0.0);
        for (size_t i = 1; i < here.count; i++) {
            const size_t at = place_of(&there, here.places[i].pin);
            const size_t ahead = place_of(&there, here.places[i - 1].pin);
            CHECK(ahead < at || here.places[i].is_close || there.places[ahead].is_close);
        }
    }
}

static double swims_error_of(const lw_outlook *outlook)
{
    const lw_choice choice = lw_choice_of(outlook, LW_AIM_RACE, 0.0);
    double sum = 0.0;
    for (size_t i = 0; i < choice.count; i++) sum += choice.places[i].prospect.swims_error;
    return sum;
}

// Four times as long: half the error, or a quarter where nobody swims.
TEST_FUNCTION(longer_rides_know_swims_better)
{
    begin(&one, 1);
    one.effort.more = 0;
    finish(&one);
    begin(&other, 1);
    other.effort = (lw_effort){.seconds = 240.0, .first_seed = 1};
    finish(&other);
    CHECK(swims_error_of(&other) < 0.8 * swims_error_of(&one));
}

// 6, 8 and 10 kn: what cannot stay up is sailed on the hull, and time decides.
TEST_FUNCTION(on_a_light_day_nothing_slower_stands_before_what_is_faster)
{
    begin(&one, 1);
    one.gusts.lull = 6.0 * LW_KN, one.gusts.mean = 8.0 * LW_KN, one.gusts.puff = 10.0 * LW_KN;
    one.weather.gust.lull = one.gusts.lull, one.weather.gust.mean = one.gusts.mean;
    one.weather.gust.puff = one.gusts.puff;
    finish(&one);
    const lw_choice choice = lw_choice_of(&one, LW_AIM_RACE, 0.0);
    for (size_t i = 0; i < choice.count; i++) {
        const lw_prospect *p = &choice.places[i].prospect;
        CHECK(p->seconds > 0.0 && p->swim_seconds <= 0.5 * p->seconds);
        CHECK(i == 0 || p->seconds >= choice.places[i - 1].prospect.seconds);
    }
}

TEST_FUNCTION(without_wind_nothing_can_be_sailed_and_nothing_is_ridden)
{
    begin(&one, 1);
    one.gusts = (lw_gusts){.period = 60.0};
    finish(&one);
    const lw_choice choice = lw_choice_of(&one, LW_AIM_RACE, 0.0);
    for (size_t i = 0; i < choice.count; i++) {
        CHECK(!choice.places[i].can_be_sailed && choice.places[i].prospect.seconds == 0.0);
        CHECK(choice.places[i].reason == LW_REASON_STUCK);
    }
}

// Pins that launch in 4, 5 and 0 (none) and stay up in 8, 6 and 3; held to 9, 12 and 10.
static lw_choice three_places(void)
{
    lw_choice choice = {.count = 3};
    const double winds[3][3] = {{4.0, 8.0, 9.0}, {5.0, 6.0, 12.0}, {0.0, 3.0, 10.0}};
    for (size_t i = 0; i < 3; i++) {
        lw_prospect *p = &choice.places[i].prospect;
        p->launches_at = winds[i][0], p->stays_up_at = winds[i][1], p->held_up_to = winds[i][2];
    }
    return choice;
}

TEST_FUNCTION(the_soonest_pin_is_the_one_that_flies_in_the_least_wind)
{
    lw_choice choice = three_places();
    double wind = 0.0;
    CHECK(lw_choice_soonest(&choice, &wind) == &choice.places[1] && wind == 6.0);
    choice.places[0].prospect.launches_at = choice.places[1].prospect.launches_at = 0.0;
    CHECK(lw_choice_soonest(&choice, &wind) == NULL);
}

TEST_FUNCTION(a_puff_is_held_by_the_best_place_that_holds_it_or_by_the_widest)
{
    const lw_choice choice = three_places();
    CHECK(lw_choice_widest(&choice) == &choice.places[1]);
    CHECK(lw_choice_holder(&choice, 8.0) == &choice.places[0]);
    CHECK(lw_choice_holder(&choice, 9.5) == &choice.places[1]);
    CHECK(lw_choice_holder(&choice, 20.0) == &choice.places[1]);
}

// Of the demo day; the pin in the boat has most lift.
TEST_FUNCTION(of_all_pins_the_best_to_change_to_saves_most)
{
    static lw_hold hold;
    begin(&one, 1);
    finish(&one);
    hold = (lw_hold){.left = 9000.0, .now = one.gusts.mean, .later = one.gusts.mean, .stop = 60.0};
    lw_hold_work_out(&hold, &one);
    CHECK(lw_hold_flies(&hold) && hold.has_best && hold.best != hold.pin);
    for (size_t pin = 1; pin < hold.pin_count; pin++) {
        CHECK(hold.changes[pin].best_saved <= hold.changes[hold.best].best_saved);
        CHECK(lw_hold_flying(&hold, pin) > 0.0 && lw_hold_flying(&hold, pin) <= 1.0);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(steps_in_any_order_by_anybody_come_to_the_same_bits),
        TEST(common_gusts_make_a_difference_surer_than_what_it_is_between),
        TEST(other_gusts_give_the_same_order_or_had_it_too_close_to_call),
        TEST(longer_rides_know_swims_better),
        TEST(on_a_light_day_nothing_slower_stands_before_what_is_faster),
        TEST(without_wind_nothing_can_be_sailed_and_nothing_is_ridden),
        TEST(the_soonest_pin_is_the_one_that_flies_in_the_least_wind),
        TEST(a_puff_is_held_by_the_best_place_that_holds_it_or_by_the_widest),
        TEST(of_all_pins_the_best_to_change_to_saves_most),
    };
    return RUN_TESTS(tests);
}
