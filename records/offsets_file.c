// offsets_file.c - a table of offsets read from text, with the place of every fault.
// SPDX-License-Identifier: MIT

#include "records/offsets_file.h"

#include <math.h>
#include <stdlib.h>
#include <string.h>

#include "lullwise/quantity.h"
#include "records/source_text.h"

#define LENGTH_MOST 1000000  // bytes
#define LARGEST     1e4      // [m] of a coordinate
#define GAPS        " \t\r,;"

typedef struct reading {
    lw_hull_offsets offsets;
    const char *path;
    lw_faults *faults;
    size_t line;
    size_t lines[LW_HULL_STATIONS];  // of the stations
    size_t heights_line;
    double unit;  // [m]; 0 until it was given
} reading;

static bool is_over(const char *at) { return *at == '\0' || *at == '#'; }

static lw_fault *fault_at(const reading *r, size_t line, size_t column, const char *at)
{
    char word[64];
    LW_FIT(word, "%.*s", (int)strcspn(at, GAPS "#"), at);
    const lw_written written = {
        .file = r->path, .line = line, .column = column, .key = "", .text = word};
    return lw_faults_add(r->faults, &written);
}

static lw_fault *fault_here(const reading *r, const char *start, const char *at)
{
    return fault_at(r, r->line, (size_t)(at - start) + 1, at);
}

// Numbers up to the end of the line, in the file's unit; their count, or -1 after a fault.
static int read_numbers(const reading *r, const char *start, const char *at, double *value,
                        int most)
{
    int count = 0;
    for (at += strspn(at, GAPS); !is_over(at); at += strspn(at, GAPS)) {
        const char *rest;
        double number;
        if (!lw_decimal_read(at, &number, &rest) || !(is_over(rest) || strchr(GAPS, *rest))) {
            LW_FIT(fault_here(r, start, at)->sentence, "this is not a number");
            return -1;
        }
        if (!(fabs(number * r->unit) <= LARGEST)) {
            LW_FIT(fault_here(r, start, at)->sentence, "a length is too large");
            return -1;
        }
        if (count == most) {
            LW_FIT(fault_here(r, start, at)->sentence, "more than %d numbers on this line", most);
            return -1;
        }
        value[count++] = number * r->unit;
        at = rest;
    }
    return count;
}

static void read_unit(reading *r, const char *start, const char *at)
{
    static const struct {
        const char *name;
        double metres;
    } units[] = {{"m", 1.0}, {"cm", 0.01}, {"mm", 0.001}};
    at += strspn(at, GAPS);
    const size_t length = strcspn(at, GAPS "#");
    for (size_t i = 0; i < sizeof units / sizeof units[0]; i++) {
        const bool is_it = strlen(units[i].name) == length && !strncmp(at, units[i].name, length);
        if (is_it) r->unit = units[i].metres;
        if (is_it && is_over(at + length + strspn(at + length, GAPS))) return;
    }
    lw_fault *fault = fault_here(r, start, at);
    LW_FIT(fault->sentence, "this is not a unit of length");
    LW_FIT(fault->expected, "m, cm or mm");
}

static void read_heights(reading *r, const char *start, const char *at)
{
    lw_hull_offsets *o = &r->offsets;
    if (r->heights_line) {
        LW_FIT(fault_here(r, start, at)->sentence, "the heights were given in line %zu",
               r->heights_line);
        return;
    }
    r->heights_line = r->line;
    const int count = read_numbers(r, start, at, o->height, LW_HULL_WATERLINES);
    if (count >= 0) o->waterlines = count;
    if (count >= 0 && count < 2) {
        lw_fault *fault = fault_here(r, start, start);
        LW_FIT(fault->sentence, "too few heights");
        LW_FIT(fault->expected, "2 to %d", LW_HULL_WATERLINES);
    }
}

static void read_station(reading *r, const char *start, const char *at)
{
    lw_hull_offsets *o = &r->offsets;
    double value[LW_HULL_WATERLINES + 2];
    const int count = read_numbers(r, start, at, value, o->waterlines + 2);
    if (count < 0) return;
    if (count != o->waterlines + 2) {
        lw_fault *fault = fault_here(r, start, at);
        LW_FIT(fault->sentence, "%d numbers on this line", count);
        LW_FIT(fault->expected, "%d: x, keel and a half-breadth for each of %d heights",
               o->waterlines + 2, o->waterlines);
    } else if (o->stations == LW_HULL_STATIONS) {
        LW_FIT(fault_here(r, start, at)->sentence, "%s",
               lw_hull_status_text(LW_HULL_STATIONS_COUNT));
    } else {
        r->lines[o->stations] = r->line;
        o->x[o->stations] = value[0], o->keel[o->stations] = value[1];
        memcpy(o->half[o->stations++], value + 2, (size_t)o->waterlines * sizeof value[0]);
    }
}

static bool starts_with(const char *at, const char *word)
{
    const size_t length = strlen(word);
    return strncmp(at, word, length) == 0 && (is_over(at + length) || strchr(GAPS, at[length]));
}

static void read_line(reading *r, const char *start)
{
    const char *at = start + strspn(start, GAPS);
    if (is_over(at)) return;
    if (starts_with(at, "unit")) {
        read_unit(r, start, at + 4);
    } else if (r->unit == 0.0) {
        lw_fault *fault = fault_here(r, start, at);
        LW_FIT(fault->sentence, "the unit of length comes first");
        LW_FIT(fault->expected, "unit m, unit cm or unit mm");
        r->unit = 1.0;  // said once
    } else if (starts_with(at, "heights")) {
        read_heights(r, start, at + 7);
    } else if (!r->heights_line) {
        lw_fault *fault = fault_here(r, start, at);
        LW_FIT(fault->sentence, "the heights of the waterlines come before the stations");
        LW_FIT(fault->expected, "heights and 2 to %d numbers", LW_HULL_WATERLINES);
        r->heights_line = r->line;  // said once
    } else if (r->offsets.waterlines >= 2) {
        read_station(r, start, at);
    }
}

static void say_fault(const reading *r, lw_hull_fault found)
{
    const size_t line = found.station >= 0 ? r->lines[found.station]
                        : found.point >= 0 ? r->heights_line
                                           : 0;
    LW_FIT(fault_at(r, line, line ? 1 : 0, "")->sentence, "%s", lw_hull_status_text(found.status));
}

bool lw_offsets_file_text(lw_hull_shape *shape, const char *path, char *text, size_t length,
                          lw_faults *faults)
{
    const size_t before = faults->fault_count;
    reading r = {.path = path, .faults = faults};
    for (size_t i = 0; i < length; i++) {
        if (text[i] == '\t') text[i] = ' ';
    }
    if (!lw_source_is_clean(&(lw_source_text){path, text, length}, faults)) return false;
    for (char *line = text; line;) {
        char *end = strchr(line, '\n');
        if (end) *end = '\0';
        r.line++;
        read_line(&r, line);
        line = end ? end + 1 : NULL;
    }
    if (faults->fault_count > before) return false;
    const lw_hull_fault found = lw_hull_shape_of_offsets(shape, &r.offsets);
    if (found.status != LW_HULL_OK) say_fault(&r, found);
    return found.status == LW_HULL_OK;
}

bool lw_offsets_file_read(lw_hull_shape *shape, const char *path, lw_faults *faults)
{
    size_t length;
    char *text = lw_source_fetch(path, LENGTH_MOST, &length, faults);
    if (!text) return false;
    const bool is_read = lw_offsets_file_text(shape, path, text, length, faults);
    free(text);
    return is_read;
}
