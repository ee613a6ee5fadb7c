// lanes.h - LW_WIDTH doubles side by side: the number that the force kernel computes with.
// SPDX-License-Identifier: MIT
//
// Every operation works lane by lane, so a lane's bits do not depend on its neighbours nor on the
// width. Compilers turn the type into vector instructions where the machine has them.

#ifndef LW_LANES_H
#define LW_LANES_H

#include <stdint.h>

#ifndef LW_WIDTH
#define LW_WIDTH 4  // one AVX2 register; two on SSE2 and in WebAssembly
#endif

typedef double lw_lanes __attribute__((vector_size(8 * LW_WIDTH)));
typedef int64_t lw_mask __attribute__((vector_size(8 * LW_WIDTH)));  // -1 true, 0 false

#define LW_INLINE static inline __attribute__((always_inline))

// Before a short loop: written out turn by turn. Left to itself clang keeps loops for WebAssembly
// that pass lanes through memory at every turn.
#ifdef __clang__
#define LW_UNROLLED _Pragma("clang loop unroll(full)")
#else
#define LW_UNROLLED _Pragma("GCC unroll 8")
#endif
#define LW_EACH_LANE(i) LW_UNROLLED for (int i = 0; i < LW_WIDTH; i++)

// Compiled for several machines, the best chosen at the start. No lanes by value into such a call.
#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) && \
    !defined(__SANITIZE_ADDRESS__)
#define LW_CLONES __attribute__((target_clones("avx2", "default")))
#else
#define LW_CLONES
#endif

// A long part of the work that is called where others are inlined: one copy of it stays in the
// processor's nearest memory, and a browser's compiler keeps more of it in registers. Pass lanes by
// their addresses.
#define LW_PART LW_CLONES static __attribute__((noinline))

// One lane of what lies in memory, to read or to set; by v[i] clang passes all lanes through the
// stack when i is not known while it compiles.
#define LW_LANE(v, i)      (((double *)&(v))[i])
#define LW_MASK_LANE(m, i) (((int64_t *)&(m))[i])

LW_INLINE lw_lanes lw_all(double x) { return x - (lw_lanes){0}; }  // keeps the sign of -0

LW_INLINE lw_lanes lw_select(lw_mask where, lw_lanes yes, lw_lanes no)
{
    return (lw_lanes)(((lw_mask)yes & where) | ((lw_mask)no & ~where));
}

LW_INLINE lw_lanes lw_lanes_min(lw_lanes a, lw_lanes b) { return lw_select(a < b, a, b); }
LW_INLINE lw_lanes lw_lanes_max(lw_lanes a, lw_lanes b) { return lw_select(a > b, a, b); }

LW_INLINE lw_lanes lw_lanes_clamp(lw_lanes x, lw_lanes low, lw_lanes high)
{
    return lw_lanes_min(lw_lanes_max(x, low), high);
}

LW_INLINE lw_lanes lw_lanes_abs(lw_lanes x) { return (lw_lanes)((lw_mask)x & INT64_MAX); }

LW_INLINE lw_lanes lw_lanes_sqrt(lw_lanes x)
{
    lw_lanes root;
    LW_EACH_LANE (i) root[i] = __builtin_sqrt(x[i]);
    return root;
}

LW_INLINE int lw_any(lw_mask mask)
{
    int64_t any = 0;
    LW_EACH_LANE (i) any |= mask[i];
    return any != 0;
}

#endif
