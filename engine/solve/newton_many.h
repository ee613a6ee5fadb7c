// newton_many.h - systems of six equations solved side by side, a lane each.
// SPDX-License-Identifier: MIT
//
// A damped Newton method whose inverse Jacobian is kept up by Broyden's update [broyden-1965] and
// differenced anew when progress is poor. Every decision is taken lane by lane, so a solution does
// not depend on its neighbours. Several groups of lanes are in the air at once, so that those which
// want a new Jacobian fill whole lanes; a lane that is done takes the next system.
//
// Everything is compiled into the caller, its problem too, for the machine that it is compiled for.

#ifndef LW_NEWTON_MANY_H
#define LW_NEWTON_MANY_H

#include <stdbool.h>
#include <stddef.h>

#include "solve/matrix.h"

#define LW_UNKNOWNS LW_ORDER
#define LW_GIVEN    20  // numbers that tell one system from another, at most

#define LW_NEWTON_GROUPS 8
#define LW_NEWTON_APART  1e-6  // of the step bound: how far the differencing goes

// Where systems stand, a lane each.
typedef struct lw_iterate {
    lw_lanes given[LW_GIVEN];
    lw_lanes x[LW_UNKNOWNS], residual[LW_UNKNOWNS];
    lw_lanes bound[LW_UNKNOWNS];                   // longest step
    lw_lanes low[LW_UNKNOWNS], high[LW_UNKNOWNS];  // x keeps within
} lw_iterate;

// One group of systems under way.
typedef struct lw_newton {
    lw_iterate at;
    lw_mask active, entering, stale;  // under way; not yet evaluated; to be differenced
    lw_mask eased;                    // an easier system stands for theirs for now: no root yet
    lw_matrix inverse;
    lw_lanes merit, damping, age, iterations;  // merit: sum of squares; age: of the Jacobian
    lw_lanes halved, idle;                     // merit when it was last halved, iterations since
    size_t which[LW_WIDTH];
    const struct lw_newton *guide;  // the inverse Jacobian in its first lane is what all begin with
} lw_newton;

// What is to be solved. A constant, so that the functions are inlined; they should be LW_INLINE.
typedef struct lw_newton_problem {
    size_t given;      // numbers given of each system
    double tolerance;  // greatest residual of a root
    // A search gives up after so many iterations; after so many that have not halved the sum of
    // squares; and when a step is damped below the least.
    double most_iterations, most_idle, least_damping;
    // Row and column in which equations and unknowns are inverted: each unknown on the diagonal
    // with an equation that it moves much, so that rows seldom change places.
    const int *unknown_place, *equation_place;
    // Puts system `which` into a lane, all but its residual.
    void (*enter)(const void *of, size_t which, int lane, lw_iterate *at);
    void (*evaluate)(const void *of, const lw_iterate *at, const lw_lanes x[LW_UNKNOWNS],
                     lw_lanes residual[LW_UNKNOWNS]);
    // Changes systems into easier ones and back, if that is wanted: marks them `eased`, and
    // `entering` to have them evaluated anew. NULL: none are. came_in: first evaluated just now.
    void (*ease)(lw_newton *s, const lw_mask *came_in);
} lw_newton_problem;

// Where one system ended.
typedef struct lw_solution {
    double x[LW_UNKNOWNS];
    double residual;  // greatest that is left; 1 where only an easier system was solved
    double iterations;
} lw_solution;

// A lane of a group that wants a new Jacobian.
typedef struct lw_newton_lane {
    lw_newton *group;
    int lane;
} lw_newton_lane;

LW_INLINE lw_lanes lw_sum_of_squares(const lw_lanes r[LW_UNKNOWNS])
{
    lw_lanes sum = lw_all(0.0);
    for (int i = 0; i < LW_UNKNOWNS; i++) sum += r[i] * r[i];
    return sum;
}

LW_INLINE lw_lanes lw_greatest_size(const lw_lanes r[LW_UNKNOWNS])
{
    lw_lanes most = lw_all(0.0);
    for (int i = 0; i < LW_UNKNOWNS; i++) most = lw_lanes_max(most, lw_lanes_abs(r[i]));
    return most;
}

LW_INLINE void lw_given_copy(const lw_newton_problem *problem, lw_iterate *to, int lane,
                             const lw_iterate *from, int from_lane)
{
    for (size_t k = 0; k < problem->given; k++)
        LW_LANE(to->given[k], lane) = LW_LANE(from->given[k], from_lane);
}

// --- the Jacobian

