// ride.h - the boat in time, beside a general-purpose integrator.
// SPDX-License-Identifier: MIT

#ifndef LW_BENCH_RIDE_H
#define LW_BENCH_RIDE_H

void bench_rides(void);

#endif
