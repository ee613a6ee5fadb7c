// balance.c - six equations, six unknowns, LW_WIDTH balances side by side.
// SPDX-License-Identifier: MIT
//
// A damped Newton method whose inverse Jacobian is differenced once and then kept up by Broyden's
// update [broyden-1965]; it is differenced again when progress is poor. Every decision is taken
// lane by lane, so that a lane's path does not depend on its neighbours.

#include "boat/force.h"
#include "flight/balance.h"

#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) && !defined(LW_ONE_TARGET)
#define LW_CLONES __attribute__((target_clones("avx512f", "avx2", "default")))
#else
#define LW_CLONES
#endif

#define N 6

typedef struct matrix {
    lw_lanes at[N][N];
} matrix;

// Longest step in each unknown, and how far the differencing goes: 1e-6 of it.
static const double reach[2][N] = {
    {1.0, 0.06, 0.15, 0.06, 0.15, 0.7},  // speed, leeway, ride height, pitch, helm, effort
    {3.0, 0.06, 0.15, 0.08, 0.15, 0.7},  // acceleration, ..., rudder incidence, ...
};

static const double low[N] = {0.2, -0.35, -0.6, -0.35, -0.8, -1.0};
static const double high[N] = {22.0, 0.35, 1.6, 0.35, 0.8, 3.0};

typedef struct lanes_problem {
    const lw_craft *craft;
    lw_pose pose;
    lw_mask level, towed;
} lanes_problem;

LW_INLINE void unknowns_of(const lanes_problem *p, lw_lanes x[N])
{
    x[0] = lw_select(p->towed, p->pose.acceleration, p->pose.speed);
    x[1] = p->pose.leeway;
    x[2] = p->pose.ride_height;
    x[3] = lw_select(p->level, p->pose.rudder_incidence, p->pose.pitch);
    x[4] = p->pose.helm;
    x[5] = p->pose.effort;
}

LW_INLINE void put_unknowns(lanes_problem *p, const lw_lanes x[N])
{
    p->pose.acceleration = lw_select(p->towed, x[0], p->pose.acceleration);
    p->pose.speed = lw_select(p->towed, p->pose.speed, x[0]);
    p->pose.leeway = x[1];
    p->pose.ride_height = x[2];
    p->pose.rudder_incidence = lw_select(p->level, x[3], p->pose.rudder_incidence);
    p->pose.pitch = lw_select(p->level, p->pose.pitch, x[3]);
    p->pose.helm = x[4];
    p->pose.effort = x[5];
}

static inline void residual_at(const lanes_problem *p, const lw_lanes x[N], lw_lanes r[N])
{
    lanes_problem q = *p;
    put_unknowns(&q, x);
    const lw_loads loads = lw_pose_loads(q.craft, &q.pose);
    for (int i = 0; i < N; i++) r[i] = loads.residual[i];
}

LW_INLINE lw_lanes greatest(const lw_lanes r[N])
{
    lw_lanes most = lw_all(0.0);
    for (int i = 0; i < N; i++) most = lw_lanes_max(most, lw_lanes_abs(r[i]));
    return most;
}

LW_INLINE lw_lanes squares(const lw_lanes r[N])
{
    lw_lanes sum = lw_all(0.0);
    for (int i = 0; i < N; i++) sum += r[i] * r[i];
    return sum;
}

LW_INLINE lw_lanes longest(const lanes_problem *p, int i)
{
    const lw_mask other = i == 0 ? p->towed : p->level;
    return lw_select(other, lw_all(reach[1][i]), lw_all(reach[0][i]));
}

LW_INLINE void swap_where(lw_mask where, lw_lanes *a, lw_lanes *b)
{
    const lw_lanes old = *a;
    *a = lw_select(where, *b, old);
    *b = lw_select(where, old, *b);
}

// Inverse by Gauss-Jordan elimination with row pivots chosen lane by lane.
LW_INLINE void invert(matrix *a, matrix *inverse)
{
    for (int i = 0; i < N; i++) {
        for (int j = 0; j < N; j++) inverse->at[i][j] = lw_all(i == j);
    }
    for (int k = 0; k < N; k++) {
        for (int i = k + 1; i < N; i++) {
            const lw_mask larger = lw_lanes_abs(a->at[i][k]) > lw_lanes_abs(a->at[k][k]);
            for (int j = 0; j < N; j++) {
                if (j >= k) swap_where(larger, &a->at[k][j], &a->at[i][j]);
                swap_where(larger, &inverse->at[k][j], &inverse->at[i][j]);
            }
        }
        const lw_lanes pivot = a->at[k][k];
        const lw_lanes d = 1.0 / lw_select(lw_lanes_abs(pivot) < 1e-12, lw_all(1e-12), pivot);
        for (int j = 0; j < N; j++) {
            if (j > k) a->at[k][j] *= d;
            inverse->at[k][j] *= d;
        }
        for (int i = 0; i < N; i++) {
            if (i == k) continue;
            const lw_lanes f = a->at[i][k];
            for (int j = 0; j < N; j++) {
                if (j > k) a->at[i][j] -= f * a->at[k][j];
                inverse->at[i][j] -= f * inverse->at[k][j];
            }
        }
    }
}

