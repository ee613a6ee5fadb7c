// closure.c - closure relations of the integral boundary layer.
// SPDX-License-Identifier: MIT
//
// From [drela-giles-1987] with the later constants of [drela-1989], those of layers in equilibrium
// from [van-rooij-1996]; without compressibility.

#include "foil/section/closure.h"

#include <math.h>

#define LN_10  2.30258509299404568
#define LN_200 5.29831736654803631

typedef struct seen {
    double theta;
    lw_dual H, log_R, per_R, per_theta;  // R of theta
} seen;

LW_INLINE seen seen_at(double log_reynolds, const lw_layer_place *p, double least_shape)
{
    const double free_R = log_reynolds + p->log_speed + p->log_theta;
    const double log_R = fmax(free_R, 0.0), on = free_R > 0.0 ? 1.0 : 0.0;
    const lw_four exps = lw_four_exp((lw_four){p->log_theta, -log_R, 0.0, 0.0});
    const lw_four by_log_R = {on, 0.0, on, 0.0};
    return (seen){.theta = exps[0],
                  .H = {fmax(p->shape, least_shape), {0.0, 1.0, 0.0, 0.0}},
                  .log_R = {log_R, by_log_R},
                  .per_R = {exps[1], -exps[1] * by_log_R},
                  .per_theta = {1.0 / exps[0], {-1.0 / exps[0], 0.0, 0.0, 0.0}}};
}

LW_INLINE double square(double x) { return x * x; }

// --- laminar: fits to the Falkner-Skan profiles

LW_INLINE lw_dual laminar_energy(lw_dual shape)
{
    const double H = shape.at, d = H - 4.35;
    if (H >= 4.35)
        return lw_dual_of(0.015 * d * d / H + 1.528, 0.015 * d / H * (2.0 - d / H), shape);
    const double per = 1.0 / (H + 1.0), bow = 0.0111 - 0.0278 * d;
    const double value = bow * d * d * per + 1.528 - 0.0002 * square(d * H);
    const double slope =
        (2.0 * bow * d - 0.0278 * d * d) * per - bow * square(d * per) - 0.0004 * d * H * (d + H);
    return lw_dual_of(value, slope, shape);
}

// c_f R
LW_INLINE lw_dual laminar_friction(lw_dual shape)
{
    const double H = shape.at, d = 5.5 - H, per = 1.0 / (H + 1.0);
    if (H < 5.5)
        return lw_dual_of(0.0727 * d * d * d * per - 0.07, -0.0727 * d * d * per * (3.0 + d * per),
                          shape);
    const double out = 1.0 / (H - 4.5), q = 1.0 - out;
    return lw_dual_of(0.015 * q * q - 0.07, 0.03 * q * out * out, shape);
}

// 2 c_D R / H*
LW_INLINE lw_dual laminar_dissipation(lw_dual shape)
{
    const double d = shape.at - 4.0;
    if (d < 0.0) {
        const double power = square(d * d) * sqrt(-d);
        return lw_dual_of(0.00205 * power * -d + 0.207, -5.5 * 0.00205 * power, shape);
    }
    const double per = 1.0 / (1.0 + 0.02 * d * d);
    return lw_dual_of(0.207 - 0.0016 * d * d * per, -0.0032 * d * per * per, shape);
}

