// balance.c - six equations, six unknowns, LW_WIDTH balances side by side.
// SPDX-License-Identifier: MIT
//
// A damped Newton method whose inverse Jacobian is kept up by Broyden's update [broyden-1965] and
// differenced anew when progress is poor. Far from a balance the quick motions (heave, sway, roll,
// pitch, yaw) settle first with the speed held, and the speed is let go after; together they would
// slow the boat down to get rid of lift that a little more ride height takes away.
// Every decision is taken lane by lane, so an answer does not depend on its neighbours.

#include "flight/balance.h"

#include "solve/matrix.h"
#include "lullwise/elementary.h"

#define N           LW_UNKNOWNS
#define ROUNDS_MOST 48
#define SHRINK_LEAST 2e-3
#define SETTLED     1e-4  // sum of squares below which a held speed is let go

// Longest step in each unknown, and how far the differencing goes: 1e-6 of it.
static const double reach[2][N] = {
    {1.0, 0.06, 0.15, 0.06, 0.15, 0.7},  // speed, leeway, ride height, pitch, helm, effort
    {3.0, 0.06, 0.15, 0.08, 0.15, 0.7},  // acceleration, ..., rudder incidence, ...
};
static const double low[2][N] = {{0.2, -0.35, -0.6, -0.35, -0.8, -1.0},
                                 {-30.0, -0.35, -0.6, -0.5, -0.8, -1.0}};
static const double high[2][N] = {{22.0, 0.35, 1.6, 0.35, 0.8, 3.0},
                                  {30.0, 0.35, 1.6, 0.5, 0.8, 3.0}};

typedef struct search {
    const lw_craft *craft;
    lw_pose pose;             // what is given, lane by lane; its unknowns are those of the start
    lw_mask level, towed;     // which of each pair of unknowns is sought
    lw_mask held;             // towed for now, to be let go
    lw_mask entering, stale;  // to be looked at first; to be differenced
    lw_mask active;
    lw_lanes x[N], r[N];
    lw_matrix inverse;
    lw_lanes merit, shrink, age, rounds;
    size_t ask[LW_WIDTH];
} search;

LW_INLINE void put_unknowns(lw_pose *pose, lw_mask level, lw_mask towed, const lw_lanes x[N])
{
    pose->acceleration = lw_select(towed, x[0], lw_all(0.0));
    pose->speed = lw_select(towed, pose->speed, x[0]);
    pose->leeway = x[1];
    pose->ride_height = x[2];
    pose->rudder_incidence = lw_select(level, x[3], pose->rudder_incidence);
    pose->pitch = lw_select(level, pose->pitch, x[3]);
    pose->helm = x[4];
    pose->effort = x[5];
}

LW_INLINE void residual_of(const lw_craft *craft, const lw_pose *pose, lw_lanes r[N])
{
    const lw_loads loads = lw_pose_loads(craft, pose);
    for (int i = 0; i < N; i++) r[i] = loads.residual[i];
}

LW_INLINE void residual_at(const search *s, const lw_lanes x[N], lw_lanes r[N])
{
    lw_pose pose = s->pose;
    put_unknowns(&pose, s->level, s->towed, x);
    residual_of(s->craft, &pose, r);
}

LW_INLINE lw_lanes either(lw_mask second, const double of[2][N], int i)
{
    return lw_select(second, lw_all(of[1][i]), lw_all(of[0][i]));
}

// Which of the two unknowns stands in place i: the second of its pair or the first.
LW_INLINE lw_mask second_of(const search *s, int i)
{
    const lw_mask none = {0};
    return i == 0 ? s->towed : i == 3 ? s->level : none;
}

LW_INLINE lw_lanes squares(const lw_lanes r[N])
{
    lw_lanes sum = lw_all(0.0);
    for (int i = 0; i < N; i++) sum += r[i] * r[i];
    return sum;
}

LW_INLINE lw_lanes greatest(const lw_lanes r[N])
{
    lw_lanes most = lw_all(0.0);
    for (int i = 0; i < N; i++) most = lw_lanes_max(most, lw_lanes_abs(r[i]));
    return most;
}

