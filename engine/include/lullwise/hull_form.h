// hull_form.h - a mathematical hull, its hydrostatics and its wave resistance.
// SPDX-License-Identifier: MIT

#ifndef LW_HULL_FORM_H
#define LW_HULL_FORM_H

// Wigley's hull: y = B/2 (1 - (2x/L)^2) (1 - (z/T)^2), z down from the waterline.  [wigley-1934]
typedef struct lw_hull_form {
    double length;  // L [m]
    double beam;    // B [m]
    double draft;   // T [m]
} lw_hull_form;

typedef struct lw_hydrostatics {
    double volume;             // [m^3]  4/9 L B T
    double waterplane;         // [m^2]  2/3 L B
    double wetted;             // [m^2]  by quadrature
    double centre_height;      // KB [m] above the keel: 5/8 T
    double metacentre_across;  // BM [m] 9/105 B^2 / T
    double metacentre_along;   // BM [m] 3/40 L^2 / T
} lw_hydrostatics;

lw_hydrostatics lw_hull_form_hydrostatics(lw_hull_form form);

// Wave resistance by thin-ship theory, as a drag area: R_w / (1/2 rho V^2) [m^2].
//
//     R_w = 4 rho g^2 / (pi V^2) int J^2 c^2 du,  u from 0                [michell-1898]
//     J = int int y_x e^(-n c^2 z) sin(n c x) dx dz,   n = g / V^2,  c = cosh u
//
// The inner integrals are in closed form, the outer by the trapezoid rule (exact to all orders at
// u = 0, where the integrand is even), fine enough for the waves along the hull.
// Holds for    slender hulls, B / L up to 0.15, at Fn 0.15..1.5; the least speed taken is Fn 0.1.
// Leaves out   sinkage and trim, viscosity, the transom: humps and hollows come out too strong
//              below Fn 0.4, and the level within 25 % of a tank's.
double lw_hull_form_wave_area(lw_hull_form form, double speed);

// Drag coefficient, on its base, of a wedge that parts the water with a cavity behind it.
//
//     C_D = 4 gamma / pi / (1 + 0.65 gamma),   gamma: half its angle [rad]
//
// 4 gamma / pi of thin wedges [tulin-1953]; 0.65 fitted to the whole theory [kirchhoff-1869].
// Holds for    half angles to 30 deg, within 2 %; no gravity.
double lw_hull_form_wedge_drag(double half_angle);

#endif
