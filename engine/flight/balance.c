// balance.c - six equations, six unknowns, many balances side by side.
// SPDX-License-Identifier: MIT
//
// A damped Newton method whose inverse Jacobian is kept up by Broyden's update [broyden-1965] and
// differenced anew when progress is poor. Far from a balance the quick motions (heave, sway, roll,
// pitch, yaw) settle first with the speed held, and the speed is let go after; together they would
// slow the boat down to get rid of lift that a little more ride height takes away.
// Every decision is taken lane by lane, so an answer does not depend on its neighbours. Several
// groups of lanes are in the air at once, so that those which want a new Jacobian fill whole lanes.

#include "flight/balance.h"

#include "lullwise/elementary.h"
#include "solve/matrix.h"

#define N            LW_UNKNOWNS
#define GROUPS       8
#define ROUNDS_MOST  48
#define IDLE_MOST    12  // rounds without halving the sum of squares after which none is hoped for
#define SHRINK_LEAST 1e-2
#define SETTLED      0.5  // sum of squares below which a held speed is let go

// Longest step in each unknown, and how far the differencing goes: 1e-6 of it. All of these are
// the best of a few tried on some thousand flights.
static const double reach[2][N] = {
    {5.0, 0.1, 0.25, 0.06, 0.15, 1.0},  // speed, leeway, ride height, pitch, helm, effort
    {3.0, 0.1, 0.25, 0.08, 0.15, 1.0},  // acceleration, ..., rudder incidence, ...
};
static const double low[2][N] = {{0.2, -0.35, -0.6, -0.35, -0.8, -0.5},
                                 {-30.0, -0.35, -0.6, -0.5, -0.8, -0.5}};
static const double high[2][N] = {{22.0, 0.35, 1.6, 0.35, 0.8, 3.0},
                                  {30.0, 0.35, 1.6, 0.5, 0.8, 3.0}};

// Where lanes of searches stand: the pose that is given, and the unknowns that move it.
typedef struct stand {
    lw_pose pose;          // its unknowns are those of the start
    lw_mask level, towed;  // which of each pair of unknowns is sought
    lw_lanes x[N], r[N];
} stand;

// One group of searches, a lane each.
typedef struct search {
    stand at;
    lw_mask held;             // towed for now, to be let go
    lw_mask entering, stale;  // to be looked at first; to be differenced
    lw_mask active;
    lw_matrix inverse;
    lw_lanes merit, shrink, age, rounds;
    lw_lanes mark, idle;  // merit when it was last halved, rounds since
    size_t ask[LW_WIDTH];
} search;

// A lane of a group that wants a new Jacobian.
typedef struct wanting {
    search *group;
    int lane;
} wanting;

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

LW_INLINE void residual_at(const lw_craft *craft, const stand *at, const lw_lanes x[N],
                           lw_lanes r[N])
{
    lw_pose pose = at->pose;
    put_unknowns(&pose, at->level, at->towed, x);
    residual_of(craft, &pose, r);
}

LW_INLINE lw_lanes either(lw_mask second, const double of[2][N], int i)
{
    return lw_select(second, lw_all(of[1][i]), lw_all(of[0][i]));
}

