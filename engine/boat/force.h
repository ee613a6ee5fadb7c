// force.h - all forces and moments on the boat in one pose: the heart of the engine.
// SPDX-License-Identifier: MIT

#ifndef LW_FORCE_H
#define LW_FORCE_H

#include <stddef.h>

#include "boat/impact.h"

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

// Slower than this, a flow along the boat counts as so fast: no force has a value without way.
#define LW_LEAST_WAY 0.3  // [m/s]

// Flow at a place of a boat in motion, against the water there.
LW_INLINE lw_vector lw_flow_at(const lw_moving *moving, lw_vector at, lw_vector water)
{
    const lw_vector turn = lw_cross(moving->spin, at), v = moving->velocity;
    return (lw_vector){lw_lanes_max(v.x + turn.x - water.x, lw_all(LW_LEAST_WAY)),
                       v.y + turn.y - water.y, v.z + turn.z - water.z};
}

// Where the foils are, and what the wand makes of it.
LW_INLINE void lw_place_foils(const lw_craft *craft, const lw_pose *pose, const lw_moving *moving,
                              const lw_attitude *at, lw_loads *loads)
{
    const lw_lanes shift = craft->pin_arm * (pose->incidence - craft->pin_middle);
    const lw_lanes up = at->z.z, bow_up = at->sin_pitch;
    const lw_lanes origin = pose->ride_height - craft->main_strut.length * up;
    loads->main_depth = -(origin + shift * bow_up);
    loads->rudder_depth = -(origin + craft->rudder_x * bow_up + craft->rudder_z * up);
    const lw_lanes slope = 0.5 * lw_lanes_abs(at->y.z);
    loads->main_tip_rise = craft->main_foil.span * slope;
    loads->rudder_tip_rise = craft->rudder_foil.span * slope;

    lw_lanes pivot = origin + craft->wand_x * bow_up + craft->wand_z * up;
    if (moving) {
        loads->main_depth += moving->main_surface;
        loads->rudder_depth += moving->rudder_surface;
        pivot -= moving->wand_surface;
    }
    const lw_lanes wand = lw_linkage_wand(&craft->linkage, pivot, bow_up, up, pose->wand_length);
    lw_lanes flap =
        lw_linkage_flap(&craft->linkage, moving ? moving->wand : wand, pose->gearing, pose->rod);
    if (moving) {
        flap = lw_lanes_clamp(moving->flap, flap - moving->slack, flap + moving->slack);
    }
    loads->linkage = (lw_linkage_pose){.wand = wand, .flap = flap};
}

