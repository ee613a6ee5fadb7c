// wish.h - what a sailor wants in each wind of some seconds: course, heel and their effort.
// SPDX-License-Identifier: MIT

#ifndef LW_WISH_H
#define LW_WISH_H

#include "lullwise/motion.h"

// Flights wanted by wind: those that were found are next to each other.
typedef struct lw_wishes {
    lw_ask ask[LW_WISHES];
    lw_answer answer[LW_WISHES];
    int first, last;  // that fly
} lw_wishes;

// About a flight of `ask` in much the same wind as the pilot's, at its rudder.
//
//     greatest of  V cos(gamma - course) - 8 m/s max(0, 1.25 - p) - 4 m/s margins overdrawn
//
// p: effort; what it has beyond 1 is power to give away. The course is that on which the flight
// given is the fastest: tan(gamma - course) = (dV/dgamma) / V.
lw_wishes lw_wishes_by_wind(const lw_craft *craft, const lw_pilot *pilot, const lw_ask *ask,
                            const lw_answer *answer);

// Where winds have no flight the sailor lets her down: as in the nearest that has one, but with the
// body in and nearly upright. On the hull, in those up to the least that flies, she waits with
// `resting` heel: lifting off asks for more wind than flying on.
void lw_wishes_let_down(lw_pilot *pilot, const lw_wishes *wishes, double resting);

#endif
