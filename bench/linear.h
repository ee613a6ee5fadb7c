// linear.h - our dense solves beside LAPACK's.
// SPDX-License-Identifier: MIT

#ifndef LW_BENCH_LINEAR_H
#define LW_BENCH_LINEAR_H

void bench_linear(void);

#endif