// Copies lane `from` of a pose into lane `to` of another.
LW_INLINE void copy_lane(lw_pose *pose, int to, const lw_pose *source, int from)
{
    lw_lanes *out = (lw_lanes *)pose;
    const lw_lanes *in = (const lw_lanes *)source;
    for (size_t k = 0; k < sizeof(lw_pose) / sizeof(lw_lanes); k++) out[k][to] = in[k][from];
}

// Jacobians of the lanes in `where` by differences: the poses to look at, one for each lane and
// unknown, are packed into full lanes.
LW_INLINE void difference(search *s, lw_mask where)
{
    lw_matrix jacobian, fresh;
    for (int i = 0; i < N; i++) {
        for (int j = 0; j < N; j++) jacobian.at[i][j] = lw_all(i == j);
    }
    lw_pose here = s->pose, pack = s->pose;
    put_unknowns(&here, s->level, s->towed, s->x);
    int lane[LW_WIDTH], unknown[LW_WIDTH], packed = 0;
    lw_lanes r[N], d[N];
    for (int j = 0; j < N; j++) d[j] = 1e-6 * either(second_of(s, j), reach, j);
    for (int k = 0; k < LW_WIDTH * N; k++) {
        const int i = k / N, j = k % N;
        const int is_last = k == LW_WIDTH * N - 1;
        if (where[i]) {
            lw_pose moved = here;
            lw_lanes x[N];
            for (int n = 0; n < N; n++) x[n] = n == j ? s->x[n] + d[n] : s->x[n];
            put_unknowns(&moved, s->level, s->towed, x);
            copy_lane(&pack, packed, &moved, i);
            lane[packed] = i, unknown[packed] = j, packed++;
        }
        if (packed < LW_WIDTH && !(is_last && packed)) continue;
        residual_of(s->craft, &pack, r);
        for (int p = 0; p < packed; p++) {
            const int to = lane[p], n = unknown[p];
            const double moved_by = (s->x[n][to] + d[n][to]) - s->x[n][to];
            for (int e = 0; e < N; e++) {
                jacobian.at[e][n][to] = (r[e][p] - s->r[e][to]) / moved_by;
            }
        }
        packed = 0;
    }
    lw_matrix_invert(&jacobian, &fresh);
    lw_matrix_take(&s->inverse, &fresh, where);
    s->age = lw_select(where, lw_all(0.0), s->age);
}

// Newton's step, shortened as a whole to the longest step of each unknown; none for lanes that
// enter. Ends at `trial`, inside the bounds.
LW_INLINE void step(const search *s, lw_lanes trial[N], lw_lanes moved[N])
{
    lw_lanes part = lw_all(1.0);
    lw_matrix_times(&s->inverse, s->r, moved);
    for (int i = 0; i < N; i++) {
        const lw_lanes size = lw_lanes_max(lw_lanes_abs(moved[i]), lw_all(1e-300));
        part = lw_lanes_min(part, either(second_of(s, i), reach, i) / size);
    }
    part = lw_select(s->entering, lw_all(0.0), part * s->shrink);
    for (int i = 0; i < N; i++) {
        const lw_mask second = second_of(s, i);
        trial[i] = lw_lanes_clamp(s->x[i] - part * moved[i], either(second, low, i),
                                  either(second, high, i));
        moved[i] = trial[i] - s->x[i];
    }
}

// What a look at `trial` means for each lane: a step that gains is taken; one that does not is
// differenced anew and, if it was new already, shortened.
LW_INLINE void judge(search *s, const lw_lanes trial[N], const lw_lanes moved[N],
                     const lw_lanes looked[N])
{
    lw_lanes change[N];
    for (int i = 0; i < N; i++) change[i] = looked[i] - s->r[i];
    const lw_lanes merit = squares(looked);
    const lw_mask enters = s->entering;
    const lw_mask gains = enters | (s->active & (merit < s->merit * (1.0 - 1e-4 * s->shrink)));
    const lw_mask poor = gains & ~enters & (merit > 0.1 * s->merit) & (s->age >= 2.0);
    const lw_mask fails = s->active & ~gains, was_new = s->age == 0.0;

    lw_matrix_broyden(&s->inverse, moved, change, gains & ~enters);
    for (int i = 0; i < N; i++) {
        s->x[i] = lw_select(gains, trial[i], s->x[i]);
        s->r[i] = lw_select(gains, looked[i], s->r[i]);
    }
    s->merit = lw_select(gains, merit, s->merit);
    const lw_lanes longer = lw_lanes_min(2.0 * s->shrink, lw_all(1.0));
    s->shrink = lw_select(gains, longer, lw_select(fails & was_new, 0.4 * s->shrink, s->shrink));
    s->stale = enters | poor | (fails & ~was_new);
    s->age = lw_select(fails & was_new, s->age, s->age + 1.0);
    s->entering = (lw_mask){0};
    s->rounds += 1.0;
}

