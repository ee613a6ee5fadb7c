// integrator.h - the equations of motion through a general-purpose integrator, CVODE.
// SPDX-License-Identifier: MIT

#ifndef LW_TEST_INTEGRATOR_H
#define LW_TEST_INTEGRATOR_H

#include <cvode/cvode.h>
#include <nvector/nvector_serial.h>
#include <stdbool.h>
#include <string.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>

#include "lullwise/motion.h"

typedef struct integrator_question {
    const lw_motion *motion;
    const lw_ride_plan *plan;
    long looks;
} integrator_question;

static int integrator_rates(realtype time, N_Vector y, N_Vector rates, void *context)
{
    (void)time;
    integrator_question *q = context;
    lw_ride_state state, change;
    memcpy(&state, N_VGetArrayPointer(y), sizeof state);
    lw_motion_rates(q->motion, q->plan, &state, &change);
    memcpy(N_VGetArrayPointer(rates), &change, sizeof change);
    q->looks++;
    return 0;
}

// Moves *state on by some seconds; false when the integrator gives up. Backward differentiation
// with its own dense Jacobian, as the equations are stiff.
static bool integrator_go(integrator_question *q, lw_ride_state *state, double seconds,
                          double tolerance)
{
    SUNContext context;
    if (SUNContext_Create(NULL, &context)) return false;
    N_Vector y = N_VNew_Serial(LW_RIDE_STATES, context);
    SUNMatrix matrix = SUNDenseMatrix(LW_RIDE_STATES, LW_RIDE_STATES, context);
    SUNLinearSolver solver = SUNLinSol_Dense(y, matrix, context);
    void *cvode = CVodeCreate(CV_BDF, context);
    memcpy(N_VGetArrayPointer(y), state, sizeof *state);
    realtype reached;
    const bool is_done = CVodeInit(cvode, integrator_rates, 0.0, y) == CV_SUCCESS &&
                         CVodeSetUserData(cvode, q) == CV_SUCCESS &&
                         CVodeSStolerances(cvode, tolerance, tolerance) == CV_SUCCESS &&
                         CVodeSetLinearSolver(cvode, solver, matrix) == CV_SUCCESS &&
                         CVodeSetMaxNumSteps(cvode, 1000000) == CV_SUCCESS &&
                         CVodeSetStopTime(cvode, seconds) == CV_SUCCESS &&
                         CVode(cvode, seconds, y, &reached, CV_NORMAL) >= 0;
    memcpy(state, N_VGetArrayPointer(y), sizeof *state);
    CVodeFree(&cvode);
    SUNLinSolFree(solver);
    SUNMatDestroy(matrix);
    N_VDestroy(y);
    SUNContext_Free(&context);
    return is_done;
}

#endif
