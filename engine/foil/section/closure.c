// closure.c - closure relations of the integral boundary layer.
// SPDX-License-Identifier: MIT
//
// All from [drela-giles-1987], with the later constants of [drela-1989]; without compressibility.

#include "foil/section/closure.h"

#include <math.h>

#include "lullwise/elementary.h"
#include "solve/four.h"

#define LN_10  2.30258509299404568
#define LN_200 5.29831736654803631

LW_INLINE double square(double x) { return x * x; }

// The greater and the lesser of two numbers that are numbers.
LW_INLINE double more(double a, double b) { return a > b ? a : b; }
LW_INLINE double less(double a, double b) { return a < b ? a : b; }

// --- laminar: fits to the Falkner-Skan profiles

LW_INLINE double laminar_energy(double H)
{
    const double d = H - 4.35;
    if (H >= 4.35) return 0.015 * d * d / H + 1.528;
    return (0.0111 - 0.0278 * d) * d * d / (H + 1.0) + 1.528 - 0.0002 * square(d * H);
}

LW_INLINE double laminar_friction(double H, double R)
{
    const double d = 5.5 - H;
    if (H < 5.5) return (0.0727 * d * d * d / (H + 1.0) - 0.07) / R;
    return (0.015 * square(1.0 - 1.0 / (H - 4.5)) - 0.07) / R;
}

LW_INLINE double laminar_dissipation(double H, double R)
{
    const double d = H - 4.0;
    if (H < 4.0) return (0.00205 * square(d * d) * -d * sqrt(-d) + 0.207) / R;
    return (0.207 - 0.0016 * d * d / (1.0 + 0.02 * d * d)) / R;
}

// --- turbulent: fits to measured profiles

LW_INLINE double turbulent_energy(double H, double R, double log_R)
{
    const double H_0 = R > 400.0 ? 3.0 + 400.0 / R : 4.0;
    const double R_in = more(R, 200.0);
    const double least = 1.5 + 4.0 / R_in;
    if (H < H_0) {
        const double r = (H_0 - H) / (H_0 - 1.0);
        return (0.5 - 4.0 / R_in) * r * r * 1.5 / (H + 0.5) + least;
    }
    const double ln = more(log_R, LN_200), d = H - H_0, q = d + 4.0 / ln;
    return d * d * (0.007 * ln / (q * q) + 0.015 / H) + least;
}

// What the closures of a turbulent layer take the exponential of.
LW_INLINE double friction_exponent(double H, double log_lg)
{
    return more(more(-1.33 * H, -20.0) - (1.74 + 0.31 * H) * log_lg, -600.0);
}

// Part of the wall's dissipation that is left in a thin, full layer: 1 / (1 + exp -).
LW_INLINE double wall_exponent(double H, double log_R)
{
    const double least = 1.0 + 2.1 / more(log_R, 1.0);
    return less(2.0 * (H - 1.0) / (least - 1.0), 80.0);
}

// c_f = 0.3 exp(...) + 0.00011 (tanh(4 - H / 0.875) - 1)
LW_INLINE double turbulent_friction(double first, double twice)
{
    return 0.3 * first - 0.00022 / (twice + 1.0);
}

lw_station lw_station_of(const lw_layer_place *place)
{
    const double stress = more(place->stress, 1e-300);
    const lw_four logs = lw_four_log((lw_four){place->theta, place->speed, stress, stress});
    return (lw_station){*place, logs[0], logs[1], logs[2]};
}

LW_INLINE double shape_of(lw_layer_kind kind, const lw_layer_place *place)
{
    return more(place->delta / place->theta, kind == LW_WAKE ? 1.00005 : 1.05);
}

// 5 (change of ln(H - 1) / H)^2, with its sign turned
LW_INLINE double late_exponent(const lw_closure *c, const lw_closure *before)
{
    const double change = before ? (c->log_H_less_1 - before->log_H_less_1) / c->H : 0.0;
    return more(-5.0 * square(change), -15.0);
}

LW_INLINE void close_laminar(lw_closure *c, const lw_closure *before)
{
    const lw_four logs = lw_four_log((lw_four){c->H - 1.0, c->H_star, c->H, c->H});
    c->log_H_less_1 = logs[0];
    c->log_H_star = logs[1];
    c->late = 1.0 - 0.5 * lw_four_exp((lw_four){late_exponent(c, before)})[0];
    c->c_f = laminar_friction(c->H, c->R);
    c->two_c_D = laminar_dissipation(c->H, c->R);
}

