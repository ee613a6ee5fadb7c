// weight.h - how much a number counts that is far off.
// SPDX-License-Identifier: MIT

#ifndef LW_LEARNING_WEIGHT_H
#define LW_LEARNING_WEIGHT_H

// Of one that is so many of its errors off, where errors are not quite normal but of Student's t
// with v = 4, because trims jump now and then:  (v + 1) / (v + r^2).                [lange-1989]
static inline double lw_weight_of(double errors) { return 5.0 / (4.0 + errors * errors); }

#endif
