// force.h - all forces and moments on the boat in one pose: the heart of the engine.
// SPDX-License-Identifier: MIT
//
// Starboard tack: the wind comes from the negative y side, leeward is positive y. Each lane is a
// pose of its own. Axes and signs are drawn in doc/theory.md.

#ifndef LW_FORCE_H
#define LW_FORCE_H

#include "foil/foil_force.h"
#include "foil/strut_force.h"
#include "hull/hull_force.h"
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

typedef struct lw_loads {
    lw_lanes
        residual[6];  // surge, sway, heave, roll, pitch, yaw; [1] of weight, [m] of weight x 1 m
    lw_foil_load main, rudder;
    lw_strut_load main_strut, rudder_strut;
    lw_hull_load hull;
    lw_linkage_pose linkage;
    lw_sail_load sail;
    lw_sail_set set;
    lw_vector air;                            // [N] sail and windage, in the boat
    lw_vector water;                          // [N] foils, struts and hull, buoyancy left out
    lw_vector through;                        // velocity through the water, in the boat [m/s]
    lw_lanes apparent_x, apparent_y;          // wind at the sail, in the boat [m/s]
    lw_lanes main_depth, rudder_depth;        // of the foils' middles [m]
    lw_lanes main_tip_rise, rudder_tip_rise;  // of the higher tip above the middle [m]
} lw_loads;

// What adds up: forces, and moments about the origin.
typedef struct lw_sum {
    lw_vector force, moment;
} lw_sum;