// Jacobian of `count` lanes by differences. What is to be evaluated, one an unknown and lane, is
// packed into full lanes: number k moves unknown k / count of lane k % count.
LW_INLINE void lw_newton_jacobian(const lw_newton_problem *problem, const void *of,
                                  const lw_iterate *here, int count, lw_matrix *jacobian)
{
    lw_lanes d[LW_UNKNOWNS], r[LW_UNKNOWNS];
    for (int j = 0; j < LW_UNKNOWNS; j++) d[j] = LW_NEWTON_APART * here->bound[j];
    lw_iterate pack = *here;
    for (int k = 0; k < LW_UNKNOWNS * count; k += LW_WIDTH) {
        const int rest = LW_UNKNOWNS * count - k, packed = rest < LW_WIDTH ? rest : LW_WIDTH;
        for (int p = 0; p < packed; p++) {
            const int i = (k + p) % count, j = (k + p) / count;
            if (count < LW_WIDTH) lw_given_copy(problem, &pack, p, here, i);
            for (int n = 0; n < LW_UNKNOWNS; n++) LW_LANE(pack.x[n], p) = LW_LANE(here->x[n], i);
            LW_LANE(pack.x[j], p) += LW_LANE(d[j], i);
        }
        problem->evaluate(of, &pack, pack.x, r);
        for (int p = 0; p < packed; p++) {
            const int i = (k + p) % count, j = (k + p) / count;
            const double per = 1.0 / (LW_LANE(pack.x[j], p) - LW_LANE(here->x[j], i));
            for (int e = 0; e < LW_UNKNOWNS; e++) {
                lw_lanes *to = &jacobian->at[problem->equation_place[e]][problem->unknown_place[j]];
                LW_LANE(*to, i) = (LW_LANE(r[e], p) - LW_LANE(here->residual[e], i)) * per;
            }
        }
    }
}

// What differencing needs of some lanes, of whatever groups; the first again where they are few.
LW_INLINE void lw_newton_gather(const lw_newton_problem *problem, const lw_newton_lane *lanes,
                                int count, lw_iterate *here)
{
    LW_EACH_LANE (p) {
        const lw_newton_lane *from = &lanes[p < count ? p : 0];
        const lw_iterate *at = &from->group->at;
        lw_given_copy(problem, here, p, at, from->lane);
        for (int i = 0; i < LW_UNKNOWNS; i++) {
            LW_LANE(here->x[i], p) = LW_LANE(at->x[i], from->lane);
            LW_LANE(here->residual[i], p) = LW_LANE(at->residual[i], from->lane);
            LW_LANE(here->bound[i], p) = LW_LANE(at->bound[i], from->lane);
        }
    }
}

// New inverse Jacobians for up to LW_WIDTH lanes.
LW_INLINE void lw_newton_difference(const lw_newton_problem *problem, const void *of,
                                    const lw_newton_lane *lanes, int count)
{
    lw_iterate here;
    lw_matrix jacobian, fresh;
    lw_newton_gather(problem, lanes, count, &here);
    for (int i = 0; i < LW_UNKNOWNS; i++) {
        for (int j = 0; j < LW_UNKNOWNS; j++) jacobian.at[i][j] = lw_all(i == j);
    }
    lw_newton_jacobian(problem, of, &here, count, &jacobian);
    lw_matrix_invert(&jacobian, &fresh);
    for (int p = 0; p < count; p++) {
        lw_newton *s = lanes[p].group;
        const int to = lanes[p].lane;
        for (int i = 0; i < LW_UNKNOWNS; i++) {
            for (int j = 0; j < LW_UNKNOWNS; j++) {
                const lw_lanes *from =
                    &fresh.at[problem->unknown_place[i]][problem->equation_place[j]];
                LW_LANE(s->inverse.at[i][j], to) = LW_LANE(*from, p);
            }
        }
        LW_LANE(s->age, to) = 0.0;
    }
}

LW_INLINE void lw_newton_difference_all(const lw_newton_problem *problem, const void *of,
                                        lw_newton groups[LW_NEWTON_GROUPS], int used)
{
    lw_newton_lane lanes[LW_NEWTON_GROUPS * LW_WIDTH];
    int count = 0;
    for (int g = 0; g < used; g++) {
        lw_newton *s = &groups[g];
        LW_EACH_LANE (i) {
            if (LW_MASK_LANE(s->active, i) & LW_MASK_LANE(s->stale, i))
                lanes[count++] = (lw_newton_lane){s, i};
        }
    }
    for (int k = 0; k < count; k += LW_WIDTH) {
        lw_newton_difference(problem, of, lanes + k, count - k < LW_WIDTH ? count - k : LW_WIDTH);
    }
}

