// wind.c - where the wind comes from, by the mirror axis of a track's speeds and courses.
// SPDX-License-Identifier: MIT

#include <string.h>

#include "track/events.h"
#include "track/way.h"

#define COURSES LW_TRACK_COURSES
#define SPEEDS  LW_TRACK_SPEEDS
#define AXES    180   // of a degree: the other half has the same
#define LEAST   15    // cells of course from the axis that count: 30 deg
#define MOST    75    // to 150 deg
#define SPEED   0.15  // of the mean speed: a cell's width
#define CLOSE   25.0  // [deg] from an end: sailed straight at it
#define ALIKE   0.5   // likeness of a mirror axis                     [judged]
#define SURE    0.8   // likeness of the tacks of one boat, else doubtful  [judged]
#define SECOND  0.9   // of the likeness: another axis is as good      [judged]
#define HALF    0.05  // of the time in the half sailed less             [judged]
#define APART   30    // [deg] of two axes                             [judged]

typedef lw_track_cells cells;

// --- time by course and speed

static double mean_speed(const lw_track *track, double *seconds)
{
    double run = 0.0;
    *seconds = 0.0;
    for (size_t i = 0; i < track->count; i++) {
        const double step = lw_track_step(track, i);
        if (track->ways[i].speed < SLOW) continue;
        *seconds += step;
        run += step * track->ways[i].speed;
    }
    return *seconds > 0.0 ? run / *seconds : 0.0;
}

static void fill(const lw_track *track, lw_track_room *room)
{
    double seconds, past = 0.0;
    const double mean = mean_speed(track, &seconds), least = fmax(SLOW, 0.4 * mean);
    memset(room->block, 0, sizeof room->block);
    for (size_t i = 0; i < track->count; i++) {
        const lw_track_way *way = &track->ways[i];
        const double step = lw_track_step(track, i);
        if (way->speed < SLOW) continue;
        const size_t block = (size_t)fmin(LW_BLOCKS * past / seconds, LW_BLOCKS - 1);
        past += step;
        if (way->speed < least) continue;
        const size_t course = (size_t)fmin(way->course / (2.0 * LW_DEG), COURSES - 1);
        const size_t speed = (size_t)fmin(way->speed / (SPEED * mean), SPEEDS - 1);
        room->block[block].time[course][speed] += step;
    }
}

// All blocks but one (LW_BLOCKS: all), in parts of the whole.
static void put_together(lw_track_room *room, size_t without)
{
    double sum = 0.0;
    memset(&room->all, 0, sizeof room->all);
    for (size_t b = 0; b < LW_BLOCKS; b++) {
        if (b == without) continue;
        for (size_t c = 0; c < COURSES; c++) {
            for (size_t v = 0; v < SPEEDS; v++) {
                room->all.time[c][v] += room->block[b].time[c][v];
                sum += room->block[b].time[c][v];
            }
        }
    }
    if (!(sum > 0.0)) return;
    for (size_t c = 0; c < COURSES; c++) {
        for (size_t v = 0; v < SPEEDS; v++) room->all.time[c][v] /= sum;
    }
}

// By a bell of two cells of course and one of speed. Speeds do not go around: what would fall off
// stays at the edge.
static void smooth(lw_track_room *room)
{
    static const double across[] = {0.0276, 0.0663, 0.1238, 0.1801, 0.2044,
                                    0.1801, 0.1238, 0.0663, 0.0276};  // exp(-n^2 / 8), n -4 to 4
    static const double along[] = {0.0548, 0.2442, 0.4020, 0.2442, 0.0548};  // exp(-n^2 / 2)
    const cells *from = &room->all;
    cells *half = &room->half, *to = &room->smooth;
    memset(half, 0, sizeof *half);
    memset(to, 0, sizeof *to);
    for (size_t c = 0; c < COURSES; c++) {
        for (size_t v = 0; v < SPEEDS; v++) {
            if (from->time[c][v] == 0.0) continue;
            for (size_t n = 0; n < 9; n++) {
                half->time[(c + COURSES + n - 4) % COURSES][v] += across[n] * from->time[c][v];
            }
        }
    }
    for (size_t c = 0; c < COURSES; c++) {
        for (size_t v = 0; v < SPEEDS; v++) {
            for (size_t n = 0; n < 5 && half->time[c][v] != 0.0; n++) {
                const size_t at = v + n < 2 ? 0 : v + n - 2;
                to->time[c][at < SPEEDS ? at : SPEEDS - 1] += along[n] * half->time[c][v];
            }
        }
    }
}

