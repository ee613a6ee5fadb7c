// test_launch.c - claims about taking off: what it hangs on, and what it does not.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/range.h"
#include "test/demo.h"

#define REACH (100.0 * LW_DEG)
#define PINS  4

static const double turns[PINS] = {4.0, 2.0, 0.7, -0.5};  // for speed, in the mean wind

static void prepare(double mass, lw_craft *craft)
{
    lw_person person = demo.sailor.person;
    const lw_medium medium = lw_medium_of(&demo.day);
    person.mass = mass;
    lw_craft_prepare(craft, &demo.boat, &demo.sections, &person, &medium);
}

static bool launches(const lw_craft *craft, const lw_setup *setup, size_t pin, double wind)
{
    return lw_launch_of(craft, setup, lw_craft_rudder(craft, turns[pin]), wind, REACH).flies;
}

// Least wind [kn] that lifts a set-up off, to a tenth; 99 where none of up to 16 kn does.
static double least_wind(const lw_craft *craft, const lw_setup *setup, size_t pin)
{
    for (double kn = 7.0; kn <= 16.0; kn += 0.1)
        if (launches(craft, setup, pin, kn * LW_KN)) return kn;
    return 99.0;
}

// Of a pin as it is in the boat.
static double least_as_is(const lw_craft *craft, size_t pin, lw_setup *setup)
{
    *setup = lw_craft_setup(craft, &demo.boat, pin);
    return least_wind(craft, setup, pin);
}

// Afloat the wand is at its aft stop and the flap at its own, however rod and wand are set; what
// they change is the height that she rises to.
TEST_FUNCTION(how_high_she_is_set_to_fly_does_not_keep_her_from_taking_off)
{
    lw_craft craft;
    prepare(demo.sailor.person.mass, &craft);
    for (size_t pin = 0; pin < PINS; pin++) {
        lw_setup as_is;
        const double least = least_as_is(&craft, pin, &as_is);
        for (double rod = -3.0; rod <= 6.0; rod += 3.0) {
            lw_setup setup = as_is;
            setup.rod += rod * LW_DEG;
            CHECK_NEAR(least_wind(&craft, &setup, pin), least, 0.5);
        }
        for (double part = 0.85; part <= 1.25; part += 0.1) {
            lw_setup setup = as_is;
            setup.wand_length *= part;
            CHECK_NEAR(least_wind(&craft, &setup, pin), least, 0.5);
        }
    }
}

TEST_FUNCTION(more_wind_takes_no_launch_on_a_reach_away)
{
    lw_craft craft;
    prepare(demo.sailor.person.mass, &craft);
    for (size_t pin = 0; pin < PINS; pin++) {
        lw_setup setup;
        const double least = least_as_is(&craft, pin, &setup);
        CHECK(least < 12.0);
        for (double kn = least; kn <= 18.0; kn += 0.25)
            CHECK(launches(&craft, &setup, pin, kn * LW_KN));
    }
}

TEST_FUNCTION(the_heavier_and_the_weaker_pin_take_off_later)
{
    double before[PINS] = {0};
    for (double mass = 50.0; mass <= 95.0; mass += 15.0) {
        lw_craft craft;
        prepare(mass, &craft);
        for (size_t pin = 0; pin < PINS; pin++) {
            lw_setup setup;
            const double least = least_as_is(&craft, pin, &setup);
            CHECK(least > before[pin]);
            CHECK(pin == 0 || least > before[pin - 1] - 0.15);
            before[pin] = least;
        }
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(how_high_she_is_set_to_fly_does_not_keep_her_from_taking_off),
        TEST(more_wind_takes_no_launch_on_a_reach_away),
        TEST(the_heavier_and_the_weaker_pin_take_off_later),
    };
    read_demo();
    return RUN_TESTS(tests);
}
