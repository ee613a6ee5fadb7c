// levers.h - what is moved afloat, and what is set ashore.
// SPDX-License-Identifier: MIT

#ifndef LW_LEVERS_H
#define LW_LEVERS_H

#include "lullwise/craft.h"

typedef struct lw_levers {
    double turns;    // [turns] rudder lift on from the mark
    double place;    // [m]     sailor's, from the transom
    double heel;     // [rad]   windward, in the mean wind; in lull and puff as far off it as usual
    double sail;     // [-]     fullness: lift that the sail can give / the measured sail's
    double pin;      // [rad]   main foil's incidence
    double rod;      // [rad]   flap added by the ride-height rod
    double wand;     // [m]     its length
    double gearing;  // [-]
    double wind;     // [-]     true / as told: nobody moves it, but it may be what is off
} lw_levers;

// clang-format off
#define LW_LEVER_LIST(X) \
    X(TURNS) X(PLACE) X(HEEL) X(SAIL) X(PIN) X(ROD) X(WAND) X(GEARING) X(WIND)
// clang-format on
#define LW_AS_LEVER(name) LW_LEVER_##name,
typedef enum lw_lever { LW_LEVER_LIST(LW_AS_LEVER) LW_LEVERS } lw_lever;

extern const lw_table lw_levers_table;

// What is known of a lever beside its quantity.
typedef struct lw_lever_row {
    double often;          // prior odds that it is the one thing wrong, beside the others' [judged]
    double usual;          // how far it then is off, one sigma, in SI                     [judged]
    double doubt;          // chance that what is told of it is as wrong as if nothing were [judged]
    double step, most;     // by which it is moved, and how far at most, in SI             [judged]
    double trouble;        // of moving it by `usual`, beside the others                   [judged]
    bool is_trim;          // moved afloat
    const char *too_much;  // "too much rudder lift is on"
    const char *too_little;
    const char *more;  // "wind rudder lift on"
    const char *less;
    const char *check;  // how to see whether it is off: "count the turns back to the mark"
} lw_lever_row;

const lw_lever_row *lw_lever_of(lw_lever lever);
double lw_lever_get(const lw_levers *levers, lw_lever lever);
void lw_lever_put(lw_levers *levers, lw_lever lever, double si);

// What the boat allows: turns within the rudder's, the sailor's place between the ends of the rack.
bool lw_lever_is_possible(const lw_craft *craft, lw_lever lever, double value);

// What of the levers is fixed while sailing; and the craft with the sail as full as they say, in
// the room given where it is not the craft itself. Lift and drag go with fullness.  [judged]
lw_setup lw_levers_setup(const lw_levers *levers);
const lw_craft *lw_levers_craft(const lw_levers *levers, const lw_craft *craft, lw_craft *room);

#endif
