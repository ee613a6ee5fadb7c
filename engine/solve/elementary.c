// elementary.c - the elementary functions of one number: lane 0 of the lane versions.
// SPDX-License-Identifier: MIT

// A lane's bits do not depend on the width, so one lane is enough.
#undef LW_WIDTH
#define LW_WIDTH 1

#include "lullwise/elementary.h"

#include "solve/elementary.h"

double lw_sin(double x) { return lw_lanes_sin(lw_all(x))[0]; }
double lw_cos(double x) { return lw_lanes_cos(lw_all(x))[0]; }
double lw_tan(double x) { return lw_lanes_tan(lw_all(x))[0]; }
double lw_asin(double x) { return lw_lanes_asin(lw_all(x))[0]; }
double lw_acos(double x) { return lw_lanes_acos(lw_all(x))[0]; }
double lw_atan(double x) { return lw_lanes_atan(lw_all(x))[0]; }
double lw_atan2(double y, double x) { return lw_lanes_atan2(lw_all(y), lw_all(x))[0]; }
double lw_exp(double x) { return lw_lanes_exp(lw_all(x))[0]; }
double lw_log(double x) { return lw_lanes_log(lw_all(x))[0]; }
double lw_log10(double x) { return lw_lanes_log10(lw_all(x))[0]; }
double lw_pow(double x, double y) { return lw_lanes_pow(lw_all(x), lw_all(y))[0]; }
double lw_cbrt(double x) { return lw_lanes_cbrt(lw_all(x))[0]; }
double lw_tanh(double x) { return lw_lanes_tanh(lw_all(x))[0]; }
double lw_sinh(double x) { return lw_lanes_sinh(lw_all(x))[0]; }
double lw_cosh(double x) { return lw_lanes_cosh(lw_all(x))[0]; }
