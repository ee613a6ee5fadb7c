// chart.h - ranges as letters: winds across, one line for each pin and course.
// SPDX-License-Identifier: MIT

#ifndef LW_CHART_H
#define LW_CHART_H

#include <stdio.h>

#include "lullwise/range.h"

// What a set-up does in a wind, one letter each; capitals are wanted, so that no colour is needed.
typedef enum lw_state {
    LW_STATE_HULL = '.',    // on the hull
    LW_STATE_STAYS = 's',   // stays up once she flies, but does not launch on this course
    LW_STATE_FLIES = 'F',   // launches, stays up and is held
    LW_STATE_BEYOND = '!',  // more than can be held
} lw_state;

lw_state lw_state_of(const lw_range *range, double wind);

// The whole chart of an answer of `lullwise range`, with the day's winds and what the letters mean.
void lw_chart_draw(FILE *out, const void *ranged);

#endif
