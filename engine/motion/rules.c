// rules.c - presets of what no tape finds of wand and sailor.
// SPDX-License-Identifier: MIT

#include "lullwise/motion.h"

lw_ride_rules lw_ride_rules_of(double skill)
{
    (void)skill;
    return (lw_ride_rules){
        .step = 0.02,
        .wand_lag = 0.04,  // a light stick dragged by the water  [judged]
        .wand_fall = 6.0,  // its cord pulls it down a radian in a sixth of a second  [judged]
        .slack = 0.0,      // the flap's load holds the play to one side  [judged]
        .delay = 0.2,      // of a pilot's eye and mind  [mcruer-1967]
        .felt_lag = 2.0,   // a puff of a second is not sailed by  [judged]
        .mean_lag = 60.0,  // nor is the rudder wound for one puff  [judged]
        .preview = 0.0,
        .hand_lag = 0.1,   // of a pilot's arm  [mcruer-1967]
        .sheet_out = 2.5,  // all power off within a second  [judged]
        .sheet_in = 1.2,   //                                [judged]
        .helm_pace = 60.0 * LW_DEG,  // [judged]
        .turn_pace = 0.5,            // turns a second  [judged]
        .body_lag = 0.5,             // a quick move throws the boat the other way  [judged]
        .body_pace = 0.8,            // from sitting to hiked in a second and a half  [judged]
        .body_push = 2.0,            // [judged]
        .swim = 60.0,                // [judged] until counted: the day has its own
    };
}

lw_ride_rules lw_ride_rules_preset(void) { return lw_ride_rules_of(1.0); }
