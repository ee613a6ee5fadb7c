// scalar.h - the force kernel one pose wide: the natural form for a general-purpose solver.
// SPDX-License-Identifier: MIT

#ifndef LW_BENCH_SCALAR_H
#define LW_BENCH_SCALAR_H

#include "lullwise/flight.h"

// A steady question with the bow level, ready to be looked at again and again.
typedef struct scalar_question scalar_question;
struct scalar_question {
    const lw_craft *craft;
    double pose[32];  // an lw_pose one lane wide
};

void scalar_ask(scalar_question *question, const lw_craft *craft, const lw_ask *ask);

// Residuals at x: speed, leeway, ride height, rudder incidence, helm, effort.
void scalar_residual(const scalar_question *question, const double x[6], double residual[6]);

#endif
