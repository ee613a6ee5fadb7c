// gather.h - four neighbouring numbers for each lane, from another place for each lane.
// SPDX-License-Identifier: MIT

#ifndef LW_GATHER_H
#define LW_GATHER_H

#include "solve/lanes.h"

// Lane i of part[k] is from[i][k]. Tables that hold what belongs together side by side are read in
// whole registers and turned, in half the time of one number after the other.
typedef struct lw_fours {
    const double *from[LW_WIDTH];
    lw_lanes part[4];
} lw_fours;

LW_INLINE void lw_gather(lw_fours *fours)
{
#if LW_WIDTH == 4
    typedef lw_lanes unaligned __attribute__((aligned(8), may_alias));
    const lw_lanes a = *(const unaligned *)fours->from[0], b = *(const unaligned *)fours->from[1];
    const lw_lanes c = *(const unaligned *)fours->from[2], d = *(const unaligned *)fours->from[3];
    const lw_lanes ab_0 = __builtin_shufflevector(a, b, 0, 4, 2, 6);
    const lw_lanes ab_1 = __builtin_shufflevector(a, b, 1, 5, 3, 7);
    const lw_lanes cd_0 = __builtin_shufflevector(c, d, 0, 4, 2, 6);
    const lw_lanes cd_1 = __builtin_shufflevector(c, d, 1, 5, 3, 7);
    fours->part[0] = __builtin_shufflevector(ab_0, cd_0, 0, 1, 4, 5);
    fours->part[1] = __builtin_shufflevector(ab_1, cd_1, 0, 1, 4, 5);
    fours->part[2] = __builtin_shufflevector(ab_0, cd_0, 2, 3, 6, 7);
    fours->part[3] = __builtin_shufflevector(ab_1, cd_1, 2, 3, 6, 7);
#else
    for (int k = 0; k < 4; k++) {
        LW_EACH_LANE (i) fours->part[k][i] = fours->from[i][k];
    }
#endif
}

#endif
