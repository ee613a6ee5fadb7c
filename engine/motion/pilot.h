// pilot.h - what the sailor does, in lanes: sees late, moves slowly, within limits.
// SPDX-License-Identifier: MIT
//
// The sailor keeps the heel by effort (hiking first, then the sheet: boat/force.h; the sheet stands
// in until the body is there) and the bow by the helm, each like the pilot of the crossover model [mcruer-1967]:
//
//     effort = effort_0 + trim + k_e (e + T_l e') + k_u (wind seen - wind of the trim)
//     trim'  = k_e e / T_i,    e = heel wanted - heel seen
//     helm   = helm_0 + k_h (bow wanted + steered - bow seen) + k_x (e + T_l e')
//     steered = k_b (trim + k_u (wind seen - wind of the trim))   in flight, within bounds
//
// What is seen lags behind what is: a lag of tau for the pilot's dead time. Arms and body lag too.
// Leaves out   looking ahead to a puff, pumping, steering for a wave, being tired or thrown about.

#ifndef LW_PILOT_LANES_H
#define LW_PILOT_LANES_H

#include "boat/force.h"
#include "motion/state.h"

// What the sailor of each lane wants now and in the end, and how strongly she answers.
typedef struct lw_pilot_lanes {
    lw_lanes heel, bow;                // wanted now: on the way to [rad]
    lw_lanes heel_aloft, bow_aloft;    // what is wanted in flight
    lw_lanes heel_afloat, bow_afloat;  // and until the boat flies
    lw_lanes helm;                     // that holds the course in a steady wind [rad]
    lw_lanes rudder;                   // incidence wanted [rad]
    lw_lanes wind, patience;           // of the trim [m/s]; 1 / T_i [1/s]
    lw_lanes yield, most_yield;        // course for effort, and at most [rad]
    lw_lanes speed[LW_GRIPS - 1],
        per_speed[LW_GRIPS - 1];  // where each stretch begins, and 1 / its
    lw_lanes per_flight;          // 1 / speed of flight: faster than that the helm is moved less
    lw_lanes effort[LW_GRIPS], grip[LW_GRIPS];  // length; at its ends: p_0, k_e,
    lw_lanes lead[LW_GRIPS], puff[LW_GRIPS];    // T_l, k_u,
    lw_lanes steer[LW_GRIPS], lean[LW_GRIPS];   // k_h, k_x
} lw_pilot_lanes;

#define LW_TURN_TO (7.0 * LW_DEG)  // [rad/s] how fast a new course or heel is gone to  [judged]

LW_INLINE lw_lanes lw_gone_to(lw_lanes from, lw_lanes to, double most)
{
    return from + lw_lanes_clamp(to - from, lw_all(-most), lw_all(most));
}

// Moves what is wanted towards what flying or floating asks for.
LW_INLINE void lw_pilot_turn(lw_pilot_lanes *pilot, lw_mask flies, double dt)
{
    const double most = LW_TURN_TO * dt;
    pilot->heel =
        lw_gone_to(pilot->heel, lw_select(flies, pilot->heel_aloft, pilot->heel_afloat), most);
    pilot->bow =
        lw_gone_to(pilot->bow, lw_select(flies, pilot->bow_aloft, pilot->bow_afloat), most);
}

// Effort between sitting to leeward and letting the sheet go.
LW_INLINE lw_lanes lw_effort_held(lw_lanes effort)
{
    return lw_lanes_clamp(effort, lw_all(-0.5), lw_all(3.0));
}

// How far the speed has come along a stretch between two grips.
LW_INLINE lw_lanes lw_way_up(const lw_pilot_lanes *pilot, const lw_state *x, int k)
{
    return lw_lanes_clamp((x->velocity.x - pilot->speed[k]) * pilot->per_speed[k], lw_all(0.0),
                          lw_all(1.0));
}

// Of values for rising speeds, the one for the speed now.
LW_INLINE lw_lanes lw_by_speed(const lw_pilot_lanes *pilot, const lw_state *x,
                               const lw_lanes of[LW_GRIPS])
{
    lw_lanes value = of[0];
    for (int k = 0; k + 1 < LW_GRIPS; k++) {
        value += lw_way_up(pilot, x, k) * (of[k + 1] - of[k]);
    }
    return value;
}

// Effort that wind and patience ask for beyond that of the steady wind.
LW_INLINE lw_lanes lw_pilot_more(const lw_pilot_lanes *pilot, const lw_state *x)
{
    return x->trim + lw_by_speed(pilot, x, pilot->puff) * (x->seen_wind - pilot->wind);
}

// The heel missed, counted ahead: e + T_l e'.
LW_INLINE lw_lanes lw_heel_off(const lw_pilot_lanes *pilot, const lw_state *x)
{
    return pilot->heel - x->seen_heel - lw_by_speed(pilot, x, pilot->lead) * x->seen_roll;
}

