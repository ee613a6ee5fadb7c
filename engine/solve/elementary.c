// elementary.c - the elementary functions of one number: lane 0 of the lane versions.
// SPDX-License-Identifier: MIT

// A lane's bits do not depend on the width, so one lane is enough.
#undef LW_WIDTH
#define LW_WIDTH 1

#include "lullwise/elementary.h"

#include "solve/elementary.h"

double lw_sin(double x) { return lw_lanes_sin(lw_all(x))[0]; }
double lw_cos(double x) { return lw_lanes_cos(lw_all(x))[0]; }
double lw_atan(double x) { return lw_lanes_atan(lw_all(x))[0]; }
double lw_atan2(double y, double x) { return lw_lanes_atan2(lw_all(y), lw_all(x))[0]; }
double lw_exp(double x) { return lw_lanes_exp(lw_all(x))[0]; }
double lw_log(double x) { return lw_lanes_log(lw_all(x))[0]; }