// Growth of the fastest wave's logarithm where the layer is on; none before R of its onset, which
// is smooth over 0.08 of log10 R either side.
LW_INLINE lw_dual attached_growth(const seen *s)
{
    const lw_dual H = s->H, less = lw_dual_line(1.0, H, -1.0);
    const double at = 1.0 / less.at;
    const lw_dual q = lw_dual_of(at, -at * at, H);
    const double log_q = lw_four_log((lw_four){at, at, at, at})[0];
    const double bow = 3.87 * at - 2.52;
    const lw_four e = lw_four_exp((lw_four){0.43 * log_q, fmax(18.48 - 28.0 * at, -600.0),
                                            fmax(-bow * bow, -600.0), fmax(-20.0 * at, -600.0)});
    const double step = 1.0 / (1.0 + e[1]);
    const lw_dual onset = lw_dual_of(2.492 * e[0] + 1.4 * step,
                                     2.492 * 0.43 * e[0] / at + 39.2 * e[1] * step * step, q);
    const lw_dual past = lw_dual_line(
        1.0 / 0.16, lw_dual_less(lw_dual_line(1.0 / LN_10, s->log_R, 0.08), onset), 0.0);
    if (past.at <= 0.0) return lw_dual_constant(0.0);
    const lw_dual per_R = lw_dual_less(lw_dual_line(0.028, less, 0.0),
                                       lw_dual_of(0.0345 * e[2], -0.0345 * 7.74 * bow * e[2], q));
    const lw_dual R_per_x = lw_dual_of(-0.05 + at * (2.7 + at * (-5.5 + 3.0 * at)) + 0.1 * e[3],
                                       2.7 + at * (-11.0 + 9.0 * at) - 2.0 * e[3], q);
    lw_dual growth = lw_dual_times(lw_dual_times(per_R, R_per_x), s->per_theta);
    if (past.at < 1.0) {
        const double x = past.at;
        growth =
            lw_dual_times(growth, lw_dual_of(x * x * (3.0 - 2.0 * x), 6.0 * x * (1.0 - x), past));
    }
    return lw_dual_at_least(growth, 0.0);
}

// Where the layer has come apart it grows as a mixing layer does, 0.114 / theta at most
// [michalke-1965], and as much less as the shape is short of that [judged]: the fits above end with
// the layers that hold on.
LW_INLINE lw_dual wave_growth(const seen *s)
{
    const lw_dual attached = attached_growth(s);
    if (s->H.at < 4.0) return attached;
    const double per = 1.0 / (s->H.at - 1.0), short_of = square(3.0 * per);
    const lw_dual apart = lw_dual_of(0.114 * (1.0 - short_of), 0.228 * short_of * per, s->H);
    return lw_dual_more(attached, lw_dual_times(apart, s->per_theta));
}

// --- turbulent: fits to measured profiles

LW_INLINE lw_dual turbulent_energy(const seen *s)
{
    const lw_dual H = s->H, per_R = lw_dual_at_most(s->per_R, 1.0 / 200.0);
    const lw_dual H_0 = lw_dual_line(400.0, lw_dual_at_most(s->per_R, 1.0 / 400.0), 3.0);
    const lw_dual least = lw_dual_line(4.0, per_R, 1.5);
    if (H.at < H_0.at) {
        const lw_dual r = lw_dual_over(lw_dual_less(H_0, H), lw_dual_line(1.0, H_0, -1.0));
        const lw_dual bow = lw_dual_over(lw_dual_square(r), lw_dual_line(1.0, H, 0.5));
        return lw_dual_plus(lw_dual_times(lw_dual_line(-6.0, per_R, 0.75), bow), least);
    }
    const lw_dual ln = lw_dual_at_least(s->log_R, LN_200), d = lw_dual_less(H, H_0);
    const lw_dual q = lw_dual_plus(d, lw_dual_over(lw_dual_constant(4.0), ln));
    const lw_dual rise = lw_dual_plus(lw_dual_over(lw_dual_line(0.007, ln, 0.0), lw_dual_square(q)),
                                      lw_dual_over(lw_dual_constant(0.015), H));
    return lw_dual_plus(lw_dual_times(lw_dual_square(d), rise), least);
}

// What is worked out four exponentials at a time.
typedef struct wall {
    lw_dual friction;  // 0.3 exp(-1.33 H) (lg R)^(-1.74 - 0.31 H) + 0.00011 (tanh(4 - H/0.875) - 1)
    lw_dual left;      // of the wall's dissipation in a thin, full layer
} wall;