// Water on foils and struts.
LW_INLINE void lw_add_foils(const lw_craft *craft, const lw_pose *pose, const lw_moving *moving,
                            const lw_attitude *at, lw_knot at_speed, lw_loads *loads, lw_sum *sum)
{
    const double rho = craft->medium.water_density;
    const lw_lanes zero = lw_all(0.0), one = lw_all(1.0);
    lw_place_foils(craft, pose, moving, at, loads);
    const lw_lanes turn = pose->incidence - craft->pin_middle, shift = craft->pin_arm * turn;
    const lw_vector main_at = {shift, zero, zero};
    const lw_vector rudder_at = {lw_all(craft->rudder_x), zero, lw_all(craft->rudder_z)};
    lw_vector u = loads->through, u_r = u;
    if (moving) {
        u = lw_flow_at(moving, main_at, moving->main_water);
        u_r = lw_flow_at(moving, rudder_at, moving->rudder_water);
    }

    const lw_foil_flow past_main = {.forward = u.x,
                                    .upward = u.z,
                                    .log_speed = loads->log_speed,
                                    .at_speed = at_speed,
                                    .incidence = pose->incidence,
                                    .flap = loads->linkage.flap,
                                    .depth = loads->main_depth,
                                    .tip_rise = loads->main_tip_rise};
    loads->main = lw_foil_force(&craft->main_foil, rho, past_main);
    if (moving) {
        lw_let_air_on_foil(&craft->main_foil, rho, past_main, moving->main_air, &loads->main);
    }
    loads->wash =
        loads->main.coefficient * lw_curve_read(&craft->main_foil.downwash,
                                                lw_knot_of(0.0, LW_DEPTH_STEP, loads->main_depth));
    const lw_lanes per_main = 1.0 / lw_lanes_sqrt(u.x * u.x + u.z * u.z);
    lw_sum_add(sum, main_at, lw_foil_vector(u, per_main, loads->main));
    sum->moment.y -= loads->main.moment;

    const lw_lanes wash = moving ? moving->wash : loads->wash;
    const lw_foil_flow past_rudder = {.forward = u_r.x,
                                      .upward = u_r.z,
                                      .log_speed = loads->log_speed,
                                      .at_speed = at_speed,
                                      .incidence = pose->rudder_incidence - wash,
                                      .flap = zero,
                                      .depth = loads->rudder_depth,
                                      .tip_rise = loads->rudder_tip_rise};
    loads->rudder = lw_foil_force(&craft->rudder_foil, rho, past_rudder);
    if (moving) {
        lw_let_air_on_foil(&craft->rudder_foil, rho, past_rudder, moving->rudder_air,
                           &loads->rudder);
    }
    const lw_lanes per_rudder =
        moving ? 1.0 / lw_lanes_sqrt(u_r.x * u_r.x + u_r.z * u_r.z) : per_main;
    lw_sum_add(sum, rudder_at, lw_foil_vector(u_r, per_rudder, loads->rudder));
    sum->moment.y -= loads->rudder.moment;
    if (moving) {
        sum->moment.x += lw_foil_roll(&craft->main_foil, rho, u.x, moving->spin.x) +
                         lw_foil_roll(&craft->rudder_foil, rho, u_r.x, moving->spin.x);
    }

    // struts
    const lw_lanes up = at->z.z, per_up = 1.0 / up;
    const lw_lanes main_wet =
        lw_lanes_clamp(loads->main_depth * per_up, zero, lw_all(craft->main_strut.length));
    const lw_lanes rudder_wet =
        lw_lanes_clamp(loads->rudder_depth * per_up, zero, lw_all(craft->rudder_strut.length));
    if (moving) {  // met at half their depth, in water as at the foil
        u = lw_flow_at(moving, (lw_vector){shift, zero, 0.5 * main_wet}, moving->main_water);
        u_r = lw_flow_at(moving, (lw_vector){rudder_at.x, zero, rudder_at.z + 0.5 * rudder_wet},
                         moving->rudder_water);
    }
    const lw_lanes clear = lw_lanes_clamp(20.0 * pose->ride_height, zero, one);
    const lw_lanes sideslip = lw_lanes_atan(u.y / u.x);
    const lw_lanes flow = lw_lanes_sqrt(u.x * u.x + u.y * u.y);
    const lw_lanes per_flow = 1.0 / flow;
    loads->main_strut =
        lw_strut_force(&craft->main_strut, rho, flow, at_speed, sideslip, main_wet, clear);
    if (moving) {
        lw_let_in_air(&craft->main_strut, rho, flow, main_wet, moving->main_strut_air,
                      &loads->main_strut);
    }
    const lw_lanes centre = loads->main_strut.centre;
    lw_sum_add(sum, (lw_vector){shift - turn * centre, zero, centre},
               lw_strut_vector(u, per_flow, loads->main_strut));

    const lw_lanes sideslip_r = moving ? lw_lanes_atan(u_r.y / u_r.x) : sideslip;
    const lw_lanes flow_r = moving ? lw_lanes_sqrt(u_r.x * u_r.x + u_r.y * u_r.y) : flow;
    const lw_lanes per_flow_r = moving ? 1.0 / flow_r : per_flow;
    loads->rudder_strut = lw_strut_force(&craft->rudder_strut, rho, flow_r, at_speed,
                                         sideslip_r + pose->helm, rudder_wet, one);
    if (moving) {
        lw_let_in_air(&craft->rudder_strut, rho, flow_r, rudder_wet, moving->blade_air,
                      &loads->rudder_strut);
    }
    lw_sum_add(sum, (lw_vector){rudder_at.x, zero, rudder_at.z + loads->rudder_strut.centre},
               lw_strut_vector(u_r, per_flow_r, loads->rudder_strut));
}

