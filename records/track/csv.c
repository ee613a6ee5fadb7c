// csv.c - tracks as CSV, whose header names columns and units.
// SPDX-License-Identifier: MIT

#include <math.h>
#include <string.h>

#include "lullwise/quantity.h"
#include "records/track/moment.h"
#include "records/track/reading.h"

#define COLUMNS_MOST 64
#define DAY          86400.0  // [s]

typedef enum column { NONE, TIME, DATE, LATITUDE, LONGITUDE, SPEED, COURSE, COLUMNS } column;

// Names that a column may have; its unit stands behind it, or is this. DAY alone has a day's text.
static const struct {
    const char *name;
    column is;
} names[] = {{"time", TIME},
             {"timestamp", TIME},
             {"datetime", TIME},
             {"date", DATE},
             {"latitude", LATITUDE},
             {"lat", LATITUDE},
             {"longitude", LONGITUDE},
             {"lon", LONGITUDE},
             {"long", LONGITUDE},
             {"lng", LONGITUDE},
             {"speed", SPEED},
             {"sog", SPEED},
             {"speed over ground", SPEED},
             {"course", COURSE},
             {"cog", COURSE},
             {"course over ground", COURSE}};

typedef struct csv {
    lw_track_reading *r;
    char separator;
    size_t count;  // columns
    column is[COLUMNS_MOST];
    double scale[COLUMNS_MOST];  // of a number there, to SI; angles: to degrees
    bool has[COLUMNS];
} csv;

// --- fields

// Cuts a line at its separators; quotes around a field go, those doubled inside stay one.
static size_t cut(char *line, char separator, char *fields[COLUMNS_MOST])
{
    size_t count = 0;
    char *at = line;
    while (count < COLUMNS_MOST) {
        char *to = at;
        bool is_quoted = false, is_last;
        fields[count++] = at;
        for (; *at && (is_quoted || *at != separator); at++) {
            if (*at != '"')
                *to++ = *at;
            else if (is_quoted && at[1] == '"')
                *to++ = *at++;
            else
                is_quoted = !is_quoted;
        }
        is_last = *at == '\0';
        *to = '\0';
        if (is_last) break;
        at++;
    }
    return count;
}

static char separator_of(const char *line)
{
    const char *const tried = ";\t,";
    for (const char *at = tried; *at; at++) {
        if (strchr(line, *at)) return *at;
    }
    return ',';
}

// --- the header

// As names are compared: small letters, blanks for what stands for them.
static char plain(char c)
{
    static const char capitals[] = "ABCDEFGHIJKLMNOPQRSTUVWXYZ_";
    static const char small[] = "abcdefghijklmnopqrstuvwxyz ";
    const char *at = strchr(capitals, c);
    if (!at || !c) return c;
    return small[at - capitals];
}

// "Speed [kn]", "speed (kn)", "speed_kn" into "speed" and "kn"; "speed_over_ground" into words.
static void part(const char *text, char name[40], char unit[16])
{
    size_t length = 0;
    text += strspn(text, " \t\"");
    for (; *text && *text != '[' && *text != '(' && length < 39; text++) {
        name[length++] = plain(*text);
    }
    while (length > 0 && name[length - 1] == ' ') length--;
    name[length] = '\0';
    unit[0] = '\0';
    if (*text) lw_text_fit(unit, 16, "%.*s", (int)strcspn(text + 1, "])"), text + 1);
    char *last = strrchr(name, ' ');
    if (unit[0] || !last || (lw_unit_of(last + 1) == LW_UNIT_COUNT && strcmp(last + 1, "ms") != 0))
        return;
    lw_text_fit(unit, 16, "%s", last + 1);
    *last = '\0';
}

static column column_of(const char *name)
{
    for (size_t i = 0; i < sizeof names / sizeof names[0]; i++) {
        if (strcmp(names[i].name, name) == 0) return names[i].is;
    }
    return NONE;
}

// Whether a line is a header: it names a latitude.
static bool is_header(const char *line)
{
    char copy[LW_TRACK_LINE], name[40], unit[16], *fields[COLUMNS_MOST];
    lw_text_fit(copy, sizeof copy, "%s", line);
    const size_t count = cut(copy, separator_of(line), fields);
    for (size_t i = 0; i < count; i++) {
        part(fields[i], name, unit);
        if (column_of(name) == LATITUDE) return true;
    }
    return false;
}

static bool refuse_unit(csv *c, const char *name, const char *unit, const char *wanted)
{
    const lw_written written = {
        .file = c->r->path, .line = c->r->line_number, .column = 1, .key = name, .text = unit};
    lw_fault *fault = lw_faults_add(c->r->faults, &written);
    LW_FIT(fault->sentence, "%s",
           unit[0] ? "there is no such unit of this" : "the column has no unit");
    LW_FIT(fault->expected, "%s", wanted);
    return false;
}