// Inverse Jacobian by differences, taken over by the lanes in `where`.
static inline void difference(const lanes_problem *p, const lw_lanes x[N], const lw_lanes r[N],
                              lw_mask where, matrix *inverse)
{
    matrix jacobian, fresh;
    for (int j = 0; j < N; j++) {
        lw_lanes moved[N], there[N];
        const lw_lanes d = 1e-6 * longest(p, j);
        for (int i = 0; i < N; i++) moved[i] = i == j ? x[i] + d : x[i];
        residual_at(p, moved, there);
        const lw_lanes per = 1.0 / (moved[j] - x[j]);
        for (int i = 0; i < N; i++) jacobian.at[i][j] = (there[i] - r[i]) * per;
    }
    invert(&jacobian, &fresh);
    for (int i = 0; i < N; i++) {
        for (int j = 0; j < N; j++) {
            inverse->at[i][j] = lw_select(where, fresh.at[i][j], inverse->at[i][j]);
        }
    }
}

// Newton's step, shortened as a whole to the longest step of each unknown.
LW_INLINE void newton_step(const lanes_problem *p, const matrix *inverse, const lw_lanes r[N],
                           lw_lanes s[N])
{
    lw_lanes part = lw_all(1.0);
    for (int i = 0; i < N; i++) {
        s[i] = lw_all(0.0);
        for (int j = 0; j < N; j++) s[i] -= inverse->at[i][j] * r[j];
        const lw_lanes room = longest(p, i) / lw_lanes_max(lw_lanes_abs(s[i]), lw_all(1e-300));
        part = lw_lanes_min(part, room);
    }
    for (int i = 0; i < N; i++) s[i] *= part;
}

LW_INLINE lw_lanes bounded(const lanes_problem *p, int i, lw_lanes x)
{
    lw_lanes least = lw_all(low[i]), most = lw_all(high[i]);
    if (i == 0) least = lw_select(p->towed, lw_all(-30.0), least);
    if (i == 0) most = lw_select(p->towed, lw_all(30.0), most);
    if (i == 3) least = lw_select(p->level, lw_all(-0.5), least);
    if (i == 3) most = lw_select(p->level, lw_all(0.5), most);
    return lw_lanes_clamp(x, least, most);
}

// Broyden's update: inverse += (s - H y) (s H) / (s H y).
LW_INLINE void broyden(matrix *inverse, const lw_lanes s[N], const lw_lanes y[N], lw_mask where)
{
    lw_lanes Hy[N], sH[N], sHy = lw_all(0.0);
    for (int i = 0; i < N; i++) {
        Hy[i] = sH[i] = lw_all(0.0);
        for (int j = 0; j < N; j++) {
            Hy[i] += inverse->at[i][j] * y[j];
            sH[i] += s[j] * inverse->at[j][i];
        }
        sHy += s[i] * Hy[i];
    }
    const lw_mask sound = where & (lw_lanes_abs(sHy) > 1e-30);
    const lw_lanes per = lw_select(sound, 1.0 / lw_select(sound, sHy, lw_all(1.0)), lw_all(0.0));
    for (int i = 0; i < N; i++) {
        const lw_lanes u = (s[i] - Hy[i]) * per;
        for (int j = 0; j < N; j++) inverse->at[i][j] += u * sH[j];
    }
}

