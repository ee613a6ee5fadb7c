// gust_lanes.h - gusty winds side by side, each lane from a seed of its own.
// SPDX-License-Identifier: MIT

#ifndef LW_GUST_LANES_H
#define LW_GUST_LANES_H

#include "lullwise/weather.h"
#include "medium/seed_lanes.h"
#include "solve/rough.h"

#define LW_NORMAL_90 1.2815515655446004  // nine in ten of a normal variable lie below

typedef struct lw_swing_lanes {
    lw_lanes at, rate;  // S, S'/w
} lw_swing_lanes;

typedef struct lw_gust_lanes {
    lw_seed_lanes seed;
    lw_swing_lanes puff, shift;
    lw_lanes eddy[LW_GUST_EDDIES];
} lw_gust_lanes;

// Starts a lane somewhere in the midst of its wind.
LW_INLINE void lw_gust_lanes_put(lw_gust_lanes *gust, int lane, lw_seed seed)
{
    gust->puff.at[lane] = lw_seed_normal(&seed);
    gust->puff.rate[lane] = lw_seed_normal(&seed);
    gust->shift.at[lane] = lw_seed_normal(&seed);
    gust->shift.rate[lane] = lw_seed_normal(&seed);
    for (int i = 0; i < LW_GUST_EDDIES; i++) gust->eddy[i][lane] = lw_seed_normal(&seed);
    lw_seed_lanes_put(&gust->seed, lane, seed);
}

LW_INLINE void lw_swing_advance(lw_swing_lanes *swing, const lw_gust_filter *filter, lw_bits bits)
{
    const lw_lanes a = lw_noise_of(bits), b = lw_noise_of(bits << 32);
    const lw_lanes at = swing->at, rate = swing->rate;
    swing->at = filter->turn[0][0] * at + filter->turn[0][1] * rate +
                (filter->noise[0][0] * a + filter->noise[0][1] * b);
    swing->rate = filter->turn[1][0] * at + filter->turn[1][1] * rate + filter->noise[1][0] * a;
}

// Lets one step of time pass, in which the air goes past the boat at a speed [m/s].
LW_INLINE void lw_gust_lanes_advance(lw_gust_lanes *gust, const lw_gust_filter *filter,
                                     lw_lanes apparent)
{
    lw_swing_advance(&gust->puff, filter, lw_seed_lanes_bits(&gust->seed));
    lw_swing_advance(&gust->shift, filter, lw_seed_lanes_bits(&gust->seed));
    lw_bits bits = lw_seed_lanes_bits(&gust->seed);
    for (int i = 0; i < LW_GUST_EDDIES; i++) {
        if (i == 2) bits = lw_seed_lanes_bits(&gust->seed);
        const lw_lanes kept = lw_rough_decay(filter->eddy_pass[i] * apparent);
        const lw_lanes fresh = lw_lanes_sqrt(1.0 - kept * kept);
        gust->eddy[i] = kept * gust->eddy[i] + fresh * lw_noise_of(bits);
        bits = bits << 32;
    }
}

// The wind of lulls and puffs, and the eddies now [m/s], at the height where the day's wind is
// read.
LW_INLINE lw_lanes lw_gust_lanes_blow(const lw_gust_lanes *gust, const lw_gust_filter *filter,
                                      lw_lanes puff)
{
    const lw_gust_kind *kind = &filter->kind;
    lw_lanes eddies = filter->eddy_weight[0] * gust->eddy[0];
    for (int i = 1; i < LW_GUST_EDDIES; i++) eddies += filter->eddy_weight[i] * gust->eddy[i];
    const lw_lanes X = filter->swing_share * puff + filter->eddy_share * eddies;
    const lw_lanes up = lw_all((kind->puff - kind->mean) / LW_NORMAL_90);
    const lw_lanes down = lw_all((kind->mean - kind->lull) / LW_NORMAL_90);
    const lw_lanes wind = kind->mean + X * lw_select(X > 0.0, up, down);
    return lw_lanes_max(wind, lw_all(0.5 * kind->lull));
}

LW_INLINE lw_lanes lw_gust_lanes_wind(const lw_gust_lanes *gust, const lw_gust_filter *filter)
{
    return lw_gust_lanes_blow(gust, filter, gust->puff.at);
}

// With the lull or puff that is to be expected so far ahead as the filter looks.
LW_INLINE lw_lanes lw_gust_lanes_coming(const lw_gust_lanes *gust, const lw_gust_filter *filter)
{
    const double *ahead = filter->ahead;
    return lw_gust_lanes_blow(gust, filter, ahead[0] * gust->puff.at + ahead[1] * gust->puff.rate);
}

// The wind's direction now, from its mean [rad].
LW_INLINE lw_lanes lw_gust_lanes_shift(const lw_gust_lanes *gust, const lw_gust_filter *filter)
{
    return filter->kind.shift * gust->shift.at;
}

#endif
