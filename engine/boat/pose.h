// pose.h - how a boat stands, goes and is sailed, and the loads that come of it, in lanes.
// SPDX-License-Identifier: MIT
//
// Starboard tack: the wind comes from the negative y side, leeward is positive y. Each lane is a
// pose of its own. Axes and signs are drawn in doc/theory.md.

#ifndef LW_POSE_H
#define LW_POSE_H

#include "foil/face_force.h"
#include "foil/strut_force.h"
#include "hull/hull_force.h"
#include "hull/rack.h"
#include "linkage/linkage.h"
#include "lullwise/craft.h"
#include "rig/sail_force.h"

typedef struct lw_vector {
    lw_lanes x, y, z;
} lw_vector;

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
    lw_lanes wind;                                  // U       [m/s]   as read
    lw_lanes sin_heading, cos_heading;              // of the track from the wind
    lw_lanes incidence, wand_length, gearing, rod;  // set-up
} lw_pose;

// A boat in motion, beyond what her pose tells: how she goes and turns, the water's own motion, and
// parts that lag. Steady flight has none of it, hands NULL, and is compiled without.
typedef struct lw_moving {
    lw_vector velocity;       // of the origin, in the boat [m/s]
    lw_vector spin;           // about the boat's axes [rad/s]
    lw_lanes wind_x, wind_y;  // as read, in level axes along the bow [m/s]
    lw_lanes main_surface;    // water above its mean level, where ride height counts from, over
    lw_lanes rudder_surface;  // the main foil, the rudder foil, and at the wand [m]
    lw_lanes wand_surface;
    lw_lanes hull_surface;  // plane that stands for the surface under the hull: height at the
    lw_lanes hull_slope;    // main strut [m], and its rise towards the bow
    lw_vector main_water;   // velocity of the water at the foils, in the boat [m/s]
    lw_vector rudder_water;
    lw_lanes wand;           // where it is; linkage.wand: where the water would have it [rad]
    lw_lanes flap, slack;    // where the flap was, and how far it is loose either way [rad]
    lw_lanes wash;           // downwash at the rudder foil [rad]
    lw_lanes taken, body_y;  // power taken off the sail; sailor's middle to port [m]
    lw_vector body_pull;     // acceleration that the sailor's own moves ask of the boat [m/s^2]
    lw_lanes main_air, rudder_air;       // 0 wet, 1 ventilated: foils
    lw_lanes main_strut_air, blade_air;  // and struts
} lw_moving;

typedef struct lw_loads {
    lw_lanes
        residual[6];  // surge, sway, heave, roll, pitch, yaw; [1] of weight, [m] of weight x 1 m
    lw_foil_load main, rudder;
    lw_strut_load main_strut, rudder_strut;
    lw_hull_load hull;
    lw_lanes racks;           // buoyancy of both [N]
    lw_lanes slap, bow_drag;  // [N] on a hull coming down, and against a bow under water (negative)
    lw_linkage_pose linkage;
    lw_sail_load sail;
    lw_sail_set set;
    lw_vector air;                            // [N] sail and windage, in the boat
    lw_vector water;                          // [N] foils, struts and hull, buoyancy left out
    lw_lanes log_speed;                       // ln V
    lw_vector through;                        // velocity through the water, in the boat [m/s]
    lw_lanes apparent_x, apparent_y;          // wind at the sail, in the boat [m/s]
    lw_lanes main_depth, rudder_depth;        // of the foils' middles [m]
    lw_lanes main_tip_rise, rudder_tip_rise;  // of the higher tip above the middle [m]
    lw_lanes wash;                            // downwash that the main foil makes now [rad]
    lw_vector force, moment;                  // all of it, weight too, in the boat about the origin
} lw_loads;

// What adds up: forces, and moments about the origin.
typedef struct lw_sum {
    lw_vector force, moment;
} lw_sum;

LW_INLINE lw_vector lw_cross(lw_vector a, lw_vector b)
{
    return (lw_vector){a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

LW_INLINE void lw_sum_add(lw_sum *sum, lw_vector at, lw_vector force)
{
    sum->force.x += force.x, sum->force.y += force.y, sum->force.z += force.z;
    const lw_vector moment = lw_cross(at, force);
    sum->moment.x += moment.x, sum->moment.y += moment.y, sum->moment.z += moment.z;
}

// The boat's axes seen from level axes that point along the bow: rows are x, y, z of the boat.
typedef struct lw_attitude {
    lw_lanes sin_pitch, cos_pitch;
    lw_vector x, y, z;
} lw_attitude;

LW_INLINE lw_attitude lw_pose_attitude(const lw_pose *pose)
{
    lw_lanes s, c;
    lw_lanes_sincos(pose->pitch, &s, &c);
    const lw_lanes sh = pose->sin_heel, ch = pose->cos_heel, zero = lw_all(0.0);
    return (lw_attitude){.sin_pitch = s,
                         .cos_pitch = c,
                         .x = {c, zero, s},
                         .y = {-s * sh, ch, c * sh},
                         .z = {-s * ch, -sh, c * ch}};
}

#endif
