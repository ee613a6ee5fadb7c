// inertia_lanes.h - masses and damping of boats in motion, a boat in each lane.
// SPDX-License-Identifier: MIT
//
//     P = sum m (v + w x r),   H = sum r x m (v + w x r) + I w
//     dP/dt + w x P = F,       dH/dt + w x H + v x P = N        in the boat's axes
//
// Carried water resists acceleration in the boat's axes only: its other terms are in the lift of
// thin foils already.

#ifndef LW_INERTIA_LANES_H
#define LW_INERTIA_LANES_H

#include "boat/loads.h"
#include "lullwise/motion.h"

// A matrix of the six degrees of freedom in blocks: [0][0] force and velocity, [1][1] moment and
// spin.
typedef struct lw_mass_matrix {
    lw_lanes at[2][2][3][3];
} lw_mass_matrix;

LW_INLINE lw_lanes *lw_mass_matrix_at(lw_mass_matrix *mass, int i, int j)
{
    return &mass->at[i / 3][j / 3][i % 3][j % 3];
}

// Mass matrix with the sailor's middle at (place, y).
LW_INLINE void lw_mass_matrix_of(const lw_inertia *inertia, const lw_craft *craft, lw_lanes place,
                                 lw_lanes body_y, lw_mass_matrix *mass)
{
    const double m = craft->body_mass, z = craft->body_z, I = inertia->body_spin;
    const lw_lanes x = place, y = body_y, mx = m * x, my = m * y, zero = lw_all(0.0);
    const lw_lanes add[LW_DOF][LW_DOF] = {
        {lw_all(m), zero, zero, zero, lw_all(m * z), -my},
        {zero, lw_all(m), zero, lw_all(-m * z), zero, mx},
        {zero, zero, lw_all(m), my, -mx, zero},
        {zero, lw_all(-m * z), my, my * y + (m * z * z + I), -mx * y, -mx * z},
        {lw_all(m * z), zero, -mx, -mx * y, mx * x + (m * z * z + I), -my * z},
        {-my, mx, zero, -mx * z, -my * z, mx * x + my * y + I}};
    for (int i = 0; i < LW_DOF; i++) {
        for (int j = 0; j < LW_DOF; j++) {
            *lw_mass_matrix_at(mass, i, j) = inertia->mass[i][j] + add[i][j];
        }
    }
}

// Momentum of a mass at a place.
LW_INLINE void lw_momentum_add(double mass, lw_vector at, lw_vector v, lw_vector w, lw_sum *sum)
{
    const lw_vector turn = lw_cross(w, at);
    lw_sum_add(sum, at,
               (lw_vector){mass * (v.x + turn.x), mass * (v.y + turn.y), mass * (v.z + turn.z)});
}

// What is left of a load to change the velocities, once the turning of the axes has taken its
// part: F - w x P, N - w x H - v x P.
LW_INLINE lw_sum lw_turning_load(const lw_motion *motion, lw_vector body, lw_vector v, lw_vector w,
                                 lw_sum load)
{
    const lw_craft *craft = motion->craft;
    const lw_inertia *inertia = &motion->inertia;
    const lw_lanes zero = lw_all(0.0);
    lw_sum momentum = {{zero, zero, zero}, {zero, zero, zero}};
    lw_momentum_add(craft->hull_mass,
                    (lw_vector){lw_all(craft->hull_x), zero, lw_all(craft->hull_z)}, v, w,
                    &momentum);
    lw_momentum_add(craft->body_mass, body, v, w, &momentum);
    momentum.moment.x += (inertia->spin[0] + inertia->body_spin) * w.x;
    momentum.moment.y += (inertia->spin[1] + inertia->body_spin) * w.y;
    momentum.moment.z += (inertia->spin[2] + inertia->body_spin) * w.z;
    const lw_vector wP = lw_cross(w, momentum.force), wH = lw_cross(w, momentum.moment);
    const lw_vector vP = lw_cross(v, momentum.force);
    const lw_vector F = load.force, N = load.moment;
    return (lw_sum){{F.x - wP.x, F.y - wP.y, F.z - wP.z},
                    {N.x - wH.x - vP.x, N.y - wH.y - vP.y, N.z - wH.z - vP.z}};
}

// Near enough to the slope of the loads in the velocities, at a speed along the boat: what makes
// motion stiff, the damping of the foils (lw_inertia.damping) and the turning of the axes,
// dv/dt + r u and dw/dt - q u. Positive: it damps. Returns lead M + dt D.
LW_INLINE lw_mass_matrix lw_step_matrix_of(const lw_inertia *inertia, const lw_mass_matrix *mass,
                                           double lead, lw_lanes speed, double dt)
{
    lw_mass_matrix stiff;
    const lw_lanes way = dt * speed;
    for (int a = 0; a < 2; a++) {
        for (int b = 0; b < 2; b++) {
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    lw_lanes damp = lw_all(inertia->damping[3 * a + i][3 * b + j]);
                    if (b == 1 && j == 1) damp -= mass->at[a][0][i][2];
                    if (b == 1 && j == 2) damp += mass->at[a][0][i][1];
                    stiff.at[a][b][i][j] = lead * mass->at[a][b][i][j] + way * damp;
                }
            }
        }
    }
    return stiff;
}

// Solves a x = b of order 3 by Cramer's rule.
LW_INLINE void lw_solve_three(lw_lanes a[3][3], lw_lanes b[3])
{
    const lw_vector x = {a[0][0], a[1][0], a[2][0]}, y = {a[0][1], a[1][1], a[2][1]},
                    z = {a[0][2], a[1][2], a[2][2]};
    const lw_vector yz = lw_cross(y, z), zx = lw_cross(z, x), xy = lw_cross(x, y);
    const lw_lanes per = 1.0 / (x.x * yz.x + x.y * yz.y + x.z * yz.z);
    const lw_lanes p = b[0], q = b[1], r = b[2];
    b[0] = per * (p * yz.x + q * yz.y + r * yz.z);
    b[1] = per * (p * zx.x + q * zx.y + r * zx.z);
    b[2] = per * (p * xy.x + q * xy.y + r * xy.z);
}

// Solves A x = b for a mass matrix or a stiff one: their block of force and velocity is diagonal,
// so the velocities go out at once and three equations in the spin are left. x stands in b.
LW_INLINE void lw_mass_matrix_solve(const lw_mass_matrix *A, lw_lanes b[LW_DOF])
{
    lw_lanes per[3], left[3][3], into[3];
    for (int k = 0; k < 3; k++) per[k] = 1.0 / A->at[0][0][k][k];
    for (int i = 0; i < 3; i++) {
        lw_lanes out[3];
        for (int k = 0; k < 3; k++) out[k] = A->at[1][0][i][k] * per[k];
        for (int j = 0; j < 3; j++) {
            left[i][j] = A->at[1][1][i][j];
            for (int k = 0; k < 3; k++) left[i][j] -= out[k] * A->at[0][1][k][j];
        }
        into[i] = b[3 + i];
        for (int k = 0; k < 3; k++) into[i] -= out[k] * b[k];
    }
    lw_solve_three(left, into);
    for (int k = 0; k < 3; k++) {
        for (int j = 0; j < 3; j++) b[k] -= A->at[0][1][k][j] * into[j];
        b[k] *= per[k];
    }
    for (int i = 0; i < 3; i++) b[3 + i] = into[i];
}

#endif
