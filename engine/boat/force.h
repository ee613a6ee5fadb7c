// force.h - all forces and moments on the boat: the heart of the engine.
// SPDX-License-Identifier: MIT
//
// A sum over the parts, each a load that its inflow makes and the place where it acts.

#ifndef LW_FORCE_H
#define LW_FORCE_H

#include "boat/impact.h"
#include "foil/ventilation/ventilated_foil.h"
#include "foil/ventilation/ventilated_strut.h"
#include "hull/rack.h"

// Force in the plane of a flow (f, g): `lift` turned from the velocity, `drag` against it.
typedef struct lw_plane_force {
    lw_lanes along, across;
} lw_plane_force;

LW_INLINE lw_plane_force lw_turn(lw_lanes f, lw_lanes g, lw_lanes lift, lw_lanes drag)
{
    const lw_lanes n = 1.0 / lw_lanes_sqrt(f * f + g * g);
    return (lw_plane_force){(-g * lift - f * drag) * n, (f * lift - g * drag) * n};
}

// --- foils and struts

LW_INLINE lw_foil_load lw_foil_load_of(const lw_foil_craft *foil, double density,
                                       const lw_foil_flow *flow)
{
    lw_foil_load load = lw_foil_force(foil, density, *flow);
    lw_foil_ventilate(foil, density, *flow, &load);
    return load;
}

LW_INLINE lw_strut_load lw_strut_load_of(const lw_strut_craft *strut, double density,
                                         const lw_strut_flow *flow)
{
    lw_strut_load load = lw_strut_force(strut, density, *flow);
    lw_strut_ventilate(strut, density, *flow, &load);
    return load;
}

// The main foil, which comes first: its wake is a part of what meets the rudder foil.
LW_INLINE void lw_load_main_foil(const lw_craft *craft, lw_loads *loads)
{
    const lw_foil_flow *flow = &loads->inflow.main;
    loads->main = lw_foil_load_of(&craft->main_foil, craft->medium.water_density, flow);
    loads->downwash =
        loads->main.coefficient *
        lw_curve_read(&craft->main_foil.downwash, lw_interval_of(0.0, LW_DEPTH_STEP, flow->depth));
}

LW_INLINE void lw_add_foil(lw_vector at, const lw_foil_flow *flow, const lw_foil_load *load,
                           lw_sum *sum)
{
    const lw_plane_force F = lw_turn(flow->forward, flow->upward, load->lift, load->drag);
    lw_sum_add(sum, at, (lw_vector){F.along, lw_all(0.0), F.across});
    sum->moment.y -= load->moment;
}

LW_INLINE void lw_add_foils(const lw_craft *craft, lw_loads *loads, lw_sum *sum)
{
    const lw_inflow *in = &loads->inflow;
    const double rho = craft->medium.water_density;
    loads->rudder = lw_foil_load_of(&craft->rudder_foil, rho, &in->rudder);
    lw_add_foil(in->main_at, &in->main, &loads->main, sum);
    lw_add_foil(in->rudder_at, &in->rudder, &loads->rudder, sum);
    sum->moment.x += lw_foil_roll(&craft->main_foil, rho, in->main.forward, in->spin.x) +
                     lw_foil_roll(&craft->rudder_foil, rho, in->rudder.forward, in->spin.x);
}

LW_INLINE void lw_add_strut(lw_vector at, const lw_strut_flow *flow, const lw_strut_load *load,
                            lw_sum *sum)
{
    const lw_plane_force F = lw_turn(flow->forward, flow->across, -load->side, load->drag);
    lw_sum_add(sum, at, (lw_vector){F.along, F.across, lw_all(0.0)});
}

LW_INLINE void lw_add_struts(const lw_craft *craft, lw_loads *loads, lw_sum *sum)
{
    const lw_inflow *in = &loads->inflow;
    const double rho = craft->medium.water_density;
    const lw_strut_load *main = &loads->main_strut, *rudder = &loads->rudder_strut;
    loads->main_strut = lw_strut_load_of(&craft->main_strut, rho, &in->main_strut);
    loads->rudder_strut = lw_strut_load_of(&craft->rudder_strut, rho, &in->rudder_strut);
    lw_vector at = {in->main_at.x - in->lean * main->centre, lw_all(0.0), main->centre};
    lw_add_strut(at, &in->main_strut, main, sum);
    at = in->rudder_at, at.z += rudder->centre;
    lw_add_strut(at, &in->rudder_strut, rudder, sum);
}

// --- hull and racks

