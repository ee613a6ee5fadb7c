// reading.c - what readers of tracks share: bytes in chunks, lines, points added, faults.
// SPDX-License-Identifier: MIT

#include "records/track/reading.h"

#include <math.h>
#include <stdlib.h>

#define LW_AS_COUNT_KEY(name, key, text)  key,
#define LW_AS_COUNT_TEXT(name, key, text) text,

const char *lw_track_count_key(lw_track_count count)
{
    static const char *const keys[] = {LW_TRACK_COUNT_LIST(LW_AS_COUNT_KEY)};
    return keys[count];
}

const char *lw_track_count_text(lw_track_count count)
{
    static const char *const texts[] = {LW_TRACK_COUNT_LIST(LW_AS_COUNT_TEXT)};
    return texts[count];
}

// --- bytes and lines

bool lw_track_chunk(lw_track_reading *r)
{
    r->at = r->length = 0;
    if (r->is_over) return false;
    if (r->file->wants_end && r->file->wants_end()) {
        r->is_over = true;
        return lw_track_refuse(r, 0, "stopped from the keyboard before it was read", "");
    }
    r->length = fread(r->chunk, 1, sizeof r->chunk, r->stream);
    r->is_over = r->length < sizeof r->chunk;
    return r->length > 0;
}

bool lw_track_line(lw_track_reading *r)
{
    size_t length = 0;
    bool has_any = false;
    r->line_number++;
    while (r->at < r->length || lw_track_chunk(r)) {
        const char byte = r->chunk[r->at++];
        has_any = true;
        if (byte == '\0')
            return lw_track_refuse(r, r->line_number, "a zero byte: this is not a text file", "");
        if (byte == '\n') break;
        if (byte != '\r' && length < sizeof r->line - 1) r->line[length++] = byte;
    }
    r->line[length] = '\0';
    return has_any;
}

// --- points and faults

static bool is_somewhere(const lw_track_point *p)
{
    return p->latitude_deg >= -90.0 && p->latitude_deg <= 90.0 && p->longitude_deg >= -180.0 &&
           p->longitude_deg <= 360.0 && fabs(p->time) < 2e11;
}

static bool has_room(lw_track_reading *r)
{
    lw_track_file *file = r->file;
    if (file->count == LW_TRACK_MOST)
        return lw_track_refuse(r, 0, "there are more than two million points: cut the file", "");
    if (file->count < file->room) return true;
    const size_t twice = file->room ? 2 * file->room : 4096;
    const size_t room = twice < LW_TRACK_MOST ? twice : LW_TRACK_MOST;
    lw_track_point *points = realloc(file->points, room * sizeof *points);
    if (!points) return lw_faults_no_memory(r->faults, r->path);
    file->points = points;
    file->room = room;
    return true;
}

bool lw_track_add(lw_track_reading *r, const lw_track_point *point)
{
    lw_track_file *file = r->file;
    if (!is_somewhere(point)) {
        lw_track_broken(r, r->line_number);
        return true;
    }
    if (!has_room(r)) return false;
    file->counts[LW_TRACK_READ]++;
    lw_track_point *added = &file->points[file->count];
    *added = *point;
    added->starts = r->starts;
    added->order = file->count++;
    if (added->longitude_deg > 180.0) added->longitude_deg -= 360.0;
    r->starts = false;
    return true;
}

void lw_track_broken(lw_track_reading *r, size_t line)
{
    r->file->counts[LW_TRACK_READ]++;
    r->file->counts[LW_TRACK_BROKEN]++;
    if (!r->file->broken_line) r->file->broken_line = line;
}

bool lw_track_refuse(lw_track_reading *r, size_t line, const char *sentence, const char *expected)
{
    const lw_written written = {.file = r->path, .line = line, .key = "", .text = ""};
    lw_fault *fault = lw_faults_add(r->faults, &written);
    LW_FIT(fault->sentence, "%s", sentence);
    LW_FIT(fault->expected, "%s", expected);
    return false;
}
