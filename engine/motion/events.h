// events.h - event detection, in lanes: launches, touches, breaches, ventilation, swims.
// SPDX-License-Identifier: MIT

#ifndef LW_EVENTS_H
#define LW_EVENTS_H

#include "motion/equations.h"

// Bounds beyond which nobody stays in the boat.  [judged]
#define LW_LEEWARD_MOST  (45.0 * LW_DEG)  // heel: the leeward rack digs in
#define LW_WINDWARD_MOST (55.0 * LW_DEG)  // the sailor is in the water
#define LW_BOW_DOWN_MOST (22.0 * LW_DEG)
#define LW_BOW_UP_MOST   (40.0 * LW_DEG)
#define LW_SPIN_MOST     (80.0 * LW_DEG)  // off the wanted course, and turning
#define LW_SPIN_LEAST    0.7              // so fast at least [rad/s], with so much way on: who only
#define LW_SPIN_WAY      2.5              // rounds up stays aboard [m/s]
#define LW_SPEED_MOST    30.0             // [m/s]
#define LW_HOLD_MOST     0.5              // g along the boat that a sailor holds, feet in straps
#define LW_SLIDE_MOST    0.2              // [m] forward from her seat, and she is off

// Times that decide.  [judged]
#define LW_CLEAR_LEAST 1.0  // [s] clear of the water before she counts as flying
#define LW_WET_MOST    2.0  // [s] in the water before she counts as off the foils
#define LW_REARM       0.5  // [s] after a touch or a breach before the next is another

// What a ride is doing: true or false in each lane, and since when. It is what detection remembers.
typedef struct lw_detection {
    lw_lanes time;
    lw_mask flies, swims;
    lw_lanes clear, wet;             // [s] since the hull was last wet, and clear
    lw_lanes tip_in, rudder_tip_in;  // [s] since the tips were last out
    lw_lanes slips, slid;            // sailor forward in the boat [m/s], [m]
    lw_lanes swum;                   // [s]
} lw_detection;

// One mask for each event that lanes can tell, of this step.
typedef struct lw_events {
    lw_mask what[LW_RIDE_AGAIN];
    lw_mask any;
} lw_events;

LW_INLINE void lw_event_put(lw_events *events, lw_ride_what what, lw_mask where)
{
    events->what[what] = where;
    events->any |= where;
}

// Time since a claim last held; starts anew where it holds.
LW_INLINE lw_lanes lw_since(lw_mask holds, lw_lanes since, double dt)
{
    return lw_select(holds, lw_all(0.0), since + dt);
}

LW_INLINE lw_lanes lw_tip(lw_lanes depth, lw_lanes rise) { return depth - rise; }

// Hull: launches, touches, drops.
LW_INLINE void lw_detect_hull(lw_detection *detection, const lw_loads *loads, double dt,
                              lw_events *events)
{
    const lw_mask wet = loads->hull.immersed > 0.0;
    const lw_mask touches = wet & detection->flies & (detection->clear > LW_REARM);
    detection->clear = lw_since(wet, detection->clear, dt);
    detection->wet = lw_since(~wet, detection->wet, dt);
    const lw_mask launches = ~detection->flies & (detection->clear > LW_CLEAR_LEAST);
    const lw_mask drops = detection->flies & (detection->wet > LW_WET_MOST);
    detection->flies = (detection->flies | launches) & ~drops;
    lw_event_put(events, LW_RIDE_LAUNCH, launches);
    lw_event_put(events, LW_RIDE_TOUCH, touches);
    lw_event_put(events, LW_RIDE_DROP, drops);
}

LW_INLINE void lw_detect_tips(lw_detection *detection, const lw_inflow *in, double dt,
                              lw_events *events)
{
    const lw_mask out = lw_tip(in->main.depth, in->main.tip_rise) < 0.0;
    const lw_mask rudder_out = lw_tip(in->rudder.depth, in->rudder.tip_rise) < 0.0;
    lw_event_put(events, LW_RIDE_BREACH, out & (detection->tip_in > LW_REARM));
    lw_event_put(events, LW_RIDE_RUDDER_BREACH, rudder_out & (detection->rudder_tip_in > LW_REARM));
    detection->tip_in = lw_since(out, detection->tip_in, dt);
    detection->rudder_tip_in = lw_since(rudder_out, detection->rudder_tip_in, dt);
}

// What a foil and its strut meet of air in a step, but for the surface at the strut.
LW_INLINE lw_cavity_flow lw_cavity_flow_of(const lw_motion *motion, const lw_state_lanes *x,
                                           const lw_foil_flow *flow, const lw_foil_load *foil,
                                           const lw_strut_load *strut)
{
    const double period = motion->sea.wave.period;
    const lw_lanes speed = lw_lanes_max(x->surge, lw_all(LW_LEAST_WAY));
    return (lw_cavity_flow){
        .speed = speed,
        .moved = motion->parameters.step * speed,
        .depth = flow->depth,
        .tip = lw_tip(flow->depth, flow->tip_rise),
        .face = foil->face,
        .strut_angle = strut->angle,
        .is_open = ~(lw_mask){0},
        .crest = motion->is_choppy ? LW_GRAVITY / (2.0 * LW_PI) * period * period : 0.0};
}