// Water on the hull: drag against the way at the hull's bottom, buoyancy upright through the middle
// of what is immersed. In waves a plane stands for the surface.
LW_INLINE void lw_add_hull(const lw_craft *craft, const lw_pose *pose, const lw_moving *moving,
                           const lw_attitude *at, lw_knot at_speed, lw_lanes log_speed,
                           lw_loads *loads, lw_sum *sum)
{
    const lw_lanes zero = lw_all(0.0), keel = lw_all(craft->main_strut.length);
    const lw_lanes height = moving ? pose->ride_height - moving->hull_surface : pose->ride_height;
    const lw_lanes bow_up = moving ? at->x.z - moving->hull_slope : at->x.z;
    const lw_lanes per_up = 1.0 / at->z.z;
    const lw_hull_in_water in = {.water = -height * per_up,
                                 .slope = bow_up * per_up,
                                 .speed = pose->speed,
                                 .log_speed = log_speed,
                                 .at_speed = at_speed};
    loads->slap = loads->bow_drag = zero;
    loads->hull = lw_hull_force(&craft->hull, craft->medium.water_density, in);
    const lw_lanes k = -loads->hull.drag / pose->speed;
    const lw_vector u = loads->through;
    lw_sum_add(sum, (lw_vector){zero, zero, keel}, (lw_vector){k * u.x, k * u.y, k * u.z});
    if (lw_any(loads->hull.immersed > 0.0)) {
        lw_add_impact(craft, moving, &in, loads, sum);
    }
    loads->water = sum->force;

    const lw_lanes B = loads->hull.buoyancy;
    lw_sum_add(sum, (lw_vector){zero, zero, keel},
               (lw_vector){B * at->x.z, B * at->y.z, B * at->z.z});
    const lw_lanes ahead = loads->hull.moment_ahead, above = loads->hull.moment_above;
    sum->moment.y += above * at->x.z - ahead * at->z.z;
    sum->moment.z += ahead * at->y.z;
    sum->moment.x -= above * at->y.z + loads->hull.roll_moment * pose->sin_heel;
}