// Which of the two unknowns stands in place i: the second of its pair or the first.
LW_INLINE lw_mask second_of(const stand *at, int i)
{
    const lw_mask none = {0};
    return i == 0 ? at->towed : i == 3 ? at->level : none;
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

// Copies lane `from` of one stand into lane `to` of another.
LW_INLINE void copy_lane(stand *to_stand, int to, const stand *source, int from)
{
    lw_lanes *out = (lw_lanes *)&to_stand->pose;
    const lw_lanes *in = (const lw_lanes *)&source->pose;
    for (size_t k = 0; k < sizeof(lw_pose) / sizeof(lw_lanes); k++) out[k][to] = in[k][from];
    to_stand->level[to] = source->level[from];
    to_stand->towed[to] = source->towed[from];
    for (int i = 0; i < N; i++) {
        to_stand->x[i][to] = source->x[i][from];
        to_stand->r[i][to] = source->r[i][from];
    }
}

// Where unknowns and equations stand in the matrix that is inverted: each unknown on the diagonal
// with the equation that it moves most, speed and surge last, so that rows seldom change places.
static const int unknown_place[N] = {5, 1, 0, 2, 3, 4};
static const int equation_place[N] = {5, 1, 0, 4, 2, 3};

// Jacobian of `count` lanes by differences. The poses to look at, one an unknown and lane, are
// packed into full lanes: pose k moves unknown k / count of lane k % count.
LW_INLINE void jacobian_of(const lw_craft *craft, const stand *here, int count, lw_matrix *jacobian)
{
    lw_lanes d[N], r[N];
    for (int j = 0; j < N; j++) d[j] = 1e-6 * either(second_of(here, j), reach, j);
    stand pack = *here;
    for (int k = 0; k < N * count; k += LW_WIDTH) {
        const int packed = N * count - k < LW_WIDTH ? N * count - k : LW_WIDTH;
        for (int p = 0; p < packed; p++) {
            const int i = (k + p) % count, j = (k + p) / count;
            if (count < LW_WIDTH) copy_lane(&pack, p, here, i);
            for (int n = 0; n < N; n++) pack.x[n][p] = here->x[n][i];
            pack.x[j][p] += d[j][i];
        }
        residual_at(craft, &pack, pack.x, r);
        for (int p = 0; p < packed; p++) {
            const int i = (k + p) % count, j = (k + p) / count;
            const double per = 1.0 / (pack.x[j][p] - here->x[j][i]);
            for (int e = 0; e < N; e++) {
                jacobian->at[equation_place[e]][unknown_place[j]][i] =
                    (r[e][p] - here->r[e][i]) * per;
            }
        }
    }
}

// New inverse Jacobians for up to LW_WIDTH lanes, of whatever groups.
LW_INLINE void difference(const lw_craft *craft, const wanting *lanes, int count)
{
    stand here;
    for (int p = 0; p < LW_WIDTH; p++) {
        const wanting *from = &lanes[p < count ? p : 0];
        copy_lane(&here, p, &from->group->at, from->lane);
    }
    lw_matrix jacobian, fresh;
    for (int i = 0; i < N; i++) {
        for (int j = 0; j < N; j++) jacobian.at[i][j] = lw_all(i == j);
    }
    jacobian_of(craft, &here, count, &jacobian);
    lw_matrix_invert(&jacobian, &fresh);
    for (int p = 0; p < count; p++) {
        search *s = lanes[p].group;
        const int to = lanes[p].lane;
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                s->inverse.at[i][j][to] = fresh.at[unknown_place[i]][equation_place[j]][p];
            }
        }
        s->age[to] = 0.0;
    }
}

LW_INLINE void difference_all(const lw_craft *craft, search groups[GROUPS], int used)
{
    wanting lanes[GROUPS * LW_WIDTH];
    int count = 0;
    for (int g = 0; g < used; g++) {
        search *s = &groups[g];
        for (int i = 0; i < LW_WIDTH; i++) {
            if (s->active[i] & s->stale[i]) lanes[count++] = (wanting){s, i};
        }
    }
    for (int k = 0; k < count; k += LW_WIDTH) {
        difference(craft, lanes + k, count - k < LW_WIDTH ? count - k : LW_WIDTH);
    }
}

// Newton's step, shortened as a whole to the longest step of each unknown; none for lanes that
// enter. Ends at `trial`, inside the bounds.
LW_INLINE void step(const search *s, lw_lanes trial[N], lw_lanes moved[N])
{
    lw_lanes part = lw_all(1.0);
    lw_matrix_times(&s->inverse, s->at.r, moved);
    for (int i = 0; i < N; i++) {
        moved[i] = lw_select(s->entering, lw_all(0.0), moved[i]);  // nothing is known of them yet
        const lw_lanes size = lw_lanes_max(lw_lanes_abs(moved[i]), lw_all(1e-300));
        part = lw_lanes_min(part, either(second_of(&s->at, i), reach, i) / size);
    }
    part *= s->shrink;
    for (int i = 0; i < N; i++) {
        const lw_mask second = second_of(&s->at, i);
        trial[i] = lw_lanes_clamp(s->at.x[i] - part * moved[i], either(second, low, i),
                                  either(second, high, i));
        moved[i] = trial[i] - s->at.x[i];
    }
}

// What a look at `trial` means for each lane: a step that gains is taken; one that does not is
// differenced anew and, if it was new already, shortened.
LW_INLINE void judge(search *s, const lw_lanes trial[N], const lw_lanes moved[N],
                     const lw_lanes looked[N])
{
    lw_lanes change[N];
    for (int i = 0; i < N; i++) change[i] = looked[i] - s->at.r[i];
    const lw_lanes merit = squares(looked);
    const lw_mask enters = s->entering;
    const lw_mask gains = enters | (s->active & (merit < s->merit * (1.0 - 1e-4 * s->shrink)));
    const lw_mask poor = gains & ~enters & (merit > 0.3 * s->merit) & (s->age >= 2.0);
    const lw_mask fails = s->active & ~gains, was_new = s->age == 0.0;

    lw_matrix_broyden(&s->inverse, moved, change, gains & ~enters);
    for (int i = 0; i < N; i++) {
        s->at.x[i] = lw_select(gains, trial[i], s->at.x[i]);
        s->at.r[i] = lw_select(gains, looked[i], s->at.r[i]);
    }
    s->merit = lw_select(gains, merit, s->merit);
    const lw_mask halves = enters | (s->merit < 0.5 * s->mark);
    s->mark = lw_select(halves, s->merit, s->mark);
    s->idle = lw_select(halves, lw_all(0.0), s->idle + 1.0);
    const lw_lanes longer = lw_lanes_min(2.0 * s->shrink, lw_all(1.0));
    s->shrink = lw_select(gains, longer, lw_select(fails & was_new, 0.25 * s->shrink, s->shrink));
    s->stale = enters | poor | (fails & ~was_new);
    s->age = lw_select(fails & was_new, s->age, s->age + 1.0);
    s->entering = (lw_mask){0};
    s->rounds += 1.0;
}

