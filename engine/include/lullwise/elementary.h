// elementary.h - sin, cos, atan2, log, exp, ... with the same bits on every machine.
// SPDX-License-Identifier: MIT
//
// The engine calls no libm function but those that IEEE 754 makes exact (sqrt, fabs, floor,
// copysign, fmin, fmax). Each function here is the lane version of engine/solve/elementary.h
// with one lane looked at, so a scalar and a lane answer cannot differ.

#ifndef LW_ELEMENTARY_H
#define LW_ELEMENTARY_H

double lw_sin(double x);
double lw_cos(double x);
double lw_tan(double x);
double lw_asin(double x);  // NaN outside -1..1
double lw_acos(double x);  // NaN outside -1..1
double lw_atan(double x);
double lw_atan2(double y, double x);
double lw_exp(double x);
double lw_log(double x);  // -inf at 0, NaN below
double lw_log10(double x);
double lw_pow(double x, double y);  // x >= 0
double lw_cbrt(double x);
double lw_tanh(double x);
double lw_sinh(double x);
double lw_cosh(double x);

#endif
