// closure.c - closure relations of the integral boundary layer.
// SPDX-License-Identifier: MIT
//
// All from [drela-giles-1987], with the later constants of [drela-1989]; without compressibility.

#include "foil/section/closure.h"

#include <math.h>

#include "lullwise/elementary.h"

#define LN_10  2.30258509299404568
#define LN_200 5.29831736654803631

static double square(double x) { return x * x; }

// Good to the last few bits, which is plenty here, at half the time of lw_pow and lw_tanh.
static double power(double x, double exponent) { return lw_exp(exponent * lw_log(x)); }
static double tangent(double x) { return 1.0 - 2.0 / (lw_exp(fmin(2.0 * x, 80.0)) + 1.0); }

// --- laminar: fits to the Falkner-Skan profiles

static double laminar_energy(double H)
{
    const double d = H - 4.35;
    if (H >= 4.35) return 0.015 * d * d / H + 1.528;
    return (0.0111 - 0.0278 * d) * d * d / (H + 1.0) + 1.528 - 0.0002 * square(d * H);
}

static double laminar_friction(double H, double R)
{
    const double d = 5.5 - H;
    if (H < 5.5) return (0.0727 * d * d * d / (H + 1.0) - 0.07) / R;
    return (0.015 * square(1.0 - 1.0 / (H - 4.5)) - 0.07) / R;
}

static double laminar_dissipation(double H, double R)
{
    const double d = H - 4.0;
    if (H < 4.0) return (0.00205 * square(d * d) * -d * sqrt(-d) + 0.207) / R;
    return (0.207 - 0.0016 * d * d / (1.0 + 0.02 * d * d)) / R;
}

// --- turbulent: fits to measured profiles

static double turbulent_energy(double H, double R, double log_R)
{
    const double H_0 = R > 400.0 ? 3.0 + 400.0 / R : 4.0;
    const double R_in = fmax(R, 200.0);
    const double least = 1.5 + 4.0 / R_in;
    if (H < H_0) {
        const double r = (H_0 - H) / (H_0 - 1.0);
        return (0.5 - 4.0 / R_in) * r * r * 1.5 / (H + 0.5) + least;
    }
    const double ln = fmax(log_R, LN_200), d = H - H_0, q = d + 4.0 / ln;
    return d * d * (0.007 * ln / (q * q) + 0.015 / H) + least;
}

static double turbulent_friction(double H, double log_R)
{
    const double lg = fmax(log_R / LN_10, 1.3);
    return 0.3 * lw_exp(fmax(-1.33 * H, -20.0) - (1.74 + 0.31 * H) * lw_log(lg)) +
           0.00011 * (tangent(4.0 - H / 0.875) - 1.0);
}

// Part of the wall's dissipation that is left in a thin, full layer.
static double wall_part(double H, double log_R)
{
    const double least = 1.0 + 2.1 / fmax(log_R, 1.0);
    return 0.5 + 0.5 * tangent((H - 1.0) / (least - 1.0));
}

lw_closure lw_closure_of(lw_layer_kind kind, const lw_layer_place *place, double reynolds)
{
    return lw_closure_at(kind, place, reynolds, lw_log(reynolds * place->speed * place->theta));
}

lw_closure lw_closure_at(lw_layer_kind kind, const lw_layer_place *place, double reynolds,
                         double log_R_theta)
{
    const double H = fmax(place->delta / place->theta, kind == LW_WAKE ? 1.00005 : 1.05);
    const double R = fmax(reynolds * place->speed * place->theta, 1.0);
    const double log_R = fmax(log_R_theta, 0.0);
    lw_closure c = {.H = H, .R = R};
    if (kind == LW_LAMINAR) {
        c.H_star = laminar_energy(H);
        c.c_f = laminar_friction(H, R);
        c.two_c_D = laminar_dissipation(H, R);
        return c;
    }
    const double G_A = 6.7, G_B = 0.75, G_C = kind == LW_WAKE ? 0.0 : 18.0;
    const double most = kind == LW_WAKE ? 0.99995 : 0.95;
    c.H_star = turbulent_energy(H, R, log_R);
    c.U_s = fmin(0.5 * c.H_star * (1.0 - (H - 1.0) / (G_B * H)), most);
    const double core = fmax(H - 1.0 - G_C / R, 0.01);
    c.c_eq = sqrt(0.5 / (G_A * G_A * G_B) * c.H_star * (H - 1.0) * core * core /
                  ((1.0 - c.U_s) * H * H * H));
    c.thick = fmin((3.15 + 1.72 / (H - 1.0)) * place->theta + place->delta, 12.0 * place->theta);

    const double rest = 0.995 - c.U_s, S = place->stress;
    double dissipation = (S * S * rest + 0.15 * rest * rest / R) * 2.0 / c.H_star;
    if (kind == LW_WAKE) {
        c.two_c_D = 2.0 * dissipation;  // two halves
        return c;
    }
    const double turbulent = turbulent_friction(H, log_R);
    c.c_f = fmax(turbulent, laminar_friction(H, R));
    dissipation += turbulent * c.U_s / c.H_star * wall_part(H, log_R);
    c.two_c_D = fmax(dissipation, laminar_dissipation(H, R));
    return c;
}

bool lw_is_apart(const lw_layer_place *place, double reynolds)
{
    const double H = fmax(place->delta / place->theta, 1.05);
    const double R = fmax(reynolds * place->speed * place->theta, 1.0);
    return laminar_friction(H, R) < 0.0 && turbulent_friction(H, lw_log(R)) < 0.0;
}

double lw_wave_growth(double H_in, double theta, double R)
{
    const double H = fmax(H_in, 1.1), q = 1.0 / (H - 1.0);
    // log10 of the R below which no wave grows, with a smooth start of 0.08 either side
    const double onset = 2.492 * power(q, 0.43) + 0.7 * (tangent(14.0 * q - 9.24) + 1.0);
    const double past = (lw_log10(R) - (onset - 0.08)) / 0.16;
    if (past <= 0.0) return 0.0;
    const double ramp = past >= 1.0 ? 1.0 : past * past * (3.0 - 2.0 * past);

    const double bow = 3.87 * q - 2.52;
    const double per_R = 0.028 * (H - 1.0) - 0.0345 * lw_exp(-bow * bow);
    const double R_per_x = -0.05 + q * (2.7 + q * (-5.5 + 3.0 * q)) + 0.1 * lw_exp(-20.0 * q);
    return fmax(per_R * R_per_x * ramp / theta, 0.0);
}

double lw_stress_at_transition(double H) { return 1.8 * lw_exp(-3.3 / fmax(H - 1.0, 0.05)); }