// Lets the speed go where the quick motions have settled; holds it where a lane came in far off.
LW_INLINE void hold_or_let_go(search *s, lw_mask came_in)
{
    const lw_mask far = came_in & ~s->at.towed & (s->merit > 1e-2);
    const lw_lanes V = s->at.pose.speed;
    s->at.pose.speed = lw_select(far, s->at.x[0], V);
    s->at.x[0] = lw_select(far, lw_all(0.0), s->at.x[0]);
    s->held |= far;
    s->at.towed |= far;

    const lw_mask settled = s->held & ~far & (s->merit < SETTLED);
    s->at.x[0] = lw_select(settled, s->at.pose.speed, s->at.x[0]);
    s->held &= ~settled;
    s->at.towed &= ~settled;
    s->entering |= settled;
    s->shrink = lw_select(settled, lw_all(1.0), s->shrink);
}

static void enter(search *s, int i, const lw_ask *ask, size_t which)
{
    lw_pose_put(&s->at.pose, i, ask);
    s->ask[i] = which;
    s->at.level[i] = ask->level ? -1 : 0;
    s->at.towed[i] = ask->towed ? -1 : 0;
    s->held[i] = 0;
    s->entering[i] = s->active[i] = -1;
    s->stale[i] = 0;
    for (int k = 0; k < N; k++) s->at.x[k][i] = ask->start[k];
    if (ask->towed) s->at.x[0][i] = 0.0;
    if (ask->level) s->at.x[3][i] = ask->rudder;
    s->shrink[i] = 1.0;
    s->age[i] = s->rounds[i] = s->merit[i] = s->mark[i] = s->idle[i] = 0.0;
}

static void leave(const search *s, int i, lw_solution *solution)
{
    const lw_lanes size = greatest(s->at.r);
    for (int k = 0; k < N; k++) solution->x[k] = s->at.x[k][i];
    solution->residual = s->held[i] ? 1.0 : size[i];  // no balance with the speed still held
    solution->rounds = s->rounds[i];
}

// Replaces the lanes that are done by asks that wait.
LW_INLINE void exchange(search *s, const lw_ask *asks, lw_solution *solutions, size_t n,
                        size_t *next)
{
    const lw_mask done =
        s->active & ~s->entering & ((greatest(s->at.r) < 0.5 * LW_RESIDUAL) & ~s->held);
    const lw_mask over = s->active & ((s->rounds >= (double)ROUNDS_MOST) |
                                      (s->shrink < SHRINK_LEAST) | (s->idle >= (double)IDLE_MOST));
    if (!lw_any(done | over)) return;
    for (int i = 0; i < LW_WIDTH; i++) {
        if (!(done[i] | over[i])) continue;
        leave(s, i, &solutions[s->ask[i]]);
        s->active[i] = 0;
        if (*next < n) enter(s, i, &asks[*next], *next), (*next)++;
    }
}

// One look further for each lane of a group.
LW_INLINE void look(const lw_craft *craft, search *s)
{
    lw_lanes trial[N], moved[N], looked[N];
    step(s, trial, moved);
    residual_at(craft, &s->at, trial, looked);
    const lw_mask came_in = s->entering & (s->rounds == 0.0);
    judge(s, trial, moved, looked);
    hold_or_let_go(s, came_in);
}

// Lanes with nothing to do stand where the first ask does.
static void begin(search *s, const lw_ask *asks, size_t n, size_t *next)
{
    *s = (search){.shrink = {0}};
    for (int i = 0; i < LW_WIDTH; i++) {
        enter(s, i, &asks[*next < n ? *next : 0], *next);
        if (*next >= n) s->active[i] = s->entering[i] = 0;
        if (*next < n) (*next)++;
    }
}

LW_CLONES
void lw_solve(const lw_craft *craft, const lw_ask *asks, lw_solution *solutions, size_t n)
{
    search groups[GROUPS];
    size_t next = 0;
    int used = 0;
    for (; used < GROUPS && next < n; used++) begin(&groups[used], asks, n, &next);
    for (bool any = used > 0; any;) {
        difference_all(craft, groups, used);
        any = false;
        for (int g = 0; g < used; g++) {
            if (!lw_any(groups[g].active)) continue;
            look(craft, &groups[g]);
            exchange(&groups[g], asks, solutions, n, &next);
            any = true;
        }
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