// Air on one foil and its strut after a step, told where it comes.
LW_INLINE void lw_detect_cavities(const lw_foil_craft *foil, const lw_strut_craft *strut,
                                  const lw_cavity_flow *in, lw_cavities *air, lw_mask came[2])
{
    const lw_mask foil_had = air->foil.on, strut_had = air->strut.on;
    lw_cavities_step(foil, strut, in, air);
    came[0] = air->foil.on & ~foil_had, came[1] = air->strut.on & ~strut_had;
}

LW_INLINE void lw_detect_ventilation(const lw_motion *motion, const lw_loads *loads,
                                     const lw_state_lanes *x, lw_hysteresis *memory,
                                     lw_events *events)
{
    const lw_craft *craft = motion->craft;
    const lw_inflow *in = &loads->inflow;
    lw_mask main_came[2], rudder_came[2];
    lw_cavity_flow main = lw_cavity_flow_of(motion, x, &in->main, &loads->main, &loads->main_strut);
    main.is_open = craft->main_strut.length - in->main.depth > 0.0;  // else the hull closes it
    const lw_cavity_flow rudder =
        lw_cavity_flow_of(motion, x, &in->rudder, &loads->rudder, &loads->rudder_strut);
    lw_detect_cavities(&craft->main_foil, &craft->main_strut, &main, &memory->main, main_came);
    lw_detect_cavities(&craft->rudder_foil, &craft->rudder_strut, &rudder, &memory->rudder,
                       rudder_came);
    lw_event_put(events, LW_RIDE_FOIL_AIR, main_came[0]);
    lw_event_put(events, LW_RIDE_RUDDER_AIR, rudder_came[0]);
    lw_event_put(events, LW_RIDE_STRUT_AIR, main_came[1]);
    lw_event_put(events, LW_RIDE_BLADE_AIR, rudder_came[1]);
}

// A stop that throws the sailor off, forward: she slides by what it pulls beyond her hold, until
// she has caught herself. Felt is what pulls along the boat, weight and all.
//
//     s'' = -(F_x / m + g sin(pitch)) - hold,   s' >= 0
LW_INLINE lw_mask lw_detect_stop(const lw_craft *craft, const lw_state_lanes *x,
                                 const lw_loads *loads, double dt, lw_detection *detection)
{
    lw_lanes sine, cosine;
    lw_upright_sincos(x->pitch, &sine, &cosine);
    const lw_lanes felt = -(loads->force.x * (1.0 / craft->weight) + sine);
    const lw_lanes none = lw_all(0.0);
    detection->slips =
        lw_lanes_max(detection->slips + (dt * LW_GRAVITY) * (felt - LW_HOLD_MOST), none);
    detection->slid =
        lw_select(detection->slips > 0.0, detection->slid + dt * detection->slips, none);
    return detection->slid > LW_SLIDE_MOST;
}

// Falls. A comparison with what is no number is false, so that such a lane counts as lost.
LW_INLINE lw_mask lw_detect_falls(const lw_state_lanes *x, const lw_loads *loads,
                                  const lw_pilot_lanes *pilot, lw_mask thrown, lw_events *events)
{
    const lw_lanes speed = lw_lanes_abs(x->surge) + lw_lanes_abs(x->sway) + lw_lanes_abs(x->heave);
    const lw_lanes spin =
        lw_lanes_abs(x->roll_rate) + lw_lanes_abs(x->pitch_rate) + lw_lanes_abs(x->yaw_rate);
    const lw_lanes sum = lw_lanes_abs(loads->force.x + loads->moment.y + loads->force.z);
    const lw_mask sound = (speed < LW_SPEED_MOST) & (spin < 30.0) & (sum < 1e9);
    const lw_mask leeward = sound & (x->heel < -LW_LEEWARD_MOST);
    const lw_mask windward = sound & (x->heel > LW_WINDWARD_MOST);
    const lw_mask over = leeward | windward;
    const lw_mask dives =
        sound & ~over & ((x->pitch < -LW_BOW_DOWN_MOST) | (x->pitch > LW_BOW_UP_MOST));
    const lw_mask stops = sound & ~over & ~dives & thrown;
    const lw_mask spins = sound & ~over & ~dives & ~thrown & (speed > LW_SPIN_WAY) &
                          (lw_lanes_abs(x->yaw_rate) > LW_SPIN_LEAST) &
                          (lw_lanes_abs(lw_way_round(x->bow - pilot->bow)) > LW_SPIN_MOST);
    lw_event_put(events, LW_RIDE_LEEWARD, leeward);
    lw_event_put(events, LW_RIDE_WINDWARD, windward);
    lw_event_put(events, LW_RIDE_PITCHPOLE, dives);
    lw_event_put(events, LW_RIDE_THROWN, stops);
    lw_event_put(events, LW_RIDE_SPIN, spins);
    lw_event_put(events, LW_RIDE_LOST, ~sound);
    return over | dives | stops | spins | ~sound;
}

#endif