// --- the axis

// Likeness of the sailing on either side of an axis of so many degrees, each side for itself, and
// the part of the time that counts. The cell c meets axis - c - 1, since cells lie about odd
// degrees. A side of less than LW_TRACK_LESSER of the time counts as one of LW_TRACK_LESSER.
static double likeness(const cells *p, size_t axis)
{
    double alike = 0.0, one = 0.0, other = 0.0;
    for (size_t x = LEAST; x < MOST; x++) {
        const size_t c = ((axis + 1) / 2 + x) % COURSES;
        const size_t mirrored = (axis + COURSES + (COURSES - 1 - c)) % COURSES;
        for (size_t v = 0; v < SPEEDS; v++) {
            alike += sqrt(p->time[c][v] * p->time[mirrored][v]);
            one += p->time[c][v];
            other += p->time[mirrored][v];
        }
    }
    const double both = one + other, uneven = sqrt(LW_TRACK_LESSER * (1.0 - LW_TRACK_LESSER));
    return both > 0.0 ? both * alike / fmax(sqrt(one * other), uneven * both) : 0.0;
}

static size_t turned(size_t axis, int degrees)
{
    return (size_t)((int)axis + degrees + 2 * AXES) % AXES;
}

// The best axis within so many degrees of one.
static size_t best_near(const double of[AXES], size_t axis, int reach)
{
    size_t best = axis;
    for (int d = -reach; d <= reach; d++) {
        if (of[turned(axis, d)] > of[best]) best = turned(axis, d);
    }
    return best;
}

// Top of the parabola by least squares through what lies within 6 degrees, from the axis [deg].
static double top_of(const double of[AXES], size_t axis)
{
    double first = 0.0, second = 0.0;
    for (int d = -6; d <= 6; d++) {
        const double value = of[turned(axis, d)];
        first += d * value / 182.0;                 // sum of d^2
        second += (d * d - 14.0) * value / 2002.0;  // their mean; sum of its squares
    }
    return second < 0.0 ? fmax(-6.0, fmin(6.0, -0.5 * first / second)) : 0.0;
}

static void put_likeness(lw_track_room *room, size_t without, double of[AXES])
{
    put_together(room, without);
    smooth(room);
    for (size_t axis = 0; axis < AXES; axis++) of[axis] = likeness(&room->smooth, axis);
}

// The axis [deg] with each block left out, about where that of all is, and its error.
static double error_of(lw_track_room *room, size_t axis, double top)
{
    double of[AXES], axes[LW_SETS] = {top};
    for (size_t b = 0; b < LW_BLOCKS; b++) {
        put_likeness(room, b, of);
        const size_t best = best_near(of, axis, APART);
        const int off = (int)((best + AXES + AXES / 2 - axis) % AXES) - AXES / 2;
        axes[1 + b] = off + top_of(of, best);
    }
    return fmax(lw_jackknife(axes), 1.0) * LW_DEG;
}

static bool has_rival(const double of[AXES], size_t axis)
{
    for (int d = APART; d <= AXES - APART; d++) {
        if (of[turned(axis, d)] > SECOND * of[axis]) return true;
    }
    return false;
}

// --- which end, and which tacks

// Part of the time on the lesser tack, of what is sailed between close-hauled and broad.
static double lesser_of(const cells *p, double axis)
{
    double sums[2] = {0.0, 0.0};
    for (size_t c = 0; c < COURSES; c++) {
        const double off = turn_within((2.0 * (double)c + 1.0) * LW_DEG - axis);
        if (fabs(off) < 30.0 * LW_DEG || fabs(off) > 150.0 * LW_DEG) continue;
        for (size_t v = 0; v < SPEEDS; v++) sums[off > 0.0] += p->time[c][v];
    }
    const double both = sums[0] + sums[1];
    return both > 0.0 ? fmin(sums[0], sums[1]) / both : 0.0;
}

