// parameters.c - what rides share: presets of what no tape finds of wand and sailor.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "lullwise/elementary.h"
#include "lullwise/motion.h"

#define QUICKER 1.5   // eye and hands, from one step of skill to the next         [judged]
#define PREVIEW 0.75  // [s] that a practised sailor sees ahead; an expert 3 s      [judged]

// An expert's body moves no quicker than a practised sailor's: one thrown about throws the boat the
// other way.
lw_ride_parameters lw_ride_parameters_of(double skill)
{
    const double quick = lw_exp((skill - 1.0) * lw_log(QUICKER));
    return (lw_ride_parameters){
        .step = 0.02,
        .wand_lag = 0.04,      // a light stick dragged by the water  [judged]
        .wand_fall = 6.0,      // its cord pulls it down a radian in a sixth of a second  [judged]
        .slack = 0.0,          // the flap's load holds the play to one side  [judged]
        .delay = 0.2 / quick,  // practised: of a pilot's eye and mind  [mcruer-1967]
        .felt_lag = 2.0,       // a puff of a second is not sailed by  [judged]
        .mean_lag = 60.0,      // nor is the rudder wound for one puff  [judged]
        .preview = PREVIEW * skill * skill,
        .hand_lag = 0.1 / quick,             // of a pilot's arm  [mcruer-1967]
        .sheet_out = 2.5 * quick,            // all power off within a second  [judged]
        .sheet_in = 1.2 * quick,             //                                [judged]
        .helm_pace = 60.0 * LW_DEG * quick,  // [judged]
        .turn_pace = 0.5,                    // turns a second  [judged]
        .body_lag = 0.5,                     // a quick move throws the boat the other way  [judged]
        .body_pace =
            0.8 * fmin(quick, 1.0),  // from sitting to hiked in a second and a half  [judged]
        .body_push = 2.0,            // [judged]
        .forward = 15.0,             // a quarter of a metre for a degree  [judged]
        .forward_lag = 1.0,          // [judged]
        .forward_pace = 0.5,         // [judged]
        .swim = 60.0,                // [judged] until counted: the day has its own
    };
}

lw_ride_parameters lw_ride_parameters_preset(void) { return lw_ride_parameters_of(1.0); }

lw_motion lw_motion_of(const lw_craft *craft)
{
    lw_motion motion;
    memset(&motion, 0, sizeof motion);
    motion.craft = craft;
    motion.inertia = lw_inertia_of(craft);
    motion.parameters = lw_ride_parameters_of(craft->skill);
    return motion;
}