// --- one iteration

// Newton's step, shortened as a whole to the bound of each unknown; none for lanes that enter. Ends
// at `trial`, within low and high.
LW_INLINE void lw_newton_step(const lw_newton *s, lw_lanes trial[LW_UNKNOWNS],
                              lw_lanes moved[LW_UNKNOWNS])
{
    lw_lanes part = lw_all(1.0);
    lw_matrix_times(&s->inverse, s->at.residual, moved);
    for (int i = 0; i < LW_UNKNOWNS; i++) {
        moved[i] = lw_select(s->entering, lw_all(0.0), moved[i]);  // nothing is known of them yet
        const lw_lanes size = lw_lanes_max(lw_lanes_abs(moved[i]), lw_all(1e-300));
        part = lw_lanes_min(part, s->at.bound[i] / size);
    }
    part *= s->damping;
    for (int i = 0; i < LW_UNKNOWNS; i++) {
        trial[i] = lw_lanes_clamp(s->at.x[i] - part * moved[i], s->at.low[i], s->at.high[i]);
        moved[i] = trial[i] - s->at.x[i];
    }
}

// Accepts a step that gains; one that does not is differenced anew and, if the Jacobian was new
// already, damped.
LW_INLINE void lw_newton_accept(lw_newton *s, const lw_lanes trial[LW_UNKNOWNS],
                                const lw_lanes moved[LW_UNKNOWNS],
                                const lw_lanes residual[LW_UNKNOWNS])
{
    lw_lanes change[LW_UNKNOWNS];
    for (int i = 0; i < LW_UNKNOWNS; i++) change[i] = residual[i] - s->at.residual[i];
    const lw_lanes merit = lw_sum_of_squares(residual);
    const lw_mask enters = s->entering;
    const lw_mask accepted = enters | (s->active & (merit < s->merit * (1.0 - 1e-4 * s->damping)));
    const lw_mask poor = accepted & ~enters & (merit > 0.3 * s->merit) & (s->age >= 2.0);
    const lw_mask rejected = s->active & ~accepted, was_new = s->age == 0.0;

    lw_matrix_broyden(&s->inverse, moved, change, accepted & ~enters);
    for (int i = 0; i < LW_UNKNOWNS; i++) {
        s->at.x[i] = lw_select(accepted, trial[i], s->at.x[i]);
        s->at.residual[i] = lw_select(accepted, residual[i], s->at.residual[i]);
    }
    s->merit = lw_select(accepted, merit, s->merit);
    const lw_mask halves = enters | (s->merit < 0.5 * s->halved);
    s->halved = lw_select(halves, s->merit, s->halved);
    s->idle = lw_select(halves, lw_all(0.0), s->idle + 1.0);
    const lw_lanes longer = lw_lanes_min(2.0 * s->damping, lw_all(1.0));
    s->damping =
        lw_select(accepted, longer, lw_select(rejected & was_new, 0.25 * s->damping, s->damping));
    const lw_mask has_none = s->guide ? enters & (s->iterations > 0.0) : enters;
    s->stale = has_none | poor | (rejected & ~was_new);
    s->age = lw_select(rejected & was_new, s->age, s->age + 1.0);
    s->entering = (lw_mask){0};
    s->iterations += 1.0;
}

LW_INLINE void lw_newton_iterate(const lw_newton_problem *problem, const void *of, lw_newton *s)
{
    lw_lanes trial[LW_UNKNOWNS], moved[LW_UNKNOWNS], residual[LW_UNKNOWNS];
    lw_newton_step(s, trial, moved);
    problem->evaluate(of, &s->at, trial, residual);
    const lw_mask came_in = s->entering & (s->iterations == 0.0);
    lw_newton_accept(s, trial, moved, residual);
    if (problem->ease) problem->ease(s, &came_in);
}

// --- systems come and go

// Systems that wait, and where solutions go.
typedef struct lw_newton_queue {
    lw_solution *solutions;
    size_t count, next;
    const lw_newton *guide;  // of those that come in; NULL: each has its own Jacobian
} lw_newton_queue;

#define LW_NEWTON_GUIDED 2.0  // age of a Jacobian that is another's: poor progress makes it anew

