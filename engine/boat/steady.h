// steady.h - the inflow of a steady pose, and what is left of its loads.
// SPDX-License-Identifier: MIT

#ifndef LW_STEADY_H
#define LW_STEADY_H

#include "boat/effort.h"
#include "boat/force.h"

// Direction of the track along level axes under the bow.
LW_INLINE lw_vector lw_pose_track(const lw_pose *pose)
{
    lw_vector track = {.z = lw_all(0.0)};
    lw_lanes_sincos(pose->leeway, &track.y, &track.x);
    return track;
}

// Apparent wind where the true wind is `factor` times the wind as read.
LW_INLINE lw_apparent lw_pose_apparent(const lw_pose *pose, const lw_attitude *at, lw_vector track,
                                       double factor)
{
    const lw_lanes U = pose->wind * factor;
    const lw_lanes along = -(U * pose->cos_heading + pose->speed);
    const lw_lanes across = U * pose->sin_heading;
    const lw_lanes x = along * track.x - across * track.y;  // level axes along the bow
    const lw_lanes y = along * track.y + across * track.x;
    return (lw_apparent){x * at->x.x, y * at->y.y + x * at->y.x};
}

// Plain water that meets every part alike, wet all over; wand and flap where it puts them.
LW_INLINE void lw_steady_water(const lw_craft *craft, const lw_pose *pose, lw_inflow *in)
{
    const lw_vector u = in->through;
    lw_inflow_stand(craft, &pose->setup, pose->ride_height, in);
    lw_inflow_wet(craft, pose->setup.wand_length, in);
    lw_inflow_float(pose->ride_height, in->at.x.z, in);
    in->main.forward = in->rudder.forward = u.x;
    in->main.upward = in->rudder.upward = u.z;
    in->main_strut.forward = in->rudder_strut.forward = u.x;
    in->main_strut.across = in->rudder_strut.across = u.y;
    in->main.ventilated = in->rudder.ventilated = lw_all(0.0);
    in->main_strut.ventilated = in->rudder_strut.ventilated = lw_all(0.0);
    in->main_strut.turn = lw_all(0.0), in->rudder_strut.turn = pose->helm;
    in->main.flap =
        lw_linkage_flap(&craft->linkage, in->wand, pose->setup.gearing, pose->setup.rod);
}

// Weight, and what it takes to speed the boat up.
LW_INLINE lw_vector lw_steady_pull(const lw_pose *pose, const lw_inflow *in)
{
    const lw_lanes a = pose->acceleration / pose->speed;
    const lw_attitude *at = &in->at;
    return (lw_vector){-LW_GRAVITY * at->x.z - a * in->through.x,
                       -LW_GRAVITY * at->y.z - a * in->through.y,
                       -LW_GRAVITY * at->z.z - a * in->through.z};
}

// All but the incidence of the rudder foil, which the main foil's wake decides.
LW_INLINE void lw_steady_inflow(const lw_craft *craft, const lw_pose *pose, lw_vector track,
                                lw_inflow *in)
{
    const lw_lanes V = pose->speed;
    in->at = lw_pose_attitude(pose);
    const lw_attitude *at = &in->at;
    in->through = (lw_vector){V * (track.x * at->x.x), V * (track.x * at->y.x + track.y * at->y.y),
                              V * (track.x * at->z.x + track.y * at->z.y)};
    in->spin = lw_vector_zero();
    lw_inflow_go(in, V);
    lw_steady_water(craft, pose, in);
    in->sail_wind = lw_pose_apparent(pose, at, track, craft->wind_at_sail);
    in->low_wind = lw_pose_apparent(pose, at, track, craft->wind_at_body);
    in->set = lw_sail_taken(&craft->sail, lw_effort_taken(pose->effort));
    in->sailor =
        (lw_vector){pose->place, -lw_effort_hike(craft, pose->effort), lw_all(craft->body_z)};
    in->boat_pull = in->sailor_pull = lw_steady_pull(pose, in);
}

// Forces along and across the track, and up; moments about the boat's axes.
LW_INLINE void lw_steady_residual(const lw_craft *craft, lw_vector track, lw_loads *loads)
{
    const double per = 1.0 / craft->weight;
    const lw_attitude *at = &loads->inflow.at;
    const lw_vector F = loads->force;
    const lw_lanes X = F.x * at->x.x + F.y * at->y.x + F.z * at->z.x;
    const lw_lanes Y = F.y * at->y.y + F.z * at->z.y;
    loads->residual[0] = per * (X * track.x + Y * track.y);
    loads->residual[1] = per * (Y * track.x - X * track.y);
    loads->residual[2] = per * (F.x * at->x.z + F.y * at->y.z + F.z * at->z.z);
    loads->residual[3] = per * loads->moment.x;
    loads->residual[4] = per * loads->moment.y;
    loads->residual[5] = per * loads->moment.z;
}

// All loads of a pose and what is left over: zero residual is a steady balance.
LW_INLINE lw_loads lw_pose_loads(const lw_craft *craft, const lw_pose *pose)
{
    lw_loads loads;
    const lw_vector track = lw_pose_track(pose);
    lw_steady_inflow(craft, pose, track, &loads.inflow);
    lw_load_main_foil(craft, &loads);
    loads.inflow.rudder.incidence = pose->rudder_incidence - loads.downwash;
    lw_load_all(craft, &loads);
    lw_steady_residual(craft, track, &loads);
    return loads;
}

#endif
