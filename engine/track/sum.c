// sum.c - a track in sum, and its speed by the angle from the wind.
// SPDX-License-Identifier: MIT

#include "lullwise/track_events.h"
#include "track/way.h"

lw_track_sum lw_track_sum_of(const lw_track *track, const lw_track_events *events)
{
    lw_track_sum sum = {0};
    for (size_t i = 0; i < track->count; i++) {
        const lw_track_way *way = &track->ways[i];
        const double step = lw_track_step(track, i);
        sum.pieces += way->starts;
        sum.seconds += step;
        if (way->speed >= SLOW) sum.under_way += step;
        if (way->flies) sum.flying += step;
        sum.fastest = fmax(sum.fastest, way->speed);
        sum.run = way->run;
    }
    for (size_t i = 0; i < events->count; i++) {
        const lw_track_event *event = &events->list[i];
        sum.count[event->what]++;
        sum.flown[event->what] += event->is_flown;
    }
    return sum;
}

#define CELLS 160
#define CELL  0.25  // [m/s]

static size_t at_most(double value, size_t most)
{
    return value < (double)most ? (size_t)value : most;
}

// Speed that a part of the time is slower than, straight within a cell.
static double below_which(const double seconds[CELLS], double part)
{
    double left = 0.0;
    for (size_t c = 0; c < CELLS; c++) left += part * seconds[c];
    for (size_t c = 0; c < CELLS; c++) {
        if (seconds[c] > 0.0 && left <= seconds[c]) return CELL * ((double)c + left / seconds[c]);
        left -= seconds[c];
    }
    return CELL * CELLS;
}

void lw_track_by_angle(const lw_track *track, double from, lw_track_angle angles[LW_TRACK_ANGLES])
{
    double cells[LW_TRACK_ANGLES][CELLS] = {{0.0}}, run[LW_TRACK_ANGLES] = {0.0};
    const double width = LW_PI / LW_TRACK_ANGLES;
    for (size_t a = 0; a < LW_TRACK_ANGLES; a++) angles[a] = (lw_track_angle){0};
    for (size_t i = 0; i < track->count; i++) {
        const lw_track_way *way = &track->ways[i];
        const double step = lw_track_step(track, i);
        if (way->speed < SLOW) continue;
        const size_t a =
            at_most(fabs(turn_within(way->course - from)) / width, LW_TRACK_ANGLES - 1);
        cells[a][at_most(way->speed / CELL, CELLS - 1)] += step;
        angles[a].seconds += step;
        if (way->flies) angles[a].flying += step;
        run[a] += step * way->speed;
    }
    for (size_t a = 0; a < LW_TRACK_ANGLES; a++) {
        const bool is_there = angles[a].seconds > 0.0;
        angles[a].mean = is_there ? run[a] / angles[a].seconds : NAN;
        angles[a].fast = is_there ? below_which(cells[a], 0.9) : NAN;
    }
}
