// inflow.h - water and wind at every part of a boat, and how each part is set to meet them.
// SPDX-License-Identifier: MIT
//
// Filled for a steady pose by boat/steady.h and for a boat in motion by motion/inflow.h; the forces
// (boat/force.h) read nothing else.

#ifndef LW_INFLOW_H
#define LW_INFLOW_H

#include "boat/pose.h"
#include "foil/foil_force.h"
#include "foil/strut_force.h"
#include "hull/hull_force.h"
#include "linkage/linkage.h"
#include "lullwise/craft.h"
#include "rig/sail_force.h"

// Apparent wind in the boat's x and y [m/s].
typedef struct lw_apparent {
    lw_lanes x, y;
} lw_apparent;

// All velocities and places are in the boat's axes.
typedef struct lw_inflow {
    lw_attitude at;
    lw_vector through;             // velocity of the origin through the water [m/s]
    lw_vector spin;                // about the boat's axes [rad/s]
    lw_vector main_at, rudder_at;  // foils' quarter chords [m]
    lw_foil_flow main, rudder;     // the rudder foil's incidence is less the downwash there
    lw_lanes lean;                 // of the main strut aft, as the pin turns it [rad]
    lw_strut_flow main_strut, rudder_strut;
    lw_hull_in_water hull;
    lw_lanes rack_depth;              // of the racks' middles, upright [m]
    lw_lanes pivot;                   // of the wand, above the water [m]
    lw_lanes wand;                    // where the water would have it [rad]
    lw_apparent sail_wind, low_wind;  // at the sail; at hull and sailor
    lw_sail_set set;
    lw_vector sailor;                  // middle [m]
    lw_vector boat_pull, sailor_pull;  // [m/s^2] on each mass: weight, and what its moves ask for
} lw_inflow;

// Speed through the water, for all that goes by it.
LW_INLINE void lw_inflow_go(lw_inflow *in, lw_lanes speed)
{
    const lw_lanes log_speed = lw_lanes_log(speed);
    const lw_interval at_speed = lw_interval_of(LW_SPEED_FIRST, LW_SPEED_STEP, log_speed);
    in->main.log_speed = in->rudder.log_speed = in->hull.log_speed = log_speed;
    in->main.at_speed = in->rudder.at_speed = in->hull.at_speed = at_speed;
    in->main_strut.at_speed = in->rudder_strut.at_speed = at_speed;
    in->hull.speed = speed;
}

// Where the parts are above or below level water, the hull's bottom being `height` [m] above it at
// the main strut, the boat turned to `in->at`.
LW_INLINE void lw_inflow_stand(const lw_craft *craft, const lw_setup_lanes *setup, lw_lanes height,
                               lw_inflow *in)
{
    const lw_lanes zero = lw_all(0.0), up = in->at.z.z, bow_up = in->at.sin_pitch;
    const lw_lanes turn = setup->incidence - craft->pin_middle, shift = craft->pin_arm * turn;
    const lw_lanes origin = height - craft->main_strut.length * up;
    const lw_lanes slope = 0.5 * lw_lanes_abs(in->at.y.z);
    in->lean = turn;
    in->main_at = (lw_vector){shift, zero, zero};
    in->rudder_at = (lw_vector){lw_all(craft->rudder_x), zero, lw_all(craft->rudder_z)};
    in->main.incidence = setup->incidence;
    in->main.depth = -(origin + shift * bow_up);
    in->main.tip_rise = craft->main_foil.span * slope;
    in->rudder.flap = zero;
    in->rudder.depth = -(origin + craft->rudder_x * bow_up + craft->rudder_z * up);
    in->rudder.tip_rise = craft->rudder_foil.span * slope;
    in->main_strut.spray = lw_lanes_clamp(20.0 * height, zero, lw_all(1.0));
    in->rudder_strut.spray = lw_all(1.0);
    in->pivot = origin + craft->wand_x * bow_up + craft->wand_z * up;
    in->rack_depth =
        -(height + (craft->rack.z - craft->main_strut.length) * up + craft->rack.x * in->at.x.z);
}

// How far struts are wet and where the water would have the wand, once all depths are known.
LW_INLINE void lw_inflow_wet(const lw_craft *craft, lw_lanes wand_length, lw_inflow *in)
{
    const lw_lanes zero = lw_all(0.0), up = in->at.z.z, per_up = 1.0 / up;
    in->main_strut.wet =
        lw_lanes_clamp(in->main.depth * per_up, zero, lw_all(craft->main_strut.length));
    in->rudder_strut.wet =
        lw_lanes_clamp(in->rudder.depth * per_up, zero, lw_all(craft->rudder_strut.length));
    in->wand = lw_linkage_wand(&craft->linkage, in->pivot, in->at.sin_pitch, up, wand_length);
}

// The hull, its bottom `height` above a plane of water from which the bow points up by `slope`.
LW_INLINE void lw_inflow_float(lw_lanes height, lw_lanes slope, lw_inflow *in)
{
    const lw_lanes per_up = 1.0 / in->at.z.z;
    in->hull.water = -height * per_up;
    in->hull.slope = slope * per_up;
}

#endif
