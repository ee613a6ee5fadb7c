// track.h - a sailed track: fixes in time, its speeds, best averages and wind.
// SPDX-License-Identifier: MIT
//
// Holds for   fixes at least every LW_TRACK_GAP seconds, of a boat that goes where she points.
// Leaves out  current, which moves the whole distribution of speed by course; leeway.

#ifndef LW_TRACK_H
#define LW_TRACK_H

#include "lullwise/base.h"
#include "lullwise/chance.h"

// Fixes further apart belong to two pieces, and nothing is told across.  [judged]
#define LW_TRACK_GAP 10.0  // [s]

// One fix; times rise from fix to fix.
typedef struct lw_fix {
    double time;         // t     [s]   from a moment of the caller's
    double east, north;  // x, y  [m]   about a middle
    double speed;        // V     [m/s] over ground, as the receiver tells it; NAN: it does not
    double course;       // chi   [rad] from north, clockwise, likewise
    bool starts;         // a piece: whoever read it knows that something is missing before
} lw_fix;

// What is made of it.
typedef struct lw_track_way {
    double speed, course;  // [m/s], [rad] 0 to 2 pi: smoothed
    double run;            // [m]   sailed since the first fix
    bool starts;           // a piece
    bool flies;
} lw_track_way;

// Fixes with their ways, both the caller's.
typedef struct lw_track {
    const lw_fix *fixes;
    lw_track_way *ways;
    size_t count;
} lw_track;

// Speed and course of each fix: as told, averaged over half a second either way; where they are not
// told, the slope of a straight line by least squares through the fixes of a second either way, and
// the next one on each side at least. Sums up what was sailed, trapezoids of the speed from fix to
// fix, not averaged where it is told.
void lw_track_smooth(lw_track *track);

// Seconds between a fix and the one before; 0 where a piece starts.
double lw_track_step(const lw_track *track, size_t i);

// --- best averages

// Most that was sailed in so many seconds, or least time for so many metres, at any moment of one
// piece, not from fix to fix only: straight between fixes. As a speed [m/s]; NAN: no piece is as
// long. Exact for what was sailed as lw_track_smooth sums it up.
double lw_track_best_over(const lw_track *track, double seconds);
double lw_track_best_along(const lw_track *track, double metres);

// --- wind from the sailing

#define LW_TRACK_COURSES 180  // of 2 degrees
#define LW_TRACK_SPEEDS  24   // of 0.15 of the mean speed under way

// Time in each cell of course and speed [s], or its part of the whole.
typedef struct lw_track_cells {
    double time[LW_TRACK_COURSES][LW_TRACK_SPEEDS];
} lw_track_cells;

// To work in: block by block, some of them together, and those smoothed.
typedef struct lw_track_room {
    lw_track_cells block[LW_BLOCKS], all, half, smooth;
} lw_track_room;

typedef struct lw_track_wind {
    bool is_found;     // both tacks were sailed, and one axis mirrors them
    bool is_doubtful;  // not very alike, another axis as much, or which end is upwind open
    double from;       // [rad] 0 to 2 pi, from north, clockwise
    double error;      // [rad] standard error by blocks of the sailing
    double likeness;   // 0 to 1: of the two sides
    double lesser;     // part of the time on the tack sailed less
    double ends;       // how clearly the upwind end is one: 1 is enough
} lw_track_wind;

// Part of the time that both tacks need to be known.  [judged]
#define LW_TRACK_LESSER 0.08

// Where the wind comes from: the axis w about which the distribution p of speed by course is most
// nearly mirrored. Each side for itself, by the likeness of two distributions [bhattacharyya-1943]
// times the part of the time that counts,
//
//     B(w) = (P + Q) sum sqrt(p(w + x, V) p(w - x, V)) / sqrt(P Q),   x 30 to 150 deg
//
// P and Q the sums over either side, in cells smoothed by 4 degrees, at a parabola's top; its error
// by the jackknife over eight blocks of the sailing, at least a degree [judged]. Of its two ends
// upwind is where she is slower, does not sail straight at, and loses more in turns  [judged].
//
// Leaves out  current, and wind that is bent: they move the axis.
lw_track_wind lw_track_wind_of(const lw_track *track, lw_track_room *room);

#endif