// Water on the hull: drag against the way at the hull's bottom, buoyancy upright through the middle
// of what is immersed. In waves a plane stands for the surface.
LW_INLINE void lw_add_hull(const lw_craft *craft, lw_loads *loads, lw_sum *sum)
{
    const lw_inflow *in = &loads->inflow;
    const lw_attitude *at = &in->at;
    const lw_vector keel = {lw_all(0.0), lw_all(0.0), lw_all(craft->main_strut.length)};
    loads->slap = loads->bow_drag = lw_all(0.0);
    loads->hull = lw_hull_force(&craft->hull, craft->medium.water_density, in->hull);
    const lw_lanes k = -loads->hull.drag / in->hull.speed;
    const lw_vector u = in->through;
    lw_sum_add(sum, keel, (lw_vector){k * u.x, k * u.y, k * u.z});
    if (lw_any(loads->hull.immersed > 0.0)) lw_add_impact(craft, loads, sum);
    loads->water = sum->force;

    const lw_lanes B = loads->hull.buoyancy;
    lw_sum_add(sum, keel, (lw_vector){B * at->x.z, B * at->y.z, B * at->z.z});
    const lw_lanes ahead = loads->hull.moment_ahead, above = loads->hull.moment_above;
    sum->moment.y += above * at->x.z - ahead * at->z.z;
    sum->moment.z += ahead * at->y.z;
    sum->moment.x -= above * at->y.z - loads->hull.roll_moment * at->z.y;
}

// Racks: each borne up through its middle. The surface is the hull's, level across the boat.
LW_INLINE void lw_add_racks(const lw_craft *craft, lw_loads *loads, lw_sum *sum)
{
    const lw_rack_craft *rack = &craft->rack;
    const lw_attitude *at = &loads->inflow.at;
    const lw_lanes depth = loads->inflow.rack_depth;
    const lw_lanes out = rack->y * at->y.z;  // what windward heel lifts the leeward rack by
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

// --- sail, windage and weight

LW_INLINE void lw_add_air(const lw_craft *craft, lw_loads *loads, lw_sum *sum)
{
    const lw_inflow *in = &loads->inflow;
    const double rho = craft->medium.air_density;
    const lw_lanes zero = lw_all(0.0), a_x = in->low_wind.x, a_y = in->low_wind.y;
    const lw_vector before = sum->force;
    loads->sail = lw_sail_force(&craft->sail, rho, in->sail_wind.x, in->sail_wind.y, in->set);
    lw_sum_add(sum, (lw_vector){lw_all(craft->sail.centre_x), zero, loads->sail.height},
               (lw_vector){loads->sail.along, loads->sail.across, zero});

    const lw_lanes k = 0.5 * rho * lw_lanes_sqrt(a_x * a_x + a_y * a_y);
    const lw_lanes sailor = k * craft->body_windage;
    lw_sum_add(sum, (lw_vector){lw_all(craft->hull_x), zero, lw_all(craft->windage_z)},
               (lw_vector){k * craft->windage * a_x, k * craft->windage_side * a_y, zero});
    lw_sum_add(sum, in->sailor, (lw_vector){sailor * a_x, sailor * a_y, zero});
    const lw_vector after = sum->force;
    loads->air = (lw_vector){after.x - before.x, after.y - before.y, after.z - before.z};
}

// What pulls at the masses of boat and sailor.
LW_INLINE void lw_add_masses(const lw_craft *craft, const lw_inflow *in, lw_sum *sum)
{
    const double m_b = craft->hull_mass, m_s = craft->body_mass;
    const lw_vector b = in->boat_pull, s = in->sailor_pull;
    lw_sum_add(sum, (lw_vector){lw_all(craft->hull_x), lw_all(0.0), lw_all(craft->hull_z)},
               (lw_vector){m_b * b.x, m_b * b.y, m_b * b.z});
    lw_sum_add(sum, in->sailor, (lw_vector){m_s * s.x, m_s * s.y, m_s * s.z});
}

// --- all of it

// All loads of an inflow whose main foil has been loaded.
LW_INLINE void lw_load_all(const lw_craft *craft, lw_loads *loads)
{
    lw_sum sum = {lw_vector_zero(), lw_vector_zero()};
    lw_add_foils(craft, loads, &sum);
    lw_add_struts(craft, loads, &sum);
    lw_add_hull(craft, loads, &sum);
    lw_add_racks(craft, loads, &sum);
    lw_add_air(craft, loads, &sum);
    lw_add_masses(craft, &loads->inflow, &sum);
    loads->force = sum.force, loads->moment = sum.moment;
}

#endif