LW_INLINE wall wall_of(const seen *s)
{
    const lw_dual H = s->H, lg = lw_dual_at_least(lw_dual_line(1.0 / LN_10, s->log_R, 0.0), 1.3);
    const double log_lg = lw_four_log((lw_four){lg.at, lg.at, lg.at, lg.at})[0];
    const lw_dual power =
        lw_dual_times(lw_dual_line(0.31, H, 1.74), lw_dual_of(log_lg, 1.0 / lg.at, lg));
    const lw_dual first = lw_dual_at_least(
        lw_dual_less(lw_dual_at_least(lw_dual_line(-1.33, H, 0.0), -20.0), power), -600.0);
    const lw_dual twice = lw_dual_at_least(lw_dual_line(-2.0 / 0.875, H, 8.0), -80.0);
    const lw_dual fullness =
        lw_dual_at_most(lw_dual_times(lw_dual_line(2.0 / 2.1, lw_dual_line(1.0, H, -1.0), 0.0),
                                      lw_dual_at_least(s->log_R, 1.0)),
                        80.0);
    const lw_four e = lw_four_exp((lw_four){first.at, twice.at, fullness.at, 0.0});
    const double out = 1.0 / (e[1] + 1.0), empty = 1.0 / (e[2] + 1.0);
    return (wall){
        .friction = lw_dual_plus(lw_dual_of(0.3 * e[0], 0.3 * e[0], first),
                                 lw_dual_of(-0.00022 * out, 0.00022 * e[1] * out * out, twice)),
        .left = lw_dual_of(1.0 - empty, e[2] * empty * empty, fullness)};
}

// Of layers in equilibrium: (H - 1) / H = G_A sqrt(1 + G_B beta) sqrt(c_f / 2) [van-rooij-1996];
// 6.7 and 0.75 in [drela-1989], which stall later than sections in tunnels do.
#define G_A 6.75
#define G_B 0.83

// Slip speed, stress in equilibrium, and how the core of the layer is filled.
typedef struct core {
    lw_dual U_s, c_eq, g;  // g: what the gradient d ln U / dx owes to the core in equilibrium
} core;

LW_INLINE core core_of(const seen *s, lw_dual H_star, lw_layer_kind kind)
{
    const double G_C = kind == LW_WAKE ? 0.0 : 18.0;
    const double most = kind == LW_WAKE ? 0.99995 : 0.95, lag = kind == LW_WAKE ? 0.9 : 1.0;
    const lw_dual H = s->H, less = lw_dual_line(1.0, H, -1.0), part = lw_dual_over(less, H);
    const lw_dual U_s = lw_dual_at_most(
        lw_dual_times(lw_dual_line(0.5, H_star, 0.0), lw_dual_line(-1.0 / G_B, part, 1.0)), most);
    const lw_dual thin =
        lw_dual_at_least(lw_dual_less(less, lw_dual_line(G_C, s->per_R, 0.0)), 0.01);
    const lw_dual q = lw_dual_over(thin, H), q_2 = lw_dual_square(q);
    const lw_dual c = lw_dual_over(
        lw_dual_times(lw_dual_line(0.5 / (G_A * G_A * G_B), H_star, 0.0), lw_dual_times(part, q_2)),
        lw_dual_line(-1.0, U_s, 1.0));
    return (core){U_s, lw_dual_root(c), lw_dual_line(1.0 / square(G_A * lag), q_2, 0.0)};
}

// 2 d ln S / dx = 5.6 * 4/3 / (1 + U_s) (c_eq - lag S) / thick + 2 (g_eq - d ln U / dx)
LW_INLINE lw_dual lag_of(const seen *s, const core *c, lw_dual friction, lw_dual S,
                         lw_layer_kind kind)
{
    const double lag = kind == LW_WAKE ? 0.9 : 1.0;
    const double at = 1.0 / (s->H.at - 1.0);
    const lw_dual over_theta = lw_dual_at_most(
        lw_dual_plus(lw_dual_of(3.15 + 1.72 * at, -1.72 * at * at, s->H), s->H), 12.0);
    const lw_dual pull = lw_dual_over(lw_dual_less(c->c_eq, lw_dual_line(lag, S, 0.0)),
                                      lw_dual_times(lw_dual_line(1.0, c->U_s, 1.0), over_theta));
    const lw_dual g = lw_dual_over(lw_dual_less(lw_dual_line(0.5, friction, 0.0), c->g), s->H);
    return lw_dual_times(
        lw_dual_plus(lw_dual_line(5.6 * 1.333, pull, 0.0), lw_dual_line(2.0 / G_B, g, 0.0)),
        s->per_theta);
}

