// foil.c - a foil by itself: a section's drag and greatest lift, then the foil that carries a load.
// SPDX-License-Identifier: MIT

#include <stdio.h>

#include "lullwise/lullwise.h"

#define SPEED 5.0    // [m/s]
#define LOAD  900.0  // [N]
#define DEPTH 0.5    // [m]

int main(void)
{
    lw_boat boat;
    lw_day day;
    lw_record_preset(&lw_boat_record, &boat);
    lw_record_preset(&lw_day_record, &day);
    const lw_medium water = lw_medium_of(&day);

    // A section, with friction.
    static lw_outline outline;
    static lw_section_flow flow;
    if (lw_outline_naca("NACA 63-412", &outline) != LW_PROFILE_OK) return 1;
    if (lw_section_flow_of(&flow, &outline, (lw_profile_flap){0}) != LW_PROFILE_OK) return 1;
    const lw_section_water at = {&water, DEPTH, 1e6, 1.0};
    for (int degrees = -2; degrees <= 6; degrees += 2) {
        const lw_section_point point = lw_section_point_at(&flow, at, degrees * LW_DEG);
        printf("%3d deg  lift %6.3f  drag %.4f\n", degrees, point.lift, point.drag);
    }
    printf("greatest lift %.2f\n", lw_section_stall(&flow, at).lift);

    // The whole foil, as it is read in flight.
    static lw_polar_room room;
    static lw_sections sections;
    static lw_craft craft;
    lw_sailor sailor;
    lw_record_preset(&lw_sailor_record, &sailor);
    lw_sections_prepare(&sections, &boat, &room);
    lw_craft_prepare(&craft, &boat, &sections, &sailor.person, &water);
    lw_foil_place place = {.speed = SPEED, .depth = DEPTH};
    place.incidence = lw_foil_incidence(&craft.main_foil, water.water_density, place, LOAD);
    const lw_foil_forces forces = lw_foil_at(&craft.main_foil, water.water_density, place);
    printf("main foil: %.0f N at %.1f deg, drag %.0f N\n", forces.lift, place.incidence / LW_DEG,
           forces.section + forces.induced + forces.junction);
    return 0;
}
