// hidden.h - what nobody can measure of a boat and her sailor.
// SPDX-License-Identifier: MIT

#ifndef LW_HIDDEN_H
#define LW_HIDDEN_H

#include "lullwise/logged.h"

typedef struct lw_hidden {
    double main_incidence;    // [rad] more at every pin than measured
    double rudder_incidence;  // [rad] more at the reference mark than measured
    double main_chord;        // [-]   of the main foil as it lifts / as measured
    double drag_area;         // [m^2] of windage more than given, head to wind and abeam
    double sail_power;        // [-]   greatest lift / what is given
    double chop;              // [-]   height of the waves as they shake her / as given
    double skill;             // [-]   of the sailor, more than given
} lw_hidden;
#define LW_HIDDEN_COUNT (sizeof(lw_hidden) / sizeof(double))

// A preset is what is thought before any day; an error how surely.
extern const lw_table lw_hidden_table;

// Puts them into a copy of boat and sailor as measured and of a day, as given and as settled. The
// chop of a day that has only a fetch grows with its square root.  [kamphuis]
void lw_hidden_put(const lw_hidden *hidden, lw_inputs *inputs);

#endif