LW_INLINE lw_dual logarithm(lw_dual x)
{
    return lw_dual_of(lw_four_log((lw_four){x.at, x.at, x.at, x.at})[0], 1.0 / x.at, x);
}

LW_INLINE lw_closure laminar_closure(const seen *s)
{
    const lw_dual per = lw_dual_times(s->per_R, s->per_theta);
    return (lw_closure){.shape = s->H.at,
                        .log_H_star = logarithm(laminar_energy(s->H)),
                        .friction = lw_dual_times(laminar_friction(s->H), per),
                        .dissipation = lw_dual_times(laminar_dissipation(s->H), per),
                        .growth = wave_growth(s)};
}

LW_INLINE lw_closure turbulent_closure(const seen *s, double log_stress, lw_layer_kind kind)
{
    const lw_dual H_star = turbulent_energy(s);
    const core c = core_of(s, H_star, kind);
    const double stress = lw_four_exp((lw_four){log_stress, 0.0, 0.0, 0.0})[0];
    const lw_dual S = {stress, {0.0, 0.0, 0.0, stress}};
    const lw_dual rest = lw_dual_line(-1.0, c.U_s, 0.995);
    const lw_dual slow = lw_dual_times(lw_dual_square(rest), lw_dual_line(0.15, s->per_R, 0.0));
    lw_dual lost = lw_dual_plus(lw_dual_times(lw_dual_square(S), rest), slow);
    lw_dual friction = lw_dual_constant(0.0), D;
    if (kind == LW_WAKE) {
        D = lw_dual_over(lw_dual_line(4.0, lost, 0.0), H_star);  // two halves
    } else {
        const wall w = wall_of(s);
        friction = lw_dual_more(w.friction, lw_dual_times(laminar_friction(s->H), s->per_R));
        lost = lw_dual_plus(lw_dual_line(2.0, lost, 0.0),
                            lw_dual_times(lw_dual_times(w.friction, c.U_s), w.left));
        D = lw_dual_more(lw_dual_over(lost, H_star),
                         lw_dual_times(laminar_dissipation(s->H), s->per_R));
    }
    return (lw_closure){.shape = s->H.at,
                        .log_H_star = logarithm(H_star),
                        .friction = lw_dual_times(friction, s->per_theta),
                        .dissipation = lw_dual_times(D, s->per_theta),
                        .lag = lag_of(s, &c, friction, S, kind)};
}

LW_CLONES void lw_closure_of(lw_layer_kind kind, double log_reynolds, const lw_layer_place *place,
                             lw_closure *of)
{
    const seen s = seen_at(log_reynolds, place, kind == LW_WAKE ? 1.00005 : 1.05);
    *of = kind == LW_LAMINAR ? laminar_closure(&s) : turbulent_closure(&s, place->third, kind);
}

// 1.8 exp(-3.3 / (H - 1)) times the stress in equilibrium
LW_CLONES void lw_closure_start(double log_reynolds, const lw_layer_place *place,
                                lw_dual *log_stress)
{
    const seen s = seen_at(log_reynolds, place, 1.05);
    const core c = core_of(&s, turbulent_energy(&s), LW_TURBULENT);
    const double less = fmax(s.H.at - 1.0, 0.05);
    const lw_dual part = lw_dual_of(0.58778666490211906 - 3.3 / less, 3.3 / (less * less), s.H);
    *log_stress = lw_dual_plus(part, logarithm(c.c_eq));
}
