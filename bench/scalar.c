// scalar.c - compiles the engine's own kernel a second time, with one lane.
// SPDX-License-Identifier: MIT

#undef LW_WIDTH
#define LW_WIDTH 1

#include "bench/scalar.h"

#include <string.h>

#include "flight/balance.h"
#include "lullwise/elementary.h"

void scalar_ask(scalar_question *question, const lw_craft *craft, const lw_ask *ask)
{
    _Static_assert(sizeof(lw_pose) <= sizeof question->pose, "a pose fits");
    const lw_pose pose = {
        .pitch = {ask->given.pitch},
        .sin_heel = {lw_sin(ask->heel)},
        .cos_heel = {lw_cos(ask->heel)},
        .place = {ask->place},
        .wind = {ask->wind},
        .sin_heading = {lw_sin(ask->heading)},
        .cos_heading = {lw_cos(ask->heading)},
        .setup = {.incidence = {ask->setup.incidence},
                  .wand_length = {ask->setup.wand_length},
                  .gearing = {ask->setup.gearing},
                  .rod = {ask->setup.rod}},
    };
    question->craft = craft;
    memcpy(question->pose, &pose, sizeof pose);
}

LW_CLONES
void scalar_residual(const scalar_question *question, const double x[6], double residual[6])
{
    lw_pose pose;
    memcpy(&pose, question->pose, sizeof pose);
    pose.speed = lw_all(x[0]);
    pose.leeway = lw_all(x[1]);
    pose.ride_height = lw_all(x[2]);
    pose.rudder_incidence = lw_all(x[3]);
    pose.helm = lw_all(x[4]);
    pose.effort = lw_all(x[5]);
    const lw_loads loads = lw_pose_loads(question->craft, &pose);
    for (int i = 0; i < 6; i++) residual[i] = loads.residual[i][0];
}
