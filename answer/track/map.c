// map.c - a track as GeoJSON [rfc-7946], and as CSV.
// SPDX-License-Identifier: MIT

#include <math.h>

#include "answer/track/track.h"
#include "records/track/moment.h"

// Where a line must end: at a piece, and where it would run around the earth the wrong way.
static bool is_end(const lw_tracked *t, size_t i)
{
    if (i == t->track.count || t->track.ways[i].starts) return true;
    const lw_track_point *p = &t->file.points[i];
    return fabs(p->longitude_deg - p[-1].longitude_deg) > 180.0;
}

static void put_place(const lw_tracked *t, size_t i, FILE *out)
{
    const lw_track_point *p = &t->file.points[i];
    fprintf(out, "[%.7f,%.7f]", p->longitude_deg, p->latitude_deg);
}

static void put_line(const lw_tracked *t, size_t first, size_t end, FILE *out)
{
    char from[LW_MOMENT_LENGTH], to[LW_MOMENT_LENGTH];
    lw_moment_text(from, t->file.points[first].time);
    lw_moment_text(to, t->file.points[end - 1].time);
    fputs("{\"type\":\"Feature\",\"geometry\":{\"type\":\"LineString\",\"coordinates\":[", out);
    for (size_t i = first; i < end; i++) {
        if (i > first) fputc(',', out);
        put_place(t, i, out);
    }
    fprintf(out, "]},\"properties\":{\"begins\":\"%s\",\"ends\":\"%s\",\"speed_kn\":[", from, to);
    for (size_t i = first; i < end; i++)
        fprintf(out, "%s%.1f", i > first ? "," : "", t->track.ways[i].speed / LW_KN);
    fputs("]}}", out);
}

static void put_event(const lw_tracked *t, const lw_track_event *event, FILE *out)
{
    char moment[LW_MOMENT_LENGTH];
    lw_moment_text(moment, t->file.points[event->fix].time);
    fputs(",\n{\"type\":\"Feature\",\"geometry\":{\"type\":\"Point\",\"coordinates\":", out);
    put_place(t, event->fix, out);
    fprintf(out, "},\"properties\":{\"what\":\"%s\",\"time\":\"%s\",\"is_flown\":%s}}",
            lw_track_event_key(event->what), moment, event->is_flown ? "true" : "false");
}

void lw_tracked_map(const void *it, FILE *out)
{
    const lw_tracked *t = it;
    bool is_first = true;
    fputs("{\"type\":\"FeatureCollection\",\"features\":[\n", out);
    for (size_t first = 0, end; first < t->track.count; first = end) {
        end = first + 1;
        while (!is_end(t, end)) end++;
        if (end - first < 2) continue;
        if (!is_first) fputs(",\n", out);
        is_first = false;
        put_line(t, first, end, out);
    }
    for (size_t i = 0; i < t->events.count && !is_first; i++) put_event(t, &t->events.list[i], out);
    fputs("\n]}\n", out);
}

void lw_tracked_log(const void *it, FILE *out)
{
    lw_track_file_write(&((const lw_tracked *)it)->file, out);
}