LW_INLINE void close_core(lw_closure *c, const lw_layer_place *place, lw_layer_kind kind)
{
    const double G_A = 6.7, G_B = 0.75, G_C = kind == LW_WAKE ? 0.0 : 18.0;
    const double H = c->H, most = kind == LW_WAKE ? 0.99995 : 0.95;
    c->U_s = less(0.5 * c->H_star * (1.0 - (H - 1.0) / (G_B * H)), most);
    const double core = more(H - 1.0 - G_C / c->R, 0.01);
    c->c_eq = sqrt(0.5 / (G_A * G_A * G_B) * c->H_star * (H - 1.0) * core * core /
                   ((1.0 - c->U_s) * H * H * H));
    c->thick = less((3.15 + 1.72 / (H - 1.0)) * place->theta + place->delta, 12.0 * place->theta);
}

LW_INLINE void close_turbulent(lw_closure *c, const lw_layer_place *place, lw_layer_kind kind,
                               double log_R, const lw_closure *before)
{
    const double H = c->H, lg = more(log_R / LN_10, 1.3);
    const lw_four logs = lw_four_log((lw_four){H - 1.0, c->H_star, lg, lg});
    c->log_H_less_1 = logs[0];
    c->log_H_star = logs[1];
    const double thin = 8.0 - 2.0 * H / 0.875;  // at most 6
    const lw_four exps = lw_four_exp((lw_four){friction_exponent(H, logs[2]), more(thin, -80.0),
                                               wall_exponent(H, log_R), late_exponent(c, before)});
    c->late = 1.0 - 0.5 * exps[3];
    close_core(c, place, kind);

    const double rest = 0.995 - c->U_s, S = place->stress;
    double dissipation = (S * S * rest + 0.15 * rest * rest / c->R) * 2.0 / c->H_star;
    if (kind == LW_WAKE) {
        c->two_c_D = 2.0 * dissipation;  // two halves
        return;
    }
    const double turbulent = turbulent_friction(exps[0], exps[1]);
    c->c_f = more(turbulent, laminar_friction(H, c->R));
    dissipation += turbulent * c->U_s / c->H_star * (1.0 - 1.0 / (exps[2] + 1.0));
    c->two_c_D = more(dissipation, laminar_dissipation(H, c->R));
}

LW_CLONES lw_closure lw_closure_of(const lw_layer_flow *flow, const lw_station *station,
                                   const lw_closure *before)
{
    const lw_layer_place *place = &station->at;
    const double log_R = more(flow->log_reynolds + station->log_speed + station->log_theta, 0.0);
    lw_closure c = {.H = shape_of(flow->kind, place),
                    .R = more(flow->reynolds * place->speed * place->theta, 1.0)};
    if (flow->kind == LW_LAMINAR) {
        c.H_star = laminar_energy(c.H);
        close_laminar(&c, before);
    } else {
        c.H_star = turbulent_energy(c.H, c.R, log_R);
        close_turbulent(&c, place, flow->kind, log_R, before);
    }
    return c;
}

static double power(double x, double exponent) { return lw_exp(exponent * lw_log(x)); }

double lw_wave_growth(double H_in, double theta, double R)
{
    const double H = fmax(H_in, 1.1), q = 1.0 / (H - 1.0);
    // log10 of the R below which no wave grows, with a smooth start of 0.08 either side
    const double onset = 2.492 * power(q, 0.43) + 0.7 * (lw_tanh(14.0 * q - 9.24) + 1.0);
    const double past = (lw_log10(R) - (onset - 0.08)) / 0.16;
    if (past <= 0.0) return 0.0;
    const double ramp = past >= 1.0 ? 1.0 : past * past * (3.0 - 2.0 * past);

    const double bow = 3.87 * q - 2.52;
    const double per_R = 0.028 * (H - 1.0) - 0.0345 * lw_exp(-bow * bow);
    const double R_per_x = -0.05 + q * (2.7 + q * (-5.5 + 3.0 * q)) + 0.1 * lw_exp(-20.0 * q);
    return fmax(per_R * R_per_x * ramp / theta, 0.0);
}

double lw_stress_at_transition(double H) { return 1.8 * lw_exp(-3.3 / fmax(H - 1.0, 0.05)); }
