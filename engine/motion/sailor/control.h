// control.h - what the sailor does, in lanes: sees late, moves slowly, within limits.
// SPDX-License-Identifier: MIT
//
// The sailor keeps the heel by effort (hiking first, then the sheet: boat/effort.h; the sheet
// stands in until the body is there) and the bow by the helm, each like the pilot of the crossover
// model [mcruer-1967]:
//
//     effort = effort_0 + trim + k_e (e + T_l e') + k_u (wind seen - wind felt) + let go
//     trim'  = k_e e / T_i,    e = heel wanted - heel seen
//     helm   = helm_0 + k_h (bow wanted - bow seen) + k_x (e + T_l e')
//
// Bow and heel wanted, effort_0 and helm_0 go with the wind felt over some seconds: a wish for each
// wind (wish.c). What is seen lags behind what is: a lag of tau for the pilot's dead time. Arms and
// body lag too.
// Leaves out   pumping, steering for a wave, being tired or thrown about.

#ifndef LW_CONTROL_H
#define LW_CONTROL_H

#include "boat/effort.h"
#include "motion/state.h"
#include "solve/bits.h"

typedef LW_GAINS_OF(lw_lanes) lw_gains_lanes;
typedef LW_WISH_OF(lw_lanes, lw_gains_lanes) lw_wish_lanes;

// What the sailor of each lane wants now and in the end, and how strongly she answers.
typedef struct lw_pilot_lanes {
    lw_lanes heel, bow;             // wanted now: on the way to [rad]
    lw_lanes bow_afloat;            // wanted on the hull
    lw_wish_lanes wish[LW_WISHES];  // by the wind felt
    lw_lanes rudder[LW_WISHES];     // incidence wanted, by the mean wind [rad]
    lw_lanes wind, per_wind;        // of the plan [m/s]; wishes for each m/s
    lw_lanes patience;              // 1 / T_i [1/s]
    lw_lanes place;                 // along the boat, in flight [m]
    lw_lanes per_flight;            // 1 / speed of flight: faster than that the helm is moved less
    lw_gains_lanes rest, rising;
} lw_pilot_lanes;

#define LW_TURN_TO (7.0 * LW_DEG)  // [rad/s] how fast a new course or heel is gone to  [judged]

LW_INLINE lw_lanes lw_gone_to(lw_lanes from, lw_lanes to, double most)
{
    return from + lw_lanes_clamp(to - from, lw_all(-most), lw_all(most));
}

// How far a wind has come along the wishes: from 0, the first, to 1 for each stretch.
typedef struct lw_wish_way {
    lw_lanes part[LW_WISHES - 1];
} lw_wish_way;

LW_INLINE lw_wish_way lw_wish_way_of(const lw_pilot_lanes *pilot, lw_lanes wind)
{
    lw_wish_way way;
    const lw_lanes along = (wind - pilot->wind) * pilot->per_wind + (double)LW_WISH_MEAN;
    for (int k = 0; k + 1 < LW_WISHES; k++) {
        way.part[k] = lw_lanes_clamp(along - (double)k, lw_all(0.0), lw_all(1.0));
    }
    return way;
}

// The wish on that way.
LW_INLINE lw_wish_lanes lw_wished(const lw_pilot_lanes *pilot, lw_lanes wind)
{
    const lw_wish_way way = lw_wish_way_of(pilot, wind);
    lw_wish_lanes wish = pilot->wish[0];
    for (int i = 0; i < LW_WISH_MEMBERS; i++) {
        for (int k = 0; k + 1 < LW_WISHES; k++) {
            wish.at[i] += way.part[k] * (pilot->wish[k + 1].at[i] - pilot->wish[k].at[i]);
        }
    }
    return wish;
}

// Moves what is wanted towards what flying or floating asks for.
LW_INLINE void lw_pilot_turn(lw_pilot_lanes *pilot, const lw_wish_lanes *wish, lw_mask flies,
                             double dt)
{
    const double most = LW_TURN_TO * dt;
    pilot->heel = lw_gone_to(pilot->heel, lw_select(flies, wish->heel, wish->afloat), most);
    pilot->bow = lw_gone_to(pilot->bow, lw_select(flies, wish->bow, pilot->bow_afloat), most);
}

#define LW_RISING_BOW (3.0 * LW_DEG)  // up, that she lets it come as the hull lifts off    [judged]

// How far the bow points up more than she wants.
LW_INLINE lw_lanes lw_pitch_off(const lw_wish_lanes *wish, lw_mask flies, lw_lanes pitch)
{
    return pitch - lw_select(flies, wish->pitch, lw_all(LW_RISING_BOW));
}

