// hold.c - time to the finish with the pin held and with it changed, and where both are equal.
// SPDX-License-Identifier: MIT

#include "lullwise/hold.h"

#include <math.h>

#include "choice/lap.h"

#define LAST (LW_HOLD_POINTS - 1)

// Sailing and swims of a lap, without the turns at its marks, for each metre of it.
static double seconds_of(const lw_lap *lap, double length)
{
    return (lap->under_way + lap->swimming) / length;
}

// A pin in one wind, the i-th point of the way.
static void put_point(const lw_outlook *outlook, size_t pin, double wind, size_t i, lw_pace *pace)
{
    const double length = lw_lap_length(outlook);
    const lw_source all = {.kind = LW_OF_SET, .for_time = true};
    pace->unseen[i] = lw_lap_unseen(outlook, pin, pin, wind) / length;
    pace->is_stuck |= lw_lap_of(outlook, all, pin, wind).is_stuck;
    for (size_t set = 0; set < LW_SETS; set++) {
        const lw_source of = {.kind = LW_OF_SET, .set = set, .for_time = true};
        const lw_lap lap = lw_lap_expected(outlook, of, pin, wind);
        pace->seconds[set][i] = seconds_of(&lap, length);
        pace->swims[set][i] = lap.swims / length;
        if (set == 0) pace->flying[i] = lap.flown / lap.under_way;
    }
    for (size_t d = 0; d < LW_DRAWS; d++) {
        lw_source draw = {.kind = LW_OF_DRAW, .number = d, .for_time = true};
        const lw_lap drawn = lw_lap_of(outlook, draw, pin, wind);
        draw.kind = LW_BESIDE_DRAW;
        const lw_lap as_is = lw_lap_of(outlook, draw, pin, wind);
        pace->moved[d][i] = seconds_of(&drawn, length) - seconds_of(&as_is, length);
    }
}

lw_pace lw_pace_of(const lw_outlook *outlook, size_t pin, double now, double later)
{
    lw_pace pace = {.swim = outlook->cost.swim};
    for (size_t i = 0; i < LW_HOLD_POINTS; i++) {
        put_point(outlook, pin, now + (later - now) * (double)i / LAST, i, &pace);
    }
    return pace;
}

double lw_way_rest(const lw_way way, double length, double from)
{
    const double step = length / LAST;
    double sum = 0.0;
    if (from < 0.0) sum -= way[0] * from, from = 0.0;
    for (int i = 0; i < LAST; i++) {
        const double u = fmin(fmax(from / step - i, 0.0), 1.0);  // share of this step that is over
        const double first = way[i] + u * (way[i + 1] - way[i]);
        sum += 0.5 * (first + way[i + 1]) * (1.0 - u) * step;
    }
    return sum;
}

// Distance left, the least, over which `gain` sums up to `stop`; negative: none.
static double even_left(const lw_way gain, double length, double stop)
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
static void find_best(const lw_way gain, double length, double stop, lw_change *change)
{
    change->best_at = 0.0, change->best_saved = change->saved;
    for (int i = 0; i < LAST; i++) {
        if (!(gain[i] < 0.0 && gain[i + 1] >= 0.0)) continue;
        const double at = (i + gain[i] / (gain[i] - gain[i + 1])) * length / LAST;
        const double saved = lw_way_rest(gain, length, at) - stop;
        if (saved > change->best_saved) change->best_at = at, change->best_saved = saved;
    }
}

// What a stop at a place saves, by one way of sailing each pin.
static double saved_by(const lw_way held, const lw_way other, double length, double from)
{
    return lw_way_rest(held, length, from) - lw_way_rest(other, length, from);
}

static double error_at(const lw_pace *held, const lw_pace *other, double length, double from)
{
    double saved[LW_SETS];
    for (int set = 0; set < LW_SETS; set++) {
        saved[set] = saved_by(held->seconds[set], other->seconds[set], length, from);
    }
    const double seen = lw_jackknife(saved);
    const double unseen = LW_SWIMS_APART * held->swim * lw_way_rest(held->unseen, length, from);
    return sqrt(seen * seen + unseen * unseen);
}

static double spread_at(const lw_pace *held, const lw_pace *other, double length, double from)
{
    double moved[LW_DRAWS];
    for (int d = 0; d < LW_DRAWS; d++) {
        moved[d] = saved_by(held->moved[d], other->moved[d], length, from);
    }
    return lw_spread(moved);
}

lw_change lw_change_of(const lw_pace *held, const lw_pace *other, double length, double stop)
{
    lw_way gain;
    for (int i = 0; i < LW_HOLD_POINTS; i++) {
        gain[i] = held->seconds[0][i] - other->seconds[0][i];
    }
    lw_change change = {.held = lw_way_rest(held->seconds[0], length, 0.0),
                        .changed = stop + lw_way_rest(other->seconds[0], length, 0.0),
                        .error = error_at(held, other, length, 0.0),
                        .spread = spread_at(held, other, length, 0.0)};
    change.saved = change.held - change.changed;
    change.chance = lw_chance(change.saved, change.error, change.spread);
    change.even_left = even_left(gain, length, stop);
    change.is_ever = change.even_left >= 0.0;
    if (change.is_ever) {
        change.even_seconds = lw_way_rest(held->seconds[0], length, length - change.even_left);
    }
    find_best(gain, length, stop, &change);
    change.best_error = error_at(held, other, length, change.best_at);
    change.best_spread = spread_at(held, other, length, change.best_at);
    change.best_chance = lw_chance(change.best_saved, change.best_error, change.best_spread);
    return change;
}
