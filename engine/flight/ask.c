// ask.c - what is asked of a balance, what is sought and what given; and put into a lane of poses.
// SPDX-License-Identifier: MIT

#include "flight/ask.h"

#include <math.h>

lw_ask lw_ask_of(const lw_craft *craft, const lw_setup *setup, double wind, double heading)
{
    const double going = fmin(fmax(1.3 * wind, 4.5), 10.0);  // a flying boat's usual speed
    return (lw_ask){.wind = wind,
                    .heading = heading,
                    .setup = *setup,
                    .heel = 0.2,
                    .place = 0.5 * (craft->place_aft + craft->place_forward),
                    .gives_pitch = true,
                    .start = {.speed = going,
                              .leeway = 0.04,
                              .ride_height = 0.35,
                              .rudder = craft->rudder_mark,
                              .helm = 0.01,
                              .effort = 0.8}};
}

void lw_ask_give_speed(lw_ask *ask, double speed)
{
    ask->gives_speed = true;
    ask->given.speed = speed;
}

void lw_ask_give_pitch(lw_ask *ask, double pitch)
{
    if (!ask->gives_pitch) ask->start.rudder = ask->given.rudder;
    ask->gives_pitch = true;
    ask->given.pitch = pitch;
}

void lw_ask_give_rudder(lw_ask *ask, double rudder)
{
    if (ask->gives_pitch) ask->start.pitch = ask->given.pitch;
    ask->gives_pitch = false;
    ask->given.rudder = rudder;
}

double lw_ask_rudder(const lw_ask *ask)
{
    return ask->gives_pitch ? ask->start.rudder : ask->given.rudder;
}

void lw_ask_hold_rudder(lw_ask *ask) { lw_ask_give_rudder(ask, lw_ask_rudder(ask)); }

static void put_direction(lw_lanes *sine, lw_lanes *cosine, int i, double angle)
{
    lw_lanes s, c;
    lw_lanes_sincos(lw_all(angle), &s, &c);
    (*sine)[i] = s[0], (*cosine)[i] = c[0];
}

void lw_pose_put(lw_pose *pose, int i, const lw_ask *ask)
{
    const lw_ask_start *start = &ask->start;
    pose->speed[i] = ask->gives_speed ? ask->given.speed : start->speed;
    pose->acceleration[i] = 0.0;
    pose->leeway[i] = start->leeway;
    pose->ride_height[i] = start->ride_height;
    pose->pitch[i] = ask->gives_pitch ? ask->given.pitch : start->pitch;
    pose->helm[i] = start->helm;
    pose->effort[i] = start->effort;
    pose->rudder_incidence[i] = lw_ask_rudder(ask);
    put_direction(&pose->sin_heel, &pose->cos_heel, i, ask->heel);
    pose->place[i] = ask->place;
    pose->wind[i] = ask->wind;
    put_direction(&pose->sin_heading, &pose->cos_heading, i, ask->heading);
    pose->setup.incidence[i] = ask->setup.incidence;
    pose->setup.wand_length[i] = ask->setup.wand_length;
    pose->setup.gearing[i] = ask->setup.gearing;
    pose->setup.rod[i] = ask->setup.rod;
}

void lw_pose_settle(lw_pose *pose, int i, const lw_ask *ask, const lw_solution *solution)
{
    const double *x = solution->x;
    if (ask->gives_speed) pose->acceleration[i] = x[0];
    if (!ask->gives_speed) pose->speed[i] = x[0];
    pose->leeway[i] = x[1];
    pose->ride_height[i] = x[2];
    if (ask->gives_pitch) pose->rudder_incidence[i] = x[3];
    if (!ask->gives_pitch) pose->pitch[i] = x[3];
    pose->helm[i] = x[4];
    pose->effort[i] = x[5];
}
