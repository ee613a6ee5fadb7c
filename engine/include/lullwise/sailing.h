// sailing.h - how a pin is expected to fare on a course in a mean wind.
// SPDX-License-Identifier: MIT

#ifndef LW_SAILING_H
#define LW_SAILING_H

#include "lullwise/outlook.h"

// Whose rides: of a set of blocks, as is, with swims from the curves fitted to them; or of one
// draw, or as is beside it, in its block and its winds; with swims drawn towards those curves. From
// draw to draw rates go as a gamma variable with a deviation of its mean m [judged]; after n swims
// in a time T
//
//     m (n + 1) / (m T + 1)
//
// is expected: what a few minutes happened to see does not count for a draw's own.
typedef struct lw_source {
    enum { LW_OF_SET, LW_OF_DRAW, LW_BESIDE_DRAW } kind;
    size_t set;     // whose curves tell the swims
    size_t number;  // of a draw
    bool for_time;  // where time decides she is sailed on the hull if that is the faster
} lw_source;

// A pin on one course in a mean wind [m/s].
typedef struct lw_sailing {
    double speed;   // [m/s] made good along the course under way
    double flying;  // [-]   share of that time
    double swims;   // [1/s] under way
    double swim;    // [s]   that one costs, with launching again
    bool on_hull;   // sails on the hull: does not fly, lies in the water longer than she sails, or,
                    // where time decides, is faster so
    bool is_stuck;  // makes less than a knot good
} lw_sailing;

lw_sailing lw_outlook_sailing(const lw_outlook *outlook, lw_source source, size_t pin,
                              size_t course, double wind);

#endif
