// drawn_trim.c - a boat that is a little different, trimmed from how the boat as given is.
// SPDX-License-Identifier: MIT

#include "choice/drawn_trim.h"

#include <math.h>

#define MORE_KNOTS 4  // at most, that a boat a little different may need to fly

// In a wind, from how the boat as given flies at a knot.
static lw_trim trim_from(const lw_walk *walk, const lw_range_point *knot, double wind)
{
    const lw_trim given = lw_trim_again(walk->craft, &walk->setup, &knot->trimmed);
    return lw_walk_trim(walk, wind, &given);
}

// From the knot that the boat as given is sailed from in a wind; where she does not fly so, from
// those above it, in their own winds.
static lw_trim trim_from_given(const lw_walk *walk, const lw_range *range,
                               const lw_range_point *from, double wind)
{
    const lw_range_point *end = range->at + LW_RANGE_WINDS;
    lw_trim trim = {.steady = {.outcome = LW_NO_BALANCE}};
    for (int i = 0; i <= MORE_KNOTS && from + i < end && lw_answer_is_up(&from[i].trimmed); i++) {
        const bool is_here = fabs(from[i].wind - wind) <= LW_HALF_KNOT;
        trim = trim_from(walk, &from[i], is_here ? wind : from[i].wind);
        if (lw_trim_is_up(&trim)) break;
    }
    return trim;
}

#define FAR_BEHIND 0.35  // [m/s] made good: another way of flying, or none  [judged]

// [m/s] that its margins are marked down, where those of the boat as given are kept  [judged]
#define OVERDRAWN_BY 1.0

static double made_good(const lw_walk *walk, const lw_answer *answer)
{
    return lw_flight_made_good(&answer->flight, walk->course.direction);
}

// The best in a wind from nothing, and from how the boat as given flies in the knots beside it.
static lw_trim sought_otherwise(const lw_walk *walk, const lw_range *range,
                                const lw_range_point *from, double wind)
{
    lw_trim best = lw_walk_trim(walk, wind, NULL);
    for (int off = -1; off <= 1; off += 2) {
        const lw_range_point *beside = from + off;
        if (beside < range->at || beside >= range->at + LW_RANGE_WINDS) continue;
        if (!lw_answer_is_up(&beside->trimmed)) continue;
        const lw_trim trim = trim_from(walk, beside, wind);
        if (lw_trim_beats(&trim, &best)) best = trim;
    }
    return best;
}

lw_trim lw_drawn_trim(const lw_walk *walk, const lw_range *range, double wind)
{
    const lw_range_point *from = lw_range_sailed(range, wind);
    const lw_answer *given = &from->trimmed;
    if (from->wind < wind - LW_HALF_KNOT) wind = from->wind;
    const lw_trim trim = trim_from_given(walk, range, from, wind);
    const bool is_up = lw_trim_is_up(&trim) && fabs(trim.ask.wind - wind) <= LW_HALF_KNOT;
    const double speed = made_good(walk, &trim.steady);
    const bool is_overdrawn = from->is_held && trim.score < speed - OVERDRAWN_BY;
    if (is_up && !is_overdrawn && speed > made_good(walk, given) - FAR_BEHIND) return trim;
    const lw_trim anew = sought_otherwise(walk, range, from, wind);
    return (is_up ? lw_trim_beats(&anew, &trim) : lw_trim_is_up(&anew)) ? anew : trim;
}
