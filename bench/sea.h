// sea.h - looks at an irregular sea, and gusts, in lanes beside the sum written out.
// SPDX-License-Identifier: MIT

#ifndef LW_BENCH_SEA_H
#define LW_BENCH_SEA_H

void bench_sea(void);

#endif
