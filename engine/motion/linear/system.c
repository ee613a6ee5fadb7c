// system.c - the states that may move near a balance, and what each has in a motion.
// SPDX-License-Identifier: MIT

#include "motion/linear/system.h"

#include <math.h>

// Which part of a motion a state is, and whether the sailor moves it. Where the boat is on the
// ground changes nothing; the wind seen is even, and the rudder is not wound meanwhile.
typedef struct role {
    bool moves, is_hers;
    lw_part part;
} role;

#define BOAT(member, name) [LW_STATE_AT(member)] = {true, false, LW_PART_##name}
#define HERS(member, name) [LW_STATE_AT(member)] = {true, true, LW_PART_##name}
static const role roles[LW_RIDE_STATES] = {
    BOAT(surge, SPEED),     BOAT(sway, LEEWAY),      BOAT(heave, HEIGHT),
    BOAT(roll_rate, HEEL),  BOAT(pitch_rate, PITCH), BOAT(yaw_rate, COURSE),
    BOAT(heel, HEEL),       BOAT(pitch, PITCH),      BOAT(bow, COURSE),
    BOAT(height, HEIGHT),   BOAT(wand, WAND),        BOAT(downwash, DOWNWASH),
    HERS(body, BODY),       HERS(body_speed, BODY),  HERS(taken, SHEET),
    HERS(helm, HELM),       HERS(seen_heel, EYE),    HERS(seen_roll, EYE),
    HERS(seen_course, EYE), HERS(trim, TRIM),
};

bool lw_linear_system_values(const lw_motion *motion, const lw_ride_plan *plan, lw_hands hands,
                             lw_linear_system *linear, lw_complex *values)
{
    lw_jacobian jacobian;
    lw_ride_plan held = *plan;  // with the gains of this speed throughout
    const lw_pilot *pilot = &plan->pilot;
    lw_gains gains = plan->starts_aloft ? pilot->wish[LW_WISH_MEAN].gains : pilot->rest;
    gains.speed = 0.0;
    lw_gains_everywhere(&held.pilot, &gains);
    held.pilot.flight = 0.0;
    lw_motion_jacobian(motion, &held, &plan->start, jacobian);
    linear->count = 0;
    for (size_t i = 0; i < LW_RIDE_STATES; i++) {
        const bool may = roles[i].moves && (hands == LW_HANDS_SAILING || !roles[i].is_hers);
        if (may) linear->state[linear->count++] = i;
    }
    const int n = linear->count;
    for (int i = 0; i < n; i++) {
        const double *row = jacobian[linear->state[i]];
        for (int j = 0; j < n; j++) linear->a[i * n + j] = row[linear->state[j]];
    }
    return lw_eigen_values(linear->a, n, values);
}

static double size_of(lw_complex z) { return sqrt(z.re * z.re + z.im * z.im); }

bool lw_linear_system_shares(const lw_linear_system *linear, lw_complex value,
                             double size[LW_RIDE_STATES], double share[LW_PARTS])
{
    const int n = linear->count;
    double turned[LW_EIGEN_MOST * LW_EIGEN_MOST], sum = 0.0;
    lw_complex right[LW_EIGEN_MOST], left[LW_EIGEN_MOST];
    for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) turned[j * n + i] = linear->a[i * n + j];
    }
    const bool is_found =
        lw_eigen_vector(linear->a, n, value, right) && lw_eigen_vector(turned, n, value, left);
    for (size_t i = 0; i < LW_RIDE_STATES; i++) size[i] = 0.0;
    for (int i = 0; i < LW_PARTS; i++) share[i] = 0.0;
    for (int i = 0; i < n && is_found; i++) {
        const double part = size_of(left[i]) * size_of(right[i]);
        size[linear->state[i]] = size_of(right[i]);
        share[roles[linear->state[i]].part] += part;
        sum += part;
    }
    for (int i = 0; i < LW_PARTS && sum > 0.0; i++) share[i] /= sum;
    return is_found;
}
