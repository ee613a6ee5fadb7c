// track_file.c - a track's file: its kind by what is in it, and its bytes in chunks.
// SPDX-License-Identifier: MIT

#include "records/track/track_file.h"

#include <stdlib.h>
#include <string.h>

#include "records/source_text.h"
#include "records/track/reading.h"

typedef bool reader(lw_track_reading *r);

static bool starts_with(const lw_track_reading *r, size_t at, const char *bytes, size_t length)
{
    return r->length >= at + length && memcmp(r->chunk + at, bytes, length) == 0;
}

// What is known, and cannot be read here: a sentence, or NULL.
static const char *why_not(const lw_track_reading *r)
{
    if (r->length == 0) return "the file is empty";
    if (starts_with(r, 8, ".FIT", 4))
        return "this is a FIT file, which is not read: have the instrument's program write GPX or "
               "CSV";
    if (starts_with(r, 0, "PK\3\4", 4) || starts_with(r, 0, "\x1F\x8B", 2))
        return "this is packed: unpack it first";
    if (starts_with(r, 0, "\xFF\xFE", 2) || starts_with(r, 0, "\xFE\xFF", 2))
        return "this looks like UTF-16: save the file as UTF-8 text";
    if (memchr(r->chunk, '\0', r->length)) return "a zero byte: this is not a text file";
    return NULL;
}

// Lines of the first chunk are looked at until one is a sentence of NMEA.
static bool has_sentence(const lw_track_reading *r)
{
    char line[LW_TRACK_LINE];
    size_t length = 0;
    for (size_t i = 0; i < r->length; i++) {
        if (r->chunk[i] != '\n' && r->chunk[i] != '\r') {
            if (length < sizeof line - 1) line[length++] = r->chunk[i];
            if (i + 1 < r->length) continue;
        }
        line[length] = '\0';
        length = 0;
        if (lw_nmea_is_sentence(line)) return true;
    }
    return false;
}

static reader *reader_of(const lw_track_reading *r)
{
    size_t at = starts_with(r, 0, "\xEF\xBB\xBF", 3) ? 3 : 0;
    while (at < r->length && strchr(" \t\r\n", r->chunk[at])) at++;
    if (at < r->length && r->chunk[at] == '<') return lw_gpx_read;
    return has_sentence(r) ? lw_nmea_read : lw_csv_read;
}

bool lw_track_file_stream(lw_track_file *file, FILE *stream, const char *path, lw_faults *faults)
{
    const size_t before = faults->fault_count;
    lw_track_reading *r = calloc(1, sizeof *r);
    if (!r) return lw_faults_no_memory(faults, path);
    *r = (lw_track_reading){.file = file,
                            .stream = stream,
                            .path = path,
                            .faults = faults,
                            .first = file->count,
                            .starts = true};
    lw_track_chunk(r);
    const char *sentence = ferror(stream) ? "the file cannot be read" : why_not(r);
    bool is_read = sentence ? lw_track_refuse(r, 0, sentence, "") : reader_of(r)(r);
    if (is_read && ferror(stream)) is_read = lw_track_refuse(r, 0, "the file cannot be read", "");
    free(r);
    return is_read && faults->fault_count == before;
}

bool lw_track_file_read(lw_track_file *file, const char *path, lw_faults *faults)
{
    FILE *stream = lw_source_open(path, faults);
    if (!stream) return false;
    const bool is_read = lw_track_file_stream(file, stream, path, faults);
    fclose(stream);
    return is_read;
}

void lw_track_file_free(lw_track_file *file)
{
    free(file->points);
    free(file->fixes);
    *file = (lw_track_file){0};
}
