// near.c - the states that may move near a balance, and what each has in a motion.
// SPDX-License-Identifier: MIT

#include "motion/near.h"

#include <math.h>

// Which part of a motion a state is, and whether the sailor moves it. Where the boat is on the ground
// changes nothing; the wind seen is even, and the rudder is not wound meanwhile.
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

bool lw_near_values(const lw_motion *motion, const lw_ride_plan *plan, lw_hands hands,
                    lw_near *near, lw_complex *values)
{
    double slopes[LW_RIDE_STATES][LW_RIDE_STATES];
    lw_ride_plan held = *plan;  // with the gains of this speed throughout
    const lw_pilot *pilot = &plan->pilot;
    lw_gains gains = plan->starts_aloft ? pilot->wish[LW_WISH_MEAN].gains : pilot->rest;
    gains.speed = 0.0;
    lw_gains_everywhere(&held.pilot, &gains);
    held.pilot.flight = 0.0;
    lw_motion_slopes(motion, &held, &plan->start, slopes);
    near->count = 0;
    for (size_t i = 0; i < LW_RIDE_STATES; i++) {
        const bool may = roles[i].moves && (hands == LW_HANDS_SAILING || !roles[i].is_hers);
        if (may) near->state[near->count++] = i;
    }
    const int n = near->count;
    for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) near->a[i * n + j] = slopes[near->state[i]][near->state[j]];
    }
    return lw_eigen_values(near->a, n, values);
}

static double size_of(lw_complex z) { return sqrt(z.re * z.re + z.im * z.im); }

bool lw_near_shares(const lw_near *near, lw_complex value, double size[LW_RIDE_STATES],
                    double share[LW_PARTS])
{
    const int n = near->count;
    double turned[LW_EIGEN_MOST * LW_EIGEN_MOST], sum = 0.0;
    lw_complex right[LW_EIGEN_MOST], left[LW_EIGEN_MOST];
    for (int i = 0; i < n; i++) {
        for (int j = 0; j < n; j++) turned[j * n + i] = near->a[i * n + j];
    }
    const bool is_found =
        lw_eigen_vector(near->a, n, value, right) && lw_eigen_vector(turned, n, value, left);
    for (size_t i = 0; i < LW_RIDE_STATES; i++) size[i] = 0.0;
    for (int i = 0; i < LW_PARTS; i++) share[i] = 0.0;
    for (int i = 0; i < n && is_found; i++) {
        const double part = size_of(left[i]) * size_of(right[i]);
        size[near->state[i]] = size_of(right[i]);
        share[roles[near->state[i]].part] += part;
        sum += part;
    }
    for (int i = 0; i < LW_PARTS && sum > 0.0; i++) share[i] /= sum;
    return is_found;
}
