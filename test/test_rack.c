// test_rack.c - claims about what floats beside the hull.
// SPDX-License-Identifier: MIT

#include "boat/steady.h"
#include "flight/balance.h"
#include "hull/rack.h"
#include "test/check.h"
#include "test/preset.h"

static double wet(const lw_rack_craft *rack, double depth)
{
    return lw_rack_wet(rack, lw_all(depth))[0];
}

TEST_FUNCTION(rack_displaces_nothing_dry_and_its_volume_when_under)
{
    const lw_rack_craft rack = {.volume = 0.08, .thickness = 0.3};
    CHECK(wet(&rack, -0.15) == 0.0);
    CHECK(wet(&rack, -2.0) == 0.0);
    CHECK_NEAR(wet(&rack, 0.0), 0.04, 1e-15);  // half of it with its middle at the surface
    CHECK_NEAR(wet(&rack, 0.15), 0.08, 1e-15);
    CHECK_NEAR(wet(&rack, 2.0), 0.08, 1e-15);
}

TEST_FUNCTION(rack_goes_under_without_a_corner)
{
    const lw_rack_craft rack = {.volume = 0.08, .thickness = 0.3};
    const double by = 1e-6;
    double before = 0.0;
    for (double depth = -0.2; depth < 0.2; depth += 1e-3) {
        const double slope = (wet(&rack, depth + by) - wet(&rack, depth - by)) / (2.0 * by);
        CHECK(slope >= 0.0);
        CHECK(fabs(slope - before) < 1e-2);  // of 0.4 m^2 at most
        before = slope;
    }
}

// Loads of the preset boat on the hull or above it.
static lw_loads loads_at(const lw_craft *craft, double heel_deg, double ride_height)
{
    const lw_setup setup = preset_setup(craft, 1);
    lw_ask ask = lw_ask_of(craft, &setup, 5.0, 1.5);
    ask.heel = heel_deg * LW_DEG;
    ask.start = (lw_ask_start){.speed = 1.0, .ride_height = ride_height, .effort = 0.5};
    ask.start.rudder = craft->rudder_mark;
    lw_pose pose;
    for (int i = 0; i < LW_WIDTH; i++) lw_pose_put(&pose, i, &ask);
    return lw_pose_loads(craft, &pose);
}

TEST_FUNCTION(racks_do_nothing_upright_on_the_hull_and_in_flight)
{
    const lw_craft craft = preset_craft();
    CHECK(loads_at(&craft, 0.0, -0.15).racks[0] == 0.0);
    CHECK(loads_at(&craft, 0.0, 0.4).racks[0] == 0.0);
    CHECK(loads_at(&craft, 20.0, 0.4).racks[0] == 0.0);
}

// Archimedes: 80 kg of water at most on a side, and its moment about the middle line by its arm.
TEST_FUNCTION(rack_under_water_bears_its_water_and_rights_the_boat_either_way)
{
    const lw_craft craft = preset_craft();
    lw_craft bare = craft;
    bare.rack.volume = 0.0;
    for (int side = -1; side <= 1; side += 2) {
        const double heel = 40.0 * side;
        const lw_loads with = loads_at(&craft, heel, -0.15), without = loads_at(&bare, heel, -0.15);
        const double B = craft.medium.water_density * LW_GRAVITY * craft.rack.volume;
        CHECK_RELATIVE(with.racks[0], B, 1e-12);
        // up, along the boat's upright axis by cos(heel)
        CHECK_RELATIVE(with.force.z[0] - without.force.z[0], B * cos(40.0 * LW_DEG), 1e-9);
        const double righting = (with.moment.x - without.moment.x)[0];
        const double arm = craft.rack.y * cos(40.0 * LW_DEG) + craft.rack.z * sin(40.0 * LW_DEG);
        CHECK_RELATIVE(-side * righting, B * arm, 1e-9);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        TEST(rack_displaces_nothing_dry_and_its_volume_when_under),
        TEST(rack_goes_under_without_a_corner),
        TEST(racks_do_nothing_upright_on_the_hull_and_in_flight),
        TEST(rack_under_water_bears_its_water_and_rights_the_boat_either_way),
    };
    return RUN_TESTS(tests);
}