// What the halves of the courses, about one end of an axis and about the other, tell.
typedef struct halves {
    double slower;    // how much slower the first is, in mean speeds
    double straight;  // time close to the other end less that close to the first, of all
    double lesser;    // time of the half that was sailed less, of both
} halves;

static halves halves_of(const cells *p, double axis)
{
    double time[2] = {0.0, 0.0}, run[2] = {0.0, 0.0}, close[2] = {0.0, 0.0};
    for (size_t c = 0; c < COURSES; c++) {
        const double off = fabs(turn_within((2.0 * (double)c + 1.0) * LW_DEG - axis));
        const bool is_down = off > 0.5 * LW_PI;
        const bool is_close = fmin(off, LW_PI - off) < CLOSE * LW_DEG;
        for (size_t v = 0; v < SPEEDS; v++) {
            time[is_down] += p->time[c][v];
            run[is_down] += p->time[c][v] * ((double)v + 0.5) * SPEED;
            if (is_close) close[is_down] += p->time[c][v];
        }
    }
    const bool has_both = time[0] > 0.0 && time[1] > 0.0;
    return (halves){.slower = has_both ? run[1] / time[1] - run[0] / time[0] : 0.0,
                    .straight = close[1] - close[0],
                    .lesser = fmin(time[0], time[1]) / (time[0] + time[1])};
}

// How much more of the speed is lost in turns through the axis than in turns away from it.
static double lost_of(const lw_track *track, double axis)
{
    lw_track_event list[200];
    lw_track_events events = {.list = list, .room = 200};
    double kept[2] = {0.0, 0.0}, count[2] = {0.0, 0.0};
    lw_track_turn(track, axis, &events);
    for (size_t i = 0; i < events.count; i++) {
        const bool is_gybe = list[i].what == LW_TRACK_GYBE;
        kept[is_gybe] += list[i].slowest;
        count[is_gybe] += 1.0;
    }
    if (count[0] < 2.0 || count[1] < 2.0) return 0.0;
    const double tacks = kept[0] / count[0], gybes = kept[1] / count[1];
    return (gybes - tacks) / fmax(gybes + tacks, SLOW);
}

static double within_two(double x) { return fmax(-2.0, fmin(2.0, x)); }

// Above 1: the axis points upwind; below -1: downwind; between them it is open. Each sign counts
// as one at what is common between upwind and downwind.  [judged]
static double upwind_of(const lw_track *track, halves of, double axis)
{
    return within_two(of.slower / 0.06) + within_two(of.straight / 0.02) +
           within_two(lost_of(track, axis) / 0.15);
}

lw_track_wind lw_track_wind_of(const lw_track *track, lw_track_room *room)
{
    double of[AXES];
    lw_track_wind wind = {.from = NAN, .error = NAN, .lesser = NAN, .ends = NAN};
    fill(track, room);
    put_likeness(room, LW_BLOCKS, of);
    const size_t best = best_near(of, 0, AXES / 2);
    const double top = top_of(of, best), axis = turn_around(((double)best + top) * LW_DEG);
    wind.likeness = fmin(of[best], 1.0);
    if (!(wind.likeness > 0.0)) return wind;
    wind.lesser = lesser_of(&room->smooth, axis);
    const halves ends = halves_of(&room->smooth, axis);
    const double upwind = upwind_of(track, ends, axis);
    wind.ends = fabs(upwind);
    wind.from = turn_around(upwind < 0.0 ? axis + LW_PI : axis);
    wind.is_found = wind.likeness >= ALIKE && wind.lesser >= LW_TRACK_LESSER;
    // in one half only: they may be courses of one tack, high and low
    wind.is_doubtful =
        has_rival(of, best) || wind.ends < 1.0 || ends.lesser < HALF || wind.likeness < SURE;
    wind.error = error_of(room, best, top);
    return wind;
}
