// wish.h - what a sailor wants in each wind of some seconds: course, heel and their effort.
// SPDX-License-Identifier: MIT

#ifndef LW_WISH_H
#define LW_WISH_H

#include "lullwise/motion.h"

// Where winds have no flight the sailor lets her down: as in the nearest that has one, but with the
// body in and nearly upright. On the hull, in those up to the least that flies, she waits with
// `resting` heel: lifting off asks for more wind than flying on.
void lw_wishes_let_down(lw_pilot *pilot, const lw_wishes *wishes, double resting);

#endif