// Lets the speed go where the quick motions have settled, and holds it where a lane came in far off.
LW_INLINE void hold_or_let_go(search *s, lw_mask came_in)
{
    const lw_mask far = came_in & ~s->towed & (s->merit > 1e-2);
    const lw_lanes V = s->pose.speed;
    s->pose.speed = lw_select(far, s->x[0], V);
    s->x[0] = lw_select(far, lw_all(0.0), s->x[0]);
    s->held |= far;
    s->towed |= far;

    const lw_mask settled = s->held & ~far & (s->merit < SETTLED);
    s->x[0] = lw_select(settled, s->pose.speed, s->x[0]);
    s->held &= ~settled;
    s->towed &= ~settled;
    s->entering |= settled;
    s->shrink = lw_select(settled, lw_all(1.0), s->shrink);
}

static void enter(search *s, int i, const lw_ask *ask, size_t which)
{
    lw_pose_put(&s->pose, i, ask);
    s->ask[i] = which;
    s->level[i] = ask->level ? -1 : 0;
    s->towed[i] = ask->towed ? -1 : 0;
    s->held[i] = 0;
    s->entering[i] = s->active[i] = -1;
    s->stale[i] = 0;
    for (int k = 0; k < N; k++) s->x[k][i] = ask->start[k];
    if (ask->towed) s->x[0][i] = 0.0;
    if (ask->level) s->x[3][i] = ask->rudder;
    s->shrink[i] = 1.0;
    s->age[i] = s->rounds[i] = s->merit[i] = 0.0;
}

static void leave(const search *s, int i, lw_solution *solution)
{
    const lw_lanes size = greatest(s->r);
    for (int k = 0; k < N; k++) solution->x[k] = s->x[k][i];
    solution->residual = s->held[i] ? 1.0 : size[i];  // no balance with the speed still held
    solution->rounds = s->rounds[i];
}

// Replaces the lanes that are done by asks that wait.
LW_INLINE void exchange(search *s, const lw_ask *asks, lw_solution *solutions, size_t n, size_t *next)
{
    const lw_mask done = s->active & ~s->entering &
                         ((greatest(s->r) < 0.5 * LW_RESIDUAL) & ~s->held);
    const lw_mask over = s->active & ((s->rounds >= (double)ROUNDS_MOST) | (s->shrink < SHRINK_LEAST));
    for (int i = 0; i < LW_WIDTH; i++) {
        if (!(done[i] | over[i])) continue;
        leave(s, i, &solutions[s->ask[i]]);
        s->active[i] = 0;
        if (*next < n) enter(s, i, &asks[*next], *next), (*next)++;
    }
}

LW_CLONES
void lw_solve(const lw_craft *craft, const lw_ask *asks, lw_solution *solutions, size_t n)
{
    search s = {.craft = craft};
    size_t next = 0;
    for (int i = 0; i < LW_WIDTH && n > 0; i++) {
        enter(&s, i, &asks[next < n ? next : n - 1], next);
        if (next < n) {
            next++;
        } else {
            s.active[i] = s.entering[i] = 0;
        }
    }
    while (lw_any(s.active)) {
        if (lw_any(s.active & s.stale)) difference(&s, s.active & s.stale);
        lw_lanes trial[N], moved[N], looked[N];
        step(&s, trial, moved);
        residual_at(&s, trial, looked);
        const lw_mask came_in = s.entering & (s.rounds == 0.0);
        judge(&s, trial, moved, looked);
        hold_or_let_go(&s, came_in);
        exchange(&s, asks, solutions, n, &next);
    }
}

LW_CLONES
void lw_pose_residual(const lw_craft *craft, const lw_pose *pose, lw_lanes residual[N])
{
    residual_of(craft, pose, residual);
}

LW_CLONES
void lw_pose_all_loads(const lw_craft *craft, const lw_pose *pose, lw_loads *loads)
{
    *loads = lw_pose_loads(craft, pose);
}
