// hold.c - time to the finish with the pin held and with it changed, and where both are equal.
// SPDX-License-Identifier: MIT

#include "lullwise/hold.h"

#include <math.h>

#include "choice/lap.h"
#include "lullwise/elementary.h"

#define LAST (LW_HOLD_POINTS - 1)

static lw_gusts gusts_in(const lw_outlook *outlook, double mean)
{
    lw_gusts gusts = outlook->gusts;
    const double share = mean / gusts.mean;
    gusts.lull *= share, gusts.mean = mean, gusts.puff *= share;
    return gusts;
}

// One point of a pace: the legs once round in one wind.
static void add_point(const lw_outlook *outlook, size_t pin, const lw_swims swims[LW_COURSES_MOST],
                      double wind, size_t at, lw_pace *pace)
{
    const lw_gusts gusts = gusts_in(outlook, wind);
    double length = 0.0, seconds = 0.0, sailed = 0.0, flown = 0.0, fallen = 0.0, unsure = 0.0;
    for (size_t leg = 0; leg < outlook->leg_count; leg++) {
        const lw_prospect p = lw_lap_leg(outlook, pin, leg, gusts);
        const lw_swims *of = &swims[outlook->leg_course[leg]];
        const double fell = of->is_known ? lw_swims_rate(of, wind) * p.flying : 0.0;
        length += outlook->leg_length[leg];
        seconds += p.seconds;
        sailed += p.flying + p.hull_seconds;
        flown += p.flying;
        fallen += fell;
        unsure += fell > 0.0 ? fell * lw_swims_log_error(of, wind) : 0.0;
    }
    pace->seconds[at] = (seconds + fallen * outlook->cost.swim) / length;
    pace->error[at] = unsure * outlook->cost.swim / length;
    pace->swims[at] = fallen / length;
    pace->flying[at] = flown / sailed;
}

lw_pace lw_pace_of(const lw_outlook *outlook, size_t pin, const lw_swims swims[LW_COURSES_MOST],
                   double now, double later)
{
    lw_pace pace;
    for (size_t i = 0; i < LW_HOLD_POINTS; i++) {
        add_point(outlook, pin, swims, now + (later - now) * (double)i / LAST, i, &pace);
    }
    return pace;
}

double lw_pace_rest(const double row[LW_HOLD_POINTS], double length, double from)
{
    const double step = length / LAST;
    double sum = 0.0;
    if (from < 0.0) sum -= row[0] * from, from = 0.0;
    for (int i = 0; i < LAST; i++) {
        const double u = fmin(fmax(from / step - i, 0.0), 1.0);  // share of this step that is over
        const double first = row[i] + u * (row[i + 1] - row[i]);
        sum += 0.5 * (first + row[i + 1]) * (1.0 - u) * step;
    }
    return sum;
}

// Distance left, the least, over which `gain` sums up to `stop`; negative: none.
static double even_left(const double gain[LW_HOLD_POINTS], double length, double stop)
{
    const double step = length / LAST;
    double sum = 0.0;
    for (int i = LAST; i > 0; i--) {  // from the finish back
        const double more = 0.5 * (gain[i] + gain[i - 1]) * step;
        const double lack = stop - sum;
        if (more >= lack && more > 0.0) {
            const double bend = (gain[i - 1] - gain[i]) / step;
            const double root = sqrt(fmax(gain[i] * gain[i] + 2.0 * bend * lack, 0.0));
            return (LAST - i) * step + (lack > 0.0 ? 2.0 * lack / (gain[i] + root) : 0.0);
        }
        sum += more;
    }
    return gain[0] > 0.0 ? length + (stop - sum) / gain[0] : -1.0;
}

// Where to stop at best: here, or where the other pin becomes the faster one.
static void find_best(const double gain[LW_HOLD_POINTS], double length, double stop,
                      lw_change *change)
{
    change->best_at = 0.0, change->best_saved = change->saved;
    for (int i = 0; i < LAST; i++) {
        if (!(gain[i] < 0.0 && gain[i + 1] >= 0.0)) continue;
        const double at = (i + gain[i] / (gain[i] - gain[i + 1])) * length / LAST;
        const double saved = lw_pace_rest(gain, length, at) - stop;
        if (saved > change->best_saved) change->best_at = at, change->best_saved = saved;
    }
}

static double error_from(const lw_pace *held, const lw_pace *other, double length, double from)
{
    const double a = lw_pace_rest(held->error, length, from);
    const double b = lw_pace_rest(other->error, length, from);
    return sqrt(a * a + b * b);
}

static double chance_of(double saved, double error)
{
    if (error > 0.0) return lw_normal_below(saved / error);
    return saved > 0.0 ? 1.0 : saved < 0.0 ? 0.0 : 0.5;
}

lw_change lw_change_of(const lw_pace *held, const lw_pace *other, double length, double stop)
{
    double gain[LW_HOLD_POINTS];
    for (int i = 0; i < LW_HOLD_POINTS; i++) gain[i] = held->seconds[i] - other->seconds[i];
    lw_change change = {.held = lw_pace_rest(held->seconds, length, 0.0),
                        .changed = stop + lw_pace_rest(other->seconds, length, 0.0),
                        .error = error_from(held, other, length, 0.0)};
    change.saved = change.held - change.changed;
    change.chance = chance_of(change.saved, change.error);
    change.even_left = even_left(gain, length, stop);
    change.is_ever = change.even_left >= 0.0;
    if (change.is_ever) {
        change.even_seconds = lw_pace_rest(held->seconds, length, length - change.even_left);
    }
    find_best(gain, length, stop, &change);
    change.best_error = error_from(held, other, length, change.best_at);
    change.best_chance = chance_of(change.best_saved, change.best_error);
    return change;
}

double lw_normal_below(double z)
{
    static const double b[] = {0.319381530, -0.356563782, 1.781477937, -1.821255978, 1.330274429};
    const double t = 1.0 / (1.0 + 0.2316419 * fabs(z));
    double tail = 0.0;
    for (int i = 4; i >= 0; i--) tail = t * (b[i] + tail);
    tail *= lw_exp(-0.5 * z * z) / sqrt(2.0 * LW_PI);
    return z > 0.0 ? 1.0 - tail : tail;
}
