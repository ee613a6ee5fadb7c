// hull_prepared.c - largest errors of what the force kernel reads of a hull.
// SPDX-License-Identifier: MIT

#include "lullwise/prepared.h"

// clang-format off
static const lw_prepared rows[] = {
    {"hull: volume",             0.56, "% of the floating boat's", "+8°, 1/4 afloat"},
    {"hull: volume's middle",    3.5,  "mm x volume / floating",   "+8°, 1/2 afloat"},
    {"hull: middle's height",    1.0,  "mm x volume / floating",   "+8°, 1/4 afloat"},
    {"hull: metacentre, across", 3.0,  "mm x volume / floating",   "level, just touching"},
    {"hull: friction",           0.48, "% of the weight",          "touching, 9 m/s"},
    {"hull: waves",              0.36, "% of the weight",          "+8°, 1.4 m/s"},
};
// clang-format on

lw_prepared_list lw_prepared_hull(void)
{
    return (lw_prepared_list){rows, sizeof rows / sizeof rows[0]};
}