LW_INLINE lw_lanes lw_pilot_effort(const lw_pilot_lanes *pilot, const lw_state *x)
{
    const lw_lanes trim = lw_by_speed(pilot, x, pilot->effort) + lw_pilot_more(pilot, x);
    const lw_lanes off = lw_by_speed(pilot, x, pilot->grip) * lw_heel_off(pilot, x);
    return lw_effort_held(trim + off);
}

// Course steered for power: where there is too much of it towards less, where it fails towards more.
LW_INLINE lw_lanes lw_pilot_bow(const lw_pilot_lanes *pilot, const lw_state *x)
{
    const lw_lanes way = lw_way_up(pilot, x, LW_GRIPS - 2);
    const lw_lanes steered = way * pilot->yield * lw_pilot_more(pilot, x);
    return pilot->bow + lw_lanes_clamp(steered, -pilot->most_yield, pilot->most_yield);
}

// Course, and heel too: steering to windward throws the boat to leeward.
LW_INLINE lw_lanes lw_pilot_helm(const lw_motion *motion, const lw_pilot_lanes *pilot,
                                 const lw_state *x)
{
    const lw_lanes course =
        lw_by_speed(pilot, x, pilot->steer) * (lw_pilot_bow(pilot, x) - x->seen_course);
    const lw_lanes heel = lw_by_speed(pilot, x, pilot->lean) * lw_heel_off(pilot, x);
    const double most = motion->craft->helm_limit;
    const lw_lanes ratio = lw_lanes_max(x->velocity.x * pilot->per_flight, lw_all(1.0));
    return lw_lanes_clamp(pilot->helm + (course + heel) / (ratio * ratio), lw_all(-most),
                          lw_all(most));
}

// Acceleration of the sailor's middle to port: towards where she wants it, like a spring without a
// rebound, at no more than legs can do.
//
//     y'' = w^2 (y_wanted - y) - 2 w y',  held
LW_INLINE lw_lanes lw_body_push(const lw_motion *motion, const lw_pilot_lanes *pilot,
                                const lw_state *x)
{
    const lw_ride_rules *rules = &motion->rules;
    const double w = 1.0 / rules->body_lag, most = rules->body_push;
    const lw_lanes wanted = -lw_pose_hike(motion->craft, lw_pilot_effort(pilot, x));
    const lw_lanes pace = lw_lanes_clamp(0.5 * w * (wanted - x->body), lw_all(-rules->body_pace),
                                         lw_all(rules->body_pace));
    return lw_lanes_clamp(2.0 * w * (pace - x->body_speed), lw_all(-most), lw_all(most));
}

// Power to take off: the effort's, and what the body does not do yet, because a hand is quicker.
LW_INLINE lw_lanes lw_pilot_sheet(const lw_craft *craft, lw_lanes effort, const lw_state *x)
{
    const double per = 1.0 / (craft->body_reach - craft->body_inboard);
    const lw_lanes missing = (lw_pose_hike(craft, effort) + x->body) * per;
    return lw_lanes_max(lw_pose_taken(effort) + missing, lw_all(0.0));
}

LW_INLINE lw_lanes lw_held(lw_lanes x, double most)
{
    return lw_lanes_clamp(x, lw_all(-most), lw_all(most));
}

// Rates of all that the sailor moves and notices. `angles`: rates of roll, pitch, yaw; `wind`
// [m/s]. The push of the body stands in rates already.
LW_INLINE void lw_pilot_rates(const lw_motion *motion, const lw_pilot_lanes *pilot,
                              const lw_state *x, lw_vector angles, lw_lanes wind, lw_state *rates)
{
    const lw_ride_rules *rules = &motion->rules;
    const lw_lanes effort = lw_pilot_effort(pilot, x);
    rates->body = x->body_speed;

    const double hand = 1.0 / rules->hand_lag;
    const lw_lanes ease = hand * (lw_pilot_sheet(motion->craft, effort, x) - x->taken);
    const lw_lanes in =
        rules->haul_in + lw_way_up(pilot, x, LW_GRIPS - 2) * (rules->sheet_in - rules->haul_in);
    rates->taken = lw_lanes_clamp(ease, -in, lw_all(rules->sheet_out));
    rates->helm = lw_held(hand * (lw_pilot_helm(motion, pilot, x) - x->helm), rules->helm_pace);
    rates->rudder =
        lw_held(pilot->rudder - x->rudder, rules->turn_pace * motion->craft->rudder_turn);

    const double sight = 1.0 / rules->delay;
    rates->seen_heel = sight * (x->roll - x->seen_heel);
    rates->seen_roll = sight * (angles.x - x->seen_roll);
    rates->seen_course = sight * (x->yaw - x->seen_course);
    rates->seen_wind = sight * (wind - x->seen_wind);
    const lw_lanes off =
        lw_by_speed(pilot, x, pilot->grip) * pilot->patience * (pilot->heel - x->seen_heel);
    const lw_lanes more = lw_pilot_effort(pilot, x) + off;  // wound up no further than effort goes
    rates->trim = lw_select(more == lw_effort_held(more), off, lw_all(0.0));
}

#endif
