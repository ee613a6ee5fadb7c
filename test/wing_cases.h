// wing_cases.h - a foil, meshes and places that the tests of wings share.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_WING_CASES_H
#define LW_TEST_WING_CASES_H

#include "lullwise/wing.h"
#include "test/check.h"
#include "test/wings.h"

static lw_wing_lattice lattice;
static lw_wing_load load;

static const lw_wing_mesh usual = {LW_WING_LATTICE, LW_WING_COSINE, 32, 4};
static const lw_wing_mesh coarse = {LW_WING_LATTICE, LW_WING_COSINE, 16, 2};
static const lw_wing_mesh line = {LW_WING_LINE, LW_WING_COSINE, 64, 1};
static const lw_wing_place deep = {LW_WING_DEEP, 0.0};

// A foil such as boats have: 1 m, 0.12 to 0.07 m, swept a little, washed out, cambered, flapped.
static inline lw_wing foil(void)
{
    lw_wing wing = {.count = 3};
    wing.station[0] =
        (lw_wing_station){.chord = 0.12, .zero_lift = -2.5 * LW_DEG, .slope = 5.9, .moment = -0.06};
    wing.station[1] = (lw_wing_station){.y = 0.3,
                                        .chord = 0.1,
                                        .x = -0.01,
                                        .twist = -0.2 * LW_DEG,
                                        .zero_lift = -2.4 * LW_DEG,
                                        .slope = 5.9,
                                        .moment = -0.06};
    wing.station[2] = (lw_wing_station){.y = 0.5,
                                        .chord = 0.07,
                                        .x = -0.03,
                                        .twist = -0.5 * LW_DEG,
                                        .zero_lift = -2.0 * LW_DEG,
                                        .slope = 5.8,
                                        .moment = -0.05};
    wing.flap = (lw_wing_flap){0.05, 0.45, 0.55, -0.6};
    return wing;
}

static inline lw_wing_load load_of(const lw_wing *wing, lw_wing_mesh mesh, lw_wing_place place,
                                   lw_wing_flow flow)
{
    CHECK(lw_wing_lay(&lattice, wing, mesh, place) == LW_WING_OK);
    lw_wing_load_at(&lattice, flow, &load);
    return load;
}

#endif