// Where she sits along the boat a step later: forward while the bow points up more than she wants,
// as it does in a lull, which takes the sail's pull away, and when the hull lifts off too slowly.
LW_INLINE lw_lanes lw_pilot_place(const lw_motion *motion, const lw_pilot_lanes *pilot,
                                  lw_lanes pitch_off, lw_lanes place)
{
    const lw_ride_parameters *parameters = &motion->parameters;
    const double dt = parameters->step;
    const lw_lanes most = lw_lanes_max(lw_all(motion->craft->place_forward), pilot->place);
    const lw_lanes off = pilot->place + parameters->forward * pitch_off - place;
    const lw_lanes next = lw_gone_to(place, place + off * (dt / parameters->forward_lag),
                                     parameters->forward_pace * dt);
    return lw_lanes_clamp(next, pilot->place, most);
}

// Effort between sitting to leeward and letting the sheet go.
LW_INLINE lw_lanes lw_effort_held(lw_lanes effort)
{
    return lw_lanes_clamp(effort, lw_all(-0.5), lw_all(3.0));
}

// How she answers at the speed and in the wind that she feels.
typedef struct lw_pilot_view {
    lw_lanes flying;  // how far on the way from lifting off to flight
    lw_lanes helm;    // that holds the course
    lw_lanes effort;  // wanted
    lw_gains_lanes gains;
} lw_pilot_view;

// How far a speed has come from one to another.
LW_INLINE lw_lanes lw_way_up(lw_lanes speed, lw_lanes from, lw_lanes to)
{
    const lw_lanes length = lw_lanes_max(to - from, lw_all(0.1));
    return lw_lanes_clamp((speed - from) / length, lw_all(0.0), lw_all(1.0));
}

// Effort for the wind beyond that of the wish: of the plan on the hull, of the last seconds in
// flight.
LW_INLINE lw_lanes lw_pilot_gust(const lw_pilot_lanes *pilot, const lw_pilot_view *view,
                                 const lw_state_lanes *x)
{
    const lw_lanes usual = pilot->wind + view->flying * (x->felt_wind - pilot->wind);
    return view->gains.wind * (x->seen_wind - usual);
}

// The heel missed, counted ahead: e + T_l e'.
LW_INLINE lw_lanes lw_heel_off(const lw_pilot_lanes *pilot, const lw_pilot_view *view,
                               const lw_state_lanes *x)
{
    return pilot->heel - x->seen_heel - view->gains.lead_time * x->seen_roll;
}

#define LW_LET_GO_FROM (5.0 * LW_DEG)  // heel to leeward from which the sheet is let go   [judged]
#define LW_LET_GO      3.0             // [1/rad] effort for what is beyond                [judged]

LW_INLINE lw_lanes lw_pilot_effort(const lw_pilot_lanes *pilot, const lw_pilot_view *view,
                                   const lw_state_lanes *x)
{
    const lw_lanes off = lw_heel_off(pilot, view, x);
    const lw_lanes over = lw_lanes_max(-LW_LET_GO_FROM - x->seen_heel, lw_all(0.0));
    return lw_effort_held(view->gains.effort + x->trim + lw_pilot_gust(pilot, view, x) +
                          view->gains.heel * off + LW_LET_GO * over);
}

// On the hull, in less wind than the plan's, she answers heel as much less as the sail does, with
// the wind squared: it is left to the body, which is slow, and asked for as much swings her from
// side to side.
LW_INLINE lw_pilot_view lw_pilot_view_of(const lw_pilot_lanes *pilot, const lw_wish_lanes *wish,
                                         const lw_state_lanes *x)
{
    const lw_lanes u = x->surge;
    const lw_lanes rising = lw_way_up(u, pilot->rest.speed, pilot->rising.speed);
    lw_pilot_view view = {.flying = lw_way_up(u, pilot->rising.speed, wish->gains.speed),
                          .helm = wish->helm};
    for (int i = 0; i < LW_GAINS; i++) {
        const lw_lanes a = pilot->rest.at[i], b = pilot->rising.at[i], c = wish->gains.at[i];
        view.gains.at[i] = a + rising * (b - a) + view.flying * (c - b);
    }
    const lw_lanes part = lw_lanes_min(LW_WISH_STEP * pilot->per_wind * x->felt_wind, lw_all(1.0));
    view.gains.heel *= view.flying + (1.0 - view.flying) * (part * part);
    view.effort = lw_pilot_effort(pilot, &view, x);
    return view;
}

// The nearest way round to a course, either way.
LW_INLINE lw_lanes lw_way_round(lw_lanes angle)
{
    return angle - 2.0 * LW_PI * lw_nearest(angle * (0.5 / LW_PI)).value;
}

