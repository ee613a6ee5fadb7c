// pose.h - how a boat stands, goes and is sailed in steady flight, in lanes.
// SPDX-License-Identifier: MIT
//
// Starboard tack: the wind comes from the negative y side, leeward is positive y. Each lane is a
// pose of its own. Axes and signs are drawn in doc/theory.md.

#ifndef LW_POSE_H
#define LW_POSE_H

#include "solve/elementary.h"
#include "solve/vector.h"

// lw_setup in lanes.
typedef struct lw_setup_lanes {
    lw_lanes incidence, wand_length, gearing, rod;
} lw_setup_lanes;

typedef struct lw_pose {
    // how the boat goes
    lw_lanes speed;         // V       [m/s]   through the water
    lw_lanes leeway;        // lambda  [rad]   track to leeward of the bow
    lw_lanes ride_height;   // h       [m]     hull's bottom at the main strut above the water
    lw_lanes pitch;         // theta   [rad]   bow up
    lw_lanes acceleration;  // dV/dt   [m/s^2] along the track
    // what the sailor does
    lw_lanes helm;                // delta_r [rad]   rudder blade, as leeway
    lw_lanes effort;              // p       [-]     0 sitting in, 1 hiked, beyond: power taken off
    lw_lanes rudder_incidence;    // i_r     [rad]
    lw_lanes sin_heel, cos_heel;  //       windward positive
    lw_lanes place;               // x_s     [m]     of the sailor, forward of the main foil
    // what is given
    lw_lanes wind;                      // U       [m/s]   as read
    lw_lanes sin_heading, cos_heading;  // of the track from the wind
    lw_setup_lanes setup;
} lw_pose;

// The boat's axes seen from level axes that point along the bow: rows are x, y, z of the boat.
typedef struct lw_attitude {
    lw_lanes sin_pitch, cos_pitch;
    lw_vector x, y, z;
} lw_attitude;

LW_INLINE lw_attitude lw_attitude_of(lw_lanes sin_pitch, lw_lanes cos_pitch, lw_lanes sin_heel,
                                     lw_lanes cos_heel)
{
    const lw_lanes s = sin_pitch, c = cos_pitch, sh = sin_heel, ch = cos_heel;
    return (lw_attitude){.sin_pitch = s,
                         .cos_pitch = c,
                         .x = {c, lw_all(0.0), s},
                         .y = {-s * sh, ch, c * sh},
                         .z = {-s * ch, -sh, c * ch}};
}

LW_INLINE lw_attitude lw_pose_attitude(const lw_pose *pose)
{
    lw_lanes s, c;
    lw_lanes_sincos(pose->pitch, &s, &c);
    return lw_attitude_of(s, c, pose->sin_heel, pose->cos_heel);
}

#endif