// Racks: each borne up through its middle. The surface is the hull's, level across the boat.
LW_INLINE void lw_add_racks(const lw_craft *craft, const lw_pose *pose, const lw_moving *moving,
                            const lw_attitude *at, lw_loads *loads, lw_sum *sum)
{
    const lw_rack_craft *rack = &craft->rack;
    const lw_lanes out = rack->y * at->y.z;  // what windward heel lifts the leeward rack by
    lw_lanes depth =
        -(pose->ride_height + (rack->z - craft->main_strut.length) * at->z.z + rack->x * at->x.z);
    if (moving) depth += moving->hull_surface + rack->x * moving->hull_slope;
    loads->racks = lw_all(0.0);
    if (!lw_any(depth + lw_lanes_abs(out) > -0.5 * rack->thickness)) return;
    const double weight = craft->medium.water_density * LW_GRAVITY;
    for (int side = -1; side <= 1; side += 2) {
        const lw_lanes B = weight * lw_rack_wet(rack, depth - side * out);
        lw_sum_add(sum, (lw_vector){lw_all(rack->x), lw_all(side * rack->y), lw_all(rack->z)},
                   (lw_vector){B * at->x.z, B * at->y.z, B * at->z.z});
        loads->racks += B;
    }
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

// The same at a place of a boat in motion.
LW_INLINE void lw_moving_apparent(const lw_moving *moving, const lw_attitude *at, lw_vector place,
                                  double factor, lw_lanes *a_x, lw_lanes *a_y)
{
    const lw_lanes x = factor * moving->wind_x, y = factor * moving->wind_y;
    const lw_vector turn = lw_cross(moving->spin, place), v = moving->velocity;
    *a_x = x * at->x.x - v.x - turn.x;
    *a_y = y * at->y.y + x * at->y.x - v.y - turn.y;
}

// Sail and windage.
LW_INLINE void lw_add_air(const lw_craft *craft, const lw_pose *pose, const lw_moving *moving,
                          const lw_attitude *at, lw_vector track, lw_vector body, lw_loads *loads,
                          lw_sum *sum)
{
    const double rho = craft->medium.air_density;
    const lw_lanes zero = lw_all(0.0);
    const lw_vector before = sum->force;

    const lw_lanes taken = moving ? moving->taken : lw_pose_taken(pose->effort);
    loads->set = lw_sail_taken(&craft->sail, taken);
    const lw_vector sail_at = {lw_all(craft->sail.centre_x), zero,
                               lw_all(craft->sail.centre_height)};
    if (moving) {
        lw_moving_apparent(moving, at, sail_at, craft->wind_at_sail, &loads->apparent_x,
                           &loads->apparent_y);
    } else {
        lw_pose_apparent(pose, at, track, craft->wind_at_sail, &loads->apparent_x,
                         &loads->apparent_y);
    }
    loads->sail =
        lw_sail_force(&craft->sail, rho, loads->apparent_x, loads->apparent_y, loads->set);
    lw_sum_add(sum, (lw_vector){sail_at.x, zero, loads->sail.height},
               (lw_vector){loads->sail.along, loads->sail.across, zero});

    lw_lanes a_x, a_y;
    const lw_vector windage_at = {lw_all(craft->hull_x), zero, lw_all(craft->windage_z)};
    if (moving) lw_moving_apparent(moving, at, windage_at, craft->wind_at_body, &a_x, &a_y);
    if (!moving) lw_pose_apparent(pose, at, track, craft->wind_at_body, &a_x, &a_y);
    const lw_lanes k = 0.5 * rho * lw_lanes_sqrt(a_x * a_x + a_y * a_y);
    const lw_lanes sailor = k * craft->body_windage;
    lw_sum_add(sum, windage_at,
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

// Speed among the knots of the curves over it.
LW_INLINE lw_knot lw_speed_knot(lw_lanes log_speed)
{
    return lw_knot_of(LW_SPEED_FIRST, LW_SPEED_STEP, log_speed);
}

// All loads of a pose and what is left over: zero residual is a steady balance.
LW_INLINE lw_loads lw_pose_loads(const lw_craft *craft, const lw_pose *pose)
{
    lw_loads loads;
    const lw_attitude at = lw_pose_attitude(pose);
    const lw_lanes V = pose->speed;
    const lw_lanes log_speed = lw_lanes_log(V);
    loads.log_speed = log_speed;
    const lw_knot at_speed = lw_speed_knot(log_speed);
    lw_vector track = {.z = lw_all(0.0)};
    lw_lanes_sincos(pose->leeway, &track.y, &track.x);
    loads.through = (lw_vector){V * (track.x * at.x.x), V * (track.x * at.y.x + track.y * at.y.y),
                                V * (track.x * at.z.x + track.y * at.z.y)};

    const lw_lanes zero = lw_all(0.0);
    const lw_vector body = {pose->place, -lw_pose_hike(craft, pose->effort), lw_all(craft->body_z)};
    lw_sum sum = {{zero, zero, zero}, {zero, zero, zero}};
    lw_add_foils(craft, pose, NULL, &at, at_speed, &loads, &sum);
    lw_add_hull(craft, pose, NULL, &at, at_speed, log_speed, &loads, &sum);
    lw_add_racks(craft, pose, NULL, &at, &loads, &sum);
    lw_add_air(craft, pose, NULL, &at, track, body, &loads, &sum);
    lw_add_weight(craft, pose, &at, body, loads.through, &sum);
    loads.force = sum.force, loads.moment = sum.moment;

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

// Weight of boat and sailor, the sailor's with what it takes to move the body about the boat.
LW_INLINE void lw_add_moving_weight(const lw_craft *craft, const lw_attitude *at, lw_vector body,
                                    lw_vector pull, lw_sum *sum)
{
    const lw_vector g = {-LW_GRAVITY * at->x.z, -LW_GRAVITY * at->y.z, -LW_GRAVITY * at->z.z};
    const double m_b = craft->hull_mass, m_s = craft->body_mass;
    lw_sum_add(sum, (lw_vector){lw_all(craft->hull_x), lw_all(0.0), lw_all(craft->hull_z)},
               (lw_vector){m_b * g.x, m_b * g.y, m_b * g.z});
    lw_sum_add(sum, body,
               (lw_vector){m_s * (g.x + pull.x), m_s * (g.y + pull.y), m_s * (g.z + pull.z)});
}

// All loads on a boat in motion. Of the pose, ride height and what the sailor and the set-up fix
// are read; how she goes and the wind stand in `moving`. Inertia of the whole is left to the caller.
LW_INLINE lw_loads lw_moving_loads(const lw_craft *craft, lw_pose pose, const lw_moving *moving,
                                   const lw_attitude *at)
{
    lw_loads loads;
    const lw_lanes zero = lw_all(0.0);
    loads.through = moving->velocity;
    const lw_vector u = loads.through, none = {zero, zero, zero};
    pose.speed =
        lw_lanes_max(lw_lanes_sqrt(u.x * u.x + u.y * u.y + u.z * u.z), lw_all(LW_LEAST_WAY));
    loads.log_speed = lw_lanes_log(pose.speed);
    const lw_knot at_speed = lw_speed_knot(loads.log_speed);
    const lw_vector body = {pose.place, moving->body_y, lw_all(craft->body_z)};
    lw_sum sum = {none, none};
    lw_add_foils(craft, &pose, moving, at, at_speed, &loads, &sum);
    lw_add_hull(craft, &pose, moving, at, at_speed, loads.log_speed, &loads, &sum);
    lw_add_racks(craft, &pose, moving, at, &loads, &sum);
    lw_add_air(craft, &pose, moving, at, none, body, &loads, &sum);
    lw_add_moving_weight(craft, at, body, moving->body_pull, &sum);
    loads.force = sum.force, loads.moment = sum.moment;
    for (int i = 0; i < 6; i++) loads.residual[i] = zero;
    return loads;
}

#endif