// Lets the speed go in the lanes of `where`, which were towed: the acceleration they had becomes
// their surge residual, and the inverse follows by one column (Sherman and Morrison).
LW_INLINE void let_go(lanes_problem *p, lw_lanes x[N], lw_lanes r[N], lw_mask where,
                      matrix *inverse)
{
    lw_lanes zero_way[N], faster[N], column[N], H[N], before[N];
    const lw_lanes a = x[0], V = p->pose.speed;
    const double d = 1e-5;
    for (int i = 0; i < N; i++) before[i] = x[i];
    p->towed &= ~where;
    p->pose.acceleration = lw_select(where, lw_all(0.0), p->pose.acceleration);
    x[0] = lw_select(where, V, x[0]);
    residual_at(p, x, zero_way);
    for (int i = 0; i < N; i++) faster[i] = i == 0 ? x[0] + d : x[i];
    residual_at(p, faster, column);

    // the column for speed less that for acceleration
    const lw_lanes per_a = 1.0 / lw_select(lw_lanes_abs(a) < 1e-6, lw_all(1e-6), a);
    const lw_mask moved = where & (lw_lanes_abs(a) >= 1e-6);
    for (int i = 0; i < N; i++) {
        const lw_lanes by_a = lw_select(moved, (r[i] - zero_way[i]) * per_a, lw_all(i ? 0.0 : -0.1));
        column[i] = (column[i] - zero_way[i]) / d - by_a;
    }
    lw_lanes under = lw_all(1.0);
    for (int i = 0; i < N; i++) {
        H[i] = lw_all(0.0);
        for (int j = 0; j < N; j++) H[i] += inverse->at[i][j] * column[j];
    }
    under += H[0];
    const lw_mask sound = where & (lw_lanes_abs(under) > 1e-9);
    const lw_lanes per = lw_select(sound, 1.0 / lw_select(sound, under, lw_all(1.0)), lw_all(0.0));
    for (int j = 0; j < N; j++) {
        const lw_lanes row = inverse->at[0][j] * per;
        for (int i = 0; i < N; i++) inverse->at[i][j] -= H[i] * row;
    }
    for (int i = 0; i < N; i++) {
        x[i] = lw_select(where, x[i], before[i]);
        r[i] = lw_select(where, zero_way[i], r[i]);
    }
}

// Solves in place; converged lanes stand still while the others go on.
LW_CLONES
void lw_balance_lanes(const lw_craft *craft, lw_balance_state *state)
{
    lanes_problem p = {craft, state->pose, state->level, state->towed};
    lw_lanes x[N], r[N];
    unknowns_of(&p, x);
    residual_at(&p, x, r);

    // far from a balance, the quick motions settle first, at the speed of the start
    lw_mask held = ~state->towed & (squares(r) > 1e-2);
    p.towed |= held;
    unknowns_of(&p, x);

    matrix inverse;
    for (int i = 0; i < N; i++) {
        for (int j = 0; j < N; j++) inverse.at[i][j] = lw_all(0.0);
    }
    lw_lanes size = greatest(r), merit = squares(r), shrink = lw_all(1.0), rounds = lw_all(0.0), age = lw_all(0.0);
    lw_mask stale = ~(lw_mask){0};
    lw_mask active = size > 0.5 * LW_RESIDUAL;

    for (int round = 0; round < 60 && lw_any(active); round++) {
        if (lw_any(active & stale)) {
            difference(&p, x, r, active & stale, &inverse);
            age = lw_select(active & stale, lw_all(0.0), age);
        }
        lw_lanes s[N], trial[N], r_trial[N], y[N];
        newton_step(&p, &inverse, r, s);
        for (int i = 0; i < N; i++) {
            trial[i] = bounded(&p, i, x[i] + shrink * s[i]);
            s[i] = trial[i] - x[i];
        }
        residual_at(&p, trial, r_trial);
        for (int i = 0; i < N; i++) y[i] = r_trial[i] - r[i];

        // a step that gains is taken; one that does not is halved, with fresh derivatives
        const lw_lanes merit_trial = squares(r_trial);
        const lw_mask gains = active & (merit_trial < merit * (1.0 - 1e-4 * shrink));
        const lw_mask good = gains & (merit_trial < 0.1 * merit);
        const lw_mask fails = active & ~gains;
        broyden(&inverse, s, y, gains);
        for (int i = 0; i < N; i++) {
            x[i] = lw_select(gains, trial[i], x[i]);
            r[i] = lw_select(gains, r_trial[i], r[i]);
        }
        // a stale failing lane is differenced first, and only then shortens its step
        const lw_mask was_fresh = age == 0.0;
        shrink = lw_select(gains, lw_lanes_min(2.0 * shrink, lw_all(1.0)),
                           lw_select(fails & was_fresh, 0.4 * shrink, shrink));
        stale = (fails & ~was_fresh) | (gains & ~good & (age >= 2.0));
        age += 1.0;
        age = lw_select(fails & was_fresh, lw_all(0.0), age);
        merit = lw_select(gains, merit_trial, merit);
        size = greatest(r);
        const lw_mask ready = held & (merit < 1e-4);
        if (lw_any(ready)) {
            let_go(&p, x, r, ready, &inverse);
            held &= ~ready;
            merit = squares(r), size = greatest(r);
            shrink = lw_select(ready, lw_all(1.0), shrink);
        }
        rounds += lw_select(active, lw_all(1.0), lw_all(0.0));
        active &= (size > 0.5 * LW_RESIDUAL) & (shrink > 1e-4);
    }
    put_unknowns(&p, x);
    state->pose = p.pose;
    state->residual = size;
    state->rounds = rounds;
    state->loads = lw_pose_loads(craft, &p.pose);
}
