// vector.h - vectors of three over lanes.
// SPDX-License-Identifier: MIT

#ifndef LW_VECTOR_H
#define LW_VECTOR_H

#include "solve/lanes.h"

typedef struct lw_vector {
    lw_lanes x, y, z;
} lw_vector;

LW_INLINE lw_vector lw_vector_zero(void)
{
    return (lw_vector){lw_all(0.0), lw_all(0.0), lw_all(0.0)};
}

LW_INLINE lw_vector lw_cross(lw_vector a, lw_vector b)
{
    return (lw_vector){a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

#endif
