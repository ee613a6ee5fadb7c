// elementary.h - sin, cos, atan2, log, exp, ... over lanes, with the same bits on every machine.
// SPDX-License-Identifier: MIT
//
// Only + - * / sqrt, comparisons and bit operations, which IEEE 754 makes exact; build with
// -ffp-contract=off. A lane's bits depend neither on its neighbours nor on LW_WIDTH.

#ifndef LW_LANES_ELEMENTARY_H
#define LW_LANES_ELEMENTARY_H

#include "solve/exponential.h"
#include "solve/hyperbolic.h"
#include "solve/inverse.h"
#include "solve/power.h"
#include "solve/trigonometric.h"

#endif
