// chance.c - the jackknife over blocks, and Student's t.
// SPDX-License-Identifier: MIT

#include "lullwise/chance.h"

#include <math.h>

#include "lullwise/base.h"
#include "lullwise/elementary.h"

double lw_jackknife(const double of_set[LW_SETS])
{
    double mean = 0.0, square = 0.0;
    for (int b = 1; b < LW_SETS; b++) mean += of_set[b] / LW_BLOCKS;
    for (int b = 1; b < LW_SETS; b++) square += (of_set[b] - mean) * (of_set[b] - mean);
    return sqrt(square * (LW_BLOCKS - 1.0) / LW_BLOCKS);
}

double lw_spread(const double moved[LW_DRAWS])
{
    double mean = 0.0, square = 0.0;
    for (int d = 0; d < LW_DRAWS; d++) mean += moved[d] / LW_DRAWS;
    for (int d = 0; d < LW_DRAWS; d++) square += (moved[d] - mean) * (moved[d] - mean);
    return sqrt(square / (LW_DRAWS - 1.0));
}

double lw_chance(double mean, double error, double spread)
{
    const double unsure = sqrt(error * error + spread * spread);
    if (unsure > 0.0) return lw_student_below(mean / unsure, LW_BLOCKS - 1);
    return mean > 0.0 ? 1.0 : mean < 0.0 ? 0.0 : 0.5;
}

double lw_student_below(double t, int freedom)
{
    const double theta = lw_atan2(t, sqrt(freedom)), s = lw_sin(theta), c = lw_cos(theta);
    double sum = 0.0, term = c;
    for (int k = 1; k < freedom; k += 2) {
        sum += term;
        term *= c * c * (k + 1.0) / (k + 2.0);
    }
    return 0.5 + (theta + s * sum) / LW_PI;
}