// Course, and heel too: steering to windward throws the boat to leeward.
LW_INLINE lw_lanes lw_pilot_helm(const lw_motion *motion, const lw_pilot_lanes *pilot,
                                 const lw_pilot_view *view, const lw_state_lanes *x)
{
    const lw_lanes course = view->gains.heading * lw_way_round(pilot->bow - x->seen_course);
    const lw_lanes heel = view->gains.heel_to_helm * lw_heel_off(pilot, view, x);
    const double most = motion->craft->helm_limit;
    const lw_lanes ratio = lw_lanes_max(x->surge * pilot->per_flight, lw_all(1.0));
    return lw_lanes_clamp(view->helm + (course + heel) / (ratio * ratio), lw_all(-most),
                          lw_all(most));
}

// Acceleration of the sailor's middle to port: towards where she wants it, like a spring without a
// rebound, at no more than legs can do.
//
//     y'' = w^2 (y_wanted - y) - 2 w y',  held
LW_INLINE lw_lanes lw_body_push(const lw_motion *motion, lw_lanes effort, const lw_state_lanes *x)
{
    const lw_ride_parameters *parameters = &motion->parameters;
    const double w = 1.0 / parameters->body_lag, most = parameters->body_push;
    const lw_lanes wanted = -lw_effort_hike(motion->craft, effort);
    const lw_lanes pace =
        lw_lanes_clamp(0.5 * w * (wanted - x->body), lw_all(-parameters->body_pace),
                       lw_all(parameters->body_pace));
    return lw_lanes_clamp(2.0 * w * (pace - x->body_speed), lw_all(-most), lw_all(most));
}

// Power to take off: the effort's, and what the body does not do yet, because a hand is quicker.
LW_INLINE lw_lanes lw_pilot_sheet(const lw_craft *craft, lw_lanes effort, const lw_state_lanes *x)
{
    const double per = 1.0 / (craft->body_reach - craft->body_inboard);
    const lw_lanes missing = (lw_effort_hike(craft, effort) + x->body) * per;
    return lw_lanes_max(lw_effort_taken(effort) + missing, lw_all(0.0));
}

// The rudder as wound for the wind of the last minute.
LW_INLINE lw_lanes lw_pilot_rudder(const lw_pilot_lanes *pilot, const lw_state_lanes *x)
{
    const lw_wish_way way = lw_wish_way_of(pilot, x->mean_wind);
    lw_lanes rudder = pilot->rudder[0];
    for (int k = 0; k + 1 < LW_WISHES; k++) {
        rudder += way.part[k] * (pilot->rudder[k + 1] - pilot->rudder[k]);
    }
    return rudder;
}

LW_INLINE lw_lanes lw_held(lw_lanes x, double most)
{
    return lw_lanes_clamp(x, lw_all(-most), lw_all(most));
}

// What there is for her to see: rates of roll, pitch and yaw [rad/s]; wind now, and as it is seen
// to come [m/s].
typedef struct lw_sight {
    lw_vector angles;
    lw_lanes wind, coming;
} lw_sight;

// Rates of what she notices.
LW_INLINE void lw_perception_rates(const lw_ride_parameters *parameters, const lw_sight *sight,
                                   const lw_state_lanes *x, lw_state_lanes *rates)
{
    const double late = 1.0 / parameters->delay;
    rates->seen_heel = late * (x->heel - x->seen_heel);
    rates->seen_roll = late * (sight->angles.x - x->seen_roll);
    rates->seen_course = late * (x->bow - x->seen_course);
    rates->seen_wind = late * (sight->wind - x->seen_wind);
    rates->felt_wind = (1.0 / parameters->felt_lag) * (sight->coming - x->felt_wind);
    rates->mean_wind = (1.0 / parameters->mean_lag) * (sight->wind - x->mean_wind);
}

// Rates of what she moves, but of the body's speed.
LW_INLINE void lw_action_rates(const lw_motion *motion, const lw_pilot_lanes *pilot,
                               const lw_pilot_view *view, const lw_state_lanes *x,
                               lw_state_lanes *rates)
{
    const lw_ride_parameters *parameters = &motion->parameters;
    rates->body = x->body_speed;
    const double hand = 1.0 / parameters->hand_lag;
    const lw_lanes ease = hand * (lw_pilot_sheet(motion->craft, view->effort, x) - x->taken);
    rates->taken =
        lw_lanes_clamp(ease, lw_all(-parameters->sheet_in), lw_all(parameters->sheet_out));
    rates->helm =
        lw_held(hand * (lw_pilot_helm(motion, pilot, view, x) - x->helm), parameters->helm_pace);
    rates->rudder = lw_held(lw_pilot_rudder(pilot, x) - x->rudder,
                            parameters->turn_pace * motion->craft->rudder_turn);
    const lw_lanes off = view->gains.heel * pilot->patience * (pilot->heel - x->seen_heel);
    const lw_lanes more = view->effort + off;  // wound up no further than effort goes
    rates->trim = lw_select(more == lw_effort_held(more), off, lw_all(0.0));
}

#endif