// What a number in the column is worth. Degrees of places need no unit: there is no other.
static bool take_unit(csv *c, size_t i, const char *name, const char *unit)
{
    static const struct {
        lw_unit like, usual;
        const char *wanted;
    } of[COLUMNS] = {[TIME] = {LW_UNIT_S, LW_UNIT_COUNT, "as in \"time [s]\""},
                     [LATITUDE] = {LW_UNIT_DEG, LW_UNIT_DEG, "as in \"latitude [deg]\""},
                     [LONGITUDE] = {LW_UNIT_DEG, LW_UNIT_DEG, "as in \"longitude [deg]\""},
                     [SPEED] = {LW_UNIT_KN, LW_UNIT_COUNT, "as in \"speed [kn]\""},
                     [COURSE] = {LW_UNIT_DEG, LW_UNIT_DEG, "as in \"course [deg]\""}};
    const column is = c->is[i];
    lw_unit found = unit[0] ? lw_unit_of(unit) : of[is].usual;
    c->scale[i] = NAN;  // a text: a moment, or a day
    if (is == DATE || (is == TIME && (!unit[0] || strcmp(unit, "UTC") == 0))) return true;
    if (is == TIME && strcmp(unit, "ms") == 0) {
        c->scale[i] = 0.001;
        return true;
    }
    if (found == LW_UNIT_COUNT || !lw_unit_same_dimension(found, of[is].like))
        return refuse_unit(c, name, unit, of[is].wanted);
    const bool is_place = is == LATITUDE || is == LONGITUDE;
    c->scale[i] = lw_unit_in_si(found) / (is_place ? LW_DEG : 1.0);
    return true;
}

static bool take_header(csv *c)
{
    char name[40], unit[16], *fields[COLUMNS_MOST];
    bool is_sound = true;
    c->separator = separator_of(c->r->line);
    c->count = cut(c->r->line, c->separator, fields);
    for (size_t i = 0; i < c->count; i++) {
        part(fields[i], name, unit);
        c->is[i] = column_of(name);
        if (c->is[i] == NONE || c->has[c->is[i]]) {
            c->is[i] = NONE;
            continue;
        }
        c->has[c->is[i]] = true;
        is_sound &= take_unit(c, i, name, unit);
    }
    if (!c->has[TIME] || !c->has[LATITUDE] || !c->has[LONGITUDE])
        return lw_track_refuse(c->r, c->r->line_number, "the header lacks a column",
                               "time, latitude and longitude; speed [kn], course [deg]");
    return is_sound;
}

// --- rows

static bool number_of(const csv *c, const char *text, double *value)
{
    const char *rest;
    text += strspn(text, " ");
    if (c->separator == ',' && strchr(text, ',')) return false;
    return lw_decimal_read(text, value, &rest) && rest[strspn(rest, " ")] == '\0';
}

typedef struct row {
    lw_track_point point;
    double day;  // of a date column
    bool is_broken;
} row;

static void take_time(const csv *c, size_t i, const char *text, row *to)
{
    double value = NAN;
    if (!isnan(c->scale[i]))
        to->is_broken |= !number_of(c, text, &value), to->point.time = value * c->scale[i];
    else if (c->has[DATE])
        to->is_broken |= !lw_clock_read(text, &to->point.time);
    else
        to->is_broken |= !lw_moment_read(text, &to->point.time);
}

static void take_field(const csv *c, size_t i, const char *text, row *to)
{
    double value = NAN;
    if (c->is[i] == TIME) {
        take_time(c, i, text, to);
    } else if (c->is[i] == DATE) {
        to->is_broken |= !lw_moment_read(text, &to->day);
    } else if (c->is[i] != NONE) {
        const bool is_number = number_of(c, text, &value), is_empty = !text[strspn(text, " ")];
        value = is_number ? value * c->scale[i] : NAN;
        const bool is_place = c->is[i] == LATITUDE || c->is[i] == LONGITUDE;
        to->is_broken |= is_place ? !is_number : !is_number && !is_empty;
        if (c->is[i] == LATITUDE) to->point.latitude_deg = value;
        if (c->is[i] == LONGITUDE) to->point.longitude_deg = value;
        if (c->is[i] == SPEED && value >= 0.0) to->point.speed = value;
        if (c->is[i] == COURSE && fabs(value) <= 2.0 * LW_PI) to->point.course = value;
    }
}

static bool take_row(csv *c)
{
    char *fields[COLUMNS_MOST];
    row to = {.point = {.speed = NAN, .course = NAN}};
    if (!c->r->line[strspn(c->r->line, " \t")] || c->r->line[0] == '#') return true;
    const size_t count = cut(c->r->line, c->separator, fields);
    to.is_broken = count < c->count;
    for (size_t i = 0; i < count && i < c->count && !to.is_broken; i++)
        take_field(c, i, fields[i], &to);
    to.point.time += to.day;
    if (!to.is_broken) return lw_track_add(c->r, &to.point);
    lw_track_broken(c->r, c->r->line_number);
    return true;
}

bool lw_csv_read(lw_track_reading *r)
{
    csv c = {.r = r};
    const size_t faults = r->faults->fault_count;
    bool has_header = false;
    if (memcmp(r->chunk, "\xEF\xBB\xBF", 3) == 0) r->at = 3;
    for (int i = 0; i < 40 && !has_header && lw_track_line(r); i++) has_header = is_header(r->line);
    if (r->faults->fault_count > faults) return false;
    if (!has_header)
        return lw_track_refuse(
            r, 0, "this is no track that is known",
            "GPX, NMEA 0183, or CSV whose header names time, latitude, longitude");
    if (!take_header(&c)) return false;
    while (lw_track_line(r)) {
        if (!take_row(&c)) return false;
    }
    if (r->faults->fault_count > faults) return false;
    bool is_numbered = false;
    for (size_t i = 0; i < c.count; i++) is_numbered |= c.is[i] == TIME && !isnan(c.scale[i]);
    if (r->file->count == r->first)
        return lw_track_refuse(r, r->file->broken_line, "no row could be read",
                               "time as in 2030-05-17T10:05:09Z, places in degrees as in 12.3456");
    r->file->lacks_date |= is_numbered && r->file->points[r->first].time < 1e8;
    return true;
}
