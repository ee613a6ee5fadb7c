// profile_cases.h - the section at hand and its flow, which the tests of sections share.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_PROFILE_CASES_H
#define LW_TEST_PROFILE_CASES_H

#include "lullwise/profile.h"
#include "test/check.h"

static lw_profile_room room;
static lw_outline outline;
static lw_profile profile;
static lw_profile_flow flow;
static const lw_profile_flap no_flap = {0.0, 0.0};

static inline bool solved(lw_profile_flap flap, int panels)
{
    return lw_profile_of(&outline, flap, panels, &profile) == LW_PROFILE_OK &&
           lw_profile_flow_of(&profile, &room, &flow) == LW_PROFILE_OK;
}

static inline lw_profile_load load_at(double alpha)
{
    return lw_profile_load_of(&profile, &flow, alpha);
}

#endif
