// best.c - best averages of a track, over a time and along a distance.
// SPDX-License-Identifier: MIT
//
// What was sailed is taken straight between fixes, so that the most in a time, and the least time
// for a distance, begins or ends at a fix: each fix is tried as either.

#include "track/way.h"

// A fix as a point of a curve that rises: what is given along it, and what is sought.
typedef struct mark {
    double given, sought;
} mark;

static mark mark_of(const lw_track *track, size_t i, bool by_time)
{
    const double time = track->fixes[i].time, run = track->ways[i].run;
    return by_time ? (mark){time, run} : (mark){run, time};
}

// Straight between two marks.
static double between(mark a, mark b, double given)
{
    const double width = b.given - a.given;
    return width > 0.0 ? a.sought + (b.sought - a.sought) * (given - a.given) / width : a.sought;
}

typedef struct search {
    const lw_track *track;
    bool by_time;
    double length;  // of the window, in what is given
    double best;    // most metres, or least seconds; NAN: none
} search;

static void take(search *s, double sought)
{
    const bool is_better = s->by_time ? sought > s->best : sought < s->best;
    if (isnan(s->best) || is_better) s->best = sought;
}

// One piece: windows that end at a fix, and windows that begin at one.
static void try_piece(search *s, size_t first, size_t end)
{
    size_t tail = first, head = first;
    for (size_t i = first; i < end; i++) {
        const mark here = mark_of(s->track, i, s->by_time);
        const double from = here.given - s->length, to = here.given + s->length;
        if (from >= mark_of(s->track, first, s->by_time).given) {
            while (tail + 1 < i && mark_of(s->track, tail + 1, s->by_time).given <= from) tail++;
            take(s, here.sought - between(mark_of(s->track, tail, s->by_time),
                                          mark_of(s->track, tail + 1, s->by_time), from));
        }
        while (head < end && mark_of(s->track, head, s->by_time).given < to) head++;
        if (head < end && head > i)
            take(s, between(mark_of(s->track, head - 1, s->by_time),
                            mark_of(s->track, head, s->by_time), to) -
                        here.sought);
    }
}

static double best_of(const lw_track *track, bool by_time, double length)
{
    search s = {.track = track, .by_time = by_time, .length = length, .best = NAN};
    for (size_t first = 0, end; first < track->count; first = end) {
        end = first + 1;
        while (end < track->count && !track->ways[end].starts) end++;
        try_piece(&s, first, end);
    }
    return s.best;
}

double lw_track_best_over(const lw_track *track, double seconds)
{
    return best_of(track, true, seconds) / seconds;
}

double lw_track_best_along(const lw_track *track, double metres)
{
    return metres / best_of(track, false, metres);
}