LW_INLINE void lw_sum_add(lw_sum *sum, lw_vector at, lw_vector force)
{
    sum->force.x += force.x, sum->force.y += force.y, sum->force.z += force.z;
    sum->moment.x += at.y * force.z - at.z * force.y;
    sum->moment.y += at.z * force.x - at.x * force.z;
    sum->moment.z += at.x * force.y - at.y * force.x;
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

// Apparent wind in the boat's x and y, where the true wind is `factor` times the wind as read.
LW_INLINE void lw_pose_apparent(const lw_pose *pose, const lw_attitude *at, lw_vector track,
                                double factor, lw_lanes *a_x, lw_lanes *a_y)
{
    const lw_lanes U = pose->wind * factor;
    const lw_lanes along = -(U * pose->cos_heading + pose->speed);
    const lw_lanes across = U * pose->sin_heading;
    const lw_lanes x = along * track.x - across * track.y;  // level axes along the bow
    const lw_lanes y = along * track.y + across * track.x;
    *a_x = x * at->x.x;
    *a_y = y * at->y.y + x * at->y.x;
}

// Force across and along a flow (f, g) in its plane: `lift` turned from the velocity, `drag` against
// it; n = 1 / its speed.
LW_INLINE void lw_turn(lw_lanes f, lw_lanes g, lw_lanes n, lw_lanes lift, lw_lanes drag,
                       lw_lanes *along, lw_lanes *across)
{
    *along = (-g * lift - f * drag) * n;
    *across = (f * lift - g * drag) * n;
}

LW_INLINE lw_vector lw_foil_vector(lw_vector through, lw_lanes per_speed, lw_foil_load load)
{
    lw_vector force = {.y = lw_all(0.0)};
    lw_turn(through.x, through.z, per_speed, load.lift, load.drag, &force.x, &force.z);
    return force;
}

LW_INLINE lw_vector lw_strut_vector(lw_vector through, lw_lanes per_speed, lw_strut_load load)
{
    lw_vector force = {.z = lw_all(0.0)};
    lw_turn(through.x, through.y, per_speed, -load.side, load.drag, &force.x, &force.y);
    return force;
}

// Water on foils and struts.
LW_INLINE void lw_add_foils(const lw_craft *craft, const lw_pose *pose, const lw_attitude *at,
                            lw_knot at_speed, lw_loads *loads, lw_sum *sum)
{
    const double rho = craft->medium.water_density;
    const lw_lanes zero = lw_all(0.0), one = lw_all(1.0);
    const lw_vector u = loads->through;

    // where the foils are
    const lw_lanes turn = pose->incidence - craft->pin_middle, shift = craft->pin_arm * turn;
    const lw_lanes up = at->z.z, bow_up = at->sin_pitch;
    const lw_lanes origin = pose->ride_height - craft->main_strut.length * up;
    loads->main_depth = -(origin + shift * bow_up);
    loads->rudder_depth = -(origin + craft->rudder_x * bow_up + craft->rudder_z * up);
    const lw_lanes slope = 0.5 * lw_lanes_abs(at->y.z);
    loads->main_tip_rise = craft->main_foil.span * slope;
    loads->rudder_tip_rise = craft->rudder_foil.span * slope;

    // wand and flap
    const lw_lanes pivot = origin + craft->wand_x * bow_up + craft->wand_z * up;
    loads->linkage = lw_linkage_flap(&craft->linkage, pivot, bow_up, up, pose->wand_length,
                                     pose->gearing, pose->rod);

    loads->main = lw_foil_force(&craft->main_foil, rho,
                                (lw_foil_flow){.forward = u.x,
                                               .upward = u.z,
                                               .at_speed = at_speed,
                                               .incidence = pose->incidence,
                                               .flap = loads->linkage.flap,
                                               .depth = loads->main_depth,
                                               .tip_rise = loads->main_tip_rise});
    const lw_vector main_at = {shift, zero, zero};
    const lw_lanes per_foil_flow = 1.0 / lw_lanes_sqrt(u.x * u.x + u.z * u.z);
    const lw_vector main = lw_foil_vector(u, per_foil_flow, loads->main);
    lw_sum_add(sum, main_at, main);
    sum->moment.y -= loads->main.moment;

    const lw_lanes downwash =
        loads->main.coefficient * lw_curve_read(&craft->main_foil.downwash,
                                                lw_knot_of(0.0, LW_DEPTH_STEP, loads->main_depth));
    loads->rudder = lw_foil_force(&craft->rudder_foil, rho,
                                  (lw_foil_flow){.forward = u.x,
                                                 .upward = u.z,
                                                 .at_speed = at_speed,
                                                 .incidence = pose->rudder_incidence - downwash,
                                                 .flap = zero,
                                                 .depth = loads->rudder_depth,
                                                 .tip_rise = loads->rudder_tip_rise});
    const lw_vector rudder_at = {lw_all(craft->rudder_x), zero, lw_all(craft->rudder_z)};
    lw_sum_add(sum, rudder_at, lw_foil_vector(u, per_foil_flow, loads->rudder));
    sum->moment.y -= loads->rudder.moment;

    // struts
    const lw_lanes clear = lw_lanes_clamp(20.0 * pose->ride_height, zero, one);
    const lw_lanes sideslip = lw_lanes_atan(u.y / u.x);
    const lw_lanes flow = lw_lanes_sqrt(u.x * u.x + u.y * u.y);
    const lw_lanes per_flow = 1.0 / flow, per_up = 1.0 / up;
    const lw_lanes main_wet =
        lw_lanes_clamp(loads->main_depth * per_up, zero, lw_all(craft->main_strut.length));
    loads->main_strut =
        lw_strut_force(&craft->main_strut, rho, flow, at_speed, sideslip, main_wet, clear);
    const lw_lanes centre = loads->main_strut.centre;
    lw_sum_add(sum, (lw_vector){shift - turn * centre, zero, centre},
               lw_strut_vector(u, per_flow, loads->main_strut));

    const lw_lanes rudder_wet =
        lw_lanes_clamp(loads->rudder_depth * per_up, zero, lw_all(craft->rudder_strut.length));
    loads->rudder_strut = lw_strut_force(&craft->rudder_strut, rho, flow, at_speed,
                                         sideslip + pose->helm, rudder_wet, one);
    lw_sum_add(sum, (lw_vector){rudder_at.x, zero, rudder_at.z + loads->rudder_strut.centre},
               lw_strut_vector(u, per_flow, loads->rudder_strut));
}

// Water on the hull: drag against the way at the hull's bottom, buoyancy upright through the middle
// of what is immersed.
LW_INLINE void lw_add_hull(const lw_craft *craft, const lw_pose *pose, const lw_attitude *at,
                           lw_knot at_speed, lw_lanes log_speed, lw_loads *loads, lw_sum *sum)
{
    const lw_lanes zero = lw_all(0.0), keel = lw_all(craft->main_strut.length);
    const lw_lanes per_up = 1.0 / at->z.z;
    const lw_hull_in_water in = {.water = -pose->ride_height * per_up,
                                 .slope = at->x.z * per_up,
                                 .speed = pose->speed,
                                 .log_speed = log_speed,
                                 .at_speed = at_speed};
    loads->hull = lw_hull_force(&craft->hull, craft->medium.water_density, in);
    const lw_lanes k = -loads->hull.drag / pose->speed;
    const lw_vector u = loads->through;
    lw_sum_add(sum, (lw_vector){zero, zero, keel}, (lw_vector){k * u.x, k * u.y, k * u.z});
    loads->water = sum->force;

    const lw_lanes B = loads->hull.buoyancy;
    lw_sum_add(sum, (lw_vector){zero, zero, keel},
               (lw_vector){B * at->x.z, B * at->y.z, B * at->z.z});
    const lw_lanes ahead = loads->hull.moment_ahead, above = loads->hull.moment_above;
    sum->moment.y += above * at->x.z - ahead * at->z.z;
    sum->moment.z += ahead * at->y.z;
    sum->moment.x -= above * at->y.z + loads->hull.roll_moment * pose->sin_heel;
}

// Power taken off for an effort: none below 1, all beyond, with a rounded corner, because a sailor
// eases a little before the last of hiking out.  [judged] corner
LW_INLINE lw_lanes lw_pose_taken(lw_lanes effort)
{
    const double corner = 0.1;
    const lw_lanes x = effort - 1.0;
    return 0.5 * (x + lw_lanes_sqrt(x * x + corner * corner));
}

// Middle of the sailor to windward of the centreline for an effort: out by what is not taken off.
LW_INLINE lw_lanes lw_pose_hike(const lw_craft *craft, lw_lanes effort)
{
    const lw_lanes out = effort - lw_pose_taken(effort);
    return craft->body_inboard + out * (craft->body_reach - craft->body_inboard);
}

// Sail and windage.
LW_INLINE void lw_add_air(const lw_craft *craft, const lw_pose *pose, const lw_attitude *at,
                          lw_vector track, lw_vector body, lw_loads *loads, lw_sum *sum)
{
    const double rho = craft->medium.air_density;
    const lw_lanes zero = lw_all(0.0);
    const lw_vector before = sum->force;

    lw_pose_apparent(pose, at, track, craft->wind_at_sail, &loads->apparent_x, &loads->apparent_y);
    loads->set = lw_sail_taken(&craft->sail, lw_pose_taken(pose->effort));
    loads->sail =
        lw_sail_force(&craft->sail, rho, loads->apparent_x, loads->apparent_y, loads->set);
    lw_sum_add(sum, (lw_vector){lw_all(craft->sail.centre_x), zero, loads->sail.height},
               (lw_vector){loads->sail.along, loads->sail.across, zero});

    lw_lanes a_x, a_y;
    lw_pose_apparent(pose, at, track, craft->wind_at_body, &a_x, &a_y);
    const lw_lanes k = 0.5 * rho * lw_lanes_sqrt(a_x * a_x + a_y * a_y);
    const lw_lanes sailor = k * craft->body_windage;
    lw_sum_add(sum, (lw_vector){lw_all(craft->hull_x), zero, lw_all(craft->windage_z)},
               (lw_vector){k * craft->windage * a_x, k * craft->windage_side * a_y, zero});
    lw_sum_add(sum, body, (lw_vector){sailor * a_x, sailor * a_y, zero});
    loads->air =
        (lw_vector){sum->force.x - before.x, sum->force.y - before.y, sum->force.z - before.z};
}

// Weight, and what it takes to speed the boat up.
LW_INLINE void lw_add_weight(const lw_craft *craft, const lw_pose *pose, const lw_attitude *at,
                             lw_vector body, lw_vector through, lw_sum *sum)
{
    const lw_lanes a = pose->acceleration / pose->speed;
    const lw_vector pull = {-LW_GRAVITY * at->x.z - a * through.x,
                            -LW_GRAVITY * at->y.z - a * through.y,
                            -LW_GRAVITY * at->z.z - a * through.z};
    const double m_b = craft->hull_mass, m_s = craft->body_mass;
    lw_sum_add(sum, (lw_vector){lw_all(craft->hull_x), lw_all(0.0), lw_all(craft->hull_z)},
               (lw_vector){m_b * pull.x, m_b * pull.y, m_b * pull.z});
    lw_sum_add(sum, body, (lw_vector){m_s * pull.x, m_s * pull.y, m_s * pull.z});
}

// All loads of a pose and what is left over: zero residual is a steady balance.
LW_INLINE lw_loads lw_pose_loads(const lw_craft *craft, const lw_pose *pose)
{
    lw_loads loads;
    const lw_attitude at = lw_pose_attitude(pose);
    const lw_lanes V = pose->speed;
    const lw_lanes log_speed = lw_lanes_log(V);
    const lw_knot at_speed = lw_knot_of(LW_SPEED_FIRST, LW_SPEED_STEP, log_speed);
    lw_vector track = {.z = lw_all(0.0)};
    lw_lanes_sincos(pose->leeway, &track.y, &track.x);
    loads.through = (lw_vector){V * (track.x * at.x.x), V * (track.x * at.y.x + track.y * at.y.y),
                                V * (track.x * at.z.x + track.y * at.z.y)};

    const lw_lanes zero = lw_all(0.0);
    const lw_vector body = {pose->place, -lw_pose_hike(craft, pose->effort), lw_all(craft->body_z)};
    lw_sum sum = {{zero, zero, zero}, {zero, zero, zero}};
    lw_add_foils(craft, pose, &at, at_speed, &loads, &sum);
    lw_add_hull(craft, pose, &at, at_speed, log_speed, &loads, &sum);
    lw_add_air(craft, pose, &at, track, body, &loads, &sum);
    lw_add_weight(craft, pose, &at, body, loads.through, &sum);

    // forces along and across the track, and up; moments about the boat's axes
    const double per = 1.0 / craft->weight;
    const lw_vector F = sum.force;
    const lw_lanes X = F.x * at.x.x + F.y * at.y.x + F.z * at.z.x;
    const lw_lanes Y = F.y * at.y.y + F.z * at.z.y;
    loads.residual[0] = per * (X * track.x + Y * track.y);
    loads.residual[1] = per * (Y * track.x - X * track.y);
    loads.residual[2] = per * (F.x * at.x.z + F.y * at.y.z + F.z * at.z.z);
    loads.residual[3] = per * sum.moment.x;
    loads.residual[4] = per * sum.moment.y;
    loads.residual[5] = per * sum.moment.z;
    return loads;
}

#endif
