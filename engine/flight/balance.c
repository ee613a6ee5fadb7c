// balance.c - six equations, six unknowns, many balances side by side.
// SPDX-License-Identifier: MIT
//
// Newton's method of solve/newton_many.h. Far from a balance the quick motions (heave, sway, roll,
// pitch, yaw) settle first with the speed held, and the speed is let go after; together they would
// slow the boat down to get rid of lift that a little more ride height takes away.

#include "flight/balance.h"

#define N       LW_UNKNOWNS
#define FAR     1e-2  // sum of squares above which the speed is held at first
#define SETTLED 0.5   // and below which it is let go

// Step bound of each unknown, and what it keeps within: of the first of its pair, of the second.
// These, and the solver's limits below, are the best of a few tried on some thousand flights.
static const double bound[2][N] = {
    {5.0, 0.1, 0.25, 0.06, 0.15, 1.0},  // speed, leeway, ride height, pitch, helm, effort
    {3.0, 0.1, 0.25, 0.08, 0.15, 1.0},  // acceleration, ..., rudder incidence, ...
};
static const double low[2][N] = {{0.2, -0.35, -0.6, -0.35, -0.8, -0.5},
                                 {-30.0, -0.35, -0.6, -0.5, -0.8, -0.5}};
static const double high[2][N] = {{22.0, 0.35, 1.6, 0.35, 0.8, 3.0},
                                  {30.0, 0.35, 1.6, 0.5, 0.8, 3.0}};

// What a balance is given: a pose whose unknowns are those of the start; and, as 1, which of each
// pair is given, so that the second is sought.
typedef struct given {
    lw_pose pose;
    lw_lanes speed, pitch;
} given;
#define GIVEN (sizeof(given) / sizeof(lw_lanes))
_Static_assert(GIVEN <= LW_GIVEN, "the solver has room for all that a balance is given");

// What balances are solved of.
typedef struct balances {
    const lw_craft *craft;
    const lw_ask *asks;
} balances;

LW_INLINE void put_unknowns(const given *of, const lw_lanes x[N], lw_pose *pose)
{
    const lw_mask is_towed = of->speed > 0.5, has_pitch = of->pitch > 0.5;
    *pose = of->pose;
    pose->acceleration = lw_select(is_towed, x[0], lw_all(0.0));
    pose->speed = lw_select(is_towed, pose->speed, x[0]);
    pose->leeway = x[1];
    pose->ride_height = x[2];
    pose->rudder_incidence = lw_select(has_pitch, x[3], pose->rudder_incidence);
    pose->pitch = lw_select(has_pitch, pose->pitch, x[3]);
    pose->helm = x[4];
    pose->effort = x[5];
}

LW_INLINE void residual_of(const lw_craft *craft, const lw_pose *pose, lw_lanes r[N])
{
    const lw_loads loads = lw_pose_loads(craft, pose);
    for (int i = 0; i < N; i++) r[i] = loads.residual[i];
}

LW_PART void evaluate(const void *of, const lw_iterate *at, const lw_lanes x[N], lw_lanes r[N])
{
    lw_pose pose;
    put_unknowns((const given *)at->given, x, &pose);
    residual_of(((const balances *)of)->craft, &pose, r);
}

LW_INLINE void put_bounds(lw_iterate *at, int lane, const lw_ask *ask)
{
    for (int k = 0; k < N; k++) {
        const int second = k == 0 ? ask->gives_speed : k == 3 ? ask->gives_pitch : 0;
        LW_LANE(at->bound[k], lane) = bound[second][k];
        LW_LANE(at->low[k], lane) = low[second][k];
        LW_LANE(at->high[k], lane) = high[second][k];
    }
}

LW_INLINE void enter(const void *of, size_t which, int lane, lw_iterate *at)
{
    const lw_ask *ask = &((const balances *)of)->asks[which];
    given *to = (given *)at->given;
    lw_pose_put(&to->pose, lane, ask);
    LW_LANE(to->speed, lane) = ask->gives_speed;
    LW_LANE(to->pitch, lane) = ask->gives_pitch;
    LW_LANE(at->x[0], lane) = ask->gives_speed ? 0.0 : ask->start.speed;
    LW_LANE(at->x[1], lane) = ask->start.leeway;
    LW_LANE(at->x[2], lane) = ask->start.ride_height;
    LW_LANE(at->x[3], lane) = ask->gives_pitch ? ask->start.rudder : ask->start.pitch;
    LW_LANE(at->x[4], lane) = ask->start.helm;
    LW_LANE(at->x[5], lane) = ask->start.effort;
    put_bounds(at, lane, ask);
}

// In some lanes gives the speed and seeks the acceleration; or seeks the speed again.
LW_INLINE void give_speed(lw_iterate *at, lw_mask where, bool gives, lw_lanes start)
{
    given *of = (given *)at->given;
    of->speed = lw_select(where, lw_all(gives), of->speed);
    at->x[0] = lw_select(where, start, at->x[0]);
    at->bound[0] = lw_select(where, lw_all(bound[gives][0]), at->bound[0]);
    at->low[0] = lw_select(where, lw_all(low[gives][0]), at->low[0]);
    at->high[0] = lw_select(where, lw_all(high[gives][0]), at->high[0]);
}

// Lets the speed go where the quick motions have settled; holds it where a lane came in far off.
LW_INLINE void hold_or_let_go(lw_newton *s, const lw_mask *came_in)
{
    given *of = (given *)s->at.given;
    const lw_mask far = *came_in & ~(of->speed > 0.5) & (s->merit > FAR);
    of->pose.speed = lw_select(far, s->at.x[0], of->pose.speed);
    give_speed(&s->at, far, true, lw_all(0.0));
    s->eased |= far;
    s->stale |= far;  // whose Jacobian it came with was not of this system

    const lw_mask settled = s->eased & ~far & (s->merit < SETTLED);
    give_speed(&s->at, settled, false, of->pose.speed);
    s->eased &= ~settled;
    s->entering |= settled;
    s->damping = lw_select(settled, lw_all(1.0), s->damping);
}

// Speed and surge last.
static const int unknown_place[N] = {5, 1, 0, 2, 3, 4};
static const int equation_place[N] = {5, 1, 0, 4, 2, 3};

static const lw_newton_problem balance = {.given = GIVEN,
                                          .tolerance = 0.5 * LW_RESIDUAL,
                                          .most_iterations = 48.0,
                                          .most_idle = 12.0,
                                          .least_damping = 1e-2,
                                          .unknown_place = unknown_place,
                                          .equation_place = equation_place,
                                          .enter = enter,
                                          .evaluate = evaluate,
                                          .ease = hold_or_let_go};

LW_CLONES
void lw_solve(const lw_craft *craft, const lw_ask *asks, bool are_akin, lw_solution *solutions,
              size_t n)
{
    const balances of = {craft, asks};
    lw_newton_many(&balance, &of, are_akin, solutions, n);
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
