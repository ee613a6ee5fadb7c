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

// The scale of winds; one line of letters behind a label; and what the letters mean.
void lw_chart_scale(FILE *out, size_t label_width);
void lw_chart_line(FILE *out, const char *label, size_t label_width, const lw_range *range);
void lw_chart_legend(FILE *out);

// L, M and P under the winds of lull, mean and puff [m/s].
void lw_chart_day(FILE *out, size_t label_width, double lull, double mean, double puff);

#endif
