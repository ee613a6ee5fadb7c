// foil_section.h - a foil section by name or file, and what the water does to it at an angle.
// SPDX-License-Identifier: MIT

#ifndef LW_FOIL_SECTION_H
#define LW_FOIL_SECTION_H

#include "command/steps.h"
#include "lullwise/medium.h"
#include "lullwise/profile.h"

#define LW_SECTION_NOTES 4

// A section as it was asked for.
typedef struct lw_named_section {
    char name[LW_NAME_LENGTH];
    const char *notes[LW_SECTION_NOTES];  // what was done to its points
    int note_count;
    lw_outline outline;
} lw_named_section;

// "NACA 2412", "63-412", or the name of a file; "./2412" where a file is called so. False with every
// fault.
bool lw_named_section_read(lw_named_section *section, const char *text, lw_faults *faults);

typedef struct lw_section_point {
    double alpha;           // [rad]
    double lift;            // c_l
    double moment;          // c_m   about the quarter chord
    double least_pressure;  // C_p   lowest on the surface
    double least_at;        // x     where, in chords
    double cavitates_at;    // V_c   [m/s]
} lw_section_point;

extern const lw_table lw_section_table;

// A section with its flap set, ready for any angle. About 1 MB.
typedef struct lw_section_flow {
    lw_profile profile;
    lw_profile_flow flow;
    lw_profile_room room;
} lw_section_flow;

lw_profile_status lw_section_flow_of(lw_section_flow *flow, const lw_named_section *section,
                                     lw_profile_flap flap);

// Where a section is: the water, and how deep it lies.
typedef struct lw_section_water {
    const lw_medium *medium;
    double depth;  // [m]
} lw_section_water;

lw_section_point lw_section_point_at(lw_section_flow *flow, lw_section_water water, double alpha);

// Pressure coefficients at the profile's nodes.
void lw_section_pressures(const lw_section_flow *flow, double alpha,
                          double pressures[LW_NODES_MOST]);

#endif
