// scene.h - how she stands in lull, mean and puff, as trimmed and as her levers make her.
// SPDX-License-Identifier: MIT
//
// All states are steady flights in the lull, the mean wind and the puff, with nothing moved from
// one to the next but heel, sheet and body: what trim and set-up make of her by themselves.

#ifndef LW_SCENE_H
#define LW_SCENE_H

#include "lullwise/day.h"
#include "lullwise/levers.h"
#include "lullwise/range.h"

enum { LW_IN_LULL, LW_IN_MEAN, LW_IN_PUFF, LW_IN_WINDS };

// An answer without balance has the flight and margins that were reached on the way to it.
typedef struct lw_stance {
    lw_levers levers;
    size_t pin;  // sought from this pin's own trim, the pin in the boat
    lw_answer at[LW_IN_WINDS];
    double hump;     // [m/s^2] spare through the hump on a reach, in the mean wind; NAN: not sought
    double damping;  // [-]     of the swing of height and pitch; NAN: not sought
} lw_stance;

// Flies in the lull, keeps its margins in the mean wind, and rides the puff out.
bool lw_stance_is_kept(const lw_stance *stance);

// What a sailor could see of a stance, beside how she should fly: the bow as with that pin, height
// and speed as with the pin that fits the wind best.
typedef struct lw_seen {
    double bow;         // [rad]    up, more than she should
    double level;       // [rad]    bow above level
    double height;      // [m]      higher than she should
    double travel;      // [rad]    wand travel left before the linkage's stop, as the puff hits
    double tip;         // [chords] margin of the main foil's tip, as the puff hits
    double stern_tip;   // [chords] the same of the rudder foil
    double clearance;   // [m]      hull above the water, in the lull
    double lift_left;   // [rad]    flap travel down that is left, in the lull
    double power_left;  // [-]      of the sail's power that can be taken off, as the puff hits
    double sitting;     // [-]      effort in the lull: below 0 she would sit to leeward
    double speed;       // [-]      of what it should be, less 1
    double hump;        // [m/s^2]  spare through the hump
    double damping;     // [-]      of height and pitch
} lw_seen;
extern const lw_table lw_seen_table;

typedef struct lw_scene {
    const lw_craft *craft;
    const lw_boat *boat;
    lw_wind wind;
    lw_course course;
    bool wants_hump, wants_damping;          // sought too
    lw_stance own[LW_PINS_MOST];             // each pin, trimmed for the mean wind
    lw_ask asks[LW_PINS_MOST][LW_IN_WINDS];  // that give them
    size_t proper;                           // the pin that fits this wind best
    lw_craft fuller;                         // room to work in
} lw_scene;

// About 20 ms a pin. `craft` and `boat` must outlive it.
void lw_scene_prepare(lw_scene *scene, const lw_craft *craft, const lw_boat *boat,
                      const lw_wind *wind, lw_course course);

// Stances from their pins and levers, n side by side.
void lw_scene_stances(lw_scene *scene, lw_stance *stances, size_t n);

lw_seen lw_seen_of(const lw_scene *scene, const lw_stance *stance);

// Least mean wind [m/s], as told or more, that lifts a stance through the hump on a reach; 0: none
// up to 8 kn more.
double lw_scene_takes_off(lw_scene *scene, const lw_stance *stance);

#endif
