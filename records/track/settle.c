// settle.c - points of a track put in order, the wild ones out, and laid on a plane.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <stdlib.h>

#include "lullwise/elementary.h"
#include "records/source_text.h"
#include "records/track/geodesy.h"
#include "records/track/moment.h"
#include "records/track/track_file.h"

#define FASTEST (60.0 * LW_KN)  // [m/s] that no dinghy goes
#define JUMPED  10.0            // [m] that a receiver errs from fix to fix without being wild
#define AHEAD   5               // points that may be wild in a row
#define SAME    0.0005          // [s] apart: the same time

// --- order

static int earlier(const void *a, const void *b)
{
    const lw_track_point *p = a, *q = b;
    if (p->time != q->time) return p->time < q->time ? -1 : 1;
    return p->order < q->order ? -1 : p->order > q->order;
}

static void put_in_order(lw_track_file *file)
{
    size_t out = 0;
    double latest = -INFINITY;
    for (size_t i = 0; i < file->count; i++) {
        out += file->points[i].time < latest;
        latest = fmax(latest, file->points[i].time);
    }
    file->counts[LW_TRACK_OUT_OF_ORDER] += out;
    if (out) qsort(file->points, file->count, sizeof *file->points, earlier);
}

static void drop_repeats(lw_track_file *file)
{
    size_t kept = 0;
    for (size_t i = 0; i < file->count; i++) {
        const lw_track_point *p = &file->points[i];
        if (kept && p->time - file->points[kept - 1].time < SAME)
            file->counts[LW_TRACK_REPEATS]++;
        else
            file->points[kept++] = *p;
    }
    file->count = kept;
}

// --- wild points

// Near enough to tell a jump: a degree is 111 km, and less along a parallel.
static double about_apart(const lw_track_point *a, const lw_track_point *b)
{
    const double metre = 111195.0, shrink = lw_cos(a->latitude_deg * LW_DEG);
    const double turn = b->longitude_deg - a->longitude_deg;
    const double east = metre * shrink * (turn - 360.0 * floor(turn / 360.0 + 0.5));
    const double north = metre * (b->latitude_deg - a->latitude_deg);
    return sqrt(east * east + north * north);
}

static bool is_reached(const lw_track_point *from, const lw_track_point *to)
{
    return about_apart(from, to) <= JUMPED + FASTEST * (to->time - from->time);
}

// A point not reached from the last one kept is wild when one of the next is; else they all are
// somewhere else now.
static bool is_wild(const lw_track_file *file, size_t kept, size_t i)
{
    const lw_track_point *last = &file->points[kept - 1];
    for (size_t k = i + 1; k <= i + AHEAD && k < file->count; k++) {
        if (is_reached(last, &file->points[k])) return true;
    }
    return false;
}

// Behind a jump: what came before it is wild too where it is so few points. Returns what is kept.
static size_t jump(lw_track_file *file, size_t kept, size_t piece)
{
    if (kept - piece > AHEAD) {
        file->counts[LW_TRACK_JUMPS]++;
        return kept;
    }
    file->counts[LW_TRACK_WILD] += kept - piece;
    return piece;
}

static void drop_wild(lw_track_file *file)
{
    size_t kept = 0, piece = 0;  // where it began
    for (size_t i = 0; i < file->count; i++) {
        lw_track_point p = file->points[i];
        if (p.speed > FASTEST) {
            file->counts[LW_TRACK_WILD_SPEEDS]++;
            p.speed = NAN;
        }
        if (kept && !is_reached(&file->points[kept - 1], &p)) {
            if (is_wild(file, kept, i)) {
                file->counts[LW_TRACK_WILD]++;
                continue;
            }
            kept = jump(file, kept, piece);
            p.starts = true;
        }
        if (p.starts) piece = kept;
        file->points[kept++] = p;
    }
    file->count = kept;
}

static void count_later(lw_track_file *file)
{
    for (size_t i = 0; file->latest > 0.0 && i < file->count; i++) {
        file->counts[LW_TRACK_LATER] += file->points[i].time > file->latest;
    }
}

// --- the plane

static double around(double turn) { return turn - 360.0 * floor(turn / 360.0 + 0.5); }

// Halfway between the outermost points each way; longitudes are counted from the first.
static void put_middle(lw_track_file *file)
{
    const lw_track_point *first = &file->points[0];
    double south = 90.0, north = -90.0, west = 180.0, east = -180.0;
    for (size_t i = 0; i < file->count; i++) {
        const lw_track_point *p = &file->points[i];
        const double off = around(p->longitude_deg - first->longitude_deg);
        south = fmin(south, p->latitude_deg), north = fmax(north, p->latitude_deg);
        west = fmin(west, off), east = fmax(east, off);
    }
    file->middle_latitude_deg = 0.5 * (south + north);
    file->middle_longitude_deg = around(first->longitude_deg + 0.5 * (west + east));
}

static bool lay_down(lw_track_file *file)
{
    free(file->fixes);
    file->fixes = calloc(file->count, sizeof *file->fixes);
    if (!file->fixes) return false;
    for (size_t i = 0; i < file->count; i++) {
        const lw_track_point *p = &file->points[i];
        const lw_apart to = lw_geodesic(file->middle_latitude_deg, file->middle_longitude_deg,
                                        p->latitude_deg, p->longitude_deg);
        file->fixes[i] = (lw_fix){.time = p->time - file->points[0].time,
                                  .east = to.metres * lw_sin(to.sets_out),
                                  .north = to.metres * lw_cos(to.sets_out),
                                  .speed = p->speed,
                                  .course = p->course,
                                  .starts = p->starts};
    }
    return true;
}

bool lw_track_file_settle(lw_track_file *file, const char *path, lw_faults *faults)
{
    put_in_order(file);
    drop_repeats(file);
    drop_wild(file);
    count_later(file);
    file->counts[LW_TRACK_KEPT] = file->count;
    if (file->count < 2) {
        lw_source_fault(faults, path,
                        file->counts[LW_TRACK_REPEATS]
                            ? "all points of this track have the same time: speeds cannot be told"
                            : "this track has one point only: nothing was sailed");
        return false;
    }
    put_middle(file);
    return lay_down(file) || lw_faults_no_memory(faults, path);
}

// --- written

void lw_track_file_write(const lw_track_file *file, FILE *out)
{
    fputs("time,latitude [deg],longitude [deg],speed [kn],course [deg]\n", out);
    for (size_t i = 0; i < file->count; i++) {
        const lw_track_point *p = &file->points[i];
        char moment[LW_MOMENT_LENGTH];
        lw_moment_text(moment, p->time);
        fprintf(out, "%s,%.7f,%.7f,", moment, p->latitude_deg, p->longitude_deg);
        if (!isnan(p->speed)) fprintf(out, "%.3f", p->speed / LW_KN);
        fputc(',', out);
        if (!isnan(p->course)) fprintf(out, "%.2f", p->course / LW_DEG);
        fputc('\n', out);
    }
}