LW_INLINE void lw_newton_enter(const lw_newton_problem *problem, const void *of, size_t which,
                               int lane, lw_newton *s)
{
    const lw_newton *guide = s->guide;
    problem->enter(of, which, lane, &s->at);
    s->which[lane] = which;
    LW_MASK_LANE(s->entering, lane) = LW_MASK_LANE(s->active, lane) = -1;
    LW_MASK_LANE(s->stale, lane) = LW_MASK_LANE(s->eased, lane) = 0;
    LW_LANE(s->damping, lane) = 1.0;
    LW_LANE(s->iterations, lane) = 0.0;
    LW_LANE(s->age, lane) = guide ? LW_NEWTON_GUIDED : 0.0;
    for (int i = 0; guide && i < LW_UNKNOWNS; i++) {
        for (int j = 0; j < LW_UNKNOWNS; j++)
            LW_LANE(s->inverse.at[i][j], lane) = guide->inverse.at[i][j][0];
    }
    LW_LANE(s->merit, lane) = LW_LANE(s->halved, lane) = LW_LANE(s->idle, lane) = 0.0;
}

LW_INLINE void lw_newton_leave(const lw_newton *s, int lane, lw_solution *solution)
{
    const lw_lanes size = lw_greatest_size(s->at.residual);
    for (int k = 0; k < LW_UNKNOWNS; k++) solution->x[k] = LW_LANE(s->at.x[k], lane);
    solution->residual = LW_MASK_LANE(s->eased, lane) ? 1.0 : size[lane];
    solution->iterations = LW_LANE(s->iterations, lane);
}

// Replaces the lanes that are done by systems that wait.
LW_INLINE void lw_newton_exchange(const lw_newton_problem *problem, const void *of, lw_newton *s,
                                  lw_newton_queue *queue)
{
    const lw_mask is_root = lw_greatest_size(s->at.residual) < problem->tolerance;
    const lw_mask done = s->active & ~s->entering & (is_root & ~s->eased);
    const lw_mask over =
        s->active & ((s->iterations >= problem->most_iterations) | (s->idle >= problem->most_idle) |
                     (s->damping < problem->least_damping));
    if (!lw_any(done | over)) return;
    LW_EACH_LANE (i) {
        if (!(done[i] | over[i])) continue;
        lw_newton_leave(s, i, &queue->solutions[s->which[i]]);
        LW_MASK_LANE(s->active, i) = 0;
        if (queue->next < queue->count) lw_newton_enter(problem, of, queue->next++, i, s);
    }
}

// Lanes with nothing to do stand where the first system does.
LW_INLINE void lw_newton_begin(const lw_newton_problem *problem, const void *of, lw_newton *s,
                               lw_newton_queue *queue)
{
    *s = (lw_newton){.guide = queue->guide};
    LW_EACH_LANE (i) {
        const bool waits = queue->next < queue->count;
        lw_newton_enter(problem, of, waits ? queue->next++ : 0, i, s);
        if (!waits) LW_MASK_LANE(s->active, i) = LW_MASK_LANE(s->entering, i) = 0;
    }
}

// The first system, evaluated and differenced where it begins; false where it has no value there.
LW_INLINE bool lw_newton_guide(const lw_newton_problem *problem, const void *of, lw_newton *guide)
{
    lw_newton_queue first = {.count = 1};
    lw_newton_begin(problem, of, guide, &first);
    problem->evaluate(of, &guide->at, guide->at.x, guide->at.residual);
    if (!(lw_sum_of_squares(guide->at.residual)[0] < 1e300)) return false;  // NaN too
    const lw_newton_lane lane = {guide, 0};
    lw_newton_difference(problem, of, &lane, 1);
    return true;
}

// Solves n systems. Akin: they begin close to one another, and all take the inverse Jacobian where
// the first of them begins for theirs to begin with, so that each depends on the first.
LW_INLINE void lw_newton_many(const lw_newton_problem *problem, const void *of, bool are_akin,
                              lw_solution *solutions, size_t n)
{
    lw_newton groups[LW_NEWTON_GROUPS], guide;
    lw_newton_queue queue = {.solutions = solutions, .count = n};
    int used = 0;
    if (are_akin && n > 1 && lw_newton_guide(problem, of, &guide)) queue.guide = &guide;
    for (; used < LW_NEWTON_GROUPS && queue.next < n; used++) {
        lw_newton_begin(problem, of, &groups[used], &queue);
    }
    for (bool any = used > 0; any;) {
        lw_newton_difference_all(problem, of, groups, used);
        any = false;
        for (int g = 0; g < used; g++) {
            if (!lw_any(groups[g].active)) continue;
            lw_newton_iterate(problem, of, &groups[g]);
            lw_newton_exchange(problem, of, &groups[g], &queue);
            any = true;
        }
    }
}

#endif
