// wand_margin.c - how much more gearing or lag the wand's loop bears.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "lullwise/modes.h"
#include "motion/linear/system.h"

// One question: the loop at another gearing or lag.
typedef struct trial {
    const lw_motion *motion;
    const lw_ride_plan *plan;
    lw_hands hands;
    bool is_lag;      // else gearing
    bool must_swing;  // else anything that grows counts
} trial;

// More than half of a motion is ride height, pitch, wand and downwash.
static bool is_of_loop(const double share[LW_PARTS])
{
    const double attitude = share[LW_PART_HEIGHT] + share[LW_PART_PITCH];
    return attitude + share[LW_PART_WAND] + share[LW_PART_DOWNWASH] > 0.5;
}

// Whether ride height and pitch go off by themselves at so many times the gearing or lag.
static bool grows(const trial *loop, double factor, double *period)
{
    lw_motion motion = *loop->motion;
    lw_ride_plan plan = *loop->plan;
    lw_linear_system linear;
    lw_complex values[LW_EIGEN_MOST];
    double size[LW_RIDE_STATES], share[LW_PARTS];
    if (loop->is_lag) {
        motion.parameters.wand_lag *= factor;
    } else {
        const double from = plan.start.wand - motion.craft->linkage.neutral_angle;
        plan.setup.rod += (1.0 - factor) * plan.setup.gearing * from;
        plan.setup.gearing *= factor;
    }
    if (!lw_linear_system_values(&motion, &plan, loop->hands, &linear, values)) return false;
    for (int i = 0; i < linear.count; i++) {
        const lw_complex v = values[i];
        if (v.re <= 0.0 || v.im < 0.0 || (loop->must_swing && v.im == 0.0)) continue;
        if (!lw_linear_system_shares(&linear, v, size, share) || !is_of_loop(share)) continue;
        *period = v.im > 0.0 ? 2.0 * LW_PI / v.im : INFINITY;
        return true;
    }
    return false;
}

#define STRIDE   1.1  // a swing that only grows between two strides is missed
#define HALVINGS 30

// Least factor beyond 1 from which it grows, sought in strides of `stride` to `last`; NaN: none.
static double limit_of(const trial *loop, double stride, double last, double *period)
{
    double good = 1.0, bad = 1.0;
    *period = INFINITY;
    while (!grows(loop, bad, period)) {
        if (bad == last) return NAN;
        good = bad;
        bad = stride > 1.0 ? fmin(bad * stride, last) : fmax(bad * stride, last);
    }
    for (int i = 0; i < HALVINGS && good != bad; i++) {
        const double middle = 0.5 * (good + bad);
        if (grows(loop, middle, period))
            bad = middle;
        else
            good = middle;
    }
    return bad;
}

lw_wand_margin lw_wand_margin_of(const lw_motion *motion, const lw_ride_plan *plan, lw_hands hands)
{
    const trial more = {motion, plan, hands, .must_swing = true};
    const trial less = {motion, plan, hands, .must_swing = false};
    const trial late = {motion, plan, hands, .is_lag = true, .must_swing = true};
    lw_wand_margin margin = {.lag_now = motion->parameters.wand_lag};
    double ignored;
    margin.gearing = limit_of(&more, STRIDE, LW_MARGIN_SOUGHT, &margin.gearing_period);
    margin.least_gearing = limit_of(&less, 1.0 / STRIDE, 1.0 / LW_MARGIN_SOUGHT, &ignored);
    margin.lag = margin.lag_now * limit_of(&late, STRIDE, LW_MARGIN_SOUGHT, &margin.lag_period);
    if (!(margin.gearing >= 1.0)) margin.gearing = INFINITY;
    if (!(margin.least_gearing >= 0.0)) margin.least_gearing = 0.0;
    if (!(margin.lag >= 0.0)) margin.lag = INFINITY;
    return margin;
}
