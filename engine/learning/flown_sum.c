// flown_sum.c - sums of what was flown on a course.
// SPDX-License-Identifier: MIT

#include "learning/flown_sum.h"

#include <math.h>

// Angles from the wind that count as a course.  [judged]
static const double lows[LW_COURSE_COUNT] = {30.0 * LW_DEG, 85.0 * LW_DEG, 115.0 * LW_DEG};
static const double highs[LW_COURSE_COUNT] = {75.0 * LW_DEG, 115.0 * LW_DEG, 170.0 * LW_DEG};

void lw_flown_sum_add(lw_flown_sum of[LW_COURSE_COUNT], double angle, double speed, double step)
{
    const double off = fabs(angle - 2.0 * LW_PI * floor(angle / (2.0 * LW_PI) + 0.5));
    int c = 0;
    while (c < LW_COURSE_COUNT && !(off >= lows[c] && off < highs[c])) c++;
    if (c == LW_COURSE_COUNT) return;
    of[c].time += step;
    of[c].run += step * speed;
    of[c].squares += step * speed * speed;
}

double lw_flown_sum_mean(const lw_flown_sum *sum)
{
    return sum->time > 0.0 ? sum->run / sum->time : NAN;
}

double lw_flown_sum_scatter(const lw_flown_sum *sum)
{
    const double mean = lw_flown_sum_mean(sum);
    return sum->time > 0.0 ? sqrt(fmax(sum->squares / sum->time - mean * mean, 0.0)) : NAN;
}
