// gust.c - constants of a gusty wind.
// SPDX-License-Identifier: MIT

#include "lullwise/weather.h"

#include <math.h>

#include "lullwise/elementary.h"
#include "medium/gust_lanes.h"
#include "medium/wind.h"

#define DAMPING         0.25  // zeta of lulls and puffs                                [judged]
#define EDDY_SHARE_MOST 0.5   // of the variance, so that puffs keep their period       [judged]

// Shares of variance, and f = n z / U at the corner, fitted to [kaimal-1972].
static const double eddy_shares[LW_GUST_EDDIES] = {0.391, 0.499, 0.110};
static const double eddy_corners[LW_GUST_EDDIES] = {0.0175, 0.0835, 0.856};

lw_gust_kind lw_gust_kind_of(const lw_day *day, double height)
{
    const lw_wind *wind = &day->wind;
    return (lw_gust_kind){.lull = wind->lull,
                          .mean = wind->mean,
                          .puff = wind->puff,
                          .period = wind->period,
                          .turbulence = lw_wind_turbulence(height, LW_ROUGHNESS),
                          .height = height,
                          .shift = wind->shift};
}

// How (S, S'/w) goes on by itself over some time.
static void turn_over(double period, double time, double turn[2][2])
{
    const double w = 2.0 * LW_PI / period * time;
    const double root = sqrt(1.0 - DAMPING * DAMPING), decay = lw_exp(-DAMPING * w);
    const double c = decay * lw_cos(root * w), s = decay * lw_sin(root * w) / root;
    turn[0][0] = c + DAMPING * s, turn[0][1] = s;
    turn[1][0] = -s, turn[1][1] = c - DAMPING * s;
}

// One step of the oscillator, solved exactly, and the noise that keeps both variances at 1:
// noise noise^T = 1 - turn turn^T.
static void fill_swing(lw_gust_filter *filter)
{
    double turn[2][2];
    turn_over(filter->kind.period, filter->step, turn);
    double left[2][2];
    for (int i = 0; i < 2; i++) {
        for (int k = 0; k < 2; k++) {
            filter->turn[i][k] = turn[i][k];
            left[i][k] = (i == k) - turn[i][0] * turn[k][0] - turn[i][1] * turn[k][1];
        }
    }
    filter->noise[1][0] = sqrt(left[1][1]);
    filter->noise[0][0] = left[0][1] / filter->noise[1][0];
    filter->noise[0][1] = sqrt(fmax(left[0][0] - filter->noise[0][0] * filter->noise[0][0], 0.0));
}

lw_gust_filter lw_gust_filter_of(lw_gust_kind kind, double step)
{
    lw_gust_filter filter = {.kind = kind, .step = step};
    const double sigma = (kind.puff - kind.lull) / (2.0 * LW_NORMAL_90);
    const double ratio = sigma > 0.0 ? kind.turbulence * kind.mean / sigma : 0.0;
    const double share = fmin(ratio * ratio, EDDY_SHARE_MOST);
    filter.swing_share = sqrt(1.0 - share), filter.eddy_share = sqrt(share);
    for (int i = 0; i < LW_GUST_EDDIES; i++) {
        filter.eddy_weight[i] = sqrt(eddy_shares[i]);
        filter.eddy_pass[i] = step * 2.0 * LW_PI * eddy_corners[i] / kind.height;
    }
    fill_swing(&filter);
    lw_gust_look_ahead(&filter, 0.0);
    return filter;
}

void lw_gust_look_ahead(lw_gust_filter *filter, double seconds)
{
    double turn[2][2];
    turn_over(filter->kind.period, seconds, turn);
    filter->ahead[0] = turn[0][0], filter->ahead[1] = turn[0][1];
}
